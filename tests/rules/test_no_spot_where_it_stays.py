"""Clarification 14.2e/1: where a ball would stay only nearer the hole, it is penalty relief that is taken.

Which relief that is: Rules 19.2 and 19.3 of 2019 and 2023, in a penalty area Rule 17.1d.
"""

from datetime import date

import pytest

from marram.rules.engine.request import rule
from marram.rules.ruling import Action, Ruling
from marram.words.headline import headline, tell_the_player

DAYS = [date(2021, 6, 1), date(2024, 6, 1)]
REPLACED = {"lie_altered": "no", "ball_stays_on_spot": "no", "spot_that_stays_exists": "no"}
AFTER_TWO_DROPS = {"stays_where_first_touched": "no", "spot_that_stays_exists": "no"}
COSTS = {
    "general_area": ({"19.2a": 1, "19.2b": 1, "19.2c": 1}, {}),
    "bunker": ({"19.3a": 1, "19.3b": 2}, {}),
    "penalty_area": ({"17.1d(1)": 1, "17.1d(2)": 1, "17.1d(3)": 1}, {"penalty_area_colour": "red"}),
}


@pytest.mark.parametrize("day", DAYS)
@pytest.mark.parametrize("area", COSTS)
@pytest.mark.parametrize(
    ("what", "facts", "asked_where"),
    [
        ("ball_to_be_replaced", REPLACED, "area_of_ball"),
        ("ball_placed_after_two_drops", AFTER_TWO_DROPS, "area_of_placing_spot"),
    ],
)
def test_the_penalty_relief_of_that_area_must_be_taken(
    day: date, area: str, what: str, facts: dict[str, str], asked_where: str
) -> None:
    """Each option of the area with its cost; it is not played on, nor as it lies."""
    costs, more = COSTS[area]
    given = {**facts, **more, asked_where: area, "last_stroke_from_penalty_area": "no"}
    ruling = rule(what, given, played_on=day, form_of_play="stroke_play", local_rules=[])
    assert isinstance(ruling, Ruling), ruling
    assert ruling.action is Action.TAKE_RELIEF
    assert {one.citation: one.penalty for one in ruling.relief} == costs
    for words in (headline(ruling), tell_the_player(ruling)):
        assert words.startswith("Only penalty relief is left:")
        assert "play on" not in words
        assert "penalty stroke" in words
