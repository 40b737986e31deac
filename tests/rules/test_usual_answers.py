"""Routine questions are gathered with their usual answers, and none of those decides before it is confirmed."""

from collections.abc import Mapping
from datetime import date
from typing import Any

import pytest

import marram
from marram.errors import BookError
from marram.rules.engine.fact import FACTS, yes_no
from marram.rules.engine.usual import usual_answers
from marram.rules.result import NeedFacts, Result
from marram.rules.ruling import Ruling
from marram.services.cases.usual import usual_together


def ask_about(incident: str) -> Any:
    """Return a way to ask about an incident in stroke play of 2024 without Local Rules."""

    def ask(facts: Mapping[str, Any]) -> Result:
        return marram.rule(
            incident, facts, played_on=date(2024, 6, 1), form_of_play="stroke_play", local_rules=[]
        )

    return ask


def test_the_routine_questions_of_a_condition_come_together() -> None:
    """Rule 16.1a(3) and 16.1c: three questions that hardly ever change the answer are confirmed with one tap."""
    ask = ask_about("abnormal_course_condition")
    facts = {"area_of_ball": "general_area", "interference": "ball", "in_the_way": "temporary_water"}
    gathered = usual_answers(ask, facts)
    assert (
        gathered.items()
        >= {"stroke_unreasonable_anyway": False, "only_by_unreasonable_choice": False}.items()
    )
    ruling = ask(facts | gathered)
    assert isinstance(ruling, Ruling)
    assert [option.penalty for option in ruling.relief][:1] == [0]


def test_what_was_not_confirmed_decides_nothing() -> None:
    """Without the confirmation the same case is still open at its first routine question."""
    ask = ask_about("abnormal_course_condition")
    facts = {"area_of_ball": "general_area", "interference": "ball", "in_the_way": "temporary_water"}
    first = ask(facts)
    assert isinstance(first, NeedFacts)
    assert first.fact in usual_answers(ask, facts)


def test_only_questions_that_can_change_the_outcome_are_gathered() -> None:
    """One answered already is not offered again, and the last one gathered still changes the outcome."""
    ask = ask_about("abnormal_course_condition")
    facts = {
        "area_of_ball": "general_area",
        "interference": "ball",
        "in_the_way": "temporary_water",
        "stroke_unreasonable_anyway": "no",
    }
    gathered = usual_answers(ask, facts)
    assert "stroke_unreasonable_anyway" not in gathered
    for name, usual in gathered.items():
        others = {key: answer for key, answer in gathered.items() if key != name}
        assert ask({**facts, **others, name: usual}) != ask({**facts, **others, name: not usual})


def test_a_question_without_a_usual_answer_is_asked_alone() -> None:
    """Where the next question is no routine one, nothing is gathered; one routine question alone is not either."""
    ask = ask_about("ball_near_boundary")
    assert usual_answers(ask, {}) == {}
    last = {"all_of_ball_out_of_bounds": "yes", "provisional_state": "not_played"}
    assert usual_answers(ask, last) == {"last_stroke_from_penalty_area": False}
    assert usual_together(ask, last) == ()


def test_a_usual_answer_must_be_an_answer() -> None:
    """A fact whose usual answer it does not allow is refused when it is declared."""
    with pytest.raises(BookError):
        yes_no("a_fact_of_this_test", "Is it so?", help="", source="1.1", usual=2)  # type: ignore[arg-type]
    FACTS.pop("a_fact_of_this_test", None)
