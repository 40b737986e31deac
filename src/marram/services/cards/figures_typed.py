"""Scores and handicaps of a card as somebody types them, at the desk or in the shell."""

from marram.competition.results.card import NO_SCORE, HoleScore
from marram.errors import InputError, shown
from marram.said import said
from marram.services.kinds.cards import LONGEST


def read_score(given: str) -> HoleScore:
    """Return a score as typed; ``None`` for an empty field.

    Raises:
        InputError: it is none.
    """
    typed = given.strip()
    if typed in ("-", "–"):
        return NO_SCORE
    if not typed:
        return None
    if typed.isascii() and typed.isdecimal() and 1 <= int(typed[:4]) <= LONGEST:
        return int(typed)
    raise InputError(
        said(
            "{given} is no score; give 1 to {most} strokes, or '-' for none.",
            given=shown(typed),
            most=LONGEST,
        )
    )


def read_handicap(given: str) -> int | str | None:
    """Return the handicap a card shows: a number, below 0 for a plus handicap, "none", or ``None`` for an empty field.

    Raises:
        InputError: it is none.
    """
    typed = given.strip()
    if not typed:
        return None
    if typed in ("-", "–"):
        return "none"
    sign = -1 if typed.startswith("+") else 1
    digits = typed.lstrip("+")
    if digits.isascii() and digits.isdecimal() and len(digits) < 3:
        return sign * int(digits)
    raise InputError(
        said(
            "{given} is no handicap; give a whole number, +2 for a plus handicap, or '-' for none.",
            given=shown(typed),
        )
    )
