"""Further printed values, read in stored copies of the pages named beside them; scores and ratings only, no names.

Where a page and the governing text disagree, the governing text is what is computed and the test says so.
"""

from decimal import Decimal
from fractions import Fraction

import pytest

from marram.handicap.adjusted_score import Ending, HolePlayed, adjusted_gross_score
from marram.handicap.allowances import Allowance, Format, allowance
from marram.handicap.course_handicaps import CourseHandicap, course_handicap
from marram.handicap.differential import nine_hole_differential, score_differential
from marram.handicap.index import handicap_index
from marram.handicap.matches import match_strokes
from marram.handicap.playing_handicaps import side_handicap
from marram.handicap.rated_tee import RatedTee
from marram.handicap.strokes import strokes_by_hole

BEST_BALL_INDEXES = (5, 11, 13, 17, 1, 9, 7, 15, 3, 10, 16, 4, 14, 18, 2, 8, 6, 12)


@pytest.mark.parametrize(
    ("handicap", "strokes"),
    [
        (7, "1 0 0 0 1 0 1 0 1 0 0 1 0 0 1 0 1 0"),
        (14, "1 1 1 0 1 1 1 0 1 1 0 1 1 0 1 1 1 1"),
        (18, "1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1"),
        (28, "2 1 1 1 2 2 2 1 2 2 1 2 1 1 2 2 2 1"),
        (38, "2 2 2 2 3 2 2 2 2 2 2 2 2 2 3 2 2 2"),
        (46, "3 2 2 2 3 3 3 2 3 3 2 3 2 2 3 3 3 2"),
    ],
)
def test_a_printed_table_of_strokes(handicap: int, strokes: str) -> None:
    """A club's table (deltaseniormensgolf.com, "Best Ball"), hole by hole.

    One cell contradicts the words beside it: a 28 is printed with two strokes on the second hole, of index 11, which is not
    among the "10 more holes" that the page names; the words, and Appendix E, are computed.
    """
    assert strokes_by_hole(handicap, BEST_BALL_INDEXES) == tuple(map(int, strokes.split()))


@pytest.mark.parametrize(("handicap", "once", "twice"), [(10, 10, 0), (21, 15, 3), (18, 18, 0)])
def test_strokes_told_in_words(handicap: int, once: int, twice: int) -> None:
    """21 is two on indexes 1 to 3 and one on the other fifteen; 10 one on indexes 1 to 10 (buninyong.golf, "Golf competitions")."""
    found = strokes_by_hole(handicap, range(1, 19))
    assert (found.count(1), found.count(2)) == (once, twice)
    assert found == tuple(sorted(found, reverse=True))


def test_a_four_ball_match_from_the_lowest() -> None:
    """Of 4, 8, 12 and 27 they receive 0, 4, 8 and 23, whoever is whose partner (topgolfgears.com, "Golf competitions")."""
    for order in ((4, 8, 12, 27), (27, 8, 4, 12)):
        found = match_strokes([CourseHandicap.given(one) for one in order], Allowance((100,)))
        assert sorted(one.whole for one in found) == [0, 4, 8, 23]


@pytest.mark.parametrize(
    ("score", "differential"),
    [
        (70, "1.4"),
        (72, "3.2"),
        (73, "4.2"),
        (74, "5.1"),
        (75, "6.0"),
        (76, "6.9"),
        (78, "8.8"),
        (79, "9.7"),
        (80, "10.7"),
        (82, "12.5"),
        (84, "14.4"),
    ],
)
def test_differentials_of_a_printed_record(score: int, differential: str) -> None:
    """The record of a member as a state's association prints it (wsgalookup.com, August 2019): rating 68.5, slope 122."""
    assert score_differential(score, RatedTee.read("68.5", 122, 71)).value == Fraction(differential)


@pytest.mark.parametrize(
    ("score", "rating", "slope", "differential"),
    [
        (80, "67.4", 125, "11.4"),  # wsgalookup.com, an away score of the same record
    ],
)
def test_single_differentials(score: int, rating: str, slope: int, differential: str) -> None:
    """Printed examples of Rule 5.1a."""
    assert score_differential(score, RatedTee.read(rating, slope, 72)).value == Fraction(differential)


def test_a_page_that_rounds_another_way() -> None:
    """(96 - 71.5) x 113 / 125 is 22.148: a club prints 22.2 (gcuf.de, 2021), Rule 5.1a has the nearest tenth, 22.1."""
    assert score_differential(96, RatedTee.read("71.5", 125, 72)).value == Fraction("22.1")


