"""What the way to an end adds to it: two ways to one outcome may find different things, by the facts they went through.

The same as :mod:`marram.rules.finding_of` reads from the reasons of a ruling, drawn from a graph ahead of any walk.
"""

from collections.abc import Mapping
from dataclasses import replace
from enum import Enum
from typing import Any

from marram.rules.engine.case import Branch
from marram.rules.engine.fact import Fact
from marram.rules.engine.graph import GraphNode, Vertex
from marram.rules.engine.request import fact_named
from marram.rules.finding_of import BY_FACT, finding_of
from marram.rules.findings import Finding
from marram.rules.free_findings import FREE_BY_FACT, FREE_STROKE_BY_FACT
from marram.rules.ruling import Outcome, Reason, Ruling

FIRST, LAST, LAST_OF_STROKE = 1, 2, 3
"""Which fact of the way decides what an end finds: the first that tells it, the last, or the last about a stroke that counts."""

TABLES: Mapping[int, Mapping[str, Mapping[str, Finding]]] = {
    FIRST: BY_FACT,
    LAST: FREE_BY_FACT,
    LAST_OF_STROKE: FREE_STROKE_BY_FACT,
}


def mode_of(outcome: Outcome) -> int:
    """Return which fact of the way decides what an outcome finds; 0 where the outcome alone does."""
    if not isinstance(outcome, Ruling):
        return 0
    alone = finding_of(replace(outcome, reasons=()))
    for mode, table in TABLES.items():
        if finding_of(replace(outcome, reasons=(_telling(table),))) is not alone:
            return mode
    return 0


def _telling(table: Mapping[str, Mapping[str, Finding]]) -> Reason:
    """Return a reason that tells something no other table does."""
    others = [other for other in TABLES.values() if other is not table]
    fact = next(fact for fact in table if not any(fact in other for other in others))
    return _reason(fact, next(iter(table[fact])))


def reason_that_tells(found: Finding, mode: int) -> Reason:
    """Return a reason that tells what is found."""
    return next(
        _reason(fact, word)
        for fact, told in TABLES[mode].items()
        for word, finding in told.items()
        if finding is found
    )


def _reason(fact: str, word: str) -> Reason:
    """Return a reason: a fact and one answer to it; of a number, any."""
    return Reason(fact, "", (fact_named(fact).parse(word),) if word else ())


def tells(fact: Fact[Any] | str, branch: Branch, mode: int) -> Finding | None:
    """Return what a branch of a question finds; ``None`` where it tells nothing, or not one thing."""
    told = TABLES[mode].get(fact if isinstance(fact, str) else fact.name)
    if told is None:
        return None
    found = {told.get(_word(answer)) for answer in branch.answers or ("",)}
    return found.pop() if len(found) == 1 else None


def _word(answer: Any) -> str:
    return str(answer.value if isinstance(answer, Enum) else answer)


def told_at(root: Vertex) -> Mapping[int, Mapping[int, frozenset[Finding | None]]]:
    """Return for each vertex (by ``id``) and mode what the ways to it may have told; ``None``: one told nothing."""
    order: list[Vertex] = []
    seen: set[int] = set()
    pending: list[tuple[Vertex, bool]] = [(root, False)]
    while pending:  # children before parents, to be gone through the other way round
        here, left = pending.pop()
        if left:
            order.append(here)
        elif id(here) not in seen:
            seen.add(id(here))
            pending.append((here, True))
            if isinstance(here, GraphNode):
                pending += [(child, False) for child in here.children if id(child) not in seen]
    told: dict[int, dict[int, frozenset[Finding | None]]] = {
        id(one): {mode: frozenset() for mode in TABLES} for one in order
    }
    told[id(root)] = {mode: frozenset((None,)) for mode in TABLES}
    for here in reversed(order):
        if isinstance(here, GraphNode):
            for branch, child in zip(here.branches, here.children, strict=True):
                for mode in TABLES:
                    told[id(child)][mode] |= _further(
                        told[id(here)][mode], tells(here.fact, branch, mode), mode
                    )
    return told


def _further(
    before: frozenset[Finding | None], found: Finding | None, mode: int
) -> frozenset[Finding | None]:
    if found is None:
        return before
    return frozenset(one or found for one in before) if mode == FIRST else frozenset((found,))


__all__ = ["FIRST", "LAST", "LAST_OF_STROKE", "TABLES", "mode_of", "reason_that_tells", "tells", "told_at"]
