"""Conditions that are changed while a desk runs: what begins goes by them at once, what was ruled keeps what it was ruled under."""

import html
from collections.abc import Iterator
from dataclasses import fields
from pathlib import Path
from typing import Any

import pytest

from marram.competition.cards.acts import By
from marram.competition.conditions.event_file import EventFile
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import Entry, new_ident
from marram.records.starting_sheet import conditions, rounds
from marram.services.day.conditions_changing import conditions_changing
from marram.services.keeping import KEPT_APART
from marram.services.log.tap import Tap
from marram.services.results.scored import scored_in
from marram.words.texts import text
from tests.desk.asking import TestClient
from tests.desk.filled_form import filled_form
from tests.services.scoring import NOON, Scoring, scoring


@pytest.fixture
def found(tmp_path: Path) -> Iterator[Scoring]:
    with scoring(tmp_path) as it:
        yield it


@pytest.fixture
def kept(found: Scoring) -> KeptHere:
    return keep_here(found.records)


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def adopt(found: Scoring, codes: list[str]) -> None:
    """Adopt Local Rules, as the shell does beside a desk that runs."""
    here = scored_in(found.records)
    here.add(conditions_changing(here, {"local_rules": codes}, Tap(new_ident(), NOON, None, 0)))


def local(desk: TestClient) -> str:
    return str(desk.get("/api/offline/event").json()["conditions"]["local"])


def test_a_running_desk_goes_by_changed_local_rules(found: Scoring, desk: TestClient) -> None:
    """The next case begins under them, on paper, on phones and on the page; nothing was started again."""
    before = local(desk)
    assert "D-4.1" not in before
    adopt(found, ["D-4.1"])
    assert local(desk) == "D-4.1"
    assert "local=D-4.1" in desk.get("/").text


def test_what_a_device_keeps_of_its_own_does_not_hold_back_the_rest(found: Scoring, desk: TestClient) -> None:
    """Somebody set the sides on a phone; the Local Rules there still follow the Committee."""
    own = desk.get("/api/offline/event").json()["conditions"]
    form = {"on": own["on"], "form": own["form"], "sides": "foursomes", "local": own["local"].split(",")}
    assert desk.post("/settings", data=form).status_code == 303
    adopt(found, ["D-4.1"])
    page = desk.get("/").text
    assert "local=D-4.1" in page
    assert "sides=foursomes" in page


def fill(page: str, **own: Any) -> dict[str, Any]:
    """The form of the page as a browser sends it, with what somebody typed otherwise."""
    return {**filled_form(page, "/conditions"), **own}


def test_the_page_tells_what_is_set_and_changes_what_was_typed(found: Scoring, desk: TestClient) -> None:
    """Sent as it stands nothing changes; a cut, a day and the code of conduct are kept, logged, told, and all else is as before."""
    page = desk.get("/conditions").text
    assert "E-5" in page
    assert "so already" in desk.post("/conditions", data=fill(page)).text
    before = conditions(found.records, found.event)
    other = {key: value for key, value in before.items() if key not in {"cut", "minutes_of_play"}}

    typed = fill(page, cut_after="1", cut_places="6", minutes="241", days=["2025-06-21", "2025-06-23"])
    assert desk.post("/conditions", data=typed).headers["location"] == "/conditions?changed=1"

    after = conditions(found.records, found.event)
    assert after == {**other, "cut": {"after_round": 1, "places": 6}, "minutes_of_play": 241}
    assert [str(one.day) for one in rounds(found.records, found.event)] == ["2025-06-21", "2025-06-23"]
    (entry,) = found.log.entries(found.event, kind="conditions_changed")
    assert entry.content["now"]["rounds"][1]["played_on"] == "2025-06-23"
    logged = desk.get(f"/log/{entry.number}").text
    assert "The time for a round: 241 (before:" in " ".join(logged.split())
    assert "The cut" in logged
    told = desk.get("/conditions?changed=1").text
    assert "After round 1 the first 6 and ties play on." in told
    assert "241 minutes" in told


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ({"local": ["D-4.1", "D-4.2"]}, "cannot be in force together"),
        ({"cut_after": "2", "cut_places": "6"}, "followed by another"),
        ({"allowance": "9x"}, "allowance is"),
        ({"first": ["shared", "play_off"]}, "shared"),
        ({"days": ["2025-06-21", "2025-06-20"]}, "before the round ahead of it"),
        ({"days": ["21st", ""]}, "is no day of a round"),
    ],
)
def test_what_cannot_be_is_refused_with_the_reason_and_stays_typed(
    found: Scoring, desk: TestClient, typed: dict[str, Any], words: str
) -> None:
    """Nothing was changed, and the page holds what was filled in."""
    before = conditions(found.records, found.event)
    answer = desk.post("/conditions", data=fill(desk.get("/conditions").text, minutes="222", **typed))
    assert answer.status_code == 422
    assert words in " ".join(html.unescape(answer.text).split())
    assert 'value="222"' in answer.text
    assert conditions(found.records, found.event) == before
    assert not found.log.entries(found.event, kind="conditions_changed")


def test_two_who_change_at_once_do_not_undo_each_other(found: Scoring, desk: TestClient) -> None:
    """The page that was open before is refused, and shows what it would undo."""
    page = desk.get("/conditions").text
    adopt(found, ["D-4.1"])
    answer = desk.post("/conditions", data=fill(page, minutes="222"))
    assert "Somebody else changed the conditions" in answer.text
    assert conditions(found.records, found.event)["local_rules"] == ["D-4.1"]


def test_what_stands_is_told_and_a_round_with_scores_keeps_its_day(found: Scoring, desk: TestClient) -> None:
    """Groups, cards and lists are counted; once closed there is no form and no change."""
    page = desk.get("/conditions").text
    assert "4 groups are drawn" in page
    assert "exceptional circumstances" not in page
    player, round_ = found.competition.entries[0].person, found.competition.rounds[0].id
    found.enter((player, round_), By.PLAYER, {1: 4})
    page = desk.get("/conditions").text
    assert "1 card has scores" in page
    assert (
        "exceptional circumstances" in page
    )  # Committee Procedures 5A, randa.org/rog/committee-procedures/5
    moved = desk.post("/conditions", data=fill(page, days=["2025-06-20", "2025-06-22"]))
    assert "scores of it are entered already" in moved.text
    found.add(Entry("competition_closed", NOON, new_ident()))
    closed = desk.get("/conditions").text
    assert '<form method="post" action="/conditions"' not in closed
    assert "The competition is closed" in desk.post("/conditions", data=fill(page, minutes="222")).text


def test_players_are_told_of_a_change_once_something_is_published(found: Scoring, desk: TestClient) -> None:
    """Not before: until then nobody had been told otherwise."""
    adopt(found, ["D-4.1"])
    assert "Local Rules now in force" not in desk.get("/published").text
    listed = {"what": "starting_times", "round": "1", "tapped": new_ident()}
    assert desk.post("/published", data=listed).status_code == 303
    adopt(found, ["E-5"])
    page = desk.get("/published").text
    assert "Local Rules now in force: E-5." in page
    assert "D-4.1" not in page


def test_every_condition_has_words() -> None:
    """What changed is told by a name, whatever it is."""
    for one in fields(EventFile):
        if one.name not in KEPT_APART:
            assert text(f"conditions_kept.key.{one.name}")
