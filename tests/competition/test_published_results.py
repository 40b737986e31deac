"""Published values about results and ties are reproduced; their sources stand in the file they are read from."""

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any

from marram.competition.conditions.choices import CountbackStrokes, MaximumBy, Score, TieMethod
from marram.competition.conditions.event_file import Maximum, Ties
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import NO_SCORE, Hole, RoundCard, Row
from marram.competition.results.comparisons import Compared, Comparison, compared, countback
from marram.competition.results.play_off import play_off_strokes
from marram.competition.results.scoring import (
    Scoring,
    hole_value,
    maximum_for,
    part_of_handicap,
    points,
    rounded_half_up,
    side_values,
    won_or_lost,
)
from marram.competition.results.side_score import side_score
from marram.competition.results.terms import Terms
from marram.rules.facts.conditions import FormOfPlay
from tests.competition.making import COURSE, card, strokes_on
from tests.competition.reference import reference

STABLEFORD = Scoring(FormOfPlay.STABLEFORD, Score.NET)
PAR = Scoring(FormOfPlay.PAR_BOGEY, Score.NET)


def of(ident: str) -> tuple[dict[str, Any], dict[str, Any]]:
    """Return what a published example gives and what it expects."""
    one = reference()[ident]
    return one["inputs"], one["expected"]


def named_holes(comparisons: Sequence[Comparison]) -> list[str]:
    """Return the holes that are compared, as the published text names them on a round of 18."""
    return [
        "last round"
        if one.by is Compared.LAST_ROUND
        else str(one.end)
        if one.holes == 1
        else f"{one.first + 1}-{one.end}"
        for one in comparisons
    ]


def test_conventions_01_halves() -> None:
    """A half is rounded upwards, also below zero."""
    _, expected = of("conventions-01")
    assert "-1.5 -> -1" in expected["halves"]
    assert rounded_half_up(Fraction(-3, 2)) == -1
    assert rounded_half_up(Fraction(5, 2)) == 3


def test_stableford_01_points() -> None:
    """Points against the target are those of Rule 21.1b."""
    _, expected = of("stableford-01")
    for over, words in ((2, ">1_over"), (1, "1_over"), (0, "target"), (-1, "1_under"), (-2, "2_under")):
        assert points(4, 4 + over) == expected[words]
    assert points(5, 2) == expected["3_under"]
    assert points(5, 1) == expected["4_under"]


def test_stableford_02_no_score_and_the_winner() -> None:
    """A hole without a score brings nothing and disqualifies nobody; the most points win."""
    _, expected = of("stableford-02")
    gross = [4, 5, 3, *[hole.par for hole in COURSE[3:]]]
    board = LeaderBoard(
        Terms(replace(STABLEFORD, score=Score.GROSS)),
        [card("full", gross), card("less", [NO_SCORE, *gross[1:]])],
    )
    assert side_score(STABLEFORD, "less", [card("less", [NO_SCORE, *gross[1:]])]).rounds[0].values[0] == 0
    assert expected["no_holeout"] == 0
    assert [(one.side, one.place) for one in board.places] == [("full", 1), ("less", 2)]
    assert expected["winner"] == "most points"


def test_stableford_04_and_06_examples() -> None:
    """The two published examples of a hole give their points."""
    for ident in ("stableford-04", "stableford-06"):
        given, expected = of(ident)
        received = given["playing_handicap"] // 18 + (given["si"] <= given["playing_handicap"] % 18)
        hole = Hole(1, given["par"], given["si"])
        assert hole_value(STABLEFORD, hole, given["gross"], received) == expected["points"]
        assert given["gross"] - received == expected.get("net", given["gross"] - received)


def test_par_bogey_01_one_hole_at_most() -> None:
    """A hole is won, tied or lost, and no more than one is lost at a hole; no return loses it."""
    _, expected = of("par-bogey-01")
    assert [won_or_lost(4, net) for net in (3, 4, 5, 9)] == [
        expected["win"],
        expected["tie"],
        expected["loss"],
        expected["loss"],
    ]
    assert hole_value(PAR, Hole(1, 4, 1), NO_SCORE, 0) == expected["loss"]


def test_par_bogey_05_a_full_card() -> None:
    """A whole card against par gives the published result of every hole."""
    given, expected = of("par-bogey-05")
    holes = [
        Hole(number, par, index)
        for number, (par, index) in enumerate(zip(given["par"], given["si"], strict=True), start=1)
    ]
    gross = [NO_SCORE if one is None else one for one in given["gross"]]
    one = card("player", gross, given["playing_handicap"], holes=holes)
    assert list(side_values(PAR, one)) == expected["by_hole"]
    assert side_score(PAR, "player", [one]).total == expected["result"]


def test_maximum_score_01_02_06() -> None:
    """The maximum is two times par, a number, or net double bogey, and stands where there is no score."""
    _, forms = of("maximum-score-01")
    assert forms["forms"] == ["2 x par", "fixed number", "net double bogey"]
    given, expected = of("maximum-score-06")
    double = Maximum(MaximumBy.TIMES_PAR, 2)
    assert [maximum_for(double, par, 0) for par in given["pars"]] == expected["max"]
    assert maximum_for(Maximum(MaximumBy.STROKES, 10), 3, 1) == 10
    assert maximum_for(Maximum(MaximumBy.NET_OVER_PAR, 2), 4, 1) == 7
    scoring = Scoring(FormOfPlay.MAXIMUM_SCORE, Score.NET, maximum=double)
    assert of("maximum-score-02")[1]["blank"] == "counts as maximum"
    assert hole_value(scoring, Hole(1, 4, 1), NO_SCORE, 1) == 7
    assert hole_value(scoring, Hole(1, 4, 1), 12, 1) == 7
    assert hole_value(scoring, Hole(1, 4, 1), 5, 1) == 4


