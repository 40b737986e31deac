"""An event: its conditions and rounds, who plays and with whom, who officiates, and the groups with their starting times."""

from datetime import date, time

from sqlalchemy import CheckConstraint, ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from marram.records.tables.base import Ident, Table, Words


class Event(Table):
    """A competition.

    Attributes:
        name: its name.
        conditions: the conditions of the competition as canonical JSON: form of play, sides, Local Rules, notice.
        revision: counts the changes, so that two people who change it at once are told.
    """

    __tablename__ = "events"
    __table_args__ = (UniqueConstraint("club_id", "name"),)

    id: Mapped[Ident] = mapped_column(primary_key=True)
    club_id: Mapped[Ident] = mapped_column(ForeignKey("clubs.id"))
    name: Mapped[Words]
    conditions: Mapped[Words]
    revision: Mapped[int] = mapped_column()

    __mapper_args__ = {"version_id_col": revision}  # noqa: RUF012 - SQLAlchemy reads it so


class Round(Table):
    """A round of an event.

    Attributes:
        number: 1 for the first.
        name: as the notices call it.
        played_on: the day of play; ``None``: not set yet.
        course_id: the course it is played on; ``None``: not set yet.
        conditions: what differs on that day, as canonical JSON; ``{}`` where nothing does.
    """

    __tablename__ = "rounds"
    __table_args__ = (
        UniqueConstraint("event_id", "number"),
        CheckConstraint("number >= 1", name="counted_from_one"),
    )

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), index=True)
    number: Mapped[int]
    name: Mapped[Words]
    played_on: Mapped[date | None]
    course_id: Mapped[Ident | None] = mapped_column(ForeignKey("courses.id"))
    conditions: Mapped[Words]


class OfficialDuty(Table):
    """A person who officiates at an event.

    Attributes:
        role: ``chief_referee``, ``referee``, ``committee``, ``scorer`` or ``starter``.
        duty: what of it, in words, for example "holes 1 to 9".
    """

    __tablename__ = "officials"
    __table_args__ = (
        CheckConstraint(
            "role IN ('chief_referee', 'referee', 'committee', 'scorer', 'starter')", name="known_role"
        ),
    )

    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), primary_key=True)
    person_id: Mapped[Ident] = mapped_column(ForeignKey("people.id"), primary_key=True)
    role: Mapped[Words] = mapped_column(primary_key=True)
    duty: Mapped[Words]


class Team(Table):
    """A team of an event: several sides whose scores count together."""

    __tablename__ = "teams"
    __table_args__ = (UniqueConstraint("event_id", "name"),)

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"))
    name: Mapped[Words]


class Side(Table):
    """Partners who compete as one (Rule 22, 23). A player who competes alone needs none.

    Attributes:
        name: as it stands on the starting sheet; may be empty.
    """

    __tablename__ = "sides"

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), index=True)
    team_id: Mapped[Ident | None] = mapped_column(ForeignKey("teams.id"))
    name: Mapped[Words]


class Entrant(Table):
    """A player's entry in an event.

    Attributes:
        handicap_index: as entered, a decimal in its usual written form; ``None``: not known.
        side_id: the side the player belongs to, where players compete as sides.
        team_id: the team, where the player competes alone and for a team.
        tees: the tees the player plays from; ``None``: those of the competition.
        playing_handicap: as it was given; ``None``: it is worked out.
    """

    __tablename__ = "entrants"
    __table_args__ = (UniqueConstraint("event_id", "person_id"),)

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"))
    person_id: Mapped[Ident] = mapped_column(ForeignKey("people.id"), index=True)
    side_id: Mapped[Ident | None] = mapped_column(ForeignKey("sides.id"))
    team_id: Mapped[Ident | None] = mapped_column(ForeignKey("teams.id"))
    handicap_index: Mapped[Words | None]
    tees: Mapped[Words | None]
    playing_handicap: Mapped[int | None]


class Group(Table):
    """A group of a round.

    Attributes:
        number: 1 for the first on the starting sheet.
        starts_at: its starting time, on the clocks of the club.
        tee: the hole it starts at.
        revision: counts the changes, so that two people who change it at once are told.
    """

    __tablename__ = "groups"
    __table_args__ = (UniqueConstraint("round_id", "number"),)

    id: Mapped[Ident] = mapped_column(primary_key=True)
    round_id: Mapped[Ident] = mapped_column(ForeignKey("rounds.id"))
    number: Mapped[int]
    starts_at: Mapped[time | None]
    tee: Mapped[int]
    revision: Mapped[int] = mapped_column()

    __mapper_args__ = {"version_id_col": revision}  # noqa: RUF012 - SQLAlchemy reads it so


class GroupMember(Table):
    """A player of a group.

    Attributes:
        place: 1 for the first named.
    """

    __tablename__ = "group_members"
    __table_args__ = (UniqueConstraint("group_id", "place"),)

    group_id: Mapped[Ident] = mapped_column(ForeignKey("groups.id"), primary_key=True)
    entrant_id: Mapped[Ident] = mapped_column(ForeignKey("entrants.id"), primary_key=True, index=True)
    place: Mapped[int]
