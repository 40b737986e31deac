"""Stroke and distance: where the previous stroke was made (Rules 14.6 and 18.1)."""

from math import hypot

import shapely

from marram.errors import BadPlace
from marram.relief.area import ReliefArea
from marram.relief.around import around
from marram.relief.construction import LineMark, Mark, PointMark, Role, ShapeMark, measure
from marram.relief.limits import Bound, Inside
from marram.relief.outline import XY, Outline
from marram.relief.situation import Answer, Drawn, NeedsPlace, Place, Situation
from marram.relief.spots import on_the_spot
from marram.rules.facts.ball import Area
from marram.rules.relief_option import Limit, ReliefOption

TEEING_AREA_DEPTH = 2
"""Club-lengths from the front of the teeing area to its back (Definition of teeing area)."""


def stroke_and_distance(situation: Situation, option: ReliefOption) -> Answer:
    """Draw where the next stroke may be made from.

    From the teeing area: anywhere inside it. From the putting green: on the spot. From elsewhere: within
    one club-length, in the same area of the course, not nearer the hole (Rule 14.6a to c).
    """
    if situation.tee_markers is not None and situation.previous is None:
        return Drawn(option, (_from_the_tee(situation, option),))
    if situation.previous is None:
        return NeedsPlace(option, (Place.PREVIOUS_SPOT,))
    area = situation.ground.area_at(situation.previous)
    if area is Area.TEEING_AREA or situation.tee_markers is not None:
        return Drawn(option, (_from_the_tee(situation, option),))
    if area is Area.PUTTING_GREEN:
        return Drawn(option, (on_the_spot(situation, option, situation.previous, Role.PREVIOUS_SPOT),))
    return Drawn(option, (around(situation, option, situation.previous, Role.PREVIOUS_SPOT),))


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
        raise BadPlace("The two tee-markers stand on one spot; give the place of each.")
    across = ((right_x - left_x) / width, (right_y - left_y) / width)
    back = (across[1], -across[0])
    if (ahead[0] - left_x) * back[0] + (ahead[1] - left_y) * back[1] > 0:
        back = (-back[0], -back[1])
    depth = TEEING_AREA_DEPTH * club_length
    behind = [(x + depth * back[0], y + depth * back[1]) for x, y in markers]
    return Outline(shapely.Polygon([markers[0], markers[1], behind[1], behind[0]]))


def _from_the_tee(situation: Situation, option: ReliefOption) -> ReliefArea:
    hole = situation.hole
    marks: list[Mark] = [PointMark(Role.HOLE, hole)]
    assumed = situation.assumed
    if situation.tee_markers is not None:
        line = situation.ground.hole.line.coords
        # Play goes along the hole's line of play, which need not point at the hole from the tee.
        ahead = (float(line[1][0]), float(line[1][1]))
        outlines: tuple[Outline, ...] = (
            teeing_area(situation.tee_markers, ahead, situation.player.club_length),
        )
        front = situation.tee_markers
        reference = ((front[0][0] + front[1][0]) / 2, (front[0][1] + front[1][1]) / 2)
        marks.append(LineMark(Role.TEE_LINE, *front))
    else:
        assert situation.previous is not None
        outlines = tuple(
            outline for _, outline in situation.ground.tees if outline.depth(*situation.previous) >= 0
        )
        reference = situation.previous
        assumed = (*assumed, "relief.mapped_tee_shown")
    shapes = [part for one in outlines for part in shapely.get_parts(one.geometry)]
    marks.extend(
        ShapeMark(Role.TEEING_AREA, tuple((float(x), float(y)) for x, y in part.exterior.coords))
        for part in shapes
    )
    return ReliefArea(
        option=option,
        reference=reference,
        radius=None,
        club_length=situation.player.club_length,
        limits=(Inside(outlines, Bound.AREA, Limit.TEEING_AREA),),
        construction=tuple(marks),
        measures=(measure(Role.TEEING_AREA, reference, Role.HOLE, hole),),
        hole=hole,
        start=shapely.union_all(shapes),
        area_of=situation.ground.area_at,
        assumed=assumed,
    )
