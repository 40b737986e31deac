"""Invitations: links that let people join an event in a role, a number of times, until a time, or until taken back."""

from dataclasses import dataclass
from datetime import datetime
from hashlib import sha256
from secrets import token_urlsafe

from sqlalchemy import ColumnElement, insert, select, update

from marram.records.database import Records
from marram.records.entry import instant, new_ident
from marram.records.tables import Invitation

BYTES = 16
"""Random bytes of an invitation's secret: 128 bits, beyond guessing (OWASP asks for 64 at least), short enough to be typed."""


@dataclass(frozen=True, slots=True)
class Invited:
    """An invitation as it is kept.

    Attributes:
        id: its identifier.
        event: the event it is for.
        role: the role it gives.
        made_by: who invites; ``None``: whoever started the desk.
        uses_left: how many may still join by it.
        expires_at: until when, ISO 8601 in UTC.
    """

    id: str
    event: str
    role: str
    made_by: str | None
    uses_left: int
    expires_at: str


_SHOWN = (
    Invitation.id,
    Invitation.event_id,
    Invitation.role,
    Invitation.made_by,
    Invitation.uses_left,
    Invitation.expires_at,
)


def digest_of(secret: str) -> bytes:
    """Return what is kept of a secret. It is long and random, so that a plain hash suffices."""
    return sha256(secret.encode("utf-8", "replace")).digest()


def invite(
    records: Records,
    event: str,
    role: str,
    *,
    now: datetime,
    expires_at: datetime,
    uses: int = 1,
    by: str | None = None,
) -> tuple[str, str]:
    """Make an invitation; return its identifier and its secret, which is told this once and kept nowhere.

    Raises:
        InputError: it cannot be kept.
    """
    ident, secret = new_ident(), token_urlsafe(BYTES)
    row = {
        "id": ident,
        "event_id": event,
        "role": role,
        "secret": digest_of(secret),
        "made_by": by,
        "made_at": instant(now),
        "uses_left": uses,
        "expires_at": instant(expires_at),
        "ended_at": None,
    }
    with records.writing() as connection:
        connection.execute(insert(Invitation), row)
    return ident, secret


def invited(records: Records, event: str, secret: str, now: datetime) -> Invited | None:
    """Return the invitation of a secret, if somebody may join by it now; looking at it uses nothing up."""
    wanted = select(*_SHOWN).where(
        Invitation.secret == digest_of(secret),
        Invitation.event_id == event,
        *_open(now),
    )
    with records.reading() as connection:
        row = connection.execute(wanted).first()
    return None if row is None else Invited(*row)


def open_invitations(records: Records, event: str, now: datetime) -> list[Invited]:
    """Return the invitations by which somebody may still join, the latest first."""
    wanted = select(*_SHOWN).where(Invitation.event_id == event, *_open(now))
    with records.reading() as connection:
        return [Invited(*row) for row in connection.execute(wanted.order_by(Invitation.made_at.desc()))]


def take_back(
    records: Records, event: str, now: datetime, *, ident: str | None = None, by_start: bool = False
) -> None:
    """Take an invitation back, or all that the starting of the desk made, so that nobody joins by it any more."""
    wanted = update(Invitation).where(Invitation.event_id == event, Invitation.ended_at.is_(None))
    which = Invitation.made_by.is_(None) if by_start else Invitation.id == ident
    with records.writing() as connection:
        connection.execute(wanted.where(which).values(ended_at=instant(now)))


def _open(now: datetime) -> tuple[ColumnElement[bool], ...]:
    return (Invitation.ended_at.is_(None), Invitation.uses_left > 0, Invitation.expires_at > instant(now))
