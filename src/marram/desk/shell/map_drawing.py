"""The course as GeoJSON for the map on the screen: what the ground looks like, and where the holes run."""

import json
from collections.abc import Sequence
from typing import Any

import numpy as np
from shapely import orient_polygons, to_geojson, transform
from shapely.geometry.base import BaseGeometry

from marram.course.lies.as_read import pieces_as_read
from marram.course.lies.joined_as_read import joined
from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Kind
from marram.services.offline.course_map import DRAWN as DRAWN_ON_PHONE

DRAWN: tuple[Kind, ...] = (*DRAWN_ON_PHONE, Kind.STAKE)
"""What is drawn, lowest first."""


def course_drawing(course: Course) -> dict[str, Any]:
    """Return the course as a GeoJSON feature collection in degrees, in drawing order."""
    features = [area_drawn(area, in_degrees(course, area.geometry)) for area in areas_drawn(course)]
    return collection(course, features)


def areas_drawn(course: Course) -> list[UnitedArea]:
    """Return what is drawn of a course in drawing order: the ground as it is read, what is joined as one area."""
    if areas_drawn not in course.kept:
        course.kept[areas_drawn] = joined(pieces_as_read(course, *DRAWN))
    found: list[UnitedArea] = course.kept[areas_drawn]
    return found


def area_drawn(area: UnitedArea, geometry: dict[str, Any]) -> dict[str, Any]:
    """Return an area as the drawing holds it: with the names and the holes of all its features."""
    holes = sorted({hole for feature in area.features for hole in feature.holes})
    names = dict.fromkeys(feature.name for feature in area.features if feature.name)
    told = {"kind": area.kind.value, "name": ", ".join(names), "holes": holes}
    return {"type": "Feature", "properties": told, "geometry": geometry}


def collection(course: Course, features: list[dict[str, Any]]) -> dict[str, Any]:
    """Return a drawing of these features, with the lines of play and the holes above them."""
    every = [*features]
    for hole in course.holes.values():
        told = {"number": hole.number, "par": hole.par, "stroke_index": hole.stroke_index}
        line = {"kind": "line_of_play", "metres": round(hole.line.length), **told}
        every.append({"type": "Feature", "properties": line, "geometry": in_degrees(course, hole.line)})
        pin = {"kind": "hole", **told}
        every.append({"type": "Feature", "properties": pin, "geometry": in_degrees(course, hole.location)})
    return {"type": "FeatureCollection", "marram": 1, "credit": course.credit, "features": every}


def in_degrees(course: Course, geometry: BaseGeometry, places: int = 8) -> dict[str, Any]:
    """Return a geometry in metres as a GeoJSON geometry in degrees, rounded to decimal places.

    Outlines run counterclockwise, holes in them clockwise (RFC 7946, 3.1.6).
    """
    return in_degrees_all(course, [geometry], places)[0]


def in_degrees_all(
    course: Course, geometries: Sequence[BaseGeometry], places: int = 8
) -> list[dict[str, Any]]:
    """Return many geometries at once, each as :func:`in_degrees` gives it."""
    if not geometries:
        return []
    placed = transform(orient_polygons(course.plane.outward_all(geometries)), lambda at: np.round(at, places))
    return [json.loads(one) for one in to_geojson(placed).tolist()]


def rounded(numbers: Any, places: int = 8) -> Any:
    """Return coordinates rounded to decimal places; 8 are about a millimetre on the ground."""
    return round(numbers, places) if isinstance(numbers, float) else [rounded(one, places) for one in numbers]
