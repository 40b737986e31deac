"""An area's edges as arrays, to measure distances to them exactly and fast."""

from dataclasses import dataclass
from functools import cached_property
from math import sqrt

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from marram.errors import BadPlace
from marram.relief.geometry.corners import Corners, Floats
from marram.said import said

XY = tuple[float, float]
Ring = tuple[XY, ...]


@dataclass(frozen=True, eq=False)
class Outline:
    """The edges of one or more valid polygons, holes included.

    Attributes:
        geometry: the polygon(s).
    """

    geometry: BaseGeometry

    @cached_property
    def parts(self) -> tuple[shapely.Polygon, ...]:
        """The separate polygons."""
        return tuple(shapely.get_parts(self.geometry))

    @cached_property
    def edges(self) -> Floats:
        """Every edge as (x from, y from, x to, y to), the inside on its left."""
        return self._rings[0]

    @cached_property
    def previous(self) -> NDArray[np.intp]:
        """For each edge the index of the edge before it on the same ring."""
        return self._rings[1]

    @cached_property
    def _rings(self) -> tuple[Floats, NDArray[np.intp]]:
        return edges_of(self.geometry)

    @cached_property
    def bounds(self) -> tuple[float, float, float, float]:
        """(least x, least y, greatest x, greatest y)."""
        least_x, least_y, greatest_x, greatest_y = self.geometry.bounds
        return least_x, least_y, greatest_x, greatest_y

    @cached_property
    def _terms(self) -> tuple[Floats, ...]:
        from_x, from_y, to_x, to_y = np.ascontiguousarray(self.edges.T)
        along_x, along_y = to_x - from_x, to_y - from_y
        return from_x, from_y, to_y, along_x, along_y, 1.0 / (along_x * along_x + along_y * along_y)

    def depth(self, x: float, y: float) -> float:
        """Return how deep a point lies inside: its distance to the nearest edge, negative outside."""
        from_x, from_y, to_y, along_x, along_y, inverse = self._terms
        away_x, away_y = x - from_x, y - from_y
        part = (away_x * along_x + away_y * along_y) * inverse
        np.minimum(np.maximum(part, 0.0, out=part), 1.0, out=part)
        across_x, across_y = away_x - part * along_x, away_y - part * along_y
        distance = sqrt(float((across_x * across_x + across_y * across_y).min()))
        straddles = (from_y > y) != (to_y > y)
        # A ray to the east crosses an edge where the edge lies east of the point at its height.
        left = (away_x * along_y - away_y * along_x < 0) == (along_y > 0)
        inside = np.count_nonzero(straddles & left) % 2 == 1
        return distance if inside else -distance

    def holds(self, x: float, y: float) -> bool:
        """Return whether a point lies inside; on an edge either may be said."""
        return self.apart(x, y) <= 0 and bool(shapely.intersects_xy(self._prepared, x, y))

    @cached_property
    def _prepared(self) -> BaseGeometry:
        shapely.prepare(self.geometry)
        return self.geometry

    @cached_property
    def rings(self) -> tuple[tuple[Ring, tuple[Ring, ...]], ...]:
        """For each part the places along its edge, and along that of each island in it, the first again at the end."""
        return tuple((_ring(part.exterior), tuple(map(_ring, part.interiors))) for part in self.parts)

    @cached_property
    def corners(self) -> Corners:
        """The edges with the directions at each corner."""
        return Corners(self.edges, self.previous)

    def apart(self, x: float, y: float) -> float:
        """Return a distance that the area is at least away from a point, from its bounding box alone."""
        least_x, least_y, greatest_x, greatest_y = self.bounds
        return float(max(least_x - x, x - greatest_x, least_y - y, y - greatest_y))

    def nearest_on_edge(self, x: float, y: float) -> XY:
        """Return the point of the edge nearest to a point."""
        from_x, from_y, _, along_x, along_y, inverse = self._terms
        part = np.clip(((x - from_x) * along_x + (y - from_y) * along_y) * inverse, 0.0, 1.0)
        on_x, on_y = from_x + part * along_x, from_y + part * along_y
        index = int(np.argmin((on_x - x) ** 2 + (on_y - y) ** 2))
        return float(on_x[index]), float(on_y[index])

    def crossings(self, start: XY, end: XY) -> list[tuple[float, XY]]:
        """Return where the straight line from ``start`` to ``end`` meets the edge: (part of the way, point)."""
        from_x, from_y, _, along_x, along_y, _ = self._terms
        way_x, way_y = end[0] - start[0], end[1] - start[1]
        across = way_x * along_y - way_y * along_x
        with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
            part = ((from_x - start[0]) * along_y - (from_y - start[1]) * along_x) / across
            on_edge = ((from_x - start[0]) * way_y - (from_y - start[1]) * way_x) / across
        met = (across != 0) & (part >= 0) & (part <= 1) & (on_edge >= 0) & (on_edge <= 1)
        parts = sorted({float(one) for one in part[met]})
        return [(one, (start[0] + one * way_x, start[1] + one * way_y)) for one in parts]


def _ring(ring: shapely.LinearRing) -> Ring:
    return tuple((x, y) for x, y in shapely.get_coordinates(ring).tolist())


def edges_of(geometry: BaseGeometry) -> tuple[Floats, NDArray[np.intp]]:
    """Return the edges of polygon(s) as rows (x from, y from, x to, y to), the inside on the left.

    The second array holds, for each edge, the row of the edge before it on the same ring.

    Raises:
        BadPlace: if the geometry is not made of valid polygons.
    """
    if geometry.is_empty or geometry.geom_type not in {"Polygon", "MultiPolygon"}:
        raise BadPlace(
            said(
                "An area is needed here, not {shape}; draw its outline as a polygon.",
                shape=_article(geometry),
            )
        )
    if not geometry.is_valid:
        raise BadPlace(
            said(
                "This outline is not a valid area: {why}. Redraw it.",
                why=shapely.is_valid_reason(geometry),
            )
        )
    rows: list[Floats] = []
    previous: list[NDArray[np.intp]] = []
    count = 0
    for polygon in shapely.get_parts(geometry):
        for is_hole, ring in enumerate(shapely.get_rings(polygon)):
            points = _turned(shapely.get_coordinates(ring), clockwise=is_hole > 0)
            rows.append(np.concatenate((points[:-1], points[1:]), axis=1))
            before = np.arange(count - 1, count + len(points) - 2)
            before[0] = count + len(points) - 2
            previous.append(before)
            count += len(points) - 1
    return np.concatenate(rows), np.concatenate(previous)


def _turned(points: Floats, *, clockwise: bool) -> Floats:
    """Return a closed ring in the direction asked for, without points that repeat the one before."""
    steps = points[1:] - points[:-1]
    moves = (steps != 0).any(axis=1)
    if not moves.all():
        points = np.concatenate((points[:1], points[1:][moves]))
    x, y = points[:, 0] - points[0, 0], points[:, 1] - points[0, 1]
    twice_area = float(x[:-1] @ y[1:] - x[1:] @ y[:-1])
    return points[::-1] if (twice_area < 0) != clockwise else points


def _article(geometry: BaseGeometry) -> str:
    return said("an empty shape") if geometry.is_empty else said("a {shape}", shape=geometry.geom_type)
