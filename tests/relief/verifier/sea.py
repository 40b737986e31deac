"""The sea beside a coastline: the ground to the right of the line (OpenStreetMap wiki, Tag:natural=coastline)."""

import numpy as np
import shapely
from shapely.ops import split


def sea_of(coast, whole):
    """Return the part of some ground that lies to the right of coastlines, or ``None``.

    Args:
        coast: the coastlines in metres, as lines or as areas they enclose.
        whole: the ground that is looked at; ``None``: 500 m about the coast.
    """
    coast = [one.exterior if one.geom_type == "Polygon" else one for one in coast]
    if not coast:
        return None
    whole = shapely.union_all(coast).buffer(500) if whole is None else whole
    merged = shapely.line_merge(shapely.union_all(coast), directed=True)
    pieces = [whole]
    for line in shapely.get_parts(merged):
        pieces = [part for piece in pieces for part in split(piece, line).geoms]
    wet = []
    for piece in pieces:
        inner = piece.representative_point()
        nearest = min(coast, key=lambda line: line.distance(inner))
        shared = piece.boundary.intersection(nearest)
        if shared.length < 0.01:
            continue
        at = nearest.project(
            shared.interpolate(0.5, normalized=True) if shared.geom_type == "LineString" else shared.centroid
        )
        a, b = nearest.interpolate(max(0, at - 0.2)), nearest.interpolate(min(nearest.length, at + 0.2))
        mid = nearest.interpolate(at)
        size = np.hypot(b.x - a.x, b.y - a.y)
        right = shapely.Point(mid.x + 0.02 * (b.y - a.y) / size, mid.y - 0.02 * (b.x - a.x) / size)
        if piece.contains(right):
            wet.append(piece)
    return shapely.union_all(wet) if wet else None
