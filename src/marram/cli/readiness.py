"""What ``marram competition ready`` does."""

from datetime import tzinfo
from pathlib import Path
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from marram.cli.exits import MORE_FACTS_NEEDED
from marram.cli.show import Line, print_json, show_lines
from marram.competition.conditions.readiness import readiness
from marram.competition.conditions.reading import event_document, read_event_file
from marram.course.fault import Severity
from marram.course.loading import examine
from marram.course.versions.hole_days import HoleDays
from marram.errors import InputError
from marram.rules.plain import as_plain
from marram.services.ready import Daylight, what_exists
from marram.words.spoken import spoken
from marram.words.texts import count_text, text


def show_readiness(
    event: Path,
    course: Path | None,
    maps: Path | None,
    zone: str | None,
    minutes: int | None,
    as_json: bool,
) -> None:
    """Print what still stands between now and the first start; exit with 3 where something does."""
    found = read_event_file(event)
    daylight = None if zone is None else Daylight(_zone(zone), minutes)
    if minutes is not None and (zone is None or not 1 <= minutes <= 24 * 60):
        raise InputError(text("competition.minutes_need_zone"))
    known, faults = (None, []) if course is None else examine(course)
    if any(one.severity is Severity.ERROR for one in faults):
        known = None
    holes = None if maps is None else HoleDays(maps / "hole-locations")
    standing = readiness(found, what_exists(found, known, faults, holes=holes, daylight=daylight))
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "readiness",
                "conditions": event_document(found),
                "standing": as_plain(standing),
            }
        )
    else:
        print(text("competition.sound", name=found.name or event.name))
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


def _zone(name: str) -> tzinfo:
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise InputError(text("competition.zone_unknown", given=repr(name))) from None
