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
        + BadHandicap                      figures that no handicap can be worked out from
      x BookError                          a fault in marram's own encoding of the Rules

Each message says what was wrong, where, and what to do about it. Missing facts and matters of
judgement are results (see :mod:`marram.rules.ruling`), never errors.
"""

from collections.abc import Iterable

from marram.said import Said, joined, one_of, said


class MarramError(Exception):
    """The root of all errors raised by marram."""


class InputError(MarramError, ValueError):
    """The input cannot be used. ``faults`` lists every fault found, one sentence each."""

    def __init__(self, *faults: str) -> None:
        self.faults: tuple[str, ...] = faults
        super().__init__("\n".join(faults))


class UnknownLanguage(InputError):
    """There is no catalogue of the language asked for, so this is said in English."""


class UnknownIncident(InputError):
    """No incident has this name."""


class UnknownFact(InputError):
    """No fact has this name."""


class BadAnswer(InputError):
    """A fact was answered with a value that it does not allow."""


class NotKept(InputError):
    """What keeps the records cannot take it now (a full disk, a server out of reach); the same may be given again later."""


class DateNotCovered(InputError):
    """The date of play lies before the first edition of the Rules that marram covers."""


class BadCourse(InputError):
    """A course map that cannot be used as it is.

    Attributes:
        mendable: whether enough of it could be read to look for what mends it.
    """

    def __init__(self, *faults: str, mendable: bool = False) -> None:
        super().__init__(*faults)
        self.mendable = mendable


class BadPlace(InputError):
    """A place, hole number or length that does not fit the course."""


class BadHandicap(InputError):
    """Figures that no handicap, differential or index can be worked out from."""


class BookError(MarramError):
    """A fault in marram's own encoding of the Rules; please report it."""


def did_you_mean(word: object, choices: Iterable[str]) -> Said:
    """Return ``'Did you mean …?'`` for the nearest choices, or an empty sentence when none is near."""
    if not isinstance(word, str):
        return Said("")
    from marram.nearest_names import nearest  # noqa: PLC0415 - only needed once something is wrong

    near = [repr(one) for one in nearest(word, choices)]
    return said("Did you mean {near}?", near=one_of(near)) if near else Said("")


def told(error: BaseException) -> str:
    """Return what an error says: a sentence that knows its message as such, of many faults one line each."""
    if isinstance(error, InputError):
        return joined("\n", *error.faults)
    first = error.args[0] if error.args else ""
    return first if isinstance(first, Said) else str(error)


def shown(given: object, most: int = 60) -> str:
    """Return what was given as a message shows it: as Python writes it, cut after ``most`` letters."""
    if isinstance(given, str):
        return repr(given if len(given) <= most else f"{given[:most]}…")
    try:
        written = repr(given)
    except Exception:  # noqa: BLE001 - a number of thousands of digits, or an object that cannot show itself
        return said("something of the type {type}", type=type(given).__name__)
    return written if len(written) <= most else f"{written[:most]}…"
