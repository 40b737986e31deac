"""What was sealed beside entries of the log: photographs and names, which can be erased without breaking the chain."""

from collections.abc import Sequence
from typing import Any

from sqlalchemy import Connection, select

from marram.records.entry import Kept, Part, part_ident
from marram.records.tables import SealedPart

AT_ONCE = 5000
"""Identifiers asked for in one statement at most: fewer than any database takes (SQLite 32,766, PostgreSQL 65,535)."""


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
