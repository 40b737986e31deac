"""What still stands between now and the first start of a round that records keep."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from functools import lru_cache
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from marram.competition.conditions.event_file import EventFile, Group
from marram.competition.conditions.readiness import About, Standing, readiness
from marram.course.checks.map_checks import check_course
from marram.course.fault import Fault
from marram.course.model import Course
from marram.course.versions.hole_days import HoleDays
from marram.errors import InputError
from marram.records.database import Records
from marram.records.starting_sheet import Known, groups, round_conditions, rounds, time_zone
from marram.said import said
from marram.services.day.ready import Daylight, check_minutes, what_exists
from marram.services.results.competition_kept import CompetitionKept, competition_kept
from marram.services.sheets.event_papers_kept import officials_kept

USUAL_MINUTES = 300
"""What a round is taken to last where nobody said it: five hours for groups of three or four (common practice)."""


@dataclass(frozen=True)
class Ready:
    """What still stands before a round.

    Attributes:
        round: the round; ``None`` where the event has none.
        number: its number, from 1.
        standing: what still stands, in the order in which it is usually done.
    """

    round: Known | None
    number: int
    standing: tuple[Standing, ...]

    @property
    def stops(self) -> tuple[Standing, ...]:
        """What would stop play, or keep scores from becoming results."""
        return tuple(one for one in self.standing if one.stops)


def next_round(known: Sequence[Known], today: date) -> int:
    """Return the number of the round that is played next: the first that is not over by its day, else the last."""
    coming = (number for number, one in enumerate(known, start=1) if one.day is None or one.day >= today)
    return next(coming, max(1, len(known)))


def ready_kept(
    records: Records,
    event: str,
    round_: int,
    *,
    map_on: Callable[[date | None], Course],
    holes: HoleDays | None,
    minutes: int | None = None,
) -> Ready:
    """Return what still stands between now and the first start of a round.

    Args:
        records: where the event is kept.
        event: the event.
        round_: the number of the round, from 1.
        map_on: gives the map in force on a day; of no day, that of today.
        holes: the hole locations by day.
        minutes: how long the last group is expected to take; ``None``: as the conditions say, and where they do not
            :data:`USUAL_MINUTES`, and it is said.

    Raises:
        InputError: there is no such round, or the conditions give it another time.
    """
    known = rounds(records, event)
    if not 1 <= round_ <= len(known):
        raise InputError(
            said("There is no round {round}; give one from 1 to {last}.", round=round_, last=len(known))
        )
    this = known[round_ - 1]
    try:
        course = map_on(this.day)
        kept = competition_kept(records, event, course)
    except InputError as fault:
        return Ready(this, round_, tuple(_unusable(one) for one in fault.faults))
    found = _of_round(kept, round_, records, event)
    check_minutes(found, minutes)
    daylight = _daylight(records, event, minutes)
    there = what_exists(found, course, _faults(course), holes=holes, daylight=daylight)
    there = replace(there, no_zone=daylight is None)
    if minutes is None and found.minutes_of_play is None:
        there = replace(there, minutes_taken=USUAL_MINUTES)
    return Ready(this, round_, readiness(found, there))


@lru_cache(maxsize=4)
def _faults(course: Course) -> tuple[Fault, ...]:
    """Return what is wrong with a map; one that is looked at again is not checked again."""
    return tuple(check_course(course))


def _of_round(kept: CompetitionKept, number: int, records: Records, event: str) -> EventFile:
    """Return the conditions as those of one round: its day, its groups, who officiates; after a cut those who play on."""
    file, labels, this = kept.file, kept.players, kept.rounds[number - 1]
    starts = tuple(
        Group(
            one.starts_at.isoformat("minutes"),
            one.tee,
            tuple(labels.get(each.id, each.name) for each in one.players),
        )
        for one in groups(records, this.id)
        if one.starts_at is not None
    )
    cut = file.cut is not None and file.cut.after_round < number
    starting = {name for one in starts for name in one.players}
    differs = round_conditions(records, event).get(this.id, {})
    return replace(
        file,
        players=tuple(one for one in file.players if one.name in starting or not (cut and starts)),
        round=this.name,
        played_on=this.day,
        rounds=tuple(one for one in file.rounds if (one.played_on, one.name) == (this.day, this.name)),
        minutes_of_play=differs.get("minutes_of_play", file.minutes_of_play),
        starting_times=starts,
        officials=officials_kept(records, event, this.id),
    )


def _daylight(records: Records, event: str, minutes: int | None) -> Daylight | None:
    zone = time_zone(records, event)
    if zone is None:
        return None
    try:
        return Daylight(ZoneInfo(zone), USUAL_MINUTES if minutes is None else minutes)
    except (ZoneInfoNotFoundError, ValueError):
        return None


def _unusable(fault: str) -> Standing:
    return Standing(About.CONDITIONS, said("{fault}", fault=fault), said("Correct it in event.json."))
