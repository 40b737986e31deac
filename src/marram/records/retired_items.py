"""Items of examinations that are not asked again: retired with the reasons, and taken back; that they once were stays written."""

import json
from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import select, update
from sqlalchemy.dialects import postgresql, sqlite

from marram.records.database import Records
from marram.records.entry import instant
from marram.records.examinations import Sat
from marram.records.tables import RetiredItem


def retire(records: Records, sat: Sat, ident: str, why: Sequence[str], now: datetime) -> None:
    """Retire an item with the reasons."""
    new = {
        "examination_id": sat.id,
        "why": json.dumps(list(why), ensure_ascii=False),
        "retired_at": instant(now),
        "restored_at": None,
    }
    dialect = sqlite if records.is_file else postgresql
    added = dialect.insert(RetiredItem).values({"ident": ident, **new})
    with records.writing() as connection:
        connection.execute(added.on_conflict_do_update(index_elements=["ident"], set_=new))


def restore(records: Records, ident: str, now: datetime) -> None:
    """Take back that an item is retired; that it once was stays written."""
    same = (RetiredItem.ident == ident, RetiredItem.restored_at.is_(None))
    with records.writing() as connection:
        connection.execute(update(RetiredItem).where(*same).values(restored_at=instant(now)))


def retired(records: Records) -> dict[str, list[str]]:
    """Return why each item is retired that is, by the item."""
    wanted = select(RetiredItem.ident, RetiredItem.why).where(RetiredItem.restored_at.is_(None))
    with records.reading() as connection:
        return {ident: list(json.loads(why)) for ident, why in connection.execute(wanted)}


__all__ = ["restore", "retire", "retired"]
