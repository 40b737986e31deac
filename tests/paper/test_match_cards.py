"""Cards of a round of matches: whom a player plays against, and the strokes of that match on their holes.

Stroke indexes of the course of these tests are 1 to 18 in the order of the holes, so that n strokes fall on the first n holes.
"""

from typing import Any

import pytest

from marram.competition.conditions.reading import read_event_file
from marram.competition.results.card import Hole
from marram.paper.event.on_paper import OnPaper
from marram.paper.event.scorecards import scorecards
from marram.paper.event.starting_sheet import starting_sheet
from marram.paper.sheet import Card, Cards, Table

HOLES = tuple(Hole(number, 4, number) for number in range(1, 19))
NAMES = ("Ada", "Bo", "Cy", "Di")
HANDICAPS = (3, 10, 0, 25)


def cards(sides: str, names: tuple[str, ...] = NAMES, **more: Any) -> dict[str, Card]:
    """The cards of one group by the name on them; players have Playing Handicaps 3, 10, 0 and 25."""
    document = {
        "form_of_play": "match_play",
        "sides": sides,
        "scores": ["net"],
        "played_on": "2026-05-30",
        "match_may_end_tied": True,
        "players": [
            {"name": name, "playing_handicap": of, "side": f"Side {at // 2 + 1}"}
            for at, (name, of) in enumerate(zip(NAMES, HANDICAPS, strict=True))
            if name in names
        ],
        "starting_times": [{"time": "08:00", "tee": 1, "players": list(names)}],
        **more,
    }
    (part,) = scorecards(OnPaper(read_event_file(document), holes=HOLES)).parts
    assert isinstance(part, Cards)
    return {one.player: one for one in part.cards}


def received(card: Card) -> dict[str, int]:
    """The strokes of each line of strokes, by its heading."""
    return {
        line.heading: sum(int(one) for one in line.cells[:9] if one)
        + sum(int(one) for one in line.cells[10:19] if one)
        for line in card.lines
        if line.heading.startswith("Strokes")
    }


def test_two_singles_of_a_group_of_four() -> None:
    """The first plays the second and the third the fourth: Bo receives 10 - 3 = 7, Di 25 - 0 = 25, the others none."""
    found = cards("individual")

    assert {name: received(card) for name, card in found.items()} == {
        "Ada": {"Strokes received": 0},
        "Bo": {"Strokes received": 7},
        "Cy": {"Strokes received": 0},
        "Di": {"Strokes received": 25},
    }
    assert found["Ada"].note == "Against Bo"
    assert ("Strokes in the match", "25") in found["Di"].facts


def test_each_of_a_three_ball_has_a_line_against_each_other() -> None:
    """Ada 3, Bo 10, Cy 0 (Rule 21.4): Bo receives 7 from Ada and 10 from Cy, Ada 3 from Cy."""
    found = cards("three_ball", NAMES[:3])

    assert received(found["Bo"]) == {"Strokes against Ada": 7, "Strokes against Cy": 10}
    assert received(found["Ada"]) == {"Strokes against Bo": 0, "Strokes against Cy": 3}
    assert [one.heading for one in found["Cy"].lines if one.heading.startswith("Against")] == [
        "Against Ada",
        "Against Bo",
    ]


def test_a_four_ball_match_is_played_off_the_lowest_of_four() -> None:
    """Cy with 0 receives none, the others 3, 10 and 25 (Appendix C)."""
    found = cards("four_ball")

    assert [sum(received(found[name]).values()) for name in NAMES] == [3, 10, 0, 25]
    assert found["Ada"].note == "Against Cy / Di"


def test_foursomes_receive_the_difference_of_the_sides() -> None:
    """Half of 13.0 and half of 25.0 for sides with indexes that add up so: 6.5, so 7, and 12.5, so 13: six strokes."""
    rating = [{"tees": "blue", "course_rating": 72, "slope": 113, "par": 72}]
    players = [
        {"name": name, "handicap_index": index, "side": f"Side {at // 2 + 1}"}
        for at, (name, index) in enumerate(zip(NAMES, (3.0, 10.0, 0.0, 25.0), strict=True))
    ]
    found = cards("foursomes", ratings=rating, tees="blue", players=players)

    assert list(found) == ["Ada / Bo", "Cy / Di"]
    assert received(found["Ada / Bo"]) == {"Strokes received": 0}
    assert received(found["Cy / Di"]) == {"Strokes received": 6}


