"""Handicaps worked out by hand from the published formulas before they were computed here; and further printed examples.

The formulas are those of Rules 5.1, 5.2, 5.8, 5.9, 6.1 and 6.2 and Appendices C and E of the Rules of Handicapping; a test
that names a page reproduces what that page prints.
"""

from datetime import date, timedelta
from fractions import Fraction

import pytest

from marram.handicap.adjusted_score import Ending, HolePlayed, adjusted_gross_score
from marram.handicap.allowances import Allowance, Format, allowance
from marram.handicap.course_handicaps import CourseHandicap, course_handicap
from marram.handicap.differential import combine_nines, nine_hole_differential, score_differential
from marram.handicap.editions import Edition
from marram.handicap.index import handicap_index
from marram.handicap.matches import match_strokes
from marram.handicap.playing_handicaps import playing_handicap, side_handicap
from marram.handicap.rated_tee import RatedTee
from marram.handicap.scoring_record import Posted, revise
from marram.handicap.strokes import strokes_by_hole


@pytest.mark.parametrize(
    ("index", "rating", "slope", "par", "course"),
    [
        ("12.3", "70.4", 128, 72, 12),  # 13.93 - 1.6
        ("+2.4", "74.1", 140, 72, -1),  # -2.97 + 2.1
        ("+0.9", "72.4", 113, 72, 0),  # -0.5, a half goes up
        ("+4.5", "72.0", 113, 72, -4),
        ("4.5", "72.0", 113, 72, 5),
        ("54.0", "74.0", 150, 72, 74),  # 71.68 + 2.0: a Course Handicap has no maximum
        ("36.0", "62.0", 55, 72, 8),  # 17.52 - 10
        ("0.0", "69.5", 155, 72, -2),  # an index of nothing gives two strokes where par is above the rating
    ],
)
def test_a_course_handicap(index: str, rating: str, slope: int, par: int, course: int) -> None:
    """Rule 6.1a."""
    assert course_handicap(index, RatedTee.read(rating, slope, par)).rounded == course


@pytest.mark.parametrize(
    ("index", "rating", "slope", "par", "course"),
    [("20.4", "35.2", 120, 36, 10), ("+3.0", "36.4", 116, 35, 0)],  # 10.83 - 0.8; -1.54 + 1.4
)
def test_a_course_handicap_of_nine_holes(index: str, rating: str, slope: int, par: int, course: int) -> None:
    """Rule 6.1b: half the index, rounded last."""
    assert course_handicap(index, RatedTee.read(rating, slope, par, 9)).rounded == course


@pytest.mark.parametrize(
    ("course", "share", "playing"),
    [
        ("-3", 85, -3),  # -2.55
        ("-3", 90, -3),  # -2.7
        ("-1", 95, -1),  # -0.95
        ("-1", 50, 0),  # -0.5
        ("-10", 85, -8),  # -8.5
        ("29.5", 85, 25),  # 25.075
        ("0.58", 85, 0),  # 0.493
        ("60", 95, 57),
    ],
)
def test_an_allowance(course: str, share: int, playing: int) -> None:
    """Rule 6.2a and Appendix C."""
    assert playing_handicap(CourseHandicap.given(course), Allowance((share,))).whole == playing


@pytest.mark.parametrize(
    ("form", "courses", "side"),
    [
        (Format.FOURSOMES, ("-3", "4"), 1),  # 0.5
        (Format.FOURSOMES, ("-3", "-2"), -2),  # -2.5
        (Format.FOURSOMES, ("-4", "3"), 0),  # -0.5
        (Format.FOURSOMES, ("7.4", "12.7"), 10),  # 10.05 of what is not rounded before
        (Format.GREENSOMES, ("4", "13"), 8),  # 2.4 + 5.2
        (Format.GREENSOMES, ("-2", "7"), 2),  # -1.2 + 2.8
        (Format.SCRAMBLE_4, ("40", "3", "17", "9"), 9),  # 0.75 + 1.8 + 2.55 + 4
        (Format.SCRAMBLE_2, ("-4", "10"), 0),  # -1.4 + 1.5
    ],
)
def test_a_side(form: Format, courses: tuple[str, ...], side: int) -> None:
    """Appendix C: shares of the unrounded Course Handicaps, the lowest first, rounded once."""
    assert side_handicap([CourseHandicap.given(one) for one in courses], allowance(form)).whole == side


