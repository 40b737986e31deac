"""Full-text search over the entries of a log: which of them hold all of some words, the latest first, a page at a time.

The words of an entry are made by whoever knows what they mean: for each entry once, at the first search after it was
added, and removed where what they were read from is erased. Nothing else of the log is read for a search.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

from sqlalchemy import BindParameter, Connection, TextClause, bindparam, func, insert, select, text

from marram.records.database import Records
from marram.records.entry import Kept, Part
from marram.records.sealed_parts import sealed_beside
from marram.records.tables import LogWords

AT_ONCE = 500
"""Entries whose words are made in one transaction (own choice): whoever records meanwhile waits no longer than that takes."""

WordsOf = Callable[[Kept, Sequence[Part | None]], Sequence[str]]
"""Makes the words of an entry from it and what is sealed beside it."""

_KEPT = "log.event_id, log.number, log.id, log.recorded_at, log.body, log.previous, log.digest"
_NEW = text(
    f"SELECT {_KEPT} FROM log LEFT JOIN log_words ON log_words.entry_id = log.id "  # noqa: S608 - names of columns
    "WHERE log_words.entry_id IS NULL ORDER BY log.event_id, log.number LIMIT :most"
)
_IN_SQLITE = "log_words.place IN (SELECT rowid FROM log_words_index WHERE log_words_index MATCH :query)"
_IN_POSTGRESQL = "array_to_tsvector(string_to_array(log_words.words, ' ')) @@ CAST(:query AS tsquery)"


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is looked for; all of it must be there.

    Attributes:
        words: words that the entry holds, in their searched form.
        anyone: of each of these sets of words the entry holds at least one.
        kinds: its kind is one of these; empty for any.
        hole: the hole.
        event: the event; ``None`` for all.
        since: recorded at this moment or later, ISO 8601 in UTC.
        until: recorded before this moment.
    """

    words: tuple[str, ...] = ()
    anyone: tuple[tuple[str, ...], ...] = ()
    kinds: tuple[str, ...] = ()
    hole: int | None = None
    event: str | None = None
    since: str | None = None
    until: str | None = None


def index(records: Records, words_of: WordsOf) -> int:
    """Make the words of every entry that has none yet; return of how many."""
    count = 0
    while done := index_some(records, words_of):
        count += done
    return count


def index_some(records: Records, words_of: WordsOf, most: int = AT_ONCE) -> int:
    """Make the words of the first entries that have none yet; return of how many.

    Args:
        records: where they are kept.
        words_of: makes the words of an entry.
        most: of how many at most, in one transaction.
    """
    with records.reading() as connection:
        if connection.execute(_NEW, {"most": 1}).first() is None:
            return 0
    with records.writing() as connection:
        if not records.is_file:
            connection.execute(text("LOCK TABLE log_words IN SHARE ROW EXCLUSIVE MODE"))
        new = [Kept(*row) for row in connection.execute(_NEW, {"most": most})]
        last = connection.scalar(select(func.max(LogWords.place))) or 0
        parts = sealed_beside(connection, new)
        rows = [
            {"entry_id": one.id, "place": place, "words": _written(words_of(one, parts[one.id]))}
            for place, one in enumerate(new, start=last + 1)
        ]
        if rows:
            connection.execute(insert(LogWords), rows)
    return len(rows)


def found(records: Records, wanted: Wanted, *, most: int, before: int = 0) -> tuple[list[Kept], int]:
    """Return a page of the entries that hold what is looked for, the latest first, and how many there are in all.

    Args:
        records: where they are kept.
        wanted: what is looked for.
        most: how many to return at most.
        before: how many of the latest to leave out.
    """
    source, values = _chosen(records, wanted)
    with records.reading() as connection:
        count = connection.scalar(_statement(f"SELECT count(*) {source}", values), values) or 0
        page = _statement(
            f"SELECT {_KEPT} {source} ORDER BY log.recorded_at DESC, log.number DESC LIMIT :most OFFSET :before",
            values,
        )
        rows = connection.execute(page, {**values, "most": most, "before": before})
        return [Kept(*row) for row in rows], count


def forget_words(connection: Connection, entries: Sequence[str]) -> None:
    """Remove the words of entries from which something was erased; they are made anew of what is left."""
    if entries:
        statement = text("DELETE FROM log_words WHERE entry_id IN :ids").bindparams(
            bindparam("ids", expanding=True)
        )
        connection.execute(statement, {"ids": list(entries)})
        if connection.dialect.name == "sqlite":  # its index lets go of removed words when it is merged anew
            connection.execute(text("INSERT INTO log_words_index (log_words_index) VALUES ('optimize')"))


def _statement(words: str, values: dict[str, object]) -> TextClause:
    several: list[BindParameter[Any]] = [
        bindparam(name, expanding=True) for name, value in values.items() if isinstance(value, list)
    ]
    return text(words).bindparams(*several)


def _chosen(records: Records, wanted: Wanted) -> tuple[str, dict[str, object]]:
    """Return the tables and conditions of a search as SQL, and the values in it."""
    conditions: list[str] = []
    values: dict[str, object] = {}
    source = "log"
    if query := _query(wanted, *(('"', " AND ", " OR ") if records.is_file else ("'", " & ", " | "))):
        source = "log_words CROSS JOIN log"  # in SQLite this says which comes first: the few that were found
        conditions.append("log_words.entry_id = log.id")
        conditions.append(_IN_SQLITE if records.is_file else _IN_POSTGRESQL)
        values["query"] = query
    for column, sign, value in (
        ("event_id", "=", wanted.event),
        ("hole", "=", wanted.hole),
        ("recorded_at", ">=", wanted.since),
        ("recorded_at", "<", wanted.until),
    ):
        if value is not None:
            name = f"{column}_{len(values)}"
            conditions.append(f"log.{column} {sign} :{name}")
            values[name] = value
    if wanted.kinds:
        conditions.append("log.kind IN :kinds")
        values["kinds"] = list(wanted.kinds)
    return f"FROM {source} WHERE {' AND '.join(conditions) or '1 = 1'}", values


def _query(wanted: Wanted, quote: str, both: str, either: str) -> str:
    """Return what is looked for as the database's index reads it; a word without any letter or digit is none."""
    groups = [[_clean(one)] for one in wanted.words] + [[*map(_clean, some)] for some in wanted.anyone]
    known = [[f"{quote}{one}{quote}" for one in some if one] for some in groups]
    return both.join(f"({either.join(some)})" for some in known if some)


def _written(words: Sequence[str]) -> str:
    return " ".join(dict.fromkeys(filter(None, map(_clean, words)))) or "_"


def _clean(word: str) -> str:
    """Return a word of letters, digits and underscores only, so that no index takes a part of it for a sign."""
    return word if word.isalnum() else "".join(letter for letter in word if letter.isalnum() or letter == "_")
