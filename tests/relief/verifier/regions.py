"""Ground as regions with signed distances: by plain arithmetic on their edges, for many places at once."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely

REACH = 0.05
"""Metres: how far from an edge a depth is told exactly, unless more is asked for."""
_CELLS = 4_000_000
_NOTHING = shapely.Polygon()


@dataclass(frozen=True, eq=False)
class Shape:
    """A polygonal geometry in metres, with its edges as an array."""

    geometry: object

    @cached_property
    def edges(self):
        """All edges, one a row: x, y of the start, x, y of the end."""
        rings = shapely.get_rings(shapely.get_parts(shapely.get_parts(self.geometry)))
        rows = []
        for ring in np.atleast_1d(rings):
            points = shapely.get_coordinates(ring)
            rows.append(np.hstack([points[:-1], points[1:]]))
        return np.vstack(rows) if rows else np.empty((0, 4))

    def holds(self, places):
        """Return for each place (a row) whether it is inside."""
        shapely.prepare(self.geometry)
        return shapely.contains_xy(self.geometry, places[:, 0], places[:, 1])

    @cached_property
    def edge(self):
        """All edges as one geometry, ready for many questions."""
        edge = shapely.boundary(self.geometry)
        shapely.prepare(edge)
        return edge

    def depth(self, places, reach=REACH):
        """Return how many metres inside each place is, negative outside: exactly to ``reach``, which farther ones get."""
        places = np.atleast_2d(places)
        if self.geometry.is_empty:
            return np.full(len(places), -reach)
        low, high = places.min(axis=0) - reach, places.max(axis=0) + reach
        x, y = self.edges[:, ::2], self.edges[:, 1::2]
        met = (x.max(axis=1) >= low[0]) & (x.min(axis=1) <= high[0])
        met &= (y.max(axis=1) >= low[1]) & (y.min(axis=1) <= high[1])
        if not met.any():  # all lie on one side
            return np.full(len(places), reach if self.holds(places[:1])[0] else -reach)
        away = np.full(len(places), float(reach))
        near = np.flatnonzero(shapely.dwithin(self.edge, _points(places), reach))
        if len(near):
            away[near] = np.minimum(distance_to(self.edges[met], places[near]), reach)
        return np.where(self.holds(places), away, -away)


_last = [None, None]


def _points(places):
    """Return places as points; the same array asked for again is not made again."""
    if _last[0] is not places:
        _last[:] = [places, shapely.points(places)]
    return _last[1]


def distance_to(edges, places):
    """Return for each place the distance to the nearest of some segments."""
    step = max(1, _CELLS // max(1, len(edges)))
    found = np.empty(len(places))
    start, along = edges[:, :2], edges[:, 2:] - edges[:, :2]
    length = np.maximum((along**2).sum(axis=1), 1e-30)
    for first in range(0, len(places), step):
        some = places[first : first + step]
        gone = some[:, None, :] - start[None]
        part = np.clip((gone * along[None]).sum(axis=2) / length, 0.0, 1.0)
        rest = gone - part[:, :, None] * along[None]
        found[first : first + step] = np.sqrt((rest**2).sum(axis=2).min(axis=1))
    return found


@dataclass(frozen=True, eq=False)
class Region:
    """Ground that is at least ``least`` and at most ``most``: where the map leaves it open the two differ."""

    least: Shape
    most: Shape

    @classmethod
    def of(cls, least, most=None):
        """Return a region of geometries; without ``most`` the map leaves nothing open."""
        low = Shape(least)
        return cls(low, low if most is None else Shape(most))

    @property
    def empty(self):
        """Whether nothing can be there."""
        return self.most.geometry.is_empty

    def inside(self, places, reach=REACH):
        """Return the strict and the lenient margin of lying in the region."""
        low = self.least.depth(places, reach)
        return low, low if self.most is self.least else self.most.depth(places, reach)

    def outside(self, places, reach=REACH):
        """Return the strict and the lenient margin of lying outside the region."""
        high = -self.least.depth(places, reach)
        return (high if self.most is self.least else -self.most.depth(places, reach)), high

    def without(self, other):
        """Return what is left of the region outside another."""
        if other.empty:
            return self
        least = shapely.difference(self.least.geometry, other.most.geometry)
        if self.least is self.most and other.least is other.most:
            return Region.of(least)
        return Region.of(least, shapely.difference(self.most.geometry, other.least.geometry))


NOWHERE = Region.of(_NOTHING)
