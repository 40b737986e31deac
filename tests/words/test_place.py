"""Times and days as the place of the reader writes them, beside what ICU says of the regions (Unicode CLDR)."""

import json
import subprocess
from datetime import date, datetime, time
from shutil import which

import pytest
from playwright._impl._driver import compute_driver_executable

from marram.words.place import (
    MONTH_FIRST,
    NOWHERE,
    TWELVE_HOURS,
    region_asked_for,
    region_of_locale,
    writing,
    writing_in,
    written_as,
)
from marram.words.texts import clock_words, day_words, long_day_words, moment_words, short_day_words

NODE = which("node") or compute_driver_executable()[0]
THERE_ARE_COURSES_IN = ["AU", "CA", "DE", "FR", "GB", "IE", "IN", "NL", "NZ", "PH", "SE", "US", "ZA"]
"""Regions with many courses (common practice)."""
ASKED = """
const told = { twelve: [], first: [] };
for (const region of REGIONS) {
  const clock = new Intl.DateTimeFormat(`en-${region}`, { hour: "numeric", minute: "numeric" });
  if (clock.resolvedOptions().locale !== `en-${region}`) continue;
  const day = new Intl.DateTimeFormat(`en-${region}`, { day: "numeric", month: "long", year: "numeric" });
  const parts = day.formatToParts(new Date(2025, 5, 21)).map((one) => one.type).filter((one) => one !== "literal");
  if (clock.resolvedOptions().hourCycle === "h12") told.twelve.push(region);
  if (parts[0] === "month") told.first.push(region);
}
console.log(JSON.stringify(told));
"""


def test_regions_write_as_icu_says() -> None:
    """Source: Unicode CLDR by the ICU of Node. Those with many courses: of others it may say another thing one day."""
    asked = ASKED.replace("REGIONS", json.dumps(THERE_ARE_COURSES_IN))
    told = json.loads(subprocess.run([NODE, "-e", asked], capture_output=True, check=True, text=True).stdout)
    english = {*told["twelve"], *told["first"]}
    assert english >= {"AU", "CA", "US"}
    assert set(told["twelve"]) == TWELVE_HOURS & set(THERE_ARE_COURSES_IN)
    assert set(told["first"]) == MONTH_FIRST & set(THERE_ARE_COURSES_IN)


@pytest.mark.parametrize(
    ("at", "there"),
    [("00:05", "12:05\u00a0am"), ("09:30", "9:30\u00a0am"), ("12:00", "12:00\u00a0pm"), ("14:20", "2:20\u00a0pm"), ("23:59", "11:59\u00a0pm")],
)  # fmt: skip
def test_hours_are_counted_to_twelve_where_that_is_usual(at: str, there: str) -> None:
    assert clock_words(at) == at
    assert clock_words(time.fromisoformat(at)) == at
    with written_as(writing_in("US")):
        assert clock_words(at) == there
    with written_as(writing_in("IE")):
        assert clock_words(at) == at


def test_the_month_comes_first_where_that_is_usual() -> None:
    day = date(2025, 6, 21)
    assert [day_words(day), short_day_words(day)] == ["21 June 2025", "21 Jun 2025"]
    with written_as(writing_in("US")):
        assert [day_words(day), short_day_words(day)] == ["June 21, 2025", "Jun 21, 2025"]
        assert long_day_words(day) == "Saturday, June 21, 2025"
        assert moment_words(datetime(2025, 6, 21, 14, 20), date(2025, 6, 22)) == "Jun 21, 2025, 2:20\u00a0pm"  # noqa: DTZ001
    with written_as(writing_in("AU")):
        assert day_words(day) == "21 June 2025"


@pytest.mark.parametrize(
    ("languages", "region"),
    [
        ("en-US,en;q=0.9", "US"),
        ("de-AT;q=0.8", "AT"),
        ("zh-Hant-TW", "TW"),
        ("en", ""),
        ("en,en-US;q=0.5", ""),
        ("es-419", ""),
        ("*", ""),
        ("", ""),
        ("-", ""),
    ],
)
def test_the_region_is_that_of_the_first_language(languages: str, region: str) -> None:
    """Source: RFC 5646, 2.2.4 (two letters; three figures stand for more than one state)."""
    assert region_asked_for(languages) == region


@pytest.mark.parametrize(
    ("environment", "region"),
    [
        ({"LANG": "en_US.UTF-8"}, "US"),
        ({"LANG": "en_US.UTF-8", "LC_TIME": "en_IE.UTF-8"}, "IE"),
        ({"LANG": "en_US.UTF-8", "LC_ALL": "C.UTF-8"}, ""),
        ({"LANG": "en_US.UTF-8", "LC_TIME": ""}, "US"),
        ({"LC_TIME": "de_DE@euro"}, "DE"),
        ({}, ""),
    ],
)
def test_the_region_of_the_shell_is_that_of_its_locale(environment: dict[str, str], region: str) -> None:
    """Source: POSIX.1-2017, 8.2: LC_ALL before LC_TIME before LANG; what is set to nothing is not set."""
    assert region_of_locale(environment) == region


def test_nobody_else_is_written_to_that_way() -> None:
    with written_as(writing_in("US")):
        assert writing() == (True, True, True)
    assert writing() == NOWHERE