def test_a_round_with_other_sides_has_their_cards() -> None:
    """Foursomes in the first round, singles in the second: the second has a card for each player."""
    days = [{"name": "Second", "played_on": "2026-05-31", "sides": "individual"}]
    document: dict[str, Any] = {
        "form_of_play": "match_play",
        "sides": "foursomes",
        "scores": ["gross"],
        "played_on": "2026-05-30",
        "round": "First",
        "rounds": days,
        "players": [{"name": name, "side": f"Side {at // 2 + 1}"} for at, name in enumerate(NAMES)],
    }
    found = read_event_file(document)
    (first,) = scorecards(OnPaper(found, 1, HOLES)).parts
    (second,) = scorecards(OnPaper(found, 2, HOLES)).parts

    assert isinstance(first, Cards)
    assert isinstance(second, Cards)
    assert [one.player for one in first.cards] == ["Ada / Bo", "Cy / Di"]
    assert [one.player for one in second.cards] == list(NAMES)


@pytest.mark.parametrize(("sides", "names"), [("individual", NAMES[:1]), ("four_ball", NAMES[:3])])
def test_who_meets_nobody_is_told_so(sides: str, names: tuple[str, ...]) -> None:
    """A group that makes no match has cards without strokes, and says why."""
    assert all("it is not known who plays against whom" in one.note for one in cards(sides, names).values())


def test_a_card_of_a_match_has_no_marker() -> None:
    """Scores are the opponents' to know and the result is agreed (Rule 3.2): no line or signature is a marker's."""
    for card in (*cards("individual").values(), *cards("four_ball").values(), *cards("foursomes").values()):
        blank = [line.heading for line in card.lines if line.blank]
        assert blank == ["Score", "Won, lost, tied", "Opponent’s score"]
        assert card.sign == ("Player", "Opponent")


def test_in_a_three_ball_each_opponent_has_a_line() -> None:
    """Two matches at once (Rule 21.4): results against both, and the scores of both by name."""
    ada = cards("three_ball", NAMES[:3])["Ada"]
    assert [line.heading for line in ada.lines if line.blank] == [
        "Score",
        "Against Bo",
        "Against Cy",
        "Score of Bo",
        "Score of Cy",
    ]


def listed(sides: str, names: tuple[str, ...] = NAMES, form: str = "match_play") -> list[list[str]]:
    """The lines of the starting sheet of one group, from its time on."""
    found = read_event_file(
        {
            "form_of_play": form,
            "sides": sides,
            "players": [{"name": name, "side": f"Side {at // 2 + 1}"} for at, name in enumerate(NAMES)],
            "starting_times": [{"time": "08:00", "tee": 1, "players": list(names)}],
        }
    )
    part = starting_sheet(OnPaper(found)).parts[0]
    assert isinstance(part, Table)
    return [[cell.words for cell in row[1:]] for row in part.rows]


def test_the_starting_sheet_of_matches_says_who_meets_whom() -> None:
    """As the cards have it: pairs against pairs, and of four players alone two matches; elsewhere players beside each other."""
    assert listed("four_ball") == [["08:00", "1", "Ada / Bo", "Cy / Di"]]
    assert listed("foursomes") == [["08:00", "1", "Ada / Bo", "Cy / Di"]]
    assert listed("individual") == [["08:00", "1", "Ada", "Bo"], ["08:00", "1", "Cy", "Di"]]
    assert listed("four_ball", form="stroke_play") == [["08:00", "1", *NAMES]]


def test_who_is_in_no_match_or_in_several_is_still_on_the_starting_sheet() -> None:
    """In Three-Ball each of three meets the others, and a third player alone meets nobody: all stand beside each other."""
    assert listed("three_ball", NAMES[:3]) == [["08:00", "1", *NAMES[:3]]]
    assert listed("individual", NAMES[:3]) == [["08:00", "1", *NAMES[:3]]]
