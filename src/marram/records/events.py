"""A club, its courses and its events: made from plain values, and read as plain values."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, time
from typing import Any

from sqlalchemy import select
from sqlalchemy.orm import Session

from marram.errors import InputError, did_you_mean
from marram.records import tables
from marram.records.canonical import canonical
from marram.records.database import Records
from marram.records.entry import new_ident
from marram.said import joined, said


@dataclass(frozen=True)
class Player:
    """A player's entry.

    Attributes:
        name: the player's name.
        handicap_index: a decimal as it is written; ``None``: not known.
    """

    name: str
    handicap_index: str | None = None


@dataclass(frozen=True)
class Official:
    """Somebody who officiates.

    Attributes:
        name: the name.
        role: one of those of :class:`marram.records.tables.OfficialDuty`.
        duty: what of it, in words.
    """

    name: str
    role: str
    duty: str = ""


@dataclass(frozen=True)
class Start:
    """A group and its starting time.

    Attributes:
        at: when, on the clocks of the club; ``None``: not set yet.
        tee: the hole it starts at.
        players: their names.
    """

    at: time | None
    tee: int
    players: tuple[str, ...]


@dataclass(frozen=True)
class Given:
    """An event as it is given, with its first round.

    Attributes:
        name: its name.
        conditions: form of play, sides, Local Rules and notice, as plain data.
        round_name: what its round is called.
        played_on: the day of the round; ``None``: not set yet.
        course: the identifier of the course it is played on; ``None``: not set yet.
        players: who plays.
        officials: who officiates.
        starts: the groups, in their order.
    """

    name: str
    conditions: Mapping[str, Any] = field(default_factory=dict)
    round_name: str = ""
    played_on: date | None = None
    course: str | None = None
    players: Sequence[Player] = ()
    officials: Sequence[Official] = ()
    starts: Sequence[Start] = ()


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


def new_club(records: Records, name: str, time_zone: str | None = None) -> str:
    """Make a club and return its identifier; the one there is where it has this name.

    Raises:
        InputError: it has no name, or cannot be kept.
    """
    if not name.strip():
        raise InputError(said("Say what the club is called."))
    with records.changing() as session:
        found = session.scalar(select(tables.Club.id).where(tables.Club.name == name.strip()))
        if found is None:
            found = new_ident()
            session.add(tables.Club(id=found, name=name.strip(), time_zone=time_zone))
    return found


def new_course(records: Records, club: str, name: str, map_file: str | None = None) -> str:
    """Make a course and return its identifier; the one there is where the club has one of this name.

    Raises:
        InputError: it cannot be kept.
    """
    with records.changing() as session:
        wanted = select(tables.Course.id).where(tables.Course.club_id == club, tables.Course.name == name)
        found = session.scalar(wanted)
        if found is None:
            found = new_ident()
            session.add(tables.Course(id=found, club_id=club, name=name, map_file=map_file))
    return found


def new_event(records: Records, club: str, given: Given) -> str:
    """Make an event with all that is given of it, and return its identifier.

    A name that somebody in the records has is taken for that person; where several have it, nothing is made.

    Raises:
        InputError: the club has an event of this name, a name is several people's, a group names nobody who plays;
            every fault is listed and nothing was made.
    """
    event, round_ = new_ident(), new_ident()
    with records.changing() as session:
        there = select(tables.Event.id).where(tables.Event.club_id == club, tables.Event.name == given.name)
        if session.scalar(there) is not None:
            raise InputError(
                said("There is an event {name} already. Give this one another name.", name=given.name)
            )
        known = _people(session, given)
        session.add(
            tables.Event(id=event, club_id=club, name=given.name, conditions=canonical(given.conditions))
        )
        session.flush()
        session.add(
            tables.Round(
                id=round_,
                event_id=event,
                number=1,
                name=given.round_name,
                played_on=given.played_on,
                course_id=given.course,
                conditions="{}",
            )
        )
        duties = {(known[one.name], one.role): one.duty for one in given.officials}
        for (person, role), duty in duties.items():
            session.add(tables.OfficialDuty(event_id=event, person_id=person, role=role, duty=duty))
        entrants = {one.name: new_ident() for one in given.players}
        for one in given.players:
            session.add(
                tables.Entrant(
                    id=entrants[one.name],
                    event_id=event,
                    person_id=known[one.name],
                    handicap_index=one.handicap_index,
                )
            )
        session.flush()
        for number, start in enumerate(given.starts, start=1):
            _group(session, round_, number, start, entrants)
    return event


def _people(session: Session, given: Given) -> dict[str, str]:
    """Return the person of each name, made where nobody has it.

    Raises:
        InputError: several have it, somebody is entered twice, or a group names nobody who plays.
    """
    players = [one.name for one in given.players]
    faults = [
        said("{name} is entered twice. Leave one out, or tell them apart by name.", name=name)
        for name in sorted({name for name in players if players.count(name) > 1})
    ]
    faults += [
        joined(
            " ",
            said("Group {number} names {name}, who does not play.", number=number, name=name),
            did_you_mean(name, dict.fromkeys(players)),
        )
        for number, start in enumerate(given.starts, start=1)
        for name in start.players
        if name not in players
    ]
    found: dict[str, str] = {}
    for name in dict.fromkeys([*players, *(one.name for one in given.officials)]):
        wanted = select(tables.PersonalDetails.person_id).where(tables.PersonalDetails.name == name)
        there = list(session.scalars(wanted))
        if len(there) > 1:
            faults.append(said("Several people are called {name}. Tell them apart by name.", name=name))
        found[name] = there[0] if there else new_ident()
        if not there:
            session.add(tables.Person(id=found[name], erased_at=None))
            session.flush()
            session.add(tables.PersonalDetails(person_id=found[name], name=name, club=None))
    if faults:
        raise InputError(*faults)
    session.flush()
    return found


def _group(session: Session, round_: str, number: int, start: Start, entrants: Mapping[str, str]) -> None:
    group = new_ident()
    session.add(tables.Group(id=group, round_id=round_, number=number, starts_at=start.at, tee=start.tee))
    session.flush()
    for place, name in enumerate(start.players, start=1):
        session.add(tables.GroupMember(group_id=group, entrant_id=entrants[name], place=place))


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
    with records.reading() as connection:
        return [Known(row.id, row.name, row.played_on) for row in connection.execute(wanted)]


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
    wanted = (
        select(tables.Group, tables.Entrant.person_id, tables.PersonalDetails.name)
        .join(tables.GroupMember, tables.GroupMember.group_id == tables.Group.id)
        .join(tables.Entrant, tables.Entrant.id == tables.GroupMember.entrant_id)
        .join(
            tables.PersonalDetails, tables.PersonalDetails.person_id == tables.Entrant.person_id, isouter=True
        )
        .where(tables.Group.round_id == round_)
        .order_by(tables.Group.number, tables.GroupMember.place)
    )
    found: dict[str, GroupOfDay] = {}
    with records.changing() as session:
        for group, person, name in session.execute(wanted):
            before = found.get(group.id)
            players = (*(before.players if before else ()), Known(person, name or ""))
            found[group.id] = GroupOfDay(group.id, group.number, group.starts_at, group.tee, players)
    return list(found.values())
