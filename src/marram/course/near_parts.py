"""Of two shapes only what lies near the other, so that a long river is not gone over for every bunker beside it."""

from collections import defaultdict
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

MANY = 200
"""Corners: shapes with no more are taken as they are (own choice; cutting costs about as much as it saves there)."""

Shapes = NDArray[np.object_]


def near_parts(first: Shapes, second: Shapes, reach: float) -> tuple[Shapes, Shapes]:
    """Return pairs of shapes, of each what lies within the other's bounds and some metres around them.

    Only shapes of very many corners are cut. What is nearer than ``reach`` to the other shape stays as it is.

    Args:
        first: one shape of each pair.
        second: the other.
        reach: how far around the bounds nothing is cut, metres.
    """
    return parts_near(first, second, reach), parts_near(second, first, reach)


def parts_near(shapes: Shapes, others: Shapes, reach: float) -> Shapes:
    """Return shapes, of each what lies within the bounds of the other of its pair and ``reach`` metres around them."""
    large: dict[int, list[int]] = defaultdict(list)
    for i in np.flatnonzero(shapely.get_num_coordinates(shapes) > MANY).tolist():
        large[id(shapes[i])].append(i)
    parts = shapes.copy()
    boxes = shapely.bounds(others) + np.array([-reach, -reach, reach, reach])
    for pairs in large.values():
        _share_out(shapes[pairs[0]], boxes, np.array(pairs), parts)
    return parts


def _share_out(shape: BaseGeometry, boxes: NDArray[np.float64], which: NDArray[Any], parts: Shapes) -> None:
    """Set the parts of a shape in some boxes, halving the boxes and what is left of the shape together."""
    if len(which) == 1 or shapely.get_num_coordinates(shape) <= MANY:
        parts[which] = shapely.intersection(shape, shapely.box(*boxes[which].T))
        return
    low, high = boxes[which, :2], boxes[which, 2:]
    here = shapely.intersection(shape, shapely.box(*low.min(0), *high.max(0)))
    middles = low + high
    order = np.argsort(middles[:, np.argmax(np.ptp(middles, axis=0))], kind="stable")
    for half in np.array_split(which[order], 2):
        _share_out(here, boxes, half, parts)
