"""The tree branches on every answer of every fact read; the graph keeps only what can change the outcome."""

from datetime import date

import pytest

from marram.rules.editions import EDITION_2019, EDITION_2023
from marram.rules.engine.graph import Graph, GraphNode, follow, outcomes, vertices
from marram.rules.engine.tree import Node, grow, leaves, leaves_on
from marram.rules.facts.conditions import FormOfPlay, date_of_play, form_of_play
from marram.rules.ruling import Reason, Ruling
from tests.rules.engine.toy import Colour, colour, entry, idle, late, wet


def test_leaves_are_counted_by_hand() -> None:
    """Red has 3 leaves, green 2 x 2, blue 1 since 2023 and 2 before: worked out by hand from the toy book."""
    assert len(list(leaves(grow(entry)))) == 3 + 4 + 3
    assert len(list(leaves_on(grow(entry), EDITION_2023))) == 3 + 4 + 1
    assert len(list(leaves_on(grow(entry), EDITION_2019))) == 3 + 4 + 2


def test_a_leaf_carries_the_path_that_led_to_it() -> None:
    """Reasons name each fact read once, what is known of it and the provision that read it, in order."""
    node = grow(entry)
    for answer in (Colour.RED, 7):
        assert isinstance(node, Node)
        node = node.follow(answer)
    assert isinstance(node, Node)
    leaf = node.follow(7)
    assert isinstance(leaf, Ruling)
    assert leaf.reasons == (
        Reason("toy_colour", "toy 1", (Colour.RED,)),
        Reason("toy_late", "toy 2", above=5, at_most=10),
    )


def test_a_threshold_is_never_asked_twice() -> None:
    """More than ten is more than five: the narrower question answers the wider one."""
    node = grow(entry)
    for answer in (Colour.RED, 11, 11):
        assert isinstance(node, Node)
        node = node.follow(answer)
    assert isinstance(node, Ruling)


def test_idle_questions_leave_the_graph() -> None:
    """A question all of whose answers lead to the same place is no vertex."""
    graph = Graph()
    found = {vertex.fact for vertex in vertices(graph.reduce(grow(entry))) if isinstance(vertex, GraphNode)}
    assert idle not in found
    assert {colour, wet, late} <= found


def test_equal_parts_are_one_object() -> None:
    """Reducing the same tree twice gives the same root, and equal outcomes are shared."""
    graph = Graph()
    assert graph.reduce(grow(entry)) is graph.reduce(grow(entry))
    assert len(outcomes(graph.reduce(grow(entry)))) == 3 + 2 + 3


@pytest.mark.parametrize("day", [EDITION_2019, EDITION_2023, date(2022, 12, 31)])
@pytest.mark.parametrize("tint", list(Colour))
@pytest.mark.parametrize("minutes", [0, 5, 6, 10, 11])
@pytest.mark.parametrize("damp", [True, False])
@pytest.mark.parametrize("form", list(FormOfPlay))
def test_graph_and_tree_agree(day: date, tint: Colour, minutes: int, damp: bool, form: FormOfPlay) -> None:
    """For every complete set of facts the graph ends in the outcome of the tree."""
    known = {date_of_play: day, colour: tint, late: minutes, wet: damp, idle: True, form_of_play: form}
    node = grow(entry)
    while isinstance(node, Node):
        node = node.follow(known[node.fact])
    vertex = Graph().reduce(grow(entry))
    while isinstance(vertex, GraphNode):
        vertex = follow(vertex, known[vertex.fact])
    assert vertex == node


def test_restricting_by_known_facts_equals_following_them() -> None:
    """What is left of the graph once facts are known no longer asks them."""
    graph = Graph()
    left = graph.restrict(graph.reduce(grow(entry)), {colour: Colour.GREEN})
    assert isinstance(left, GraphNode)
    assert left.fact is wet
