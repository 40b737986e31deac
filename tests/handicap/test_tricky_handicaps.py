"""Cases that a handicap chairman argues about, each with the published text that settles it (read, unless said otherwise).

Each outcome is read from the text that its test names.
"""

from datetime import date, timedelta
from fractions import Fraction

import pytest

from marram.errors import BadHandicap
from marram.handicap.adjusted_score import Ending, HolePlayed, adjusted_gross_score
from marram.handicap.allowances import Allowance, Format, allowance
from marram.handicap.arithmetic import to_tenth
from marram.handicap.course_handicaps import CourseHandicap, HalfIndex, course_handicap
from marram.handicap.differential import combine_nines, nine_hole_differential, score_differential
from marram.handicap.editions import Edition
from marram.handicap.index import handicap_index, index_from
from marram.handicap.matches import differences, match_strokes
from marram.handicap.playing_handicaps import playing_handicap, side_handicap
from marram.handicap.rated_tee import RatedTee
from marram.handicap.scoring_record import Posted, low_index, revise
from marram.handicap.strokes import GivenBack, strokes_by_hole

FULL = Allowance((100,))
FIRST = date(2024, 1, 1)


def given(*handicaps: str) -> list[CourseHandicap]:
    """Return Course Handicaps as given."""
    return [CourseHandicap.given(one) for one in handicaps]


@pytest.mark.parametrize(
    ("course", "share", "playing"),
    [
        ("-1.5", 100, -1),
        ("-2.5", 100, -2),
        ("0.5", 100, 1),
        ("-4", 90, -4),
        ("-5", 90, -4),
        ("-2", 95, -2),
        ("10.5", 95, 10),
        ("30", 95, 29),
    ],
)
def test_a_half_goes_up_for_plus_handicaps_too(course: str, share: int, playing: int) -> None:
    """Rule 6.1 and Appendix C (R&A): .5 is rounded upwards, and a plus Playing Handicap moves up towards zero."""
    (one,) = given(course)
    assert playing_handicap(one, Allowance((share,))).whole == playing


def test_an_allowance_is_taken_of_the_unrounded_course_handicap() -> None:
    """Rule 6.2a and the note to 6.1 (USGA): the full value is kept, 95 % of 10.52 are 10 and not 95 % of 11."""
    tee = RatedTee.read("71.1", 129, 72)
    course = course_handicap("10.0", tee)
    assert (course.rounded, playing_handicap(course, Allowance((95,))).whole) == (11, 10)


@pytest.mark.parametrize(("index", "course"), [("54.0", 54), ("0.0", 0), ("+0.5", 0), ("+0.6", -1)])
def test_the_bounds_of_an_index(index: str, course: int) -> None:
    """Rule 5.3: 54.0 is the maximum; a plus index is negative in the formula of Rule 6.1a (USGA)."""
    assert course_handicap(index, RatedTee.read("72.0", 113, 72)).rounded == course


def test_an_index_above_54_is_refused() -> None:
    """Rule 5.3: nobody has an index of 54.1."""
    with pytest.raises(BadHandicap, match=r"54\.1"):
        course_handicap("54.1", RatedTee.read("72.0", 113, 72))


@pytest.mark.parametrize(
    ("index", "half", "unrounded"),
    [
        ("8.7", HalfIndex.TO_A_TENTH, Fraction(44, 10) * Fraction(121, 113) - Fraction(7, 10)),
        ("8.7", HalfIndex.EXACT, Fraction(435, 100) * Fraction(121, 113) - Fraction(7, 10)),
    ],
)
def test_half_an_index_for_nine_holes(index: str, half: HalfIndex, unrounded: Fraction) -> None:
    """Rule 6.1b rounds last; the USGA's Local Guidance to Rule 6 rounds half of 8.7 to 4.4 first: 4.011… and 4."""
    found = course_handicap(index, RatedTee.read("35.3", 121, 36, 9), half=half)
    assert (found.unrounded, found.rounded) == (unrounded, 4)


def test_half_an_index_can_make_a_stroke() -> None:
    """By the same two texts: half of 9.1 is 4.55 or 4.6, at Slope Rating 111 4.469… or 4.518…: four strokes or five."""
    tee = RatedTee.read("36.0", 111, 36, 9)
    found = [course_handicap("9.1", tee, half=one).rounded for one in HalfIndex]
    assert found == [4, 5]


FLAT = [Posted(FIRST + timedelta(days=day), Fraction(15)) for day in range(20)]


@pytest.mark.parametrize(
    ("below", "reduction"), [("6.95", 0), ("7.0", -1), ("9.9", -1), ("9.95", -1), ("9.99", -1), ("10.0", -2)]
)
def test_how_far_below_is_exceptional(below: str, reduction: int) -> None:
    """Rule 5.9: measured with the unrounded differential, so that 6.95 is not 7.0 and 9.99 not 10.0."""
    record = [*FLAT, Posted(date(2024, 3, 1), 15 - Fraction(below))]
    assert revise(record)[-1].reduction == reduction


