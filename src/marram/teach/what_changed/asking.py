"""What changed between two days, from Python: ``marram.changes(2019, 2023)``."""

from datetime import date

from marram.errors import InputError
from marram.rules.editions import EDITIONS, FORMER_RULES, day_of_edition
from marram.said import said
from marram.teach.what_changed.kept import found
from marram.teach.what_changed.telling import ToldChange, told


def changes(earlier: date | int, later: date | int, *, rare_first: bool = False) -> list[ToldChange]:
    """Return what is decided otherwise on a later day, one change for each thing, told, with the situation that shows it.

    Args:
        earlier: a day of play, or the year of an edition, which stands for it as last clarified; 2016 for the former
            Rules, which are compared in the incidents of teaching.
        later: likewise.
        rare_first: instead of what players meet most, what they meet least first.

    Raises:
        InputError: a year is no edition's, the days are in the wrong order, or the earlier one is before 2016.
    """
    first, second = _day(earlier), _day(later)
    if first >= second:
        raise InputError(
            said("{earlier} is not before {later}; give the earlier one first.", earlier=first, later=second)
        )
    if first < FORMER_RULES:
        raise InputError(
            said("{day}: marram knows the Rules since {first}.", day=first, first=FORMER_RULES.isoformat())
        )
    return told(found(first, second), first, second, rare_first=rare_first)


def _day(given: date | int) -> date:
    if isinstance(given, date):
        return given
    day = day_of_edition(given)
    if day is None:
        years = ", ".join(str(one.year) for one in (FORMER_RULES, *EDITIONS))
        raise InputError(
            said("{given} is no edition; there are {years}. Or give a day.", given=given, years=years)
        )
    return day
