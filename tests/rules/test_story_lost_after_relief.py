"""Relief is paid though the ball it was taken with is lost later, and two balls that are both gone are both lost."""

from datetime import date

import pytest

import marram
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Action, Ruling
from marram.rules.story.story import Happened, rule_story

DAY = date(2026, 6, 1)
IN_BUNKER = {"area_of_ball": "bunker", "last_stroke_from_penalty_area": "no"}


@pytest.mark.parametrize(
    ("strokes", "provisional", "comes"),
    [
        # Two strokes, relief outside the bunker for two (Rule 19.3b), two more with that ball: the provisional ball, played
        # for one that is lost, costs stroke and distance (Rule 18.3c(2)): 2 + 2 + 2 + 1 stroke at it + 1, the ninth is next.
        (2, "found", 9),
        # The ball itself was never played: the drop where it was lost was that relief, which is none (Rules 14.5 and 18.2b).
        (0, "not_played", 4),
    ],
)
def test_relief_is_paid_once_the_ball_was_played_from_it(strokes: int, provisional: str, comes: int) -> None:
    """Rules 14.5b and 19.3b: what was taken and played is spent; only a drop that is corrected costs nothing."""
    lost = {"played_since_put_down": "no", "provisional_state": provisional}
    if provisional == "not_played":
        lost |= {"last_stroke_from_penalty_area": "no", "local_rule_e_5": "no"}
    taken = "provisional" if provisional == "found" else "stroke_and_distance"
    relief = Happened("embedded_ball", IN_BUNKER, option="back_on_the_line_outside_bunker", strokes=strokes)
    found = rule_story(
        [relief, Happened("dropped_where_lost", lost, option=taken)],
        played_on=DAY,
        form_of_play=FormOfPlay.STROKE_PLAY,
        strokes_before=2,
    )
    assert found.next_stroke == comes


def test_relief_stays_paid_when_another_ball_is_played_where_that_one_was_lost() -> None:
    """Rules 17.1d(2), 14.7a and 18.2b: four, relief for one, two strokes, one from where it was lost at 2 and 1."""
    wet = {
        "area_of_ball": "penalty_area",
        "penalty_area_colour": "yellow",
        "last_stroke_from_penalty_area": "no",
    }
    wet |= {"local_rule_e_1": "no", "local_rule_e_1_3": "no"}
    lost = {
        "played_since_put_down": "yes",
        "serious_breach": "no",
        "balls_after_wrong_place": "not_corrected",
    }
    found = rule_story(
        [
            Happened("embedded_ball", wet, option="back_on_the_line", strokes=2),
            Happened("dropped_where_lost", lost),
        ],
        played_on=DAY,
        form_of_play=FormOfPlay.STROKE_PLAY,
        strokes_before=4,
    )
    assert found.count is not None
    assert (found.count.made, found.count.penalty_strokes, found.next_stroke) == (3, 4, 12)


def test_two_balls_alike_of_which_none_is_on_the_course_are_both_lost() -> None:
    """Rules 7.2, 18.2b and 18.3c(2): a provisional ball that is out of bounds too is not played on with."""
    found = marram.rule(
        "identifying_ball",
        {
            "how_identified": "identifying_mark",
            "identical_ball_there": "yes",
            "own_two_balls_alike": "yes",
            "balls_alike": "none",
            "last_stroke_from_penalty_area": "no",
            "local_rule_e_5": "no",
        },
        played_on=DAY,
        form_of_play=FormOfPlay.STROKE_PLAY,
    )
    assert isinstance(found, Ruling), found
    assert found.action is Action.TAKE_RELIEF
    paid = sum(one.strokes for one in found.penalties)
    assert {paid + option.penalty for option in found.relief} == {2}
    assert "18.2b" in found.citations