def test_an_exceptional_score_in_a_short_record_changes_every_differential() -> None:
    """Rule 5.9: with fewer than 20 the reduction goes on all of them, the exceptional one included."""
    record = [*FLAT[:5], Posted(date(2024, 3, 1), Fraction(5))]
    last = revise(record)[-1]
    assert last.reductions == (-2,) * 6  # 15.0 of five differentials (Rule 5.2a), and 5.0 is ten better


def test_the_first_index_makes_no_score_exceptional() -> None:
    """Rule 5.9 measures against the index in force when the round was played: before the third score there is none."""
    record = [*FLAT[:2], Posted(date(2024, 1, 3), Fraction(2))]
    assert [one.reduction for one in revise(record)] == [0, 0, 0]


def test_exceptional_scores_add_up() -> None:
    """Rule 5.9: reductions of several exceptional scores are cumulative on the differentials that both touch."""
    record = [*FLAT, Posted(date(2024, 3, 1), Fraction(8)), Posted(date(2024, 3, 2), Fraction(1))]
    last = revise(record)[-1]
    assert last.reductions[1] == -1
    assert last.reductions[2] == -3
    assert last.reductions[-1] == -2


@pytest.mark.parametrize(
    ("count", "index"),
    [
        (3, "8.0"),
        (4, "9.0"),
        (5, "10.0"),
        (6, "9.5"),
        (7, "10.5"),
        (8, "10.5"),
        (9, "11.0"),
        (11, "11.0"),
        (12, "11.5"),
        (14, "11.5"),
        (15, "12.0"),
        (16, "12.0"),
        (17, "12.5"),
        (18, "12.5"),
        (19, "13.0"),
        (20, "13.5"),
    ],
)
def test_the_table_of_short_records(count: int, index: str) -> None:
    """Rule 5.2a (R&A): the lowest so many of 10.0, 11.0, 12.0 …, with the adjustment of the table."""
    assert index_from([Fraction(10 + one) for one in range(count)], None).value == Fraction(index)


@pytest.mark.parametrize(
    ("average", "capped"),
    [
        ("13.0", "13.0"),
        ("13.1", "13.1"),
        ("13.2", "13.1"),
        ("14.9", "14.0"),
        ("17.0", "15.0"),
        ("20.0", "15.0"),
    ],
)
def test_the_caps_above_a_low_index_of_ten(average: str, capped: str) -> None:
    """Rule 5.8: beyond 3.0 half counts, beyond 5.0 after that nothing; .05 is rounded upwards."""
    assert index_from([Fraction(average)] * 20, Fraction(10)).value == Fraction(capped)


def test_a_very_high_differential_counts_as_any_other() -> None:
    """Rules 3.1a and 5.1a: par and five on each hole of par 72 is 162, at rating 60.0 and slope 55 209.6: a score like any."""
    high = score_differential(162, RatedTee.read("60.0", 55, 72)).value
    assert high == Fraction("209.6")
    assert handicap_index([high, 30, 30]).value == 28


def test_no_cap_downwards_nor_in_a_short_record() -> None:
    """Rules 5.7 and 5.8: there is no limit downwards, and no Low Handicap Index before 20 differentials."""
    assert index_from([Fraction(2)] * 20, Fraction(10)).value == 2
    assert index_from([Fraction(20)] * 19, Fraction(10)).value == 20


def test_a_low_index_of_more_than_a_year_ago_is_gone_one_score_later() -> None:
    """Interpretation 5.7/1 (R&A): it still caps the first score after the gap, and is looked for anew after that."""
    gap = [Posted(date(2025, 6, day), Fraction(40)) for day in (1, 2)]
    after = revise([*FLAT, *gap])
    assert [one.low for one in after[-2:]] == [15, 15]
    assert after[-1].index is not None
    assert low_index(after[:20]) == 15
    lows = {one.index.value for one in after[20:] if one.index is not None}
    assert low_index(after) == min(lows)


@pytest.mark.parametrize(
    ("handicap", "expected"),
    [
        (-1, {18: -1}),
        (-19, {18: -2}),
        (37, {1: 3}),
        (18, {}),
    ],
)
def test_where_strokes_fall_on_eighteen_holes(handicap: int, expected: dict[int, int]) -> None:
    """Appendices C and E: a plus player gives back from stroke index 18; above 36 the order is used a third time."""
    found = strokes_by_hole(handicap, range(1, 19))
    each = {-1: 0, -19: -1, 37: 2, 18: 1}[handicap]
    assert dict(enumerate(found, start=1)) == {hole: expected.get(hole, each) for hole in range(1, 19)}


