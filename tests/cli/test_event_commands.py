"""``marram event``: what the desk does with an event that records keep, done from the shell and read back."""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from marram.demo import EVENT
from marram.schema import read_json
from tests.cli.running import Finished, marram
from tests.services.scoring import PARS, Scoring, scoring
from tests.services.test_card_log import MOVED, _ruling

PAR = " ".join(map(str, PARS))
WHO, OTHER = "Fenwin Dulsey", "Osric Tarnbeck"


@pytest.fixture
def club(tmp_path: Path) -> Iterator[Scoring]:
    """Records of an invented event of two players and two rounds."""
    event = {**read_json(EVENT, "event"), "scores": ["gross"], "results_public": True}
    event["players"] = [one for one in event["players"] if one["name"] in (WHO, OTHER)]
    event["starting_times"] = [{"time": "08:00", "tee": 1, "players": [WHO, OTHER]}]
    with scoring(tmp_path, event) as kept:
        yield kept


def said(club: Scoring, *arguments: str) -> Finished:
    """Run a command of ``marram event`` on the records."""
    return marram("event", arguments[0], str(club.records.name), *arguments[1:])


def card(club: Scoring, who: str = WHO) -> dict[str, Any]:
    """Return the card of a player as the shell prints it."""
    found: dict[str, Any] = json.loads(said(club, "card", who, "--json").out)
    return found


def test_a_card_is_entered_compared_and_returned(club: Scoring) -> None:
    """Figures that differ keep a card from being returned; put right it stands on the board, and nothing on it may be changed."""
    said(club, "enter", "dulsey", "--given-by", "player", "--scores", PAR)
    said(club, "enter", WHO, "--given-by", "marker", "--scores", PAR, "--hole", "7=6")
    refused = said(club, "return", WHO)
    assert (refused.code, "Figures differ" in refused.err) == (2, True)

    said(club, "enter", WHO, "--given-by", "marker", "--hole", f"7={PARS[6]}")
    assert said(club, "return", WHO, "--at", "12:30").code == 0
    assert card(club)["state"] == "returned"
    assert f"{sum(PARS)} (+0)" in said(club, "board").out
    assert "Rule 3.3b(2)" in said(club, "enter", WHO, "--given-by", "player", "--hole", "1=9").err


def test_what_the_rules_ask_about_a_card_is_answered(club: Scoring) -> None:
    """A marker who did not certify: the card asks, the answer becomes a ruling; taken back, the card is open again."""
    for by in ("player", "marker"):
        said(club, "enter", WHO, "--given-by", by, "--scores", PAR)
    said(club, "return", WHO, "--not-certified", "marker")
    (finding,) = card(club)["findings"]
    assert finding["asks"] == "marker_at_fault"

    assert said(club, "answer", WHO, finding["name"], "perhaps").code == 2
    assert "A ruling" in said(club, "answer", WHO, finding["name"], "no").out
    assert card(club)["state"] == "out"
    said(club, "take-back", WHO, "--why", "the wrong card")
    assert card(club)["state"] == "entering"


def test_a_ruling_beside_a_card_is_settled_by_its_number(club: Scoring) -> None:
    """Its penalty keeps the card from being returned until it is settled; not included, the Rules ask why the score is too low; its stroke is added."""
    for by in ("player", "marker"):
        said(club, "enter", WHO, "--given-by", by, "--scores", PAR)
    competition = club.competition
    who = next(side for side, label in competition.labels.items() if label == WHO)
    number = club.add(_ruling((who, competition.rounds[0].id), 14, "ball_moved_by_player", MOVED)).number
    assert "A ruling lies beside the card" in said(club, "return", WHO).err

    assert said(club, "settle", WHO, "99", "included").code == 2
    assert said(club, "settle", WHO, str(number), "not_included").code == 0
    assert said(club, "return", WHO).code == 0
    assert "penalty_not_known" in said(club, "card", WHO).out
    said(club, "answer", WHO, "hole_score_wrong-14", "penalty_not_known")
    assert sum(card(club)["gross"][WHO]) == sum(PARS) + 1


def test_scores_told_from_the_course_stand_beside_those_of_the_card(club: Scoring) -> None:
    """A walking scorer's figures are a row of their own, '.' where nothing was told, and count as nobody's certificate."""
    said(club, "enter", WHO, "--given-by", "scorer", "--scores", ". . 5 6")

    assert f"{WHO}, from the course: . . 5 6 ." in said(club, "card", WHO).out
    assert card(club)["figures"] == [
        {"ball": WHO, "hole": 3, "scorer": 5},
        {"ball": WHO, "hole": 4, "scorer": 6},
    ]


def test_a_round_ends_without_a_card(club: Scoring) -> None:
    """A disqualification needs its Rule; how a round can end is listed where something else is typed."""
    assert "such as 1.2b" in said(club, "end", WHO, "disqualified").err
    assert "disqualified, withdrawn" in said(club, "end", WHO, "gone").err
    assert said(club, "end", WHO, "disqualified", "--citation", "1.2b").code == 0
    assert "disqualified  1.2b" in said(club, "board").out


