"""Checks of what is published on the holes that strokes fall on; see ``test_reference_values.py``."""

from fractions import Fraction
from typing import Any

from marram.handicap.allowances import Allowance
from marram.handicap.matches import match_strokes
from marram.handicap.strokes import strokes_by_hole
from tests.handicap.published_values import ORDER, given, value


@value("stroke-allocation-01", "stroke-allocation-08")
def one_stroke_up_to_the_handicap(inputs: dict[str, Any], expected: Any) -> None:
    strokes = strokes_by_hole(inputs.get("playing_handicap", 14), ORDER)
    with_one = [index for index, count in zip(ORDER, strokes, strict=True) if count == 1]
    assert with_one == expected.get("one_stroke_si", list(range(1, 15)))


@value("stroke-allocation-02")
def order_used_again(_given: dict[str, Any], expected: Any) -> None:
    for place, ordinal in enumerate(expected["si1_also"], start=2):
        assert strokes_by_hole(ordinal, ORDER)[0] == place
        assert strokes_by_hole(ordinal - 1, ORDER)[0] == place - 1


@value("stroke-allocation-03")
def plus_from_eighteen(_given: dict[str, Any], expected: Any) -> None:
    strokes = strokes_by_hole(-2, ORDER)
    assert [index for index, count in zip(ORDER, strokes, strict=True) if count] == [17, expected["start_si"]]


@value("stroke-allocation-04")
def nine_of_eighteen(_given: dict[str, Any], _expected: Any) -> None:
    nine = (7, 11, 17, 3, 1, 13, 15, 5, 9)
    assert strokes_by_hole(3, nine) == (0, 0, 0, 1, 1, 0, 0, 1, 0)
    assert strokes_by_hole(-1, nine) == (0, 0, -1, 0, 0, 0, 0, 0, 0)


@value("stroke-allocation-05")
def recommended_table(_given: dict[str, Any], expected: Any) -> None:
    from marram.handicap.stroke_index import what_departs

    good = [3, 9, 15, 11, 1, 17, 7, 13, 5, 12, 4, 16, 8, 2, 14, 18, 6, 10]
    assert not what_departs(good)
    assert expected["front"] == "odd"
    for one, other, told in (
        (0, 9, "odd and even"),
        (4, 1, "middle three"),
        (8, 0, ""),
        (0, 3, "both"),
        (9, 10, "Holes 9 and 10"),
    ):
        swapped = list(good)
        swapped[one], swapped[other] = swapped[other], swapped[one]
        found = " ".join(what_departs(swapped))
        assert told in found if told else not found
    assert "Holes 5 and 6" in str(what_departs([5, 9, 15, 11, 1, 3, 7, 13, 17, *good[9:]]))


@value("stroke-allocation-06")
def difference_counts_from_one(_given: dict[str, Any], _expected: Any) -> None:
    received = match_strokes(given(10, 14), Allowance((100,)))[1].whole
    strokes = strokes_by_hole(received, ORDER)
    assert [index for index, count in zip(ORDER, strokes, strict=True) if count] == [1, 2, 3, 4]


@value("stroke-allocation-07")
def difficulty_of_a_hole(inputs: dict[str, Any], expected: Any) -> None:
    from marram.handicap.stroke_index import difficulty

    found = difficulty(inputs["scratch_value"], inputs["bogey_value"], inputs["par"])
    assert found == Fraction(expected["over_par"])
