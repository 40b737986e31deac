"""Where relief must be taken and costs one thing in one way and another in another, an answer says which costs what."""

import pytest

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption
from marram.rules.ruling import Ruling
from marram.teach.quizzes.apart import is_allowed_too
from marram.teach.quizzes.drafting import Question, draft
from marram.teach.quizzes.prices_of_relief import at_several_prices, priced_apart
from marram.teach.situations.reaching import TODAY
from marram.teach.situations.situation import Situation, ruled

FORM = FormOfPlay.STROKE_PLAY
LOST = {
    "after_penalty_area": "lost_outside",
    "provisional_state": "not_played",
    "local_rule_e_5": "no",
    "first_penalty_area_colour": "yellow",
}
"""A ball played from a penalty area and lost outside it (Rule 17.2b)."""


def asked(incident: str, facts: dict[str, str]) -> Question:
    ruling = ruled(incident, facts, FORM, TODAY)
    assert isinstance(ruling, Ruling), ruling
    question = draft(Situation(incident, facts, FORM, TODAY, "Elke", 7, ruling))
    assert question is not None
    return question


def test_each_price_is_told_with_what_is_had_for_it() -> None:
    """Rule 17.2b: one stroke to play again, two to take relief outside the penalty area; every wrong answer prices it otherwise."""
    question = asked("played_from_penalty_area", LOST)
    right, *wrong = [answer.words for answer in question.answers]
    assert right == (
        "One penalty stroke to play again from where the previous stroke was made, "
        "or two penalty strokes to take penalty area relief"
    )
    assert len(wrong) == 3
    assert all("play again" in words and "take penalty area relief" in words for words in wrong)


@pytest.mark.parametrize("area", ["same_penalty_area", "another_penalty_area"])
def test_relief_for_two_strokes_is_no_wrong_answer_after_a_stroke_from_a_penalty_area(area: str) -> None:
    """Rule 17.2a: whoever drops in the penalty area first and then takes relief outside pays two strokes in all."""
    question = asked(
        "played_from_penalty_area",
        {
            "after_penalty_area": area,
            "penalty_area_colour": "yellow",
            "local_rule_e_1": "no",
            "local_rule_e_1_3": "no",
        },
    )
    words = [answer.words for answer in question.answers]
    assert words[0].startswith("No penalty; play it as it lies, or take penalty area relief for one")
    assert not any(
        "penalty area relief for two" in one or one.startswith("Two penalty strokes; take") for one in words
    )
    assert not any(at_several_prices(answer.near.ruling) for answer in question.answers if answer.near)


def test_what_is_left_beside_a_ball_replaced_is_no_wrong_answer() -> None:
    """Rules 9.6 and 18.3c(2) Exception: a ball taken by an outside influence may be replaced, or the provisional ball gone on with."""
    facts = {
        "whereabouts": "outside_influence",
        "provisional_state": "found",
        "nearer_stroke_at_provisional": "no",
    }
    words = [answer.words for answer in asked("ball_not_found", facts).answers]
    assert words[0].startswith("No penalty; replace the ball")
    assert not any(one.startswith("One penalty stroke; go on with the provisional") for one in words)


def test_the_free_part_of_a_choice_is_no_wrong_answer() -> None:
    """Rule 15.2a: a ball on a movable obstruction may be played as it lies, or free relief taken: the latter alone is right too."""
    free = ReliefOption(ReliefKind.UNDER_WHERE_IT_CAME_TO_REST, "15.2a(2)", Reference.UNDER_BALL, 1, ())
    assert is_allowed_too(Ruling().with_options(free), Ruling().with_options(free, may_play_as_it_lies=False))


def test_prices_that_no_name_tells_apart_are_not_told() -> None:
    """Unplayable ball relief for one stroke or two (Rule 19.3) is one name at two prices."""
    one = ReliefOption(ReliefKind.BACK_ON_THE_LINE, "19.3a", Reference.LINE_THROUGH_BALL, 1, (), 1)
    two = ReliefOption(ReliefKind.BACK_ON_THE_LINE, "19.3b", Reference.LINE_THROUGH_BALL, 1, (), 2)
    ruling = Ruling().under("19.3").with_options(one, two, may_play_as_it_lies=False)
    assert at_several_prices(ruling)
    assert not priced_apart(ruling)