@pytest.mark.parametrize(
    ("score", "rating", "slope", "tenth"),
    [
        (55, "35.2", 121, "18.5"),
        (48, "35.2", 121, "12.0"),
        (51, "35.2", 121, "14.8"),
        (49, "35.2", 121, "12.9"),
        (53, "35.2", 121, "16.6"),
        (54, "35.2", 121, "17.6"),
        (46, "35.2", 121, "10.1"),
        (50, "35.2", 121, "13.8"),
        (45, "35.2", 121, "9.2"),
        (47, "35.2", 121, "11.0"),
        (48, "35.9", 125, "10.9"),
        (54, "35.9", 125, "16.4"),
    ],
)
def test_nine_hole_differentials_of_a_league(score: int, rating: str, slope: int, tenth: str) -> None:
    """Rounds of a league of nine holes (arrisgolf.com, 2020 and 2023), which it prints to a tenth; Rule 5.1b keeps them whole."""
    value = nine_hole_differential(score, RatedTee.read(rating, slope, 36, 9)).value
    assert abs(value - Fraction(tenth)) <= Fraction(1, 20)
    assert value == Fraction(113, slope) * (score - Fraction(rating))


SIX = ["25.3", "26.4", "23.2", "20.9", "27.8", "30.5"]


@pytest.mark.parametrize(
    ("record", "index"),
    [
        (
            SIX,
            "21.1",
        ),  # 20.9 and 23.2 are 22.05, less 1.0 is 21.05; the page rounds on the way and has the same
        ([*SIX, "25.3", "20.4", "22.3", "19.8", "20.1", "26.3"], "20.3"),
    ],
)
def test_short_records_of_a_union(record: list[str], index: str) -> None:
    """Both examples of the Danish union (danskgolfunion.dk, "Handicapberegning for begyndere")."""
    assert handicap_index(record).value == Fraction(index)


SHORT = {
    **{(one,): (1, "-2.0") for one in (1, 2, 3)},
    (4,): (1, "-1.0"),
    (5,): (1, "0"),
    (6,): (2, "-1.0"),
    (7, 8): (2, "0"),
    (9, 10, 11): (3, "0"),
    (12, 13, 14): (4, "0"),
    (15, 16): (5, "0"),
    (17, 18): (6, "0"),
    (19,): (7, "0"),
    (20,): (8, "0"),
}
"""The table of Rule 5.2a as the Danish union prints it (danskgolfunion.dk, same page), which grants an index from one score on."""


@pytest.mark.parametrize(
    ("count", "used", "adjustment"),
    [(count, *row) for counts, row in SHORT.items() for count in counts if count >= 3],
)
def test_the_printed_table_of_short_records(count: int, used: int, adjustment: str) -> None:
    """For each number of scores: how many count, and what is taken off."""
    record = [Decimal(12 + place) for place in range(count)]
    average = Fraction(sum(range(12, 12 + used)), used) + Fraction(adjustment)
    assert abs(handicap_index(record[::-1]).value - average) <= Fraction(1, 20)


@pytest.mark.parametrize(
    ("par", "received", "score", "counts"),
    [
        (3, 2, 9, 7),  # des-balles-et-des-birdies.com, "Comment calculer son index"
        (3, 1, 4, 4),  # the second hole of its table
        (4, 1, 4, 4),  # the first
        (4, 1, 9, 7),  # seniorenrallye-mitte.at, "Informationen zum neuen Handicapsystem"
    ],
)
def test_maxima_told_by_clubs(par: int, received: int, score: int, counts: int) -> None:
    """Rule 3.1b."""
    course = 18 * received  # that many strokes on every hole
    one = HolePlayed(par, 1, score, Ending.HOLED)
    rest = [HolePlayed(4, index, 4, Ending.HOLED) for index in range(2, 19)]
    assert adjusted_gross_score([one, *rest], course).holes[0].counted == counts


def test_shares_of_a_team_as_unions_recommend_them() -> None:
    """Four players 25, 20, 15 and 10 per cent, three 30, 20 and 10, two 35 and 15 (USGA, guidance LG_R7h5; CONGU the same)."""
    assert allowance(Format.SCRAMBLE_4).shares == (25, 20, 15, 10)
    assert allowance(Format.SCRAMBLE_3).shares == (30, 20, 10)
    assert allowance(Format.SCRAMBLE_2).shares == (35, 15)


@pytest.mark.parametrize(
    ("index", "course", "share", "part"),
    [
        ("8.4", "10.335", 25, "2.583"),
        ("12.6", "15.353", 20, "3.071"),
        ("23.4", "28.255", 15, "4.238"),
        ("31.2", "37.574", 10, "3.757"),
    ],
)
def test_each_player_of_the_printed_scramble(index: str, course: str, share: int, part: str) -> None:
    """USGA, guidance LG_R7h5: rating 72.3, slope 135, par 72; each figure is printed with three digits."""
    found = course_handicap(index, RatedTee.read("72.3", 135, 72))
    assert abs(found.unrounded - Fraction(course)) < Fraction(1, 1000)
    assert abs(found.unrounded * share / 100 - Fraction(part)) < Fraction(1, 1000)


def test_the_printed_scramble_adds_up() -> None:
    """The same guidance: 13.650 in all, and 14 for the team."""
    courses = [
        course_handicap(one, RatedTee.read("72.3", 135, 72)) for one in ("31.2", "8.4", "23.4", "12.6")
    ]
    found = side_handicap(courses, allowance(Format.SCRAMBLE_4))
    assert int(found.steps[-1].values["value"] * 1000) == 13650  # type: ignore[operator]
    assert found.whole == 14
