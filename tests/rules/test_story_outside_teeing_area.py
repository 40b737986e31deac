"""Stroke and distance back to a stroke from outside the teeing area: the ball is dropped, not teed (6.1b(1)/1)."""

from typing import Any

from marram.rules.relief_option import Setting
from marram.rules.ruling import Ruling
from marram.rules.story.story import Happened, rule_story

STOOD = Happened("began_outside_teeing_area", {"tee_stroke_cancelled": "no"})
OUT = Happened(
    "ball_near_boundary",
    {
        "all_of_ball_out_of_bounds": "yes",
        "provisional_state": "not_played",
        "last_stroke_from_penalty_area": "no",
    },
    option="nothing_yet",
)
PLAYED_ON = Happened(
    "played_out_of_turn", {"agreed_out_of_turn": "no", "opponent_on_cancelling": "let_stand"}
)


def combined(*acts: Happened, **between: Any) -> Ruling:
    found = rule_story(acts, between, edition=2023, form_of_play="match_play", local_rules=[]).combined
    assert isinstance(found, Ruling), found
    return found


def test_out_of_bounds_after_a_stroke_from_outside_the_teeing_area_is_dropped() -> None:
    """The stroke was not cancelled, and the ball went out: the next is dropped where that stroke was made."""
    ruling = combined(STOOD, OUT)
    assert [one.setting for one in ruling.relief] == [Setting.DROP]
    assert "drop_not_tee_outside" in ruling.notes
    assert "Clarification 6.1b(1)/1" in ruling.citations


def test_after_a_further_stroke_the_spot_decides_again() -> None:
    """Once the ball was played from where it lay, stroke and distance leads to that spot, not to the tee."""
    ruling = combined(STOOD, PLAYED_ON, OUT)
    assert [one.setting for one in ruling.relief] == [Setting.AS_THE_SPOT_ALLOWS]
    assert "drop_not_tee_outside" not in ruling.notes
