"""What holds of every handicap, whatever the figures."""

from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from marram.handicap.allowances import Allowance
from marram.handicap.arithmetic import to_tenth, to_whole
from marram.handicap.course_handicaps import CourseHandicap, course_handicap
from marram.handicap.differential import score_differential
from marram.handicap.index import USED, handicap_index
from marram.handicap.matches import MatchMethod, match_strokes
from marram.handicap.playing_handicaps import playing_handicap, side_handicap
from marram.handicap.rated_tee import RatedTee
from marram.handicap.strokes import GivenBack, strokes_by_hole

tenths = st.integers(-60, 540).map(lambda tenth: Fraction(tenth, 10))
tees = st.builds(
    lambda rating, slope, par: RatedTee.read(Fraction(rating, 10), slope, par),
    st.integers(600, 780),
    st.integers(55, 155),
    st.integers(66, 74),
)
indexes = st.sampled_from([18, 9]).flatmap(lambda holes: st.permutations(range(1, holes + 1)))
courses = st.fractions(-10, 60, max_denominator=1000).map(CourseHandicap.given)


@settings(deadline=None)
@given(st.integers(-10_000, 10_000), st.integers(1, 200))
def test_rounding_by_fractions_is_rounding_by_integers(over: int, under: int) -> None:
    """The nearest whole number, halves upwards, also in integers alone."""
    assert to_whole(Fraction(over, under)) == (2 * over + under) // (2 * under)


@settings(deadline=None)
@given(tenths, tees)
def test_a_course_handicap_by_fractions_is_one_by_integers(index: Fraction, tee: RatedTee) -> None:
    """All in tenths of a 113th: the same whole number."""
    over = int(index * 10) * tee.slope + 113 * (int(tee.course_rating * 10) - 10 * tee.par)

    assert course_handicap(index, tee).rounded == (2 * over + 1130) // 2260


@settings(deadline=None)
@given(tenths, tenths, tees)
def test_a_higher_index_never_gives_fewer_strokes(one: Fraction, other: Fraction, tee: RatedTee) -> None:
    """Course Handicap and Playing Handicap rise with the index."""
    low, high = (course_handicap(index, tee) for index in sorted((one, other)))

    assert low.rounded <= high.rounded
    for share in (Allowance((95,)), Allowance((75,))):
        assert playing_handicap(low, share).value <= playing_handicap(high, share).value


@settings(deadline=None)
@given(st.integers(60, 140), tees, st.integers(-1, 3))
def test_a_differential_by_fractions_is_one_by_integers(score: int, tee: RatedTee, pcc: int) -> None:
    """In tenths, with integers alone, the same."""
    over = 113 * (10 * (score - pcc) - int(tee.course_rating * 10))

    assert score_differential(score, tee, pcc).value == Fraction(
        (2 * over + tee.slope) // (2 * tee.slope), 10
    )


@settings(deadline=None)
@given(st.integers(60, 139), tees)
def test_a_stroke_more_is_a_higher_differential(score: int, tee: RatedTee) -> None:
    """Every stroke counts."""
    assert score_differential(score, tee).value < score_differential(score + 1, tee).value


@settings(deadline=None)
@given(st.lists(st.integers(-50, 600), min_size=3, max_size=25))
def test_an_index_by_fractions_is_one_by_integers(record: list[int]) -> None:
    """The lowest of the latest 20, averaged and rounded in integers alone, give the same index."""
    latest = sorted(record[-20:])
    used, adjustment = USED[len(latest)]
    expected = (2 * (sum(latest[:used]) + 10 * adjustment * used) + used) // (2 * used)

    assert handicap_index([Fraction(one, 10) for one in record]).value == Fraction(min(expected, 540), 10)


@settings(deadline=None)
@given(st.lists(st.integers(0, 540), min_size=20, max_size=20), st.integers(0, 540), st.integers(0, 19))
def test_a_better_score_never_raises_the_index(record: list[int], low: int, place: int) -> None:
    """Also with caps: one differential less is no higher index, and a cap never raises one."""
    better = [one - (number == place) for number, one in enumerate(record)]
    before, after, free = (
        handicap_index([Fraction(one, 10) for one in scores], low_index=cap).value
        for scores, cap in ((record, Fraction(low, 10)), (better, Fraction(low, 10)), (record, None))
    )

    assert after <= before <= free
    assert before <= Fraction(low, 10) + 5


@settings(deadline=None)
@given(st.integers(-20, 90), indexes, st.sampled_from(GivenBack))
def test_strokes_add_up_to_the_handicap(handicap: int, order: list[int], back: GivenBack) -> None:
    """The strokes of all holes are the Playing Handicap, and no hole has two more than another."""
    strokes = strokes_by_hole(handicap, order, given_back=back)

    assert sum(strokes) == handicap
    assert max(strokes) - min(strokes) <= 1


@settings(deadline=None)
@given(st.integers(-19, 90), indexes)
def test_one_stroke_more_goes_to_one_hole(handicap: int, order: list[int]) -> None:
    """Each further stroke falls on a single hole."""
    fewer, more = strokes_by_hole(handicap - 1, order), strokes_by_hole(handicap, order)

    assert sorted(two - one for one, two in zip(fewer, more, strict=True)) == [0] * (len(order) - 1) + [1]


@settings(deadline=None)
@given(st.lists(courses, min_size=2, max_size=4), st.sampled_from(MatchMethod))
def test_the_lowest_of_a_match_plays_off_zero(players: list[CourseHandicap], method: MatchMethod) -> None:
    """Nobody gives strokes, and strokes follow the order of handicaps."""
    found = [one.value for one in match_strokes(players, Allowance((90,)), method=method)]
    by_handicap = sorted(range(len(players)), key=lambda place: players[place].unrounded)

    assert min(found) == 0
    assert [found[place] for place in by_handicap] == sorted(found)


@settings(deadline=None)
@given(st.lists(courses, min_size=4, max_size=4), st.permutations(range(4)))
def test_the_order_of_partners_does_not_matter(side: list[CourseHandicap], order: list[int]) -> None:
    """Shares go by handicap, not by who is named first."""
    share = Allowance((25, 20, 15, 10))

    assert side_handicap(side, share).value == side_handicap([side[place] for place in order], share).value


@settings(deadline=None)
@given(st.fractions(-50, 50, max_denominator=1000))
def test_a_tenth_is_never_off_by_more_than_half_of_one(value: Fraction) -> None:
    """Rounding to a tenth moves a value by half a tenth at most, and a half upwards."""
    assert Fraction(-1, 20) < to_tenth(value) - value <= Fraction(1, 20)
