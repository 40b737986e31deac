"""The edges and corners of an outline as arrays."""

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


class Corners:
    """The edges and corners of an outline, with the directions of edges as needed for a convolution."""

    __slots__ = ("_boxes", "along", "before", "convex", "edges", "points")

    def __init__(self, edges: Floats, previous: NDArray[np.intp]) -> None:
        along = edges[:, 2:] - edges[:, :2]
        along = along / np.sqrt((along * along).sum(axis=1))[:, None]
        before = along[previous]
        self.edges: Floats = edges
        self.points: Floats = edges[:, :2]
        self.along: Floats = along
        self.before: Floats = before
        turn = before[:, 0] * along[:, 1] - before[:, 1] * along[:, 0]
        starts_x, starts_y, ends_x, ends_y = edges.T
        self._boxes = (
            np.minimum(starts_x, ends_x),
            np.minimum(starts_y, ends_y),
            np.maximum(starts_x, ends_x),
            np.maximum(starts_y, ends_y),
        )
        self.convex: NDArray[np.bool_] = turn > -1e-12

    def near(self, x: float, y: float, reach: float) -> "Corners":
        """Return the edges (and the corners they start at) whose boxes come within a distance of a point."""
        least_x, least_y, greatest_x, greatest_y = self._boxes
        kept = (least_x <= x + reach) & (greatest_x >= x - reach) & (least_y <= y + reach)
        kept &= greatest_y >= y - reach
        if kept.all():
            return self
        near: Corners = object.__new__(Corners)
        near.edges, near.points, near.along = self.edges[kept], self.points[kept], self.along[kept]
        near.before, near.convex = self.before[kept], self.convex[kept]
        return near
