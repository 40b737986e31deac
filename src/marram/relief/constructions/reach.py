"""How far back a construction without an end is drawn: to the boundary, else as far as the map reaches.

Back on the line and the alternative to stroke and distance go on "however far back". On a map with a boundary
they end there. On a map without one they are drawn as far as the map knows anything that could limit them, at
least :data:`LEAST`, and it is said that they go on.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from math import hypot

from marram.course.lies.coast import SEA, around
from marram.course.model import Course
from marram.relief.geometry.limits import Bounding, Inside, Outside
from marram.relief.geometry.outline import XY
from marram.relief.place.situation import Situation

LEAST = 300.0
"""Metres: drawn at least so far behind a point on a map without a boundary (a choice of ours; the Rules set no
limit)."""

GOES_ON = "relief.goes_on_beyond_the_drawing"
"""What is said where the drawing ends before the ground does."""


@dataclass(frozen=True, slots=True)
class Reach:
    """How far a construction is drawn.

    Attributes:
        metres: from the place asked about.
        goes_on: whether only the drawing ends there: the map knows no boundary.
    """

    metres: float
    goes_on: bool


def reach_from(place: XY, situation: Situation, limits: Iterable[Bounding], behind: float = 0.0) -> Reach:
    """Return how far from a place a construction is drawn.

    Args:
        place: where it starts, in local metres.
        situation: the situation, which knows whether the course has a boundary.
        limits: what limits the construction; on a map without a boundary the drawing goes past all of them.
        behind: metres from the place to the point the construction is drawn back from.
    """
    boundary = [outline for _, outline in situation.ground.boundary]
    if boundary:
        return Reach(_farthest(place, (one.bounds for one in boundary)) + 1.0, False)
    known = (one.bounds for limit in limits if isinstance(limit, Inside | Outside) for one in limit.outlines)
    far = max(behind + LEAST, _farthest(place, known) + 1.0)
    return Reach(min(far, max(behind, _as_far_as_read(place, situation.course))), True)


def _as_far_as_read(place: XY, course: Course) -> float:
    """Return how far around a place the map is read: beyond that the sea of a coast may go on."""
    if _as_far_as_read not in course.kept:
        course.kept[_as_far_as_read] = around(course, SEA - 1.0).bounds
    left, bottom, right, top = course.kept[_as_far_as_read]
    inside: float = min(place[0] - left, right - place[0], place[1] - bottom, top - place[1])
    return max(0.0, inside)


def _farthest(place: XY, boxes: Iterable[tuple[float, float, float, float]]) -> float:
    return max(
        (
            hypot(max(right - place[0], place[0] - left), max(top - place[1], place[1] - bottom))
            for left, bottom, right, top in boxes
        ),
        default=0.0,
    )
