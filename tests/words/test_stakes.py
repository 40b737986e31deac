"""What a question says that each answer leads to: relief is counted, and what hangs on the option is one number or several."""

from typing import Any

import pytest

from marram import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.result import NeedFacts
from marram.words.sheet import Sheet, sheet


def asked(incident: str, form: str = "stroke_play", local: tuple[str, ...] = (), **known: Any) -> Sheet:
    """Return the sheet of the next question."""
    conditions = {"edition": 2023, "form_of_play": form, "sides": "individual", "local_rules": local}
    result = rule(incident, known, **conditions)
    assert isinstance(result, NeedFacts)
    return sheet(result, form_of_play=FormOfPlay(form))


def stakes(of: Sheet) -> dict[str, str]:
    assert of.question is not None
    return {one.token: one.stake for one in of.question.answers}


def test_a_ball_out_of_bounds_does_not_lead_to_no_penalty() -> None:
    """Rule 18.2b: stroke and distance must be taken, so its stroke is told before the answer."""
    found = stakes(asked("ball_not_found"))

    assert found["out_of_bounds"] == "one, two, three or four penalty strokes"
    assert "no penalty" not in found["not_known"]


def test_each_provisional_ball_adds_its_stroke() -> None:
    """Rule 18.3c: the provisional ball becomes the ball in play with one stroke; lost as well, another is added.

    Two are told without one because of Rule 17.2b(2), which only the next question excludes.
    """
    found = stakes(asked("ball_not_found", whereabouts="not_known"))

    assert (found["not_played"], found["found"]) == ("one or two penalty strokes", "one penalty stroke")
    assert found["lost_or_out"] == "two or three penalty strokes"


def test_the_alternative_to_stroke_and_distance_is_counted() -> None:
    """Model Local Rule E-5: two strokes; with it in force a lost ball costs one or two, as the player chooses."""
    asking = asked("ball_not_found", local=("E-5",), whereabouts="not_known", provisional_state="not_played")

    assert asking.settled[0] == "One or two penalty strokes, whatever the answer."


def test_relief_that_is_up_to_the_player_is_told_as_that() -> None:
    """Rule 17.1: a ball found in a penalty area may be played as it lies, or relief taken for a stroke."""
    assert stakes(asked("ball_in_penalty_area"))["yes"] == "one penalty stroke if relief is taken"


@pytest.mark.parametrize(
    ("form", "words"),
    [
        ("stroke_play", "no penalty, two penalty strokes (the general penalty) or disqualification"),
        (
            "match_play",
            "no penalty, loss of hole (the general penalty) for the opponent or loss of hole (the general penalty)",
        ),
    ],
)
def test_what_is_no_number_of_strokes_keeps_its_name(form: str, words: str) -> None:
    """Rule 6.3c(1): a wrong ball costs the general penalty, and not corrected in stroke play disqualifies."""
    assert stakes(asked("wrong_ball_played", form))["wrong"] == words
