"""Every error marram raises on purpose.

The tree::

    MarramError
      x InputError (also a ValueError)     what the caller gave cannot be used
        + UnknownIncident                  no such incident; suggests the nearest
        + UnknownFact                      no such fact; suggests the nearest
        + BadAnswer                        a fact was answered with something it does not allow
        + DateNotCovered                   the date of play lies before the first edition covered
        + BadCourse                        a course map that cannot be used, with every fault found
        + BadPlace                         a place, hole or length that does not fit the course
      x BookError                          a fault in marram's own encoding of the Rules

Each message says what was wrong, where, and what to do about it. Missing facts and matters of
judgement are results (see :mod:`marram.rules.ruling`), never errors.
"""

from collections.abc import Sequence


class MarramError(Exception):
    """The root of all errors raised by marram."""


class InputError(MarramError, ValueError):
    """The input cannot be used. ``faults`` lists every fault found, one sentence each."""

    def __init__(self, *faults: str) -> None:
        self.faults: tuple[str, ...] = faults
        super().__init__("\n".join(faults))


class UnknownIncident(InputError):
    """No incident has this name."""


class UnknownFact(InputError):
    """No fact has this name."""


class BadAnswer(InputError):
    """A fact was answered with a value that it does not allow."""


class DateNotCovered(InputError):
    """The date of play lies before the first edition of the Rules that marram covers."""


class BadCourse(InputError):
    """A course map that cannot be used as it is."""


class BadPlace(InputError):
    """A place, hole number or length that does not fit the course."""


class BookError(MarramError):
    """A fault in marram's own encoding of the Rules; please report it."""


def did_you_mean(word: str, choices: Sequence[str]) -> str:
    """Return ``' Did you mean …?'`` for the nearest choices, or an empty string when none is near."""
    from difflib import get_close_matches  # noqa: PLC0415 - only needed once something is wrong

    near = [repr(one) for one in get_close_matches(word.lower().replace("-", "_"), choices, n=3, cutoff=0.6)]
    if not near:
        return ""
    spoken = f"{', '.join(near[:-1])} or {near[-1]}" if near[1:] else near[0]
    return f" Did you mean {spoken}?"
