"""Options without a search: a spot, right behind a spot, a dropping zone, the provisional ball."""

from math import hypot

import shapely

from marram.relief.area import ReliefArea
from marram.relief.around import around
from marram.relief.construction import LineMark, PointMark, Role, ShapeMark, measure
from marram.relief.limits import Bound, Inside, WithinDistance
from marram.relief.outline import XY
from marram.relief.situation import Answer, Drawn, NeedsPlace, Place, Situation
from marram.relief.tolerance import BALL_RADIUS
from marram.rules.relief_option import Limit, ReliefOption


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


def under_the_ball(situation: Situation, option: ReliefOption) -> Answer:
    """Draw the relief area under where the ball came to rest in or on something (Rules 15.2a, 14.2 and the like)."""
    if situation.ball is None:
        return NeedsPlace(option, (Place.BALL,))
    if not option.club_lengths:
        return Drawn(option, (on_the_spot(situation, option, situation.ball, Role.BALL),))
    return Drawn(option, (around(situation, option, situation.ball, Role.BALL),))


def behind_embedded_ball(situation: Situation, option: ReliefOption) -> Answer:
    """Draw the relief area of a ball embedded in the general area: right behind it (Rule 16.3b).

    The reference point is taken one ball's radius behind the middle of the ball, away from the hole.
    Since 2023, where that spot is not in the general area, it is the nearest spot not nearer the hole
    that is; the option is then given with the reference ``NEAREST_POINT``.
    """
    if situation.ball is None:
        return NeedsPlace(option, (Place.BALL,))
    ball, hole = situation.ball, situation.hole
    apart = hypot(ball[0] - hole[0], ball[1] - hole[1]) or 1.0
    behind = (
        ball[0] + (ball[0] - hole[0]) / apart * BALL_RADIUS,
        ball[1] + (ball[1] - hole[1]) / apart * BALL_RADIUS,
    )
    return Drawn(option, (around(situation, option, behind, marks=(PointMark(Role.BALL, ball),)),))


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
    rings = tuple(
        ShapeMark(Role.DROPPING_ZONE, tuple((float(x), float(y)) for x, y in part.exterior.coords))
        for part in shapely.get_parts(zone.geometry)
    )
    return Drawn(
        option,
        (
            ReliefArea(
                option=option,
                reference=reference,
                radius=None,
                club_length=situation.player.club_length,
                limits=(Inside((zone,), Bound.AREA, Limit.WITHIN_DROPPING_ZONE),),
                construction=(PointMark(Role.HOLE, hole), *rings),
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
