"""Options without a search: a spot, right behind a spot, a dropping zone, the provisional ball."""

import shapely

from marram.relief.areas.construction import (
    LineMark,
    Mark,
    PointMark,
    Role,
    distance,
    measure,
    shape_marks,
)
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.constructions.around import around, limits_of, nearer_arc
from marram.relief.geometry.arcs import disc
from marram.relief.geometry.limits import Bound, Inside, NotNearer, WithinDistance
from marram.relief.geometry.outline import XY
from marram.relief.geometry.outlines import Outlines
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.interference.nearest_point import nearest_point
from marram.relief.place.answer import Answer, Drawn, NeedsPlace, NoRelief, Place, Why
from marram.relief.place.situation import Situation
from marram.rules.facts.ball import Area
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption

SHOWN_AROUND = 2.0
"""Club-lengths around a spot that are shown where the Rules set no size."""

_WITHOUT_SIZE = {ReliefKind.PREFERRED_LIE: "relief.size_of_preferred_lie"}
"""What is said of an area whose size the notice sets, not the Rules."""


def on_the_spot(situation: Situation, option: ReliefOption, spot: XY, role: Role) -> ReliefArea:
    """Return the area that is one spot, where a ball is placed."""
    hole = situation.hole
    return ReliefArea(
        option=option,
        reference=spot,
        radius=0.0,
        club_length=situation.player.club_length,
        limits=(WithinDistance(spot, 0.0),),
        construction=(
            PointMark(Role.HOLE, hole),
            LineMark(Role.LINE_TO_HOLE, spot, hole),
            PointMark(role, spot),
        ),
        measures=(measure(role, spot, Role.HOLE, hole),),
        hole=hole,
        area_of=situation.ground.area_at,
        assumed=situation.assumed,
    )


def at_the_ball(situation: Situation, option: ReliefOption) -> Answer:
    """Draw relief measured from a ball's spot, known or estimated: under it, around it, or on it.

    Under where a ball came to rest in or on something (Rules 11.1b, 15.2a), where it would have come to
    rest (11.2c), or the original spot (8.1d(1), 14.2d and e). Without a size (14.2e) it is the nearest
    spot, within the limits, where a ball stays: only the ground tells which.
    """
    spot, place = situation.ball, Place.BALL
    if option.reference is Reference.ESTIMATED_SPOT:
        spot, place = situation.estimated, Place.ESTIMATED_SPOT
    if spot is None:
        return NeedsPlace(option, (place,))
    if option.club_lengths == 0:
        return Drawn(option, (on_the_spot(situation, option, spot, Role.BALL),))
    area = situation.ground.area_at(spot, BALL_RADIUS)
    if option.club_lengths is None:
        return Drawn(option, (_nearest_spot_that_stays(situation, option, spot),))
    return Drawn(option, (around(situation, option, spot, Role.BALL, reference_area=area),))


def _nearest_spot_that_stays(situation: Situation, option: ReliefOption, spot: XY) -> ReliefArea:
    hole, shown = situation.hole, SHOWN_AROUND * situation.player.club_length
    limits = (*limits_of(situation, option, spot), *situation.ground.on_course)
    nearer = [nearer_arc(one, spot, shown) for one in limits if isinstance(one, NotNearer)]
    return ReliefArea(
        option=option,
        reference=spot,
        radius=None,
        club_length=situation.player.club_length,
        limits=limits,
        construction=(
            PointMark(Role.HOLE, hole),
            LineMark(Role.LINE_TO_HOLE, spot, hole),
            *nearer,
            PointMark(Role.BALL, spot),
        ),
        measures=(measure(Role.BALL, spot, Role.HOLE, hole),),
        hole=hole,
        start=disc(spot, shown),
        area_of=situation.ground.area_at,
        assumed=(*situation.assumed, _WITHOUT_SIZE.get(option.kind, "relief.nearest_spot_that_stays")),
    )


def behind_embedded_ball(situation: Situation, option: ReliefOption) -> Answer:
    """Draw the relief area of a ball embedded in the general area (Rule 16.3b).

    The reference point lies right behind the ball: one radius behind its middle, away from the hole. Since
    2023, where that is not in the general area, it is the nearest spot in the general area that is not
    nearer the hole than the spot right behind the ball.
    """
    if situation.ball is None:
        return NeedsPlace(option, (Place.BALL,))
    ball, hole = situation.ball, situation.hole
    apart = distance(ball, hole) or 1.0
    step = BALL_RADIUS / apart
    behind = (ball[0] + (ball[0] - hole[0]) * step, ball[1] + (ball[1] - hole[1]) * step)
    marks: tuple[Mark, ...] = (PointMark(Role.BALL, ball),)
    if option.reference is Reference.BEHIND_EMBEDDED_BALL:
        return Drawn(option, (around(situation, option, behind, marks=marks),))
    general = [*situation.ground.in_area(Area.GENERAL_AREA), *situation.ground.on_course]
    found = nearest_point(behind, (), hole, general)
    if found is None:
        return NoRelief(option, Why.NO_NEAREST_POINT)
    return Drawn(option, tuple(around(situation, option, point, marks=marks) for point in found.points))


def dropping_zone(situation: Situation, option: ReliefOption) -> Answer:
    """Draw a dropping zone: the ball is dropped in it and comes to rest in it (Model Local Rule E-1).

    It may be nearer the hole. A line that marks it is inside it.
    """
    zone = situation.dropping_zone
    if zone is None:
        return NeedsPlace(option, (Place.DROPPING_ZONE,))
    middle = shapely.centroid(zone.geometry)
    reference = (float(middle.x), float(middle.y))
    hole = situation.hole
    return Drawn(
        option,
        (
            ReliefArea(
                option=option,
                reference=reference,
                radius=None,
                club_length=situation.player.club_length,
                limits=(Inside(Outlines((zone,)), Bound.AREA, Limit.WITHIN_DROPPING_ZONE),),
                construction=(PointMark(Role.HOLE, hole), *shape_marks(Role.DROPPING_ZONE, (zone,))),
                measures=(measure(Role.DROPPING_ZONE, reference, Role.HOLE, hole),),
                hole=hole,
                start=zone.geometry,
                area_of=situation.ground.area_at,
                assumed=situation.assumed,
            ),
        ),
    )


def provisional(situation: Situation, option: ReliefOption) -> Answer:
    """Draw where the provisional ball lies; play goes on from there (Rule 18.3c)."""
    if situation.provisional is None:
        return NeedsPlace(option, (Place.PROVISIONAL_BALL,))
    return Drawn(option, (on_the_spot(situation, option, situation.provisional, Role.BALL),))
