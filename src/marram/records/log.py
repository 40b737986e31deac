"""The log of an event: entries are added, each exactly once, and never changed."""

import json
from collections.abc import Callable, Generator, Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import Connection, Select, bindparam, insert, select, text
from sqlalchemy.orm import InstrumentedAttribute

from marram.errors import InputError
from marram.records.chain import START, sealed
from marram.records.database import Records
from marram.records.entry import Entry, Kept, Part, instant, part_ident
from marram.records.tables import LogEntry, SealedPart, Table
from marram.said import said

_LOG, _PARTS, _EVENTS = (Table.metadata.tables[name] for name in ("log", "sealed_parts", "events"))
_KEPT = tuple(
    _LOG.c[name] for name in ("event_id", "number", "id", "recorded_at", "body", "previous", "digest")
)

# Statements of every appending, built once: building one takes longer than running it.
_LOCK = text("SELECT pg_advisory_xact_lock(hashtextextended(:event, 0))")
_EVENT = select(_EVENTS.c.id).where(_EVENTS.c.id == bindparam("event"))
_HEAD = (
    select(_LOG.c.number, _LOG.c.digest)
    .where(_LOG.c.event_id == bindparam("event"))
    .order_by(_LOG.c.number.desc())
    .limit(1)
)
_THERE = select(*_KEPT).where(_LOG.c.id.in_(bindparam("ids", expanding=True)))
_ADD, _ADD_PARTS = insert(_LOG), insert(_PARTS)

AT_ONCE = 5000
"""Identifiers asked for in one statement at most: fewer than any database takes (SQLite 32,766, PostgreSQL 65,535)."""

Given = tuple[str, Entry]
"""An entry and the event whose log it is for."""


class Log:
    """The logs of all events of some records.

    Args:
        records: where they are kept.
        clock: tells the time an entry is kept.
    """

    def __init__(self, records: Records, clock: Callable[[], datetime] = lambda: datetime.now(UTC)) -> None:
        self.records = records
        self._clock = clock
        self._known: set[str] = set()

    def append(self, event: str, entry: Entry) -> Kept:
        """Add an entry; once this returns it is on the disk. The same entry given again is not added twice.

        Raises:
            InputError: it cannot be kept, corrects what is not there, or its identifier is that of another entry.
        """
        (answer,) = self.append_all([(event, entry)])
        if isinstance(answer, InputError):
            raise answer
        return answer

    def append_all(self, given: Sequence[Given]) -> list[Kept | InputError]:
        """Add many entries in one transaction; tell of each what became of it. One that cannot be kept hinders no other.

        Raises:
            InputError: nothing can be written; none was added.
        """
        answers: list[Kept | InputError] = []
        written: list[tuple[Entry, str] | InputError] = []
        for _, entry in given:
            try:
                written.append((entry.checked(), entry.body()))
            except InputError as error:
                written.append(error)
        with self.records.writing() as connection:
            adding = _Adding(
                connection, self._known, instant(self._clock()), postgresql=not self.records.is_file
            )
            adding.begin(
                [
                    (event, entry)
                    for (event, entry), one in zip(given, written, strict=True)
                    if isinstance(one, tuple)
                ]
            )
            for (event, _), one in zip(given, written, strict=True):
                try:
                    answers.append(one if isinstance(one, InputError) else adding.add(event, *one))
                except InputError as error:
                    answers.append(error)
            adding.finish()
        self._known |= adding.known
        return answers

    def entries(
        self,
        event: str,
        *,
        after: int = 0,
        kind: str | None = None,
        player: str | None = None,
        hole: int | None = None,
    ) -> list[Kept]:
        """Return the entries of an event, by number.

        Args:
            event: the event.
            after: only those with a higher number.
            kind: only those of this kind.
            player: only those that concern this person.
            hole: only those of this hole.
        """
        wanted = select(*_KEPT).where(LogEntry.event_id == event, LogEntry.number > after)
        for column, value in ((LogEntry.kind, kind), (LogEntry.player, player), (LogEntry.hole, hole)):
            if value is not None:
                wanted = wanted.where(column == value)
        return self._found(wanted.order_by(LogEntry.number))

    def head(self, event: str) -> int:
        """Return the number of the last entry of an event; 0 where there is none."""
        with self.records.reading() as connection:
            found = connection.execute(_HEAD, {"event": event}).first()
        return found.number if found else 0

    def entry(self, id_: str) -> Kept | None:
        """Return the entry of this identifier, or ``None``."""
        found = self._found(select(*_KEPT).where(LogEntry.id == id_))
        return found[0] if found else None

    def numbered(self, event: str, number: int) -> Kept | None:
        """Return the entry of this number, or ``None``."""
        found = self._found(select(*_KEPT).where(LogEntry.event_id == event, LogEntry.number == number))
        return found[0] if found else None

    def corrections(self, id_: str) -> list[Kept]:
        """Return the entries that correct an entry, the earliest first; more than one where two people did at once."""
        wanted = select(*_KEPT).where(LogEntry.corrects == id_)
        return self._found(wanted.order_by(LogEntry.event_id, LogEntry.number))

    def entries_of(self, ids: Iterable[str]) -> dict[str, Kept]:
        """Return the entries of these identifiers, by identifier; one that is not there is left out."""
        return {one.id: one for one in self._among(LogEntry.id, ids)}

    def corrections_of(self, ids: Iterable[str]) -> dict[str, list[Kept]]:
        """Return the entries that correct these, by what they correct, each as :meth:`corrections` does."""
        found: dict[str, list[Kept]] = {}
        for one in self._among(LogEntry.corrects, ids):
            found.setdefault(one.corrects or "", []).append(one)
        return found

    def parts_of(self, entries: Iterable[Kept]) -> dict[str, list[Part | None]]:
        """Return what was sealed beside each of some entries, as :meth:`parts` does, by the identifier of the entry."""
        with self.records.reading() as connection:
            return sealed_beside(connection, list(entries))

    def alike(self, word: str, most: int = 50) -> list[Kept]:
        """Return the entries of all events about the same situation, the latest first.

        Args:
            word: what they have in common.
            most: how many at most (own choice).
        """
        wanted = select(*_KEPT).where(LogEntry.alike == word)
        return self._found(wanted.order_by(LogEntry.recorded_at.desc(), LogEntry.number.desc()).limit(most))

    def parts(self, id_: str) -> list[Part | None]:
        """Return what was sealed beside an entry, in its order; ``None`` stands for what was erased."""
        entry = self.entry(id_)
        if entry is None:
            return []
        with self.records.reading() as connection:
            return parts_of(connection, entry)

    def _among(self, column: InstrumentedAttribute[Any], ids: Iterable[str]) -> list[Kept]:
        """Return the entries whose column holds one of some identifiers, by event and number, asked for many at once."""
        wanted = sorted(set(ids))
        found: list[Kept] = []
        for start in range(0, len(wanted), AT_ONCE):
            some = select(*_KEPT).where(column.in_(wanted[start : start + AT_ONCE]))
            found += self._found(some)
        return sorted(found, key=lambda one: (one.event, one.number))

    def _found(self, wanted: Select[str, int, str, str, str, str, str]) -> list[Kept]:
        with self.records.reading() as connection:
            return [Kept(*row) for row in connection.execute(wanted)]


