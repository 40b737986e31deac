"""What exists beside the conditions of a competition, so that what still stands before the first start can be told.

From the map with its faults, the hole locations kept by day, the Local Rules with what they need marked, and daylight at
the course. What is not known is left out, never assumed.
"""

from collections.abc import Iterator, Sequence
from datetime import date, datetime, time, timedelta, tzinfo
from typing import NamedTuple

from marram.competition.conditions.event_file import EventFile
from marram.competition.conditions.readiness import Exists
from marram.competition.draw.daylight import polar_night, sunset
from marram.course.fault import Fault, Severity
from marram.course.model import Course
from marram.course.versions.hole_days import HoleDays
from marram.errors import InputError
from marram.said import said
from marram.services.ground.marked import PROVIDED_BY


class Daylight(NamedTuple):
    """What daylight needs.

    Attributes:
        zone: the zone that the clocks of the club show.
        minutes_of_play: how long the last group is expected to take from its start to its last hole, where the conditions
            do not say it; ``None``: not known.
    """

    zone: tzinfo
    minutes_of_play: int | None = None


def what_exists(
    found: EventFile,
    course: Course | None,
    faults: Sequence[Fault] = (),
    *,
    holes: HoleDays | None = None,
    daylight: Daylight | None = None,
) -> Exists:
    """Return what exists beside the conditions.

    Args:
        found: the conditions.
        course: the map; ``None`` where there is none, or none that can be used.
        faults: what was found wrong with the map.
        holes: the hole locations by day; ``None``: none are kept.
        daylight: what the sunset and the time of the last group are told by; ``None``: neither is.

    Raises:
        InputError: hole locations that are kept cannot be read.
    """
    days = tuple(found.days())
    return Exists(
        map_faults=[one.sentence for one in faults if one.severity is Severity.ERROR],
        map_warnings=[one.sentence for one in faults if one.severity is Severity.WARNING],
        holes_on_map=None if course is None else tuple(course.holes),
        pars={}
        if course is None
        else {one.number: one.par for one in course.holes.values() if one.par is not None},
        holes_set=dict(_holes_set(holes, days)),
        unmarked={} if course is None else dict(_unmarked(found, course)),
        last_home={} if daylight is None else dict(_last_home(found, days, daylight)),
        sunset={} if daylight is None or course is None else dict(_sunset(course, days, daylight.zone)),
        dark=frozenset(
            one
            for one in days
            if course is not None and polar_night(one, course.plane.latitude, course.plane.longitude)
        ),
    )


def check_minutes(found: EventFile, minutes: int | None) -> None:
    """Refuse minutes of play that the conditions contradict.

    Args:
        found: the conditions.
        minutes: how long the last group is expected to take, as it is asked; ``None``: not asked.

    Raises:
        InputError: the conditions give a round another time; every such round is listed.
    """
    faults = [
        said(
            "{day}: the conditions give {said} minutes for the round, and {asked} are asked for. "
            "Leave them out, or correct minutes_of_play in the conditions.",
            day=day.isoformat(),
            said=known,
            asked=minutes,
        )
        for day, name in found.every_round()
        if minutes is not None and (known := found.minutes_of(day, name)) not in (None, minutes)
    ]
    if faults:
        raise InputError(*faults)


def _holes_set(holes: HoleDays | None, days: Sequence[date]) -> Iterator[tuple[date, tuple[int, ...]]]:
    for day in days if holes is not None else ():
        latest = holes.latest(day) if holes is not None else None
        if latest is not None:
            yield day, tuple(latest.places)


def _unmarked(found: EventFile, course: Course) -> Iterator[tuple[str, str]]:
    """Yield the Local Rules in force that need something marked of which the map has nothing (Committee Procedures, 8E)."""
    for kind, codes in PROVIDED_BY.items():
        if any(course.of(kind)):
            continue
        for code in found.local_rules or ():
            if code.upper() in codes:
                yield code, said("no {kind} is on the map.", kind=kind.value.replace("_", " "))


def _last_home(found: EventFile, days: Sequence[date], daylight: Daylight) -> Iterator[tuple[date, datetime]]:
    """Yield when the last group is home; starting times of the file are those of its one day."""
    starts = sorted(time.fromisoformat(one.time.zfill(5)) for one in found.starting_times)
    for day in days if starts else ():
        minutes = found.minutes_of(day, found.round) or daylight.minutes_of_play
        if day == found.played_on and minutes is not None:
            start = datetime.combine(day, starts[-1], daylight.zone)
            yield day, start + timedelta(minutes=minutes)


def _sunset(course: Course, days: Sequence[date], zone: tzinfo) -> Iterator[tuple[date, datetime]]:
    for day in days:
        at = sunset(day, course.plane.latitude, course.plane.longitude)
        if at is not None:
            yield day, at.astimezone(zone)
