"""Classes that are taught: begun with a code that phones join by, a question at a time, the first answer of each phone."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from secrets import choice, randbelow

from sqlalchemy import Connection, select, update
from sqlalchemy.dialects import postgresql, sqlite

from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import instant, new_ident
from marram.records.tables import ClassAnswer, Table, TaughtClass
from marram.said import said

LETTERS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789"
"""Letters and digits of a code: none that is taken for another (own choice)."""
CODE_LENGTH = 6
SEEDS = 1_000_000
MOST_QUESTIONS = 999
_TRIES = 8


@dataclass(frozen=True, slots=True)
class Taught:
    """A class as it stands.

    Attributes:
        id: its identifier.
        code: what phones join by.
        seed: of its questions.
        number: the question before it, from 1.
        explained: the highest number whose explanation was opened for all; 0 for none.
        begun_at: when it began, ISO 8601 in UTC.
        ended_at: when it ended; ``None``: it goes on.
    """

    id: str
    code: str
    seed: int
    number: int
    explained: int
    begun_at: str
    ended_at: str | None

    @property
    def is_explained(self) -> bool:
        """Whether the explanation of the question before it was opened."""
        return self.explained >= self.number


_COLUMNS = (
    TaughtClass.id,
    TaughtClass.code,
    TaughtClass.seed,
    TaughtClass.number,
    TaughtClass.explained,
    TaughtClass.begun_at,
    TaughtClass.ended_at,
)


def begin_class(records: Records, event: str, now: datetime) -> Taught:
    """Begin a class and return it, with a code that no other has.

    Raises:
        InputError: it cannot be written, or no free code was found.
    """
    for _ in range(_TRIES):
        code = "".join(choice(LETTERS) for _ in range(CODE_LENGTH))
        row = Taught(new_ident(), code, randbelow(SEEDS), 1, 0, instant(now), None)
        values = {
            "id": row.id,
            "event_id": event,
            "code": code,
            "seed": row.seed,
            "number": 1,
            "explained": 0,
            "begun_at": row.begun_at,
            "ended_at": None,
        }
        with records.writing() as connection:
            if _inserted(connection, TaughtClass, values):
                return row
    raise InputError(said("No free code was found for a class. Try again."))


def class_of(records: Records, event: str, code: str) -> Taught | None:
    """Return the class of a code, however it is written; ``None`` where there is none at this event."""
    wanted = select(*_COLUMNS).where(TaughtClass.event_id == event, TaughtClass.code == code.strip().upper())
    with records.reading() as connection:
        row = connection.execute(wanted).first()
    return None if row is None else Taught(*row)


def classes(records: Records, event: str) -> list[Taught]:
    """Return the classes of an event, the latest first."""
    wanted = select(*_COLUMNS).where(TaughtClass.event_id == event).order_by(TaughtClass.begun_at.desc())
    with records.reading() as connection:
        return [Taught(*row) for row in connection.execute(wanted)]


def answer_class(records: Records, taught: Taught, device: str, place: int, now: datetime) -> bool:
    """Keep the answer of a phone to the question before the class; return whether it counts.

    It does not where the phone answered before, the explanation was opened meanwhile, or the class ended.
    """
    row = {
        "class_id": taught.id,
        "number": taught.number,
        "device": device,
        "place": place,
        "answered_at": instant(now),
    }
    still = select(TaughtClass.id).where(
        TaughtClass.id == taught.id,
        TaughtClass.number == taught.number,
        TaughtClass.explained < taught.number,
        TaughtClass.ended_at.is_(None),
    )
    with records.writing() as connection:
        if connection.execute(still).first() is None:
            return False
        return _inserted(connection, ClassAnswer, row)


def answered_by(records: Records, taught: Taught, device: str) -> int | None:
    """Return what a phone answered to the question before the class; ``None`` for nothing yet."""
    wanted = select(ClassAnswer.place).where(
        ClassAnswer.class_id == taught.id, ClassAnswer.number == taught.number, ClassAnswer.device == device
    )
    with records.reading() as connection:
        return connection.execute(wanted).scalar()


def answers_of(records: Records, taught: Taught) -> Mapping[int, Counter[int]]:
    """Return for each question that was answered how often each place was chosen."""
    wanted = select(ClassAnswer.number, ClassAnswer.place).where(ClassAnswer.class_id == taught.id)
    found: dict[int, Counter[int]] = {}
    with records.reading() as connection:
        for number, place in connection.execute(wanted):
            found.setdefault(number, Counter())[place] += 1
    return found


def explain_class(records: Records, taught: Taught) -> None:
    """Open the explanation of the question before the class for all; a second tap changes nothing."""
    _change(records, taught, explained=taught.number)


def next_question(records: Records, taught: Taught) -> None:
    """Put the next question before the class; a second tap, which still means the one before, changes nothing."""
    if taught.number < MOST_QUESTIONS:
        _change(records, taught, number=taught.number + 1)


def end_class(records: Records, taught: Taught, now: datetime) -> None:
    """End a class; what was answered stays."""
    _change(records, taught, ended_at=instant(now))


def _inserted(connection: Connection, table: type[Table], row: Mapping[str, object]) -> bool:
    """Add a row, and return whether there was none like it; what is there stays."""
    dialect = sqlite if connection.dialect.name == "sqlite" else postgresql
    added = dialect.insert(table).values(row).on_conflict_do_nothing()
    return connection.execute(added.returning(*table.__table__.primary_key)).first() is not None


def _change(records: Records, taught: Taught, **values: object) -> None:
    same = (
        TaughtClass.id == taught.id,
        TaughtClass.number == taught.number,
        TaughtClass.ended_at.is_(None),
    )
    with records.writing() as connection:
        connection.execute(update(TaughtClass).where(*same).values(**values))
