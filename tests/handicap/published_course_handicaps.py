"""Checks of what is published on Course Handicaps and Playing Handicaps; see ``test_reference_values.py``."""

from decimal import Decimal
from fractions import Fraction
from typing import Any

import pytest

from marram.errors import BadHandicap
from marram.handicap.adjusted_score import HolePlayed, adjusted_gross_score
from marram.handicap.allowances import Allowance, Format
from marram.handicap.course_handicaps import CourseHandicap, Formula, course_handicap
from marram.handicap.playing_handicaps import Basis, playing_handicap, side_handicap
from marram.handicap.tees_apart import strokes_for_par, strokes_for_rating
from tests.handicap.published_values import given, of_tee, tee, value


@value("conventions-01")
def plus_negative_halves_up(_given: dict[str, Any], expected: Any) -> None:
    assert expected["plus_handicap"] == "negative"
    assert CourseHandicap.given(Decimal("-1.5")).rounded == -1
    assert course_handicap("+1.4", tee()).unrounded == Fraction(-14, 10)


@value("course-handicap-01")
def formula(_given: dict[str, Any], expected: Any) -> None:
    assert expected["standard_slope"] == 113
    assert course_handicap("10", tee("73.4", 113, 72)).unrounded == 10 + Fraction(14, 10)
    assert course_handicap("+2", tee("73.4", 113, 72)).unrounded == -2 + Fraction(14, 10)


@value("course-handicap-02")
def rounded_for_holes_only(_given: dict[str, Any], expected: Any) -> None:
    assert expected["half"] == "up"
    found = CourseHandicap.given(Decimal("10.5"))
    assert (found.unrounded, found.rounded) == (Fraction(21, 2), 11)


@value("course-handicap-03")
def nine_holes(_given: dict[str, Any], _expected: Any) -> None:
    found = course_handicap("15.3", tee("35.2", 120, 36, 9))
    assert found.unrounded == Fraction(153, 20) * Fraction(120, 113) + Fraction("35.2") - 36
    assert found.rounded == 7


@value("course-handicap-04")
def slope_only(_given: dict[str, Any], _expected: Any) -> None:
    found = course_handicap("10", tee("73.4", 113, 72), formula=Formula.SLOPE_ONLY)
    assert found.unrounded == 10


@value("course-handicap-05")
def slope_bounds(_given: dict[str, Any], expected: Any) -> None:
    for good in (expected["min"], expected["standard"], expected["max"]):
        assert tee(slope=good).slope == good
    for bad in (expected["min"] - 1, expected["max"] + 1):
        with pytest.raises(BadHandicap, match="Slope Rating"):
            tee(slope=bad)


@value("course-handicap-06", "course-handicap-07")
def unrounded(inputs: dict[str, Any], expected: Any) -> None:
    apart = of_tee(inputs).unrounded - Fraction(expected["course_handicap_unrounded"])
    assert abs(apart) <= Fraction(expected["tolerance"])


@value("playing-handicap-01", "playing-handicap-02")
def rounded_once(_given: dict[str, Any], _expected: Any) -> None:
    course = CourseHandicap.given(Decimal("7.6"))
    assert playing_handicap(course, Allowance((85,))).whole == 6  # 6.46
    assert playing_handicap(course, Allowance((85,)), basis=Basis.ROUNDED_FIRST).whole == 7  # 6.8


@value("playing-handicap-03")
def national_practice(_given: dict[str, Any], expected: Any) -> None:
    pair = given(Decimal("10.5"), Decimal("20.5"))
    assert expected == {"Scotland": "unrounded", "England_Wales_Ireland": "rounded first"}
    assert side_handicap(pair, Allowance((60, 40))).value == 15  # 6.3 + 8.2 = 14.5
    rounded = side_handicap(pair, Allowance((60, 40)), basis=Basis.ROUNDED_FIRST)
    assert rounded.steps[-1].values["value"] == Fraction(15)  # 0.6 × 11 + 0.4 × 21


@value("playing-handicap-04")
def index_uses_course_handicap(_given: dict[str, Any], expected: Any) -> None:
    assert expected["index_uses"] == "course handicap"
    holes = [HolePlayed(4, index, 9) for index in range(1, 19)]
    assert adjusted_gross_score(holes, 20).total == 18 * 6 + 20  # net double bogey of 20, not of 95 % of it


@value("playing-handicap-05")
def plus_towards_zero(_given: dict[str, Any], _expected: Any) -> None:
    assert playing_handicap(CourseHandicap.given(-3), Allowance((85,))).whole == -3  # -2.55
    assert playing_handicap(CourseHandicap.given(-5), Allowance((90,))).whole == -4  # -4.5


@value("tees-01", "tees-09")
def pars_apart(inputs: dict[str, Any], expected: Any) -> None:
    players = inputs or {"a": {"par": 72, "playing_handicap": 10}, "b": {"par": 70, "playing_handicap": 14}}
    tees = [tee(par=one["par"]) for one in players.values()]
    more = strokes_for_par(tees, Format.STROKE_PLAY)
    found = {
        name: one["playing_handicap"] + extra.whole
        for (name, one), extra in zip(players.items(), more, strict=True)
    }
    assert found == (expected if inputs else {"a": 12, "b": 14})


@value("tees-02")
def ratings_apart(_given: dict[str, Any], _expected: Any) -> None:
    found = strokes_for_rating([tee("73.9"), tee("72.1")])
    assert [one.whole for one in found] == [2, 0]  # 1.8, a published example of an association


@value("tees-03")
def against_par(_given: dict[str, Any], _expected: Any) -> None:
    tees = [tee(par=72), tee(par=70)]
    assert [one.whole for one in strokes_for_par(tees, Format.STABLEFORD)] == [0, 0]
    assert [one.whole for one in strokes_for_par(tees, Format.MATCH_PLAY)] == [2, 0]
