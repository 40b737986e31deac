"""The map editor: areas drawn, moved and taken away; each save is a version with the day it is in force from."""

from dataclasses import asdict
from typing import Annotated, Any

from fastapi import APIRouter, Form, Request
from fastapi.responses import HTMLResponse, JSONResponse, RedirectResponse, Response
from pydantic import BaseModel

from marram.course.map_edits import Edit, EditConflict, feature_ident
from marram.course.versions import MapVersions, Version
from marram.desk.conditions import COOKIE, conditions_of
from marram.desk.errors import answer
from marram.desk.map_drawing import DRAWN
from marram.desk.map_editing import DRAWABLE, drawn_area, kind_of, read_day, tale
from marram.desk.workplace import show, workplace
from marram.errors import InputError

router = APIRouter()
NOT_KEPT = (
    "This desk keeps no versions of its map, so nothing can be edited here. Start it with a GeoJSON map."
)


class GivenEdit(BaseModel):
    """One edit as a program gives it."""

    action: str
    ident: str
    feature: dict[str, Any] | None = None


class GivenSave(BaseModel):
    """What a program saves."""

    base: int
    who: str = ""
    in_force_from: str = ""
    note: str = ""
    edits: list[GivenEdit] = []


class FilledArea(BaseModel):
    """The form of a new area, for whoever draws by coordinates."""

    kind: str = ""
    name: str = ""
    hole: str = ""
    places: str = ""
    base: int = 0
    who: str = ""
    in_force_from: str = ""
    note: str = ""


class FilledRestore(BaseModel):
    """The form that goes back to an earlier version."""

    number: int
    base: int
    who: str = ""
    in_force_from: str = ""


@router.get("/map")
def editor(request: Request, saved: int | None = None) -> HTMLResponse:
    """Show the editor, and the versions."""
    return _page(request, saved=saved)


@router.get("/api/map")
def read_map(request: Request, version: int | None = None) -> Response:
    """The GeoJSON of a version (the newest, unless one is asked for), and every version there is."""
    maps = _maps(request)
    if maps is None:
        return answer(request, 404, "not_kept", [NOT_KEPT])
    versions = maps.versions()
    document = maps.document(versions[-1].number if version is None else version)
    kinds = {feature_ident(one, index): kind_of(one) for index, one in enumerate(document["features"])}
    return JSONResponse(
        {
            "marram": 1,
            "version": versions[-1].number if version is None else version,
            "versions": [_told(maps, one) for one in versions],
            "kinds": {ident: kind.value for ident, kind in kinds.items() if kind},
            "order": [kind.value for kind in DRAWN],
            "map": document,
        }
    )


@router.post("/api/map")
def save_map(request: Request, given: GivenSave) -> Response:
    """Keep edits as a new version: 201; 409 shows both sides of a conflict; 422 lists every fault."""
    maps = _maps(request)
    if maps is None:
        return answer(request, 404, "not_kept", [NOT_KEPT])
    edits = [Edit(one.action, one.ident, one.feature) for one in given.edits]
    try:
        day = read_day(given.in_force_from)
        version = maps.save(edits, base=given.base, who=given.who, in_force_from=day, note=given.note)
    except EditConflict as error:
        mine = {edit.ident for edit in error.theirs}
        body = {
            "marram": 1,
            "error": {"code": "edit_conflict", "message": str(error), "faults": list(error.faults)},
            "latest": error.latest,
            "theirs": [asdict(edit) for edit in error.theirs],
            "yours": [asdict(edit) for edit in edits if edit.ident in mine],
            "saved_meanwhile": [
                {**_told(maps, one), "changes": tale(maps, one, touched)}
                for one in maps.versions()[given.base :]
                if (touched := [edit for edit in one.edits if edit.ident in mine])
            ],
        }
        return JSONResponse(body, 409)
    except InputError as error:
        return answer(request, 422, "refused", list(error.faults))
    return JSONResponse({"marram": 1, "version": _told(maps, version)}, 201)


@router.post("/map")
def save_area(request: Request, filled: Annotated[FilledArea, Form()]) -> Response:
    """Add one area given by its coordinates, without JavaScript."""
    maps = _maps(request)
    if maps is None:
        return _page(request)
    faults: list[str] = []
    try:
        edit = drawn_area(filled.kind, filled.name, filled.hole, filled.places)
    except InputError as error:
        faults += error.faults
    try:
        day = read_day(filled.in_force_from)
    except InputError as error:
        faults += error.faults
    if not filled.who.strip():
        faults.append("Say who saves this version.")
    if faults:
        return _page(request, faults=faults, filled=filled)
    try:
        version = maps.save([edit], base=filled.base, who=filled.who, in_force_from=day, note=filled.note)
    except InputError as error:
        return _page(request, faults=list(error.faults), filled=filled)
    return RedirectResponse(f"/map?saved={version.number}", 303)


@router.post("/map/restore")
def restore(request: Request, filled: Annotated[FilledRestore, Form()]) -> Response:
    """Go back to an earlier version, as a new one."""
    maps = _maps(request)
    if maps is None:
        return _page(request)
    try:
        day = read_day(filled.in_force_from)
        version = maps.restore(filled.number, base=filled.base, who=filled.who, in_force_from=day)
    except InputError as error:
        return _page(request, faults=list(error.faults))
    return RedirectResponse(f"/map?saved={version.number}", 303)


def _maps(request: Request) -> MapVersions | None:
    found: MapVersions | None = request.app.state.maps
    return found


def _page(
    request: Request,
    *,
    saved: int | None = None,
    faults: list[str] | None = None,
    filled: FilledArea | None = None,
) -> HTMLResponse:
    maps = _maps(request)
    versions = maps.versions() if maps else []
    day = conditions_of({}, request.cookies.get(COOKIE, ""), workplace(request).event).on
    return show(
        request,
        "map_editor.html",
        None,
        status=422 if faults else 200,
        title="Edit the map",
        maps=maps,
        not_kept=NOT_KEPT,
        versions=[(one, tale(maps, one) if maps else []) for one in reversed(versions)],
        in_force=maps.version_on(day).number if maps else None,
        latest=versions[-1].number if versions else None,
        drawable=DRAWABLE,
        day=day.isoformat(),
        saved=saved if saved in {one.number for one in versions} else None,
        faults=faults or [],
        filled=filled or FilledArea(in_force_from=day.isoformat()),
    )


def _told(maps: MapVersions, version: Version) -> dict[str, Any]:
    return {
        "number": version.number,
        "saved_at": version.saved_at,
        "in_force_from": version.in_force_from.isoformat() if version.saved_at else None,
        "who": version.who,
        "note": version.note,
        "base": version.base,
        "changes": tale(maps, version),
    }
