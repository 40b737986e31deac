"""Checks of what is published on the Handicap Index: short records, caps, exceptional scores; see ``test_reference_values.py``."""

from decimal import Decimal
from fractions import Fraction
from typing import Any

from marram.handicap.index import handicap_index
from marram.handicap.scoring_record import Posted, revise
from tests.handicap.published_values import value
from tests.handicap.records import day, record


@value("index-calculation-01")
def short_records(_given: dict[str, Any], expected: Any) -> None:
    for counts, (used, adjustment) in expected.items():
        first, _, last = counts.partition("-")
        for count in range(int(first), int(last or first) + 1):
            lowest = [Decimal(10 + place) for place in range(count)]
            average = Fraction(sum(range(used)), used) + 10 + Fraction(adjustment)
            assert abs(handicap_index(lowest[::-1]).value - average) <= Fraction(1, 20), count


@value("index-calculation-03")
def most_index(_given: dict[str, Any], expected: Any) -> None:
    assert handicap_index([60, 61, 62]).value == Fraction(expected["max"])


@value("index-calculation-04")
def best_of_twenty(_given: dict[str, Any], expected: Any) -> None:
    older = [Decimal(1)] * 5
    latest = [Decimal(20 + place) for place in range(expected["of"])]
    assert handicap_index(older + latest).value == Fraction("23.5")  # mean of 20 to 27
    keys = [one.key for one in handicap_index(latest, low_index="20.1").steps]
    assert keys == ["average", "index_rounded", "soft_cap", "cap_rounded"]


@value("index-calculation-05", "index-calculation-06")
def initial_index(inputs: dict[str, Any], expected: Any) -> None:
    assert handicap_index(inputs["differentials"]).value == Fraction(expected["handicap_index"])


@value("caps-01")
def caps(_given: dict[str, Any], expected: Any) -> None:
    trigger, most = Fraction(expected["soft_trigger"]), Fraction(expected["hard_limit"])
    low = Fraction(10)
    rises = [Fraction(one, 10) for one in range(-50, 120)]
    found = [handicap_index([low + rise] * 20, low_index=low).value - low for rise in rises]
    for rise, kept in zip(rises, found, strict=True):
        if rise <= trigger:
            assert kept == rise
        else:
            assert (
                0
                <= kept - min(trigger + (rise - trigger) * Fraction(expected["soft_factor"]), most)
                <= Fraction(1, 20)
            )


@value("caps-02")
def low_index_window(_given: dict[str, Any], expected: Any) -> None:
    assert expected["window_days"] == 365
    assert handicap_index([Decimal(20)] * 19, low_index="5.0").value == 20
    revisions = revise(record([10] * 20 + [20] * 12))
    assert [one.low for one in revisions[:20]] == [None] * expected["needs"]
    assert revisions[20].low == 10


@value("caps-03")
def soft_cap_example(inputs: dict[str, Any], expected: Any) -> None:
    found = handicap_index([inputs["average"]] * 20, low_index=inputs["low_index"])
    assert found.value == Fraction(expected["handicap_index"])


@value("exceptional-score-01")
def exceptional(_given: dict[str, Any], _expected: Any) -> None:
    for below, reduction in (("6.9", 0), ("7.0", -1), ("9.9", -1), ("10.0", -2)):
        revisions = revise(
            [*record([20] * 20), Posted(day(20), 20 - Fraction(below)), Posted(day(21), Fraction(20))]
        )
        assert revisions[20].reduction == reduction, below
        assert revisions[21].reductions == (0,) + (reduction,) * 20 + (0,)


@value("exceptional-score-02")
def measured_unrounded(_given: dict[str, Any], _expected: Any) -> None:
    almost = Posted(day(20), Fraction("13.04"))  # 6.96 better; rounded it would be 7.0
    assert revise([*record([20] * 20), almost])[20].reduction == 0


@value("exceptional-score-03")
def exceptional_in_a_short_record(_given: dict[str, Any], _expected: Any) -> None:
    revisions = revise([*record([30] * 5), Posted(day(5), Fraction(22))])
    assert revisions[5].reductions == (-1,) * 6


@value("exceptional-score-04")
def exceptional_example(inputs: dict[str, Any], expected: Any) -> None:
    lowest = [Fraction(one) for one in ["17.2"] + ["14.4"] * 3 + ["14.5"] * 4]
    before = lowest + [Fraction(25)] * 12
    score = Fraction(inputs["differential"])
    assert handicap_index(before).value == Fraction(inputs["handicap_index"])
    assert handicap_index([*before, score]).value == Fraction(inputs["index_without_reduction"])
    last = revise([*record(before), Posted(day(20), score)])[-1]
    assert last.reduction == Fraction(expected["reduction"])
    assert last.steps[0].values["below"] == Fraction(expected["gap"])
    assert last.index is not None
    assert last.index.value == Fraction(expected["new_index"])
