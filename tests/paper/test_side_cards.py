"""A side has one card: where partners share a ball (Rule 22.1), and where the better of their balls counts (Rule 23.2b)."""

from pathlib import Path
from typing import Any

import pytest

from marram.competition.conditions.reading import read_event_file
from marram.course import load
from marram.demo import COURSE, EVENT
from marram.errors import InputError
from marram.paper.event.on_paper import OnPaper
from marram.paper.event.scorecards import scorecards
from marram.paper.sheet import Card, Cards
from marram.schema import read_json
from marram.services.sheets.event_papers import SheetName
from marram.services.sheets.event_papers_kept import papers_of_records
from tests.paper.events import EIGHTEEN
from tests.services.scoring import scoring

FOUR = (
    ("Ada Brill", "Pair 1", 12),
    ("Cleo Dunn", "Pair 2", 0),
    ("Ben Coyle", "Pair 1", 3),
    ("Dov Ester", "Pair 2", 5),
)


def conditions(**more: Any) -> dict[str, Any]:
    players = [{"name": name, "side": side, "playing_handicap": has} for name, side, has in FOUR]
    starts = [{"time": "08:20", "tee": 10, "players": [name for name, _, _ in FOUR]}]
    told = {"form_of_play": "stroke_play", "scores": ["net"], "players": players, "starting_times": starts}
    return {**told, **more}


def cards(**more: Any) -> tuple[Card, ...]:
    (part,) = scorecards(OnPaper(read_event_file(conditions(**more)), 1, EIGHTEEN)).parts
    assert isinstance(part, Cards)
    return part.cards


def headings(card: Card) -> list[str]:
    return [one.heading for one in card.lines]


def test_partners_who_each_play_a_ball_have_one_card_with_a_line_for_each() -> None:
    """Each line has the Playing Handicap behind the name and its strokes above it; nobody's strokes are another's."""
    first, second = cards(sides="four_ball")
    assert (first.player, second.player) == ("Ada Brill / Ben Coyle", "Cleo Dunn / Dov Ester")
    strokes = "Strokes received"
    assert headings(first)[2:] == [
        strokes,
        "Ada Brill (12)",
        strokes,
        "Ben Coyle (3)",
        "Side",
        "Marker’s own score",
    ]
    assert headings(second)[2:] == ["Cleo Dunn (0)", strokes, "Dov Ester (5)", "Side", "Marker’s own score"]
    received = [one.cells[-1] for one in first.lines if one.heading == strokes]
    assert received == ["12", "3"]
    assert ("Time", "08:20") in first.facts
    assert ("Side", "Pair 1") in first.facts


def test_partners_who_share_a_ball_have_one_line_and_one_handicap() -> None:
    """Foursomes: half of both together (Appendix C). Of 12.0 and 3.0 with Slope 113 and rating equal to par: 7.5, so 8."""
    players = [{"name": name, "side": side, "handicap_index": has} for name, side, has in FOUR]
    ratings = [{"tees": "white", "course_rating": 72, "slope": 113, "par": 72}]
    first, _ = cards(sides="foursomes", players=players, ratings=ratings, tees="white")
    assert headings(first)[2:] == ["Strokes received", "Score", "Marker’s own score"]
    assert first.lines[2].cells[-1] == "8"
    assert ("Playing Handicap", "8") in first.facts


def test_stableford_of_partners_has_a_line_for_the_points_of_the_side() -> None:
    (first, _) = cards(sides="four_ball", form_of_play="stableford")
    assert headings(first)[-2:] == ["Points", "Marker’s own score"]


def test_in_a_match_of_four_balls_each_player_keeps_a_card() -> None:
    """A match has no card that is returned; strokes are those of the player."""
    assert [one.player for one in cards(sides="four_ball", form_of_play="match_play")] == [
        name for name, _, _ in FOUR
    ]


def test_who_plays_with_whom_is_asked_for() -> None:
    players = [{"name": "Ada Brill", "side": "Pair 1"}, {"name": "Ben Coyle"}]
    with pytest.raises(InputError, match="not known of Ben Coyle"):
        cards(sides="foursomes", players=players, starting_times=[])


def test_sides_kept_in_records_have_their_cards(tmp_path: Path) -> None:
    event = {**read_json(EVENT, "event"), **conditions(sides="four_ball"), "rounds": []}
    with scoring(tmp_path, event) as there:
        papers = papers_of_records(there.records, None, course=load(COURSE), round_=1)
        (part,) = papers.sheet(SheetName("scorecards")).parts
    assert isinstance(part, Cards)
    assert sorted(one.player for one in part.cards) == ["Ada Brill / Ben Coyle", "Cleo Dunn / Dov Ester"]
