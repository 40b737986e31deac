"""The sea beside a coastline: the ground to the right of the line (OpenStreetMap wiki, Tag:natural=coastline)."""

import numpy as np
import shapely
from shapely.ops import split, substring

SEEN = 500.0
"""Metres about a coastline that are looked at where nothing else says how far the course reaches (own choice)."""

FAR = 20_000.0
"""Metres: nothing that is drawn lies farther out."""


def sea_of(coast, whole):
    """Return what surely and what possibly lies to the right of coastlines, or ``None``.

    Where the course has no boundary, nobody knows how a coast goes on beyond the ends that are mapped: land and sea
    are left open there.

    Args:
        coast: the coastlines in metres, as lines or as areas they enclose.
        whole: the ground that is looked at; ``None``: what lies beside the coast as far as it is mapped.
    """
    coast = [one.exterior if one.geom_type == "Polygon" else one for one in coast]
    if not coast:
        return None
    beyond = shapely.Polygon()
    if whole is None:
        lines = shapely.get_parts(shapely.line_merge(shapely.union_all(coast), directed=True))
        inner = [one if one.is_ring else substring(one, 1.0, one.length - 1.0) for one in lines]
        whole = shapely.union_all([one.buffer(SEEN, cap_style="flat") for one in inner])
        beyond = shapely.box(-FAR, -FAR, FAR, FAR).difference(whole)
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
    least = shapely.union_all(wet)
    return least, shapely.union_all([least, beyond])
