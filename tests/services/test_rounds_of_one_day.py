"""Two rounds on one day: listed, kept in their order, and told apart by the clock."""

from collections.abc import Mapping
from datetime import UTC, date, datetime, time
from pathlib import Path
from typing import Any

import pytest

from marram.competition.conditions.reading import read_event_file
from marram.errors import InputError
from marram.records.starting_sheet import Known
from marram.services.cases.event import read_event
from marram.services.day.round_of_day import round_of_day
from marram.services.results.competition_results import read_results
from marram.services.results.scored import scored_in
from marram.services.sheets.event_papers import SheetName
from marram.services.sheets.event_papers_kept import papers_of_records
from tests.competition.making import COURSE, PARS
from tests.services.scoring import scoring

SATURDAY = "2025-06-21"
BOTH = [{"name": "Morning", "played_on": SATURDAY}, {"name": "Afternoon", "played_on": SATURDAY}]
LAST = {"name": "Last", "played_on": "2025-06-22"}


def test_both_are_rounds_in_the_order_they_are_listed() -> None:
    """By day, and within a day as the Committee lists them, not by the letters of their names."""
    found = read_event_file({"rounds": [LAST, *BOTH]})
    assert [name for _day, name in found.every_round()] == ["Morning", "Afternoon", "Last"]
    assert read_event({"rounds": [LAST, *BOTH]}).round_on(date(2025, 6, 21)) == "Morning / Afternoon"


@pytest.mark.parametrize(
    ("given", "fault"),
    [
        ({"rounds": [BOTH[0], {"name": "", "played_on": SATURDAY}]}, "without a name"),
        ({"round": "Evening", "played_on": SATURDAY, "rounds": BOTH}, "'Morning', 'Afternoon'"),
    ],
)
def test_what_nothing_tells_apart_is_refused(given: Mapping[str, Any], fault: str) -> None:
    """A second round needs a name, and the round of the file is one of its list."""
    with pytest.raises(InputError, match=fault):
        read_event_file(given)


@pytest.mark.parametrize("own", ["Morning", "Afternoon"])
def test_they_are_kept_in_their_order(tmp_path: Path, own: str) -> None:
    """Whichever of them the file is about; its groups are those of that round."""
    event = {
        "name": "Two in a day",
        "form_of_play": "stroke_play",
        "scores": ["gross"],
        "round": own,
        "played_on": SATURDAY,
        "rounds": [*BOTH, LAST],
        "players": [{"name": "Ada Wren"}],
        "starting_times": [{"time": "08:00", "tee": 1, "players": ["Ada Wren"]}],
    }
    with scoring(tmp_path, event) as found:
        here = scored_in(found.records)
        names = [one.name for one in here.competition.rounds]
        assert names == ["Morning", "Afternoon", "Last"]
        started = [one.name for one in here.competition.rounds if here.groups[one.id]]
        assert started == [own]


def test_both_count_in_a_result() -> None:
    """Thirty-six holes in a day are two cards: 72 and 74."""
    worse = [PARS[0] + 2, *PARS[1:]]
    document = {
        "event": {"form_of_play": "stroke_play", "scores": ["gross"], "rounds": BOTH},
        "course": [
            {"number": one.number, "par": one.par, "stroke_index": one.stroke_index} for one in COURSE
        ],
        "cards": [
            {"side": "Ada", "round": 1, "gross": list(PARS)},
            {"side": "Ada", "round": 2, "gross": worse},
        ],
    }
    _, (result,) = read_results(document)
    assert result.board.final
    assert result.board.places[0].score.total == 146


def test_the_clock_tells_which_is_in_play() -> None:
    """The last that has begun; before the first start the first, and on another day the first."""
    day = date(2025, 6, 21)
    known = [Known(name, name, day) for name in ("Morning", "Afternoon")]
    first = {"Morning": [time(8), time(9)], "Afternoon": [time(13), None]}

    def at(hour: int, *, on: date = day) -> str | None:
        now = datetime(on.year, on.month, on.day, hour, tzinfo=UTC)
        found = round_of_day(known, day, lambda one: first[one.name], now)
        return None if found is None else found.name

    assert [at(7), at(8), at(12), at(13), at(20)] == [
        "Morning",
        "Morning",
        "Morning",
        "Afternoon",
        "Afternoon",
    ]
    assert at(20, on=date(2025, 6, 22)) == "Morning"
    assert round_of_day(known, date(2025, 6, 23), lambda one: first[one.name], datetime.now(UTC)) is None


def test_each_may_have_its_own_minutes(tmp_path: Path) -> None:
    """Foursomes in the morning take 210 minutes, the afternoon 260, the last day the 240 of the competition; each notice says its own."""
    rounds = [{**BOTH[0], "minutes_of_play": 210}, {**BOTH[1], "minutes_of_play": 260}, LAST]
    event = {
        "name": "Two in a day",
        "minutes_of_play": 240,
        "rounds": rounds,
        "players": [{"name": "Ada Wren"}],
    }
    found = read_event_file(event)
    assert [found.minutes_in(number) for number in (1, 2, 3)] == [210, 260, 240]
    with scoring(tmp_path, event) as there:
        for number, minutes in ((1, 210), (2, 260), (3, 240)):
            papers = papers_of_records(there.records, None, course=there.course, round_=number)
            lines = " ".join(line for _, line in papers.sheet(SheetName("notice")).lines())
            assert f"{minutes} minutes" in lines


def test_one_round_has_one_time() -> None:
    twice = [{**BOTH[0], "minutes_of_play": 210}, {**BOTH[0], "minutes_of_play": 260}]
    with pytest.raises(InputError, match="210 / 260 minutes"):
        read_event_file({"rounds": twice})
