"""Where officials said they are: the last place each reported, on purpose, and nothing of the way there."""

from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import delete, insert, select

from marram.records.database import Records
from marram.records.entry import instant
from marram.records.tables import Whereabouts

LONGEST = 80
"""Letters that are kept of what was said (own choice)."""


@dataclass(frozen=True, slots=True)
class Reported:
    """A place as it was reported.

    Attributes:
        person: who is there.
        hole: the hole; ``None``: not on a hole.
        words: what else was said of it.
        reported_at: when, ISO 8601 in UTC.
    """

    person: str
    hole: int | None
    words: str
    reported_at: str


def report(records: Records, event: str, person: str, *, hole: int | None, words: str, now: datetime) -> None:
    """Keep where somebody is, in place of what was reported before; neither hole nor words: keep nothing."""
    told = " ".join(words.split())[:LONGEST]
    with records.writing() as connection:
        connection.execute(
            delete(Whereabouts).where(Whereabouts.event_id == event, Whereabouts.person_id == person)
        )
        if hole is not None or told:
            row = {
                "event_id": event,
                "person_id": person,
                "hole": hole,
                "words": told,
                "reported_at": instant(now),
            }
            connection.execute(insert(Whereabouts), row)


def whereabouts(records: Records, event: str) -> list[Reported]:
    """Return where everybody said to be, the latest first."""
    wanted = (
        select(Whereabouts.person_id, Whereabouts.hole, Whereabouts.words, Whereabouts.reported_at)
        .where(Whereabouts.event_id == event)
        .order_by(Whereabouts.reported_at.desc())
    )
    with records.reading() as connection:
        return [Reported(*row) for row in connection.execute(wanted)]
