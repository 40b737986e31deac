"""Rule 10.2b: what changed when, and what marram leaves open."""

from datetime import date
from typing import Any

import pytest

import marram
from marram.rules.penalty import PenaltyKind
from marram.rules.ruling import NotCovered, Ruling

BEHIND = {"in_place_at_stance": "yes", "stood_there_deliberately": "yes", "backed_away": "yes"}
PUTTER = {"meant_to_help_aim": "yes", "what_was_set_down": "self_standing_putter"}


def decide(incident: str, facts: dict[str, Any], day: date) -> Any:
    return marram.rule(incident, facts, played_on=day, form_of_play="stroke_play", local_rules=[])


def general_penalties(result: Any) -> int:
    assert isinstance(result, Ruling), result
    return sum(one.kind is PenaltyKind.GENERAL for one in result.penalties)


@pytest.mark.parametrize(
    ("day", "area", "penalties"),
    [
        (date(2019, 2, 5), "general_area", 1),
        (date(2019, 2, 5), "putting_green", 0),
        (date(2019, 2, 6), "general_area", 0),
        (date(2019, 2, 6), "putting_green", 0),
    ],
)
def test_backing_away_helps_everywhere_since_the_clarification(day: date, area: str, penalties: int) -> None:
    """Backing away was for the green only until the clarification of 6 February 2019.

    Source: joint release of the governing bodies of that day on Rule 10.2b(4), in force at once.
    """
    result = decide("caddie_behind_ball", {**BEHIND, "area_of_ball": area}, day)

    assert general_penalties(result) == penalties


def test_backing_away_is_asked_only_where_it_can_help_since_2023() -> None:
    """Since 2023 help other than with aiming does not turn on backing away (Rule 10.2b(4), 2023)."""
    facts = {"in_place_at_stance": "yes", "stood_there_deliberately": "yes", "stood_there_for_aim": "no"}
    result = decide("caddie_behind_ball", facts, date(2023, 1, 1))

    assert result.fact == "left_before_stroke"


def test_a_self_standing_putter_is_a_breach_since_2025() -> None:
    """Clarification 10.2b/1 applies without delay from 1 January 2025 (note to Clarification 10.2b(3)/2)."""
    assert general_penalties(decide("object_set_down_for_aim", PUTTER, date(2025, 1, 1))) == 1


@pytest.mark.parametrize("day", [date(2019, 6, 1), date(2024, 12, 31)])
def test_a_self_standing_putter_before_2025_is_left_open(day: date) -> None:
    """Before 2025 it depended on the use made of it; marram says so instead of guessing."""
    assert isinstance(decide("object_set_down_for_aim", PUTTER, day), NotCovered)


def test_an_object_removed_before_the_stroke_off_the_green_is_a_breach_since_2023() -> None:
    """Removing the object in time was enough until 2022.

    Source: principal changes of the 2023 Rules of Golf, Rules 10.2b(1) and (2).
    """
    facts = {"area_of_ball": "general_area", "line_shown_by": "object", "still_there_in_stroke": "no"}

    assert general_penalties(decide("line_of_play_shown", facts, date(2022, 12, 31))) == 0
    assert general_penalties(decide("line_of_play_shown", facts, date(2023, 1, 1))) == 1


@pytest.mark.parametrize("day", [date(2019, 6, 1), date(2024, 6, 1)])
def test_a_ball_marker_that_aligns_is_left_to_rule_4(day: date) -> None:
    """Lining up the ball by such a ball-marker breaks Rule 4.3a (clarification of 6 January 2020), not 10.2b(3)."""
    facts = {"meant_to_help_aim": "yes", "what_was_set_down": "alignment_ball_marker"}

    assert isinstance(decide("object_set_down_for_aim", facts, day), NotCovered)


def test_a_mark_in_the_ground_before_2023_is_left_open() -> None:
    """Rule 10.2b(3) of 2019 spoke of objects set down; marks in sand or dew were added in 2023."""
    facts = {"meant_to_help_aim": "yes", "what_was_set_down": "mark_in_ground"}

    assert isinstance(decide("object_set_down_for_aim", facts, date(2022, 12, 31)), NotCovered)
    assert general_penalties(decide("object_set_down_for_aim", facts, date(2023, 1, 1))) == 1
