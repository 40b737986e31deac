"""Examinations sat on screen, or on paper: kept as drawn, begun and closed for all, a code for each candidate, the latest choice of each item."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from secrets import choice
from typing import Any

from sqlalchemy import delete, func, select, update
from sqlalchemy.dialects import postgresql, sqlite

from marram.errors import InputError
from marram.records.classes import LETTERS
from marram.records.database import Records
from marram.records.entry import instant, new_ident
from marram.records.tables import Candidate, CandidateAnswer, SatExamination
from marram.said import said

CODE_LENGTH = 8
"""Letters of a candidate's code (own choice): 8 of 31 are not guessed while an examination is sat."""
MOST_CANDIDATES, MOST_MINUTES, MOST_EXTRA = 120, 600, 300
ON_PAPER = 0
"""The turn of an answer that the examiner entered from a printed paper; on a device turns begin with 1."""


@dataclass(frozen=True, slots=True)
class Sat:
    """An examination as it stands; its attributes are those of its row, times as moments."""

    id: str
    papers: str
    minutes: int
    made_at: datetime
    began_at: datetime | None
    closed_at: datetime | None

    @property
    def state(self) -> str:
        """How it stands: ``waiting``, ``running`` or ``closed``."""
        if self.closed_at is not None:
            return "closed"
        return "waiting" if self.began_at is None else "running"


@dataclass(frozen=True, slots=True)
class Sitter:
    """A candidate; attributes are those of the row, the time as a moment."""

    id: str
    examination: str
    code: str
    number: int
    form: str
    extra: int
    handed_in_at: datetime | None

    def ends_at(self, sat: Sat) -> datetime | None:
        """Return when the candidate's time is over; ``None`` before the examination began."""
        return None if sat.began_at is None else sat.began_at + timedelta(minutes=sat.minutes + self.extra)


@dataclass(frozen=True, slots=True)
class Chosen:
    """What was chosen for an item: the place of the answer from 0, the turn, and when it arrived."""

    place: int
    turn: int
    arrived_at: datetime


_SAT = (
    SatExamination.id,
    SatExamination.papers,
    SatExamination.minutes,
    SatExamination.made_at,
    SatExamination.began_at,
    SatExamination.closed_at,
)
_SITTER = (
    Candidate.id,
    Candidate.examination_id,
    Candidate.code,
    Candidate.number,
    Candidate.form,
    Candidate.extra,
    Candidate.handed_in_at,
)


def keep_examination(
    records: Records,
    event: str,
    papers: str,
    forms: Sequence[str],
    *,
    minutes: int,
    candidates: int,
    now: datetime,
) -> Sat:
    """Keep an examination with a code for each candidate, forms by turns so that neighbours differ.

    Raises:
        InputError: minutes or candidates are out of range; both are told.
    """
    faults = []
    if not 1 <= minutes <= MOST_MINUTES:
        faults.append(said("Minutes of an examination: give 1 to {most}.", most=MOST_MINUTES))
    if not 1 <= candidates <= MOST_CANDIDATES:
        faults.append(said("Candidates of an examination: give 1 to {most}.", most=MOST_CANDIDATES))
    if faults:
        raise InputError(*faults)
    row = {
        "id": new_ident(),
        "event_id": event,
        "papers": papers,
        "minutes": minutes,
        "made_at": instant(now),
        "began_at": None,
        "closed_at": None,
    }
    dialect = sqlite if records.is_file else postgresql
    with records.writing() as connection:
        connection.execute(dialect.insert(SatExamination).values(row))
        for number in range(1, candidates + 1):
            code = "".join(choice(LETTERS) for _ in range(CODE_LENGTH))
            values = {
                "id": new_ident(),
                "examination_id": row["id"],
                "code": code,
                "number": number,
                "form": forms[(number - 1) % len(forms)],
                "extra": 0,
                "handed_in_at": None,
            }
            connection.execute(dialect.insert(Candidate).values(values))
    found = examination_of(records, event, str(row["id"]))
    assert found is not None
    return found


