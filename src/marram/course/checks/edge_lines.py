"""Closed edges as segments in one tree: which edge is nearest to a place, how far off, and how far along it.

An edge can have very many corners and very many stakes. Asked segment by segment of a tree, each stake costs
little more than a look-up, however long the edge is.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry import LinearRing, LineString, Point, Polygon

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class EdgeLine:
    """One closed edge.

    Attributes:
        ring: the edge.
    """

    ring: LinearRing

    @cached_property
    def corners(self) -> Floats:
        """Its corners in metres, shape (n, 2), the first again at the end."""
        return np.asarray(shapely.get_coordinates(self.ring))

    @cached_property
    def along(self) -> Floats:
        """How far along the edge each corner is, metres."""
        return np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(self.corners, axis=0).T))])

    @cached_property
    def _area(self) -> Polygon:
        area = Polygon(self.ring)
        shapely.prepare(area)
        return area

    @cached_property
    def lines(self) -> "EdgeLines":
        """The edge alone, as segments in a tree."""
        return EdgeLines([self])

    def holds(self, place: Point) -> bool:
        """Whether a place lies inside the edge."""
        return bool(shapely.contains(self._area, place))

    def corners_between(self, start: float, end: float) -> bool:
        """Whether a corner lies between so many metres along the edge and so many."""
        return bool(
            np.searchsorted(self.along, start, side="right") < np.searchsorted(self.along, end, side="left")
        )

    def between(self, start: float, end: float) -> LineString:
        """Return the edge from so many metres along it to so many; past its first corner where the end comes first."""
        inner = (
            [self.corners[(self.along > start) & (self.along < end)]]
            if end > start
            else self._around(start, end)
        )
        places = np.vstack([self._at(start), *inner, self._at(end)])
        kept = np.ones(len(places), dtype=bool)
        kept[1:] = (np.diff(places, axis=0) != 0).any(axis=1)
        places = places[kept]
        return LineString(places if len(places) > 1 else np.vstack([places, places]))

    def _around(self, start: float, end: float) -> list[Floats]:
        return [self.corners[self.along > start], self.corners[self.along < end]]

    def _at(self, along: float) -> Floats:
        return np.array([[np.interp(along, self.along, self.corners[:, axis]) for axis in (0, 1)]])


class EdgeLines:
    """Several closed edges as segments in one tree."""

    def __init__(self, edges: Sequence[EdgeLine]) -> None:
        self._edges = edges
        ends = [(edge.corners[:-1], edge.corners[1:], edge.along[:-1]) for edge in edges]
        self._from = np.vstack([np.empty((0, 2)), *(one for one, _, _ in ends)])
        self._to = np.vstack([np.empty((0, 2)), *(one for _, one, _ in ends)])
        self._along = np.concatenate([np.empty(0), *(one for _, _, one in ends)])
        self._edge = np.repeat(np.arange(len(edges)), [len(one) for one, _, _ in ends])
        segments = np.empty(0, dtype=object)
        if len(self._from):
            segments = np.asarray(shapely.linestrings(np.stack([self._from, self._to], axis=1)), dtype=object)
        self._tree = STRtree(segments)

    def nearest(self, places: Floats) -> tuple[NDArray[np.intp], Floats, Floats]:
        """Return for places, shape (n, 2), the number of the nearest edge, the distance, and how far along it, metres.

        Of edges as near, the first; there must be one.
        """
        points = shapely.points(places)
        (which, segment), apart = self._tree.query_nearest(points, return_distance=True, all_matches=True)
        order = np.lexsort((segment, which))
        first = order[np.flatnonzero(np.diff(which[order], prepend=-1))]
        segment = segment[first]
        way = self._to[segment] - self._from[segment]
        length = np.hypot(*way.T)
        on = ((places[which[first]] - self._from[segment]) * way).sum(axis=1) / np.maximum(length, 1e-300)
        return self._edge[segment], apart[first], self._along[segment] + np.clip(on, 0.0, length)

    def within(self, places: Floats, distance: float) -> NDArray[np.intp]:
        """Return pairs (place, edge) of places no further from an edge than a distance, shape (m, 2), in order."""
        which, segment = self._tree.query(shapely.points(places), predicate="dwithin", distance=distance)
        return np.unique(np.column_stack([which, self._edge[segment]]), axis=0)
