"""Where a footprint just touches an obstruction: the boundary of a Minkowski sum, without building the sum.

A footprint F at x overlaps an obstruction P exactly when x lies in P + (-F). Where it touches without
overlapping, a corner of one lies on an edge of the other, and the edge runs between the two edges that
meet in that corner. So the boundary of the sum is part of the *reduced convolution*: each edge of one moved
by every convex corner of the other whose edges it runs between (Kaul, O'Connor and Srinivasan 1991; Behar
and Lien 2011). Parts of those segments lie inside the sum; every point taken from them is therefore tested
against the original shapes (:mod:`marram.relief.interference.interference`).
"""

import numpy as np
from numpy.typing import NDArray

from marram.relief.geometry.corners import Corners, Floats

_PARALLEL = -1e-9
"""Sine of an angle: edges this nearly parallel count as running between; a segment too many does no harm."""


def convolution(obstruction: Corners, footprint: Corners) -> Floats:
    """Return segments (x from, y from, x to, y to) that hold the whole boundary of the sum.

    Args:
        obstruction: the obstruction's edges, or those near enough to matter.
        footprint: the footprint's edges, mirrored in the ball.
    """
    moved = []
    for still, turning in ((obstruction, footprint), (footprint, obstruction)):
        if len(still.edges) and len(turning.edges):
            edge, corner = np.nonzero(_runs_between(still.along, turning))
            at = turning.points[corner]
            moved.append(still.edges[edge] + np.concatenate((at, at), axis=1))
    return np.concatenate(moved) if moved else np.empty((0, 4))


def _runs_between(along: Floats, corners: Corners) -> NDArray[np.bool_]:
    x, y = along[:, :1], along[:, 1:]
    after_incoming = corners.before[:, 0] * y - corners.before[:, 1] * x >= _PARALLEL
    before_outgoing = x * corners.along[:, 1] - y * corners.along[:, 0] >= _PARALLEL
    result: NDArray[np.bool_] = after_incoming & before_outgoing & corners.convex
    return result
