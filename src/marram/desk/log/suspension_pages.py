"""Stopping play at the desk: one tap stops it, every official sees what each group must do, balls are noted, play goes on."""

from collections.abc import Callable
from datetime import datetime, time
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Form, HTTPException, Request
from fastapi.responses import HTMLResponse, RedirectResponse

from marram.course.evacuation import ways_out_of_hole
from marram.course.model import Kind
from marram.desk.day.navigation import club_time
from marram.desk.log.here import now, person_here
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.who import may, may_see
from marram.desk.shell.workplace import show, workplace
from marram.errors import InputError, shown
from marram.records.entry import Kept, ident
from marram.said import said
from marram.services.day.suspension import (
    GroupStops,
    Stopped,
    position,
    resuming,
    suspending,
    suspensions,
    what_groups_do,
)
from marram.services.ground.evacuation import ways_out_words
from marram.services.kinds.suspension import Ball, Cause, Suspension
from marram.services.log.log import RULING
from marram.services.log.moments import happened_at
from marram.words.texts import clock_words, text

router = APIRouter()
Note = Annotated[str, Form(max_length=2000)]


@router.get("/suspension")
def suspension_page(request: Request) -> HTMLResponse:
    """Show whether play is stopped, and what each group must do."""
    kept = kept_here(request)
    conditions = workplace(request).read(request).conditions
    every = suspensions(kept.log, kept.event_id)
    stopped = every[0] if every and every[0].is_on else None
    groups = kept.groups_on(conditions.on)
    zone = club_time(kept).tzinfo
    began = None if stopped is None else _moment(stopped.entry).astimezone(zone)
    seen = [] if stopped is None else kept.log.entries(kept.event_id, kind=RULING)[::-1]
    at = began.time() if began and began.date() == conditions.on else None
    return show(
        request,
        "suspension.html",
        None,
        title=text("suspension.title.on" if stopped else "suspension.title"),
        stopped=stopped,
        began=began,
        way_out=_ways_out(request, stopped),
        protected=stopped is not None and _may_be_lightning(stopped),
        stops={}
        if stopped is None
        else _by_what(
            what_groups_do(stopped, groups, [one for one in seen if _today(one, began)], conditions.form, at)
        ),
        groups=groups,
        names=kept.names() if may_see(request, "player_name") else {},
        note_of=lambda entry: _note_of(kept, entry) if may_see(request, "note") else "",
        decides=may(request, "POST /suspension"),
        causes=sorted(Cause, key=lambda one: one is not Cause.OTHER),  # what nobody said is not lightning
        balls=list(Ball),
        before=[(one, _clock(zone, one)) for one in (every[1:] if stopped else every)],
        time_words=lambda moment: clock_words(datetime.fromisoformat(moment).astimezone(zone)),
        played_on="/case?" + urlencode({"what": "played_after_suspension", "suspension": stopped.how.value})
        if stopped
        else "",
        not_ready="/case?" + urlencode({"what": "resumed_off_time", "why_play_stopped": "committee"}),
    )


@router.post("/suspension")
def suspend(
    request: Request,
    how: Annotated[Suspension, Form()],
    tapped: Annotated[str, Form()],
    cause: Annotated[Cause, Form()] = Cause.OTHER,
    note: Note = "",
) -> RedirectResponse:
    """Stop play now; a second tap of the same page stops it no second time."""
    kept = kept_here(request)
    by = person_here(request) or None
    kept.add_tapped(suspending(ident(tapped, "tapped"), now(), how, cause, by=by, words=note))
    return RedirectResponse("/suspension", 303)


@router.post("/suspension/position")
def keep_position(
    request: Request,
    *,
    suspension: Annotated[str, Form()],
    tapped: Annotated[str, Form()],
    player: Annotated[str, Form()],
    ball: Annotated[Ball, Form()],
    hole: Annotated[str, Form()] = "",
    place: Annotated[str, Form(max_length=60)] = "",
    lie: Annotated[str, Form(max_length=80)] = "",
    strokes: Annotated[str, Form()] = "",
    note: Note = "",
) -> RedirectResponse:
    """Keep where a ball lay. What another official kept of the same ball stays beside it."""
    kept = kept_here(request)
    kept.add_tapped(
        position(
            ident(tapped, "tapped"),
            now(),
            _suspension(kept, suspension),
            player=ident(player, str(said("The player"))),
            ball=ball,
            hole=_number(hole),
            place=_place(place),
            lie=lie.strip(),
            strokes=_number(strokes),
            by=person_here(request) or None,
            words=note,
        )
    )
    return RedirectResponse("/suspension", 303)


