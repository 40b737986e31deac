"""The hour of an event by its rounds, its starting times and the clock; the rooms of a role in its order."""

import re
from datetime import date, datetime, time
from pathlib import Path

import pytest

from marram.desk.app import create_app
from marram.desk.day.hour import hour_at
from marram.desk.day.navigation import COOKIE, SHOWN, rooms_for
from marram.desk.log.kept import keep_here
from marram.desk.people.hours import AFTER, HOURS, PLAY
from marram.desk.people.roles import ROLES, RULING
from marram.words.texts import text
from tests.desk.asking import TestClient
from tests.services.scoring import scoring

DAYS = (date(2025, 6, 21), date(2025, 6, 22))
STARTS = (time(8, 0), time(8, 33), time(8, 11))


@pytest.mark.parametrize(
    ("now", "starts", "hour"),
    [
        ("2025-06-20 12:00", (), "before"),
        ("2025-06-21 07:59", STARTS, "before"),
        ("2025-06-21 08:00", STARTS, "play"),
        ("2025-06-21 13:32", STARTS, "play"),
        ("2025-06-21 13:33", STARTS, "scoring"),
        ("2025-06-21 15:32", STARTS, "scoring"),
        ("2025-06-21 15:33", STARTS, "before"),
        ("2025-06-22 15:33", STARTS, "after"),
        ("2025-06-22 06:00", (), "play"),
        ("2025-06-23 00:00", (), "after"),
    ],
)
def test_the_hour_follows_the_clock(now: str, starts: tuple[time, ...], hour: str) -> None:
    """Before the first start, until five hours after the last one, two more for the cards; before again while a round is to come."""
    assert hour_at(datetime.fromisoformat(now), DAYS, starts) == hour


def test_an_event_without_rounds_is_before_play() -> None:
    """Nothing is set yet."""
    assert hour_at(datetime.fromisoformat("2025-06-21 12:00"), (), ()) == "before"


def test_the_first_room_is_what_is_needed_now() -> None:
    """A referee rules during play and looks at the log afterwards; before play the holes come first."""
    first = {
        hour: next(one.name for one in rooms_for("referee", hour) if one.name != "now") for hour in HOURS
    }

    assert first == {"before": "holes", "play": "begin", "scoring": "log", "after": "log"}


@pytest.mark.parametrize("role", ["scorer", "committee", "chief_referee"])
def test_while_cards_come_in_they_are_first_for_whoever_takes_them(role: str) -> None:
    """The main button of the first screen leads to them, not to the log."""
    assert [one.name for one in rooms_for(role, "scoring")][:2] == ["now", "cards"]


@pytest.mark.parametrize("hour", HOURS)
@pytest.mark.parametrize("role", sorted(RULING))
def test_a_ruling_is_given_from_beside_whatever_the_hour(role: str, hour: str) -> None:
    """Who gives rulings finds that room among those side by side, never below the others."""
    assert "begin" in [one.name for one in rooms_for(role, hour)[:SHOWN]]


@pytest.mark.parametrize("role", ROLES)
def test_rooms_are_those_of_the_role_in_one_order(role: str) -> None:
    """At every hour the same rooms, none that the table does not allow."""
    sets = {frozenset(one.name for one in rooms_for(role, hour)) for hour in HOURS}

    assert len(sets) == 1
    assert all(role in one.rights[f"GET {one.entry}"] for one in rooms_for(role, "play"))


def test_a_desk_shows_the_hour_it_was_started_in(tmp_path: Path) -> None:
    """A demonstration opens during play although its days are long past; what somebody chooses on a device still counts."""
    with scoring(tmp_path) as found:
        app = create_app(kept_here=keep_here(found.records))
        desk = TestClient(app)
        assert "After play" in desk.get("/now").text
        app.state.hour = PLAY
        page = desk.get("/now").text
        assert re.search(rf"<h1[^>]*>{text('day.hour.play')}", page)
        desk.cookies.set(COOKIE, AFTER)
        assert re.search(rf"<h1[^>]*>{text('day.hour.after')}", desk.get("/now").text)


@pytest.mark.parametrize("role", ROLES)
def test_the_rooms_side_by_side_fit_a_phone(role: str) -> None:
    """A second line would take a twelfth of the map: with "More", a phone of 390 px has room for 28 letters."""
    for hour in HOURS:
        side_by_side = [text(f"day.room.{one.name}") for one in rooms_for(role, hour)][:SHOWN]
        assert sum(map(len, side_by_side)) <= 28, (hour, side_by_side)
