"""Hole locations: each green with its hole, moved by hand or by numbers, saved as a version of its day."""

from collections.abc import Mapping
from datetime import date, timedelta
from pathlib import Path
from typing import Annotated, Any
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from fastapi.responses import HTMLResponse, JSONResponse, RedirectResponse, Response
from pydantic import BaseModel
from shapely.geometry import Point

from marram.course.greens.green_frame import Side
from marram.course.greens.hole_locations import Proposal
from marram.course.versions.hole_days import HoleConflict, HoleDays, HoleVersion
from marram.course.versions.map_versions import MapVersions
from marram.desk.competition.conditions import COOKIE, conditions_of
from marram.desk.course.saver import keep_saver, saver
from marram.desk.holes.hole_setting import HoleSetting
from marram.desk.holes.readers import Reader
from marram.desk.shell.errors import answer
from marram.desk.shell.typed import Typed
from marram.desk.shell.workplace import show
from marram.errors import BadPlace, InputError, told
from marram.paper.hole_location_sheet import slope_note
from marram.paper.paper_size import PaperSize
from marram.services.ground.holes import green_slopes
from marram.words.spoken import spoken
from marram.words.texts import short_day_words, text

router = APIRouter()


class GivenHoles(BaseModel):
    """What a program saves: moved holes, each with longitude and latitude."""

    base: int = 0
    who: str = ""
    note: str = ""
    moved: dict[int, tuple[float, float]] = {}


class LookedAt(BaseModel):
    """A place on a green, given in one of three ways."""

    hole: int
    speed: float | None = None
    x: float | None = None
    y: float | None = None
    longitude: float | None = None
    latitude: float | None = None
    front: float | None = None
    side: float = 0.0
    which: str = "centre"


@router.get("/holes")
def today(request: Request, day: date | None = None, speed: str = "") -> RedirectResponse:
    """Go to the hole locations of a day; without one, of the day of play."""
    event = request.app.state.workplace.event
    chosen = day or conditions_of({}, request.cookies.get(COOKIE, ""), event).on
    given = {"speed": speed.strip(), "back": request.query_params.get("back", "")}
    query = urlencode({key: value for key, value in given.items() if value})
    return RedirectResponse(f"/holes/{chosen.isoformat()}" + (f"?{query}" if query else ""), 303)


@router.get("/holes/{day}")
def page(request: Request, day: date, speed: float | None = None, saved: int | None = None) -> HTMLResponse:
    """Show the greens of a day."""
    return _page(request, day, speed, saved=saved)


@router.post("/holes/{day}")
def save_form(request: Request, day: date, form: Typed, speed: float | None = None) -> Response:
    """Save what was typed for every hole, without JavaScript."""
    setting = setting_of(request, day, speed)
    if setting.kept is None:
        return _page(request, day, speed, faults=[text("holes.not_kept")])
    base = form.get("base", "0")
    try:
        moved = _typed(setting, form)
        version = setting.kept.save(
            day,
            moved,
            base=int(base) if base.isdecimal() and len(base) < 10 else -1,
            who=form.get("who", ""),
            note=form.get("note", ""),
        )
    except InputError as error:
        return _page(request, day, speed, faults=list(error.faults), typed=form)
    return keep_saver(RedirectResponse(_address(day, speed, saved=version.number), 303), form.get("who", ""))


@router.get("/api/holes/{day}")
def read_holes(request: Request, day: date, speed: float | None = None, seed: int = 0) -> dict[str, Any]:
    """Every green with its hole: as saved for the day, else as proposed; ``seed`` proposes others."""
    setting = setting_of(request, day, speed)
    saved = setting.saved()
    proposal = setting.proposed(seed) if seed or not saved else Proposal({}, {})
    proposed = {number: one.place for number, one in proposal.locations.items()}
    return {
        "marram": 1,
        "day": day.isoformat(),
        "base": len(setting.versions),
        "slope": slope_note(setting.slopes),
        "versions": [_told(one) for one in setting.versions],
        "saved": {number: setting.look(number, place) for number, place in saved.items()},
        "proposed": {number: setting.look(number, place) for number, place in proposed.items()},
        "without": {
            **{number: spoken(why) for number, why in proposal.without.items() if number not in saved},
            **dict.fromkeys(setting.lost(), text("holes.without.lost")),
        },
        "greens": [setting.drawn(number) for number in setting.greens],
    }


@router.get("/api/holes/{day}/look")
def look(request: Request, day: date, at: Annotated[LookedAt, Query()]) -> dict[str, Any]:
    """What a hole cut at a place is; the place as a point of the picture, in degrees, or in paces as typed."""
    setting = setting_of(request, day, at.speed)
    if at.x is not None and at.y is not None:
        place = setting.at_picture(at.hole, at.x, at.y)
    elif at.longitude is not None and at.latitude is not None:
        place = setting.at_degrees(at.longitude, at.latitude)
    elif at.front is not None:
        place = setting.at_paces(at.hole, at.front, at.side, at.which)
    else:
        raise InputError(text("holes.fault.no_place"))
    return {"marram": 1, **setting.look(at.hole, place)}


