"""The colour of a penalty area near a ball, where it is open whether the ball lies in one.

Whether it does must be looked at on the ground. What colour it would be need not be asked, where no penalty area of
the other colour is within reach of the doubt.
"""

from collections.abc import Collection, Iterator

from shapely.geometry import Point

from marram.course.lies.areas import PenaltyColour
from marram.course.lies.doubts import UNMAPPED_EDGE, Doubt, DoubtKind, drawn_to, roughly_drawn
from marram.course.lies.regions import Ground, ground_of
from marram.course.lies.tolerance import EDGE_TOLERANCE, TOUCH
from marram.course.model import Course

_COLOURLESS = frozenset({DoubtKind.NOT_COVERED, DoubtKind.WETLAND_WITHOUT_STATUS})
"""Doubts about penalty areas of which the map would not know the colour."""

_COLOURS = {
    Ground.RED_PENALTY_AREA: PenaltyColour.RED,
    Ground.YELLOW_PENALTY_AREA: PenaltyColour.YELLOW,
}


def colour_within_reach(
    course: Course, place: Point, hole: int, accuracy: float, doubts: Collection[Doubt]
) -> PenaltyColour | None:
    """Return the colour of every penalty area a ball may lie in as far as the map can tell; ``None`` where it is open.

    Args:
        course: the map.
        place: the centre of the ball, in local metres.
        hole: the hole being played.
        accuracy: how far off the place may be, metres.
        doubts: what the map cannot tell at the place.
    """
    if any(one.kind in _COLOURLESS for one in doubts):
        return None
    reach = TOUCH + max(accuracy, EDGE_TOLERANCE, *_further(course, place, doubts))
    near = {
        _COLOURS[region.ground]
        for region in ground_of(course, hole).specific
        if region.ground in _COLOURS and region.signed_distance(place) <= reach
    }
    return near.pop() if len(near) == 1 else None


def _further(course: Course, place: Point, doubts: Collection[Doubt]) -> Iterator[float]:
    """Yield how far off edges may be that the map knows but roughly, metres."""
    yield UNMAPPED_EDGE if any(one.kind is DoubtKind.UNMARKED_WATER for one in doubts) else 0.0
    for rough in roughly_drawn(course):
        edge = rough.geometry.boundary if rough.geometry.area else rough.geometry
        if edge.distance(place) <= drawn_to(rough) + TOUCH:
            yield drawn_to(rough)
