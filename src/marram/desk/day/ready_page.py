"""What still stands between now and the first start, for the Committee: each item leads to where it is mended."""

from dataclasses import dataclass
from datetime import date
from typing import Annotated

from fastapi import APIRouter, Query, Request
from fastapi.responses import HTMLResponse

from marram.competition.conditions.readiness import About, Standing
from marram.course.model import Course
from marram.course.versions.hole_days import HoleDays
from marram.desk.day.navigation import club_time
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.shell.workplace import show, workplace_on
from marram.records.starting_sheet import Known, rounds
from marram.services.day.ready_kept import Ready, next_round, ready_kept
from marram.words.texts import text

router = APIRouter()

_PAGES = {
    About.CONDITIONS: "/conditions",
    About.COURSE: "/map",
    About.LOCAL_RULES: "/map",
    About.OFFICIALS: "/officials",
    About.PLAYERS: "/entries",
    About.STARTING_TIMES: "/draw",
}
"""Where at the desk a part of the work is mended."""


@dataclass(frozen=True)
class Item:
    """Something that still stands, as a page shows it.

    Attributes:
        standing: what it is.
        url: where it is mended; empty for what stands among the conditions.
        do: what the link says.
    """

    standing: Standing
    url: str
    do: str


@dataclass(frozen=True)
class ReadyView:
    """What still stands before a round, as a page shows it.

    Attributes:
        found: what the service found.
        items: its items.
        rounds: every round, the first first.
        over: whether the last round is over by its day.
    """

    found: Ready
    items: tuple[Item, ...]
    rounds: tuple[Known, ...]
    over: bool

    @property
    def stopping(self) -> int:
        """How many items stop play, or keep scores from becoming results."""
        return len(self.found.stops)


def ready_here(request: Request, number: int | None = None) -> ReadyView | None:
    """Return what still stands before a round, by default before the next one; ``None`` for an event without rounds.

    Raises:
        InputError: there is no such round.
    """
    kept = kept_here(request)
    known = rounds(kept.records, kept.event_id)
    if not known:
        return None
    today = club_time(kept).date()

    def map_on(day: date | None) -> Course:
        return workplace_on(request, day or today).course

    found = ready_kept(
        kept.records,
        kept.event_id,
        number or next_round(known, today),
        map_on=map_on,
        holes=_holes(request, kept),
    )
    last = known[-1].day
    items = tuple(_item(one, found.round) for one in found.standing)
    return ReadyView(found, items, tuple(known), last is not None and last < today)


@router.get("/ready")
def ready(
    request: Request, round_: Annotated[int | None, Query(alias="round", ge=1, le=99)] = None
) -> HTMLResponse:
    """Show what still stands before a round, by default before the next one."""
    return show(request, "ready.html", None, title=text("ready.title"), ready=ready_here(request, round_))


def _holes(request: Request, kept: KeptHere) -> HoleDays:
    found: HoleDays | None = request.app.state.hole_days
    return found or kept.holes()


def _item(one: Standing, this: Known | None) -> Item:
    if one.about is About.HOLES:
        url = f"/holes/{this.day.isoformat()}" if this and this.day else "/holes"
    else:
        url = _PAGES.get(one.about, "")
    return Item(one, url, text(f"ready.do.{one.about.value}"))
