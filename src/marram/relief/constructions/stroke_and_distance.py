"""Stroke and distance: where the previous stroke was made (Rules 14.6 and 18.1)."""

from math import hypot

import shapely

from marram.errors import BadPlace
from marram.relief.areas.construction import LineMark, Mark, PointMark, Role, measure, shape_marks
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.constructions.around import around
from marram.relief.constructions.spots import on_the_spot
from marram.relief.geometry.limits import Bound, Inside
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.outlines import Outlines
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.place.answer import Answer, Drawn, NeedsPlace, Place
from marram.relief.place.situation import Situation
from marram.rules.facts.ball import Area
from marram.rules.relief_option import Limit, Reference, ReliefOption, Setting
from marram.said import said

TEEING_AREA_DEPTH = 2
"""Club-lengths from the front of the teeing area to its back (Definition of teeing area)."""


def stroke_and_distance(situation: Situation, option: ReliefOption) -> Answer:
    """Draw where the next stroke may be made from.

    From the teeing area: anywhere inside it. From the putting green: on the spot. From elsewhere: within
    one club-length, in the same area of the course, not nearer the hole (Rule 14.6a to c).
    """
    spot, place = situation.previous, Place.PREVIOUS_SPOT
    if option.reference is Reference.LAST_STROKE_OUTSIDE_PENALTY_AREA:
        spot, place = situation.last_outside, Place.LAST_STROKE_OUTSIDE
    if Limit.TEEING_AREA in option.limits:
        return _anywhere_on_the_tee(situation, option, spot)
    if spot is None:
        return NeedsPlace(option, (place,))
    if option.setting is Setting.AS_THE_SPOT_ALLOWS and _from_tee(situation, spot):
        return _anywhere_on_the_tee(situation, option, spot)
    on_green = situation.ground.area_at(spot) is Area.PUTTING_GREEN
    if option.club_lengths == 0 or (option.setting is Setting.AS_THE_SPOT_ALLOWS and on_green):
        return Drawn(option, (on_the_spot(situation, option, spot, Role.PREVIOUS_SPOT),))
    return Drawn(option, (around(situation, option, spot, Role.PREVIOUS_SPOT),))


def teeing_area(markers: tuple[XY, XY], ahead: XY, club_length: float) -> Outline:
    """Return the rectangle two club-lengths deep behind the line of the tee-markers.

    Args:
        markers: the outside, front-most points of the two tee-markers.
        ahead: a place on the side that play goes to, such as the hole.
        club_length: the player's club-length in metres.

    Raises:
        BadPlace: if the markers stand on one spot.
    """
    (left_x, left_y), (right_x, right_y) = markers
    width = hypot(right_x - left_x, right_y - left_y)
    if width < 0.1:
        raise BadPlace(said("The two tee-markers stand on one spot; give the place of each."))
    across = ((right_x - left_x) / width, (right_y - left_y) / width)
    back = (across[1], -across[0])
    if (ahead[0] - left_x) * back[0] + (ahead[1] - left_y) * back[1] > 0:
        back = (-back[0], -back[1])
    depth = TEEING_AREA_DEPTH * club_length
    behind = [(x + depth * back[0], y + depth * back[1]) for x, y in markers]
    return Outline(shapely.Polygon([markers[0], markers[1], behind[1], behind[0]]))


def _from_tee(situation: Situation, spot: XY) -> bool:
    """Return whether the stroke was made from the teeing area, as mapped or between the markers."""
    marked = _marked(situation)
    if marked is not None and marked.depth(*spot) >= -BALL_RADIUS:
        return True
    return situation.ground.area_at(spot) is Area.TEEING_AREA


def _marked(situation: Situation) -> Outline | None:
    if situation.tee_markers is None:
        return None
    # Play goes along the hole's line of play, which need not point at the hole from the tee.
    ahead_x, ahead_y = situation.ground.hole.line.coords[1][:2]
    return teeing_area(situation.tee_markers, (float(ahead_x), float(ahead_y)), situation.player.club_length)


def _anywhere_on_the_tee(situation: Situation, option: ReliefOption, spot: XY | None) -> Answer:
    hole = situation.hole
    marked = _marked(situation)
    marks: list[Mark] = [PointMark(Role.HOLE, hole)]
    assumed = situation.assumed
    if marked is not None and situation.tee_markers is not None:
        outlines = Outlines((marked,))
        (left_x, left_y), (right_x, right_y) = situation.tee_markers
        reference = ((left_x + right_x) / 2, (left_y + right_y) / 2)
        marks.append(LineMark(Role.TEE_LINE, *situation.tee_markers))
    else:
        tees = situation.ground.tees
        outlines = Outlines(outline for _, outline in tees if spot is not None and outline.depth(*spot) >= 0)
        if spot is None or not outlines:
            return NeedsPlace(option, (Place.TEE_MARKERS,))
        reference = spot
        assumed = (*assumed, "relief.mapped_tee_shown")
    parts = [part for one in outlines for part in one.parts]
    area = ReliefArea(
        option=option,
        reference=reference,
        radius=None,
        club_length=situation.player.club_length,
        limits=(Inside(outlines, Bound.AREA, Limit.TEEING_AREA),),
        construction=(*marks, *shape_marks(Role.TEEING_AREA, outlines)),
        measures=(measure(Role.TEEING_AREA, reference, Role.HOLE, hole),),
        hole=hole,
        start=shapely.union_all(parts),
        area_of=situation.ground.area_at,
        assumed=assumed,
    )
    return Drawn(option, (area,))
