"""The editions of the Rules, each named by the day it came into force.

The key everywhere is the *date of play*; ``case.played_since(EDITION_2023)`` stands in a provision
at the one place where the text changed.
"""

from datetime import date

EDITION_2019 = date(2019, 1, 1)
"""Rules of Golf effective January 2019."""

EDITION_2023 = date(2023, 1, 1)
"""Rules of Golf effective January 2023."""

EDITIONS: tuple[date, ...] = (EDITION_2019, EDITION_2023)
"""All editions covered, oldest first."""

FIRST_DAY = EDITIONS[0]
"""The first day of play that can be ruled on."""


def edition_of(played_on: date) -> date:
    """Return the first day of the edition in force on ``played_on`` (which must be covered)."""
    return max(day for day in EDITIONS if day <= played_on)
