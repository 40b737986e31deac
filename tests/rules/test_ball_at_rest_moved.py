"""Rule 9 over all leaves: what must hold of every ruling on a ball at rest that moved.

Each claim is taken from the sub-rule named in its docstring, editions 2019 and 2023.
"""

from datetime import date
from typing import Any

import pytest

from marram.rules.editions import EDITION_2019, EDITION_2023, EDITIONS
from marram.rules.engine.request import book, walk
from marram.rules.engine.tree import leaves_on
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.cause import Mover
from marram.rules.facts.conditions import date_of_play
from marram.rules.facts.movement import (
    MovedBall,
    NewPlace,
    lifted_and_replaced_on_green,
    new_place,
    put_in_play_by_hand,
)
from marram.rules.penalty import PenaltyKind, Who
from marram.rules.ruling import Action, Ruling, WhichBall

MOVED = [
    "ball_may_have_moved",
    "ball_moved_by_player",
    "ball_lifted_by_player",
    "ball_dislodged_from_tree",
    "ball_moved_during_swing",
    "ball_moved_by_natural_forces",
    "ball_moved_by_opponent",
    "ball_moved_by_outside_influence",
    "ball_marker_moved",
    "ball_moved_in_search",
]


def leaves(name: str, day: date, **answers: Any) -> list[Ruling]:
    """Return the rulings on paths that read each of the facts named, with exactly that answer."""
    found = []
    for leaf in leaves_on(book(name).root, day):
        read = {reason.fact: reason.answers for reason in leaf.reasons}
        if all(read.get(fact) == (answer,) for fact, answer in answers.items()):
            assert isinstance(leaf, Ruling)
            found.append(leaf)
    return found


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", ["ball_moved_by_player", "ball_moved_by_opponent", "ball_marker_moved"])
def test_an_accident_on_the_green_costs_nothing(name: str, day: date) -> None:
    """Rule 13.1d(1): accidental movement on the putting green is free, for player and opponent alike."""
    answers: dict[str, Any] = {"area_of_ball": Area.PUTTING_GREEN}
    if name == "ball_moved_by_opponent":
        answers["opponent_cause_known"] = True
    else:
        answers["movement_accidental"] = True
    found = [leaf for leaf in leaves(name, day, **answers) if "13.1d(1)" in leaf.citations]

    assert found
    assert all(not leaf.penalties and leaf.action is Action.REPLACE for leaf in found)


@pytest.mark.parametrize("day", EDITIONS)
def test_moving_the_ball_on_purpose_always_costs_a_stroke(day: date) -> None:
    """Rule 9.4b: unless a Rule allows it, for the exceptions 2 to 4 protect accidents only."""
    on_purpose = {"cause_known": True, "movement_accidental": False, "handling_allowed": False}
    found = leaves("ball_moved_by_player", day, **on_purpose)

    assert found
    for leaf in found:
        assert [(one.kind, one.strokes, one.who) for one in leaf.penalties] == [
            (PenaltyKind.STROKES, 1, Who.PLAYER)
        ]


@pytest.mark.parametrize("day", EDITIONS)
def test_natural_forces_penalise_nobody(day: date) -> None:
    """Rule 9.3: no penalty, wherever the ball goes."""
    assert not any(leaf.penalties for leaf in leaves("ball_moved_by_natural_forces", day))


@pytest.mark.parametrize("day", EDITIONS)
def test_outside_influences_penalise_nobody(day: date) -> None:
    """Rule 9.6: no penalty to anybody."""
    assert not any(leaf.penalties for leaf in leaves("ball_moved_by_outside_influence", day))


