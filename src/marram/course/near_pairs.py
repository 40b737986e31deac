"""Which shapes are near which, where some of them have very many corners.

A tree finds the pairs whose bounds are near each other. Whether the shapes are is asked of the one with more corners, so
that an index of its edges answers for it: a long boundary is not gone over once for every area beside it.
"""

from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree

from marram.course.near_parts import MANY

Shapes = NDArray[np.object_]
Numbers = NDArray[Any]


def near_pairs(tree: STRtree, shapes: Shapes, distance: float = 0.0) -> tuple[Numbers, Numbers]:
    """Return the pairs that touch, or lie no further apart than a distance: which shape, and which of the tree's.

    Args:
        tree: shapes to look for.
        shapes: the others.
        distance: metres.
    """
    if not len(shapes) or not len(tree.geometries):
        return np.empty(0, dtype=np.intp), np.empty(0, dtype=np.intp)
    where = shapely.box(*_grown(shapely.bounds(shapes), distance)) if distance else shapes
    which, found = tree.query(where)
    one, other = shapes[which], tree.geometries[found]
    swapped = shapely.get_num_coordinates(one) < shapely.get_num_coordinates(other)
    first, second = np.where(swapped, other, one), np.where(swapped, one, other)
    shapely.prepare(first[shapely.get_num_coordinates(first) > MANY])
    near = shapely.dwithin(first, second, distance) if distance else shapely.intersects(first, second)
    return which[near], found[near]


def _grown(bounds: NDArray[np.float64], by: float) -> NDArray[np.float64]:
    grown: NDArray[np.float64] = (bounds + np.array([-by, -by, by, by])).T
    return grown
