"""The hour of an event, from its rounds, the starting times of the day and the clock."""

from collections.abc import Iterable
from datetime import date, datetime, time, timedelta

from marram.desk.people.hours import AFTER, BEFORE, PLAY, SCORING

ROUND = timedelta(hours=5)
"""From the last start until the last group is taken to be in: a round of groups of three or four (common practice)."""

RETURNING = timedelta(hours=2)
"""From then until the last card is taken to be returned and the results closed (own choice)."""


def hour_at(now: datetime, days: Iterable[date], starts: Iterable[time]) -> str:
    """Return the hour of an event.

    Args:
        now: the time on the clocks of the club.
        days: the days of its rounds.
        starts: the starting times of the round of this day, as far as they are set.
    """
    known = sorted(days)
    if now.date() not in known:
        return AFTER if known and now.date() > known[-1] else BEFORE
    times = sorted(starts)
    if not times:
        return PLAY
    first, last = (datetime.combine(now.date(), one, now.tzinfo) for one in (times[0], times[-1]))
    if now < first:
        return BEFORE
    if now < last + ROUND:
        return PLAY
    if now < last + ROUND + RETURNING:
        return SCORING
    return BEFORE if now.date() < known[-1] else AFTER