@pytest.mark.parametrize("day", EDITIONS)
def test_only_the_opponent_pays_for_what_the_opponent_did(day: date) -> None:
    """Rule 9.5b: the penalty goes to the opponent, never to the player."""
    paid = {one.who for leaf in leaves("ball_moved_by_opponent", day) for one in leaf.penalties}
    marker = leaves("ball_marker_moved", day, who_moved_marker=Mover.OPPONENT)

    assert paid == {Who.OPPONENT}
    assert {one.who for leaf in marker for one in leaf.penalties} == {Who.OPPONENT}


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", MOVED)
def test_nobody_pays_more_than_one_stroke_for_a_ball_that_can_still_go_back(name: str, day: date) -> None:
    """Rules 9.4b, 9.5b and 9.7b know one penalty stroke; the general penalty comes with a stroke from there."""
    for leaf in leaves(name, day):
        assert sum(one.strokes for one in leaf.penalties) <= 1
        assert all(one.kind is PenaltyKind.STROKES for one in leaf.penalties)


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", MOVED)
def test_not_putting_it_back_costs_the_general_penalty(name: str, day: date) -> None:
    """Rules 7.4 and 9.3 to 9.7: whoever has to replace a ball and plays it elsewhere gets the general penalty."""
    for leaf in leaves(name, day):
        if leaf.action is Action.REPLACE:
            ends = {one.otherwise.kind for one in leaf.corrections if one.otherwise}
            assert ends == {PenaltyKind.GENERAL}, leaf


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", MOVED)
def test_another_ball_serves_only_where_the_first_is_gone_or_in_the_teeing_area(name: str, day: date) -> None:
    """Rule 14.2a: the original ball is replaced unless it cannot be got back."""
    for leaf in leaves(name, day):
        if leaf.which_ball is WhichBall.ORIGINAL_OR_ANOTHER and leaf.action is Action.REPLACE:
            assert ("moved_ball_found", (MovedBall.NOT_FOUND,)) in {
                (one.fact, one.answers) for one in leaf.reasons
            }


@pytest.mark.parametrize("area", Area)
@pytest.mark.parametrize("replaced", [True, False])
@pytest.mark.parametrize("by_hand", [True, False])
@pytest.mark.parametrize("place", NewPlace)
def test_the_editions_differ_only_for_a_ball_put_in_play_that_left_its_area(
    area: Area, replaced: bool, by_hand: bool, place: NewPlace
) -> None:
    """Rule 9.3 Exception 2 is new in 2023; everything else on natural forces stayed as it was."""
    facts = {
        area_of_ball: area,
        lifted_and_replaced_on_green: replaced,
        put_in_play_by_hand: by_hand,
        new_place: place,
    }
    old, new = (
        walk(book("ball_moved_by_natural_forces"), {**facts, date_of_play: day})
        for day in (EDITION_2019, EDITION_2023)
    )
    on_green = area is Area.PUTTING_GREEN
    left = place in (NewPlace.ANOTHER_AREA, NewPlace.OUT_OF_BOUNDS) or (
        place is NewPlace.IN_THE_HOLE and not on_green
    )
    by_exception_1 = on_green and replaced

    assert (old != new) == (by_hand and left and not by_exception_1)
    if old != new:
        assert isinstance(new, Ruling)
        assert new.action is Action.REPLACE


@pytest.mark.parametrize("day", EDITIONS)
def test_doubt_about_the_player_is_ruled_as_natural_forces(day: date) -> None:
    """Rule 9.2b(2): without virtual certainty the outcome is that of Rule 9.3, on every path."""
    doubtful = leaves("ball_moved_by_player", day, cause_known=False)

    assert doubtful
    for leaf in doubtful:
        facts = {reason.fact: reason.answers[0] for reason in leaf.reasons if reason.answers}
        known = {
            fact: facts[fact.name]
            for fact in (area_of_ball, lifted_and_replaced_on_green, new_place, put_in_play_by_hand)
            if fact.name in facts
        }
        plain = walk(book("ball_moved_by_natural_forces"), {**known, date_of_play: day})

        assert isinstance(plain, Ruling)
        assert (leaf.penalties, leaf.action, leaf.relief) == (plain.penalties, plain.action, plain.relief)
