"""Who is let in: invitations, those signed in, passwords, and where officials said they are. None of it is exported."""

from sqlalchemy import CheckConstraint, ForeignKey, Index, LargeBinary, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from marram.records.tables.base import Ident, Table, Words

OPENS_DOORS = "opens_doors"
"""What marks a table that lets people in: it is in backups, and in no export."""

_ROLES = "'chief_referee', 'referee', 'committee', 'scorer', 'starter', 'player'"


class Invitation(Table):
    """A link by which people join an event in a role, until it expires, is used up or is taken back.

    Attributes:
        role: the role it gives.
        secret: SHA-256 of the link's secret, which is kept nowhere else.
        made_by: who invites; ``None``: whoever started the desk.
        uses_left: how many may still join by it.
        expires_at: until when, ISO 8601 in UTC.
        ended_at: when it was taken back; ``None``: it was not.
    """

    __tablename__ = "invitations"
    __table_args__ = (
        UniqueConstraint("secret"),
        CheckConstraint(f"role IN ({_ROLES})", name="known_role"),
        CheckConstraint("uses_left >= 0", name="never_below_none"),
        {"info": {OPENS_DOORS: True}},
    )

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), index=True)
    role: Mapped[Words]
    secret: Mapped[bytes] = mapped_column(LargeBinary)
    made_by: Mapped[Ident | None] = mapped_column(ForeignKey("people.id"))
    made_at: Mapped[Words]
    uses_left: Mapped[int]
    expires_at: Mapped[Words]
    ended_at: Mapped[Words | None]


class SignIn(Table):
    """Somebody signed in at a device.

    Attributes:
        role: the role, for as long as this lasts.
        secret: SHA-256 of what the device's cookie holds, which is kept nowhere else.
        device: what the browser calls itself, shortened; personal, and erased with the person.
        seen_at: when it last asked for something, to the minute or so.
        expires_at: when it ends by itself.
        ended_at: when it was ended; ``None``: it was not.
    """

    __tablename__ = "sign_ins"
    __table_args__ = (
        UniqueConstraint("secret"),
        CheckConstraint(f"role IN ({_ROLES})", name="known_role"),
        Index("ix_sign_ins_event_id_person_id", "event_id", "person_id"),
        {"info": {OPENS_DOORS: True}},
    )

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"))
    person_id: Mapped[Ident] = mapped_column(ForeignKey("people.id"))
    role: Mapped[Words]
    secret: Mapped[bytes] = mapped_column(LargeBinary)
    device: Mapped[Words]
    began_at: Mapped[Words]
    seen_at: Mapped[Words]
    expires_at: Mapped[Words]
    ended_at: Mapped[Words | None]


class Password(Table):
    """A password, where somebody wanted one.

    Attributes:
        hashed: by Argon2id, with its salt and settings, in its usual written form.
    """

    __tablename__ = "passwords"
    __table_args__ = ({"info": {OPENS_DOORS: True}},)

    person_id: Mapped[Ident] = mapped_column(ForeignKey("people.id"), primary_key=True)
    hashed: Mapped[Words]
    set_at: Mapped[Words]


class Whereabouts(Table):
    """The last place an official reported, on purpose. Only the last: no way of anybody is kept.

    Attributes:
        hole: the hole; ``None``: not on a hole.
        words: what else was said of it, such as "beside the green".
        reported_at: when, ISO 8601 in UTC.
    """

    __tablename__ = "whereabouts"
    __table_args__ = ({"info": {OPENS_DOORS: True}},)

    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), primary_key=True)
    person_id: Mapped[Ident] = mapped_column(ForeignKey("people.id"), primary_key=True)
    hole: Mapped[int | None]
    words: Mapped[Words]
    reported_at: Mapped[Words]
