"""Courses, events, rounds and groups as they are kept, read as plain values."""

import json
from dataclasses import dataclass
from datetime import date, time
from typing import Any

from sqlalchemy import select

from marram.errors import InputError
from marram.records import tables
from marram.records.database import Records
from marram.said import said


@dataclass(frozen=True, slots=True)
class Known:
    """A club, course, event or round by its name.

    Attributes:
        id: its identifier.
        name: its name.
        day: the day of play of a round; else ``None``.
    """

    id: str
    name: str
    day: date | None = None


def clubs(records: Records) -> list[Known]:
    """Return every club, by name."""
    with records.reading() as connection:
        rows = connection.execute(select(tables.Club.id, tables.Club.name).order_by(tables.Club.name))
        return [Known(row.id, row.name) for row in rows]


def courses(records: Records) -> list[Known]:
    """Return every course, by name."""
    with records.reading() as connection:
        rows = connection.execute(select(tables.Course.id, tables.Course.name).order_by(tables.Course.name))
        return [Known(row.id, row.name) for row in rows]


def events(records: Records) -> list[Known]:
    """Return every event with the day of its first round, the latest first."""
    wanted = (
        select(tables.Event.id, tables.Event.name, tables.Round.played_on)
        .join(
            tables.Round,
            (tables.Round.event_id == tables.Event.id) & (tables.Round.number == 1),
            isouter=True,
        )
        .order_by(tables.Round.played_on.desc(), tables.Event.name)
    )
    with records.reading() as connection:
        return [Known(row.id, row.name, row.played_on) for row in connection.execute(wanted)]


def rounds(records: Records, event: str) -> list[Known]:
    """Return the rounds of an event, the first first."""
    wanted = (
        select(tables.Round.id, tables.Round.name, tables.Round.played_on)
        .where(tables.Round.event_id == event)
        .order_by(tables.Round.number)
    )

    def read() -> tuple[Known, ...]:
        with records.reading() as connection:
            return tuple(Known(row.id, row.name, row.played_on) for row in connection.execute(wanted))

    return list(records.until_written((rounds, event), read))


def round_conditions(records: Records, event: str) -> dict[str, dict[str, Any]]:
    """Return what differs in each round of an event, as plain data, by the identifier of the round."""
    wanted = select(tables.Round.id, tables.Round.conditions).where(tables.Round.event_id == event)
    with records.reading() as connection:
        return {row.id: json.loads(row.conditions) for row in connection.execute(wanted)}


def time_zone(records: Records, event: str) -> str | None:
    """Return the IANA name of the zone that the clocks of an event's club show; ``None`` where it is not known."""
    wanted = (
        select(tables.Club.time_zone)
        .join(tables.Event, tables.Event.club_id == tables.Club.id)
        .where(tables.Event.id == event)
    )

    def read() -> str | None:
        with records.reading() as connection:
            return connection.scalar(wanted)

    return records.until_written((time_zone, event), read)


def conditions(records: Records, event: str) -> dict[str, Any]:
    """Return the conditions of an event, as plain data.

    Raises:
        InputError: there is no such event.
    """
    with records.reading() as connection:
        found = connection.scalar(select(tables.Event.conditions).where(tables.Event.id == event))
    if found is None:
        raise InputError(said("There is no event with the identifier {event}.", event=event))
    read: dict[str, Any] = json.loads(found)
    return read


def officials(records: Records, event: str, role: str | None = None) -> list[Known]:
    """Return who officiates at an event, by name; who was erased is not among them.

    Args:
        records: where they are kept.
        event: the event.
        role: only those of this role.
    """
    wanted = (
        select(tables.PersonalDetails.person_id, tables.PersonalDetails.name)
        .join(tables.OfficialDuty, tables.OfficialDuty.person_id == tables.PersonalDetails.person_id)
        .where(tables.OfficialDuty.event_id == event)
        .distinct()
        .order_by(tables.PersonalDetails.name)
    )
    if role is not None:
        wanted = wanted.where(tables.OfficialDuty.role == role)
    with records.reading() as connection:
        return [Known(row.person_id, row.name) for row in connection.execute(wanted)]


@dataclass(frozen=True, slots=True)
class DutyKept:
    """An official in a role, with the duty in words: by identifier and name."""

    person: str
    name: str
    role: str
    duty: str


def duties(records: Records, event: str) -> list[DutyKept]:
    """Return who officiates at an event, in the order of the roles' names; who was erased is not among them."""
    wanted = (
        select(
            tables.OfficialDuty.person_id,
            tables.PersonalDetails.name,
            tables.OfficialDuty.role,
            tables.OfficialDuty.duty,
        )
        .join(tables.OfficialDuty, tables.OfficialDuty.person_id == tables.PersonalDetails.person_id)
        .where(tables.OfficialDuty.event_id == event)
        .order_by(tables.OfficialDuty.role, tables.PersonalDetails.name)
    )
    with records.reading() as connection:
        rows = connection.execute(wanted)
        return [DutyKept(row.person_id, row.name, row.role, row.duty or "") for row in rows if row.name]


@dataclass(frozen=True, slots=True)
class GroupOfDay:
    """A group of a round.

    Attributes:
        id: its identifier.
        number: its number on the starting sheet.
        starts_at: its starting time.
        tee: the hole it starts at.
        players: the people in it, as they stand on the sheet.
    """

    id: str
    number: int
    starts_at: time | None
    tee: int
    players: tuple[Known, ...]


def groups(records: Records, round_: str) -> list[GroupOfDay]:
    """Return the groups of a round in the order of the starting sheet; who was erased has an empty name."""
    return list(records.until_written((groups, round_), lambda: _groups(records, round_)))


def _groups(records: Records, round_: str) -> tuple[GroupOfDay, ...]:
    group = tables.Group
    wanted = (
        select(
            group.id,
            group.number,
            group.starts_at,
            group.tee,
            tables.Entrant.person_id,
            tables.PersonalDetails.name,
        )
        .join(tables.GroupMember, tables.GroupMember.group_id == group.id)
        .join(tables.Entrant, tables.Entrant.id == tables.GroupMember.entrant_id)
        .join(
            tables.PersonalDetails,
            tables.PersonalDetails.person_id == tables.Entrant.person_id,
            isouter=True,
        )
        .where(group.round_id == round_)
        .order_by(group.number, tables.GroupMember.place)
    )
    found: dict[str, GroupOfDay] = {}
    with records.reading() as connection:
        for ident, number, starts_at, tee, person, name in connection.execute(wanted):
            before = found.get(ident)
            players = (*(before.players if before else ()), Known(person, name or ""))
            found[ident] = GroupOfDay(ident, number, starts_at, tee, players)
    return tuple(found.values())
