"""Who plays in an event, and with whom: entries taken, places given by ballot, somebody withdrawn, groups drawn; each whole, or not at all."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, time
from typing import Any

from sqlalchemy import delete, select, update
from sqlalchemy.orm import Session

from marram.errors import InputError
from marram.records import tables
from marram.records.canonical import canonical
from marram.records.database import Records
from marram.records.entry import new_ident
from marram.records.events import Player
from marram.said import said


@dataclass(frozen=True, slots=True)
class Enters:
    """Somebody of the records who gets a place in an event.

    Attributes:
        person: who, by identifier.
        handicap_index: a decimal as it is written; ``None``: not known.
        tees: the tees of the entry; ``None``: those of the competition.
        playing_handicap: as given; ``None``: it is worked out.
    """

    person: str
    handicap_index: str | None = None
    tees: str | None = None
    playing_handicap: int | None = None


@dataclass(frozen=True, slots=True)
class GroupSet:
    """A group as it is drawn: when it starts, at which hole, and its players by identifier in their order."""

    at: time
    tee: int
    people: tuple[str, ...]


def take_in(
    records: Records, event: str, players: Sequence[Player], *, with_places: bool = True
) -> dict[str, str]:
    """Keep who entered, and return the identifier of each by name.

    A name that somebody in the records has is taken for that person; what the entry tells and the records do not know yet
    of club, sex and year of birth is kept with it.

    Args:
        records: where.
        event: the event.
        players: who entered.
        with_places: whether they play; else they are known, and wait.

    Raises:
        InputError: several people have a name, or somebody plays already; every fault is listed and nothing was kept.
    """
    found: dict[str, str] = {}
    with records.changing() as session:
        faults = []
        known = _called(session, [one.name for one in players])
        new: dict[str, Player] = {}
        playing = set(
            session.scalars(select(tables.Entrant.person_id).where(tables.Entrant.event_id == event))
        )
        for one in players:
            there = known.get(one.name, [])
            if len(there) > 1:
                faults.append(
                    said("Several people are called {name}. Tell them apart by name.", name=one.name)
                )
            elif there and there[0].person_id in playing:
                faults.append(said("{name} is entered already. Strike the line.", name=one.name))
            elif there:
                found[one.name] = _filled_in(one, there[0])
            else:
                found[one.name] = new_ident()
                new[found[one.name]] = one
        if faults:
            raise InputError(*faults)
        _make(session, new)
        if with_places:
            _place(session, event, (Enters(found[one.name], one.handicap_index, one.tees) for one in players))
            _join(session, event, {found[one.name]: one for one in players if one.side or one.team})
    return found


def _called(session: Session, wanted: Sequence[str]) -> dict[str, list[tables.PersonalDetails]]:
    """Return who of the records has one of these names, by name."""
    found: dict[str, list[tables.PersonalDetails]] = {}
    named = select(tables.PersonalDetails).where(tables.PersonalDetails.name.in_(wanted))
    for one in session.scalars(named):
        found.setdefault(one.name, []).append(one)
    return found


def _filled_in(one: Player, there: tables.PersonalDetails) -> str:
    """Return the identifier of somebody in the records; what was not known of that person is filled in."""
    there.club, there.sex, there.born = there.club or one.club, there.sex or one.sex, there.born or one.born
    return there.person_id


def _make(session: Session, people: Mapping[str, Player]) -> None:
    """Keep new people by identifier, all with two orders to the database."""
    session.add_all(tables.Person(id=ident, erased_at=None) for ident in people)
    session.flush()
    session.add_all(
        tables.PersonalDetails(person_id=ident, name=one.name, club=one.club, sex=one.sex, born=one.born)
        for ident, one in people.items()
    )
    session.flush()


def _place(session: Session, event: str, entering: Iterable[Enters]) -> None:
    for one in entering:
        session.add(
            tables.Entrant(
                id=new_ident(),
                event_id=event,
                person_id=one.person,
                handicap_index=one.handicap_index,
                tees=one.tees,
                playing_handicap=one.playing_handicap,
            )
        )
    session.flush()


def _join(session: Session, event: str, players: Mapping[str, Player]) -> None:
    """Put players, by identifier, into the sides and teams that their entries name; who is called as there is in it.

    Raises:
        InputError: a side is in another team already.
    """
    team, side, entrant = tables.Team, tables.Side, tables.Entrant
    teams = {
        row.name: row.id for row in session.execute(select(team.name, team.id).where(team.event_id == event))
    }
    sides = {
        row.name: (row.id, row.team_id)
        for row in session.execute(select(side.name, side.id, side.team_id).where(side.event_id == event))
    }
    faults = []
    for person, one in players.items():
        if one.team and one.team not in teams:
            teams[one.team] = new_ident()
            session.add(team(id=teams[one.team], event_id=event, name=one.team))
            session.flush()
        of_team = teams.get(one.team or "")
        if one.side and one.side not in sides:
            sides[one.side] = new_ident(), of_team
            session.add(side(id=sides[one.side][0], event_id=event, team_id=of_team, name=one.side))
            session.flush()
        mine, its_team = sides.get(one.side or "", (None, of_team))
        if of_team is not None and its_team != of_team:
            faults.append(
                said("The partners of side {side} are in several teams. Give them one.", side=one.side)
            )
        session.execute(
            update(entrant)
            .where(entrant.event_id == event, entrant.person_id == person)
            .values(side_id=mine, team_id=its_team)
        )
    if faults:
        raise InputError(*faults)


def _entrants(session: Session, event: str) -> dict[str, str]:
    """Return the entry of everybody who plays, by person."""
    rows = session.execute(
        select(tables.Entrant.person_id, tables.Entrant.id).where(tables.Entrant.event_id == event)
    )
    return {row.person_id: row.id for row in rows}


def give_places(records: Records, event: str, playing: Sequence[Enters]) -> None:
    """Have exactly these people play: whoever had a place and is not among them has none any more.

    Raises:
        InputError: groups are drawn already, or it cannot be kept; nothing was changed.
    """
    with records.changing() as session:
        drawn = (
            select(tables.GroupMember.group_id)
            .join(tables.Entrant, tables.Entrant.id == tables.GroupMember.entrant_id)
            .where(tables.Entrant.event_id == event)
        )
        if session.execute(drawn).first() is not None:
            raise InputError(
                said("Groups are drawn already, so no lots are cast any more. Withdraw players one by one.")
            )
        there = _entrants(session, event)
        keep = {one.person for one in playing}
        gone = [ident for person, ident in there.items() if person not in keep]
        session.execute(delete(tables.Entrant).where(tables.Entrant.id.in_(gone)))
        _place(session, event, (one for one in playing if one.person not in there))


def take_out(records: Records, event: str, person: str, instead: Enters | None) -> None:
    """Have somebody play no more; whoever moves up takes the very place, also in groups that are drawn.

    Raises:
        InputError: it cannot be kept; nothing was changed.
    """
    with records.changing() as session:
        if instead is not None and instead.person not in _entrants(session, event):
            _place(session, event, [instead])
        there = _entrants(session, event)
        if person not in there:
            return
        member = tables.GroupMember
        if instead is None:
            session.execute(delete(member).where(member.entrant_id == there[person]))
        else:
            session.execute(
                update(member)
                .where(member.entrant_id == there[person])
                .values(entrant_id=there[instead.person])
            )
        session.execute(delete(tables.Entrant).where(tables.Entrant.id == there[person]))


def put_right(records: Records, event: str, says: Enters, sex: str | None) -> None:
    """Have what is known of a person who plays, or waits, be this.

    Args:
        records: where.
        event: the event.
        says: who, and all that the entry says.
        sex: whose ratings hold: ``male`` or ``female``; ``None``: not known.
    """
    with records.changing() as session:
        session.execute(
            update(tables.Entrant)
            .where(tables.Entrant.event_id == event, tables.Entrant.person_id == says.person)
            .values(
                handicap_index=says.handicap_index,
                tees=says.tees,
                playing_handicap=says.playing_handicap,
            )
        )
        session.execute(
            update(tables.PersonalDetails)
            .where(tables.PersonalDetails.person_id == says.person)
            .values(sex=sex)
        )


def set_conditions(
    records: Records, event: str, conditions: Mapping[str, Any], days: Mapping[str, date] | None = None
) -> None:
    """Have the conditions of an event be these, and rounds, by their identifiers, be on these days."""
    with records.changing() as session:
        session.execute(
            update(tables.Event).where(tables.Event.id == event).values(conditions=canonical(conditions))
        )
        for round_, day in (days or {}).items():
            session.execute(
                update(tables.Round)
                .where(tables.Round.event_id == event, tables.Round.id == round_)
                .values(played_on=day)
            )


def set_groups(records: Records, event: str, round_: str, groups: Sequence[GroupSet]) -> None:
    """Have a round start in these groups, and in no other.

    Raises:
        InputError: somebody does not play or stands in two groups; every fault is listed and nothing was changed.
    """
    with records.changing() as session:
        there = _entrants(session, event)
        faults = faults_of(groups, there)
        if faults:
            raise InputError(*faults)
        old = select(tables.Group.id).where(tables.Group.round_id == round_)
        session.execute(delete(tables.GroupMember).where(tables.GroupMember.group_id.in_(old)))
        session.execute(delete(tables.Group).where(tables.Group.round_id == round_))
        for number, one in enumerate(groups, start=1):
            group = tables.Group(
                id=new_ident(), round_id=round_, number=number, starts_at=one.at, tee=one.tee
            )
            session.add(group)
            session.flush()
            for place, person in enumerate(one.people, start=1):
                session.add(tables.GroupMember(group_id=group.id, entrant_id=there[person], place=place))


def faults_of(groups: Sequence[GroupSet], playing: Mapping[str, str]) -> list[str]:
    """Return what is wrong with groups: somebody who does not play, somebody twice, nobody at all."""
    people = [person for one in groups for person in one.people]
    faults: list[str] = []
    if not people:
        faults.append(said("There is nobody in these groups. Draw them anew."))
    if len(set(people)) != len(people):
        faults.append(said("Somebody stands in two groups of the round. Draw them anew."))
    if not set(people) <= set(playing):
        faults.append(said("Somebody in these groups plays no more. Draw them anew."))
    return faults