def test_where_strokes_fall_on_nine_holes() -> None:
    """Appendix E: in ascending order of the nine indexes; a plus player gives back from the highest of the nine."""
    odd = [1, 3, 5, 7, 9, 11, 13, 15, 17]
    assert strokes_by_hole(5, odd) == (1, 1, 1, 1, 1, 0, 0, 0, 0)
    assert strokes_by_hole(-2, odd) == (0, 0, 0, 0, 0, 0, 0, -1, -1)
    assert strokes_by_hole(10, odd) == (2, 1, 1, 1, 1, 1, 1, 1, 1)


def test_a_committee_may_have_strokes_given_back_elsewhere() -> None:
    """Appendix C: from stroke index 18 unless the Committee says otherwise."""
    assert strokes_by_hole(-1, range(1, 19), given_back=GivenBack.FROM_LOWEST)[0] == -1


def test_a_plus_player_in_a_four_ball_match_gives_strokes() -> None:
    """Appendix C: 90 % of each, rounded, then the difference from the lowest: a plus two gives seven to a five."""
    found = match_strokes(given("-2", "5", "10", "18"), allowance(Format.FOUR_BALL_MATCH_PLAY))
    assert [one.value for one in found] == [0, 7, 11, 18]


def test_foursomes_halve_the_sum_and_then_take_the_difference() -> None:
    """A club's mixed foursomes paper (Donabate, 2024): 6 and 10 make 8, 15 and 20 make 17.5 and so 18; ten strokes."""
    share = allowance(Format.FOURSOMES)
    sides = [side_handicap(given(*one), share) for one in (("6", "10"), ("20", "15"))]
    assert [one.whole for one in sides] == [8, 18]
    assert [one.value for one in differences(sides)] == [0, 10]


@pytest.mark.parametrize(
    ("form", "handicaps", "side"),
    [
        (Format.GREENSOMES, ("12", "18"), 14),
        (Format.GREENSOMES, ("18", "12"), 14),
        (Format.CHAPMAN, ("-2", "10"), 3),
        (Format.SCRAMBLE_4, ("20", "15", "10", "5"), 8),
        (Format.SCRAMBLE_2, ("10", "20"), 7),
    ],
)
def test_shares_go_from_the_lowest_handicap_up(form: Format, handicaps: tuple[str, ...], side: int) -> None:
    """Appendix C: 60/40, 25/20/15/10, 35/15. Greensomes of 12 and 18 are 14.4, so 14 (a Danish club's paper)."""
    assert side_handicap(given(*handicaps), allowance(form)).whole == side


def played(*scores: int | None, par: int = 4) -> list[HolePlayed]:
    """Return holes of one par; ``None`` for one not played."""
    return [
        HolePlayed(par, number, score, Ending.HOLED if score is not None else Ending.NOT_PLAYED)
        for number, score in enumerate(scores, start=1)
    ]


def test_holes_not_played_by_edition() -> None:
    """A women's association's paper on both editions: seven of nine with net par until 2023, all nine since 2024."""
    seven = played(*[5] * 7, None, None)
    assert adjusted_gross_score(seven, 9, edition=Edition.OF_2020).total == 7 * 5 + 2 * 5
    with pytest.raises(BadHandicap, match=r"needs 9"):
        adjusted_gross_score(seven, 9, edition=Edition.OF_2024)
    thirteen = played(*[5] * 13, *[None] * 5)
    with pytest.raises(BadHandicap, match=r"needs 14"):
        adjusted_gross_score(thirteen, 18, edition=Edition.OF_2020)
    found = adjusted_gross_score(thirteen, 18, edition=Edition.OF_2024)
    assert (found.total, found.expected_for) == (65, 5)


@pytest.mark.parametrize(
    ("course", "score", "counted"),
    [(18, 9, 7), (0, 9, 6), (-18, 9, 5), (54, 12, 9), (72, 12, 9), (None, 12, 9)],
)
def test_net_double_bogey_and_its_bounds(course: int | None, score: int, counted: int) -> None:
    """Rules 3.1a and 3.1b: par, two and strokes; par and five at most, and before a first index; a plus player less."""
    found = adjusted_gross_score(played(*[score] * 18), course)
    assert found.holes[0].counted == counted


def test_nine_holes_become_eighteen_by_edition() -> None:
    """Rule 5.1b: two nines are added until 2023, an expected differential since; half the day's conditions; rounded last."""
    tee = RatedTee.read("36.0", 113, 36, 9)
    one = nine_hole_differential(44, tee, 1)
    assert one.value == Fraction(15, 2)
    assert combine_nines(one, one, edition=Edition.OF_2020).value == 15
    assert combine_nines(one, expected="8.34", edition=Edition.OF_2024).value == Fraction("15.8")


@pytest.mark.parametrize(
    ("value", "tenth"), [("-1.55", "-1.5"), ("-1.54", "-1.5"), ("-1.56", "-1.6"), ("1.55", "1.6")]
)
def test_a_negative_differential_is_rounded_upwards(value: str, tenth: str) -> None:
    """Rule 5.1c (USGA, with -1.54 for an example): a half goes up, which below zero is towards it."""
    assert to_tenth(Fraction(value)) == Fraction(tenth)
