"""The state of play as every page shows it and hears of it: that play is stopped, and when it goes on."""

from datetime import UTC, datetime, tzinfo

from fastapi import Request

from marram.desk.log.kept import KeptHere
from marram.desk.people.roles import hears
from marram.desk.people.who import may, who_asks
from marram.errors import InputError
from marram.services.day.state_of_play import StateOfPlay, state_of_play
from marram.services.day.suspension import SUSPENDED
from marram.words.texts import clock_words, text

Told = dict[str, str]


def play_told(kept: KeptHere, now: datetime | None = None) -> Told:
    """Return the state of play as it is told live: ``words``, and ``until`` when they hold (ISO 8601); empty: play goes on."""
    found = state_of_play(kept.log, kept.event_id)
    if found is None or not found.holds(now or datetime.now(UTC)):
        return {"words": "", "until": ""}
    return {"words": _words(found, kept.zone), "until": "" if found.at is None else found.at.isoformat()}


def play_here(request: Request) -> Told | None:
    """Return the state of play for a page; ``None`` for whoever does not hear of it, or where nothing is kept."""
    kept: KeptHere | None = request.app.state.kept_here
    if kept is None or not may(request, "GET /api/live") or not may(request, "GET /suspension"):
        return None
    who = who_asks(request)
    if not (who.open or hears(who.role, SUSPENDED)):
        return None
    try:
        return play_told(kept)
    except InputError:  # the records cannot be read: the page that says so still stands
        return None


def play_for_everybody(request: Request, kept: KeptHere) -> str:
    """Return the state of play for a page of everybody whose own head does not tell it; empty while play goes on."""
    found = state_of_play(kept.log, kept.event_id)
    if found is None or not found.holds(datetime.now(UTC)) or play_here(request) is not None:
        return ""
    return (
        text("day.play.stopped", time=_clock(found.since, kept.zone))
        if found.at is None
        else _words(found, kept.zone)
    )


def _words(found: StateOfPlay, zone: tzinfo | None) -> str:
    if found.at is None:
        return text(f"day.play.{found.how.value}", time=_clock(found.since, zone))
    two = ".two" if found.by_several else ""
    if found.in_position_at is None:
        return text(f"day.play.resumed{two}", time=_clock(found.at, zone))
    return text(
        f"day.play.resumed_in_position{two}",
        time=_clock(found.at, zone),
        ready=_clock(found.in_position_at, zone),
    )


def _clock(moment: datetime, zone: tzinfo | None) -> str:
    return clock_words(moment.astimezone(zone))
