"""The map editor: areas drawn, moved and taken away; each save is a version with the day it is in force from."""

from datetime import date
from typing import Annotated

from fastapi import APIRouter, Form, Request
from fastapi.responses import HTMLResponse, RedirectResponse, Response

from marram.course.evacuation import Offers
from marram.course.versions.course_file import FileNews
from marram.course.versions.map_edits import EditConflict, by_ident
from marram.course.versions.map_versions import MapVersions, Overlap
from marram.desk.course.map_api import maps_of, new_faults, servable_on, usable, usual_day
from marram.desk.course.map_editing import (
    DRAWABLE,
    changes_in_words,
    drawn_area,
    read_day,
    tale,
)
from marram.desk.course.saver import keep_saver, saver
from marram.desk.course.saving import Saving, not_kept
from marram.desk.shell.workplace import show
from marram.errors import InputError
from marram.words.texts import text

router = APIRouter()


class FilledArea(Saving):
    """The form of a new area, for whoever draws by coordinates."""

    kind: str = ""
    name: str = ""
    hole: str = ""
    serves: str = ""
    evacuation: str = ""
    places: str = ""
    note: str = ""


class FilledRestore(Saving):
    """The form that goes back to an earlier version."""

    number: int


class FilledFile(Saving):
    """The form that decides about changes of the course file."""

    mark: str = ""
    take: bool = False
    overlap: Overlap = Overlap.ASK


@router.get("/map")
def editor(request: Request, saved: int | None = None, on: str | None = None) -> HTMLResponse:
    """Show the editor on the map of a day, and the versions."""
    return _page(request, saved=saved, day=read_day(on) if on else None)


@router.post("/map")
def save_area(request: Request, filled: Annotated[FilledArea, Form()]) -> Response:
    """Add one area given by its coordinates, without JavaScript."""
    maps = maps_of(request)
    if maps is None:
        return not_kept(request)
    edit, faults = None, list[str]()
    try:
        edit = drawn_area(
            filled.kind, filled.name, filled.hole, filled.places, filled.serves, evacuation=filled.evacuation
        )
    except InputError as error:
        faults += error.faults
    try:
        day = filled.signed(*faults, unsigned=text("editor.fault.who"))
        assert edit is not None
        version = maps.save(
            [edit],
            base=filled.base,
            who=filled.who,
            in_force_from=day,
            note=filled.note,
            mending=not usable(maps, day),
        )
    except InputError as error:
        return _page(request, faults=list(error.faults), filled=filled)
    return _saved(version.number, day, filled.who)


@router.post("/map/restore")
def restore(request: Request, filled: Annotated[FilledRestore, Form()]) -> Response:
    """Go back to an earlier version, as a new one."""
    maps = maps_of(request)
    if maps is None:
        return not_kept(request)
    try:
        day = filled.signed(unsigned=text("editor.fault.who"))
        version = maps.restore(filled.number, base=filled.base, who=filled.who, in_force_from=day)
    except InputError as error:
        return _page(request, faults=list(error.faults))
    return _saved(version.number, day, filled.who)


@router.post("/map/file")
def settle_file(request: Request, filled: Annotated[FilledFile, Form()]) -> Response:
    """Take the changes of the course file over as a new version, or leave them out."""
    maps = maps_of(request)
    if maps is None:
        return not_kept(request)
    try:
        day = filled.signed(unsigned=text("editor.fault.who"))
        version = maps.settle_file(
            filled.mark, take=filled.take, who=filled.who, in_force_from=day, overlap=filled.overlap
        )
    except EditConflict as error:
        return _page(request, faults=list(error.faults), both=True)
    except InputError as error:
        return _page(request, faults=list(error.faults))
    return _saved(version.number, day, filled.who)


def _saved(number: int, day: date, who: str) -> Response:
    return keep_saver(RedirectResponse(f"/map?saved={number}&on={day}", 303), who)


def _page(
    request: Request,
    *,
    saved: int | None = None,
    day: date | None = None,
    faults: list[str] | None = None,
    filled: FilledArea | None = None,
    both: bool = False,
) -> HTMLResponse:
    maps = maps_of(request)
    day = day or usual_day(request)
    if maps is None:
        return not_kept(request)
    versions = maps.versions()
    here = maps.map_on(day)
    known = saved is not None and 1 < saved <= len(versions)
    news = maps.file_news()
    return show(
        request,
        "map_editor.html",
        None,
        status=422 if faults else 200,
        title=text("editor.title"),
        maps=maps,
        versions=[(one, tale(maps, one)) for one in reversed(versions)],
        here=here,
        prepared=maps.prepared(day),
        latest=len(versions),
        drawable=DRAWABLE,
        offers=list(Offers),
        servable=servable_on(maps, here.version.number, here.since),
        day=day.isoformat(),
        on=day,
        usable=usable(maps, day),
        saved=versions[saved - 1] if known and saved else None,
        new_faults=new_faults(maps, saved) if known and saved else [],
        news=news,
        news_told=_news_told(maps, news),
        both=both,
        faults=faults or [],
        who=saver(request),
        filled=filled or FilledArea(in_force_from=day.isoformat(), who=saver(request)),
    )


def _news_told(maps: MapVersions, news: FileNews | None) -> list[str]:
    if news is None or news.fault:
        return []
    told = changes_in_words(news.edits, by_ident(maps.noted_file()))
    return [*told, *(text("editor.file.beside", key=key) for key in news.beside)]