def examinations(records: Records, event: str) -> list[Sat]:
    """Return the examinations of an event, the latest first."""
    wanted = select(*_SAT).where(SatExamination.event_id == event).order_by(SatExamination.made_at.desc())
    with records.reading() as connection:
        return [_sat(row) for row in connection.execute(wanted)]


def examination_of(records: Records, event: str, ident: str) -> Sat | None:
    """Return an examination of an event; ``None`` where there is none."""
    wanted = select(*_SAT).where(SatExamination.event_id == event, SatExamination.id == ident)
    with records.reading() as connection:
        row = connection.execute(wanted).first()
    return None if row is None else _sat(row)


def sitter_of(records: Records, event: str, code: str) -> tuple[Sat, Sitter] | None:
    """Return the candidate of a code, however it is typed, with the examination; ``None`` where there is none here."""
    typed = "".join(code.split()).replace("-", "").upper()
    wanted = (
        select(*_SITTER)
        .join(SatExamination, SatExamination.id == Candidate.examination_id)
        .where(SatExamination.event_id == event, Candidate.code == typed)
    )
    with records.reading() as connection:
        row = connection.execute(wanted).first()
    if row is None:
        return None
    found = _sitter(row)
    sat = examination_of(records, event, found.examination)
    return None if sat is None else (sat, found)


def sitters(records: Records, sat: Sat) -> list[Sitter]:
    """Return the candidates by number."""
    wanted = select(*_SITTER).where(Candidate.examination_id == sat.id).order_by(Candidate.number)
    with records.reading() as connection:
        return [_sitter(row) for row in connection.execute(wanted)]


def begin(records: Records, sat: Sat, now: datetime) -> None:
    """Begin an examination for all; a second tap changes nothing."""
    _change(records, sat, SatExamination.began_at.is_(None), began_at=instant(now))


def close(records: Records, sat: Sat, now: datetime) -> None:
    """Collect the papers: nothing more is taken."""
    _change(records, sat, SatExamination.closed_at.is_(None), closed_at=instant(now))


def reopen(records: Records, sat: Sat) -> None:
    """Take papers again, so that what waits on a device can arrive."""
    _change(records, sat, SatExamination.closed_at.is_not(None), closed_at=None)


def give_extra(records: Records, sat: Sat, number: int, minutes: int) -> None:
    """Give a candidate minutes more than the others have.

    Raises:
        InputError: the minutes are out of range.
    """
    if not 0 <= minutes <= MOST_EXTRA:
        raise InputError(said("Extra minutes: give 0 to {most}.", most=MOST_EXTRA))
    same = (Candidate.examination_id == sat.id, Candidate.number == number)
    with records.writing() as connection:
        connection.execute(update(Candidate).where(*same).values(extra=minutes))


def answer(records: Records, one: Sitter, chosen: Iterable[tuple[int, int, int]], now: datetime) -> bool:
    """Keep what a candidate chose, each with item, place and turn; return whether the paper still takes answers.

    An older turn than the one that is kept changes nothing. All that is sent together is kept together, or nothing is.
    """
    dialect = sqlite if records.is_file else postgresql
    with records.writing() as connection:
        opened = (
            select(Candidate.id)
            .join(SatExamination, SatExamination.id == Candidate.examination_id)
            .where(
                Candidate.id == one.id,
                Candidate.handed_in_at.is_(None),
                SatExamination.began_at.is_not(None),
                SatExamination.closed_at.is_(None),
            )
        )
        if connection.execute(opened).first() is None:
            return False
        for item, place, turn in chosen:
            new = {"place": place, "turn": turn, "arrived_at": instant(now)}
            added = dialect.insert(CandidateAnswer).values({"candidate_id": one.id, "item": item, **new})
            connection.execute(
                added.on_conflict_do_update(
                    index_elements=["candidate_id", "item"], set_=new, where=CandidateAnswer.turn < turn
                )
            )
    return True


