"""People by their identifiers: their names, and the erasing of what is personal."""

from collections.abc import Iterable
from datetime import UTC, datetime
from uuid import UUID, uuid5

from sqlalchemy import delete, or_, select, text, update

from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Entry, instant
from marram.records.log import Log
from marram.records.searching import forget_words
from marram.records.tables import (
    LogEntry,
    OpenCase,
    OpenCasePage,
    Password,
    Person,
    PersonalDetails,
    SealedPart,
    SignIn,
    Whereabouts,
)
from marram.said import said


def names(records: Records, people: Iterable[str] | None = None) -> dict[str, str]:
    """Return the names of people by identifier; who was erased, or is not known, is not among them.

    Args:
        records: where they are kept.
        people: whose names; ``None`` for all.
    """
    wanted = select(PersonalDetails.person_id, PersonalDetails.name)
    if people is not None:
        wanted = wanted.where(PersonalDetails.person_id.in_(set(people)))
    with records.reading() as connection:
        return {row.person_id: row.name for row in connection.execute(wanted)}


def named(records: Records, name: str) -> list[str]:
    """Return the identifiers of everybody of this name."""
    with records.reading() as connection:
        wanted = select(PersonalDetails.person_id).where(PersonalDetails.name == name)
        return sorted(connection.scalars(wanted))


def erase(records: Records, person: str, *, by: str | None = None, now: datetime | None = None) -> int:
    """Erase what is personal about somebody: the details, and all that was sealed beside entries that concern them.

    With them go the person's sign-ins, password and last place: an erased person is signed in nowhere.

    The identifier stays, with all that rests on it; every log that names it says that this was done. Return how many
    sealed parts were erased. Copies made before (backups, exports) still hold what they held.

    Args:
        records: where they are kept.
        person: whose.
        by: who does it.
        now: the time; ``None`` for that of the clock.

    Raises:
        InputError: there is nobody of this identifier, or it cannot be written.
    """
    moment = now or datetime.now(UTC)
    about = or_(LogEntry.player == person, LogEntry.body.contains(f'"by":"{person}"'))
    with records.reading() as connection:
        if connection.scalar(select(Person.id).where(Person.id == person)) is None:
            raise InputError(said("There is nobody with the identifier {person}.", person=person))
        events = sorted(set(connection.scalars(select(LogEntry.event_id).where(about))))
    log = Log(records, lambda: moment)
    for event in events:  # the same identifier each time, so that a second try says it once
        ident = str(uuid5(UUID(person), f"erasure {event}"))
        if log.entry(ident) is None:
            log.append(event, Entry("erasure", moment, ident, by=by, player=person))
    gone = select(LogEntry.id).where(LogEntry.player == person)
    with records.writing() as connection:
        for table in (PersonalDetails, Password, SignIn, Whereabouts):
            connection.execute(delete(table).where(table.person_id == person))
        connection.execute(update(Person).where(Person.id == person).values(erased_at=instant(moment)))
        parts = connection.execute(
            update(SealedPart)
            .where(SealedPart.entry_id.in_(gone), SealedPart.content.is_not(None))
            .values(content=None, salt=None, erased_at=instant(moment))
        )
        forget_words(connection, list(connection.scalars(gone)))
        begun = select(OpenCase.id).where(OpenCase.player == person)
        connection.execute(delete(OpenCasePage).where(OpenCasePage.case_id.in_(begun)))
    _overwrite(records)
    return parts.rowcount


def _overwrite(records: Records) -> None:
    """Have the database let go of what was erased: out of SQLite's log of writes, out of PostgreSQL's old rows."""
    with records.engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        if records.is_file:
            connection.execute(text("PRAGMA wal_checkpoint(TRUNCATE)"))
        else:
            connection.execute(
                text(
                    "VACUUM personal_details, sealed_parts, log_words, open_case_pages, passwords, sign_ins, whereabouts"
                )
            )
