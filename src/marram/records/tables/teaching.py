"""Classes that are taught: which question is before a class, and what each phone answered. Nobody is named."""

from sqlalchemy import ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from marram.records.tables.base import Ident, Table, Words


class TaughtClass(Table):
    """A class: its questions follow from its seed.

    Attributes:
        code: what phones join by.
        seed: of its questions.
        number: the question before it, from 1.
        explained: the highest number whose explanation was opened for all; 0 for none.
        begun_at: when it began, ISO 8601 in UTC.
        ended_at: when it ended, likewise; ``None``: it goes on.
    """

    __tablename__ = "classes"
    __table_args__ = (UniqueConstraint("code"),)

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), index=True)
    code: Mapped[Words]
    seed: Mapped[int]
    number: Mapped[int]
    explained: Mapped[int]
    begun_at: Mapped[Words]
    ended_at: Mapped[Words | None]


class ClassAnswer(Table):
    """What a phone answered to a question of a class; the first answer stays.

    Attributes:
        number: the question, from 1.
        device: a phone, by a number it drew for this class.
        place: the place of the answer it chose, from 0.
        answered_at: when, ISO 8601 in UTC.
    """

    __tablename__ = "class_answers"

    class_id: Mapped[Ident] = mapped_column(ForeignKey(TaughtClass.id), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    device: Mapped[Ident] = mapped_column(primary_key=True)
    place: Mapped[int]
    answered_at: Mapped[Words]


class KeptBriefing(Table):
    """A briefing that is kept at the desk.

    Attributes:
        title: its name.
        document: its pages with the teacher's own words, as JSON.
        version: counts from 1 with every change, so that of two who change it at once neither overwrites the other.
        changed_at: when it was changed last, ISO 8601 in UTC.
    """

    __tablename__ = "briefings"

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), index=True)
    title: Mapped[Words]
    document: Mapped[Words]
    version: Mapped[int]
    changed_at: Mapped[Words]
