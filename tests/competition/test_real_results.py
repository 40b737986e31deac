"""Result lists that were really published, recomputed: scores only, without names; the pages were read in stored copies.

Hole by hole these lists tell nothing, so that each round is spread over eighteen holes; totals, places, ties and the cut do not
depend on how.
"""

from collections.abc import Mapping, Sequence

from marram.competition.conditions.choices import Score
from marram.competition.conditions.event_file import Cut
from marram.competition.results.board import LeaderBoard, Standing
from marram.competition.results.card import Out, OutKind, RoundCard, Row
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.rules.facts.conditions import FormOfPlay
from tests.competition.making import COURSE

GROSS = Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS)


def cards(rounds: Mapping[str, Sequence[int]]) -> list[RoundCard]:
    """Return a card for each round, its strokes spread evenly, the higher ones first."""
    return [
        RoundCard(
            side, number, COURSE, (Row(side, tuple(total // 18 + (hole < total % 18) for hole in range(18))),)
        )
        for side, totals in rounds.items()
        for number, total in enumerate(totals, start=1)
    ]


def places(board: LeaderBoard) -> list[tuple[int | None, bool, int]]:
    return [(one.place, one.shared, one.score.total) for one in board.places]


def test_a_county_cup() -> None:
    """78; four with 79; two with 80 (a county's cup over one round, ayrshiregolf.blogspot.com, June 2008)."""
    scores = [80, 79, 78, 79, 79, 80, 79]
    board = LeaderBoard(
        Terms(GROSS), cards({f"player {number}": [score] for number, score in enumerate(scores)})
    )
    assert places(board) == [(1, False, 78), *[(2, True, 79)] * 4, *[(6, True, 80)] * 2]


QUALIFYING = {
    "a": ((74, 68), 142),
    "b": ((70, 78), 148),
    "c": ((74, 76), 150),
    "d": ((75, 76), 151),
    "e": ((75, 77), 152),
    "f": ((74, 78), 152),
    "g": ((76, 78), 154),
    "h": ((79, 76), 155),
    "i": ((74, 81), 155),
    "j": ((75, 80), 155),
    "k": ((80, 77), 157),
    "l": ((86, 78), 164),
    "m": ((82, 85), 167),
}
"""Rounds and printed totals: 36 holes of qualifying for a national amateur championship (gilliankirkwood.com, June 2006)."""


def test_qualifying_over_36_holes() -> None:
    """Every printed total is the sum of its rounds; those of 152 and better went on, the first so many and ties."""
    every = {side: rounds for side, (rounds, _) in QUALIFYING.items()}
    terms = Terms(GROSS, (18, 18, 18), Cut(after_round=2, places=5, ties=True))
    board = LeaderBoard(terms, cards(every))
    assert {one.side: one.score.total for one in board.places} == {
        side: total for side, (_, total) in QUALIFYING.items()
    }
    assert board.through == frozenset("abcdef")
    missed = [
        (one.side, one.place, one.shared) for one in board.places if one.standing is Standing.MISSED_CUT
    ]
    assert missed == [
        ("g", 7, False),
        ("h", 8, True),
        ("i", 8, True),
        ("j", 8, True),
        ("k", 11, False),
        ("l", 12, False),
        ("m", 13, False),
    ]


def test_a_misprint_of_the_same_list_is_found() -> None:
    """The list has 79 and 77 under 154; they are 156."""
    (one,) = LeaderBoard(Terms(GROSS, (18, 18)), cards({"n": (79, 77)})).places
    assert one.score.total == 156  # printed: 154


def test_an_international_over_72_holes() -> None:
    """67, 67, 64, 74 won with 272 and 64, 70, 70, 71 was third with 275, a clear one (golfbible.co.uk, December 2018).

    The second is printed with his last round, 66, and one stroke behind: 273; his others are made up to fit.
    """
    board = LeaderBoard(
        Terms(GROSS, (18,) * 4),
        cards({"third": (64, 70, 70, 71), "second": (69, 69, 69, 66), "first": (67, 67, 64, 74)}),
    )
    assert [(one.side, one.place, one.score.total) for one in board.places] == [
        ("first", 1, 272),
        ("second", 2, 273),
        ("third", 3, 275),
    ]


def test_a_major_by_its_rounds() -> None:
    """65, 69, 73 and 69 are 276, four ahead of two on 280 who share the second place (golfbible.co.uk, April 2023).

    The rounds of those two are not on the page and are made up to fit; a third one who withdrew has no place.
    """
    given = {"first": (65, 69, 73, 69), "x": (70, 70, 70, 70), "y": (67, 67, 73, 73), "gone": (73, 75)}
    board = LeaderBoard(Terms(GROSS, (18,) * 4), cards(given), out=[Out("gone", OutKind.WITHDRAWN, round=3)])
    assert places(board)[:3] == [(1, False, 276), (2, True, 280), (2, True, 280)]
    assert places(board)[3][0] is None
