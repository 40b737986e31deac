"""What exists beside the conditions: map, hole locations, marking and daylight, fed into what still stands."""

import json
from datetime import date
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from marram.competition.conditions.readiness import About, readiness
from marram.competition.conditions.reading import read_event_file
from marram.course.fault import Fault, Severity
from marram.course.loading import load
from marram.course.model import Course, Kind
from marram.course.versions.hole_days import HoleDays
from marram.demo import COURSE
from marram.services.day.ready import Daylight, what_exists
from tests.cli.running import marram

DAY = date(2025, 6, 21)
ZONE = ZoneInfo("Europe/London")
EVENT = {
    "played_on": "2025-06-21",
    "players": [{"name": "Ina Quell"}],
    "starting_times": [
        {"time": "08:00", "tee": 1, "players": []},
        {"time": "17:30", "tee": 1, "players": ["Ina Quell"]},
    ],
}


@pytest.fixture(scope="module")
def course() -> Course:
    """Return the invented course."""
    return load(COURSE)


def test_holes_set_are_those_kept_for_the_day(course: Course, tmp_path: Path) -> None:
    """A hole saved for the day is set; one saved for another day is not."""
    holes = HoleDays(tmp_path)
    one, other = list(course.holes)[:2]
    holes.save(DAY, {one: (0.0, 0.0)}, base=0, who="Committee")
    holes.save(date(2025, 6, 20), {other: (0.0, 0.0)}, base=0, who="Committee")
    found = what_exists(read_event_file(EVENT), course, holes=holes)
    assert found.holes_set == {DAY: (one,)}


@pytest.mark.parametrize(("minutes", "told"), [(200, False), (320, True), (600, True), (None, False)])
def test_the_last_group_is_measured_against_the_sunset(
    course: Course, minutes: int | None, told: bool
) -> None:
    """Off at 17:30 in June: home before sunset after 200 minutes, not after 320, nor past midnight; unknown is not told."""
    event = read_event_file(EVENT)
    there = what_exists(event, course, daylight=Daylight(ZONE, minutes))
    assert there.sunset[DAY].date() == DAY
    said = [one.what for one in readiness(event, there) if one.about is About.STARTING_TIMES]
    assert any("the sun sets" in one for one in said) is told


def test_a_local_rule_without_its_marking_is_told(course: Course) -> None:
    """E-1 and E-8 each need something on the map: only what the map has nothing of is told."""
    event = read_event_file({**EVENT, "local_rules": ["E-1", "E-8", "E-5"]})
    lacking = {
        code
        for code, kind in (("E-1", Kind.DROPPING_ZONE), ("E-8", Kind.NO_PLAY_ZONE))
        if not any(course.of(kind))
    }
    assert set(what_exists(event, course).unmarked) == lacking


def test_errors_of_a_map_stop_and_warnings_do_not(course: Course) -> None:
    """An error of the map stands in the way of the start; a warning is told once, with how many there are."""
    faults = [
        Fault(Severity.ERROR, "x", "The green of 2 is open", "Close it."),
        *(Fault(Severity.WARNING, "y", f"Warning {number}", "Look.") for number in range(3)),
        Fault(Severity.NOTE, "z", "A note", "Nothing."),
    ]
    event = read_event_file(EVENT)
    about = [one for one in readiness(event, what_exists(event, course, faults)) if one.about is About.COURSE]
    assert [(one.stops, "2 is open" in one.what, "3 warnings" in one.what) for one in about] == [
        (True, True, False),
        (False, False, True),
    ]


def test_the_command_tells_sunset_and_refuses_a_zone_that_is_none(tmp_path: Path) -> None:
    """A zone that is none, or minutes without a zone, is bad input; with both the last group is looked at."""

    path = tmp_path / "event.json"
    path.write_text(json.dumps(EVENT), encoding="utf-8")
    ready = ("competition", "ready", str(path), "--course", str(COURSE))
    late = marram(*ready, "--time-zone", "Europe/London", "--minutes-of-play", "320", "--json")
    assert "the sun sets" in late.out
    assert marram(*ready, "--time-zone", "Nowhere/Here").code == 2
    without = marram(*ready, "--minutes-of-play", "320")
    assert (without.code, "--time-zone" in without.err) == (2, True)
