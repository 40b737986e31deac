"""Figures that cannot be used are refused, each fault with what to give instead, all at once."""

from datetime import date
from decimal import Decimal
from fractions import Fraction

import pytest

from marram.errors import BadHandicap, DateNotCovered
from marram.handicap import RatedTee, course_handicap, handicap_index, playing_handicap
from marram.handicap.adjusted_score import Ending, HolePlayed, Why, adjusted_gross_score
from marram.handicap.allowances import Allowance, Format, allowance
from marram.handicap.course_handicaps import CourseHandicap
from marram.handicap.differential import combine_nines, nine_hole_differential
from marram.handicap.editions import Edition, edition_on
from marram.handicap.scoring_record import Posted, revise
from marram.handicap.strokes import strokes_by_hole

TEE = RatedTee.read("72.0", 113, 72)


def test_all_faults_of_a_rating_are_told_at_once() -> None:
    """Course Rating, Slope Rating and par are each refused in the same answer."""
    with pytest.raises(BadHandicap) as refused:
        RatedTee.read("72.45", 156, "x")

    assert [fault.split()[0] for fault in refused.value.faults] == ["Course", "Slope", "Par"]


@pytest.mark.parametrize(
    ("given", "told"),
    [
        ("-1.4", "two ways"),
        ("−1,4", "two ways"),
        (14.3, "floating-point"),
        ("54.1", "between"),
        ("14.35", "one decimal"),
        ("PR", "is a number"),
        ("", "is a number"),
        ("nan", "is a number"),
        ("1e9999", "is a number"),
        (True, "is a number"),
        (None, "is a number"),
    ],
)
def test_an_index_that_cannot_be_used_is_refused(given: object, told: str) -> None:
    """A minus sign, a float, more than 54.0, two decimals, words or nothing: no guess is made."""
    with pytest.raises(BadHandicap, match=told):
        course_handicap(given, TEE)


@pytest.mark.parametrize("given", ["+1.4", "+ 1,4", Decimal("-1.4"), Fraction(-7, 5)])
def test_a_plus_index_is_read_in_every_exact_form(given: object) -> None:
    """A plus sign in text, a negative number otherwise."""
    assert course_handicap(given, TEE).unrounded == Fraction(-7, 5)


def test_every_fault_of_a_record_is_told() -> None:
    """Each differential that cannot be used is named by its place."""
    with pytest.raises(BadHandicap) as refused:
        handicap_index(["12.34", "a", "10.0"], low_index="60")

    assert len(refused.value.faults) == 3
    assert "Score Differential 1" in refused.value.faults[0]


def test_too_short_a_record_has_no_index() -> None:
    """Two differentials make none (Rule 4.5)."""
    with pytest.raises(BadHandicap, match="needs 3"):
        handicap_index(["12.3", "10.0"])


@pytest.mark.parametrize("indexes", [[1] * 18, [*range(17), 20], list(range(1, 8)), [0, *range(1, 18)]])
def test_stroke_indexes_are_one_for_each_hole(indexes: list[int]) -> None:
    """Twice the same, out of 1 to 18, or of too few holes."""
    with pytest.raises(BadHandicap):
        strokes_by_hole(10, indexes)


def test_an_allowance_of_a_side_is_not_one_of_a_player() -> None:
    """Foursomes need both partners."""
    with pytest.raises(BadHandicap, match="all partners"):
        playing_handicap(CourseHandicap.given(10), Allowance((50, 50)))


def test_the_table_of_2020_has_no_scramble_of_three() -> None:
    """It stands in the table of 2024 alone."""
    with pytest.raises(BadHandicap, match="2020"):
        allowance(Format.SCRAMBLE_3, edition=Edition.OF_2020)


def test_each_edition_completes_nine_holes_in_its_own_way() -> None:
    """2024 without an expected differential, 2020 with one: refused."""
    nine = nine_hole_differential(45, RatedTee.read("35.2", 113, 36, 9))

    with pytest.raises(BadHandicap, match="not published"):
        combine_nines(nine, edition=Edition.OF_2024)
    with pytest.raises(BadHandicap, match="added to another"):
        combine_nines(nine, expected="8.5", edition=Edition.OF_2020)


def test_scores_of_holes_are_checked_hole_by_hole() -> None:
    """A hole without a score and one not played with a score are both told."""
    holes = [HolePlayed(4, index, 4) for index in range(1, 17)]
    holes += [HolePlayed(4, 17, None), HolePlayed(4, 18, 5, Ending.NOT_PLAYED)]

    with pytest.raises(BadHandicap) as refused:
        adjusted_gross_score(holes, 10)

    assert ["17" in refused.value.faults[0], "18" in refused.value.faults[1]] == [True, True]


def test_a_hole_picked_up_without_a_likely_score_is_net_double_bogey() -> None:
    """What is not known counts as the most it can count (Rule 3.3)."""
    holes = [HolePlayed(4, index, 4) for index in range(1, 18)] + [
        HolePlayed(4, 18, None, Ending.NOT_FINISHED)
    ]

    last = adjusted_gross_score(holes, 17).holes[-1]

    assert (last.counted, last.why) == (6, Why.MAXIMUM)


def test_scores_out_of_order_are_refused() -> None:
    """A record is told in the order of play."""
    later, earlier = Posted(date(2024, 5, 2), Fraction(10)), Posted(date(2024, 5, 1), Fraction(10))

    with pytest.raises(BadHandicap, match="Score 2"):
        revise([later, earlier])


def test_the_edition_is_that_of_the_day() -> None:
    """The last day of the first edition, the first of its revision, and none before."""
    assert edition_on(date(2023, 12, 31)) is Edition.OF_2020
    assert edition_on(date(2024, 1, 1)) is Edition.OF_2024
    with pytest.raises(DateNotCovered):
        edition_on(date(2019, 12, 31))


def test_what_lies_outside_is_named_as_it_was_given() -> None:
    """A message holds the number a person gave, not how the program keeps it."""
    with pytest.raises(BadHandicap) as refused:
        course_handicap("70", TEE)

    assert "70 does not" in str(refused.value)
    assert "Fraction" not in str(refused.value)
