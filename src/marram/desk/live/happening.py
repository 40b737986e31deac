"""What happens, as it is told live: entries of the log, cases that are open, and where officials said they are."""

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from marram.desk.log.kept import KeptHere
from marram.errors import InputError
from marram.records.entry import Kept
from marram.records.open_cases import open_cases
from marram.records.whereabouts import whereabouts
from marram.rules.incidents import incident
from marram.services.kinds.registry import kinds
from marram.words.language import translate
from marram.words.texts import text

SHOWN = 8
"""Entries that the first screen shows (own choice)."""

Told = dict[str, Any]


def told_of(kept: KeptHere, entries: Sequence[Kept], players: bool) -> list[Told]:
    """Return entries as they are told live, by number.

    Args:
        kept: where they are kept.
        entries: the entries.
        players: whether names of players may be told.
    """
    names = kept.names() if entries else {}
    return [
        {
            "number": one.number,
            "kind": one.kind,
            "title": title_of(one),
            "headline": str(one.content.get("headline", "")) if isinstance(one.content, dict) else "",
            "at": clock_of(one.told["given_at"]),
            "hole": one.told.get("hole"),
            "player": names.get(one.told.get("player", ""), "") if players else "",
            "by": names.get(one.told.get("by", ""), ""),
            "corrects": one.corrects is not None,
        }
        for one in entries
    ]


def latest(kept: KeptHere, players: bool) -> list[Told]:
    """Return the last entries, the latest first."""
    head = kept.log.head(kept.event_id)
    return told_of(kept, kept.log.entries(kept.event_id, after=max(0, head - SHOWN)), players)[::-1]


def open_now(kept: KeptHere) -> list[Told]:
    """Return the cases that wait for a ruling, the latest begun first."""
    names = kept.names()
    return [
        {
            "id": one.id,
            "by": names.get(one.by or "", ""),
            "at": clock_of(one.begun_at),
            "title": one.pages[0].title if one.pages else "",
        }
        for one in open_cases(kept.records, kept.event_id)
    ]


def places(kept: KeptHere, people: bool) -> list[Told]:
    """Return where officials said they are, the latest first; nothing where nobody may be named."""
    if not people:
        return []
    names = kept.names()
    return [
        {
            "name": names.get(one.person, ""),
            "hole": one.hole,
            "words": one.words,
            "at": clock_of(one.reported_at),
        }
        for one in whereabouts(kept.records, kept.event_id)
    ]


def title_of(entry: Kept) -> str:
    """Return what an entry is about, in words."""
    if entry.kind == "ruling":
        try:
            acts = entry.content["case"]["incidents"]
            return " · ".join(translate()(incident(act["incident"]).title) for act in acts)
        except (InputError, KeyError, TypeError):
            return text("log.kind.ruling")
    return text(f"log.kind.{entry.kind}") if entry.kind in kinds() else str(entry.kind)


def clock_of(written: str) -> str:
    """Return the time of day of a moment, ISO 8601, on the clocks of the machine."""
    return f"{datetime.fromisoformat(written).astimezone():%H:%M}"
