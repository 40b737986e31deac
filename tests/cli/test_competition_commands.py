"""The commands about conditions, results and cards: what they print, refuse, and exit with."""

import json
from pathlib import Path
from typing import Any

import pytest

from marram.cli.competition import place_line
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import RoundCard, Row
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.demo import COURSE, EVENT
from marram.rules.facts.conditions import FormOfPlay
from marram.schema import read_json
from tests.cli.running import marram
from tests.competition.making import COURSE as HOLES

PAR = [hole.par for hole in HOLES]
EVENT_OF_TWO: dict[str, Any] = {
    "name": "Quillsand Foursquare",
    "played_on": "2025-06-21",
    "form_of_play": "stroke_play",
    "sides": "individual",
    "scores": ["gross", "net"],
    "allowance": 95,
    "tees": "white",
    "ratings": [{"tees": "white", "course_rating": 71.1, "slope": 129, "par": 72}],
    "ties": {"first_place": ["countback", "play_off"], "other_places": ["countback", "shared"]},
    "divisions": [{"name": "Low", "handicap_to": 9.9}],
    "players": [
        {"name": "Maris Quillan-Roe", "handicap_index": 5.8},
        {"name": "Tobiah Ling", "handicap_index": 14.1},
    ],
}
COURSE_GIVEN = [{"number": one.number, "par": one.par, "stroke_index": one.stroke_index} for one in HOLES]


def written(path: Path, document: dict[str, Any]) -> str:
    """Write a document and return where."""
    path.write_text(json.dumps(document), encoding="utf-8")
    return str(path)


def cards(tmp_path: Path, **change: Any) -> str:
    """Write a file of two cards tied in gross."""
    one = {"side": "Maris Quillan-Roe", "gross": [PAR[0] + 2, *PAR[1:]]}
    other = {"side": "Tobiah Ling", "gross": [*PAR[:13], PAR[13] + 2, *PAR[14:]]}
    whole = {"event": EVENT_OF_TWO, "course": COURSE_GIVEN, "cards": [one, other], **change}
    return written(tmp_path / "cards.json", whole)


def test_the_invented_event_holds_together_and_says_what_it_lacks() -> None:
    """What the event of the demonstration lacks is listed, with what to do."""
    found = marram("competition", "ready", str(EVENT), "--course", str(COURSE), "--json")
    document = json.loads(found.out)
    assert {one["about"] for one in document["standing"]} <= {"conditions", "holes", "officials", "players"}
    assert all(one["remedy"] for one in document["standing"])


def test_a_contradiction_is_refused_by_the_command(tmp_path: Path) -> None:
    """Contradictory conditions are bad input, one sentence each."""
    wrong = {"form_of_play": "stroke_play", "target": "bogey", "scores": ["gross"], "allowance": 95}
    found = marram("competition", "ready", written(tmp_path / "event.json", wrong))
    assert found.code == 2
    assert len(found.err.splitlines()) == 2


def test_results_gross_net_and_by_division(tmp_path: Path) -> None:
    """Handicaps are worked out from index, tees and allowance; every result asked for is there."""
    document = json.loads(marram("results", "board", cards(tmp_path), "--json").out)
    named = {(one["score"], one["division"]): one for one in document["results"]}
    assert set(named) == {(score, part) for score in ("gross", "net") for part in (None, "Low")}
    gross = named["gross", None]["places"]
    assert [(one["side"], one["place"], one["total"]) for one in gross] == [
        ("Maris Quillan-Roe", 1, sum(PAR) + 2),
        ("Tobiah Ling", 2, sum(PAR) + 2),
    ]
    # 14.1 x 129/113 - 0.9 = 15.20, 95 % of it 14.44; 5.8 likewise 5.72 and 5.44 (Rules of Handicapping 6.1 and 6.2)
    net = named["net", None]["places"]
    assert [(one["side"], one["total"]) for one in net] == [
        ("Tobiah Ling", sum(PAR) + 2 - 14),
        ("Maris Quillan-Roe", sum(PAR) + 2 - 5),
    ]
    assert [one["side"] for one in named["net", "Low"]["places"]] == ["Maris Quillan-Roe"]


def test_why_is_told_down_to_the_hole(tmp_path: Path) -> None:
    """A tie broken by the last nine names them, and the hole."""
    found = marram("results", "why", cards(tmp_path), "Tobiah Ling")
    assert "Maris Quillan-Roe: holes 10 to 18: 38 against 36" in found.out
    assert "Round 1, hole 14: 6 against 4" in found.out
    assert marram("results", "why", cards(tmp_path), "Nobody").code == 2


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"cards": [{"side": "A Stranger", "gross": PAR}]}, "'A Stranger' is not among the players"),
        ({"cards": [{"side": "Tobiah Ling", "gross": PAR[:17]}]}, "17 scores"),
        ({"cards": [{"side": "Tobiah Ling"}]}, "give gross, or balls of partners"),
        ({"cards": [{"side": "Tobiah Ling", "gross": [0, *PAR[1:]]}]}, "hole 1 is 0"),
        ({"cards": [{"side": "Tobiah Ling", "gros": PAR}]}, "Did you mean 'gross'"),
    ],
)
def test_cards_that_cannot_be_used_are_refused(tmp_path: Path, change: dict[str, Any], said: str) -> None:
    """A stranger, a card too short, no scores, a score that is none, a slip of the pen: each with its remedy."""
    found = marram("results", "board", cards(tmp_path, **change))
    assert (found.code, found.out) == (2, "")
    assert said in found.err


def figures() -> list[dict[str, Any]]:
    """Return figures of both for par on every hole."""
    return [
        {"act": "figure", "by": by, "hole": hole.number, "score": hole.par}
        for hole in HOLES
        for by in ("player", "marker")
    ]


