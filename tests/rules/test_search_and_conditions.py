"""Rules 7 and 8 over all leaves: what must hold of every ruling on searching and on improving conditions.

Each claim is taken from the sub-rule named in its docstring, editions 2019 and 2023.
"""

from dataclasses import replace
from datetime import date
from typing import Any

import pytest

from marram.rules.editions import EDITION_2019, EDITION_2023, EDITIONS
from marram.rules.engine.export import facts_of
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.penalty import PenaltyKind
from marram.rules.ruling import Ruling

IMPROVING = ["fixed_object_moved", "object_put_in_position", "ground_altered"]
RULES_7_AND_8 = [
    *IMPROVING,
    "conditions_worsened",
    "own_conditions_altered",
    "anothers_conditions_altered",
    "search_improved_conditions",
    "sand_moved_in_search",
    "identifying_ball",
    "ball_lifted_to_identify",
]


def rulings(name: str, day: date) -> list[Ruling]:
    return [leaf for leaf in leaves_on(book(name).root, day) if isinstance(leaf, Ruling)]


def answer(ruling: Ruling, fact: str) -> object:
    return next(
        (one.answers[0] for one in ruling.reasons if one.fact == fact and len(one.answers) == 1), None
    )


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", IMPROVING)
def test_without_a_potential_advantage_there_is_no_breach(name: str, day: date) -> None:
    """Rule 8.1a forbids actions only if they improve the conditions (Definitions: improve)."""
    for ruling in rulings(name, day):
        if answer(ruling, "conditions_improved") is False:
            assert not ruling.penalties, ruling


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", IMPROVING)
def test_a_breach_of_rule_8_costs_the_general_penalty(name: str, day: date) -> None:
    """Rule 8.1a knows no other penalty."""
    kinds = {one.kind for ruling in rulings(name, day) for one in ruling.penalties}

    assert kinds == {PenaltyKind.GENERAL}


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize(
    ("name", "fact"),
    [("fixed_object_moved", "original_object_back"), ("object_put_in_position", "placed_object_removed")],
)
def test_undoing_it_in_time_avoids_the_penalty(name: str, fact: str, day: date) -> None:
    """Rule 8.1c: an object moved, or put in position, may be put right before the stroke."""
    undone = [ruling for ruling in rulings(name, day) if answer(ruling, fact) is True]

    assert undone
    assert not any(ruling.penalties for ruling in undone)


def test_altered_ground_cannot_be_restored() -> None:
    """Rule 8.1c: ground, sand, soil, dew, frost and water: nothing asked about restoring can help."""
    assert not {fact.name for fact in facts_of("ground_altered")} & {
        "original_object_back",
        "placed_object_removed",
    }


@pytest.mark.parametrize("day", EDITIONS)
def test_lifting_to_identify_costs_one_stroke_at_most(day: date) -> None:
    """Rule 7.3: one stroke, however many of its conditions were missed."""
    strokes = {
        sum(one.strokes for one in ruling.penalties) for ruling in rulings("ball_lifted_to_identify", day)
    }

    assert strokes == {0, 1}


@pytest.mark.parametrize("name", RULES_7_AND_8)
def test_rules_7_and_8_did_not_change_in_2023(name: str) -> None:
    """The published lists of changes for 2023 name no new outcome in Rules 7 and 8 (from memory of the lists).

    How relief back on the line is dropped did change, for a ball that is lost because nobody can tell it (Rule 14.3b(3)).
    """

    def outcomes(day: date) -> list[Any]:
        return [
            (replace(one, relief=()), [(way.kind, way.penalty, way.citation) for way in one.relief])
            for one in rulings(name, day)
        ]

    assert outcomes(EDITION_2019) == outcomes(EDITION_2023)