@pytest.mark.parametrize(
    ("form", "courses", "strokes"),
    [
        (Format.MATCH_PLAY, ("-2", "3.5"), [0, 6]),
        (Format.MATCH_PLAY, ("-5", "-2"), [0, 3]),
        (Format.MATCH_PLAY, ("40", "2"), [38, 0]),
        (Format.FOUR_BALL_MATCH_PLAY, ("-3", "12", "20", "28"), [0, 14, 21, 28]),  # -3, 11, 18, 25
        (Format.FOUR_BALL_MATCH_PLAY, ("15", "0", "0", "5"), [14, 0, 0, 5]),  # 13.5, 4.5
    ],
)
def test_strokes_in_a_match(form: Format, courses: tuple[str, ...], strokes: list[int]) -> None:
    """Appendix C: all play from the lowest."""
    found = match_strokes([CourseHandicap.given(one) for one in courses], allowance(form))
    assert [one.value for one in found] == strokes


def test_strokes_of_a_printed_four_ball_match() -> None:
    """A magazine's example (October 2011, at 100 %): of 4, 5, 10 and 15 three receive one, six and eleven."""
    found = match_strokes([CourseHandicap.given(one) for one in ("4", "5", "10", "15")], Allowance((100,)))
    assert [one.value for one in found] == [0, 1, 6, 11]


@pytest.mark.parametrize(
    ("handicap", "each", "otherwise"),
    [
        (0, 0, {}),
        (40, 2, {1: 3, 2: 3, 3: 3, 4: 3}),
        (54, 3, {}),
        (55, 3, {1: 4}),
        (-20, -1, {17: -2, 18: -2}),
    ],
)
def test_strokes_on_holes(handicap: int, each: int, otherwise: dict[int, int]) -> None:
    """Appendix E: by stroke index, again from 1 where it is used up; given back from 18."""
    found = dict(enumerate(strokes_by_hole(handicap, range(1, 19)), start=1))
    assert found == {index: otherwise.get(index, each) for index in range(1, 19)}


def test_strokes_on_nine_holes_of_even_index() -> None:
    """Appendix E: twelve over nine holes are one each and a second on the three hardest."""
    assert strokes_by_hole(12, range(2, 19, 2)) == (2, 2, 2, 1, 1, 1, 1, 1, 1)


def played(score: int, holes: int, *, par: int = 4, of: int | None = None) -> list[HolePlayed]:
    """Return so many holes of one par and score, and the rest not played."""
    done = [HolePlayed(par, number, score, Ending.HOLED) for number in range(1, holes + 1)]
    rest = range(holes + 1, (of or holes) + 1)
    return done + [HolePlayed(par, number, None, Ending.NOT_PLAYED) for number in rest]


@pytest.mark.parametrize(
    ("course", "score", "total"),
    [
        (0, 7, 18 * 6),
        (20, 10, 2 * 8 + 16 * 7),
        (54, 12, 18 * 9),
        (-5, 6, 13 * 6 + 5 * 5),
        (17, 7, 17 * 7 + 6),
    ],
)
def test_net_double_bogey_over_a_round(course: int, score: int, total: int) -> None:
    """Rule 3.1b."""
    assert adjusted_gross_score(played(score, 18), course).total == total


def test_printed_maxima_of_holes() -> None:
    """Pages of clubs: a Polish one 7 and 9, Picton's 8, Rivermont's 8 and 6, and 7 and 6 for two holes not played at 30."""

    def most(par: int, index: int, course: int) -> int:
        one = HolePlayed(par, index, 15, Ending.HOLED)
        rest = [HolePlayed(4, other, 4, Ending.HOLED) for other in range(1, 19) if other != index]
        return adjusted_gross_score([one, *rest], course).holes[0].maximum

    assert (most(4, 5, 18), most(5, 3, 30)) == (7, 9)
    assert most(5, 1, 12) == 8
    assert (most(4, 5, 24), most(3, 18, 24)) == (8, 6)
    missed = [HolePlayed(5, 7, None, Ending.NOT_PLAYED), HolePlayed(4, 9, None, Ending.NOT_PLAYED)]
    rest = [HolePlayed(4, other, 5, Ending.HOLED) for other in range(1, 19) if other not in (7, 9)]
    found = adjusted_gross_score([*missed, *rest], 30, edition=Edition.OF_2020)
    assert [one.counted for one in found.holes[:2]] == [7, 6]