CARD: dict[str, Any] = {
    "side": "Tobiah Ling",
    "played_on": "2025-06-21",
    "course": COURSE_GIVEN,
    "sides": "individual",
    "local_rules": [],
}


def test_a_card_in_order_is_settled(tmp_path: Path) -> None:
    """Figures, certifications, the return: exit 0, nothing left."""
    acts = [*figures(), *({"act": "certified", "by": by} for by in ("player", "marker")), {"act": "returned"}]
    found = marram("card", "rule", written(tmp_path / "card.json", {**CARD, "acts": acts}))
    assert (found.code, found.out.strip()) == (0, "Tobiah Ling, round 1: the card is settled.")


def test_a_card_without_certification_asks_and_then_rules(tmp_path: Path) -> None:
    """The open question names the fact and where to answer it; answered, the side is out under its Rule."""
    acts = [*figures(), {"act": "certified", "by": "player"}, {"act": "returned"}]
    asked = marram("card", "rule", written(tmp_path / "card.json", {**CARD, "acts": acts}))
    assert asked.code == 3
    assert "marker_at_fault under scorecard_fault-marker" in asked.out
    answers = {"scorecard_fault-marker": {"marker_at_fault": "no"}}
    ruled = marram(
        "card", "rule", written(tmp_path / "card.json", {**CARD, "acts": acts, "answers": answers})
    )
    assert ruled.code == 0
    assert "Out: disqualified (Rule 3.3b(2))." in ruled.out


def test_an_act_that_lacks_something_is_refused(tmp_path: Path) -> None:
    """A figure without a hole, a settlement without a ruling: each is told at once."""
    acts = [{"act": "figure", "by": "player", "score": 4}, {"act": "settled", "how": "included"}]
    found = marram("card", "rule", written(tmp_path / "card.json", {**CARD, "acts": acts}))
    assert found.code == 2
    assert "figure: hole is missing" in found.err
    assert "settled: ruling is missing" in found.err


@pytest.mark.parametrize(
    ("given", "asked", "end"),
    [(200, [], "DTEND:20250621T102000Z"), (200, ["--minutes", "60"], "DTEND:20250621T080000Z")],
)
def test_the_calendar_lasts_as_long_as_the_conditions_give_for_the_round(
    tmp_path: Path, given: int, asked: list[str], end: str
) -> None:
    """Off at 08:00 in London, which is 07:00 UTC in June: home after the 200 minutes given, unless another length is asked."""
    event = {**read_json(EVENT, "event"), "minutes_of_play": given}
    name = event["players"][0]["name"]
    event["starting_times"] = [{"time": "08:00", "tee": 1, "players": [name]}]
    path, file = written(tmp_path / "event.json", event), tmp_path / "starts.ics"
    assert marram("calendar", path, str(file), "--time-zone", "Europe/London", *asked).code == 0
    assert end in file.read_text(encoding="utf-8")


def test_a_result_against_par_is_told_once() -> None:
    """In Par/Bogey the total is the result against par (Rule 21.3b): it does not stand there twice."""
    rows = (Row("ada", (3, 4, 5, *PAR[3:])),)
    board = LeaderBoard(Terms(Scoring(FormOfPlay.PAR_BOGEY)), [RoundCard("ada", 1, HOLES, rows)])
    (only,) = board.places
    assert only.score.total == only.score.against_level
    assert place_line(only).endswith("ada  +1")
    strokes = LeaderBoard(Terms(Scoring()), [RoundCard("ada", 1, HOLES, rows)])
    assert place_line(strokes.places[0]).endswith("ada  72 (+0)")


def test_sides_and_teams_are_those_that_the_players_of_the_event_name(tmp_path: Path) -> None:
    """Foursomes: half of both Course Handicaps together (Appendix C). White, Slope 113 and rating equal to par: 10.0 and 6.0 are 10
    and 6, so 8. The card says no more than its side; gross 72, net 64. Two sides of one team: the better of 64 and 72 counts."""
    players = [
        {"name": name, "handicap_index": index, "side": side, "team": "Dunes"}
        for name, index, side in (
            ("Ada Brill", 10.0, "Pair 1"),
            ("Ben Coyle", 6.0, "Pair 1"),
            ("Cleo Dunn", 0.0, "Pair 2"),
            ("Dov Ester", 0.0, "Pair 2"),
        )
    ]
    event = {
        "form_of_play": "stroke_play",
        "sides": "foursomes",
        "scores": ["net"],
        "tees": "white",
        "ratings": [{"tees": "white", "course_rating": 72.0, "slope": 113, "par": 72}],
        "teams": {"size": 2, "counting": 1},
        "players": players,
    }
    given = [{"side": "Pair 1", "gross": PAR}, {"side": "Pair 2", "gross": PAR}]
    found = marram("results", "board", cards(tmp_path, event=event, cards=given), "--json")
    (told,) = json.loads(found.out)["results"]
    assert [(one["side"], one["total"]) for one in told["places"]] == [("Pair 1", 64), ("Pair 2", 72)]
    assert [(one["team"], one["total"]) for one in told["teams"]] == [("Dunes", 64)]


def test_the_second_half_of_a_further_round_starts_at_the_second_start(tmp_path: Path) -> None:
    """Two groups of one: the leader, who starts last, has the second start; a time that is none is refused."""
    asked = ("next-round", cards(tmp_path), "--seed", "1", "--places", "1", "--score", "net")
    drawn = json.loads(marram(*asked, "--first", "07:30", "--second", "12:40", "--json").out)

    assert [one["time"] for one in drawn["groups"]] == ["07:30", "12:40"]
    assert marram(*asked, "--second", "noon").code == 2
