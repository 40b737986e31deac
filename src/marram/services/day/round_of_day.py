"""Which round a day stands for: there may be two on it, as in match play, and then the clock tells."""

from collections.abc import Callable, Iterable, Sequence
from datetime import date, datetime, time, tzinfo
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from marram.records.starting_sheet import Known

Starts = Callable[[Known], Iterable[time | None]]
"""Gives the starting times of a round, as far as they are set."""


def zone_named(name: str | None) -> tzinfo | None:
    """Return a zone by its IANA name; ``None``, that of the machine, where it is not known."""
    try:
        return ZoneInfo(name) if name else None
    except (ZoneInfoNotFoundError, ValueError):
        return None


def now_at(zone: str | None) -> datetime:
    """Return the time on the clocks of a zone by its IANA name; on those of the machine where it is not known."""
    return datetime.now().astimezone(zone_named(zone))


def round_of_day(known: Sequence[Known], day: date, starts: Starts, now: datetime) -> Known | None:
    """Return the round of a day; of several on this day the last that has begun, else the first; ``None``: there is none.

    Args:
        known: the rounds, in their order.
        day: the day asked for.
        starts: the starting times of a round; asked only where the day has several.
        now: the time on the clocks of the club.
    """
    some = [one for one in known if one.day == day]
    if len(some) < 2 or now.date() != day:
        return some[0] if some else None
    begun = [one for one in some if any(at is not None and at <= now.time() for at in starts(one))]
    return begun[-1] if begun else some[0]
