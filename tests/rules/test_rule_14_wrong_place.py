"""Rules 14.5 and 14.7: mistakes before the stroke, wrong places after it, and the second ball."""

from datetime import date
from typing import Any

import pytest

import marram
from marram.rules.editions import EDITIONS
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.wrong_place import Elsewhere, SecondBallPlace
from marram.rules.penalty import PenaltyKind
from marram.rules.ruling import Action, HandOver, Ruling

MAY_BE_CORRECTED = [
    "ball_put_back",
    "dropped_once_more",
    "club_length_measured",
    "another_ball_put_in_play",
]
AFTER_A_STROKE = ["played_from_wrong_place", "dropped_ball_played", *MAY_BE_CORRECTED]


def leaves(name: str, day: date) -> list[Ruling]:
    return [leaf for leaf in leaves_on(book(name).root, day) if isinstance(leaf, Ruling)]


def answers(leaf: Ruling) -> dict[str, tuple[Any, ...]]:
    found: dict[str, tuple[Any, ...]] = {}
    for reason in leaf.reasons:
        found[reason.fact] = reason.answers
    return found


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", MAY_BE_CORRECTED)
def test_until_the_ball_is_played_only_lifting_a_ball_in_play_costs_anything(name: str, day: date) -> None:
    """Rule 14.5a: mistakes in putting a ball down are corrected free; Rule 9.4b still protects a ball in play."""
    unplayed = [leaf for leaf in leaves(name, day) if answers(leaf).get("played_since_put_down") == (False,)]

    assert unplayed
    for leaf in unplayed:
        assert {one.citation for one in leaf.penalties} <= {"9.4b"}
        assert leaf.corrections


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", AFTER_A_STROKE)
def test_serious_breach_is_never_asked_in_match_play(name: str, day: date) -> None:
    """Rule 14.7b is about stroke play: in a match the general penalty has ended the hole."""
    asked = [leaf for leaf in leaves(name, day) if "serious_breach" in answers(leaf)]

    assert asked
    assert all(FormOfPlay.MATCH_PLAY not in answers(leaf)["form_of_play"] for leaf in asked)


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", AFTER_A_STROKE)
def test_disqualification_needs_regular_stroke_play_or_a_report_left_out(name: str, day: date) -> None:
    """Rules 21.1c, 21.2c and 21.3c: an uncorrected serious breach disqualifies in regular stroke play only."""
    for leaf in leaves(name, day):
        if any(one.kind is PenaltyKind.DISQUALIFICATION for one in leaf.penalties):
            regular = answers(leaf)["form_of_play"] == (FormOfPlay.STROKE_PLAY,)
            assert regular or leaf.penalties[0].citation == "14.7b(2)", leaf


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("left_out", [one for one in Elsewhere if one is not Elsewhere.NEITHER])
def test_what_the_definition_leaves_out_is_not_ruled_on_as_a_wrong_place(
    day: date, left_out: Elsewhere
) -> None:
    """Definition of wrong place: a stroke not replayed and a wrong teeing area are handed over to other Rules.

    So is a ball played from near where the original was lost, for which stroke and distance is owed too (18.2b).
    """
    result = marram.rule("played_from_wrong_place", {"not_a_wrong_place": left_out}, played_on=day)

    assert isinstance(result, HandOver)
    assert result.incident in (
        "stroke_from_green_not_replayed",
        "began_outside_teeing_area",
        "dropped_where_lost",
    )


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize(
    ("first_serious", "second", "strokes"),
    [
        (False, SecondBallPlace.RIGHT_PLACE, 2),
        (True, SecondBallPlace.RIGHT_PLACE, 2),
        (True, SecondBallPlace.WRONG_NOT_SERIOUS, 4),
        (True, SecondBallPlace.WRONG_SERIOUS, None),
    ],
)
def test_strokes_added_to_the_ball_that_counts(
    day: date, first_serious: bool, second: SecondBallPlace, strokes: int | None
) -> None:
    """Rule 14.7b(3): two strokes, four where both were wrong places, disqualification where both were serious."""
    facts = {"facts_reported": True, "first_ball_serious": first_serious, "place_of_second_ball": second}
    result = marram.rule("second_ball_after_wrong_place", facts, played_on=day, form_of_play="stroke_play")

    assert isinstance(result, Ruling)
    if strokes is None:
        assert [one.kind for one in result.penalties] == [PenaltyKind.DISQUALIFICATION]
        assert result.action is Action.HOLE_OVER
    else:
        assert sum(one.strokes for one in result.penalties) == strokes
