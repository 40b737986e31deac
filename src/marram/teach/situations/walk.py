"""One walk through the decision graph of an incident, each question answered by lot."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from random import Random
from types import MappingProxyType
from typing import Any

from marram.rules.engine.case import Branch
from marram.rules.engine.fact import Fact
from marram.rules.engine.graph import GraphNode, Vertex
from marram.rules.ruling import Outcome
from marram.teach.situations.how_often import likelihood

Wanted = Callable[[Outcome], bool]
_MOST_BEYOND = 3
"""A number above a bound is at most this much above it, so that it stays a number one hears of."""


@dataclass(slots=True)
class _Open:
    """What can still be the answer of a fact: some of its answers, or numbers above and up to bounds."""

    answers: frozenset[Any] = frozenset()
    above: float | None = None
    at_most: float | None = None


@dataclass(slots=True)
class _Walk:
    lot: Random
    known: dict[Fact[Any], _Open] = field(default_factory=dict)

    def within(self, fact: Fact[Any], branch: Branch) -> _Open | None:
        """Return what is left of a fact in a branch; ``None`` where nothing is."""
        before = self.known.get(fact)
        if fact.answers:
            left = frozenset(branch.answers) if before is None else before.answers & frozenset(branch.answers)
            return _Open(left) if left else None
        above = _most(before.above if before else None, branch.above)
        at_most = _least(before.at_most if before else None, branch.at_most)
        least = fact.minimum if above is None else above + 1
        return None if at_most is not None and at_most < least else _Open(above=above, at_most=at_most)


def walk(
    root: Vertex, wanted: Wanted, lot: Random, given: Mapping[Fact[Any], Any] = MappingProxyType({})
) -> Mapping[Fact[Any], Any] | None:
    """Return the answers of a walk that ends in a wanted outcome; ``None`` where no walk found does.

    Args:
        root: the graph of the incident, for one day.
        wanted: whether an outcome will do.
        lot: draws the answers, the likelier ones more often.
        given: answers that are settled.
    """
    ends: dict[int, bool] = {}
    going = _Walk(lot, {fact: _Open(frozenset({answer})) for fact, answer in given.items()})
    here = root
    while isinstance(here, GraphNode):
        ways: list[tuple[_Open, Vertex]] = []
        for branch, child in zip(here.branches, here.children, strict=True):
            left = going.within(here.fact, branch)
            if left is not None and _leads(child, wanted, ends):
                ways.append((left, child))
        if not ways:
            return None
        fact = here.fact
        left, here = lot.choices(ways, [_likelihood(fact, way[0]) for way in ways])[0]
        going.known[fact] = left
    return {fact: _drawn(fact, left, lot) for fact, left in going.known.items()} if wanted(here) else None


def _leads(vertex: Vertex, wanted: Wanted, ends: dict[int, bool]) -> bool:
    """Whether a wanted outcome can be reached, as far as the graph alone tells."""
    if not isinstance(vertex, GraphNode):
        return wanted(vertex)
    found = ends.get(id(vertex))
    if found is None:
        found = ends[id(vertex)] = any(_leads(child, wanted, ends) for child in vertex.children)
    return found


def _likelihood(fact: Fact[Any], left: _Open) -> float:
    return sum(likelihood(fact, answer) for answer in left.answers) or 1.0


def _drawn(fact: Fact[Any], left: _Open, lot: Random) -> Any:
    if fact.answers:
        answers = [answer for answer in fact.answers if answer in left.answers]
        return lot.choices(answers, [likelihood(fact, answer) for answer in answers])[0]
    least = int(fact.minimum) if left.above is None else int(left.above) + 1
    if left.above is None and left.at_most is not None:  # a number below a bound is near it too
        beyond = 0 if left.at_most < 0 else _MOST_BEYOND  # four strokes under a target are rare enough
        least = max(least, int(left.at_most) - beyond)
    if fact.unit in {"minutes", "club-lengths"} and left.at_most:  # nobody tells of none of them
        least = max(least, 1)
    most = least + _MOST_BEYOND if left.at_most is None else int(left.at_most)
    return lot.randint(least, max(least, most))


def _most(one: float | None, other: float | None) -> float | None:
    return other if one is None else one if other is None else max(one, other)


def _least(one: float | None, other: float | None) -> float | None:
    return other if one is None else one if other is None else min(one, other)
