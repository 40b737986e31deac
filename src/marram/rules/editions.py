"""The editions of the Rules, each named by the day it came into force.

The key everywhere is the *date of play*; ``case.played_since(EDITION_2023)`` stands in a provision
at the one place where the text changed. An edition named without a day means the edition as clarified
up to its last day (:func:`as_clarified`).
"""

from datetime import date, timedelta

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


CLARIFIED_ON: tuple[date, ...] = (date(2019, 2, 6), date(2025, 1, 1), date(2026, 1, 1))
"""The days inside an edition from which a clarification, or a Local Rule's new text, decides something otherwise."""

LAST_CHANGE_KNOWN = date(2026, 1, 1)
"""The newest day on which a clarification, or the text of a Model Local Rule, changed that is known here."""


def edition_of(played_on: date) -> date:
    """Return the first day of the edition in force on ``played_on``, or of the former Rules before 2019."""
    return max(day for day in (FORMER_RULES, *EDITIONS) if day <= played_on)


def decided_since(day: date) -> date:
    """Return the first day from which nothing was decided otherwise until ``day``: two days with the same one rule alike."""
    known = (FORMER_RULES, GREEN_MOVEMENT_RULE, *EDITIONS, *CLARIFIED_ON)
    return max(one for one in known if one <= day)


def as_clarified(edition: date) -> date:
    """Return the day that an edition named without a day of play stands for: its last, as then clarified.

    While an edition is in force, that is the day of the newest change to it known here.

    Args:
        edition: the first day of the edition, or of the former Rules.
    """
    later = [day for day in EDITIONS if day > edition]
    return min(later) - timedelta(1) if later else LAST_CHANGE_KNOWN


def clarified_to(played_on: date) -> date:
    """Return up to which day the clarifications reach that a ruling for play on ``played_on`` stands on."""
    return min(played_on, as_clarified(edition_of(played_on)))


def day_of_edition(year: object) -> date | None:
    """Return the day that an edition named by its year stands for; ``None`` when there is no such edition."""
    by_year = {str(day.year): as_clarified(day) for day in (FORMER_RULES, *EDITIONS)}
    return by_year.get(str(year))
