"""One transaction that adds entries to the logs of events: each exactly once, chained to the one before it."""

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from typing import Any

from sqlalchemy import Connection, bindparam, insert, select, text

from marram.errors import InputError
from marram.records.chain import START, sealed
from marram.records.entry import Entry, Kept, Part, part_ident
from marram.records.sealed_parts import parts_of
from marram.records.tables import Table
from marram.said import said

LOG, _PARTS, _EVENTS = (Table.metadata.tables[name] for name in ("log", "sealed_parts", "events"))
KEPT = tuple(
    LOG.c[name] for name in ("event_id", "number", "id", "recorded_at", "body", "previous", "digest")
)
"""What an entry is made of, in the order of :class:`~marram.records.entry.Kept`."""

# Statements of every appending, built once: building one takes longer than running it.
_LOCK = text("SELECT pg_advisory_xact_lock(hashtextextended(:event, 0))")
_EVENT = select(_EVENTS.c.id).where(_EVENTS.c.id == bindparam("event"))
HEAD = (
    select(LOG.c.number, LOG.c.digest)
    .where(LOG.c.event_id == bindparam("event"))
    .order_by(LOG.c.number.desc())
    .limit(1)
)
_THERE = select(*KEPT).where(LOG.c.id.in_(bindparam("ids", expanding=True)))
_ADD, _ADD_PARTS = insert(LOG), insert(_PARTS)

Given = tuple[str, Entry]
"""An entry and the event whose log it is for."""


class Adding:
    """One transaction that adds entries."""

    def __init__(self, connection: Connection, known: Iterable[str], now: str, *, postgresql: bool) -> None:
        self.connection = connection
        self.now = now
        self.known = set(known)
        self.postgresql = postgresql
        self.heads: dict[str, tuple[int, str]] = {}
        self.there: dict[str, Kept] = {}
        self.rows: list[dict[str, object]] = []
        self.parts: list[dict[str, object]] = []

    def begin(self, given: Sequence[Given]) -> None:
        """Take the logs for ourselves, and look where they end and which of the entries are there already."""
        if not given:
            return
        for event in sorted({event for event, _ in given}):
            if self.postgresql:
                self.connection.execute(_LOCK, {"event": event})
            if event not in self.known:
                if self.connection.scalar(_EVENT, {"event": event}) is None:
                    continue
                self.known.add(event)
            head = self.connection.execute(HEAD, {"event": event}).first()
            self.heads[event] = (head.number, head.digest) if head else (0, START)
        named = {entry.id for _, entry in given} | {one.corrects for _, one in given if one.corrects}
        rows = self.connection.execute(_THERE, {"ids": list(named)})
        self.there = {row.id: Kept(*row) for row in rows}

    def add(self, event: str, entry: Entry, body: str) -> Kept:
        """Add an entry, or find it there.

        Raises:
            InputError: the log cannot take it.
        """
        if event not in self.heads:
            raise InputError(said("There is no event {event} whose log could keep this.", event=event))
        if (kept := self.there.get(entry.id)) is not None:
            return self._again(event, entry, kept)
        if entry.corrects is not None:
            corrected = self.there.get(entry.corrects)
            if corrected is None or corrected.event != event:
                raise InputError(
                    said(
                        "There is no entry {entry} in this log to be corrected. Send that one first.",
                        entry=entry.corrects,
                    )
                )
        number, previous = self.heads[event]
        kept = sealed(Kept(event, number + 1, entry.id, self.now, body, previous, digest=""))
        self.heads[event] = (kept.number, kept.digest)
        self.there[kept.id] = kept
        self.rows.append(
            {
                "event_id": event,
                "number": kept.number,
                "id": kept.id,
                "recorded_at": kept.recorded_at,
                "body": body,
                "previous": previous,
                "digest": kept.digest,
            }
        )
        self.parts += [
            {
                "id": part_ident(entry.id, place),
                "entry_id": entry.id,
                "what": one.what,
                "media_type": one.media_type,
                "salt": one.salt,
                "content": one.content,
            }
            for place, one in enumerate(entry.parts)
        ]
        return kept

    def finish(self) -> None:
        """Write what was added."""
        if self.rows:
            self.connection.execute(_ADD, self.rows)
        if self.parts:
            self.connection.execute(_ADD_PARTS, self.parts)
        self.rows, self.parts = [], []

    def _again(self, event: str, entry: Entry, kept: Kept) -> Kept:
        """Return an entry that was kept before, where this is the same.

        Raises:
            InputError: this is another entry with the same identifier.
        """
        self.finish()
        parts = parts_of(self.connection, kept)
        if event == kept.event and len(entry.parts) == len(parts):
            pairs = zip(entry.parts, parts, strict=True)
            as_kept = tuple(one if was is None else replace(one, salt=was.salt) for one, was in pairs)
            given = json.loads(replace(entry, parts=as_kept).body())
            if _left(given, parts) == _left(kept.told, parts):
                return kept
        raise InputError(
            said(
                "Entry {number} has this identifier and says something else; nothing was added. "
                "Give a correction an identifier of its own.",
                number=kept.number,
            )
        )


def _left(body: Mapping[str, Any], parts: Sequence[Part | None]) -> dict[str, Any]:
    """Return what a body says, but for the digests of parts that were erased: nothing tells what they were of."""
    digests = [
        one["digest"] if part else None for one, part in zip(body.get("sealed", []), parts, strict=True)
    ]
    return {**body, "sealed": digests}
