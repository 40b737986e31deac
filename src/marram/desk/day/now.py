"""The first screen: what this person needs now, by role and hour; and saying where one is."""

from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Annotated

from fastapi import APIRouter, Form, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel

from marram.desk.day.navigation import COOKIE, club_time, hour_of, hour_unchosen, rooms_for
from marram.desk.day.ready_page import ReadyView, ready_here
from marram.desk.live.happening import latest, open_now, places
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.answers import page
from marram.desk.people.hours import AFTER, BEFORE, HOURS
from marram.desk.people.roles import OFFICIALS, PUBLIC
from marram.desk.people.who import may, may_see, who_asks
from marram.errors import InputError
from marram.records.starting_sheet import Known, groups
from marram.records.whereabouts import report
from marram.said import said
from marram.words.texts import text

router = APIRouter()

A_DAY = 24 * 3600


@dataclass(frozen=True)
class Need:
    """Which parts the first screen has.

    Attributes:
        where: saying where one is, and where the others are.
        log: what was recorded last, and what is open.
        groups: the groups of the day.
    """

    where: bool
    log: bool
    groups: bool


@router.get("/now")
def now(request: Request, hour: str | None = None) -> Response:
    """Show what is needed now. An hour may be chosen, in place of what the clock says."""
    kept = kept_here(request)
    if hour is not None:
        chosen = RedirectResponse("/now", 303)
        if hour in HOURS:
            chosen.set_cookie(COOKIE, hour, max_age=A_DAY, httponly=True, samesite="lax")
        else:
            chosen.delete_cookie(COOKIE)
        return chosen
    who, at = who_asks(request), hour_of(request, kept)
    official = who.role in OFFICIALS
    rooms = [one.entry for one in rooms_for(who.role, at) if one.name not in {"now", "people"}]
    names = [one.name for one in rooms_for(who.role, at) if one.name not in {"now", "people"}]
    sees_log = "log" in names
    shown = _round_shown(kept) if official else None
    return page(
        request,
        "now.html",
        title=text("day.title"),
        who=who,
        signed_in=who.role != PUBLIC,
        hour=at,
        by_clock=hour_unchosen(request, kept),
        chosen=request.cookies.get(COOKIE, "") in HOURS,
        hours=HOURS,
        first=(names[0], rooms[0]) if names else None,
        need=Need(official, sees_log, official),
        sees_log=sees_log,
        places=places(kept, may_see(request, "official_name")) if official else [],
        happened=latest(kept, who.role, may_see(request, "player_name")) if official else [],
        open_cases=open_now(kept) if sees_log else [],
        shown=shown,
        groups=[] if shown is None else groups(kept.records, shown.id),
        sees_players=may_see(request, "player_name"),
        upto=kept.log.head(kept.event_id),
        ready=_ready(request, at),
    )


def _ready(request: Request, hour: str) -> ReadyView | None:
    """Return what still stands before the next round, for whoever may mend it, until the event is over."""
    if hour == AFTER or not may(request, "GET /ready"):
        return None
    found = ready_here(request)
    return None if found is None or (hour != BEFORE and not found.items) else found


class Where(BaseModel):
    """The form as it was filled in."""

    hole: str = ""
    words: str = ""


@router.post("/now/where")
def say_where(request: Request, filled: Annotated[Where, Form()]) -> Response:
    """Keep where somebody is, on purpose, until the next report; neither hole nor words: keep nothing."""
    kept, who = kept_here(request), who_asks(request)
    if who.person is None:
        raise InputError(said("Nobody is signed in here. Sign in first."))
    hole = filled.hole.strip()
    known = request.app.state.workplace.course.holes
    if hole and (not hole.isascii() or not hole.isdecimal() or int(hole[:4]) not in known):
        raise InputError(
            said("There is no hole {hole} on this course. Choose one of its holes.", hole=hole[:20])
        )
    report(
        kept.records,
        kept.event_id,
        who.person,
        hole=int(hole) if hole else None,
        words=filled.words,
        now=datetime.now(UTC),
    )
    return RedirectResponse("/now", 303)


def _round_shown(kept: KeptHere) -> Known | None:
    """Return the round of this day, or of the event's own day where none has groups today."""
    for day in (club_time(kept).date(), kept.event.played_on):
        found = None if day is None else kept.round_on(day)
        if found is not None and groups(kept.records, found.id):
            return found
    return None
