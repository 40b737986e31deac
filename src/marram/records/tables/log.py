"""The log of an event: entries that are only ever added, and the parts sealed beside them that can be erased."""

from sqlalchemy import CheckConstraint, ForeignKey, Index, LargeBinary, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from marram.records.tables.base import Ident, Table, Words, read_out_of


class LogEntry(Table):
    """One entry of the log, a link of its event's chain. The database refuses to change or remove it.

    Attributes:
        number: 1 for the first of the event.
        id: made by whoever recorded it, so that the same entry sent twice is kept once.
        recorded_at: when it was kept, ISO 8601 in UTC, by the clock of whoever keeps it.
        body: what was recorded, as canonical JSON (:mod:`marram.records.entry`).
        previous: the digest of the entry before; sixty-four zeros for the first.
        digest: SHA-256 of the entry with its place in the chain (:mod:`marram.records.chain`).
        kind: what kind of entry it is; this and what follows is read out of the body by the database.
    """

    __tablename__ = "log"
    __table_args__ = (
        UniqueConstraint("id"),
        CheckConstraint("number >= 1", name="counted_from_one"),
        Index("ix_log_event_id_kind", "event_id", "kind"),
        Index("ix_log_event_id_player", "event_id", "player"),
    )

    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    id: Mapped[Ident]
    recorded_at: Mapped[Words]
    body: Mapped[Words]
    previous: Mapped[Words]
    digest: Mapped[Words]
    kind: Mapped[Words | None] = mapped_column(read_out_of("body", "kind"))
    player: Mapped[Words | None] = mapped_column(read_out_of("body", "player"))
    hole: Mapped[int | None] = mapped_column(read_out_of("body", "hole", whole_number=True))
    corrects: Mapped[Words | None] = mapped_column(read_out_of("body", "corrects"), index=True)
    alike: Mapped[Words | None] = mapped_column(read_out_of("body", "alike"), index=True)


class SealedPart(Table):
    """A note, a name as told, or a photograph of an entry: personal, so kept apart and erasable.

    The entry holds only a digest of the salted content, so the chain stays whole when the content goes, and nobody
    can guess a short note from its digest.

    Attributes:
        entry_id: the entry it belongs to.
        what: ``note``, ``reason``, ``name`` or ``photograph``.
        media_type: its media type (RFC 6838).
        salt: 16 random bytes; ``None`` when erased.
        content: the bytes; ``None`` when erased.
        erased_at: when it was erased, ISO 8601 in UTC.
    """

    __tablename__ = "sealed_parts"
    __table_args__ = (
        CheckConstraint(
            "(content IS NULL) = (erased_at IS NOT NULL) AND (salt IS NULL) = (content IS NULL)",
            name="whole_or_erased",
        ),
    )

    id: Mapped[Ident] = mapped_column(primary_key=True)
    entry_id: Mapped[Ident] = mapped_column(ForeignKey(LogEntry.id), index=True)
    what: Mapped[Words]
    media_type: Mapped[Words]
    salt: Mapped[bytes | None] = mapped_column(LargeBinary)
    content: Mapped[bytes | None] = mapped_column(LargeBinary)
    erased_at: Mapped[Words | None]
