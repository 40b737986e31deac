"""The numbers of a hole location sheet: a green seen along the line of play.

As the USGA's instructions for its hole location sheet measure it: a box is laid around the green along the
usual approach; the depth of the green and the distance of the hole from the front are taken along that
direction, from the front of the box; then the distance from the hole to the nearest side of the green.
"""

from dataclasses import dataclass
from enum import Enum

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from marram.course.model import Hole
from marram.errors import BadPlace
from marram.said import Said, said

PACE = 0.9144
"""A pace is taken as one yard, in metres (common practice)."""


class Side(Enum):
    """A side of the green as the player coming in sees it."""

    LEFT = "left"
    CENTRE = "centre"
    RIGHT = "right"


SIDES = {Side.LEFT: said("left"), Side.CENTRE: said("centre"), Side.RIGHT: said("right")}
"""The words for the sides."""


_WAYS = (
    said("back"),
    said("back left"),
    said("left"),
    said("front left"),
    said("front"),
    said("front right"),
    said("right"),
    said("back right"),
)
"""Directions as the player coming in sees them, turning left from straight on."""


@dataclass(frozen=True, slots=True)
class SheetNumbers:
    """What a hole location sheet says of one hole, in metres.

    Attributes:
        green_depth: from the front to the back of the green.
        from_front: from the front of the green to the hole, along the line of play.
        from_side: from the hole to the nearest side, across the line of play.
        side: which side that is; ``CENTRE`` where both are as near within half a pace.
        from_edge: from the hole to the nearest edge in any direction.
    """

    green_depth: float
    from_front: float
    from_side: float
    side: Side
    from_edge: float

    def in_paces(self) -> tuple[int, int]:
        """Return the distances from the front and from the nearest side in whole paces."""
        return round(self.from_front / PACE), round(self.from_side / PACE)


class GreenFrame:
    """A green with its own axes: along the last stretch of the line of play, and to the left of it."""

    def __init__(self, green: BaseGeometry, line: LineString) -> None:
        self.green = green
        self._edge = shapely.boundary(green)
        shapely.prepare(self._edge)
        before, last = np.array(line.coords)[-2:, :2]
        self.along = (last - before) / np.hypot(*(last - before))
        self.left = np.array([-self.along[1], self.along[0]])
        corners = shapely.get_coordinates(green)
        self.front, self.back = _range(corners @ self.along)

    @classmethod
    def of(cls, hole: Hole) -> "GreenFrame":
        """Return the frame of a hole's green.

        Raises:
            BadPlace: the green of the hole is not mapped.
        """
        if hole.green is None:
            raise BadPlace(
                said("The green of hole {hole} is not mapped; draw it with golf=green.", hole=hole.number)
            )
        return cls(hole.green.geometry, hole.line)

    def from_edge(self, places: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return the distance of places, shape (n, 2), from the nearest edge of the green, negative outside."""
        points = shapely.points(places)
        distance = shapely.distance(self._edge, points)
        return np.where(shapely.intersects(self.green, points), distance, -distance)

    def numbers(self, place: Point) -> SheetNumbers:
        """Return the numbers of a hole location sheet for a hole cut at a place.

        Raises:
            BadPlace: the place is not on the green.
        """
        here = np.array([place.x, place.y])
        from_edge = float(self.from_edge(here[None, :])[0])
        if from_edge < 0:
            raise BadPlace(
                said("({x:.2f}, {y:.2f}) is {off:.2f} m off the green.", x=place.x, y=place.y, off=-from_edge)
            )
        to_left, to_right = self._across(here)
        even = abs(to_left - to_right) <= PACE / 2
        side = Side.CENTRE if even else Side.LEFT if to_left < to_right else Side.RIGHT
        return SheetNumbers(
            green_depth=self.back - self.front,
            from_front=float(here @ self.along) - self.front,
            from_side=min(to_left, to_right),
            side=side,
            from_edge=from_edge,
        )

    def place(self, from_front: float, from_side: float, side: Side) -> Point:
        """Return the place with these distances: the inverse of :meth:`numbers`.

        Args:
            from_front: from the front of the green, along the line of play, metres.
            from_side: from the edge on that side, across the line of play, metres; not used for ``CENTRE``.
            side: which side it is measured from; ``CENTRE`` is the middle between both.

        Raises:
            BadPlace: the green has no such place.
        """
        depth = self.back - self.front
        if not 0 <= from_front <= depth:
            raise BadPlace(
                said(
                    "{paces:.0f} paces from the front is off the green, which is {depth:.0f} paces deep.",
                    paces=from_front / PACE,
                    depth=depth / PACE,
                )
            )
        reach = self.green.length
        foot = (self.front + from_front) * self.along + (
            self.green.centroid.coords[0] @ self.left
        ) * self.left
        chord = shapely.intersection(
            self.green, LineString([foot - reach * self.left, foot + reach * self.left])
        )
        spans = [
            _range(shapely.get_coordinates(part) @ self.left)
            for part in shapely.get_parts(chord)
            if part.length > 0
        ]
        if not spans:
            raise BadPlace(
                said("The green has no place {paces:.0f} paces from its front.", paces=from_front / PACE)
            )
        # A dented green is measured on the side asked for; its middle is that of its widest part there.
        low, high = {
            Side.LEFT: max(spans, key=lambda span: span[1]),
            Side.RIGHT: min(spans, key=lambda span: span[0]),
            Side.CENTRE: max(spans, key=lambda span: span[1] - span[0]),
        }[side]
        across = {Side.LEFT: high - from_side, Side.RIGHT: low + from_side, Side.CENTRE: (low + high) / 2}[
            side
        ]
        if not low <= across <= high:
            raise BadPlace(
                said(
                    "{paces:.0f} paces from the {side} is off the green, which is {width:.0f} "
                    "paces wide {from_front:.0f} paces from its front.",
                    paces=from_side / PACE,
                    side=SIDES[side],
                    width=(high - low) / PACE,
                    from_front=from_front / PACE,
                )
            )
        return Point((self.front + from_front) * self.along + across * self.left)

    def way(self, direction: tuple[float, float]) -> Said:
        """Return in words where a direction leads as the player coming in sees it, such as "front left"."""
        towards = np.array(direction)
        turn = float(np.degrees(np.arctan2(towards @ self.left, towards @ self.along)))
        return _WAYS[round(turn / 45) % 8]

    def _across(self, here: NDArray[np.float64]) -> tuple[float, float]:
        """Return how far the green reaches to the left and to the right of a place on it."""
        reach = self.green.length
        chord = shapely.intersection(
            self.green, LineString([here - reach * self.left, here + reach * self.left])
        )
        for part in shapely.get_parts(chord):
            low, high = _range(shapely.get_coordinates(part) @ self.left - here @ self.left)
            if low <= 1e-6 and high >= -1e-6:
                return max(high, 0.0), max(-low, 0.0)
        return 0.0, 0.0


def _range(values: NDArray[np.float64]) -> tuple[float, float]:
    return float(values.min()), float(values.max())
