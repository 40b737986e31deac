"""What cannot be in the names, the handicaps and the days of an event: each with its place and what to give."""

from collections.abc import Iterator
from datetime import date

from marram.competition.conditions.event_file import WORDS, EventFile
from marram.errors import shown
from marram.handicap.checking import LEAST_INDEX, MOST_INDEX
from marram.said import Said, said

FIRST_YEAR, LAST_YEAR = 1900, 2200
"""Years an event may be played in; a bound against slips of the pen, ours."""


def faults_of_people(found: EventFile) -> Iterator[Said]:
    """Yield a name that is empty or that two players have, and a Handicap Index that nobody can have (Rule of Handicapping 5.3)."""
    first: dict[str, int] = {}
    for number, one in enumerate(found.players, start=1):
        place = said("players {number}", number=number)
        if not one.name.strip():
            yield said("{place}, name is empty; give {remedy}.", place=place, remedy=WORDS)
            continue
        before = first.setdefault(" ".join(one.name.casefold().split()), number)
        if before != number:
            yield said(
                "{place} has the name of players {before}, {name}; tell the two apart, as by a middle name.",
                place=place,
                before=before,
                name=shown(one.name),
            )
        index = one.handicap_index
        if index is not None and not LEAST_INDEX <= index <= MOST_INDEX:
            yield said(
                "{place}, handicap_index is {index}; give a number from {least} to {most}, below 0 for a plus handicap.",
                place=place,
                index=shown(str(index)).strip("'"),
                least=str(float(LEAST_INDEX)),
                most=str(float(MOST_INDEX)),
            )
    for number, official in enumerate(found.officials, start=1):
        if not official.name.strip():
            place = said("officials {number}", number=number)
            yield said("{place}, name is empty; give {remedy}.", place=place, remedy=WORDS)


def faults_of_days(found: EventFile) -> Iterator[Said]:
    """Yield a day that no event is played on."""
    places: list[tuple[Said, date | None]] = [(said("played_on"), found.played_on)]
    places += [
        (said("rounds {number}, played_on", number=number), one.played_on)
        for number, one in enumerate(found.rounds, start=1)
    ]
    for place, day in places:
        if day is not None and not FIRST_YEAR <= day.year <= LAST_YEAR:
            yield said(
                "{place} is {day}; give a day from {first} to {last}.",
                place=place,
                day=day.isoformat(),
                first=FIRST_YEAR,
                last=LAST_YEAR,
            )
