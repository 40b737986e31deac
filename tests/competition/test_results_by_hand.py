"""Results worked out by hand before they were computed here: each hole, each fraction, each point."""

from collections.abc import Mapping
from fractions import Fraction

import pytest

from marram.competition.conditions.choices import MaximumBy, Score, TeamsBy, TieMethod
from marram.competition.conditions.event_file import Cut, Maximum, Teams, Ties
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import NO_SCORE, Hole, HoleScore, Out, OutKind, RoundCard, Row
from marram.competition.results.comparisons import countback
from marram.competition.results.scoring import Scoring, hole_value, part_of_handicap, side_values
from marram.competition.results.series import order_of_merit
from marram.competition.results.side_score import side_score
from marram.competition.results.teams import team_results
from marram.competition.results.terms import Terms
from marram.rules.facts.conditions import FormOfPlay
from tests.competition.making import COURSE, PARS, card

MATCHING = Ties((TieMethod.COUNTBACK,), (TieMethod.COUNTBACK,))
STABLEFORD = Scoring(FormOfPlay.STABLEFORD, Score.NET)
NINE = COURSE[:9]
LEVEL = list(PARS)
LEVEL_NINE = [4, 5, 3, 4, 4, 4, 3, 5, 4]


def over(*holes: int, holes_of: int = 18) -> list[int]:
    """Return a card in par with one over on some holes, two over where one is named twice."""
    return [par + holes.count(number) for number, par in enumerate(PARS[:holes_of], start=1)]


def order(board: LeaderBoard) -> list[tuple[str, int]]:
    """Return who has a place, and which."""
    return [(one.side, one.place) for one in board.places if one.place is not None]


def test_a_tie_over_nine_holes_goes_back_over_six_three_and_one() -> None:
    """As a union for juniors prints it for nine holes (Junior Golf Scotland): the last six, the last three, the last."""
    assert [one.holes for one in countback(9, 1)] == [6, 3, 1]
    terms = Terms(Scoring(), (9,), ties=MATCHING)
    for early, late in ((3, 4), (6, 7), (8, 9)):
        cards = [
            card("late", over(late, holes_of=9), holes=NINE),
            card("early", over(early, holes_of=9), holes=NINE),
        ]
        assert order(LeaderBoard(terms, cards)) == [("early", 1), ("late", 2)]
    same = [card(side, over(1, holes_of=9), holes=NINE) for side in ("a", "b")]
    assert order(LeaderBoard(terms, same)) == [("a", 1), ("b", 1)]


@pytest.mark.parametrize(
    ("handicap", "of", "parts"),
    [
        (15, 18, {9: "15/2", 6: "5", 3: "5/2", 1: "5/6"}),
        (7, 9, {6: "14/3", 3: "7/3", 1: "7/9"}),
        (-3, 18, {9: "-3/2", 6: "-1", 3: "-1/2", 1: "-1/6"}),
        (54, 18, {9: "27", 6: "18", 3: "9", 1: "3"}),
    ],
)
def test_the_part_of_a_handicap(handicap: int, of: int, parts: Mapping[int, str]) -> None:
    """A club prints 15 / 2 = 7.5 for the last nine and a third for six (Le Turf); two others a half, a third, a sixth."""
    assert {holes: part_of_handicap(handicap, holes, of) for holes in parts} == {
        holes: Fraction(part) for holes, part in parts.items()
    }


def test_a_net_tie_over_nine_holes_by_fractions_of_nine() -> None:
    """45 less 9 and 42 less 6; the last six are 29 less 6 and 28 less 4."""
    terms = Terms(Scoring(score=Score.NET), (9,), ties=MATCHING)
    nine = RoundCard("nine", 1, NINE, (Row("nine", (6, 6, 4, 5, 5, 5, 4, 5, 5)),), 9)
    six = RoundCard("six", 1, NINE, (Row("six", (5, 6, 3, 5, 5, 5, 3, 5, 5)),), 6)
    board = LeaderBoard(terms, [six, nine])
    assert [one.score.total for one in board.places] == [36, 36]
    assert order(board) == [("nine", 1), ("six", 2)]


def test_three_who_tie_are_parted_one_comparison_after_another() -> None:
    """The last nine put one behind two; the last six part these."""
    cards = [card("c", over(13)), card("a", over(11)), card("b", over(2))]
    board = LeaderBoard(Terms(Scoring(), ties=MATCHING), cards)
    assert order(board) == [("b", 1), ("a", 2), ("c", 3)]


