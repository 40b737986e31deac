"""The log of an event: entries are added, each exactly once, and never changed."""

from collections.abc import Callable, Generator, Iterable, Sequence
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import Connection, Select, select
from sqlalchemy.orm import InstrumentedAttribute

from marram.errors import InputError
from marram.records.adding import HEAD, KEPT, Adding, Given
from marram.records.database import Records
from marram.records.entry import Entry, Kept, Part, instant
from marram.records.sealed_parts import AT_ONCE, parts_of, sealed_beside
from marram.records.tables import LogEntry


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
            adding = Adding(
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
        wanted = select(*KEPT).where(LogEntry.event_id == event, LogEntry.number > after)
        for column, value in ((LogEntry.kind, kind), (LogEntry.player, player), (LogEntry.hole, hole)):
            if value is not None:
                wanted = wanted.where(column == value)
        return self._found(wanted.order_by(LogEntry.number))

    def head(self, event: str) -> int:
        """Return the number of the last entry of an event; 0 where there is none."""
        with self.records.reading() as connection:
            found = connection.execute(HEAD, {"event": event}).first()
        return found.number if found else 0

    def entry(self, id_: str) -> Kept | None:
        """Return the entry of this identifier, or ``None``."""
        found = self._found(select(*KEPT).where(LogEntry.id == id_))
        return found[0] if found else None

    def numbered(self, event: str, number: int) -> Kept | None:
        """Return the entry of this number, or ``None``."""
        found = self._found(select(*KEPT).where(LogEntry.event_id == event, LogEntry.number == number))
        return found[0] if found else None

    def corrections(self, id_: str) -> list[Kept]:
        """Return the entries that correct an entry, the earliest first; more than one where two people did at once."""
        wanted = select(*KEPT).where(LogEntry.corrects == id_)
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
        wanted = select(*KEPT).where(LogEntry.alike == word)
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
            some = select(*KEPT).where(column.in_(wanted[start : start + AT_ONCE]))
            found += self._found(some)
        return sorted(found, key=lambda one: (one.event, one.number))

    def _found(self, wanted: Select[str, int, str, str, str, str, str]) -> list[Kept]:
        with self.records.reading() as connection:
            return [Kept(*row) for row in connection.execute(wanted)]


def stream(connection: Connection, event: str) -> Generator[Kept, None, None]:
    """Yield every entry of an event, by number, a few at a time; to be closed where it is not read to its end."""
    wanted = select(*KEPT).where(LogEntry.event_id == event).order_by(LogEntry.number)
    with connection.execute(wanted, execution_options={"yield_per": 500}) as rows:
        for row in rows:
            yield Kept(*row)
