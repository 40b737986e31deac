"""What happened is told so that a Rule has to be known: no sentence says that a Rule allowed it, and answers say what is asked."""

from random import Random

import pytest

from marram.rules.facts.conditions import FormOfPlay
from marram.teach.quizzes.drafting import draft
from marram.teach.quizzes.given_away import gives_itself_away
from marram.teach.situations.reaching import TODAY
from marram.teach.situations.sampling import hole_of
from marram.teach.situations.situation import Situation, ruled
from marram.words.telling import telling


def _situation(name: str, facts: dict[str, str], form: FormOfPlay = FormOfPlay.STROKE_PLAY) -> Situation:
    ruling = ruled(name, facts, form, TODAY)
    assert ruling is not None
    return Situation(name, facts, form, TODAY, "Mara", 4, ruling)  # type: ignore[arg-type]


def _answers(one: Situation) -> list[str]:
    drafted = draft(one)
    assert drafted is not None
    return [each.words for each in drafted.answers]


@pytest.mark.parametrize("name", ["ball_lifted_by_player", "ball_moved_by_player"])
@pytest.mark.parametrize("after", ["goes_elsewhere", "went_elsewhere"])
def test_of_a_ball_lifted_for_relief_it_is_told_that_its_spot_was_not_marked(name: str, after: str) -> None:
    """Rule 14.1a asks for a mark only where the ball has to be replaced: that is what the question is about."""
    facts = {
        "area_of_ball": "general_area",
        "handled_as": "lifted",
        "handling_allowed": "yes",
        "after_lifting": after,
    }
    if name == "ball_moved_by_player":
        facts = {"cause_known": "yes", "movement_accidental": "no", **facts}
        del facts["handled_as"]
    told = " ".join(telling(name, facts, "Mara", FormOfPlay.STROKE_PLAY))
    assert told.startswith(
        "Mara lifted the ball at rest. The ball lay in the general area. It was done without marking"
    )
    assert "A Rule allowed" not in told


def test_of_a_penalty_area_no_question_leaves_the_price_of_relief_open() -> None:
    """Relief from a penalty area costs a stroke itself (Rule 17.1d), beside the lifting, which costs nothing."""
    facts = {
        "area_of_ball": "penalty_area",
        "handled_as": "lifted",
        "handling_allowed": "yes",
        "after_lifting": "goes_elsewhere",
    }
    assert gives_itself_away(_situation("ball_lifted_by_player", facts))
    assert not gives_itself_away(_situation("ball_lifted_by_player", {**facts, "area_of_ball": "bunker"}))


def test_a_ball_that_was_only_touched_is_not_replaced_in_any_answer() -> None:
    """It never left its spot, so that nobody takes "replace the ball" for right (Rule 9.4b)."""
    facts = {"area_of_ball": "bunker", "handled_as": "only_touched", "handling_allowed": "no"}
    answers = _answers(_situation("ball_lifted_by_player", facts))
    assert answers[0] == "One penalty stroke; play it as it lies"
    assert "No penalty; play it as it lies" in answers
    assert not any("replace" in each for each in answers)


def test_of_a_swing_the_answers_say_whether_it_was_a_stroke() -> None:
    """Definitions: stroke; Clarification Stroke/1: a clubhead stopped by a branch has made one."""
    answers = _answers(_situation("swing_in_doubt", {"what_swing": "club_stopped_by_something"}))
    assert answers[:2] == [
        "It was one stroke: no penalty; play it as it lies.",
        "It was no stroke: no penalty; play it as it lies.",
    ]


def test_of_a_shared_caddie_the_answers_name_who_is_penalised() -> None:
    """Rule 10.3a(2): the one who gave the instruction. What was done is told, not what it costs."""
    facts = {"for_whom_shared_caddie_acted": "directed_by_one", "shared_caddie_breach": "one_stroke"}
    one = _situation("shared_caddie_in_breach", facts)
    answers = _answers(one)
    assert answers[0] == "One penalty stroke for Mara alone"
    assert "One penalty stroke for each player involved" in answers
    assert "penalty" not in " ".join(one.told("the links")[1:])


@pytest.mark.parametrize(
    ("name", "facts", "on_a_hole"),
    [
        ("advice_exchanged", {"during_round": "no"}, False),
        ("advice_exchanged", {"during_round": "yes"}, True),
        ("second_caddie", {"breach_when": "several_holes"}, False),
    ],
)
def test_what_happened_before_the_round_or_on_several_holes_is_told_of_no_hole(
    name: str, facts: dict[str, str], on_a_hole: bool
) -> None:
    assert (hole_of(name, facts, Random(1)) is not None) is on_a_hole


@pytest.mark.parametrize(
    "act", ["at_players_request", "conceded_stroke", "lifted_as_own", "touched_on_purpose"]
)
def test_what_the_opponent_did_is_told_once(act: str) -> None:
    facts = {"opponent_cause_known": "yes", "opponent_act": act}
    told = telling("ball_moved_by_opponent", facts, "Mara", FormOfPlay.MATCH_PLAY)
    assert len(told) == 1
    assert told[0].startswith("In a match the opponent ")


def test_of_a_moved_ball_it_is_told_what_was_certain_before_the_stroke_at_it() -> None:
    """A stroke made before it was certain was no mistake (Clarification 9.2a/1): "the next stroke" could be a later one."""
    facts = {"what_moved_ball": "one_of_these", "known_before_stroke": "yes"}
    told = " ".join(telling("moved_ball_not_replaced", facts, "Mara", FormOfPlay.MATCH_PLAY))
    assert "Before that stroke it was virtually certain" in told
    assert "either the opponent or a spectator" in told


def test_of_a_ball_lifted_to_help_another_only_a_match_is_asked_about() -> None:
    """Rule 11.3: which of the two balls is played as it lies, no answer says; in a match the hole is lost."""
    facts = {"meant_to_affect_ball": "yes", "moved_in_path": "ball_off_green"}
    assert gives_itself_away(_situation("helped_ball_in_motion", facts))
    assert not gives_itself_away(_situation("helped_ball_in_motion", facts, FormOfPlay.MATCH_PLAY))
