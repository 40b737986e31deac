"""What stands before a round that records keep: its own day, its own groups, its officials, the map in force then."""

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import update

from marram.competition.conditions.readiness import About
from marram.course.versions.hole_days import HoleDays
from marram.demo import EVENT
from marram.errors import InputError
from marram.records import tables
from marram.records.events import new_club
from marram.records.starting_sheet import Known, clubs
from marram.schema import read_json
from marram.services.day.ready_kept import Ready, next_round, ready_kept
from tests.cli.running import marram
from tests.services.scoring import Scoring, scoring

DAY = date(2025, 6, 21)


@pytest.fixture
def here(tmp_path: Path) -> Iterator[Scoring]:
    with scoring(tmp_path) as made:
        yield made


def ready(here: Scoring, round_: int = 1, holes: HoleDays | None = None, **more: int) -> Ready:
    return ready_kept(here.records, here.event, round_, map_on=lambda _: here.course, holes=holes, **more)


def about(found: Ready, what: About) -> list[str]:
    return [one.what for one in found.standing if one.about is what]


def test_groups_of_the_round_are_looked_at(here: Scoring) -> None:
    """All of the first round start; of the second nobody does yet, and it is said of that one only."""
    new_club(here.records, clubs(here.records)[0].name, "Europe/Amsterdam")
    assert about(ready(here), About.STARTING_TIMES) == []
    (told,) = about(ready(here, 2), About.STARTING_TIMES)
    assert told.startswith("12 players have no starting time")


def test_officials_of_the_records_have_their_places(here: Scoring) -> None:
    """The duties that were kept with the officials are read again: every hole has a referee."""
    assert about(ready(here), About.OFFICIALS) == []


def test_holes_set_are_those_of_the_day(here: Scoring, tmp_path: Path) -> None:
    """Holes set for the first round leave those of the second open."""
    days = HoleDays(tmp_path / "days")
    days.save(DAY, dict.fromkeys(here.course.holes, (0.0, 0.0)), base=0, who="Committee")
    assert about(ready(here, 1, days), About.HOLES) == []
    (told,) = about(ready(here, 2, days), About.HOLES)
    assert told.startswith("22 Jun 2025")


def test_no_such_round_is_refused(here: Scoring) -> None:
    """The rounds there are stand in the fault."""
    with pytest.raises(InputError, match="from 1 to 2"):
        ready(here, 3)


def test_without_a_zone_it_is_said_that_the_sunset_is_not_known(here: Scoring) -> None:
    """Nothing is passed over in silence; once the zone is given, to the club there is, it is looked at; one that is none is refused."""
    (told,) = about(ready(here), About.STARTING_TIMES)
    assert "before sunset is not known" in told
    club = clubs(here.records)[0].name
    with pytest.raises(InputError, match=r"no time zone 'Europe/Lodnon'.*Did you mean 'Europe/London'"):
        new_club(here.records, club, "Europe/Lodnon")
    new_club(here.records, club, "Europe/London")
    assert about(ready(here), About.STARTING_TIMES) == []
    new_club(here.records, club)
    assert about(ready(here), About.STARTING_TIMES) == []


def test_the_last_group_against_the_sunset_says_what_is_taken_for_granted(tmp_path: Path) -> None:
    """Off at 19:00 in June: with the usual five hours it is dark, and the sentence says they were assumed; with two it is not."""
    with scoring(tmp_path, late(None)) as here:
        with here.records.writing() as connection:
            connection.execute(update(tables.Club).values(time_zone="Europe/Amsterdam"))
        told = about(ready(here), About.STARTING_TIMES)
        assert any("with 300 minutes for a round" in one and "the sun sets" in one for one in told)
        assert about(ready(here, minutes=120), About.STARTING_TIMES) == []


@pytest.mark.parametrize(
    ("today", "number"), [("2025-06-20", 1), ("2025-06-21", 1), ("2025-06-22", 2), ("2025-06-30", 2)]
)
def test_the_next_round_is_the_first_not_over(today: str, number: int) -> None:
    """By its day; after the last one it stays the last."""
    known = [Known("a", "First", DAY), Known("b", "Second", date(2025, 6, 22))]
    assert next_round(known, date.fromisoformat(today)) == number


@pytest.mark.usefixtures("here")
def test_the_shell_asks_records_alike(tmp_path: Path) -> None:
    """The same items, by name and by round; an option of the other kind of source is refused."""
    found = marram("competition", "ready", "--records", str(tmp_path / "club.db"), "--round", "2")
    assert "12 players have no starting time" in " ".join(found.out.split())
    assert found.code == 3
    refused = marram("competition", "ready", "--records", str(tmp_path / "club.db"), "--time-zone", "UTC")
    assert "--time-zone belongs to an event" in " ".join(refused.err.split())


def late(minutes: int | None, of_round: int | None = None) -> dict[str, Any]:
    """The demo event with a group off at 19:00, and minutes of play given of every round, or of the first one."""
    document = dict(read_json(EVENT, "event"))
    document.pop("minutes_of_play", None)
    players = ["Fenwin Dulsey", "Maris Quillan-Roe", "Tobiah Ling"]
    first = {"time": "19:00", "tee": 1, "players": players}
    document["starting_times"] = [first, *document["starting_times"][1:]]
    if minutes is not None:
        document["minutes_of_play"] = minutes
    if of_round is not None:
        own = {"name": document["round"], "played_on": document["played_on"], "minutes_of_play": of_round}
        document["rounds"] = [own, *document["rounds"]]
    return document


@pytest.mark.parametrize(
    ("minutes", "of_round", "home"),
    [(240, None, "23:00"), (120, None, None), (120, 240, "23:00"), (240, 120, None)],
)
def test_the_time_for_the_round_is_that_of_the_conditions(
    tmp_path: Path, minutes: int, of_round: int | None, home: str | None
) -> None:
    """The last group is home after the minutes of the event, or of the round where it has its own; nothing is assumed then."""
    with scoring(tmp_path, late(minutes, of_round)) as here:
        with here.records.writing() as connection:
            connection.execute(update(tables.Club).values(time_zone="Europe/Amsterdam"))
        told = about(ready(here), About.STARTING_TIMES)
        assert [f"the last group is home at {home}" in one for one in told] == ([True] if home else [])
        assert not any("minutes for a round" in one for one in told)


def test_minutes_that_the_conditions_contradict_are_refused(tmp_path: Path) -> None:
    """Asked with 300 minutes where the conditions give 200: both are named; the same 200 are taken."""
    with scoring(tmp_path, late(200)) as here:
        with pytest.raises(
            InputError, match="the conditions give 200 minutes for the round, and 300 are asked for"
        ):
            ready(here, minutes=300)
        ready(here, minutes=200)
