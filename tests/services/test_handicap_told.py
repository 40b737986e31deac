"""The handicap on a card explains itself: from index, tees and allowance to the strokes, step by step."""

import json
from pathlib import Path
from typing import Any

import pytest

from marram.demo import EVENT
from marram.services.cards.handicap_told import handicaps_told
from tests.services.scoring import scoring

RATINGS = [
    {"tees": "white", "course_rating": 71.4, "slope": 131, "par": 71},
    {"tees": "red", "course_rating": 69.9, "slope": 119, "par": 72},
]


def event(**more: Any) -> dict[str, Any]:
    """Return the invented event in net scores, its first player from tees of higher par."""
    document = json.loads(EVENT.read_text(encoding="utf-8"))
    document["players"][0] |= {"tees": "red", "handicap_index": 0.0}
    document["players"][1] |= {"tees": "white"}
    return {**document, "scores": ["net"], "allowance": 95, "tees": "white", "ratings": RATINGS, **more}


def told(folder: Path, document: dict[str, Any], name: str) -> tuple[str, tuple[str, ...]]:
    with scoring(folder, document) as here:
        side = here.competition.side_of[here.competition.people[name]]
        (found,) = [one for one in handicaps_told(here.competition, side) if name in one.title]
    return found.title, found.steps


def test_a_plus_handicap_from_tees_of_higher_par(tmp_path: Path) -> None:
    """(69.9 - 72) x 95 % is -1.995, so +2; the tees of par 72 among those of 71 give one back (Rules 6.1, 6.2)."""
    title, steps = told(tmp_path, event(), "Fenwin Dulsey")
    assert title == "Fenwin Dulsey: how the Playing Handicap +1 comes about, by the Rules of Handicapping"
    assert [one[one.rindex(" (") :] for one in steps] == [
        " (Rule 6.1a)",
        " (Rule 6.1a)",
        " (Rule 6.2a)",
        " (Rule 6.2a)",
        " (Rule 6.2b)",
        " (Rule 6.2b)",
    ]
    assert "(-2.1) × 95 % = -1.995" in steps[2]
    assert "-2, which is written +2" in steps[3]
    assert "(-2) + 1 = -1, which is written +1" in steps[5]


def test_nothing_is_added_where_each_plays_against_the_own_par(tmp_path: Path) -> None:
    """In Stableford the difference in par gives nothing (Rule 6.2b), and no step speaks of it."""
    title, steps = told(tmp_path, event(form_of_play="stableford"), "Fenwin Dulsey")
    assert "Playing Handicap +2 comes about" in title
    assert len(steps) == 4


def test_partners_who_share_a_ball_have_both_ways_told(tmp_path: Path) -> None:
    """Greensomes: each partner from index to share, 60 of the lower and 40 of the higher, the sum rounded once."""
    document = event(sides="foursomes", variation="greensomes")
    del document["allowance"]
    for number, one in enumerate(document["players"]):
        one["side"] = f"Pair {number // 2 + 1}"
    with scoring(tmp_path, document) as here:
        (who,) = [one for one, name in here.competition.players.items() if name == "Fenwin Dulsey"]
        side = here.competition.side_of[who]
        (found,) = handicaps_told(here.competition, side)
        has = here.competition.handicaps[side]
    shares = [one for one in found.steps if "Share" in one]
    assert ["60 %" in shares[0], "40 %" in shares[1]] == [True, True]
    assert sum("half of the differences in par" in one for one in found.steps) == 1
    assert f"upwards: {has.playing}" in found.steps[-1]


@pytest.mark.parametrize("given", [0, 14])
def test_a_handicap_that_was_given_has_no_steps(tmp_path: Path, given: int) -> None:
    """Nothing is made up about a Playing Handicap that came with the entry."""
    document = event()
    document["players"][0]["playing_handicap"] = given
    with scoring(tmp_path, document) as here:
        assert handicaps_told(here.competition, here.competition.people["Fenwin Dulsey"]) == ()
