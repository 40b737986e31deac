"""Who plays in an event, each with all that is kept of the entry."""

from collections.abc import Iterable
from dataclasses import dataclass

from sqlalchemy import select

from marram.records import tables
from marram.records.database import Records


@dataclass(frozen=True, slots=True)
class EntrantKept:
    """A player's entry.

    Attributes:
        person: the player's identifier.
        name: the name; empty where it was erased.
        club: the player's club; ``None``: not known.
        handicap_index: a decimal as it is written; ``None``: not known.
        sex: ``male`` or ``female``; ``None``: not known.
        born: the year of birth; ``None``: not known.
        tees: the tees of the entry; ``None``: those of the competition.
        playing_handicap: as it was given; ``None``: it is worked out.
        side: the identifier of the side with partners; ``None``: the player competes alone.
        side_name: what it is called.
        team: the name of the team; ``None``: there is none.
    """

    person: str
    name: str
    club: str | None
    handicap_index: str | None
    sex: str | None
    born: int | None
    tees: str | None
    playing_handicap: int | None
    side: str | None = None
    side_name: str | None = None
    team: str | None = None


@dataclass(frozen=True, slots=True)
class Details:
    """What is kept of somebody who enters: the name and the club; ``None``: not known."""

    name: str
    club: str | None


def details(records: Records, people: Iterable[str] | None = None) -> dict[str, Details]:
    """Return name and club of people by identifier; who was erased, or is not known, is not among them.

    Args:
        records: where they are kept.
        people: whose; ``None`` for everybody.
    """
    person = tables.PersonalDetails
    wanted = select(person.person_id, person.name, person.club)
    if people is not None:
        wanted = wanted.where(person.person_id.in_(set(people)))
    with records.reading() as connection:
        return {row.person_id: Details(row.name, row.club) for row in connection.execute(wanted) if row.name}


def entrants(records: Records, event: str) -> tuple[EntrantKept, ...]:
    """Return everybody who plays in an event, by name, then identifier; who was erased comes with an empty name."""
    entrant, person = tables.Entrant, tables.PersonalDetails
    wanted = (
        select(
            entrant.person_id,
            person.name,
            person.club,
            entrant.handicap_index,
            person.sex,
            person.born,
            entrant.tees,
            entrant.playing_handicap,
            entrant.side_id,
            tables.Side.name,
            tables.Team.name,
        )
        .join(person, person.person_id == entrant.person_id, isouter=True)
        .join(tables.Side, tables.Side.id == entrant.side_id, isouter=True)
        .join(tables.Team, tables.Team.id == entrant.team_id, isouter=True)
        .where(entrant.event_id == event)
    )
    with records.reading() as connection:
        rows = [EntrantKept(row[0], row[1] or "", *row[2:]) for row in connection.execute(wanted)]
    return tuple(sorted(rows, key=lambda one: (one.name, one.person)))
