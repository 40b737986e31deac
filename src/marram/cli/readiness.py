"""What ``marram competition ready`` does."""

from dataclasses import dataclass
from datetime import datetime, tzinfo
from pathlib import Path
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from marram.cli import long_work
from marram.cli.exits import MORE_FACTS_NEEDED
from marram.cli.show import Line, print_json, show_lines
from marram.competition.conditions.contradictions_of_time import MOST_MINUTES
from marram.competition.conditions.readiness import Standing, readiness
from marram.competition.conditions.reading import event_document, read_event_file
from marram.course.fault import Severity
from marram.course.loading import examine
from marram.course.versions.hole_days import HoleDays
from marram.errors import InputError
from marram.rules.plain import as_plain
from marram.said import said
from marram.services.day.ready import Daylight, check_minutes, what_exists
from marram.words.spoken import spoken
from marram.words.texts import count_text, text


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is asked: an event in a file with what belongs to it, or one that records keep."""

    event: str | None
    course: str | None
    maps: Path | None
    zone: str | None
    minutes: int | None
    records: str | None = None
    round: int | None = None


def show_readiness(wanted: Wanted, as_json: bool) -> None:
    """Print what still stands between now and the first start; exit with 3 where something does."""
    name, standing, document = _of_file(wanted) if wanted.records is None else _of_records(wanted)
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "readiness",
                **({"conditions": document} if document is not None else {}),
                "standing": as_plain(standing),
            }
        )
    else:
        print(text("competition.sound", name=name))
        lines: list[Line] = [
            ("head", count_text("competition.stands", len(standing)))
            if standing
            else ("text", text("competition.ready"))
        ]
        lines += [
            (
                "caution" if one.stops else "item",
                text("competition.standing", what=spoken(one.what), remedy=spoken(one.remedy)),
            )
            for one in standing
        ]
        show_lines(lines)
    if any(one.stops for one in standing):
        raise SystemExit(MORE_FACTS_NEEDED)


Found = tuple[str, tuple[Standing, ...], object | None]
"""The name of the event, what still stands, and the conditions as a document; ``None`` for those that records keep."""


def _of_file(wanted: Wanted) -> Found:
    if wanted.event is None:
        raise InputError(said("No event is given. Name its file, or give records."))
    if wanted.round is not None:
        raise InputError(said("--round belongs to --records; without them leave it out."))
    path, minutes, zone = Path(wanted.event), wanted.minutes, wanted.zone
    found = read_event_file(path)
    daylight = None if zone is None else Daylight(_zone(zone), minutes)
    if minutes is not None and (zone is None or not 1 <= minutes <= MOST_MINUTES):
        raise InputError(text("competition.minutes_need_zone"))
    check_minutes(found, minutes)
    with long_work.shown():
        known, faults = (None, []) if wanted.course is None else examine(Path(wanted.course))
    if any(one.severity is Severity.ERROR for one in faults):
        known = None
    holes = None if wanted.maps is None else HoleDays(wanted.maps / "hole-locations")
    there = what_exists(found, known, faults, holes=holes, daylight=daylight)
    return found.name or path.name, readiness(found, there), event_document(found)


def _of_records(wanted: Wanted) -> Found:
    from marram.records.database import opened
    from marram.records.starting_sheet import rounds
    from marram.services.course_kept import course_kept
    from marram.services.day.ready_kept import next_round, ready_kept
    from marram.services.keeping import kept_event

    faults = [
        said("{option} belongs to an event in a file; with --records leave it out.", option=option)
        for option, given in (("--maps", wanted.maps), ("--time-zone", wanted.zone))
        if given is not None
    ]
    if wanted.minutes is not None and not 1 <= wanted.minutes <= MOST_MINUTES:
        faults.append(
            said("--minutes-of-play is {given}; give 1 to {most}.", given=wanted.minutes, most=MOST_MINUTES)
        )
    if faults:
        raise InputError(*faults)
    assert wanted.records is not None
    with opened(wanted.records) as there:
        id_, event = kept_event(there, wanted.event)
        map_on, holes = course_kept(there, wanted.course)
        number = wanted.round or next_round(rounds(there, id_), datetime.now().astimezone().date())
        found = ready_kept(there, id_, number, map_on=map_on, holes=holes, minutes=wanted.minutes)
    named = (
        text("ready.of_round", event=event.name, round=found.round.name)
        if found.round and found.round.name
        else event.name
    )
    return named, found.standing, None


def _zone(name: str) -> tzinfo:
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise InputError(text("competition.zone_unknown", given=repr(name))) from None
