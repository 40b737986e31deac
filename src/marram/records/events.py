"""A club, its courses and its events, made from plain values: whole, or not at all."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, time
from typing import Any
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError, available_timezones

from sqlalchemy import select, update
from sqlalchemy.orm import Session

from marram.errors import InputError, did_you_mean
from marram.records import tables
from marram.records.canonical import canonical
from marram.records.database import Records
from marram.records.entry import new_ident
from marram.said import joined, said, sentences


@dataclass(frozen=True)
class Player:
    """A player's entry.

    Attributes:
        name: the player's name.
        handicap_index: a decimal as it is written; ``None``: not known.
        club: the club the player belongs to; likewise.
        sex: ``male`` or ``female``; likewise.
        born: the year of birth; likewise.
        tees: the tees of the entry; ``None``: those of the competition.
        playing_handicap: as given; ``None``: it is worked out.
        side: the name of the side the player competes in with partners; ``None``: the player competes alone.
        team: the name of the team; ``None``: there is none.
    """

    name: str
    handicap_index: str | None = None
    club: str | None = None
    sex: str | None = None
    born: int | None = None
    tees: str | None = None
    playing_handicap: int | None = None
    side: str | None = None
    team: str | None = None


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
class OtherRound:
    """A round of an event beside the one whose groups are given.

    Attributes:
        name: what it is called.
        played_on: its day.
        starts: its groups, in their order, where they are known already.
        conditions: what differs in this round, as plain data.
    """

    name: str
    played_on: date
    starts: Sequence[Start] = ()
    conditions: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class Given:
    """An event as it is given, with the groups of one round.

    Attributes:
        name: its name.
        conditions: form of play, sides, Local Rules and notice, as plain data.
        round_name: what its round is called.
        played_on: the day of the round; ``None``: not set yet.
        course: the identifier of the course it is played on; ``None``: not set yet.
        players: who plays.
        officials: who officiates.
        starts: the groups of that round, in their order.
        other_rounds: its other rounds, those of one day in their order.
        own_at: how many of them are listed before the round whose groups are given.
        differs: what differs in that round from the conditions, as plain data.
    """

    name: str
    conditions: Mapping[str, Any] = field(default_factory=dict)
    round_name: str = ""
    played_on: date | None = None
    course: str | None = None
    players: Sequence[Player] = ()
    officials: Sequence[Official] = ()
    starts: Sequence[Start] = ()
    other_rounds: Sequence[OtherRound] = ()
    own_at: int = 0
    differs: Mapping[str, Any] = field(default_factory=dict)


def new_club(records: Records, name: str, time_zone: str | None = None) -> str:
    """Make a club and return its identifier; the one there is where it has this name, with the zone that is given.

    Raises:
        InputError: it has no name, there is no such zone, or it cannot be kept.
    """
    if not name.strip():
        raise InputError(said("Say what the club is called."))
    if time_zone is not None:
        _known_zone(time_zone)
    with records.changing() as session:
        found = session.scalar(select(tables.Club.id).where(tables.Club.name == name.strip()))
        if found is None:
            found = new_ident()
            session.add(tables.Club(id=found, name=name.strip(), time_zone=time_zone))
        elif time_zone is not None:
            session.execute(update(tables.Club).where(tables.Club.id == found).values(time_zone=time_zone))
    return found


def _known_zone(zone: str) -> None:
    """Refuse a zone that no clock goes by.

    Raises:
        InputError: there is no such zone.
    """
    try:
        ZoneInfo(zone)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        unknown = said("There is no time zone {zone}. Give one such as Europe/London.", zone=repr(zone))
        raise InputError(sentences(unknown, did_you_mean(zone, available_timezones()))) from None


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
    event = new_ident()
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
        round_ = _rounds(session, event, given)
        duties = {(known[one.name], one.role): one.duty for one in given.officials}
        for (person, role), duty in duties.items():
            session.add(tables.OfficialDuty(event_id=event, person_id=person, role=role, duty=duty))
        teams, sides = _teams_and_sides(session, event, given.players)
        entrants = {one.name: new_ident() for one in given.players}
        for one in given.players:
            session.add(
                tables.Entrant(
                    id=entrants[one.name],
                    event_id=event,
                    person_id=known[one.name],
                    handicap_index=one.handicap_index,
                    tees=one.tees,
                    playing_handicap=one.playing_handicap,
                    side_id=sides.get(one.side or ""),
                    team_id=teams.get(one.team or ""),
                )
            )
        session.flush()
        for ident, starts in round_.items():
            for number, start in enumerate(starts, start=1):
                _group(session, ident, number, start, entrants)
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
        for starts in (given.starts, *(one.starts for one in given.other_rounds))
        for number, start in enumerate(starts, start=1)
        for name in start.players
        if name not in players
    ]
    entries = {one.name: one for one in given.players}
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
            own = entries.get(name, Player(name))
            session.add(
                tables.PersonalDetails(
                    person_id=found[name], name=name, club=own.club, sex=own.sex, born=own.born
                )
            )
    if faults:
        raise InputError(*faults)
    session.flush()
    return found


def _teams_and_sides(
    session: Session, event: str, players: Sequence[Player]
) -> tuple[dict[str, str], dict[str, str]]:
    """Make the teams and sides that entries name, each once; return their identifiers by name.

    Raises:
        InputError: partners of one side are in several teams.
    """
    teams = {name: new_ident() for name in dict.fromkeys(one.team for one in players if one.team)}
    sides = {name: new_ident() for name in dict.fromkeys(one.side for one in players if one.side)}
    of_side = {name: {one.team for one in players if one.side == name} for name in sides}
    faults = [
        said("The partners of side {side} are in several teams. Give them one.", side=name)
        for name, found in of_side.items()
        if len(found) > 1
    ]
    if faults:
        raise InputError(*faults)
    for name, ident in teams.items():
        session.add(tables.Team(id=ident, event_id=event, name=name))
    session.flush()
    for name, ident in sides.items():
        team = next(iter(of_side[name]))
        session.add(tables.Side(id=ident, event_id=event, team_id=teams.get(team or ""), name=name))
    session.flush()
    return teams, sides


def _rounds(session: Session, event: str, given: Given) -> dict[str, Sequence[Start]]:
    """Make the rounds in the order of their days, those of one day as they are listed; return the groups of each, by its identifier."""
    own = (given.played_on or date.min, given.round_name, new_ident(), given.starts, given.differs)
    others = [
        (one.played_on, one.name, new_ident(), one.starts, one.conditions) for one in given.other_rounds
    ]
    in_order = sorted([*others[: given.own_at], own, *others[given.own_at :]], key=lambda one: one[0])
    for number, (day, name, ident, _, differs) in enumerate(in_order, start=1):
        session.add(
            tables.Round(
                id=ident,
                event_id=event,
                number=number,
                name=name,
                played_on=None if day == date.min else day,
                course_id=given.course,
                conditions=canonical(differs),
            )
        )
    session.flush()
    return {ident: starts for _, _, ident, starts, _ in in_order}


def _group(session: Session, round_: str, number: int, start: Start, entrants: Mapping[str, str]) -> None:
    group = new_ident()
    session.add(tables.Group(id=group, round_id=round_, number=number, starts_at=start.at, tee=start.tee))
    session.flush()
    for place, name in enumerate(start.players, start=1):
        session.add(tables.GroupMember(group_id=group, entrant_id=entrants[name], place=place))
