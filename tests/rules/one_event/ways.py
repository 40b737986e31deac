"""Comparing ways into an event: two incidents, over all answers to the facts that both of them ask."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from functools import cache
from typing import Any

from marram.rules.engine.changes import answers_to_tell_apart
from marram.rules.engine.export import graph_of
from marram.rules.engine.fact import Fact
from marram.rules.engine.graph import Graph, GraphNode, Vertex, vertices
from marram.rules.engine.request import read_facts
from marram.rules.facts.conditions import LOCAL_RULES, FormOfPlay, Sides, date_of_play, form_of_play
from marram.rules.penalty import PenaltyKind, Who
from marram.rules.ruling import Action, HandOver, Outcome, Ruling

Known = Mapping[Fact[Any], Any]

_AS_IT_IS = (None, Action.PLAY_ON, Action.PLAY_AS_IT_LIES)
_RELIEF_OPEN = (Action.TAKE_RELIEF, Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF, Action.PLAY_PROVISIONAL)
_HOLE_LOST = (PenaltyKind.GENERAL, PenaltyKind.LOSS_OF_HOLE)
_SEEN_BY_OTHER = {Who.PLAYER: Who.OPPONENT, Who.OPPONENT: Who.PLAYER}
MOST_HAND_OVERS = 3


@dataclass(frozen=True)
class Contradiction:
    """Answers under which two ways into an event end differently, whatever else is answered."""

    answers: tuple[str, ...]
    first: frozenset[Any]
    second: frozenset[Any]

    def __str__(self) -> str:
        ends = [f"  {', '.join(sorted(map(str, one)))}" for one in (self.first, self.second)]
        return "\n".join([" ".join(self.answers) or "(nothing asked by both)", *ends])


def conditions_known(form: FormOfPlay, local_rules: tuple[str, ...] = ()) -> Known:
    """Return the conditions of the competition as facts; the day is known from the graph."""
    return {form_of_play: form, **{fact: code in local_rules for code, fact in LOCAL_RULES.items()}}


@cache
def graph_under(
    name: str,
    day: date,
    form: FormOfPlay,
    local_rules: tuple[str, ...] = (),
    sides: Sides | None = None,
) -> tuple[Vertex, frozenset[Fact[Any]]]:
    """Return an incident's graph under these conditions, and the facts that it asks there."""
    root = Graph().restrict(graph_of(name, day, sides), conditions_known(form, local_rules))
    asked = frozenset(one.fact for one in vertices(root) if isinstance(one, GraphNode))
    return root, asked


@cache
def told(
    name: str,
    facts: tuple[tuple[str, str], ...],
    day: date,
    form: FormOfPlay,
    local_rules: tuple[str, ...],
    *,
    sides: Sides | None = None,
) -> Vertex:
    """Return what is left of a way once its facts are told; a hand-over is followed with the facts it carries."""
    given: dict[str, Any] = dict(facts)
    for _ in range(MOST_HAND_OVERS):
        root, asked = graph_under(name, day, form, local_rules, sides)
        known = read_facts(given)
        left = Graph().restrict(root, {fact: answer for fact, answer in known.items() if fact in asked})
        if not isinstance(left, HandOver):
            return left
        name, given = left.incident, left.carry(given)
    raise AssertionError(f"{name} is handed over and over again.")


def substance(outcome: Outcome, form: FormOfPlay, *, by_other: bool = False) -> Any:
    """Return what an outcome means: penalties by kind and bearer, and what happens to the ball.

    ``by_other``: it is told from the side of the opponent, whose opponent the player is.
    """
    if not isinstance(outcome, Ruling):
        return type(outcome).__name__
    seen = _SEEN_BY_OTHER if by_other else {}
    penalties = tuple(
        sorted(
            f"{one.strokes or ''} {one.kind.value} {seen.get(one.who, one.who).value}".strip()
            for one in outcome.penalties
        )
    )
    kinds = {one.kind for one in outcome.penalties}
    lost = form is FormOfPlay.MATCH_PLAY and kinds & set(_HOLE_LOST)
    if lost or PenaltyKind.DISQUALIFICATION in kinds:
        return penalties, "over"
    open_relief = outcome.relief if outcome.action in _RELIEF_OPEN else ()  # else it says what was taken
    relief = tuple(sorted({f"{one.kind.value} for {one.penalty}" for one in open_relief}))
    ball = "as it is" if outcome.action in _AS_IT_IS else outcome.action.value if outcome.action else ""
    return penalties, ball, relief


def contradictions(
    first: Vertex,
    second: Vertex,
    shared: frozenset[Fact[Any]],
    form: FormOfPlay,
    *,
    equal: bool,
    by_other: tuple[bool, bool] = (False, False),
) -> Iterator[Contradiction]:
    """Yield answers to the shared facts under which both ways end differently, each pair of ends once.

    Args:
        first: one way.
        second: the other.
        shared: the facts to give equal answers to.
        form: the form of play.
        equal: whether what both can still end in must be the same; else it is enough that they can agree.
        by_other: for each way, whether it is told from the side of the opponent.
    """
    graph = Graph()
    pending: list[tuple[Vertex, Vertex, tuple[str, ...]]] = [(first, second, ())]
    seen: set[tuple[int, int]] = set()
    found: set[tuple[frozenset[Any], frozenset[Any]]] = set()
    while pending:
        here, there, answers = pending.pop()
        if (id(here), id(there)) in seen:
            continue
        seen.add((id(here), id(there)))
        fact = _next_shared(here, there, shared)
        if fact is None:
            ends = _ends(here, form, by_other[0]), _ends(there, form, by_other[1])
            if (ends[0] != ends[1] if equal else not ends[0] & ends[1]) and ends not in found:
                found.add(ends)
                yield Contradiction(answers, *ends)
            continue
        for answer in answers_to_tell_apart(fact, here, there):
            known = {fact: answer}
            told_so_far = (*answers, f"{fact.name}={fact.token(answer)}")
            pending.append((graph.restrict(here, known), graph.restrict(there, known), told_so_far))


def _next_shared(first: Vertex, second: Vertex, shared: frozenset[Fact[Any]]) -> Fact[Any] | None:
    for root in (first, second):
        for vertex in vertices(root):
            if isinstance(vertex, GraphNode) and vertex.fact in shared:
                return vertex.fact
    return None


def _ends(root: Vertex, form: FormOfPlay, by_other: bool) -> frozenset[Any]:
    return frozenset(
        substance(one, form, by_other=by_other) for one in vertices(root) if not isinstance(one, GraphNode)
    )


CONDITIONS = frozenset({date_of_play, form_of_play, *LOCAL_RULES.values()})
"""Facts that every incident shares: they are no sign of the same event."""
