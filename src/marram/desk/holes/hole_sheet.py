"""The hole location sheet of a day: as a page, as PDF on either paper, and as a drawing; for players or the Committee."""

from collections.abc import Mapping
from datetime import date
from typing import Annotated

from fastapi import APIRouter, Query, Request
from fastapi.responses import HTMLResponse, Response
from pydantic import BaseModel
from shapely.geometry import Point

from marram.desk.holes.hole_locations import setting_of
from marram.desk.holes.hole_setting import HoleSetting
from marram.desk.holes.readers import Reader
from marram.desk.shell.errors import answer
from marram.desk.shell.workplace import show
from marram.errors import InputError
from marram.paper.hole_location_sheet import sheet_pdf, sheet_rows, sheet_svg, slope_note
from marram.paper.paper_size import PaperSize
from marram.words.texts import text

router = APIRouter()


class SheetAsked(BaseModel):
    """What sheet is asked for: for whom, on which paper, for which green speed."""

    reader: Reader = Reader.COMMITTEE
    paper: PaperSize = PaperSize.A4
    speed: float | None = None


@router.get("/holes/{day}/sheet")
def page(request: Request, day: date, asked: Annotated[SheetAsked, Query()]) -> HTMLResponse:
    """The sheet of what is saved for a day, to be read on a screen or printed on one page."""
    setting = setting_of(request, day, asked.speed)
    places = _saved(setting)
    players = asked.reader is Reader.PLAYERS
    return show(
        request,
        "hole_sheet.html",
        None,
        title=text("holes.title"),
        day=day,
        reader=asked.reader.value,
        query="" if asked.speed is None else f"&speed={asked.speed:g}",
        heading=_called(request, setting, day),
        course_name=setting.course.name or text("shell.course"),
        rows=sheet_rows(setting.course, places, setting.slopes, for_players=players),
        slope="" if players else slope_note(setting.slopes),
        papers=[one.value for one in PaperSize],
    )


@router.get("/holes/{day}/sheet.{form}")
def sheet(request: Request, day: date, form: str, asked: Annotated[SheetAsked, Query()]) -> Response:
    """The sheet of what is saved for a day, as PDF or SVG."""
    setting = setting_of(request, day, asked.speed)
    places = _saved(setting)
    players = asked.reader is Reader.PLAYERS
    name = f"hole-locations-{day.isoformat()}{'-players' if players else ''}.{form}"
    headers = {"Content-Disposition": f'attachment; filename="{name}"'}
    if form == "pdf":
        content = sheet_pdf(
            setting.course,
            places,
            title=_called(request, setting, day),
            day=day,
            slopes=setting.slopes,
            for_players=players,
            paper=asked.paper,
        )
        return Response(content, media_type="application/pdf", headers=headers)
    if form == "svg":
        drawing = sheet_svg(setting.course, places, setting.slopes, for_players=players)
        return Response(drawing, media_type="image/svg+xml", headers=headers)
    return answer(request, 404, "not_found", [text("holes.fault.no_sheet", form=form)])


def _saved(setting: HoleSetting) -> Mapping[int, Point]:
    """Return what is saved for the day; a sheet shows nothing else."""
    if lost := setting.lost():
        raise InputError(*(text("holes.fault.lost", hole=hole) for hole in lost))
    places = setting.saved()
    if not places:
        raise InputError(text("holes.fault.none_saved", day=setting.day.isoformat()))
    return places


def _called(request: Request, setting: HoleSetting, day: date) -> str:
    """Return the name of the competition with the round of that day, else that of the course."""
    event = request.app.state.workplace.event
    named = " · ".join(part for part in (event.name, event.round_on(day)) if part)
    return named or setting.course.name or text("shell.course")
