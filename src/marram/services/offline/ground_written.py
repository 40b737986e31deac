"""Ground as it is written for a phone: polygons and lines in whole millimetres, each kept once and named by its place."""

from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from marram.services.offline.pool import Pool

MILLIMETRES = 1000.0
"""In a metre: coordinates are rounded to one, far less than a ball."""


class GroundPool:
    """Polygons and lines: a polygon is its rings, a ring or line is ``[x, y, dx, dy, …]`` in millimetres."""

    def __init__(self) -> None:
        self.polygons, self.lines = Pool(), Pool()

    def areas(self, shape: BaseGeometry) -> list[int]:
        """Return the places of the polygons of a shape; none where it covers no ground."""
        parts = shapely.get_parts(shapely.normalize(shape), return_index=False)
        return [self._polygon(part) for part in _flat(parts) if part.geom_type == "Polygon"]

    def whole(self, shape: BaseGeometry) -> list[list[int]]:
        """Return the places of the polygons of a shape, and those of its lines and points."""
        parts = _flat(shapely.get_parts(shapely.normalize(shape)))
        others = [part for part in parts if part.geom_type != "Polygon" and not part.is_empty]
        return [self.areas(shape), [self._line(part) for part in others]]

    def _polygon(self, polygon: BaseGeometry) -> int:
        rings = tuple(_steps(ring) for ring in shapely.get_rings(polygon))
        return self.polygons.place([list(ring) for ring in rings], rings)

    def _line(self, line: BaseGeometry) -> int:
        steps = _steps(line)
        return self.lines.place(list(steps), steps)


def _flat(parts: Any) -> list[BaseGeometry]:
    """Return single geometries; a collection may hold several of different kinds."""
    return [one for part in parts for one in (shapely.get_parts(part) if hasattr(part, "geoms") else (part,))]


def _steps(line: BaseGeometry) -> tuple[int, ...]:
    """Return the corners of a line: the first, then each as a step from the one before."""
    corners = np.rint(shapely.get_coordinates(line) * MILLIMETRES).astype(np.int64)
    steps = np.diff(corners, axis=0, prepend=np.zeros((1, 2), dtype=np.int64))
    return tuple(steps.ravel().tolist())


__all__ = ["GroundPool"]
