"""Laws of asking: facts added never change a settled ruling, hiding facts never changes it to another."""

import re
from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import marram
from marram.rules.editions import EDITIONS
from marram.rules.engine.export import facts_of
from marram.rules.engine.graph import GraphNode, vertices
from marram.rules.engine.request import book, book_among, walk
from marram.rules.engine.tree import Node, on_day
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import LOCAL_RULES, Sides, date_of_play, form_of_play, sides
from marram.rules.facts.several import BETWEEN
from marram.rules.incidents import INCIDENTS
from marram.rules.local_rules.adoption import adopt
from marram.rules.result import NeedFacts

NAMES = [one.name for one in INCIDENTS]


TOGETHER = [who for who in Sides if who is not Sides.THREE_BALL]
"""Who plays together, in any form of play: Three-Ball is played in match play only."""


NOT_ADOPTED_ON = {
    day: {fact for code, fact in LOCAL_RULES.items() if adopt([code], day).faults} for day in EDITIONS
}
"""Local Rules that cannot be in force on a day."""


def drawn_path(
    name: str, day: date, data: st.DataObject, who: Sides = Sides.INDIVIDUAL
) -> tuple[dict[Any, Any], Any]:
    """Walk an incident's tree by answers drawn one by one; return the facts answered and the outcome."""
    known: dict[Any, Any] = {date_of_play: day}
    if who is not Sides.INDIVIDUAL:
        known[sides] = who
    node = on_day((book(name) if who is Sides.INDIVIDUAL else book_among(name, who)).root, day)
    while isinstance(node, Node):
        if node.fact not in known:
            answers = list(node.by_answer) if node.bound is None else [node.bound, node.bound + 1]
            if node.fact in NOT_ADOPTED_ON[day]:
                answers = [False]
            known[node.fact] = data.draw(st.sampled_from(answers), label=node.fact.name)
        node = node.follow(known[node.fact])
    return known, node


@settings(deadline=None, max_examples=200)
@given(st.sampled_from(NAMES), st.sampled_from(EDITIONS), st.data())
def test_hiding_facts_gives_the_same_outcome_or_a_question(name: str, day: date, data: st.DataObject) -> None:
    """With any part of the facts hidden the result is the same outcome, or asks for a fact."""
    known, outcome = drawn_path(name, day, data)
    kept = data.draw(st.sets(st.sampled_from(sorted(known, key=lambda fact: fact.name))))
    result = walk(book(name), {fact: known[fact] for fact in kept | {date_of_play}})

    if isinstance(result, NeedFacts):  # what is asked was hidden, and answering it as before goes on
        hidden = {fact.name: answer for fact, answer in known.items() if fact not in kept}
        assert result.fact in hidden
        further = {fact: answer for fact, answer in known.items() if fact in kept or fact.name == result.fact}
        assert walk(book(name), further) != result
    else:
        assert result == outcome


@settings(deadline=None, max_examples=200)
@given(st.sampled_from(NAMES), st.sampled_from(EDITIONS), st.sampled_from(TOGETHER), st.data())
def test_the_order_of_facts_does_not_matter(name: str, day: date, who: Sides, data: st.DataObject) -> None:
    """The same facts written in another order give the same ruling, through the public door, whoever plays together."""
    known, outcome = drawn_path(name, day, data, who)
    known[sides] = who
    facts = [
        (fact.name, fact.token(answer))
        for fact, answer in known.items()
        if fact not in (date_of_play, form_of_play) and fact not in LOCAL_RULES.values()
    ]
    adopted = [code for code, fact in LOCAL_RULES.items() if known.get(fact)]
    result = marram.rule(
        name,
        dict(data.draw(st.permutations(facts))),
        played_on=day,
        form_of_play=known.get(form_of_play),
        local_rules=adopted,
    )

    assert result == outcome


@settings(deadline=None, max_examples=100)
@given(st.sampled_from(NAMES), st.sampled_from(EDITIONS), st.data())
def test_following_the_questions_always_ends(name: str, day: date, data: st.DataObject) -> None:
    """The interview never asks twice and ends within the depth of the tree, each answer mattering."""
    known: dict[Any, Any] = {date_of_play: day}
    asked: list[str] = []
    while isinstance(result := walk(book(name), known), NeedFacts):
        assert result.fact not in asked
        asked.append(result.fact)
        fact = vocabulary()[result.fact]
        stake = data.draw(st.sampled_from(result.stakes), label=result.fact)
        bound = stake.at_most if stake.at_most is not None else (stake.above or 0) + 1
        known[fact] = data.draw(st.sampled_from(stake.answers)) if stake.answers else bound

    assert len(asked) <= 25


@pytest.mark.parametrize("name", NAMES)
def test_every_question_of_the_graph_has_answers_that_part(name: str) -> None:
    """In the graph no question leads to the same place whatever the answer."""
    pages = book(name)
    for vertex in vertices(pages.graph.reduce(pages.root)):
        if isinstance(vertex, GraphNode):
            assert len({id(child) for child in vertex.children}) > 1


def test_every_declared_fact_can_change_some_ruling() -> None:
    """No fact of the vocabulary is idle; the facts between incidents belong to combining them."""
    used = {fact.name for name in NAMES for fact in facts_of(name)}
    among_sides = ("hole_score_wrong", "played_out_of_turn", "started_off_time")
    used |= {fact.name for name in among_sides for fact in facts_of(name, Sides.FOUR_BALL)}
    between = {fact.name for fact in BETWEEN}
    tests_own = {name for name in vocabulary() if name.startswith(("toy_", "minutes_in_this_test"))}
    idle = vocabulary().keys() - used - between - tests_own

    assert not idle, sorted(idle)


def test_yes_stands_before_no_in_every_question() -> None:
    """An official who answers many questions in a row finds yes and no in one order, also where yes has several kinds."""
    for name, fact in vocabulary().items():
        tokens = [fact.answers[one].lower() for one in fact.answers]
        yes = [place for place, words in enumerate(tokens) if words.startswith("yes")]
        no = [place for place, words in enumerate(tokens) if re.match(r"no\b", words)]
        if yes and no:
            assert min(no) > min(yes), (name, tokens)
