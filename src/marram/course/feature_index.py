"""The features of some kinds with an index of where they lie, kept for as long as the map is.

Every question of the form "which of these are near that" is asked here, of a tree, so that a map of fifty thousand
features is looked at once and not once for each of them.
"""

from collections.abc import Iterable, Iterator, Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Feature, Kind
from marram.course.near_pairs import near_pairs

AT_ONCE = 20_000
"""So many shapes are asked about at once, so that the pairs of a crowded map never fill the memory (own choice)."""


class FeatureIndex:
    """Features and a tree of their shapes.

    Attributes:
        features: the features, in the order of the map.
        shapes: their geometries, prepared.
    """

    def __init__(self, features: Sequence[Feature]) -> None:
        self.features = tuple(features)
        self.shapes = as_array(feature.geometry for feature in features)
        shapely.prepare(self.shapes)
        self._tree = STRtree(self.shapes)

    def near(self, shape: BaseGeometry, distance: float = 0.0) -> tuple[Feature, ...]:
        """Return the features that touch a shape or lie no further from it, metres, in the order of the map."""
        west, south, east, north = shape.bounds
        box = shapely.box(west - distance, south - distance, east + distance, north + distance)
        found = np.sort(self._tree.query(box))
        near = self.shapes[found]
        touching = shapely.dwithin(near, shape, distance) if distance else shapely.intersects(near, shape)
        return tuple(self.features[i] for i in found[touching].tolist())

    def groups(
        self, shapes: NDArray[np.object_], distance: float = 0.0
    ) -> Iterator[tuple[int, tuple[Feature, ...]]]:
        """Yield the number of each shape that is near any feature, with those features in the order of the map."""
        for first in range(0, len(shapes), AT_ONCE):
            some = shapes[first : first + AT_ONCE]
            which, found = near_pairs(self._tree, some, distance)
            order = np.lexsort((found, which))
            which, found = which[order], found[order]
            starts = np.flatnonzero(np.diff(which, prepend=-1))
            ends = np.append(starts[1:], len(which))[: len(starts)]
            for start, end in zip(starts.tolist(), ends.tolist(), strict=True):
                yield first + int(which[start]), tuple(self.features[i] for i in found[start:end].tolist())

    def nearest(self, shape: BaseGeometry) -> Feature | None:
        """Return the nearest feature, the first of several; ``None`` where there is none."""
        found = self._tree.query_nearest(shape) if len(self.features) else ()
        return self.features[int(min(found))] if len(found) else None

    def union_near(self, shape: BaseGeometry) -> BaseGeometry:
        """Return the union of the features that touch a shape; empty where none does."""
        return shapely.union_all([feature.geometry for feature in self.near(shape)])


def as_array(shapes: Iterable[BaseGeometry]) -> NDArray[np.object_]:
    """Return geometries as an array of them."""
    return np.fromiter(shapes, dtype=object)


def index_of(course: Course, *kinds: Kind) -> FeatureIndex:
    """Return the features of some kinds with their index; it is kept for as long as the course is."""
    key = (FeatureIndex, *kinds)
    if key not in course.kept:
        course.kept[key] = FeatureIndex(course.of(*kinds))
    found: FeatureIndex = course.kept[key]
    return found
