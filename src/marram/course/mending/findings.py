"""What only mending looks for: doubled positions, tees far from their hole."""

from collections.abc import Iterator
from typing import Any

from shapely.geometry import Point

from marram.course.fault import Fault, Severity
from marram.course.mending.shapes import without_doubled
from marram.course.model import Course
from marram.course.reading.geojson import tags_of
from marram.course.reading.geojson_geometry import first_position
from marram.course.scheme import meaning
from marram.course.versions.map_edits import Document, feature_ident
from marram.said import counted, said

FAR = 250.0
"""A tee further than this from the beginning of the line of play it names looks like another hole's, metres (own choice)."""


def drawing_faults(document: Document, course: Course | None) -> list[Fault]:
    """Return what a drawing has that no ruling suffers from, but that is worth mending."""
    found = list(_doubled(document))
    if course is not None:
        found += _far_tees(course)
    return found


def _doubled(document: Document) -> Iterator[Fault]:
    for index, feature in enumerate(document["features"]):
        geometry = feature.get("geometry")
        if not isinstance(geometry, dict) or meaning(tags_of(feature.get("properties") or {})) is None:
            continue
        once = without_doubled(geometry)
        if once is None:
            continue
        count = _count(geometry["coordinates"]) - _count(once["coordinates"])
        longitude, latitude = first_position(geometry) or (None, None)
        yield Fault(
            Severity.NOTE,
            "doubled_position",
            counted(
                "{count} of its positions repeats the one before",
                "{count} of its positions repeat the one before",
                count,
            ),
            said("Keep each place once, or leave it: no answer depends on it."),
            feature_ident(feature, index),
            None,
            longitude,
            latitude,
        )


def _count(value: Any) -> int:
    if isinstance(value, list) and value and isinstance(value[0], list):
        return sum(_count(part) for part in value)
    return 1


def _far_tees(course: Course) -> Iterator[Fault]:
    for hole in course.holes.values():
        start = Point(hole.line.coords[0])
        for tee in hole.tees:
            away = tee.geometry.distance(start)
            if away <= FAR or not tee.ref:
                continue
            longitude, latitude = course.plane.to_degrees(tee.geometry.centroid.x, tee.geometry.centroid.y)
            yield Fault(
                Severity.WARNING,
                "tee_far_off",
                said(
                    "this tee says it belongs to hole {hole}, whose line of play begins {away:.0f} m away",
                    hole=hole.number,
                    away=away,
                ),
                said("Correct its ref, or the line of play."),
                tee.ident,
                hole.number,
                longitude,
                latitude,
            )
