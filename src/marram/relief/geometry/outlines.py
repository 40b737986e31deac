"""Many outlines at once: which of them come near a place is found by their bounding boxes."""

from collections.abc import Iterator
from functools import cached_property

import numpy as np

from marram.relief.geometry.corners import Floats
from marram.relief.geometry.outline import Outline

_FEW = 6
"""So many are sooner asked one by one."""


class Outlines(tuple[Outline, ...]):  # noqa: SLOT001  (the boxes are kept on it)
    """Some outlines, in order."""

    @cached_property
    def _boxes(self) -> Floats:
        return np.array([one.bounds for one in self], dtype=float).reshape(-1, 4).T

    def _apart(self, x: float, y: float) -> Floats:
        """Return for each a distance that it is at least away from a point; negative inside its box."""
        least_x, least_y, greatest_x, greatest_y = self._boxes
        across = np.maximum(least_x - x, x - greatest_x)
        result: Floats = np.maximum(across, np.maximum(least_y - y, y - greatest_y))
        return result

    def indices_near(self, x: float, y: float, reach: float = 0.0) -> list[int]:
        """Return the places in this order of the outlines whose boxes come within a distance of a point."""
        if len(self) <= _FEW:
            return [index for index, one in enumerate(self) if one.apart(x, y) <= reach]
        found: list[int] = np.flatnonzero(self._apart(x, y) <= reach).tolist()
        return found

    def near(self, x: float, y: float, reach: float = 0.0) -> list[Outline]:
        """Return the outlines whose boxes come within a distance of a point."""
        return [self[index] for index in self.indices_near(x, y, reach)]

    def nearest_boxes_first(self, x: float, y: float) -> Iterator[tuple[float, Outline]]:
        """Yield (a distance that it is at least away from a point, outline), the least distance first."""
        if len(self) <= _FEW:
            yield from sorted(((one.apart(x, y), one) for one in self), key=lambda pair: pair[0])
            return
        apart = self._apart(x, y)
        for index in apart.argsort().tolist():
            yield float(apart[index]), self[index]
