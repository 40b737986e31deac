"""Handing over: the answers go along, and nobody is sent in a circle."""

from datetime import date
from typing import Any

import pytest

import marram
from marram.rules.editions import EDITIONS
from marram.rules.engine.request import book, fact_named, walk
from marram.rules.engine.tree import Node, leaves_on
from marram.rules.facts.conditions import date_of_play
from marram.rules.incidents import INCIDENTS
from marram.rules.ruling import HandOver, Ruling
from tests.rules.one_event.ways import MOST_HAND_OVERS


def hand_overs(name: str, day: date) -> list[HandOver]:
    return [one for one in leaves_on(book(name).root, day) if isinstance(one, HandOver)]


def facts_known(result: HandOver, day: date) -> dict[Any, Any]:
    """Return the facts that led to a hand-over, as far as one answer is known of each, and those it adds."""
    known: dict[Any, Any] = {date_of_play: day}
    known |= {fact_named(one.fact): one.answers[0] for one in result.reasons if one.answers}
    return known | {fact_named(name): fact_named(name).parse(answer) for name, answer in result.facts}


def test_the_facts_given_and_those_added_rule_on_the_other_incident() -> None:
    """Rules of Golf 2023, Rule 9.3 Exception 2: placed after two drops, then blown off the course's area: put back."""
    facts = {
        "stays_where_first_touched": "moved_later",
        "area_of_ball": "general_area",
        "new_place": "another_area",
    }
    result = marram.rule("ball_placed_after_two_drops", facts, played_on=date(2024, 5, 1))
    assert isinstance(result, HandOver)
    there = marram.rule(result.incident, result.carry(facts), played_on=date(2024, 5, 1))

    assert isinstance(there, Ruling)
    assert there.citations[0] == "9.3 Exception 2"


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", [one.name for one in INCIDENTS])
def test_no_hand_over_leads_in_a_circle(name: str, day: date) -> None:
    """With all that was answered, the other incident goes on: a ruling, a question, or at last one more step."""
    for first in hand_overs(name, day):
        step: Any = first
        for _ in range(MOST_HAND_OVERS):
            if not isinstance(step, HandOver):
                break
            assert step.incident != name
            step = walk(book(step.incident), facts_known(step, day) | facts_known(first, day))
        assert not isinstance(step, HandOver), first


@pytest.mark.parametrize("name", [one.name for one in INCIDENTS])
def test_what_a_hand_over_adds_is_asked_there(name: str) -> None:
    """Each fact that is carried into another incident's terms can change its ruling, in some edition."""
    for result in hand_overs(name, EDITIONS[-1]):
        asked = {node.fact.name for node in _nodes(book(result.incident).root)}
        assert {fact for fact, _ in result.facts} <= asked


def _nodes(root: Any) -> list[Node]:
    found, pending = [], [root]
    while pending:
        here = pending.pop()
        if isinstance(here, Node):
            found.append(here)
            pending.extend(here.children())
    return found


def test_a_story_with_an_act_handed_over_is_not_added_up() -> None:
    """The part says which incident it rather is; there is no total while it stands."""
    acts = [marram.Happened("ball_placed_after_two_drops", {"stays_where_first_touched": "moved_later"})]
    told = marram.rule_story(acts, played_on=date(2024, 5, 1))

    assert isinstance(told.parts[0], HandOver)
    assert told.combined is None
