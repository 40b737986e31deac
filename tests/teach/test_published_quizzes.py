"""Quiz questions that clubs and their professionals published with answers: each is decided as published.

The questions are told in our own words. Sources, as read in 2026: cleckheatongolfclub.co.uk/blog/july-rule-quiz-answers;
parkstoneproshop.com/rules-quiz-2-answers and parkstone-pro-shop-rules-quiz-answers; jeopardylabs.com/play/az-golf-rules-of-golf-jeopardy;
dbwgc.com/2018/12/17/2019-rules-quiz-1. None of them is a governing body; where one names a Rule, it is the one beside the case.
"""

from datetime import date

import pytest

from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Ruling
from marram.words.headline import total_words

CASES = [
    pytest.param(
        "ball_moved_by_player",
        {
            "movement_certain": "yes",
            "cause_known": "yes",
            "area_of_ball": "general_area",
            "movement_accidental": "yes",
            "moved_while": "something_else",
        },
        "match_play",
        "one penalty stroke",
        "9.4b",
        id="moved by a practice swing, put back (Cleckheaton)",
    ),
    pytest.param(
        "sand_touched",
        {"ball_and_bunker": "lies_in_it", "sand_touch": "backswing"},
        "stroke_play",
        "two penalty strokes",
        "12.2b(1)",
        id="sand touched in the backswing (Parkstone)",
    ),
    pytest.param(
        "done_in_penalty_area",
        {"penalty_area_action": "touched_ground_or_water", "improved_in_penalty_area": "no"},
        "stroke_play",
        "no penalty",
        "17.1b",
        id="grass touched in a penalty area (Parkstone)",
    ),
    pytest.param(
        "interfering_ball",
        {
            "interfering_ball": "lifted_on_request",
            "area_of_ball": "general_area",
            "spot_marking": "right",
            "cleaned_when_lifted": "yes",
        },
        "stroke_play",
        "one penalty stroke",
        "",
        id="an interfering ball cleaned when lifted (Parkstone)",
    ),
    pytest.param(
        "thing_removed_from_bunker",
        {"removed_reasonably": "yes", "removal_moved_ball": "no"},
        "stroke_play",
        "no penalty",
        "",
        id="a loose impediment taken out of a bunker (Parkstone)",
    ),
    pytest.param(
        "natural_thing_removed",
        {
            "removed_thing": "loose_impediment",
            "ball_when_removed": "at_rest",
            "removal_moved_ball": "yes",
            "area_of_ball": "general_area",
            "while_searching": "no",
            "applying_other_rule": "no",
        },
        "stroke_play",
        "one penalty stroke",
        "15.1b",
        id="a leaf removed, the ball moved (Arizona)",
    ),
    pytest.param(
        "fell_off_tee",
        {"tee_ball_struck": "no"},
        "stroke_play",
        "no penalty",
        "6.2b",
        id="knocked off the tee by accident (Arizona)",
    ),
    pytest.param(
        "ball_found_in_time",
        {"search_minutes": 3, "identified_in_reasonable_time": "yes"},
        "stroke_play",
        "no penalty",
        "",
        id="found after three minutes (DBWGC)",
    ),
]


@pytest.mark.parametrize(("name", "facts", "form", "total", "citation"), CASES)
def test_a_published_question_is_decided_as_published(
    name: str, facts: dict[str, object], form: str, total: str, citation: str
) -> None:
    """Penalty and, where the source names it, the Rule are those that were published."""
    known = FormOfPlay(form)
    found = rule(name, facts, played_on=date(2024, 5, 1), form_of_play=known, local_rules=[])
    assert isinstance(found, Ruling), found
    assert total in total_words(found, known).lower()
    assert any(one.startswith(citation) for one in found.citations)


def test_a_ball_in_a_red_penalty_area_has_three_ways_of_relief() -> None:
    """Certain to be in a red penalty area: stroke and distance, back on the line, lateral (Cleckheaton; Rule 17.1d)."""
    facts = {
        "found_in_penalty_area": "no",
        "certain_in_penalty_area": "yes",
        "penalty_area_colour": "red",
        "last_stroke_from_penalty_area": "no",
        "provisional_state": "not_played",
    }
    found = rule(
        "ball_in_penalty_area",
        facts,
        played_on=date(2024, 5, 1),
        form_of_play=FormOfPlay.STROKE_PLAY,
        local_rules=[],
    )
    assert isinstance(found, Ruling), found
    assert {one.kind for one in found.relief} == {
        ReliefKind.STROKE_AND_DISTANCE,
        ReliefKind.BACK_ON_THE_LINE,
        ReliefKind.LATERAL,
    }
