"""Very many pieces of one area over each other: only what shows at its outline is looked at for seams.

Of pieces that lie over each other nearly every pair overlaps, and a seam between two is nothing where a third covers it.
"""

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from marram.course.lies.groups import Numbers
from marram.course.lies.tolerance import SEAM
from marram.course.near_pairs import near_pairs
from marram.course.near_parts import parts_near

MANY_PAIRS = 4
"""So many pairs for each piece make a group crowded (own choice; about what pieces beside each other have)."""

Shapes = NDArray[np.object_]


def crowded(pieces: int, pairs: int) -> bool:
    """Whether so many pieces with so many pairs that meet lie over each other rather than beside each other."""
    return pairs > MANY_PAIRS * pieces


def showing_pairs(shapes: Shapes, whole: BaseGeometry) -> Numbers:
    """Return the pairs of shapes that come near each other where both show at the outline of the whole, shape (n, 2).

    Args:
        shapes: the pieces; of several that are the same, the first stands for all.
        whole: their union.
    """
    _, first = np.unique(shapely.to_wkb(shapely.normalize(shapes)), return_index=True)
    wholes = np.full(len(first), shapely.buffer(whole, -SEAM, join_style="mitre"), dtype=object)
    inner = parts_near(wholes, shapes[first], SEAM)
    shown = shapely.difference(shapely.boundary(shapes[first]), inner)
    one, other = near_pairs(STRtree(shown), shown, SEAM)
    both = np.column_stack([first[one], first[other]])
    return both[both[:, 0] < both[:, 1]]


def beyond(seams: Shapes, whole: BaseGeometry) -> Shapes:
    """Return what of seams lies outside the whole: there alone is anything left to fill."""
    wholes = np.full(len(seams), whole, dtype=object)
    outside: Shapes = shapely.difference(seams, parts_near(wholes, seams, SEAM))
    return outside
