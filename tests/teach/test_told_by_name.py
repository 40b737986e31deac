"""What interferes is told by its name, what is told first fits what follows, and answers speak of balls that are there.

Sources: Rules of Golf 2023, Rules 16.1a (interference) and 18.3c(2) and (3) (a provisional ball played once it is certain that
the original is in a penalty area is a wrong ball); Definitions: ground under repair (material piled to be removed later).
"""

from itertools import islice

import pytest

from marram.rules.facts.conditions import FormOfPlay
from marram.teach.quizzes.drafting import draft
from marram.teach.situations.fitting_together import fit_together
from marram.teach.situations.sampling import situations
from marram.words.english.cases.interfering import CASES
from marram.words.telling import telling

_OF_NAMED = sorted({key.partition("/")[0] for key in CASES})
E_5 = "alternative_to_stroke_and_distance"


@pytest.mark.parametrize("incident", _OF_NAMED)
@pytest.mark.parametrize("how", ["ball", "stance_or_swing", "line_of_play", "none"])
def test_what_interferes_is_named(incident: str, how: str) -> None:
    """After "The ball lay in a bunker", nobody knows what "it" is."""
    said = telling(incident, {"area_of_ball": "bunker", "interference": how}, "Odo", FormOfPlay.STROKE_PLAY)
    assert not any(one.startswith("It ") or one.endswith(" it.") for one in said), said
    assert "way of Odo" not in said[0], said


def test_only_the_stance_is_told_once_and_f_6_by_its_code() -> None:
    """A second Local Rule about the stance (F-21) is not taken for the one that denies relief (F-6)."""
    facts = {
        "interference": "stance_or_swing",
        "stance_left_out": "no",
        "only_stance_interference": "yes",
        "condition_named_without_stance": "no",
    }
    said = telling("painted_line", facts, "Odo", FormOfPlay.STROKE_PLAY)
    assert sum("stance only" in one for one in said) == 1, said
    assert any("F-6" in one for one in said), said
    assert any("Local Rule on painted lines" in one for one in said), said
    assert not fit_together(
        "painted_line", {**facts, "condition_named_without_stance": "yes"}, FormOfPlay.STROKE_PLAY
    )


def test_leaves_are_not_piled_to_be_removed_and_the_ball_may_be_elsewhere() -> None:
    """Piled to be removed later, they would be ground under repair without the Local Rule (Definitions)."""
    first = telling("accumulated_loose_impediments", {}, "Odo", FormOfPlay.STROKE_PLAY)[0]
    assert "fallen from the trees" in first
    assert "heap" not in first
    assert "went towards" in first


def test_a_provisional_ball_played_nearer_was_played_before_anything_was_certain() -> None:
    """Once the original is virtually certain to be in a penalty area, the provisional ball must be abandoned (Rule 18.3c(3))."""
    facts = {
        "certain_in_penalty_area": "yes",
        "provisional_state": "found",
        "nearer_stroke_at_provisional": "yes",
    }
    said = telling(E_5, facts, "Odo", FormOfPlay.STROKE_PLAY)
    assert said[-1].endswith("before it was certain what had become of the original."), said


@pytest.mark.parametrize(
    ("incident", "facts"),
    [
        # The line of sight is there whatever stroke is chosen.
        ("temporary_immovable_obstruction", {"stand_interference": "both", "only_by_unreasonable_choice": "yes"}),
        # Sand is not grown over, and no turf is laid in it.
        ("temporary_line_in_the_way", {"temporary_line_thing": "covered_trench", "area_of_ball": "bunker", "interference": "ball"}),
        ("turf_seam", {"area_of_ball": "bunker"}),
        # Ground under repair is part of the course (Definitions).
        ("ground_beside_obstruction", {"interference": "out_of_bounds_only"}),
    ],
)  # fmt: skip
def test_what_cannot_be_is_not_told(incident: str, facts: dict[str, str]) -> None:
    """Nothing told speaks against the rest."""
    assert not fit_together(incident, facts, FormOfPlay.STROKE_PLAY)


def test_answers_about_the_alternative_speak_of_balls_that_are_there() -> None:
    """A ball dropped under the Local Rule is named, and only where one was dropped; a lost provisional ball is not played on."""
    answered = 0
    for one in islice(situations(11, incidents=(E_5,)), 40):
        question = draft(one)
        for answer in question.answers if question else ():
            answered += 1
            assert "other ball" not in answer.words
            if "dropped under the Local Rule" in answer.words:
                assert one.facts["alternative_ball_dropped"] == "yes"
            if "with the provisional ball" in answer.words:
                assert one.facts["provisional_state"] in ("found", "second_found"), one.facts
    assert answered


def test_of_leaves_beside_a_ball_an_answer_says_what_may_be_taken_away() -> None:
    """Rule 15.1a: a loose impediment may be removed; "it may be taken away" could be the ball."""
    said = [
        answer.words
        for one in islice(situations(3, incidents=("accumulated_loose_impediments",)), 20)
        if (question := draft(one)) is not None
        for answer in question.answers
    ]
    assert any("the leaves may be taken away" in words for words in said)
    assert not any("it may be taken away" in words for words in said)


def test_a_painted_line_in_a_bunker_gives_relief_where_the_local_rule_is_adopted_there() -> None:
    """Model Local Rule F-21 is adopted for areas that the Committee names; told of a bunker, it has to hold there."""
    facts = {"area_of_ball": "bunker", "interference": "ball", "local_rule_f_21": "yes"}
    assert "every part of the course" in telling("painted_line", facts, "Odo", FormOfPlay.STROKE_PLAY)[0]
    elsewhere = telling("painted_line", {**facts, "local_rule_f_21": "no"}, "Odo", FormOfPlay.STROKE_PLAY)
    assert "F-21" not in elsewhere[0]
