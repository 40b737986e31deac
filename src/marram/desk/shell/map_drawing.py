"""The course as GeoJSON for the map on the screen: what the ground looks like, and where the holes run."""

import json
from typing import Any

from shapely import to_geojson
from shapely.geometry.base import BaseGeometry

from marram.course.lies.as_read import as_read
from marram.course.model import Course, Kind

DRAWN: tuple[Kind, ...] = (
    Kind.BOUNDARY,
    Kind.TREES,
    Kind.ROUGH,
    Kind.FAIRWAY,
    Kind.WATER,
    Kind.RED_PENALTY_AREA,
    Kind.YELLOW_PENALTY_AREA,
    Kind.TEEING_AREA,
    Kind.PUTTING_GREEN,
    Kind.BUNKER,
    Kind.PATH,
    Kind.OBSTRUCTION,
    Kind.OUT_OF_BOUNDS,
    Kind.GROUND_UNDER_REPAIR,
    Kind.TEMPORARY_WATER,
    Kind.NO_PLAY_ZONE,
    Kind.DROPPING_ZONE,
    Kind.STAKE,
)
"""What is drawn, lowest first."""


def course_drawing(course: Course) -> dict[str, Any]:
    """Return the course as a GeoJSON feature collection in degrees, in drawing order."""
    features = [
        {
            "type": "Feature",
            "properties": {"kind": feature.kind.value, "name": feature.name, "holes": list(feature.holes)},
            "geometry": in_degrees(course, ground),
        }
        for feature, ground in as_read(course, *DRAWN)
    ]
    for hole in course.holes.values():
        told = {"number": hole.number, "par": hole.par, "stroke_index": hole.stroke_index}
        line = {"kind": "line_of_play", "metres": round(hole.line.length), **told}
        features.append({"type": "Feature", "properties": line, "geometry": in_degrees(course, hole.line)})
        pin = {"kind": "hole", **told}
        features.append({"type": "Feature", "properties": pin, "geometry": in_degrees(course, hole.location)})
    return {"type": "FeatureCollection", "marram": 1, "credit": course.credit, "features": features}


def in_degrees(course: Course, geometry: BaseGeometry) -> dict[str, Any]:
    """Return a geometry in metres as a GeoJSON geometry in degrees."""
    placed: dict[str, Any] = json.loads(to_geojson(course.plane.outward(geometry)))
    placed["coordinates"] = rounded(placed["coordinates"])
    return placed


def rounded(numbers: Any) -> Any:
    """Return coordinates rounded to 8 places: about a millimetre on the ground."""
    return round(numbers, 8) if isinstance(numbers, float) else [rounded(one) for one in numbers]
