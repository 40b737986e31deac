"""Briefings kept at the desk: each whole, with a version, so that nobody's words are overwritten unseen."""

from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import insert, select, update

from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import instant, new_ident
from marram.records.tables import KeptBriefing
from marram.said import said


@dataclass(frozen=True, slots=True)
class Kept:
    """A briefing as it is kept; its attributes are those of its row, the time as a moment."""

    id: str
    title: str
    document: str
    version: int
    changed_at: datetime


_COLUMNS = (
    KeptBriefing.id,
    KeptBriefing.title,
    KeptBriefing.document,
    KeptBriefing.version,
    KeptBriefing.changed_at,
)


def keep_briefing(records: Records, event: str, title: str, document: str, now: datetime) -> str:
    """Keep a new briefing and return its identifier."""
    ident = new_ident()
    row = {"id": ident, "event_id": event, "title": title, "document": document}
    with records.writing() as connection:
        connection.execute(insert(KeptBriefing).values({**row, "version": 1, "changed_at": instant(now)}))
    return ident


def briefings(records: Records, event: str) -> list[Kept]:
    """Return the briefings of an event, the one changed last first."""
    wanted = select(*_COLUMNS).where(KeptBriefing.event_id == event).order_by(KeptBriefing.changed_at.desc())
    with records.reading() as connection:
        return [_kept(*row) for row in connection.execute(wanted)]


def briefing_of(records: Records, event: str, ident: str) -> Kept | None:
    """Return a briefing of an event; ``None`` where there is none."""
    wanted = select(*_COLUMNS).where(KeptBriefing.event_id == event, KeptBriefing.id == ident)
    with records.reading() as connection:
        row = connection.execute(wanted).first()
    return None if row is None else _kept(*row)


def change_briefing(records: Records, one: Kept, document: str, now: datetime) -> None:
    """Keep a briefing changed.

    Raises:
        InputError: somebody else changed it meanwhile; nothing is kept.
    """
    same = (KeptBriefing.id == one.id, KeptBriefing.version == one.version)
    new = {"document": document, "version": one.version + 1, "changed_at": instant(now)}
    with records.writing() as connection:
        changed = connection.execute(update(KeptBriefing).where(*same).values(new).returning(KeptBriefing.id))
        if changed.first() is None:
            raise InputError(
                said("Somebody else changed this briefing meanwhile. Open it again and repeat your change.")
            )


def _kept(ident: str, title: str, document: str, version: int, changed: str) -> Kept:
    return Kept(ident, title, document, version, datetime.fromisoformat(changed))
