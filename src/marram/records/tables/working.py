"""What is worked on beside the log: cases begun and not recorded yet, and the words that entries are found by."""

from sqlalchemy import ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from marram.records.tables.base import Ident, Table, Words
from marram.records.tables.log import LogEntry

MADE_ANEW = "made_anew"
"""What a table says in its ``info`` that holds only what is read out of others: no export holds it."""


class OpenCase(Table):
    """A ruling that somebody began. Once an entry of the same identifier is in the log it is open no longer.

    Attributes:
        id: the identifier that the entry will have.
        begun_at: when it was begun, ISO 8601 in UTC.
        by: the official who has it in hand now.
        player: whom it is about; ``None``: not said yet.
        group_id: the group of the player, as the starting sheet has it.
        set_aside_at: when it was set aside without a ruling.
    """

    __tablename__ = "open_cases"

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), index=True)
    begun_at: Mapped[Words]
    by: Mapped[Ident | None]
    player: Mapped[Ident | None]
    group_id: Mapped[Ident | None]
    set_aside_at: Mapped[Words | None]


class OpenCasePage(Table):
    """How far an open case has come on one device: two devices that go on with the same case overwrite nothing.

    Attributes:
        device: the device, by the identifier it was given.
        address: the page it stands at, which holds the whole case.
        title: what stands on that page, in words.
        kept_at: when, ISO 8601 in UTC.
    """

    __tablename__ = "open_case_pages"

    case_id: Mapped[Ident] = mapped_column(ForeignKey(OpenCase.id), primary_key=True)
    device: Mapped[Ident] = mapped_column(primary_key=True)
    address: Mapped[Words]
    title: Mapped[Words]
    kept_at: Mapped[Words]


class LogWords(Table):
    """The words of an entry, by which it is found; made anew from the entry wherever they are missing.

    An index for full-text search stands on it: FTS5 in SQLite, one of inverted lists (GIN) in PostgreSQL.

    Attributes:
        place: a number of its own, which SQLite's index names it by.
        words: in their searched form, a space between each two.
    """

    __tablename__ = "log_words"
    __table_args__ = (UniqueConstraint("place"), {"info": {MADE_ANEW: True}})

    entry_id: Mapped[Ident] = mapped_column(ForeignKey(LogEntry.id), primary_key=True)
    place: Mapped[int]
    words: Mapped[Words]