@router.post("/suspension/resume")
def resume(
    request: Request,
    *,
    suspension: Annotated[str, Form()],
    tapped: Annotated[str, Form()],
    at: Annotated[str, Form()],
    ready: Annotated[str, Form()] = "",
    note: Note = "",
    settles: Annotated[list[str] | None, Form()] = None,
) -> RedirectResponse:
    """Say when play goes on, today by the clocks of the club; what was said before holds no longer where it was seen."""
    kept = kept_here(request)
    clock = club_time(kept)
    kept.add_tapped(
        resuming(
            ident(tapped, "tapped"),
            now(),
            _suspension(kept, suspension),
            _at(clock, at),
            in_position_at=_at(clock, ready) if ready.strip() else None,
            by=person_here(request) or None,
            words=note,
            settles=settles or (),
        )
    )
    return RedirectResponse("/suspension", 303)


def _may_be_lightning(stopped: Stopped) -> bool:
    """Whether people must be taken to be in danger of lightning: where play stopped at once, unless another danger is named."""
    return stopped.cause is Cause.LIGHTNING or (
        stopped.how is Suspension.IMMEDIATE and stopped.cause is not Cause.OTHER_DANGER
    )


def _ways_out(request: Request, stopped: Stopped | None) -> Callable[[int | None], list[str]] | None:
    """Return what says the way from a hole to its evacuation points; ``None``: the map holds none, or play goes on."""
    course = workplace(request).course
    if stopped is None or course is None or not course.of(Kind.EVACUATION_POINT):
        return None
    lightning = _may_be_lightning(stopped)

    def told(hole: int | None) -> list[str]:
        if hole is None or hole not in course.holes:
            return []
        return ways_out_words(ways_out_of_hole(course, hole, lightning=lightning))

    return told


def _by_what(stops: list[GroupStops]) -> dict[tuple[str, ...], list[GroupStops]]:
    """Return groups by what they must do, so that the same words stand once."""
    found: dict[tuple[str, ...], list[GroupStops]] = {}
    for one in stops:
        found.setdefault(one.say, []).append(one)
    return found


def _suspension(kept: KeptHere, id_: str) -> Stopped:
    found = next((one for one in suspensions(kept.log, kept.event_id) if one.entry.id == id_), None)
    if found is None:
        raise HTTPException(404)
    return found


def _at(clock: datetime, given: str) -> datetime:
    """Return a time of day as typed, today.

    Raises:
        InputError: it is none.
    """
    try:
        return datetime.combine(clock.date(), time.fromisoformat(given.strip()), clock.tzinfo)
    except ValueError:
        raise InputError(
            said("{given} is no time of day; give one such as 15:30.", given=shown(given[:20]))
        ) from None


def _number(given: str) -> int | None:
    if not given.strip():
        return None
    if given.strip().isdecimal() and len(given.strip()) < 4:
        return int(given)
    raise InputError(said("{given} is no whole number.", given=shown(given[:20])))


def _place(given: str) -> tuple[float, float] | None:
    """Return a place as typed, latitude and longitude in degrees.

    Raises:
        InputError: it is none on the globe.
    """
    if not given.strip():
        return None
    try:
        latitude, longitude = (float(one) for one in given.split(","))
    except ValueError:
        latitude, longitude = 999.0, 999.0
    if abs(latitude) <= 90 and abs(longitude) <= 180:
        return latitude, longitude
    raise InputError(
        said("{given} is no place; give latitude and longitude, such as 55.0012,3.9912.", given=shown(given))
    )


def _moment(entry: Kept) -> datetime:
    return datetime.fromisoformat(entry.told["given_at"])


def _clock(zone: object, one: Stopped) -> str:
    return clock_words(_moment(one.entry).astimezone(zone))  # type: ignore[arg-type]


def _today(entry: Kept, began: datetime | None) -> bool:
    return began is not None and happened_at(entry).astimezone(began.tzinfo).date() == began.date()


def _note_of(kept: KeptHere, entry: Kept) -> str:
    return " ".join(
        part.content.decode(errors="replace")
        for part in kept.log.parts(entry.id)
        if part and part.what == "note"
    )