def enter(records: Records, one: Sitter, chosen: Mapping[int, int], now: datetime) -> None:
    """Keep what a candidate ticked on a printed paper, by item, in place of what was entered before; the paper is handed in.

    Raises:
        InputError: the candidate answers on a device.
    """
    dialect = sqlite if records.is_file else postgresql
    own = CandidateAnswer.candidate_id == one.id
    on_screen = select(CandidateAnswer.item).where(own, CandidateAnswer.turn > ON_PAPER)
    with records.writing() as connection:
        if connection.execute(on_screen).first() is not None:
            raise InputError(
                said("Candidate {number} answered on a device: nothing was entered.", number=one.number)
            )
        connection.execute(delete(CandidateAnswer).where(own))
        for item, place in chosen.items():
            values = {"candidate_id": one.id, "item": item, "place": place, "turn": ON_PAPER}
            connection.execute(dialect.insert(CandidateAnswer).values({**values, "arrived_at": instant(now)}))
        same = (Candidate.id == one.id, Candidate.handed_in_at.is_(None))
        connection.execute(update(Candidate).where(*same).values(handed_in_at=instant(now)))


def hand_in(records: Records, one: Sitter, now: datetime) -> None:
    """Hand a paper in; a second tap changes nothing."""
    same = (Candidate.id == one.id, Candidate.handed_in_at.is_(None))
    with records.writing() as connection:
        connection.execute(update(Candidate).where(*same).values(handed_in_at=instant(now)))


def chosen_by(records: Records, one: Sitter) -> dict[int, Chosen]:
    """Return what a candidate chose, by item."""
    return _chosen(records, CandidateAnswer.candidate_id == one.id).get(one.id, {})


def chosen_in(records: Records, sat: Sat) -> Mapping[str, Mapping[int, Chosen]]:
    """Return what every candidate chose who chose anything, by the candidate's identifier and item."""
    own = select(Candidate.id).where(Candidate.examination_id == sat.id)
    return _chosen(records, CandidateAnswer.candidate_id.in_(own))


def how_far(records: Records, sat: Sat) -> tuple[int, int]:
    """Return how many answers arrived, counting each change, and how many papers were handed in."""
    own = Candidate.examination_id == sat.id
    turns = select(func.coalesce(func.sum(CandidateAnswer.turn), 0)).join(
        Candidate, Candidate.id == CandidateAnswer.candidate_id
    )
    handed = select(func.count()).where(own, Candidate.handed_in_at.is_not(None))
    with records.reading() as connection:
        return int(connection.execute(turns.where(own)).scalar_one()), int(
            connection.execute(handed).scalar_one()
        )


def _chosen(records: Records, which: object) -> dict[str, dict[int, Chosen]]:
    columns = (
        CandidateAnswer.candidate_id,
        CandidateAnswer.item,
        CandidateAnswer.place,
        CandidateAnswer.turn,
        CandidateAnswer.arrived_at,
    )
    found: dict[str, dict[int, Chosen]] = {}
    with records.reading() as connection:
        for ident, item, place, turn, at in connection.execute(select(*columns).where(which)):  # type: ignore[arg-type]
            found.setdefault(ident, {})[item] = Chosen(place, turn, datetime.fromisoformat(at))
    return found


def _change(records: Records, sat: Sat, when: object, **values: object) -> None:
    with records.writing() as connection:
        connection.execute(update(SatExamination).where(SatExamination.id == sat.id, when).values(**values))  # type: ignore[arg-type]


def _moment(given: object) -> datetime | None:
    return None if given is None else datetime.fromisoformat(str(given))


def _sat(row: Sequence[Any]) -> Sat:
    ident, papers, minutes, made, began, closed = row
    return Sat(ident, papers, minutes, datetime.fromisoformat(made), _moment(began), _moment(closed))


def _sitter(row: Sequence[Any]) -> Sitter:
    ident, examination, code, number, form, extra, handed = row
    return Sitter(ident, examination, code, number, form, extra, _moment(handed))
