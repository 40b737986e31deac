"""Checks of what is published on Score Differentials, and the scores they are made of; see ``test_reference_values.py``."""

from fractions import Fraction
from typing import Any

import pytest

from marram.errors import BadHandicap
from marram.handicap.adjusted_score import Ending, HolePlayed, Why, adjusted_gross_score
from marram.handicap.differential import (
    combine_nines,
    complete_round,
    nine_hole_differential,
    score_differential,
)
from marram.handicap.editions import Edition
from marram.handicap.hole_scores import LengthUnit, maximum_hole_score, most_likely_score
from marram.handicap.strokes import strokes_by_hole
from tests.handicap.published_values import ORDER, tee, value


@value("differential-01", "differential-04")
def differential(inputs: dict[str, Any], expected: Any) -> None:
    rated = tee(inputs.get("course_rating", "73.0"), inputs.get("slope", 125))
    found = score_differential(inputs.get("ags", 94), rated, inputs.get("pcc", 0))
    assert found.value == Fraction(expected.get("differential", "19.0"))


@value("differential-02", "differential-05")
def negative_differentials(inputs: dict[str, Any], expected: Any) -> None:
    from marram.handicap.arithmetic import to_tenth

    assert to_tenth(Fraction(inputs.get("unrounded", "-1.55"))) == Fraction(
        expected.get("differential", "-1.5")
    )


@value("differential-03")
def nine_hole(_given: dict[str, Any], _expected: Any) -> None:
    found = nine_hole_differential(44, tee("35.2", 120, 36, 9), 1)
    assert found.value == Fraction(113, 120) * (44 - Fraction("35.2") - Fraction(1, 2))


@value("nine-hole-01")
def two_nines(_given: dict[str, Any], _expected: Any) -> None:
    first, second = (nine_hole_differential(one, tee("35.2", 113, 36, 9)) for one in (44, 45))
    found = combine_nines(first, second, edition=Edition.OF_2020)
    assert found.value == Fraction("18.6")  # 8.8 + 9.8


@value("nine-hole-02")
def nine_and_expected(_given: dict[str, Any], expected: Any) -> None:
    nine = nine_hole_differential(44, tee("35.2", 113, 36, 9))
    assert combine_nines(nine, expected="8.5", edition=Edition.OF_2024).value == Fraction("17.3")
    holes = [HolePlayed(4, index, 5) for index in range(1, 9)] + [HolePlayed(4, 9, None, Ending.NOT_PLAYED)]
    with pytest.raises(BadHandicap, match=f"needs {expected['min_holes']}"):
        adjusted_gross_score(holes, 9, edition=Edition.OF_2024)


@value("nine-hole-03")
def no_formula_of_expected_scores(_given: dict[str, Any], expected: Any) -> None:
    """Nor does a union share it (englandgolf.freshdesk.com, article 80001136829): it is asked for, and counts as given."""
    assert expected["formula_published"] is False
    nine = nine_hole_differential(44, tee("35.6", 118, 36, 9))
    with pytest.raises(BadHandicap, match="not published how it is worked out"):
        combine_nines(nine, edition=Edition.OF_2024)
    for given_as in ("7.9", "20.0"):
        found = combine_nines(nine, expected=given_as, edition=Edition.OF_2024)
        assert abs(found.value - nine.value - Fraction(given_as)) <= Fraction(1, 20)


def unfinished(played: int, of: int) -> list[HolePlayed]:
    return [
        HolePlayed(4, one, 5) if one <= played else HolePlayed(4, one, None, Ending.NOT_PLAYED)
        for one in range(1, of + 1)
    ]


@value("adjusted-score-01")
def holes_needed_2020(_given: dict[str, Any], expected: Any) -> None:
    for least, of in ((expected["min_18"], 18), (expected["min_9"], 9)):
        found = adjusted_gross_score(unfinished(least, of), 10, edition=Edition.OF_2020)
        assert {one.why for one in found.holes[least:]} == {Why.NET_PAR}
        with pytest.raises(BadHandicap, match=f"needs {least}"):
            adjusted_gross_score(unfinished(least - 1, of), 10, edition=Edition.OF_2020)


@value("adjusted-score-02")
def holes_needed_2024(_given: dict[str, Any], expected: Any) -> None:
    for least, of in ((expected["min_18"], 18), (expected["min_9"], 9)):
        found = adjusted_gross_score(unfinished(least, of), 10, edition=Edition.OF_2024)
        assert found.expected_for == of - least
        with pytest.raises(BadHandicap, match=f"needs {least}"):
            adjusted_gross_score(unfinished(least - 1, of), 10, edition=Edition.OF_2024)
    played = nine_hole_differential(44, tee("35.2", 113, 36, 9))
    assert complete_round(played, "9.0").value == Fraction("17.8")


@value("adjusted-score-07")
def most_likely(_given: dict[str, Any], expected: Any) -> None:
    yards = LengthUnit.YARDS
    close = most_likely_score(3, Fraction(5, 3), yards, on_green=True)
    assert (close.least, close.most) == (3 + expected["within_5ft"],) * 2
    middle, far = (most_likely_score(3, one, yards, on_green=False) for one in (20, 21))
    assert [middle.least - 3, middle.most - 3] == expected["to_20yd"]
    assert [far.least - 3, far.most - 3] == expected["beyond_20yd"]


@value("adjusted-score-08")
def most_likely_example(inputs: dict[str, Any], expected: Any) -> None:
    found = most_likely_score(
        inputs["strokes_taken"], inputs["distance_yards"], LengthUnit.YARDS, on_green=inputs["on_green"]
    )
    assert [found.least, found.most] == expected["most_likely"]


@value("net-double-bogey-01")
def net_double_bogey(_given: dict[str, Any], _expected: Any) -> None:
    assert [maximum_hole_score(4, strokes).whole for strokes in (-1, 0, 1, 2)] == [5, 6, 7, 8]


@value("net-double-bogey-02")
def before_an_index(_given: dict[str, Any], _expected: Any) -> None:
    assert [maximum_hole_score(par, 0, has_index=False).whole for par in (3, 4, 5)] == [8, 9, 10]


@value("net-double-bogey-03")
def four_strokes_on_a_hole(_given: dict[str, Any], _expected: Any) -> None:
    assert [maximum_hole_score(4, strokes).whole for strokes in (3, 4, 5)] == [9, 9, 9]


@value("net-double-bogey-04", "net-double-bogey-05")
def net_double_bogey_example(inputs: dict[str, Any], expected: Any) -> None:
    strokes = strokes_by_hole(inputs["course_handicap"], ORDER)[inputs["si"] - 1]
    assert maximum_hole_score(inputs["par"], strokes).whole == expected["max_score"]


@value("pcc-01")
def playing_conditions(_given: dict[str, Any], expected: Any) -> None:
    for conditions in expected["values"]:
        assert score_differential(90, tee(), conditions).value == 18 - conditions
    for bad in (-2, 4):
        with pytest.raises(BadHandicap, match="Playing conditions"):
            score_differential(90, tee(), bad)
