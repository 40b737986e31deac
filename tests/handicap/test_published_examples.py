"""Worked examples of the governing bodies and associations that are not among the shared values."""

from datetime import date
from fractions import Fraction

from marram.handicap.index import handicap_index
from marram.handicap.scoring_record import Posted, Revision, low_index, revise
from marram.handicap.worked import step, worked


def test_a_soft_cap_as_asked_frequently() -> None:
    """Low 10.0 and an average of 13.4 give 13.2 (frequently asked question of an association, to Rule 5.8)."""
    assert handicap_index([Fraction("13.4")] * 20, low_index="10.0").value == Fraction("13.2")


def test_a_hard_cap() -> None:
    """Low 10.2 and an average of 18.2 give 15.2 (an association's guidance to Rule 5, hard cap example)."""
    found = handicap_index([Fraction("18.2")] * 20, low_index="10.2")

    assert found.value == Fraction("15.2")
    assert [one.key for one in found.steps][-2:] == ["soft_cap", "hard_cap"]


def test_six_scores() -> None:
    """40.7, 42.4, 36.1, 45.9, 43.6 and 45.0 give 37.4 (Interpretation 5.2a/2)."""
    assert handicap_index(["40.7", "42.4", "36.1", "45.9", "43.6", "45.0"]).value == Fraction("37.4")


def revised(day: date, index: str) -> Revision:
    return Revision(day, worked(step("index_rounded", "5.2b", Fraction(index))), None, 0, ())


def test_a_low_index_of_more_than_a_year_ago_still_caps_the_next_score() -> None:
    """A low index of March is still there for a score of April a year on, and gone after it (Interpretation 5.7/1)."""
    low, last = date(2020, 3, 1), date(2021, 1, 1)
    early = [revised(date(2020, 2, 1), "12.0")] * 19
    before = [*early, revised(low, "10.6"), revised(last, "12.3")]

    assert low_index(before) == Fraction("10.6")
    assert low_index([*before, revised(date(2021, 4, 1), "12.5")]) == Fraction("12.3")


def test_the_record_takes_the_low_index_of_before_the_score() -> None:
    """The cap on a new index looks back from the score before it, not from the new one (Interpretation 5.7/1)."""
    twenty = [Posted(date(2020, 2, 1), Fraction(10))] * 20
    later = [Posted(date(2021, 1, 25), Fraction(10)), Posted(date(2021, 4, 1), Fraction(30))]

    found = revise([*twenty, *later])

    assert found[-1].low == 10
    assert low_index(found) == 10  # the one of January 2021
