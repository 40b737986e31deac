"""Conditions of an event that records keep: shown, changed as long as they may be, and what stood between is gone."""

import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from marram.competition.cards.acts import By
from marram.demo import EVENT
from marram.records.entry import Entry, new_ident
from marram.records.starting_sheet import conditions, rounds
from marram.schema import read_json
from tests.cli.running import marram
from tests.services.scoring import NOON, Scoring, scoring

BARE = ("scores", "ties")


@pytest.fixture
def here(tmp_path: Path) -> Iterator[Scoring]:
    """An event of which nobody said which scores count, nor how ties are decided."""
    event = {key: value for key, value in read_json(EVENT, "event").items() if key not in BARE}
    with scoring(tmp_path, event) as made:
        yield made


def change(tmp_path: Path, **given: Any) -> Any:
    file = tmp_path / "more.json"
    file.write_text(json.dumps(given), encoding="utf-8")
    return marram("event", "conditions", str(tmp_path / "club.db"), "--change", str(file))


def ready(tmp_path: Path) -> str:
    return " ".join(
        marram("competition", "ready", "--records", str(tmp_path / "club.db"), "--json").out.split()
    )


def test_what_was_not_said_is_said_and_stands_no_more(here: Scoring, tmp_path: Path) -> None:
    """Seen among what stands, given, gone; the log tells what it was and is, and the rest is as before."""
    before = conditions(here.records, here.event)
    assert "Give scores" in ready(tmp_path)
    assert "Give ties" in ready(tmp_path)
    ties = {"first_place": ["play_off"], "other_places": ["countback", "shared"]}

    done = change(tmp_path, scores=["gross"], ties=ties, local_rules=["E-5"])

    assert done.code == 0, done.err
    assert "Give scores" not in ready(tmp_path)
    assert "Give ties" not in ready(tmp_path)
    after = conditions(here.records, here.event)
    assert after == {**before, "scores": ["gross"], "ties": ties, "local_rules": ["E-5"]}
    (entry,) = here.log.entries(here.event, kind="conditions_changed")
    assert entry.content["was"] == {"local_rules": before["local_rules"]}
    assert entry.content["now"] == {"scores": ["gross"], "ties": ties, "local_rules": ["E-5"]}
    shown = json.loads(marram("event", "conditions", str(tmp_path / "club.db"), "--json").out)
    assert shown["conditions"] == after


def test_what_was_shown_is_taken_as_it_is_and_null_takes_one_out(here: Scoring, tmp_path: Path) -> None:
    """The document of the command, edited, goes back in; without an edit nothing changes and it is said."""
    file = tmp_path / "shown.json"
    file.write_text(marram("event", "conditions", str(tmp_path / "club.db"), "--json").out, encoding="utf-8")
    again = marram("event", "conditions", str(tmp_path / "club.db"), "--change", str(file))
    assert again.code == 2
    assert "so already" in again.err
    assert change(tmp_path, minutes_of_play=None).code == 0
    assert "minutes_of_play" not in conditions(here.records, here.event)


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({"players": []}, "players is no condition that is changed here"),
        ({"local_rules": ["D-4.1", "D-4.2"]}, "cannot be in force together"),
        ({"scores": ["grss"]}, "scores"),
        ({"allowance": 95, "scores": ["gross"]}, "only gross scores count"),
        ({"colour": "red"}, "colour"),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_changed(
    here: Scoring, tmp_path: Path, given: dict[str, Any], words: str
) -> None:
    """The reason is said."""
    before = conditions(here.records, here.event)
    refused = change(tmp_path, **given)
    assert refused.code == 2
    assert words in " ".join(refused.err.split())
    assert conditions(here.records, here.event) == before
    assert not here.log.entries(here.event, kind="conditions_changed")


def test_the_form_holds_once_scores_are_entered_and_all_of_it_once_closed(
    here: Scoring, tmp_path: Path
) -> None:
    """A figure means strokes of that form of play; other conditions can still be put right, until the close."""
    player = here.competition.entries[0].person
    here.enter((player, here.competition.rounds[0].id), By.PLAYER, {1: 4})
    refused = change(tmp_path, form_of_play="stableford")
    assert "scores are entered already" in " ".join(refused.err.split())
    assert change(tmp_path, scores=["gross"]).code == 0
    here.add(Entry("competition_closed", NOON, new_ident()))
    assert "competition is closed" in " ".join(change(tmp_path, scores=["net"]).err.split())
    assert conditions(here.records, here.event)["scores"] == ["gross"]


@pytest.mark.usefixtures("here")
def test_a_file_without_conditions_is_told(tmp_path: Path) -> None:
    """What it is to hold is said by an example."""
    file = tmp_path / "more.json"
    file.write_text("[1]", encoding="utf-8")
    refused = marram("event", "conditions", str(tmp_path / "club.db"), "--change", str(file))
    assert refused.code == 2
    assert '{"scores": ["gross", "net"]}' in refused.err


def test_a_round_without_scores_is_moved_to_another_day(here: Scoring, tmp_path: Path) -> None:
    """By its number; what is no round or no day is told, and nothing is moved."""
    at = str(tmp_path / "club.db")
    before = [one.day for one in rounds(here.records, here.event)]
    wrong = marram("event", "conditions", at, "--day", "9=2031-06-21", "--day", "2=21.6.2031")
    assert wrong.code == 2
    assert "no round 9" in wrong.err
    assert "2=21.6.2031" in wrong.err
    assert [one.day for one in rounds(here.records, here.event)] == before

    last = len(before)
    done = marram("event", "conditions", at, "--day", f"{last}=2031-06-21")

    assert done.code == 0, done.err
    assert [one.day for one in rounds(here.records, here.event)] == [*before[:-1], date(2031, 6, 21)]
