"""How the place of the reader writes a time and a day: ``14:20`` or ``2:20 pm``, ``21 June 2025`` or ``June 21, 2025``.

The place is a region as the language that is asked for names it (RFC 5646, ``en-US``): on the desk by the browser, in the
shell by the locale (POSIX, ``LC_TIME``). Where none is named there are twenty-four hours, and the day comes first.
"""

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from typing import NamedTuple

TWELVE_HOURS = frozenset(
    ["AE", "AG", "AS", "AU", "BB", "BM", "BS", "CA", "CY", "DM", "ER", "FJ", "FM", "GD", "GH", "GM", "GU", "GY", "HK", "IN", "JM", "KI", "KN", "KY", "LC", "LR", "LS", "MH", "MO", "MP", "MW", "MY", "NA", "NZ", "PG", "PH", "PK", "PR", "PW", "SB", "SD", "SG", "SL", "SS", "SZ", "TC", "TO", "TT", "UM", "US", "VC", "VG", "VI", "VU", "WS", "ZM"]
)  # fmt: skip
"""Regions whose English counts the hours to twelve (Unicode CLDR 48, locales ``en-REGION``)."""
MONTH_FIRST = frozenset(("AS", "BI", "CA", "GU", "JP", "MH", "MP", "PH", "PR", "UM", "US", "VI"))
"""Regions whose English names the month before the day (Unicode CLDR 48)."""
YARDS = frozenset(("CA", "GB", "US"))
"""Regions whose courses are measured in yards (common practice)."""


class Writing(NamedTuple):
    """How times, days and lengths are written.

    Attributes:
        twelve_hours: whether the hours are counted to twelve.
        month_first: whether the month is named before the day.
        yards: whether lengths are told in yards, feet and inches before metres.
    """

    twelve_hours: bool = False
    month_first: bool = False
    yards: bool = False


NOWHERE = Writing()
"""How they are written where no region is named."""

_WRITING: ContextVar[Writing] = ContextVar("writing", default=NOWHERE)


def writing() -> Writing:
    """Return how times and days are written for whoever is being answered."""
    return _WRITING.get()


def write_as(how: Writing) -> None:
    """Write times and days in this way from now on, in this context."""
    _WRITING.set(how)


@contextmanager
def written_as(how: Writing) -> Iterator[None]:
    """Write times and days in a way for a while."""
    before = _WRITING.set(how)
    try:
        yield
    finally:
        _WRITING.reset(before)


def writing_in(region: str) -> Writing:
    """Return how a region writes times, days and lengths; of one that is not known as nowhere in particular does."""
    return Writing(region in TWELVE_HOURS, region in MONTH_FIRST, region in YARDS)


def region_asked_for(languages: str) -> str:
    """Return the region of the first language that a browser asks for (``Accept-Language``); empty where it names none."""
    parts = languages.partition(",")[0].partition(";")[0].strip().split("-")
    return next((one.upper() for one in parts[1:] if len(one) == 2 and one.isalpha()), "")


def region_of_locale(environment: Mapping[str, str]) -> str:
    """Return the region of the locale in which times are written (POSIX.1-2017, 8.2); empty where it names none."""
    name = next((environment[one] for one in ("LC_ALL", "LC_TIME", "LANG") if environment.get(one)), "")
    region = name.partition(".")[0].partition("@")[0].partition("_")[2].upper()
    return region if len(region) == 2 and region.isalpha() else ""
