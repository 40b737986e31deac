"""The map mended at the desk: faults to visit, proposals to accept or to leave; each acceptance is a version."""

import re
from datetime import date
from typing import Annotated, Any

from fastapi import APIRouter, FastAPI, Form, Request
from fastapi.responses import HTMLResponse, JSONResponse, RedirectResponse, Response
from pydantic import ConfigDict

from marram.course.mending.draft import Draft, only_lines_lack
from marram.course.mending.keeping import draft_on, keep_mended
from marram.course.versions.map_versions import MapVersions
from marram.desk.course.map_api import maps_of, usual_day
from marram.desk.course.map_editing import read_day
from marram.desk.course.mending_view import ground, places, told
from marram.desk.course.saver import keep_saver, saver
from marram.desk.course.saving import Saving, not_kept
from marram.desk.shell.errors import answer
from marram.desk.shell.workplace import show
from marram.errors import BadCourse, InputError
from marram.words.texts import text

router = APIRouter()
LEFT = "marram_left"
"""The cookie that remembers, until the browser is closed, which proposals were left."""
MOST_LEFT = 300
"""So many keys fit a cookie; older ones are forgotten first."""
MEND = "/map/mend"
TOGETHER = "+"
"""Between the marks of choices that are accepted together."""


class FilledMending(Saving):
    """The form of the page: what is accepted or left, by whom, why, from which day."""

    model_config = ConfigDict(extra="allow")

    mark: str = ""
    choose: str = ""
    leave: str = ""
    again: str = ""
    why: str = ""

    @property
    def chosen(self) -> str:
        """The marks of what is accepted: of a button, or of the list beside one."""
        return self.mark or str((self.model_extra or {}).get(f"mark-{self.choose}", ""))


def register_mending(app: FastAPI) -> None:
    """Make every page say that the map is being mended while that of its day cannot be used."""

    @app.exception_handler(BadCourse)
    def being_mended(request: Request, error: BadCourse) -> Response:
        if maps_of(request) is None:
            return answer(request, 400, "bad_course", list(error.faults))
        if request.url.path == "/" and request.method == "GET":
            return RedirectResponse(MEND, 303)
        if request.url.path.startswith("/api/"):
            said = text("mending.for_programs", address=MEND)
            return answer(request, 503, "map_being_mended", [said, *error.faults])
        return show(
            request,
            "being_mended.html",
            None,
            status=503,
            title=text("mending.under_way"),
            count=len(error.faults),
        )


@router.get(MEND)
def page(
    request: Request, on: str | None = None, done: int | None = None, who: str = "", why: str = ""
) -> HTMLResponse:
    """Show what is wrong with the map of a day and how it can be mended; who mends it and why may be given."""
    return _page(request, day=read_day(on) if on else None, done=done, who=who, why=why)


@router.get("/api/map/draft")
def read_draft(request: Request, on: str | None = None) -> Response:
    """The map of a day as far as it can be read, its faults, and proposals with the shapes before and after."""
    maps = maps_of(request)
    if maps is None:
        return answer(request, 404, "not_kept", [text("editor.not_kept")])
    day = read_day(on) if on else usual_day(request)
    draft = draft_of_day(request, maps, day)
    body: dict[str, Any] = {
        "marram": 1,
        "on": day.isoformat(),
        "version": maps.map_on(day).version.number,
        "base": len(maps.versions()),
        "usable": draft.usable,
        "places": told(draft, places(draft, _left(request))),
        "ground": ground(draft),
    }
    return JSONResponse(body)


@router.post(MEND)
def accept_or_leave(request: Request, filled: Annotated[FilledMending, Form()]) -> Response:
    """Accept a choice as a new version of the map, or leave a proposal until the browser is closed."""
    maps = maps_of(request)
    if maps is None:
        return not_kept(request)
    try:
        if filled.leave or filled.again:
            return _leave(request, filled, read_day(filled.in_force_from))
        missing = [] if filled.chosen else [text("mending.choose_first")]
        day = filled.signed(*missing, unsigned=text("mending.say_who"))
        draft = draft_of_day(request, maps, day)
        accepted = [draft.choice(mark) for mark in filled.chosen.split(TOGETHER)]
        version = keep_mended(
            maps, accepted, who=filled.who, in_force_from=day, why=filled.why, base=filled.base
        )
    except InputError as error:
        return _page(request, faults=list(error.faults), filled=filled)
    return keep_saver(RedirectResponse(f"{MEND}?on={day}&done={version.number}", 303), filled.who)


def draft_of_day(request: Request, maps: MapVersions, day: date) -> Draft:
    """Return the draft of the map in force on a day, made once for each map."""
    here = maps.map_on(day)
    kept: dict[tuple[int, date], Draft] = request.app.state.drafts
    key = (here.version.number, here.since)
    if key not in kept:
        found = draft_on(maps, day)
        kept.clear()  # the map of one day is mended at a time
        kept[key] = found
    return kept[key]


def lines_to_mend(request: Request, maps: MapVersions, day: date) -> bool:
    """Whether the map of a day has lines of play that cannot be used until they are mended."""
    return any(fault.check != "no_holes" for fault in draft_of_day(request, maps, day).errors)


def _left(request: Request) -> list[str]:
    return re.findall(r"[0-9a-f]{10}", request.cookies.get(LEFT, ""))[-MOST_LEFT:]


def _leave(request: Request, filled: FilledMending, day: date) -> Response:
    keys = [] if filled.again else [*_left(request), *re.findall(r"^[0-9a-f]{10}$", filled.leave)]
    response = RedirectResponse(f"{MEND}?on={day}", 303)
    response.set_cookie(LEFT, ".".join(dict.fromkeys(keys[-MOST_LEFT:])), httponly=True, samesite="lax")
    return response


def _page(
    request: Request,
    *,
    day: date | None = None,
    done: int | None = None,
    faults: list[str] | None = None,
    filled: FilledMending | None = None,
    who: str = "",
    why: str = "",
) -> HTMLResponse:
    maps = maps_of(request)
    if maps is None:
        return not_kept(request)
    if filled is not None and day is None:
        try:
            day = read_day(filled.in_force_from)
        except InputError:
            day = None
    day = day or usual_day(request)
    draft = draft_of_day(request, maps, day)
    listed = places(draft, _left(request))
    versions = maps.versions()
    return show(
        request,
        "mending.html",
        None,
        status=422 if faults else 200,
        title=text("mending.title"),
        name=(draft.course.name if draft.course else "")
        or (maps.course_file.name if maps.course_file else ""),
        draft=draft,
        places=[one for one in listed if not one.left],
        left=[one for one in listed if one.left],
        base=len(versions),
        serves=not draft.usable and only_lines_lack(draft),
        done=versions[done - 1] if done is not None and 1 < done <= len(versions) else None,
        day=day.isoformat(),
        who=filled.who if filled else who or saver(request),
        why=filled.why if filled else why,
        faults=faults or [],
    )
