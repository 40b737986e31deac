"""Rulings that went otherwise than earlier ones of the same situation: put before the chief referee, and looked at."""

from dataclasses import dataclass
from datetime import datetime
from uuid import UUID, uuid5

from marram.records.entry import Entry, Kept, Part
from marram.records.log import Log
from marram.services.log.log import RULING, earlier_of

PUT, SEEN = "difference_put", "difference_seen"
MOST_NAMED = 20
"""Earlier rulings that a difference names at most (own choice): the latest."""


@dataclass(frozen=True)
class Difference:
    """A ruling that differs from earlier ones.

    Attributes:
        ruling: the ruling.
        others: those it differs from, the latest first, of this event and of others.
        seen: the entries by which it was looked at.
    """

    ruling: Kept
    others: tuple[Kept, ...]
    seen: tuple[Kept, ...]


def put_before_chief(kept: Kept, log: Log, now: datetime) -> Entry | None:
    """Return the entry that puts a ruling before the chief referee; ``None`` where it differs from no earlier one.

    Nor is one put that was given as computed and as an earlier one of its event: what differs from both is there already.
    """
    if kept.kind != RULING:
        return None
    before = earlier_of(log, kept)
    others = [one.entry.id for one in before if not one.same][:MOST_NAMED]
    known = any(one.same and one.entry.event == kept.event for one in before)
    if not others or (known and not kept.content.get("otherwise")):
        return None
    return Entry(
        PUT,
        now,
        str(uuid5(UUID(kept.id), PUT)),
        player=kept.told.get("player"),
        hole=kept.told.get("hole"),
        content={"about": kept.id, "others": others},
    )


def looked_at(ident: str, now: datetime, about: str, *, by: str | None, stands: bool, words: str) -> Entry:
    """Return the entry by which the chief referee has looked at a ruling that differs.

    Args:
        ident: the identifier of the entry.
        now: the time.
        about: the entry of the ruling.
        by: who looked at it.
        stands: whether it stands as it was given.
        words: what is to be said of it.
    """
    note = (Part("note", words.strip().encode()),) if words.strip() else ()
    return Entry(SEEN, now, ident, by=by, content={"about": about, "stands": stands}, parts=note)


def differences(log: Log, event: str) -> list[Difference]:
    """Return the rulings of an event that differ from earlier ones, the latest first; one put right later is among them."""
    seen: dict[str, list[Kept]] = {}
    for one in log.entries(event, kind=SEEN):
        seen.setdefault(str(one.content.get("about")), []).append(one)
    named = [
        (str(one.content.get("about")), [str(id_) for id_ in one.content.get("others", ())])
        for one in reversed(log.entries(event, kind=PUT))
    ]
    there = log.entries_of(id_ for about, others in named for id_ in (about, *others))
    return [
        Difference(
            there[about],
            tuple(there[id_] for id_ in others if id_ in there),
            tuple(seen.get(about, ())),
        )
        for about, others in named
        if about in there
    ]
