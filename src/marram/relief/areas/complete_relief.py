"""The limit that no interference by the condition is left (Rules 16.1b to d, 16.2b, 13.1f, 17.1e)."""

from dataclasses import dataclass

import numpy as np
import shapely
from shapely import affinity
from shapely.geometry.base import BaseGeometry

from marram.relief.geometry.corners import Floats
from marram.relief.geometry.limits import Bound
from marram.relief.geometry.outline import Outline
from marram.relief.interference.interference import FootprintOn
from marram.relief.interference.nearest_point import nearest_point
from marram.rules.relief_option import Limit

_SLIVER = 1e-6
"""Square metres: a hole in a drawn sum smaller than this is only rounding."""


@dataclass(frozen=True, slots=True)
class CompleteRelief:
    """Lie, stance and swing are clear of the condition, for the same stroke as from the original spot."""

    interference: FootprintOn
    bound: Bound = Bound.COMPLETE_RELIEF
    limit: Limit | None = Limit.COMPLETE_RELIEF

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:  # noqa: ARG002  (the footprint holds the ball)
        """Return how far footprint and condition are apart, or minus the way to the nearest clear place."""
        if self.interference.overlaps((x, y)):
            clear = nearest_point((x, y), (self.interference,), (x, y))
            return -clear.metres if clear else -float("inf")
        placed = self.interference.footprint.at((x, y))
        return min(float(placed.distance(one.geometry)) for one in self.interference.conditions)

    def cut(self, polygon: BaseGeometry) -> BaseGeometry:
        """Return the part of a polygon with complete relief, for drawing."""
        return shapely.difference(polygon, self.forbidden(polygon))

    def forbidden(self, window: BaseGeometry) -> BaseGeometry:
        """Return the places where the footprint overlaps the condition, as far as they matter for a window."""
        least_x, least_y, greatest_x, greatest_y = window.bounds
        reach = self.interference.footprint.radius
        box = shapely.box(least_x - reach, least_y - reach, greatest_x + reach, greatest_y + reach)
        shapes: list[BaseGeometry] = []
        for one in self.interference.conditions:
            near = shapely.intersection(one.geometry, box)
            for part in shapely.get_parts(near):
                if part.geom_type == "Polygon" and not part.is_empty:
                    edges = Outline(part).edges
                    for piece in (one.corners for one in self.interference.footprint.pieces):
                        shapes.append(affinity.translate(part, -piece[0][0], -piece[0][1]))
                        shapes.extend(_swept(edges, piece))
        return _without_slivers(shapely.union_all(shapes))


def _swept(edges: Floats, piece: Floats) -> list[BaseGeometry]:
    """Return for each edge the places where it meets a convex piece: the hull of the piece, mirrored, at its ends."""
    ends = edges.reshape(-1, 2, 1, 2) - piece[None, None, :, :]
    hulls = shapely.convex_hull(shapely.multipoints(ends.reshape(len(edges), -1, 2)))
    return list(np.atleast_1d(np.asarray(hulls, dtype=object)))


def _without_slivers(shape: BaseGeometry) -> BaseGeometry:
    kept = []
    for part in shapely.get_parts(shape):
        holes = [ring for ring in part.interiors if shapely.polygons(ring).area > _SLIVER]
        kept.append(shapely.Polygon(part.exterior, holes))
    return shapely.MultiPolygon(kept) if kept else shape