def test_entries_are_taken_and_withdrawn(club: Scoring, tmp_path: Path) -> None:
    """A list with a fault takes nobody; put right it takes all; who withdraws plays no more; the list is written out again."""
    entries = tmp_path / "more.csv"
    entries.write_text("Name;HCP\nMaris Quillan-Roe;4,2\nTobiah Ling;99\n", encoding="utf-8")
    assert (said(club, "take", str(entries)).code, "Maris" in said(club, "field").out) == (2, False)
    entries.write_text("Name;HCP\nMaris Quillan-Roe;4,2\nTobiah Ling;9\n", encoding="utf-8")
    said(club, "take", str(entries))
    said(club, "withdraw", "tobiah ling", "--note", "ill")

    now = json.loads(said(club, "field", "--output", str(tmp_path / "out.csv"), "--json").out)
    assert {one["name"] for one in now["playing"]} == {WHO, OTHER, "Maris Quillan-Roe"}
    assert now["withdrawn"] == ["Tobiah Ling"]
    again = json.loads(marram("entries", "read", str(tmp_path / "out.csv"), "--json").out)
    assert len(again["entries"]) == len(now["playing"])


def test_a_draw_is_kept_only_when_said_and_its_changes_are_told(club: Scoring) -> None:
    """Drawn and shown, nothing changes; kept after the times were published, the change of each is told."""
    assert "never" not in said(club, "publish", "starting_times").err
    said(club, "draw", "--seed", "1", "--first", "10:20")
    assert "Nothing changed" in said(club, "changes").out
    said(club, "draw", "--seed", "1", "--first", "10:20", "--keep")
    told = json.loads(said(club, "changes", "--json").out)["changed"]
    assert {(one["name"], one["was"][0], one["now"][0]) for one in told} == {
        (WHO, "08:00", "10:20"),
        (OTHER, "08:00", "10:20"),
    }


def test_wishes_that_clash_are_named_and_nothing_is_kept(club: Scoring) -> None:
    """Two apart where there is one group alone: exit code 2 with the line as it was written, and no entry."""
    clash = said(club, "draw", "--seed", "1", "--wish", f"apart: {WHO}, {OTHER}", "--clubs-apart", "--keep")

    assert clash.code == 2
    assert f"apart: {WHO}, {OTHER}" in clash.out
    assert "Entered as" not in clash.out


def test_a_tie_is_decided_by_a_play_off(club: Scoring) -> None:
    """Two with the same total: the play-off says who comes first, each named once."""
    for who in (WHO, OTHER):
        for by in ("player", "marker"):
            said(club, "enter", who, "--given-by", by, "--scores", PAR)
        said(club, "return", who)
    assert said(club, "tie", "play_off", WHO, WHO).code == 2
    assert said(club, "tie", "countback", WHO, OTHER).code == 2
    assert said(club, "tie", "play_off", WHO, OTHER).code == 0


def test_holes_are_proposed_kept_and_shown_as_kept(club: Scoring) -> None:
    """Kept, they are those of the day until others are kept; the next day stays away from them."""
    asked = ("holes", "--day", "2025-06-21")
    proposed = said(club, *asked, "--seed", "3", "--keep", "--who", "OT").out
    assert "version 1" in proposed
    shown = said(club, *asked).out
    assert [one for one in shown.splitlines() if "paces" in one] == [
        one for one in proposed.splitlines() if "paces" in one
    ]
    assert said(club, "holes", "--day", "June").code == 2


def test_nobody_of_that_name_is_told_with_who_may_be_meant(club: Scoring) -> None:
    """A slip of the pen is answered with the name that is near, a round that is not there with those that are."""
    assert WHO in said(club, "card", "Fenwin Dulsy").err
    assert "Give 1 to" in said(club, "cards", "--round", "7").err
    assert "--by is" in said(club, "end", WHO, "withdrawn", "--by", "Nobody").err


def test_a_hole_of_a_match_that_is_over_is_refused(tmp_path: Path) -> None:
    """Ten holes won of eighteen: the match is over, and the next hole is no entry; one played can still be put right."""
    event = {**read_json(EVENT, "event"), "form_of_play": "match_play", "rounds": []}
    event["players"] = [one for one in event["players"] if one["name"] in (WHO, OTHER)]
    event["starting_times"] = [{"time": "08:00", "tee": 1, "players": [WHO, OTHER]}]
    with scoring(tmp_path, event) as club:
        for _ in range(10):
            said(club, "hole", WHO, "won")
        assert "10 and 8" in said(club, "matches").out
        refused = said(club, "hole", WHO, "won")
        assert (refused.code, "The match is over" in refused.err) == (2, True)
        assert "9 up" not in said(club, "hole", WHO, "tied", "--place", "10").err
        assert "10 and 8" not in said(club, "matches").out
