"""The edges that decide where a ball lies, and how far from them it is: nearest first, and the boundary always."""

from collections.abc import Iterable
from dataclasses import dataclass

import shapely
from shapely import Point

from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Kind
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import YARD
from marram.relief.place.ground import ground_of
from marram.words.ground import named_ground
from marram.words.place import writing
from marram.words.texts import text

NEAR = 15.0
"""Metres: an edge farther off than this decides nothing here (a choice of ours)."""
AT_MOST = 2
"""So many edges are told besides the boundary (a choice of ours)."""
DECIDES = frozenset(
    {
        Kind.RED_PENALTY_AREA,
        Kind.YELLOW_PENALTY_AREA,
        Kind.WATER,
        Kind.BUNKER,
        Kind.PUTTING_GREEN,
        Kind.TEEING_AREA,
        Kind.GROUND_UNDER_REPAIR,
        Kind.TEMPORARY_WATER,
        Kind.NO_PLAY_ZONE,
    }
)
"""Areas of which it matters whether a ball is in them (Rules 2.2 to 2.4, 16.1)."""


@dataclass(frozen=True, slots=True)
class EdgeNear:
    """An edge, and where a ball lies by it.

    Attributes:
        words: what the edge is of.
        metres: from the middle of the ball to the edge.
        inside: whether the middle of the ball lies in the area; for a boundary, in bounds.
        boundary: whether the edge is the boundary of the course or of ground out of bounds.
        at: the nearest place of the edge, in metres of the course.
    """

    words: str
    metres: float
    inside: bool
    boundary: bool
    at: XY

    @property
    def sentence(self) -> str:
        """Where the ball lies by the edge: "0.4 m inside the edge (red penalty area)"."""
        side = "inside" if self.inside else "outside"
        metres = f"{self.metres:.{1 if self.metres < NEAR else 0}f}"
        if writing().yards:
            yards = f"{self.metres / YARD:.{1 if self.metres < NEAR else 0}f}"
            if self.boundary:
                return text(f"relief.edge.boundary.{side}.yards", yards=yards)
            return text(f"relief.edge.{side}.yards", yards=yards, ground=self.words)
        if self.boundary:
            return text(f"relief.edge.boundary.{side}", metres=metres)
        return text(f"relief.edge.{side}", metres=metres, ground=self.words)


def edges_near(course: Course, hole_number: int, place: XY, accuracy: float = 0.0) -> tuple[EdgeNear, ...]:
    """Return the edges that decide near a place, nearest first, then the nearest boundary where the map has one.

    Args:
        course: the map.
        hole_number: the hole being played.
        place: the middle of the ball, in metres.
        accuracy: metres; an edge that is nearer than the place is known is left out: that is told as a doubt.
    """
    lies, ball = ground_of(course, hole_number).lies, Point(place)
    areas = [one for one in lies.within(ball, NEAR, "every") if one.kind in DECIDES]
    near = [one for one in _edges(areas, ball) if accuracy < one.metres <= NEAR][:AT_MOST]
    bounds = _edges(() if lies.boundary is None else lies.boundary.areas, ball, boundary=True)
    fences = _edges(() if lies.fences is None else lies.fences.areas, ball, boundary=True, out=True)
    nearest = min((*bounds, *fences), key=lambda one: one.metres, default=None)
    return (*near, *(() if nearest is None or nearest.metres <= accuracy else (nearest,)))


def _edges(
    areas: Iterable[UnitedArea], ball: Point, *, boundary: bool = False, out: bool = False
) -> list[EdgeNear]:
    """Return the edges of areas, nearest first; ``out`` of areas that are out of bounds."""
    found = []
    for area in areas:
        line = shapely.shortest_line(shapely.boundary(area.geometry), ball)
        (x, y), _ = line.coords
        inside = bool(shapely.intersects(area.geometry, ball)) != out
        words = named_ground(area.kind, area.name)
        found.append(EdgeNear(words, float(line.length), inside, boundary, (float(x), float(y))))
    return sorted(found, key=lambda one: one.metres)
