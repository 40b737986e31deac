"""What happens, as it is told live: entries of the log, cases that are open, and where officials said they are."""

from collections.abc import Sequence
from typing import Any

from fastapi import Request

from marram.desk.log.here import moment_words
from marram.desk.log.kept import KeptHere
from marram.desk.log.titles import title_of
from marram.desk.people.roles import hears
from marram.desk.people.who import may
from marram.errors import InputError
from marram.records.entry import Kept
from marram.records.open_cases import open_cases
from marram.records.whereabouts import whereabouts
from marram.services.log.moments import happened_at
from marram.services.log.opinions import opinions
from marram.words.texts import text

SHOWN = 8
"""Entries that the first screen shows (own choice)."""

LOOKED_AT = 100
"""Entries among which they are looked for."""

Told = dict[str, Any]


def told_of(kept: KeptHere, entries: Sequence[Kept], players: bool) -> list[Told]:
    """Return entries as they are told live, by number.

    Args:
        kept: where they are kept.
        entries: the entries.
        players: whether names of players may be told.
    """
    names, zone = (kept.names(), kept.zone) if entries else ({}, None)
    return [
        {
            "number": one.number,
            "kind": one.kind,
            "title": title_of(one),
            "headline": str(one.content.get("headline", "")) if isinstance(one.content, dict) else "",
            "at": moment_words(happened_at(one).isoformat(), zone),
            "hole": one.told.get("hole"),
            "player": names.get(one.told.get("player", ""), "") if players else "",
            "by": names.get(one.told.get("by", ""), ""),
            "corrects": one.corrects is not None,
            **({"to": one.content["to"]} if one.kind == "handed_over" else {}),
        }
        for one in entries
    ]


def latest(kept: KeptHere, role: str, players: bool) -> list[Told]:
    """Return the last entries that a role hears of, the latest first."""
    head = kept.log.head(kept.event_id)
    entries = kept.log.entries(kept.event_id, after=max(0, head - LOOKED_AT))
    heard = [one for one in entries if hears(role, one.kind)]
    return told_of(kept, heard[-SHOWN:], players)[::-1]


def open_now(kept: KeptHere) -> list[Told]:
    """Return the cases that wait for a ruling, the latest begun first."""
    names, zone = kept.names(), kept.zone
    return [
        {
            "id": one.id,
            "by": names.get(one.by or "", ""),
            "at": moment_words(one.begun_at, zone),
            "title": one.pages[0].title if one.pages else "",
        }
        for one in open_cases(kept.records, kept.event_id)
    ]


def asked_now(kept: KeptHere) -> Told:
    """Return in ``words`` who waits for a second opinion, for those who give one; empty where nobody does."""
    waiting = [one.asked.told.get("by", "") for one in opinions(kept.log, kept.event_id) if one.is_open]
    if not waiting:
        return {"words": ""}
    names = kept.names()
    who = dict.fromkeys(names.get(one, "") or text("day.asked.somebody") for one in waiting)
    return {"words": text("day.asked", names=", ".join(who))}


def asked_here(request: Request) -> Told | None:
    """Return the same for a page; ``None`` for whoever gives no second opinions, or where nothing is kept."""
    kept: KeptHere | None = request.app.state.kept_here
    if kept is None or not may(request, "POST /opinions/answer"):
        return None
    try:
        return asked_now(kept)
    except InputError:  # the records cannot be read: the page that says so still stands
        return None


def places(kept: KeptHere, people: bool) -> list[Told]:
    """Return where officials said they are, the latest first; nothing where nobody may be named."""
    if not people:
        return []
    names, zone = kept.names(), kept.zone
    return [
        {
            "name": names.get(one.person, ""),
            "hole": one.hole,
            "words": one.words,
            "at": moment_words(one.reported_at, zone),
        }
        for one in whereabouts(kept.records, kept.event_id)
    ]