@pytest.mark.parametrize(
    ("par", "gross", "received", "points"),
    [
        (4, 5, 1, 2),
        (4, 8, 3, 1),
        (5, 8, 3, 2),
        (3, 2, -1, 2),
        (3, 3, -1, 1),
        (3, 1, 2, 6),
        (5, 7, 0, 0),
        (4, 1, 0, 5),
        (4, 9, 3, 0),
    ],
)
def test_points(par: int, gross: int, received: int, points: int) -> None:
    """Rule 21.1b: two for the target, one less or more for each stroke, none below one."""
    assert hole_value(STABLEFORD, Hole(1, par, 1), gross, received) == points


@pytest.mark.parametrize(
    ("gross", "received", "won"),
    [(4, 0, 0), (4, -1, -1), (3, -1, 0), (2, -1, 1), (6, 2, 0), (5, 2, 1), (9, 2, -1), (NO_SCORE, 3, -1)],
)
def test_a_hole_against_par(gross: HoleScore, received: int, won: int) -> None:
    """Rule 21.3b on a par 4."""
    assert hole_value(Scoring(FormOfPlay.PAR_BOGEY, Score.NET), Hole(1, 4, 1), gross, received) == won


@pytest.mark.parametrize(
    ("maximum", "par", "gross", "received", "net"),
    [
        (Maximum(MaximumBy.NET_OVER_PAR, 2), 5, 12, 2, 7),
        (Maximum(MaximumBy.NET_OVER_PAR, 2), 4, 6, -1, 6),  # five at most, and one given back
        (Maximum(MaximumBy.TIMES_PAR, 2), 3, 7, 1, 5),
        (Maximum(MaximumBy.STROKES, 8), 5, NO_SCORE, 0, 8),
        (Maximum(MaximumBy.STROKES, 8), 5, 8, 1, 7),
    ],
)
def test_a_maximum(maximum: Maximum, par: int, gross: HoleScore, received: int, net: int) -> None:
    """Rule 21.2: the gross score is what is limited, strokes are taken off after it."""
    scoring = Scoring(FormOfPlay.MAXIMUM_SCORE, Score.NET, maximum=maximum)
    assert hole_value(scoring, Hole(1, par, 1), gross, received) == net


def test_partners_of_whom_one_or_none_has_a_score() -> None:
    """Rules 21.1 and 23.2 in Four-Ball Stableford: the better points of a hole, none where neither has a score."""
    holes = (Hole(1, 4, 1), Hole(2, 4, 2), Hole(3, 3, 3), Hole(4, 5, 4))
    rows = (
        Row("A", (5, NO_SCORE, NO_SCORE, 4), (1, 1, 0, 0)),
        Row("B", (4, 6, NO_SCORE, 9), (0, 2, 1, 1)),
    )
    one = RoundCard("pair", 1, holes, rows)
    assert side_values(STABLEFORD, one) == (2, 2, 0, 3)
    board = LeaderBoard(Terms(STABLEFORD, (4,)), [one])
    assert order(board) == [("pair", 1)]
    assert board.places[0].score.total == 7


FIVE = {"a": 70, "b": 71, "c": 72, "d": 72, "e": 74}


@pytest.mark.parametrize(
    ("cut", "through"),
    [
        (Cut(1, 3), "abcd"),
        (Cut(1, 3, ties=False), "ab"),
        (Cut(1, 4), "abcd"),
        (Cut(1, 1, within=1), "ab"),
        (Cut(1, 1, within=2), "abcd"),
        (Cut(1, within=4), "abcde"),
    ],
)
def test_a_tie_at_the_cut(cut: Cut, through: str) -> None:
    """70, 71, 72, 72, 74."""
    firsts = {side: [LEVEL[0] + total - sum(LEVEL), *LEVEL[1:]] for side, total in FIVE.items()}
    board = LeaderBoard(
        Terms(Scoring(), (18, 18), cut), [card(side, gross) for side, gross in firsts.items()]
    )
    assert "".join(sorted(board.through or ())) == through


def three_rounds(side: str, *totals: int) -> list[RoundCard]:
    """Return cards of some totals, all of it on the first hole."""
    return [
        card(side, [LEVEL[0] + total - sum(LEVEL), *LEVEL[1:]], round_=round_)
        for round_, total in enumerate(totals, start=1)
    ]


