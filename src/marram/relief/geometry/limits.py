"""The limits of a relief area, each deciding by a distance.

Every limit has a *margin*: how many metres a place lies inside it, negative outside. With a ball's radius
given, the margin is that of the ball as a disc, not of a point.
"""

from dataclasses import dataclass
from enum import Enum
from math import hypot
from typing import Protocol

import shapely
from shapely.geometry.base import BaseGeometry

from marram.relief.geometry.arcs import disc, farther_than, half_plane
from marram.relief.geometry.outline import XY
from marram.relief.geometry.outlines import Outlines
from marram.rules.relief_option import Limit

_ON = 1e-9
"""Metres: a constructed point this near an edge lies on it."""


class Bound(Enum):
    """What kind of limit a place is outside of."""

    SIZE = "size"
    """Within so many club-lengths of the reference point."""
    NOT_NEARER = "not_nearer"
    """Not nearer the hole."""
    AREA = "area"
    """In the area of the course that is allowed."""
    ON_COURSE = "on_course"
    """Not out of bounds."""
    COMPLETE_RELIEF = "complete_relief"
    """No interference by the condition."""
    CORRIDOR = "corridor"
    """Between the two lines from the hole, with the club-lengths to the outside of each."""
    SAME_AREA = "same_area"
    """In the area of the course that the ball first touched when dropped."""
    ON_LINE = "on_line"
    """Dropped on the line from the hole back through the point."""


class Bounding(Protocol):
    """A limit of a relief area."""

    @property
    def bound(self) -> Bound:
        """What kind of limit this is."""

    @property
    def limit(self) -> Limit | None:
        """The limit of the relief option it stands for; ``None`` for the size."""

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:
        """Return how many metres a place lies inside, negative outside; ``ball`` is the ball's radius."""

    def cut(self, polygon: BaseGeometry) -> BaseGeometry:
        """Return the part of a polygon that lies inside, for drawing."""


@dataclass(frozen=True, slots=True)
class WithinDistance:
    """Within ``radius`` of a point. A ball is in when any part of it is."""

    centre: XY
    radius: float
    bound: Bound = Bound.SIZE
    limit: Limit | None = None

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:
        """Return the radius (and the ball's) less the distance from the point."""
        return self.radius + ball - hypot(x - self.centre[0], y - self.centre[1])

    def cut(self, polygon: BaseGeometry) -> BaseGeometry:
        """Return the part of a polygon within the circle."""
        return shapely.intersection(polygon, disc(self.centre, self.radius))


@dataclass(frozen=True, slots=True)
class NotNearer:
    """At least ``radius`` from the hole. A ball is out when any part of it is nearer."""

    hole: XY
    radius: float
    limit: Limit | None = Limit.NOT_NEARER
    bound: Bound = Bound.NOT_NEARER

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:
        """Return how much farther than the limit the place is from the hole."""
        return hypot(x - self.hole[0], y - self.hole[1]) - self.radius - ball

    def cut(self, polygon: BaseGeometry) -> BaseGeometry:
        """Return the part of a polygon that is not nearer the hole."""
        centre, reach = _box(polygon)
        return shapely.intersection(polygon, farther_than(self.hole, self.radius, centre, reach))


@dataclass(frozen=True, slots=True)
class HalfPlane:
    """On one side of a line: (p - at) · normal is at most 0, ``normal`` being of length 1."""

    at: XY
    normal: XY
    bound: Bound = Bound.CORRIDOR
    limit: Limit | None = None

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:
        """Return the distance from the line, negative beyond it."""
        return ball - (x - self.at[0]) * self.normal[0] - (y - self.at[1]) * self.normal[1]

    def cut(self, polygon: BaseGeometry) -> BaseGeometry:
        """Return the part of a polygon on this side of the line."""
        centre, reach = _box(polygon)
        return shapely.intersection(polygon, half_plane(self.at, self.normal, centre, reach))


@dataclass(frozen=True, slots=True)
class Inside:
    """In one of some areas. A ball is in when any part of it is."""

    outlines: Outlines
    bound: Bound = Bound.AREA
    limit: Limit | None = None

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:
        """Return the depth in the area it is deepest in."""
        return max((one.depth(x, y) for one in self.outlines), default=-float("inf")) + ball

    def admits(self, x: float, y: float) -> bool:
        """Return whether a point is inside or on the edge (but for rounding); quicker than a margin."""
        return any(one.holds(x, y) or one.depth(x, y) >= -_ON for one in self.outlines.near(x, y, _ON))

    def cut(self, polygon: BaseGeometry) -> BaseGeometry:
        """Return the part of a polygon in any of the areas."""
        return shapely.intersection(polygon, shapely.union_all([one.geometry for one in self.outlines]))


@dataclass(frozen=True, slots=True)
class Outside:
    """In none of some areas. A ball is out of an area only when no part of it touches it (Rule 2.2c)."""

    outlines: Outlines
    bound: Bound = Bound.AREA
    limit: Limit | None = None

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:
        """Return the distance to the nearest of the areas, negative inside one."""
        nearest = float("inf")
        for apart, one in self.outlines.nearest_boxes_first(x, y):
            if apart >= nearest:
                break
            nearest = min(nearest, -one.depth(x, y))
        return nearest - ball

    def admits(self, x: float, y: float) -> bool:
        """Return whether a point is outside or on the edge (but for rounding); quicker than a margin."""
        return not any(one.holds(x, y) and one.depth(x, y) > _ON for one in self.outlines.near(x, y, -_ON))

    def cut(self, polygon: BaseGeometry) -> BaseGeometry:
        """Return the part of a polygon outside all of the areas."""
        near = [one.geometry for one in self.outlines if shapely.intersects(one.geometry, polygon)]
        return shapely.difference(polygon, shapely.union_all(near)) if near else polygon


def _box(polygon: BaseGeometry) -> tuple[XY, float]:
    least_x, least_y, greatest_x, greatest_y = polygon.bounds
    centre = ((least_x + greatest_x) / 2, (least_y + greatest_y) / 2)
    return centre, max(greatest_x - least_x, greatest_y - least_y) / 2 + 1.0
