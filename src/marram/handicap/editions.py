"""The editions of the Rules of Handicapping.

The first came into force in January 2020, its revision on 1 January 2024 (both read on the pages of the governing
bodies). National associations could begin later: those of Great Britain and Ireland took the revision up in April 2024
(second-hand), so an edition can also be named instead of found by the day.
"""

from datetime import date
from enum import Enum

from marram.errors import DateNotCovered
from marram.said import said


class Edition(Enum):
    """An edition, by the year it came into force."""

    OF_2020 = "2020"
    OF_2024 = "2024"


FIRST_DAYS = {Edition.OF_2020: date(2020, 1, 1), Edition.OF_2024: date(2024, 1, 1)}
LATEST = Edition.OF_2024


def edition_on(day: date) -> Edition:
    """Return the edition in force on the day of the round.

    Raises:
        DateNotCovered: the day lies before the first edition.
    """
    in_force = [edition for edition, first in FIRST_DAYS.items() if first <= day]
    if not in_force:
        raise DateNotCovered(
            said(
                "The Rules of Handicapping begin on {first}; {day} lies before. Give a later day, or name the edition.",
                first=FIRST_DAYS[Edition.OF_2020].isoformat(),
                day=day.isoformat(),
            )
        )
    return in_force[-1]
