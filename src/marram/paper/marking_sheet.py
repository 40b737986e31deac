"""The marking sheet: what to mend before play, hole by hole, with boxes to tick and the places on a drawing."""

from collections.abc import Iterator, Sequence
from datetime import date
from typing import Any

from shapely.geometry import Point

from marram.course.checks.marking import HoleSheet, marking_sheet
from marram.course.fault import Fault, Severity
from marram.course.model import Course
from marram.paper.marking_drawing import marking_svg
from marram.paper.typeset import typeset

_WEIGHT = {Severity.ERROR: "must", Severity.WARNING: "should", Severity.NOTE: "look"}


def marking_pdf(course: Course, faults: Sequence[Fault], *, day: date) -> bytes:
    """Return the marking sheet of a course as PDF; tasks with a place are numbered, and drawn with their number.

    Args:
        course: the map.
        faults: what was found, for instance by :func:`marram.course.check`.
        day: the day it is printed for.
    """
    sheets: list[dict[str, Any]] = []
    drawings: dict[str, str] = {}
    for index, (sheet, tasks) in enumerate(numbered(course, faults)):
        places = {number: place for _, number, place in tasks if number is not None and place is not None}
        if places:
            line = None if sheet.hole is None else course.holes[sheet.hole].line
            drawings[f"places-{index}"] = marking_svg(course, places, line)
        sheets.append(
            {
                "hole": "Course" if sheet.hole is None else f"Hole {sheet.hole}",
                "drawing": f"places-{index}.svg" if places else "",
                "tasks": [
                    {
                        "number": number,
                        "weight": _WEIGHT[one.severity],
                        "what": one.what,
                        "remedy": one.remedy,
                        "where": one.where,
                    }
                    for one, number, _ in tasks
                ],
            }
        )
    data = {"course": course.name, "day": f"{day:%d %B %Y}", "sheets": sheets, "credit": course.credit}
    return typeset("marking_sheet", data, drawings)


def numbered(
    course: Course, faults: Sequence[Fault]
) -> Iterator[tuple[HoleSheet, list[tuple[Fault, int | None, Point | None]]]]:
    """Yield the sheets with their tasks; those with a place have a number, 1 for the first of all, and the place."""
    count = 0
    for sheet in marking_sheet(course, faults):
        tasks: list[tuple[Fault, int | None, Point | None]] = []
        for fault in sheet.tasks:
            if fault.longitude is None or fault.latitude is None:
                tasks.append((fault, None, None))
                continue
            count += 1
            place = Point(course.plane.to_metres(fault.longitude, fault.latitude))
            tasks.append((fault, count, place))
        yield sheet, tasks