def test_four_ball_11_the_lower_of_two() -> None:
    """The side's score is the lower one; of one who completes the hole alone it is that; of none there is none."""
    _, expected = of("four-ball-11")
    assert expected["score"] == "lower of two"
    hole = (Hole(1, 4, 1),)
    for a, b, side in ((4, 5, 4), (NO_SCORE, 5, 5), (NO_SCORE, NO_SCORE, None)):
        one = RoundCard("pair", 1, hole, (Row("a", (a,)), Row("b", (b,))))
        assert side_values(Scoring(), one) == (side,)


def test_four_ball_13_only_a_gross_score_counts() -> None:
    """A net score on the card is none: the side has the partner's gross score less that partner's strokes."""
    given, expected = of("four-ball-13")
    rows = (
        Row("A", (given["a_gross_entered"],), (given["a_strokes"],)),
        Row("B", (NO_SCORE,), (given["b_strokes"],)),
    )
    one = RoundCard("pair", 1, (Hole(1, 4, 1),), rows)
    assert side_values(Scoring(score=Score.NET), one) == (expected["side_net"],)


def test_countback_01_order_of_comparisons() -> None:
    """Cards are matched in the published order."""
    _, expected = of("countback-01")
    assert named_holes(countback(18, 2)) == expected["order"]


def test_countback_02_starts_from_several_tees() -> None:
    """A card holds its holes by number, so that the last nine are 10 to 18 whatever hole the group began at."""
    _, expected = of("countback-02")
    last_nine = next(one for one in countback(18, 1) if one.holes == 9)
    numbers = [hole.number for hole in COURSE[last_nine.first : last_nine.end]]
    assert f"holes {numbers[0]}-{numbers[-1]}" == expected["last_nine"]


def test_countback_03_and_04_exact_fractions() -> None:
    """One half, third, sixth and eighteenth of the handicap are taken off, and never rounded."""
    _, expected = of("countback-03")
    for holes, words in expected.items():
        assert part_of_handicap(1, int(holes), 18) == Fraction(words)
    assert of("countback-04")[1]["rounding"] == "none"
    assert part_of_handicap(11, 9, 18) == Fraction(11, 2)


def back_nine(handicap: int, gross: int, strokes: CountbackStrokes, on_back: int) -> Fraction | None:
    """Return a net back nine of a card whose strokes fall on so many holes of it."""
    ends = [4] * 9
    for at in range(gross - sum(ends)):
        ends[at % 9] += 1
    received = (
        (1,) * (handicap - on_back) + (0,) * (9 - handicap + on_back) + (1,) * on_back + (0,) * (9 - on_back)
    )
    one = RoundCard("player", 1, COURSE, (Row("player", (4,) * 9 + tuple(ends), received),), handicap)
    scoring = Scoring(score=Score.NET)
    return compared(
        scoring, strokes, side_score(scoring, "player", [one]), Comparison(Compared.LAST_HOLES, 9, 18)
    )


def test_countback_05_09_10_the_same_card_by_every_method() -> None:
    """A handicap of 11 and a back nine of 40: 34 1/2 by fraction, 34 by stroke index, 34 where halves count as one."""
    given, expected = of("countback-09")
    args = given["handicap"], given["back_nine_gross"]
    on_back = given["strokes_on_back_by_si"]
    assert back_nine(*args, CountbackStrokes.EXACT_FRACTION, on_back) == Fraction(
        str(expected["net_by_fraction"])
    )
    assert back_nine(*args, CountbackStrokes.BY_STROKE_INDEX, on_back) == expected["net_by_si"]
    assert of("countback-05")[1]["rounding"] == "half up to whole strokes"
    given, expected = of("countback-10")
    rounded = back_nine(
        given["handicap"], given["back_nine_gross"], CountbackStrokes.ROUNDED_FRACTION, on_back
    )
    assert rounded == expected["net"]


def test_countback_06_results_of_holes_as_they_stand() -> None:
    """In Stableford the points of the holes are compared; nothing is taken off them."""
    _, expected = of("countback-06")
    assert expected["stableford"] == "points of the holes"
    one = card("player", [hole.par for hole in COURSE], 9)
    score = side_score(STABLEFORD, "player", [one])
    last = Comparison(Compared.LAST_HOLES, 9, 18)
    on_back = sum(strokes_on(COURSE, 9)[9:])
    for strokes in CountbackStrokes:
        assert compared(STABLEFORD, strokes, score, last) == 18 + on_back


def test_ties_playoff_02_is_a_new_round() -> None:
    """What a play-off decides changes no total of the competition."""
    assert of("ties-playoff-02")[1]["new_round"]
    terms = Terms(Scoring(), ties=Ties((TieMethod.PLAY_OFF,), (TieMethod.SHARED,)))
    tied = [card(side, [4] * 18) for side in ("a", "b")]
    after = LeaderBoard(replace(terms, decided={TieMethod.PLAY_OFF: ("b",)}), tied)
    assert [one.to_decide for one in LeaderBoard(terms, tied).places] == [TieMethod.PLAY_OFF] * 2
    assert [(one.side, one.place, one.score.total) for one in after.places] == [("b", 1, 72), ("a", 2, 72)]


def test_ties_playoff_04_strokes_over_three_holes() -> None:
    """A handicap of 15 gives three strokes over three holes."""
    given, expected = of("ties-playoff-04")
    assert play_off_strokes(given["handicap"], given["holes"]) == expected["strokes"]
