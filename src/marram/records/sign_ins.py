"""Who is signed in: joining by an invitation, by a password, staying, and being ended from elsewhere.

A device holds a secret in a cookie; here is only its hash. What is asked with it is looked up each time, so that a
sign-in that was ended is over with the next request, in every process that serves these records.
"""

from dataclasses import dataclass
from datetime import datetime, timedelta
from secrets import token_urlsafe

from sqlalchemy import Connection, delete, insert, or_, select, update

from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import instant, new_ident
from marram.records.invitations import digest_of
from marram.records.tables import (
    Entrant,
    Invitation,
    OfficialDuty,
    Password,
    Person,
    PersonalDetails,
    SignIn,
)
from marram.said import said

PLAYER = "player"
"""The role of those who are entered, and not made by joining."""

BYTES = 32
"""Random bytes of a sign-in's secret: 256 bits."""

LASTS = timedelta(days=8)
"""How long a sign-in lasts (own choice: practice days and a competition of four rounds, with a day to spare)."""

SEEN_EVERY = timedelta(minutes=1)
"""How often it is written down that a device was seen (own choice: each time would write with every page)."""

LONGEST_NAME = 80
LONGEST_DEVICE = 120
"""Letters that are kept of a name, and of what a browser calls itself (own choice)."""


@dataclass(frozen=True, slots=True)
class SignedIn:
    """A sign-in as it is kept.

    Attributes:
        id: its identifier.
        event: the event.
        person: who.
        role: in which role.
        device: what the browser called itself.
        began_at: since when, ISO 8601 in UTC.
        seen_at: when it was last seen, to the minute or so.
        expires_at: when it ends by itself.
    """

    id: str
    event: str
    person: str
    role: str
    device: str
    began_at: str
    seen_at: str
    expires_at: str


_SHOWN = (
    SignIn.id,
    SignIn.event_id,
    SignIn.person_id,
    SignIn.role,
    SignIn.device,
    SignIn.began_at,
    SignIn.seen_at,
    SignIn.expires_at,
)


def join(
    records: Records, event: str, secret: str, *, person: str | None, name: str, device: str, now: datetime
) -> str | None:
    """Join by an invitation: use it once, and sign in; all of it or nothing. Return the secret for the cookie.

    Args:
        records: where.
        event: the event that is joined.
        secret: the invitation's.
        person: who, of the officials the event has in this role; ``None``: somebody else, by name.
        name: the name of a further official, who is made, or of a player, who must be entered.
        device: what the browser calls itself.
        now: the time.

    Returns:
        The secret of the sign-in; ``None`` where the invitation is none, is used up, over or taken back.

    Raises:
        InputError: nobody is named, or the person does not have this role in the event; the invitation is not used.
    """
    with records.writing() as connection:
        used = connection.execute(
            update(Invitation)
            .where(
                Invitation.secret == digest_of(secret),
                Invitation.event_id == event,
                Invitation.ended_at.is_(None),
                Invitation.uses_left > 0,
                Invitation.expires_at > instant(now),
            )
            .values(uses_left=Invitation.uses_left - 1)
            .returning(Invitation.role)
        ).first()
        if used is None:
            return None
        if used.role == PLAYER:
            who = _player(connection, event, name)
        elif person is None:
            who = _somebody_new(connection, name)
            duty = {"event_id": event, "person_id": who, "role": used.role, "duty": ""}
            connection.execute(insert(OfficialDuty), duty)
        elif person in _in_role(connection, event, used.role):
            who = person
        else:
            raise InputError(said("This person does not have this role here. Choose again, or give a name."))
        return _begin(connection, event, who, used.role, device=device, now=now)


def sign_in_again(records: Records, event: str, person: str, role: str, *, device: str, now: datetime) -> str:
    """Sign in somebody who showed a password; return the secret for the cookie.

    Raises:
        InputError: it cannot be kept.
    """
    with records.writing() as connection:
        return _begin(connection, event, person, role, device=device, now=now)


def signed_in(records: Records, event: str, secret: str, now: datetime) -> SignedIn | None:
    """Return the sign-in of a secret, if it holds; note that it was seen, where that was not done a while ago."""
    digest = digest_of(secret)
    found = records.until_written((signed_in, event, digest), lambda: _not_ended(records, event, digest))
    if found is None or found.expires_at <= instant(now):
        return None
    if found.seen_at < instant(now - SEEN_EVERY):
        with records.writing() as connection:
            connection.execute(update(SignIn).where(SignIn.id == found.id).values(seen_at=instant(now)))
    return found


def _not_ended(records: Records, event: str, digest: bytes) -> SignedIn | None:
    wanted = select(*_SHOWN).where(
        SignIn.secret == digest, SignIn.event_id == event, SignIn.ended_at.is_(None)
    )
    with records.reading() as connection:
        row = connection.execute(wanted).first()
    return None if row is None else SignedIn(*row)


