"""The highest Handicap Index that a field takes, as somebody writes it."""

from decimal import Decimal, InvalidOperation

from marram.errors import InputError, shown
from marram.said import said


def limit_in(given: str) -> Decimal:
    """Return the limit that was written, with a point or a comma.

    Raises:
        InputError: it is no number.
    """
    try:
        return Decimal(given.strip().replace(",", "."))
    except InvalidOperation:
        raise InputError(
            said("{given} is no handicap limit; give a number such as 18.4.", given=shown(given))
        ) from None