@router.post("/api/holes/{day}")
def save_holes(request: Request, day: date, given: GivenHoles, speed: float | None = None) -> Response:
    """Keep moved holes as a new version: 201; 409 shows both sides of a conflict; 422 lists every fault."""
    setting = setting_of(request, day, speed)
    if setting.kept is None:
        return answer(request, 404, "not_kept", [text("holes.not_kept")])
    try:
        _on_greens(setting, given.moved)
        version = setting.kept.save(day, given.moved, base=given.base, who=given.who, note=given.note)
    except HoleConflict as error:
        newest = error.latest
        body = {
            "marram": 1,
            "error": {
                "code": "hole_conflict",
                "message": spoken(told(error)),
                "faults": [spoken(one) for one in error.faults],
            },
            "latest": _told(newest),
            "theirs": {
                hole: setting.look(hole, setting.at_degrees(*newest.places[hole])) for hole in error.holes
            },
            "yours": {
                hole: setting.look(hole, setting.at_degrees(*given.moved[hole])) for hole in error.holes
            },
        }
        return JSONResponse(body, 409)
    except InputError as error:
        return answer(request, 422, "refused", list(error.faults))
    return keep_saver(JSONResponse({"marram": 1, "version": _told(version)}, 201), given.who)


def setting_of(request: Request, day: date, speed: float | None) -> HoleSetting:
    """Return the holes of a day on the map in force on it."""
    state = request.app.state
    maps: MapVersions | None = state.maps
    course = state.workplace.course
    if maps is not None:
        here = maps.map_on(day)
        course = maps.course(here.version.number, here.since)
    kept: HoleDays | None = state.hole_days
    files: tuple[Path, ...] = state.elevations
    return HoleSetting(course, day, kept, green_slopes(course, files, state.elevations_crs, speed))


def _on_greens(setting: HoleSetting, moved: dict[int, tuple[float, float]]) -> None:
    """Refuse holes that the map does not have, or that lie off their green; all at once."""
    faults: list[str] = []
    for hole, place in moved.items():
        try:
            if not setting.look(hole, setting.at_degrees(*place))["on_green"]:
                faults.append(text("holes.fault.off_green", hole=hole))
        except BadPlace as error:
            faults += error.faults
    if faults:
        raise InputError(*faults)


def nearby_days(request: Request) -> list[tuple[str, date]]:
    """Return the days that are offered first, each with its name: tomorrow, today, the day of play.

    By the clock of this machine; where a script runs, the reader's own clock puts its days in their place.
    """
    _, now, then, _ = days_about_now()
    event = request.app.state.workplace.event
    play = conditions_of({}, request.cookies.get(COOKIE, ""), event).on
    return [("tomorrow", then), ("today", now)] + ([("play", play)] if play not in (now, then) else [])


def days_about_now() -> tuple[date, date, date, date]:
    """Return yesterday to the day after tomorrow by the clock here: today and tomorrow of every zone are among them."""
    now = date.today()  # noqa: DTZ011 - the day where the desk runs
    return now - timedelta(days=1), now, now + timedelta(days=1), now + timedelta(days=2)


def _typed(setting: HoleSetting, form: Mapping[str, str]) -> dict[int, tuple[float, float]]:
    """Return the holes whose typed numbers are not those the page showed."""
    faults: list[str] = []
    moved: dict[int, tuple[float, float]] = {}
    for hole in setting.greens:
        now = [form.get(f"{key}-{hole}", "").strip() for key in ("front", "side", "which")]
        if now == [form.get(f"was-{key}-{hole}", "") for key in ("front", "side", "which")]:
            continue
        try:
            place = _at(setting, hole, *now)
        except InputError as error:
            faults += [text("holes.fault.of_hole", hole=hole, fault=spoken(fault)) for fault in error.faults]
            continue
        moved[hole] = setting.course.plane.to_degrees(place.x, place.y)
    if faults:
        raise InputError(*faults)
    if not setting.versions:
        # The first save of a day keeps what was proposed and left as it was.
        for hole, one in setting.proposed().locations.items():
            moved.setdefault(hole, setting.course.plane.to_degrees(one.place.x, one.place.y))
    return moved


def _at(setting: HoleSetting, hole: int, front: str, side: str, which: str) -> Point:
    try:
        return setting.at_paces(hole, float(front), float(side or 0), which)
    except ValueError as error:
        if isinstance(error, InputError):
            raise
        raise InputError(text("holes.fault.numbers", front=front, side=side)) from None


def _page(
    request: Request,
    day: date,
    speed: float | None,
    *,
    saved: int | None = None,
    faults: list[str] | None = None,
    typed: Mapping[str, str] | None = None,
) -> HTMLResponse:
    setting = setting_of(request, day, speed)
    places = setting.saved() or {n: one.place for n, one in setting.proposed().locations.items()}
    return show(
        request,
        "hole_locations.html",
        None,
        status=422 if faults else 200,
        title=text("holes.title"),
        day=day,
        speed=speed,
        query="" if speed is None else f"?speed={speed:g}",
        kept=setting.kept is not None,
        not_kept=text("holes.not_kept"),
        course_name=setting.course.name or text("holes.course"),
        slope=slope_note(setting.slopes),
        knows_slope=setting.slopes is not None,
        rows=[setting.look(number, places[number]) for number in setting.greens if number in places],
        missing=[number for number in setting.course.holes if number not in setting.greens],
        sides=[side.value for side in Side],
        versions=list(reversed(setting.versions)),
        readers=[one.value for one in Reader],
        papers=[one.value for one in PaperSize],
        nearby=nearby_days(request),
        near_words={one.isoformat(): short_day_words(one) for one in days_about_now()},
        recent_days=setting.kept.days() if setting.kept else [],
        saved=saved if saved in {one.number for one in setting.versions} else None,
        faults=faults or [],
        typed=typed or {},
        who=saver(request),
    )


def _address(day: date, speed: float | None, *, saved: int) -> str:
    return f"/holes/{day.isoformat()}?saved={saved}" + ("" if speed is None else f"&speed={speed:g}")


def _told(version: HoleVersion) -> dict[str, Any]:
    return {
        "number": version.number,
        "saved_at": version.saved_at,
        "who": version.who,
        "note": version.note,
        "holes": sorted(version.places),
    }
