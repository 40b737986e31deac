"""The map for programs, the editor among them: a version as GeoJSON, and edits saved as a new version."""

from dataclasses import asdict
from datetime import date
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import JSONResponse, Response
from pydantic import BaseModel

from marram.course.versions.map_edits import Edit, EditConflict, Side, feature_ident
from marram.course.versions.map_versions import MapVersions, Overlap, Version
from marram.desk.competition.conditions import COOKIE, conditions_of
from marram.desk.course.map_editing import Servable, kind_of, read_day, servable, tale
from marram.desk.course.saver import keep_saver
from marram.desk.shell.errors import answer
from marram.desk.shell.map_drawing import DRAWN
from marram.errors import BadCourse, InputError, told
from marram.words.spoken import spoken
from marram.words.texts import text

router = APIRouter()


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
    prepared: Overlap = Overlap.ASK
    edits: list[GivenEdit] = []


def maps_of(request: Request) -> MapVersions | None:
    """Return the versions that this desk keeps of its map."""
    found: MapVersions | None = request.app.state.maps
    return found


def usual_day(request: Request) -> date:
    """Return the day of play that the conditions of this device say."""
    return conditions_of({}, request.cookies.get(COOKIE, ""), request.app.state.workplace.event).on


@router.get("/api/map")
def read_map(
    request: Request, version: int | None = None, on: str | None = None, upto: int | None = None
) -> Response:
    """The GeoJSON of the map in force on a day, or of a version; and every version there is.

    ``base`` is what a save made from this answer names: the newest version taken into account (``upto``).
    """
    maps = maps_of(request)
    if maps is None:
        return answer(request, 404, "not_kept", [text("editor.not_kept")])
    try:
        day = usual_day(request) if on is None else read_day(on)
    except InputError as error:
        return answer(request, 400, "bad_request", list(error.faults))
    versions = maps.versions()
    base = len(versions) if upto is None else min(max(upto, 1), len(versions))
    if version is None:
        here = maps.map_on(day, base)
        version, since = here.version.number, here.since
    else:
        maps.document(version)
        since = versions[version - 1].in_force_from
    document = maps.document(version, since)
    kinds = {feature_ident(one, index): kind_of(one) for index, one in enumerate(document["features"])}
    return JSONResponse(
        {
            "marram": 1,
            "version": version,
            "base": base,
            "on": day.isoformat(),
            "in_force_from": since.isoformat() if since > date.min else None,
            "prepared": [
                {
                    "in_force_from": one.since.isoformat(),
                    "version": one.version.number,
                    "who": one.version.who,
                }
                for one in maps.prepared(day, base)
            ],
            "versions": [version_told(maps, one) for one in versions],
            "kinds": {ident: kind.value for ident, kind in kinds.items() if kind},
            "servable": [asdict(one) for one in servable_on(maps, version, since)],
            "order": [kind.value for kind in DRAWN],
            "map": document,
        }
    )


@router.post("/api/map")
def save_map(request: Request, given: GivenSave) -> Response:
    """Keep edits as a new version: 201; 409 shows both sides of a conflict; 422 lists every fault."""
    maps = maps_of(request)
    if maps is None:
        return answer(request, 404, "not_kept", [text("editor.not_kept")])
    edits = [Edit(one.action, one.ident, one.feature) for one in given.edits]
    try:
        version = maps.save(
            edits,
            base=given.base,
            who=given.who,
            in_force_from=read_day(given.in_force_from),
            note=given.note,
            prepared=given.prepared,
            mending=not usable(maps, read_day(given.in_force_from)),
        )
    except EditConflict as error:
        return JSONResponse(_conflict(maps, given, edits, error), 409)
    except InputError as error:
        return answer(request, 422, "refused", list(error.faults))
    body = {
        "marram": 1,
        "version": version_told(maps, version),
        "new_faults": new_faults(maps, version.number),
    }
    return keep_saver(JSONResponse(body, 201), given.who)


def _conflict(maps: MapVersions, given: GivenSave, edits: list[Edit], error: EditConflict) -> dict[str, Any]:
    both = {edit.ident for edit in error.theirs}
    known = maps.versions()
    theirs = known[given.base :] if error.side is Side.MEANWHILE else known
    return {
        "marram": 1,
        "error": {
            "code": "edit_conflict" if error.side is Side.MEANWHILE else "prepared_conflict",
            "message": spoken(told(error)),
            "faults": [spoken(one) for one in error.faults],
        },
        "latest": error.latest,
        "since": error.since.isoformat(),
        "theirs": [asdict(edit) for edit in error.theirs],
        "yours": [asdict(edit) for edit in edits if edit.ident in both],
        "their_versions": [
            {**version_told(maps, one), "changes": tale(maps, one, touched)}
            for one in theirs
            if (error.side is Side.MEANWHILE or one.in_force_from == error.since)
            and (touched := [edit for edit in one.edits if edit.ident in both])
        ],
    }


def usable(maps: MapVersions, day: date) -> bool:
    """Whether the map of a day can be used; one that cannot may be saved with errors left, step by step."""
    here = maps.map_on(day)
    try:
        maps.course(here.version.number, here.since)
    except BadCourse:
        return False
    return True


def servable_on(maps: MapVersions, version: int, since: date) -> list[Servable]:
    """Return what dropping zones can serve on a map; nothing while it cannot be used."""
    try:
        return servable(maps.course(version, since))
    except BadCourse:
        return []


def new_faults(maps: MapVersions, version: int) -> list[str]:
    """Return what the checks find since a version; nothing while the map cannot be used: its own page tells."""
    try:
        return [spoken(one) for one in maps.new_faults(version)]
    except BadCourse:
        return []


def version_told(maps: MapVersions, version: Version) -> dict[str, Any]:
    """Return a version as a program is told of it."""
    return {
        "number": version.number,
        "saved_at": version.saved_at,
        "in_force_from": version.in_force_from.isoformat() if version.saved_at else None,
        "who": version.who,
        "note": version.note,
        "base": version.base,
        "changes": tale(maps, version),
        "carried_into": [one.since.isoformat() for one in version.later],
    }
