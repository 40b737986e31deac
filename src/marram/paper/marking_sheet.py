"""The marking sheet: what to mend before play, hole by hole, with boxes to tick and the places on a drawing."""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import Any

from shapely.geometry import Point

from marram.course.checks.looked_at import LookedAt, looked_at
from marram.course.checks.marking import HoleSheet, marking_sheet
from marram.course.fault import Fault, Severity
from marram.course.model import Course
from marram.paper.marking_drawing import marking_svg
from marram.paper.paper_size import PaperSize
from marram.paper.typeset import typeset
from marram.words.language import language
from marram.words.spoken import spoken
from marram.words.texts import capital, count_text, long_day_words, text


def marking_pdf(
    course: Course, faults: Sequence[Fault], *, day: date, paper: PaperSize = PaperSize.A4
) -> bytes:
    """Return the marking sheet of a course as PDF; tasks with a place are numbered, and drawn with their number.

    Args:
        course: the map.
        faults: what was found, for instance by :func:`marram.course.check`.
        day: the day it is printed for.
        paper: what it is printed on.
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
                "hole": (where := _called(sheet)),
                "alt": text("marking.places", hole=where),
                "drawing": f"places-{index}.svg" if places else "",
                "tasks": [
                    {
                        "number": number,
                        "must": one.severity is Severity.ERROR,
                        "what": capital(spoken(one.what)),
                        "remedy": spoken(one.remedy),
                        "where": spoken(one.where),
                    }
                    for one, number, _ in tasks
                ],
            }
        )
    data = {
        "paper": paper.in_typst,
        "course": course.name,
        "day": long_day_words(day),
        "sheets": sheets,
        "looked_at": [[what, outcome] for _, what, outcome in looked_at_words(looked_at(course, faults))],
        "credit": text("marking.credit", credit=course.credit) if course.credit else "",
        "words": {
            "language": language().code,
            "title": text("marking.sheet"),
            "title_of": text("marking.sheet_of", course=course.name or text("shell.the_course")),
            "nothing": text("marking.nothing"),
            "looked_at": text("marking.looked_at"),
            "must": text("marking.must"),
            "decides": text("marking.decides"),
        },
    }
    return typeset("marking_sheet", data, drawings)


def looked_at_words(subjects: Iterable[LookedAt]) -> Iterator[tuple[LookedAt, str, str]]:
    """Yield what was looked at, in words, with the outcome: nothing found, so many found, or none on the map."""
    for one in subjects:
        if one.found:
            outcome = count_text("marking.looked_at.found", one.found)
        else:
            outcome = text("marking.looked_at.found_none" if one.count else "marking.looked_at.none")
        yield one, count_text(f"marking.looked_at.{one.subject.value}", one.count), outcome


def _called(sheet: HoleSheet) -> str:
    return text("marking.course") if sheet.hole is None else text("marking.hole", hole=sheet.hole)


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
