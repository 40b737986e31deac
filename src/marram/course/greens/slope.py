"""The slope of a green: how steep it is around a place, which way it falls, and how steep is too steep.

Guidance on where to cut holes asks for two to three feet of ground around the hole that are as level as can be,
and for three paces from a severe slope (The R&A, *Guidance on Running a Competition*, hole positions; Rules of
Golf, Committee Procedures 5E). How steep is too steep depends on the speed of the green. The figures
are those of J. Lemons, *Putting green speeds, slopes, and "non-conforming" hole locations*, USGA Green Section
Record, July/August 2008, as tabulated in *Golf Course Industry* ("Green slopes"): a recommended and a marginal
greatest downhill slope for each Stimpmeter reading.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry import MultiPoint, Point
from shapely.geometry.base import BaseGeometry

from marram.course.greens.elevation import Elevations
from marram.course.model import Course
from marram.errors import InputError
from marram.said import said

AROUND_HOLE = 3 * 0.3048
"""Radius of the ground around a hole that should be level, metres: three feet (The R&A's guidance)."""

FURTHEST_APART = 5.0
"""Between elevations further apart than this nothing is said of the slope, metres (own choice)."""

APART = 0.9144
"""Severe slopes are looked for at places a pace apart, metres (own choice)."""

SLIVER = 1e-4
"""A triangle smaller than this says nothing of the slope, square metres (own choice)."""

SPEEDS = (9.0, 10.0, 11.0, 12.0, 13.0, 14.0)
"""Stimpmeter readings in feet. The table's row for 8 feet is left out: its recommended figure (5.86) does not fit the
others and may be a misprint; slower greens are judged as those of 9 feet, which is the safe side."""

RECOMMENDED = (4.35, 3.90, 3.58, 3.24, 2.99, 2.90)
"""Greatest recommended slope in percent, for each of the speeds."""

MARGINAL = (5.95, 5.42, 4.90, 4.55, 4.20, 3.85)
"""Greatest marginal slope in percent: beyond it is no place for a hole."""

_RINGS = (AROUND_HOLE / 2, AROUND_HOLE)
_TURNS = np.arange(8) * math.pi / 4
_PATTERN = np.array(
    [(0.0, 0.0)] + [(r * math.cos(turn), r * math.sin(turn)) for r in _RINGS for turn in _TURNS]
)
"""Where around a hole the ground is looked at."""


@dataclass(frozen=True, slots=True)
class SlopeLimits:
    """How steep is too steep, in percent.

    Attributes:
        recommended: steeper than this is marginal.
        critical: steeper than this is no place for a hole.
        green_speed: the Stimpmeter reading in feet they are for; ``None`` where it is not known: then the
            figures of the fastest greens stand, which are the safe side.
    """

    recommended: float
    critical: float
    green_speed: float | None = None


def slope_limits(green_speed: float | None = None) -> SlopeLimits:
    """Return how steep is too steep on greens of a speed.

    Args:
        green_speed: the Stimpmeter reading in feet, or ``None`` when it is not known.

    Raises:
        InputError: the reading is not between 5 and 14 feet, where the published figures end.
    """
    if green_speed is not None and not 5 <= green_speed <= SPEEDS[-1]:
        raise InputError(
            said(
                "A green speed of {green_speed:g} feet is not between 5 and {most:g}, where the published figures end. "
                "Give the Stimpmeter reading in feet.",
                green_speed=green_speed,
                most=SPEEDS[-1],
            )
        )
    speed = SPEEDS[-1] if green_speed is None else green_speed
    return SlopeLimits(
        float(np.interp(speed, SPEEDS, RECOMMENDED)), float(np.interp(speed, SPEEDS, MARGINAL)), green_speed
    )


def in_percent(value: float) -> str:
    """Return a figure in percent as it was published, such as ``4.35`` or ``3.9``."""
    return f"{value:.2f}".rstrip("0").rstrip(".")


@dataclass(frozen=True, slots=True)
class Slope:
    """How a green falls around a place.

    Attributes:
        percent: the steepest it falls on the ground around the hole or on any half of it.
        fall: the direction in which it falls as a whole, a unit vector (x east, y north).
    """

    percent: float
    fall: tuple[float, float]


class Surface:
    """The ground of one green, as flat triangles between the elevations measured."""

    def __init__(self, elevations: Elevations) -> None:
        places, index = np.unique(np.round(elevations.places[:, :2], 3), axis=0, return_inverse=True)
        index = index.ravel()
        heights = np.bincount(index, elevations.places[:, 2]) / np.maximum(np.bincount(index), 1)
        lines = np.zeros(len(places), dtype=np.intp)
        lines[index] = elevations.lines
        corners = _triangles(places)
        sides = np.hypot(*np.moveaxis(places[corners] - places[np.roll(corners, 1, axis=1)], -1, 0))
        on_line = lines[corners]
        # Three places of one contour line say nothing of the slope between them.
        flat = (on_line[:, 0] > 0) & (on_line == on_line[:, :1]).all(axis=1)
        slim = shapely.area(shapely.polygons(places[corners])) < SLIVER if len(corners) else flat
        corners = corners[(sides.max(axis=1, initial=0) <= FURTHEST_APART) & ~flat & ~slim]
        self._planes = _planes(places[corners], heights[corners])
        shapes = shapely.polygons(places[corners]) if len(corners) else np.empty(0, dtype=object)
        self._tree = STRtree(shapes)

    def heights(self, places: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return the elevation at places, shape (n, 2), not-a-number where it is not known."""
        found = np.full(len(places), np.nan)
        index, triangle = self._tree.query(shapely.points(places), predicate="intersects")
        a, b, c = self._planes[triangle].T
        found[index] = a * places[index, 0] + b * places[index, 1] + c
        return found

    def slopes(self, places: NDArray[np.float64]) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """Return the slope around places, shape (n, 2): percent, and the unit vector of the fall, shape (n, 2).

        Not-a-number where an elevation around a place is not known.
        """
        around = (places[:, None, :] + _PATTERN[None, :, :]).reshape(-1, 2)
        heights = self.heights(around).reshape(len(places), len(_PATTERN))
        gradients = np.einsum(
            "hgp,np->nhg", _FITS, heights
        )  # of the whole and of each half, rise by distance
        steepest = np.hypot(gradients[..., 0], gradients[..., 1])
        percent = 100 * steepest.max(axis=1, initial=0)
        whole = gradients[:, 0]
        # On a crest the whole is level: then it falls the way of its steepest half.
        half = gradients[np.arange(len(places)), np.nan_to_num(steepest).argmax(axis=1)]
        down = -np.where((steepest[:, 0] > 0.2 * steepest.max(axis=1, initial=0))[:, None], whole, half)
        length = np.hypot(*down.T)[:, None]
        return percent, np.divide(down, length, out=np.zeros_like(down), where=length > 0)

    def at(self, place: Point) -> Slope | None:
        """Return the slope around one place, or ``None`` where it is not known."""
        return slopes_told(*self.slopes(np.array([[place.x, place.y]])))[0]


def slopes_told(percent: NDArray[np.float64], fall: NDArray[np.float64]) -> list[Slope | None]:
    """Return what :meth:`Surface.slopes` found, one by one; ``None`` where it is not known."""
    return [
        Slope(steep, (east, north)) if math.isfinite(steep) else None
        for steep, (east, north) in zip(percent.tolist(), fall.tolist(), strict=True)
    ]


@dataclass(frozen=True)
class GreenSlopes:
    """The ground of the greens of a course, where its elevation was measured.

    Attributes:
        course: the course.
        elevations: what was measured.
        limits: how steep is too steep.
    """

    course: Course
    elevations: Elevations
    limits: SlopeLimits

    @cached_property
    def surfaces(self) -> Mapping[int, Surface]:
        """The ground of each green with three elevations or more, by hole."""
        found: dict[int, Surface] = {}
        for number, hole in self.course.holes.items():
            if hole.green is None:
                continue
            near = self.elevations.near(hole.green.geometry)
            if len(near.places) >= 3:
                found[number] = Surface(near)
        return found

    @cached_property
    def _severe(self) -> dict[int, NDArray[np.float64]]:
        return {}

    def severe(self, hole: int) -> NDArray[np.float64]:
        """Return places of a green, looked at a pace apart, where it is steeper than critical, shape (n, 2)."""
        if hole not in self._severe:
            green = self.course.hole(hole).green
            places = np.empty((0, 2)) if green is None else _places_on(green.geometry)
            percent, _ = self.surfaces[hole].slopes(places)
            self._severe[hole] = places[percent > self.limits.critical]
        return self._severe[hole]

    def from_severe(self, hole: int, places: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return the distance of places, shape (n, 2), from the nearest severe slope of a green, metres."""
        severe = self.severe(hole)
        if not len(severe):
            return np.full(len(places), np.inf)
        return np.asarray(shapely.distance(shapely.points(places), MultiPoint(severe)))


def _places_on(green: BaseGeometry) -> NDArray[np.float64]:
    west, south, east, north = green.bounds
    x, y = np.meshgrid(np.arange(west, east, APART), np.arange(south, north, APART))
    places = np.column_stack([x.ravel(), y.ravel()])
    return places[shapely.intersects(green, shapely.points(places))]


def _half(turn: float) -> NDArray[np.bool_]:
    return np.asarray(_PATTERN @ np.array([math.cos(turn), math.sin(turn)]) >= -1e-9)


def _fit(part: NDArray[np.bool_]) -> NDArray[np.float64]:
    """Return the matrix that makes the least-squares gradient out of the heights of a part of the pattern."""
    places = np.column_stack([_PATTERN[part], np.ones(int(part.sum()))])
    matrix = np.zeros((2, len(_PATTERN)))
    matrix[:, part] = np.linalg.pinv(places)[:2]
    return matrix


_FITS = np.stack([_fit(np.ones(len(_PATTERN), dtype=bool)), *(_fit(_half(turn)) for turn in _TURNS)])


def _triangles(places: NDArray[np.float64]) -> NDArray[np.intp]:
    """Return the corners of the Delaunay triangles between places, as numbers of places, shape (n, 3)."""
    if len(places) < 3:
        return np.empty((0, 3), dtype=np.intp)
    number = {place: index for index, place in enumerate(map(tuple, places.tolist()))}
    found = shapely.get_parts(shapely.delaunay_triangles(MultiPoint(places)))
    corners = shapely.get_coordinates(found).reshape(-1, 4, 2)[:, :3]
    return np.array([[number[tuple(place)] for place in triangle] for triangle in corners.tolist()]).reshape(
        -1, 3
    )


def _planes(corners: NDArray[np.float64], heights: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return (a, b, c) of z = a x + b y + c through the corners of each triangle."""
    matrix = np.concatenate([corners, np.ones((*corners.shape[:2], 1))], axis=2)
    return np.asarray(np.linalg.solve(matrix, heights[..., None])[..., 0]).reshape(-1, 3)
