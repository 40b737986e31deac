"""The checks that can refuse a map: with what they find it would give wrong answers.

Who only opens a map needs these alone; the others tell what it cannot be used for, or what is worth a look.
"""

import numpy as np
import shapely
from shapely.geometry import Point

from marram.course.checks.latitude_first import check_latitude_first
from marram.course.fault import Fault, FaultList, Severity
from marram.course.feature_index import index_of
from marram.course.model import Course, Hole, Kind
from marram.course.reading.assembly import boundary_is_outline
from marram.said import said

SPECIFIC = (
    Kind.RED_PENALTY_AREA,
    Kind.YELLOW_PENALTY_AREA,
    Kind.BUNKER,
    Kind.PUTTING_GREEN,
    Kind.TEEING_AREA,
)
"""Kinds of the four specific areas of the course (Rule 2.2b)."""

OVERLAP = 1.0
"""Overlaps up to this many square metres are taken for loose drawing (own choice)."""


def errors_of(course: Course) -> list[Fault]:
    """Return the errors of a map that could be put together, in the order of all checks; nothing less is looked for."""
    faults = FaultList(course.plane)
    check_latitude_first(course, faults)
    for hole in course.holes.values():
        line_backwards(course, hole, faults)
    all_out_of_bounds(course, faults)
    areas_outside(course, faults)
    return [fault for fault in faults.found if fault.severity is Severity.ERROR]


def line_backwards(course: Course, hole: Hole, faults: FaultList) -> None:
    """Refuse a line of play that runs from a green to a tee."""
    start, end = Point(hole.line.coords[0]), Point(hole.line.coords[-1])
    if index_of(course, Kind.PUTTING_GREEN).near(start) and index_of(course, Kind.TEEING_AREA).near(end):
        faults.error(
            "hole_backwards",
            said("its line of play runs from the green to the tee"),
            said("Reverse the line."),
            hole=hole.number,
            at=start,
        )


def all_out_of_bounds(course: Course, faults: FaultList) -> None:
    """Refuse ground out of bounds that holds every hole: what is meant is the boundary around the course."""
    for area in course.of(Kind.OUT_OF_BOUNDS) if course.holes else ():
        if all(area.geometry.contains(hole.location) for hole in course.holes.values()):
            faults.error(
                "all_out_of_bounds",
                said("this ground out of bounds holds every hole: no ball could be played"),
                said(
                    "Mark it marram=boundary if the course lies inside it; else draw the ground that is out of bounds."
                ),
                feature=area.ident,
                at=area.geometry,
            )


def areas_outside(course: Course, faults: FaultList) -> None:
    """Look for lines of play and areas that leave the boundary; an area that does is an error where it is no mere outline."""
    boundaries = course.of(Kind.BOUNDARY)
    if not boundaries:
        return
    ground = shapely.union_all([boundary.geometry for boundary in boundaries])
    shapely.prepare(ground)
    only_outline = boundary_is_outline(course)
    report = faults.warn if only_outline else faults.error
    name = said("outline of the course, which serves as boundary") if only_outline else said("boundary")
    if only_outline:
        faults.warn(
            "outline_as_boundary",
            said(
                "the map has no boundary: the outline of the course serves as one, but property is not always boundary"
            ),
            said("Draw the boundary as it is marked with marram=boundary."),
            feature=boundaries[0].ident,
        )
    for hole in course.holes.values():
        outside = hole.line.difference(ground)
        if outside.length > OVERLAP:
            faults.warn(
                "line_leaves_course",
                said(
                    "its line of play leaves the {name} for {length:.0f} m", name=name, length=outside.length
                ),
                said("Check the boundary; a line of play may cut a corner that is out of bounds."),
                hole=hole.number,
                at=outside,
            )
    areas = index_of(course, *SPECIFIC, Kind.FAIRWAY)
    for number in np.flatnonzero(~shapely.covers(ground, areas.shapes)).tolist():
        area = areas.features[number]
        outside = area.geometry.difference(ground)
        if outside.area > OVERLAP and (area.holes or area.kind is not Kind.TEEING_AREA):
            report(
                "area_outside",
                said(
                    "{area:.0f} m² of this {kind} lie outside the {name}",
                    area=outside.area,
                    kind=area.kind,
                    name=name,
                ),
                said("Check both edges on the ground."),
                feature=area.ident,
                at=outside,
            )