def test_one_hole_not_played_by_edition() -> None:
    """Rules 3.2 and 5.1b: net par until 2023, here 4 without a stroke; an expected differential for it since 2024."""
    holes = played(5, 17, of=18)
    assert adjusted_gross_score(holes, 10, edition=Edition.OF_2020).total == 89
    found = adjusted_gross_score(holes, 10, edition=Edition.OF_2024)
    assert (found.total, found.expected_for) == (85, 1)


@pytest.mark.parametrize(
    ("gross", "conditions", "differential"),
    [(85, 0, "11.9"), (66, 0, "-4.5"), (85, 3, "9.3"), (85, -1, "12.8")],
)
def test_a_differential(gross: int, conditions: int, differential: str) -> None:
    """Rule 5.1a at rating 71.2 and slope 131: 11.904, -4.485, 9.316, 12.766."""
    found = score_differential(gross, RatedTee.read("71.2", 131, 72), conditions)
    assert found.value == Fraction(differential)


def test_two_nines_and_an_expected_one() -> None:
    """Rule 5.1b: 8.044 and 9.204 are 17.2; with 7.9 expected 15.9, and 15.5 where the day's conditions were 1."""
    front, back = RatedTee.read("35.6", 118, 36, 9), RatedTee.read("35.9", 124, 36, 9)
    first, second = nine_hole_differential(44, front), nine_hole_differential(46, back)
    assert combine_nines(first, second, edition=Edition.OF_2020).value == Fraction("17.2")
    assert combine_nines(first, expected="7.9", edition=Edition.OF_2024).value == Fraction("15.9")
    hard = nine_hole_differential(44, front, 1)
    assert combine_nines(hard, expected="7.9", edition=Edition.OF_2024).value == Fraction("15.5")


@pytest.mark.parametrize(
    ("record", "index"),
    [
        (["62", "58", "70"], "54"),  # 56 is beyond the maximum
        (["-0.5", "1.2", "0.8"], "-2.5"),
        (["12.4", "15.0", "9.7", "11.1", "18.8"], "9.7"),
        (["12.4", "15.0", "9.7", "11.1", "18.8", "10.0"], "8.9"),  # 9.85 - 1
        (["-1.2", "-1.1", "5.0", "5.0", "5.0", "5.0"], "-2.1"),  # -2.15, a half goes up
        ([*["20"] * 12, "8.1", "8.2", "8.3", "8.4", "8.5", "8.6", "8.7", "8.9"], "8.5"),  # 8.4625
        ([*["1"] * 5, *["9"] * 20], "9"),  # only the latest twenty count
    ],
)
def test_an_index(record: list[str], index: str) -> None:
    """Rules 5.2 and 5.3."""
    assert handicap_index(record).value == Fraction(index)


@pytest.mark.parametrize(
    ("eight", "low", "index"),
    [
        (["19.6"] * 4 + ["19.7"] * 4, "14.8", "18.8"),  # 19.65 is 19.7 first: 17.8 + 0.95
        (["19.7"] * 7 + ["19.8"], "14.8", "18.8"),  # England Golf prints 19.71 and 14.8: 18.8
        (["18.2"] * 8, "10.2", "15.2"),  # the USGA's Local Guidance to Rule 5, hard cap
        (["18.9"] * 8, "12.0", "17.0"),  # 16.95
        (["18.8"] * 8, "12.0", "16.9"),
        (["20.0"] * 8, "12.0", "17.0"),
        (["3.4"] * 8, "+1.0", "2.7"),  # 2 + 0.7
        (["60"] * 8, "51.0", "54"),  # 56 by the hard cap
        (["15.0"] * 8, "12.0", "15.0"),  # 3.0 is not more than 3.0
    ],
)
def test_the_caps(eight: list[str], low: str, index: str) -> None:
    """Rule 5.8, with the average rounded before it (Rule 5.2b as the USGA prints it)."""
    assert handicap_index([*["80"] * 12, *eight], low_index=low).value == Fraction(index)


@pytest.mark.parametrize(("score", "index"), [("8.1", "14.1"), ("7.9", "13.1"), ("4.9", "11.7")])
def test_an_exceptional_score_and_the_index_after_it(score: str, index: str) -> None:
    """Rule 5.9: 6.9 better changes nothing: 113.1 / 8; 7.1 takes one off all: 104.9 / 8; 10.1 two: 93.9 / 8."""
    start = date(2024, 4, 1)
    record = [Posted(start + timedelta(days=day), Fraction(15)) for day in range(20)]
    last = revise([*record, Posted(start + timedelta(days=30), Fraction(score))])[-1]
    assert last.index is not None
    assert last.index.value == Fraction(index)
