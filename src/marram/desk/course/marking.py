"""The marking sheet at the desk: what to mend before play, hole by hole and on the map."""

from datetime import date
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response

from marram.course.checks.stakes import stakes_of
from marram.course.fault import Fault
from marram.course.versions.map_versions import MapVersions
from marram.desk.competition.conditions import COOKIE, conditions_of
from marram.desk.shell.workplace import show
from marram.paper.marking_sheet import looked_at_words, numbered
from marram.paper.paper_size import PaperSize
from marram.services.ground.marking import Marking, check_marking
from marram.words.spoken import spoken
from marram.words.texts import text

router = APIRouter()


@router.get("/marking")
def page(request: Request, day: date | None = None) -> HTMLResponse:
    """Show what to mend, with its places on the map."""
    on, found = _marking(request, day)
    told = _told(found)
    return show(
        request,
        "marking.html",
        None,
        title=text("marking.title"),
        day=on,
        course_name=found.course.name or text("marking.course"),
        sheets=told["sheets"],
        count=len(found.faults),
        looked_at=told["looked_at"],
        findings={"day": on.isoformat(), "places": told["places"], "stakes": told["stakes"]},
    )


@router.get("/api/marking")
def read_marking(request: Request, day: date | None = None) -> dict[str, Any]:
    """What to mend, by hole, each with its place; and the stakes."""
    on, found = _marking(request, day)
    return {"marram": 1, "day": on.isoformat(), **_told(found)}


@router.get("/marking/sheet.pdf")
def sheet(request: Request, day: date | None = None, paper: PaperSize = PaperSize.A4) -> Response:
    """The marking sheet as PDF, on either paper."""
    on, found = _marking(request, day)
    name = f"marking-{on.isoformat()}.pdf"
    return Response(
        found.pdf(on, paper),
        media_type="application/pdf",
        headers={"Content-Disposition": f'attachment; filename="{name}"'},
    )


def _marking(request: Request, day: date | None) -> tuple[date, Marking]:
    state = request.app.state
    event = state.workplace.event
    conditions = conditions_of({}, request.cookies.get(COOKIE, ""), event)
    on = day or conditions.on
    maps: MapVersions | None = state.maps
    if maps is None:
        return on, check_marking(state.course_file, conditions.local, event.adopted)
    return on, check_marking(maps.document_on(on), conditions.local, event.adopted)


def _told(found: Marking) -> dict[str, Any]:
    """Return the findings by hole and, numbered, those with a place; and the stakes by colour."""
    sheets: list[dict[str, Any]] = []
    places: list[dict[str, Any]] = []
    for hole_sheet, tasks in numbered(found.course, found.faults):
        for fault, number, _ in tasks:
            if number is not None and fault.latitude is not None and fault.longitude is not None:
                at = [round(fault.latitude, 8), round(fault.longitude, 8)]
                places.append(
                    {"number": number, "at": at, "severity": fault.severity.value, "what": spoken(fault.what)}
                )
        sheets.append(
            {"hole": hole_sheet.hole, "tasks": [_task(fault, number) for fault, number, _ in tasks]}
        )
    stakes = []
    for stake in stakes_of(found.course):
        longitude, latitude = found.course.plane.to_degrees(stake.place.x, stake.place.y)
        stakes.append({"at": [round(latitude, 8), round(longitude, 8)], "colour": stake.colour})
    subjects = [
        {
            "subject": one.subject.value,
            "count": one.count,
            "found": one.found,
            "words": what,
            "outcome": outcome,
        }
        for one, what, outcome in looked_at_words(found.looked_at())
    ]
    return {"sheets": sheets, "places": places, "stakes": stakes, "looked_at": subjects}


def _task(fault: Fault, number: int | None) -> dict[str, Any]:
    return {
        "number": number,
        "check": fault.check,
        "severity": fault.severity.value,
        "weight": text(f"marking.weight.{fault.severity.value}"),
        "what": spoken(fault.what),
        "remedy": spoken(fault.remedy),
        "where": spoken(fault.where),
    }
