"""A provisional ball that had to be abandoned is out of play: what is done with it afterwards leaves nothing behind.

Rules of Golf 2019 and 2023, Rules 18.3c(3) and 6.3c(1): no more strokes are made at it; one made is at a wrong ball.
"""

import pytest

from marram.rules.ruling import Action, Ruling
from marram.rules.story.story import Happened, StoryResult, rule_story

PLAYED = Happened(
    "another_ball_played", {"second_ball_reason": "might_be_lost_or_out", "announced": "before"}
)
FOUND = Happened("ball_found_in_time", {"search_minutes": "2", "identified_in_reasonable_time": "yes"})
MARKER = {"who_moved_marker": "player", "movement_accidental": "no", "marker_move_allowed": "no"}


def ruled(*acts: Happened, edition: int) -> StoryResult:
    return rule_story(acts, strokes_before=1, edition=edition, form_of_play="stroke_play", local_rules=[])


@pytest.mark.parametrize("edition", [2019, 2023])
def test_a_provisional_picked_up_after_the_original_is_found_costs_nothing(edition: int) -> None:
    """Its marker moved after it was abandoned: no penalty, nothing to replace, the original is played on."""
    result = ruled(PLAYED, FOUND, Happened("ball_marker_moved", MARKER, ball="provisional"), edition=edition)
    assert isinstance(result.combined, Ruling)
    assert result.combined.penalties == ()
    assert result.combined.action is Action.PLAY_AS_IT_LIES
    assert result.next_stroke == 2


@pytest.mark.parametrize("edition", [2019, 2023])
def test_the_same_done_with_the_original_counts(edition: int) -> None:
    """Told of the ball in play the marker moved costs its stroke, and is set back."""
    result = ruled(PLAYED, FOUND, Happened("ball_marker_moved", MARKER, ball="in_play"), edition=edition)
    assert isinstance(result.combined, Ruling)
    assert [one.strokes for one in result.combined.penalties] == [1]
    assert result.combined.action is Action.REPLACE


@pytest.mark.parametrize("edition", [2019, 2023])
def test_found_too_late_in_a_penalty_area_it_was_certain_to_be_in_it_ends_the_provisional_too(
    edition: int,
) -> None:
    """Rules 17.1c and 18.3c(3): certain of it in time, the player has penalty area relief for one stroke, and no other ball."""
    late = {
        "search_minutes": "4",
        "late_ball_played": "no",
        "whereabouts": "penalty_area",
        "penalty_area_colour": "red",
        "provisional_state": "found",
        "nearer_stroke_at_provisional": "no",
        "last_stroke_from_penalty_area": "no",
    }
    marker = Happened("ball_marker_moved", MARKER, ball="provisional")
    result = ruled(PLAYED, Happened("ball_found_in_time", late, option="lateral"), marker, edition=edition)
    assert isinstance(result.combined, Ruling), result
    assert sum(one.strokes for one in result.combined.penalties) == 1
    assert result.next_stroke == 3
