"""The conditions of the competition: where they come from, how they are kept."""

import re
from datetime import date

import pytest

from marram.desk.competition.conditions import COOKIE, conditions_of, cookie_of
from marram.errors import BadAnswer, DateNotCovered, InputError
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.local_rules.adoption import adopt
from marram.rules.local_rules.register import REGISTER
from marram.services.cases.conditions import Conditions
from marram.services.cases.event import Event, read_event
from tests.desk.asking import TestClient

EVENT = Event("Cup", "", date(2025, 6, 21), FormOfPlay.STROKE_PLAY, Sides.INDIVIDUAL, ("E-5",))


def test_the_event_says_what_nobody_else_says() -> None:
    """With no cookie and a bare address, the event's conditions hold."""
    found = conditions_of({}, "", EVENT)

    assert found == Conditions(date(2025, 6, 21), FormOfPlay.STROKE_PLAY, Sides.INDIVIDUAL, ("E-5",))


def test_the_cookie_outweighs_the_event_and_the_address_the_cookie() -> None:
    """A bookmarked case stays what it was, whatever was set since."""
    cookie = "on=2021-05-01&form=match_play"

    assert conditions_of({}, cookie, EVENT).on == date(2021, 5, 1)
    assert conditions_of({}, cookie, EVENT).form is FormOfPlay.MATCH_PLAY
    assert conditions_of({"on": "2024-05-01"}, cookie, EVENT).on == date(2024, 5, 1)


def test_what_is_unknown_stays_unknown() -> None:
    """Without an event the form of play and the Local Rules are open, never a default."""
    found = conditions_of({}, "", Event())

    assert found.form is None
    assert found.local is None
    assert found.handed is None


def test_an_empty_list_of_local_rules_is_not_an_open_question() -> None:
    """``none`` says that no Local Rule is in force; ``open`` that nobody knows."""
    assert conditions_of({"local": "none"}, "", EVENT).local == ()
    assert conditions_of({"local": "open"}, "", EVENT).local is None


def test_conditions_survive_being_written_into_an_address() -> None:
    """Reading back what was written gives the same conditions."""
    kept = Conditions(date(2022, 12, 31), None, Sides.FOURSOMES, (), "left", 1.1)

    assert conditions_of(dict(kept.pairs()), "", EVENT) == kept
    assert conditions_of({}, cookie_of(kept, EVENT), EVENT) == kept.of_competition()


def test_what_is_known_of_a_player_ends_with_the_case(client: TestClient) -> None:
    """Hand and clubs are the player's: the cookie keeps neither, and a new case asks again."""
    filled = {"on": "2022-06-01", "handed": "left", "club": "1.05", "back": "/case?what=unplayable_ball"}
    answer = client.post("/settings", data=filled)
    page = client.get(answer.headers["location"])

    assert "handed=left&club=1.05" in answer.headers["location"]
    assert "left" not in answer.cookies[COOKIE]
    assert "handed=none&amp;club=1.15" in page.text.partition('class="brand" href="')[2].partition('"')[0]


@pytest.mark.parametrize(
    ("given", "error", "words"),
    [
        ({"on": "21.6.2025"}, BadAnswer, "write it as year-month-day"),
        ({"on": "2015-12-31"}, DateNotCovered, "is not covered"),
        ({"form": "skins"}, BadAnswer, "It allows: stroke_play"),
        ({"local": "Z-9"}, BadAnswer, "there is no Local Rule 'Z-9'"),
        ({"local": "H-1.1,H-1.3"}, BadAnswer, "H-1.1 and H-1.3 cannot be in force together"),
        ({"handed": "both"}, BadAnswer, "right, left"),
        ({"club": "44 in"}, BadAnswer, "Give metres"),
        ({"club": "12"}, BadAnswer, "Give metres"),
    ],
)
def test_what_cannot_be_read_is_refused_with_words(given: dict[str, str], error: type, words: str) -> None:
    """Each fault says what to give instead."""
    with pytest.raises(error, match=words):
        conditions_of(given, "", EVENT)


def test_the_edition_is_that_of_the_day_of_play() -> None:
    """The 2023 edition came into force on 1 January 2023; the day before, the 2019 edition applied."""
    assert conditions_of({"on": "2022-12-31"}, "", EVENT).edition == 2019
    assert conditions_of({"on": "2023-01-01"}, "", EVENT).edition == 2023


def test_settings_are_kept_and_lead_back_to_the_case(client: TestClient) -> None:
    """Saving goes back to the page the official came from, with the new conditions in its address."""
    back = "/case?what=unplayable_ball&on=2025-06-21&form=stroke_play"
    filled = {
        "on": "2022-06-01",
        "form": "match_play",
        "sides": "none",
        "handed": "left",
        "club": "1.1",
        "back": back,
    }
    answer = client.post("/settings", data=filled)

    assert answer.status_code == 303
    location = answer.headers["location"]
    assert location.startswith(
        "/case?what=unplayable_ball&on=2022-06-01&form=match_play&sides=none&local=none"
    )
    assert "form=match_play" in answer.cookies[COOKIE]
    assert "Rules 2019" in client.get("/").text


@pytest.mark.parametrize(
    "back", ["https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example", "javascript:0"]
)
def test_settings_lead_back_to_this_desk_only(client: TestClient, back: str) -> None:
    """An address of another site is not followed."""
    answer = client.post("/settings", data={"on": "2024-06-01", "club": "1.15", "back": back})

    assert answer.headers["location"].startswith("/?on=2024-06-01")


def test_every_local_rule_that_changes_a_ruling_can_be_ticked(client: TestClient) -> None:
    """The settings list what the Rules as encoded know, with their titles."""
    from marram.rules.facts.conditions import LOCAL_RULES

    page = client.get("/settings").text

    for code in LOCAL_RULES:
        assert f'name="local" value="{code}"' in page


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({"played_on": "June"}, "year-month-day"),
        ({"form_of_play": "skins"}, "stroke_play"),
        ({"local_rules": ["Z-9"]}, "there is no Local Rule 'Z-9'"),
    ],
)
def test_an_event_that_cannot_be_used_is_refused(given: dict[str, object], words: str) -> None:
    """The error names the key and says what it takes."""
    with pytest.raises(InputError, match=words):
        read_event(given)


def test_all_faults_of_an_event_are_told_at_once() -> None:
    """Three faults, three sentences."""
    with pytest.raises(InputError) as caught:
        read_event({"played_on": "June", "form_of_play": "skins", "local_rules": ["Z-9"]})

    assert len(caught.value.faults) == 3


def test_every_local_rule_that_can_be_adopted_can_be_chosen(client: TestClient) -> None:
    """Those that only define an area too, with what they need marked; each chosen one stands in the bar of the next page."""
    page = client.get("/settings").text
    offered = re.findall(r'name="local" value="([^"]+)"', page)
    adoptable = [code for code in REGISTER if not adopt([code]).faults]

    assert sorted(offered) == sorted(adoptable)
    assert "a no play zone marked" in page
    answer = client.post(
        "/settings", data={"on": "2025-06-21", "local": ["E-5", "E-8"], "back": "/what?hole=9"}
    )
    bar = client.get(answer.headers["location"]).text.partition('class="conditions"')[2].partition("</a>")[0]
    assert "E-5, E-8" in bar