def stream(connection: Connection, event: str) -> Generator[Kept, None, None]:
    """Yield every entry of an event, by number, a few at a time; to be closed where it is not read to its end."""
    wanted = select(*_KEPT).where(LogEntry.event_id == event).order_by(LogEntry.number)
    with connection.execute(wanted, execution_options={"yield_per": 500}) as rows:
        for row in rows:
            yield Kept(*row)


def parts_of(connection: Connection, entry: Kept) -> list[Part | None]:
    """Return what was sealed beside an entry, in its order; ``None`` stands for what was erased or is not there."""
    return sealed_beside(connection, [entry])[entry.id]


def sealed_beside(connection: Connection, entries: Sequence[Kept]) -> dict[str, list[Part | None]]:
    """Return what was sealed beside each of some entries, as :func:`parts_of` does, by the identifier of the entry."""
    sealed_as = {one.id: one.told.get("sealed", []) for one in entries}
    ids = [id_ for id_, some in sealed_as.items() if some]
    there: dict[str, Any] = {}
    for start in range(0, len(ids), AT_ONCE):
        wanted = SealedPart.entry_id.in_(ids[start : start + AT_ONCE])
        rows = connection.execute(select(SealedPart.id, SealedPart.content, SealedPart.salt).where(wanted))
        there |= {row.id: row for row in rows}
    found: dict[str, list[Part | None]] = {}
    for id_, some in sealed_as.items():
        parts: list[Part | None] = []
        for place, one in enumerate(some):
            row = there.get(part_ident(id_, place))
            whole = row is not None and row.content is not None
            parts.append(
                Part(one["what"], row.content, one["media_type"], row.salt) if row and whole else None
            )
        found[id_] = parts
    return found


class _Adding:
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
            head = self.connection.execute(_HEAD, {"event": event}).first()
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
