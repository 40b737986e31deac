"""Free relief given up: off the green the ball should not have been lifted, on it any ball may be."""

from datetime import date

import pytest

import marram
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Ruling

LIFTED = {"handled_as": "lifted", "handling_allowed": "yes", "after_lifting": "relief_given_up"}


@pytest.mark.parametrize("day", [date(2022, 6, 1), date(2024, 6, 1)])
@pytest.mark.parametrize(
    ("area", "marked", "strokes"),
    [
        ("general_area", "right", 1),  # Clarification 9.4b/4
        ("putting_green", "right", 0),  # Rule 13.1b: for any reason, once the spot is marked
        ("putting_green", "not_marked", 1),  # Rule 14.1a
    ],
)
def test_relief_given_up(area: str, marked: str, strokes: int, day: date) -> None:
    """What it costs to put the ball back."""
    facts = {**LIFTED, "area_of_ball": area}
    if area == "putting_green":
        facts["spot_marking"] = marked
    found = marram.rule("ball_lifted_by_player", facts, played_on=day, form_of_play=FormOfPlay.STROKE_PLAY)
    assert isinstance(found, Ruling), found
    assert sum(one.strokes for one in found.penalties) == strokes
