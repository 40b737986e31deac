"""Checks of what is published on allowances, by format of play, and the handicap of a side; see ``test_reference_values.py``."""

from decimal import Decimal
from fractions import Fraction
from typing import Any

from marram.handicap.allowances import Allowance, Format, allowance, for_field
from marram.handicap.course_handicaps import course_handicap
from marram.handicap.matches import MatchMethod, differences, match_strokes
from marram.handicap.playing_handicaps import playing_handicap, side_handicap
from tests.handicap.published_values import Check, given, of_tee, tee, value


@value("playing-handicap-06")
def four_ball_share(inputs: dict[str, Any], expected: Any) -> None:
    found = playing_handicap(of_tee(inputs), Allowance((inputs["allowance_pct"],)))
    assert found.whole == expected["playing_handicap"]


FORMATS = {
    "allowances-01": [Format.STROKE_PLAY, Format.STABLEFORD, Format.PAR_BOGEY, Format.MAXIMUM_SCORE],
    "allowances-02": [Format.MATCH_PLAY],
    "allowances-03": [Format.FOUR_BALL_STROKE_PLAY, Format.FOUR_BALL_STABLEFORD],
    "allowances-04": [Format.FOUR_BALL_PAR_BOGEY],
    "allowances-05": [Format.FOUR_BALL_MATCH_PLAY],
    "allowances-06": [Format.FOURSOMES],
    "allowances-07": [Format.GREENSOMES],
    "allowances-08": [Format.CHAPMAN],
    "allowances-09": [Format.BEST_1_OF_4],
    "allowances-10": [Format.BEST_2_OF_4],
    "allowances-11": [Format.BEST_3_OF_4, Format.ALL_4_OF_4],
    "allowances-12": [Format.BEST_1_OF_4_PAR_BOGEY],
    "allowances-13": [Format.BEST_2_OF_4_PAR_BOGEY],
    "allowances-14": [Format.BEST_3_OF_4_PAR_BOGEY],
    "allowances-15": [Format.ALL_4_OF_4_PAR_BOGEY],
    "allowances-16": [Format.TOTAL_OF_2_MATCH_PLAY],
    "allowances-17": [Format.SCRAMBLE_4],
    "allowances-18": [Format.SCRAMBLE_3],
    "allowances-19": [Format.SCRAMBLE_2],
}


def shares(expected: Any) -> tuple[int, ...]:
    if "pct" in expected:
        return (expected["pct"],)
    if "pct_of_combined" in expected:
        return (expected["pct_of_combined"],) * 2
    if "low_pct" in expected:
        return (expected["low_pct"], expected["high_pct"])
    return tuple(expected["pct_low_to_high"])


def _recommended(ident: str) -> Check:
    def check(_given: dict[str, Any], expected: Any) -> None:
        for form in FORMATS[ident]:
            assert allowance(form).shares == shares(expected), form

    return check


for _ident in FORMATS:
    value(_ident)(_recommended(_ident))


@value("allowances-21")
def small_fields(_given: dict[str, Any], expected: Any) -> None:
    assert for_field(Format.STROKE_PLAY, 29).shares == (expected["fewer_than_30"],)
    assert for_field(Format.STROKE_PLAY, 30).shares == (expected["from_30"],)


@value("allowances-22")
def nine_and_eighteen(_given: dict[str, Any], expected: Any) -> None:
    for holes in expected["holes"]:
        course = course_handicap("20", tee(holes * 4, 113, holes * 4, holes))
        full = Fraction(20 * holes, 18)
        assert playing_handicap(course, allowance(Format.STROKE_PLAY)).steps[-1].values[
            "value"
        ] == full * Fraction(95, 100)


@value("allowances-23")
def match_is_a_difference(_given: dict[str, Any], _expected: Any) -> None:
    found = match_strokes(given(5, 12, -1, 20), Allowance((100,)))
    assert [one.whole for one in found] == [6, 13, 0, 21]


@value("scramble-01")
def scramble(inputs: dict[str, Any], expected: Any) -> None:
    rated = tee(inputs["course_rating"], inputs["slope"], inputs["par"])
    courses = [course_handicap(one, rated) for one in inputs["handicap_indexes"]]
    found = side_handicap(courses, Allowance(tuple(inputs["pct_low_to_high"])))
    assert abs(found.steps[-1].values["value"] - Fraction(expected["team_unrounded"])) < Fraction(1, 200)  # type: ignore[operator]
    assert found.whole == expected["team_playing_handicap"]


@value("foursomes-01")
def foursomes(inputs: dict[str, Any], expected: Any) -> None:
    share = allowance(Format.FOURSOMES)
    sides = [side_handicap(given(*inputs[f"side_{one}_course_handicaps"]), share) for one in "ab"]
    assert [one.whole for one in sides] == [expected["side_a"], expected["side_b"]]
    assert [one.whole for one in differences(sides)] == [0, expected["strokes_to_b"]]


@value("greensomes-01")
def greensomes(inputs: dict[str, Any], expected: Any) -> None:
    for order in (1, -1):
        found = side_handicap(given(*inputs["course_handicaps"][::order]), allowance(Format.GREENSOMES))
        assert found.whole == expected["playing_handicap"]


@value("four-ball-06")
def four_ball_match(inputs: dict[str, Any], expected: Any) -> None:
    courses = given(inputs["player_unrounded"], inputs["lowest_unrounded"])
    found = match_strokes(courses, Allowance((90,)), method=MatchMethod.UNROUNDED_DIFFERENCE)
    assert found[0].steps[0].result == Fraction(expected["difference"])
    assert [one.whole for one in found] == [expected["strokes"], 0]


@value("four-ball-07")
def three_ways_in_print(_given: dict[str, Any], expected: Any) -> None:
    assert set(expected) == {"1", "2", "3"}
    courses = given(Decimal("15.5"), Decimal("3.4"))
    found = [match_strokes(courses, Allowance((90,)), method=one)[0].whole for one in MatchMethod]
    assert found == [14 - 3, 11, 12]  # 13.95 → 14, 3.06 → 3; 12.1 × 0.9 = 10.89; (16 - 3) × 0.9 = 11.7
