"""People: an identifier for ever, and apart from it what is personal, which can be erased."""

from sqlalchemy import ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from marram.records.tables.base import Ident, Table, Words


class Person(Table):
    """A person: the same one in every event. Everything else that is kept names a person by this identifier alone.

    Attributes:
        erased_at: when what is personal was erased, ISO 8601 in UTC; ``None``: it was not.
    """

    __tablename__ = "people"

    id: Mapped[Ident] = mapped_column(primary_key=True)
    erased_at: Mapped[Words | None]


class PersonalDetails(Table):
    """What is personal about somebody. Erasing a person removes this row and leaves all that rests on the identifier.

    Attributes:
        name: as it stands on the starting sheet.
        club: the name of the club the person belongs to.
        sex: ``male`` or ``female``, where it was told.
        born: the year of birth, where it was told.
        revision: counts the changes, so that two people who change it at once are told.
    """

    __tablename__ = "personal_details"

    person_id: Mapped[Ident] = mapped_column(ForeignKey("people.id"), primary_key=True)
    name: Mapped[Words]
    club: Mapped[Words | None]
    sex: Mapped[Words | None]
    born: Mapped[int | None]
    revision: Mapped[int] = mapped_column()

    __mapper_args__ = {"version_id_col": revision}  # noqa: RUF012 - SQLAlchemy reads it so
