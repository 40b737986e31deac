"""Relief areas as GeoJSON (RFC 7946): WGS 84 degrees, ready for any map."""

from collections.abc import Sequence
from typing import Any

import shapely
from shapely.geometry.base import BaseGeometry

from marram.course.plane import LocalPlane
from marram.relief.areas.construction import ArcMark, LineMark, Mark, PointMark
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.arcs import arc_points
from marram.relief.geometry.areal import areal
from marram.relief.geometry.tolerance import ARC_ERROR

_DECIMALS = 1e-9
"""Degrees: to what coordinates are rounded."""


def feature_collection(areas: Sequence[ReliefArea], plane: LocalPlane) -> dict[str, Any]:
    """Return areas and their construction as a feature collection.

    Coordinates have nine decimals (a tenth of a millimetre). The polygons are pictures: whether a place is in
    an area is told by :meth:`marram.relief.ReliefArea.contains`.
    """
    features = []
    for number, area in enumerate(areas):
        features.append(
            _feature(
                area.picture,
                plane,
                {
                    "what": "relief_area",
                    "area": number,
                    "kind": area.kind.value,
                    "citation": area.option.citation,
                    "club_lengths": area.option.club_lengths,
                    "club_length_m": area.club_length,
                    "radius_m": area.radius,
                    "area_m2": round(area.area_m2, 4),
                    "arc_error_m": area.arc_error,
                    "assumed": list(area.remarks),
                },
            )
        )
        features.extend(
            _feature(_shape(mark), plane, {"what": "construction", "area": number, "role": mark.role.value})
            for mark in area.construction
        )
    return {"type": "FeatureCollection", "features": features}


def _feature(shape: BaseGeometry, plane: LocalPlane, properties: dict[str, Any]) -> dict[str, Any]:
    outward = _rounded(plane.outward(shape))
    return {"type": "Feature", "geometry": shapely.geometry.mapping(outward), "properties": properties}


def _rounded(shape: BaseGeometry) -> BaseGeometry:
    """Return a shape with rounded coordinates, its outer rings anticlockwise, never an invalid ring.

    A sliver narrower than the rounding has no area left: the point it lies at is given.
    """
    rounded = shapely.set_precision(shape, _DECIMALS, mode="pointwise")
    if shape.geom_type not in {"Polygon", "MultiPolygon"}:
        return rounded
    if not rounded.is_valid:
        rounded = areal(shapely.set_precision(shape, _DECIMALS))
    if rounded.is_empty:
        return shapely.set_precision(shapely.point_on_surface(shape), _DECIMALS, mode="pointwise")
    return shapely.orient_polygons(rounded)


def _shape(mark: Mark) -> BaseGeometry:
    if isinstance(mark, PointMark):
        return shapely.Point(mark.at)
    if isinstance(mark, LineMark):
        return shapely.LineString([mark.start, mark.end])
    if isinstance(mark, ArcMark):
        return shapely.LineString(arc_points(mark.centre, mark.radius, mark.start, mark.end, ARC_ERROR))
    return shapely.Polygon(mark.points, mark.holes)