def test_a_team_drops_a_score_each_round_and_one_of_three_is_out_of_a_round() -> None:
    """x: 142 + 145 + 146 = 433, where x2 is out of the second round; y: 142 + 146 + 147 = 435."""
    cards = [
        *three_rounds("x1", 72, 71, 73),
        *three_rounds("x2", 70, 69, 73),
        *three_rounds("x3", 75, 74, 80),
        *three_rounds("y1", 71, 72, 72),
        *three_rounds("y2", 71, 74, 75),
        *three_rounds("y3", 90, 74, 76),
    ]
    teams = {"x": ["x1", "x2", "x3"], "y": ["y1", "y2", "y3"]}
    out = [Out("x2", OutKind.DISQUALIFIED, "3.3b(2)", round=2)]
    board = LeaderBoard(Terms(Scoring(), (18,) * 3), cards, out=out)
    found = team_results(board, teams, Teams(3, 2))
    assert [(one.team, one.place, one.total) for one in found] == [("x", 1, 433), ("y", 2, 435)]
    worse = LeaderBoard(
        Terms(Scoring(), (18,) * 3), cards, out=[*out, Out("x3", OutKind.DISQUALIFIED, "1.2b", round=2)]
    )
    assert [one.place for one in team_results(worse, teams, Teams(3, 2))] == [1, None]
    assert [one.place for one in board.places if one.side == "x2"] == [None]


def test_best_two_of_three_over_the_event() -> None:
    """Totals 218 and 216 against 219 and 214: 434 and 433."""
    cards = [
        *three_rounds("x1", 72, 73, 73),
        *three_rounds("x2", 72, 72, 72),
        *three_rounds("x3", 80, 80, 80),
        *three_rounds("y1", 71, 74, 74),
        *three_rounds("y2", 70, 72, 72),
        *three_rounds("y3", 72, 74, 75),
    ]
    board = LeaderBoard(Terms(Scoring(), (18,) * 3), cards)
    teams = {"x": ["x1", "x2", "x3"], "y": ["y1", "y2", "y3"]}
    found = team_results(board, teams, Teams(3, 2, TeamsBy.EVENT))
    assert [(one.team, one.total) for one in found] == [("y", 433), ("x", 434)]


def test_an_order_of_merit_with_a_shared_third_place() -> None:
    """25, 18, 15, 12, the best two count: 40 for c, 38 1/2 for a and d (25 and the mean of 15 and 12), 36 for b."""

    def event(**totals: int) -> LeaderBoard:
        cards = [card(side, [LEVEL[0] + plus, *LEVEL[1:]]) for side, plus in totals.items()]
        return LeaderBoard(Terms(Scoring()), cards)

    series = [event(a=0, b=1, c=2), event(c=0, b=1, a=2, d=2), event(d=0, b=1, c=2)]
    merit = order_of_merit([one.places for one in series], (25, 18, 15, 12), best=2)
    assert [(one.side, one.place, one.points) for one in merit] == [
        ("c", 1, 40),
        ("a", 2, Fraction(77, 2)),
        ("d", 2, Fraction(77, 2)),
        ("b", 4, 36),
    ]


@pytest.mark.parametrize("kind", list(OutKind))
def test_who_is_out_has_no_place_and_takes_none(kind: OutKind) -> None:
    """The next one moves up."""
    cards = [card("out", LEVEL), card("one", over(1)), card("two", over(1, 2))]
    board = LeaderBoard(Terms(Scoring()), cards, out=[Out("out", kind)])
    assert order(board) == [("one", 1), ("two", 2)]


def test_a_net_round_of_a_plus_player_and_of_one_with_more_than_36() -> None:
    """Level par is 75 at plus three, and 32 at forty; the card says on which holes."""
    holes = tuple(Hole(number, par, number) for number, par in enumerate(PARS, start=1))
    plus = RoundCard("plus", 1, holes, (Row("plus", PARS, (*[0] * 15, -1, -1, -1)),), -3)
    forty = RoundCard("forty", 1, holes, (Row("forty", PARS, (3, 3, 3, 3, *[2] * 14)),), 40)
    net = Scoring(score=Score.NET)
    assert [side_score(net, one.side, [one]).total for one in (plus, forty)] == [75, 32]
    assert [side_score(STABLEFORD, one.side, [one]).total for one in (plus, forty)] == [33, 76]
