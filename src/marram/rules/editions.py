"""The editions of the Rules, each named by the day it came into force.

The key everywhere is the *date of play*; ``case.played_since(EDITION_2023)`` stands in a provision
at the one place where the text changed.
"""

from datetime import date

EDITION_2019 = date(2019, 1, 1)
"""Rules of Golf effective January 2019."""

EDITION_2023 = date(2023, 1, 1)
"""Rules of Golf effective January 2023."""

FORMER_RULES = date(2016, 1, 1)
"""The former Rules (the code of 1984 to 2018) as in force from 2016, which only incidents of teaching cover."""

GREEN_MOVEMENT_RULE = date(2017, 1, 1)
"""From this day Committees could adopt the Local Rule on a ball accidentally moved on the putting green."""

EDITIONS: tuple[date, ...] = (EDITION_2019, EDITION_2023)
"""All editions covered, oldest first."""

FIRST_DAY = EDITIONS[0]
"""The first day of play that can be ruled on."""


def edition_of(played_on: date) -> date:
    """Return the first day of the edition in force on ``played_on``, or of the former Rules before 2019."""
    return max(day for day in (FORMER_RULES, *EDITIONS) if day <= played_on)
