"""A club, its courses, and what is kept of each by day: map versions and hole locations."""

from datetime import date

from sqlalchemy import ForeignKey, LargeBinary, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from marram.records.tables.base import Ident, Table, Words


class Club(Table):
    """A club, or another body that holds competitions.

    Attributes:
        name: its name.
        time_zone: the IANA name of the zone its clocks show; ``None``: not known.
    """

    __tablename__ = "clubs"

    id: Mapped[Ident] = mapped_column(primary_key=True)
    name: Mapped[Words] = mapped_column(unique=True)
    time_zone: Mapped[Words | None]


class Course(Table):
    """A course of a club.

    Attributes:
        name: its name.
        map_file: the name of the file its map was first read from.
    """

    __tablename__ = "courses"
    __table_args__ = (UniqueConstraint("club_id", "name"),)

    id: Mapped[Ident] = mapped_column(primary_key=True)
    club_id: Mapped[Ident] = mapped_column(ForeignKey("clubs.id"))
    name: Mapped[Words]
    map_file: Mapped[Words | None]


class MapVersion(Table):
    """One version of a course's map, byte for byte as the law of versions wrote it; never changed.

    Attributes:
        number: 1, 2, 3 …
        content: the version: JSON with a digest of its own (``marram.course.versions``).
    """

    __tablename__ = "map_versions"

    course_id: Mapped[Ident] = mapped_column(ForeignKey("courses.id"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    content: Mapped[bytes] = mapped_column(LargeBinary)


class HoleLocations(Table):
    """The hole locations of a day as somebody saved them, byte for byte; never changed.

    Attributes:
        day: the day of play.
        number: 1, 2, 3 … for each day.
        content: the locations: JSON with a digest of its own.
    """

    __tablename__ = "hole_locations"

    course_id: Mapped[Ident] = mapped_column(ForeignKey("courses.id"), primary_key=True)
    day: Mapped[date] = mapped_column(primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    content: Mapped[bytes] = mapped_column(LargeBinary)
