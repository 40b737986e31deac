"""The part of a shape that has an area: cutting polygons can leave points and lines where they only touch."""

import shapely
from shapely.geometry.base import BaseGeometry


def areal(shape: BaseGeometry) -> BaseGeometry:
    """Return the polygons of a shape as one polygon or several; empty where it has no area."""
    if shape.geom_type == "Polygon" or (shape.geom_type == "MultiPolygon" and not shape.is_empty):
        return shape
    parts = [
        part
        for part in shapely.get_parts(shapely.get_parts(shape)).tolist()
        if part.geom_type == "Polygon" and not part.is_empty
    ]
    return parts[0] if len(parts) == 1 else shapely.MultiPolygon(parts)
