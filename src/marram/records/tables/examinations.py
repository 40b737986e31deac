"""Examinations that are sat on screen: their papers as they were drawn, a code for each candidate, what was answered.

Nobody is named: who has which code stands on the examiner's own list.
"""

from sqlalchemy import ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from marram.records.tables.base import Ident, Table, Words


class SatExamination(Table):
    """An examination.

    Attributes:
        papers: its forms with their key, as JSON: what was drawn stays, whatever later Rules or a later program decide.
        minutes: how long candidates have.
        made_at: when it was drawn up, ISO 8601 in UTC.
        began_at: when it began for all, likewise; ``None``: it has not.
        closed_at: when the papers were collected, likewise; ``None``: they are not.
    """

    __tablename__ = "examinations"

    id: Mapped[Ident] = mapped_column(primary_key=True)
    event_id: Mapped[Ident] = mapped_column(ForeignKey("events.id"), index=True)
    papers: Mapped[Words]
    minutes: Mapped[int]
    made_at: Mapped[Words]
    began_at: Mapped[Words | None]
    closed_at: Mapped[Words | None]


class Candidate(Table):
    """A candidate of an examination.

    Attributes:
        code: what opens the paper, on any device.
        number: of the candidate, from 1.
        form: the letter of the form.
        extra: minutes more than the others have.
        handed_in_at: when the paper was handed in, ISO 8601 in UTC; ``None``: it was not.
    """

    __tablename__ = "examination_candidates"
    __table_args__ = (UniqueConstraint("code"), UniqueConstraint("examination_id", "number"))

    id: Mapped[Ident] = mapped_column(primary_key=True)
    examination_id: Mapped[Ident] = mapped_column(ForeignKey(SatExamination.id))
    code: Mapped[Words]
    number: Mapped[int]
    form: Mapped[Words]
    extra: Mapped[int]
    handed_in_at: Mapped[Words | None]


class CandidateAnswer(Table):
    """What a candidate chose for an item, the latest choice.

    Attributes:
        item: its place in the form, from 1.
        place: the place of the answer, from 0.
        turn: counts up with every choice of the candidate, so that an older one that arrives late changes nothing.
        arrived_at: when it arrived, ISO 8601 in UTC.
    """

    __tablename__ = "examination_answers"

    candidate_id: Mapped[Ident] = mapped_column(ForeignKey(Candidate.id), primary_key=True)
    item: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    place: Mapped[int]
    turn: Mapped[int]
    arrived_at: Mapped[Words]


class RetiredItem(Table):
    """An item that no paper has any more.

    Attributes:
        ident: the item.
        examination_id: the examination whose answers spoke against it.
        why: the reasons, as a JSON list.
        retired_at: when, ISO 8601 in UTC.
        restored_at: when it was taken back, likewise; ``None``: it is retired.
    """

    __tablename__ = "retired_items"

    ident: Mapped[Ident] = mapped_column(primary_key=True)
    examination_id: Mapped[Ident] = mapped_column(ForeignKey(SatExamination.id))
    why: Mapped[Words]
    retired_at: Mapped[Words]
    restored_at: Mapped[Words | None]
