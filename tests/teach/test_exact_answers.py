"""Answers of quizzes say whose penalty it is and with which ball it goes on, and leave out what is allowed besides."""

from datetime import date
from importlib import import_module
from pkgutil import iter_modules

import pytest

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Ruling
from marram.teach.quizzes.drafting import Question, draft
from marram.teach.situations.situation import Situation, ruled
from marram.words.english import cases
from marram.words.english.cases import CASES

DAY = date(2026, 5, 1)
STROKE, MATCH = FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY


def _question(incident: str, form: FormOfPlay, **facts: str) -> Question:
    ruling = ruled(incident, facts, form, DAY)
    assert isinstance(ruling, Ruling)
    found = draft(Situation(incident, facts, form, DAY, "Ada", None, ruling))
    assert found is not None
    return found


def _words(question: Question) -> tuple[str, list[str]]:
    right, *wrong = (one.words for one in question.answers)
    return right, wrong


@pytest.mark.parametrize(
    ("incident", "more", "instead"),
    [
        ("provisional_ball", {"nearer_stroke_at_provisional": "no"}, "go on with the provisional ball"),
        ("provisional_ball_holed", {"lifted_from_hole_first": "no"}, "let the provisional ball count"),
    ],
)
def test_the_provisional_ball_may_be_kept_where_the_original_was_taken(
    incident: str, more: dict[str, str], instead: str
) -> None:
    """Rule 18.3c(2): taken by an outside influence, the original may be replaced or given up; no answer calls that wrong."""
    asked = _question(incident, STROKE, original_ball="moved_by_outside_influence", **more)
    right, wrong = _words(asked)
    assert right.startswith("No penalty; replace the ball, or ")
    assert f"{instead} for one penalty stroke" in right
    assert not any(one.startswith("One penalty stroke; go on with the provisional") for one in wrong)
    assert not any("take it from the hole" in one for one in wrong)


def test_nobody_goes_on_with_a_provisional_ball_that_is_lost() -> None:
    """How often the stroke of stroke and distance counts is what the other answers differ in (Clarification 18.3a/3)."""
    asked = _question(
        "on_boundary_feature",
        STROKE,
        boundary_feature="fence",
        local_rule_a_3="no",
        provisional_state="both_lost_or_out",
        local_rule_e_5="no",
        last_stroke_from_penalty_area="no",
    )
    right, wrong = _words(asked)
    assert right.startswith("Three penalty strokes;")
    assert any(one.startswith("Two penalty strokes; play again") for one in wrong)
    assert not any("provisional" in one for one in wrong)


def test_an_answer_says_whose_penalty_it_is() -> None:
    """Beside a stroke of the opponent's (Rule 21.4c), one that names nobody would be the same answer."""
    asked = _question(
        "three_ball_marker_moved",
        MATCH,
        movement_accidental="yes",
        area_of_ball="bunker",
        moved_while="something_else",
    )
    right, wrong = _words(asked)
    assert right == "One penalty stroke for the opponent; replace the ball"
    assert all(one.startswith("No penalty") or "for Ada" in one or "for the opponent" in one for one in wrong)
    assert any("for Ada" in one for one in wrong)


def test_of_two_balls_teed_off_it_is_said_which_goes_on() -> None:
    """Clarification 22.3/2: the ball teed off second is the side's."""
    right, wrong = _words(_question("foursomes_both_teed_off", STROKE, first_to_tee_off_was_right="yes"))
    assert all("the ball teed off second" in one for one in (right, *wrong) if "go on" in one)
    assert "the ball teed off second" in right


def test_a_partner_who_need_not_hole_out_is_not_penalised() -> None:
    """Rule 23.2a: the other partner completed the hole, and that score is the side's; being out of the hole is the same."""
    asked = _question(
        "mistake_not_corrected",
        STROKE,
        uncorrected_mistake="holing_out",
        sides="four_ball",
        other_partner_completed="yes",
    )
    right, wrong = _words(asked)
    assert right == "No penalty; the other partner's score counts for the side"
    assert not any(one.startswith("Disqualification for the hole") for one in wrong)


def test_each_case_is_told_where_it_is_entered() -> None:
    """A key that stands in two modules keeps the place of the first and the sentence of the last."""
    names = [one.name for one in iter_modules(cases.__path__)]
    entered = [key for name in names for key in import_module(f"{cases.__name__}.{name}").CASES]
    assert sorted(entered) == sorted(CASES)
