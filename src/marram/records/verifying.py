"""Whether what is kept is as it was: every chain, every sealed part, and what the database says about itself."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from sqlalchemy import Connection, select, text

from marram.records.chain import Break, Broken, first_broken
from marram.records.database import Records
from marram.records.entry import Kept, Part, part_ident
from marram.records.log import stream
from marram.records.tables import Event, SealedPart

_PARTS = select(
    SealedPart.id,
    SealedPart.what,
    SealedPart.media_type,
    SealedPart.salt,
    SealedPart.content,
    SealedPart.erased_at,
)


@dataclass(frozen=True, slots=True)
class Verified:
    """The log of one event, looked at.

    Attributes:
        event: the event.
        name: its name.
        entries: how many entries there are.
        receipt: number and digest of the last one; ``0:`` where there is none.
        broken: the first entry that is not as it was.
    """

    event: str
    name: str
    entries: int
    receipt: str
    broken: Broken | None


def verified(records: Records, receipts: Mapping[str, Mapping[int, str]] | None = None) -> list[Verified]:
    """Return every log, looked at entry by entry.

    Args:
        records: what to look at.
        receipts: digests, or their first digits, that somebody wrote down, by event and number.

    Raises:
        InputError: the records cannot be read.
    """
    with records.reading() as connection:
        events = connection.execute(select(Event.id, Event.name).order_by(Event.name)).all()
        return [_log(connection, one.id, one.name, (receipts or {}).get(one.id, {})) for one in events]


def unsound(records: Records) -> list[str]:
    """Return what the database finds wrong with itself, in its own words; empty where nothing is.

    Raises:
        InputError: the records cannot be read at all.
    """
    if not records.is_file:
        return []
    with records.reading() as connection:
        found = [str(row[0]) for row in connection.execute(text("PRAGMA integrity_check"))]
        lost = connection.execute(text("PRAGMA foreign_key_check")).all()
    return [one for one in found if one != "ok"] + [
        f"{row[0]} row {row[1]}: no such {row[2]}" for row in lost
    ]


def _log(connection: Connection, event: str, name: str, receipts: Mapping[int, str]) -> Verified:
    source = stream(connection, event)
    last: list[Kept] = []
    torn: list[int] = []
    with_parts = set(connection.scalars(select(SealedPart.entry_id).distinct()))

    def entries() -> Iterator[Kept]:
        for one in source:
            last[:] = [one]
            if (
                not torn
                and ('"sealed":' in one.body or one.id in with_parts)
                and not _parts_whole(connection, one)
            ):
                torn.append(one.number)
            yield one

    try:
        broken = first_broken(event, entries(), receipts)
    finally:
        source.close()
    if torn and (broken is None or torn[0] < broken.number):
        broken = Broken(event, torn[0], Break.PART)
    count = connection.scalar(text("SELECT count(*) FROM log WHERE event_id = :event"), {"event": event}) or 0
    return Verified(event, name, count, last[0].receipt if last and not broken else "", broken)


def _parts_whole(connection: Connection, entry: Kept) -> bool:
    """Tell whether the parts of an entry are those that were sealed, or were erased, and no other is there."""
    rows = {one.id: one for one in connection.execute(_PARTS.where(SealedPart.entry_id == entry.id))}
    for place, seal in enumerate(entry.told.get("sealed", [])):
        row = rows.pop(part_ident(entry.id, place), None)
        if row is None or (row.what, row.media_type) != (seal["what"], seal["media_type"]):
            return False
        if row.erased_at is None and Part(row.what, row.content, salt=row.salt).seal() != seal["digest"]:
            return False
    return not rows
