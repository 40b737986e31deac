"""The marking sheet: what to mend before play, hole by hole, with boxes to tick."""

from collections.abc import Sequence
from datetime import date

from marram.course.fault import Fault, Severity
from marram.course.marking import marking_sheet
from marram.course.model import Course
from marram.paper.typeset import typeset

_WEIGHT = {Severity.ERROR: "must", Severity.WARNING: "should", Severity.NOTE: "look"}


def marking_pdf(course: Course, faults: Sequence[Fault], *, day: date) -> bytes:
    """Return the marking sheet of a course as PDF.

    Args:
        course: the map.
        faults: what was found, for instance by :func:`marram.course.check`.
        day: the day it is printed for.
    """
    sheets = [
        {
            "hole": "Course" if sheet.hole is None else f"Hole {sheet.hole}",
            "tasks": [
                {"weight": _WEIGHT[one.severity], "what": one.what, "remedy": one.remedy, "where": one.where}
                for one in sheet.tasks
            ],
        }
        for sheet in marking_sheet(course, faults)
    ]
    data = {"course": course.name, "day": f"{day:%d %B %Y}", "sheets": sheets, "credit": course.credit}
    return typeset("marking_sheet", data)