def all_signed_in(records: Records, event: str, now: datetime) -> list[SignedIn]:
    """Return everybody who is signed in, the last seen first."""
    wanted = select(*_SHOWN).where(
        SignIn.event_id == event, SignIn.ended_at.is_(None), SignIn.expires_at > instant(now)
    )
    with records.reading() as connection:
        return [SignedIn(*row) for row in connection.execute(wanted.order_by(SignIn.seen_at.desc()))]


def end(records: Records, event: str, ident: str, now: datetime) -> None:
    """End a sign-in, from wherever: the next request of its device is one of somebody who is not signed in."""
    ended = update(SignIn).where(SignIn.id == ident, SignIn.event_id == event, SignIn.ended_at.is_(None))
    with records.writing() as connection:
        connection.execute(ended.values(ended_at=instant(now)))


def in_role(records: Records, event: str, role: str) -> list[tuple[str, str]]:
    """Return who has a role in an event: identifier and name, by name. Players are told apart by nobody here."""
    with records.reading() as connection:
        found = _in_role(connection, event, role)
    return sorted(found.items(), key=lambda one: one[1])


def password_of(records: Records, event: str, name: str) -> tuple[str, str, tuple[str, ...]] | None:
    """Return the official of a name: identifier, the password as it is kept, roles; ``None`` where there is no such one."""
    wanted = (
        select(PersonalDetails.person_id, Password.hashed, OfficialDuty.role)
        .join(Password, Password.person_id == PersonalDetails.person_id)
        .join(OfficialDuty, OfficialDuty.person_id == PersonalDetails.person_id)
        .where(PersonalDetails.name == name, OfficialDuty.event_id == event)
    )
    with records.reading() as connection:
        rows = connection.execute(wanted).all()
    people = {row.person_id for row in rows}
    if len(people) != 1:
        return None
    return rows[0].person_id, rows[0].hashed, tuple(row.role for row in rows)


def has_password(records: Records, person: str) -> bool:
    """Whether somebody wanted a password."""
    with records.reading() as connection:
        return connection.scalar(select(Password.set_at).where(Password.person_id == person)) is not None


def set_password(records: Records, person: str, hashed: str | None, now: datetime) -> None:
    """Keep a password as it was hashed, in place of the one before; ``None``: keep none."""
    with records.writing() as connection:
        connection.execute(delete(Password).where(Password.person_id == person))
        if hashed is not None:
            row = {"person_id": person, "hashed": hashed, "set_at": instant(now)}
            connection.execute(insert(Password), row)


def _begin(connection: Connection, event: str, person: str, role: str, *, device: str, now: datetime) -> str:
    secret = token_urlsafe(BYTES)
    connection.execute(
        insert(SignIn),
        {
            "id": new_ident(),
            "event_id": event,
            "person_id": person,
            "role": role,
            "secret": digest_of(secret),
            "device": device[:LONGEST_DEVICE],
            "began_at": instant(now),
            "seen_at": instant(now),
            "expires_at": instant(now + LASTS),
            "ended_at": None,
        },
    )
    over = or_(SignIn.expires_at < instant(now - LASTS), SignIn.ended_at < instant(now - LASTS))
    connection.execute(delete(SignIn).where(over))
    return secret


def _in_role(connection: Connection, event: str, role: str) -> dict[str, str]:
    wanted = (
        select(PersonalDetails.person_id, PersonalDetails.name)
        .join(OfficialDuty, OfficialDuty.person_id == PersonalDetails.person_id)
        .where(OfficialDuty.event_id == event, OfficialDuty.role == role)
    )
    return {row.person_id: row.name for row in connection.execute(wanted)}


def _player(connection: Connection, event: str, name: str) -> str:
    """Return the player of a name, as it is typed but for capitals and spaces.

    Raises:
        InputError: nobody of this name is entered, or several.
    """
    wanted = (
        select(PersonalDetails.person_id, PersonalDetails.name)
        .join(Entrant, Entrant.person_id == PersonalDetails.person_id)
        .where(Entrant.event_id == event)
    )
    typed = " ".join(name.split()).casefold()
    found = [row.person_id for row in connection.execute(wanted) if row.name.casefold() == typed]
    if len(found) != 1:
        raise InputError(
            said("No player of this name is entered. Type it as it stands on the starting sheet.")
        )
    return str(found[0])


def _somebody_new(connection: Connection, name: str) -> str:
    called = " ".join(name.split())
    if not called:
        raise InputError(said("Say who you are: choose your name, or type it."))
    if len(called) > LONGEST_NAME:
        raise InputError(said("A name has at most {most} letters. Shorten it.", most=LONGEST_NAME))
    ident = new_ident()
    connection.execute(insert(Person), {"id": ident, "erased_at": None})
    row = {"person_id": ident, "name": called, "club": None, "revision": 1}
    connection.execute(insert(PersonalDetails), row)
    return ident
