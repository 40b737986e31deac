"""The edges and corners of an outline as arrays."""

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


class Corners:
    """The edges and corners of an outline, with the directions of edges as needed for a convolution."""

    __slots__ = ("along", "before", "convex", "edges", "points")

    def __init__(self, edges: Floats, previous: NDArray[np.intp]) -> None:
        along = edges[:, 2:] - edges[:, :2]
        along = along / np.sqrt((along * along).sum(axis=1))[:, None]
        before = along[previous]
        self.edges: Floats = edges
        self.points: Floats = edges[:, :2]
        self.along: Floats = along
        self.before: Floats = before
        turn = before[:, 0] * along[:, 1] - before[:, 1] * along[:, 0]
        self.convex: NDArray[np.bool_] = turn > -1e-12

    def near(self, x: float, y: float, reach: float) -> "Corners":
        """Return the edges (and the corners they start at) that come within a distance of a point."""
        edges = self.edges
        away = np.array((x, y)) - edges[:, :2]
        length = edges[:, 2:] - edges[:, :2]
        part = (away * length).sum(axis=1) / (length * length).sum(axis=1)
        across = away - np.clip(part, 0.0, 1.0)[:, None] * length
        kept = (across * across).sum(axis=1) <= reach * reach
        near = object.__new__(Corners)
        near.edges, near.points, near.along = edges[kept], self.points[kept], self.along[kept]
        near.before, near.convex = self.before[kept], self.convex[kept]
        return near
