"""The nearest situation in which relief is offered that a ruling does not offer: one fact changed, all else the same.

An official who looks for relief that is not there is told the fact that stands against it. Nothing is written down for
that: the book is asked again, with one answer changed at a time.
"""

from collections import deque
from collections.abc import Iterator, Mapping
from collections.abc import Set as AbstractSet
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from marram.rules.engine.case import Branch
from marram.rules.engine.conditions import conditions_of
from marram.rules.engine.fact import Fact
from marram.rules.engine.graph import Graph, GraphNode, Vertex, outcomes
from marram.rules.engine.request import Book, book, book_among, fact_named, read_facts, walk
from marram.rules.engine.tree import Node
from marram.rules.facts.alternative import alternative_ball_dropped
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conditions import FormOfPlay, Sides, date_of_play, form_of_play
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.facts.unplayable import spot_of_ball_known
from marram.rules.relief_family import family
from marram.rules.relief_option import ReliefKind, ReliefOption
from marram.rules.result import NeedFacts
from marram.rules.ruling import Action, Outcome, Reason, Ruling

MOST_TOLD = 3
"""Of how many reliefs that are not there the reason is told: more would hide those that are (own choice)."""

_LOOKED_FOR = ("free", "preferred", "19", "17")
"""Families of relief that an official looks for; the first is the most sought."""

_LEAST_SOUGHT = len(_LOOKED_FOR)
"""Where the alternative to stroke and distance of a Local Rule (E-5) stands among them: after the others."""

_NEVER_MISSED = (ReliefKind.PROVISIONAL, ReliefKind.REPLAY, ReliefKind.STROKE_AND_DISTANCE)

_FOR_TWO_STROKES = ("17.2b", "19.3b")
"""What comes on top of the usual options for one stroke more; nobody looks for it elsewhere."""


@dataclass(frozen=True, slots=True)
class MissingRelief:
    """Relief that is not offered here, and the one fact that would have to be otherwise.

    Attributes:
        family: which relief (:func:`marram.rules.relief_family.family`).
        kind: its kind, where other relief of the family is offered here; ``None``: none of the family is.
        fact: the name of the fact that stands against it.
        here: its answer here; several, where the ruling does not tell them apart.
        there: the answers with which the relief is offered.
        decided_by: the provision that read the fact.
        given_by: the provision that gives the relief there.
        always: whether it is then offered whatever else is still open.
    """

    family: str
    kind: ReliefKind | None
    fact: str
    here: tuple[Any, ...]
    there: tuple[Any, ...]
    decided_by: str
    given_by: str
    always: bool


def missing_relief(
    incident: str,
    facts: Mapping[str, Any],
    ruling: Ruling,
    *,
    played_on: date,
    form_of_play: FormOfPlay | str | None = None,
    local_rules: frozenset[str] | None = None,
    sides: Sides | None = None,
) -> tuple[MissingRelief, ...]:
    """Return the relief that a ruling does not offer and a neighbouring one does, the most sought first.

    Args:
        incident: the name of the incident.
        facts: what is known, by fact name.
        ruling: what it was ruled.
        played_on: the day of the round.
        form_of_play: the form of play, if known.
        local_rules: the Local Rules in force, if known.
        sides: who plays together, if known.

    Raises:
        UnknownIncident, UnknownFact, BadAnswer, InputError: as of :func:`marram.rule`.
    """
    if ruling.action is Action.HOLE_OVER:
        return ()  # nobody takes relief any more
    pages = book(incident) if sides is None else book_among(incident, sides)
    together = {} if sides is None else {the_sides: sides}
    known = {**together, **conditions_of(incident, played_on, form_of_play, local_rules), **read_facts(facts)}
    offered = {_key(option) for option in ruling.relief}
    found: dict[tuple[str, ReliefKind | None], MissingRelief] = {}
    for reason in reversed(ruling.reasons):  # the one read last stands nearest to what was decided
        for one in _with_other_answers(pages, known, reason, offered):
            key = (one.family, one.kind)
            if key not in found or (one.always and not found[key].always):
                found[key] = one
    sought = sorted(found.values(), key=lambda one: (_rank(one), not one.always))
    return tuple(sought[:MOST_TOLD])


def _rank(missing: MissingRelief) -> int:
    return _LOOKED_FOR.index(missing.family) if missing.family in _LOOKED_FOR else _LEAST_SOUGHT


def _with_other_answers(
    pages: Book, known: Mapping[Fact[Any], Any], reason: Reason, offered: AbstractSet[tuple[str, ReliefKind]]
) -> Iterator[MissingRelief]:
    """Yield the relief that other answers to one fact would bring, each with all the answers that bring it."""
    fact, families = fact_named(reason.fact), {name for name, _ in offered}
    brought: dict[tuple[str, ReliefKind | None], list[tuple[Any, ReliefOption, bool]]] = {}
    for answer in _other_answers(fact, reason):
        ends = [one for one in ends_left(pages, {**known, fact: answer}) if isinstance(one, Ruling)]
        for option, always in _offered_in(ends):
            name, kind = _key(option)
            if (name, kind) not in offered and _is_missed(name, kind, fact, reason, families):
                own_kind = name in families or kind is ReliefKind.EXTENDED
                brought.setdefault((name, kind if own_kind else None), []).append((answer, option, always))
    for (name, missed), ways in brought.items():
        sure = [way for way in ways if way[2]] or ways
        answers = tuple(dict.fromkeys(answer for answer, _, _ in sure))
        yield MissingRelief(
            name, missed, fact.name, reason.answers, answers, reason.citation, sure[0][1].citation, sure[0][2]
        )


def _is_missed(
    name: str, kind: ReliefKind, fact: Fact[Any], reason: Reason, families: AbstractSet[str]
) -> bool:
    """Tell whether an official would look for relief that is not offered, and it is truly not to be had.

    A ball can be unplayable everywhere but in a penalty area (Rule 19.1), whether a ruling lists that or not, but measured
    from its spot only where that is known (19.2); the alternative of a Local Rule (E-5) is looked for wherever it would be
    given; and nobody looks for the relief of another area than the ball's.
    """
    if fact is alternative_ball_dropped:
        return False  # it is being taken
    if kind is ReliefKind.EXTENDED:
        return True
    if name not in _LOOKED_FOR:
        return False
    if fact is spot_of_ball_known:
        return kind is ReliefKind.LATERAL
    if name == "19":
        return fact is area_of_ball and reason.answers == (Area.PENALTY_AREA,)
    if name in families:
        return kind is ReliefKind.LATERAL
    return not (name == "17" and fact is area_of_ball)


def _key(option: ReliefOption) -> tuple[str, ReliefKind]:
    return family(option), option.kind


def _other_answers(fact: Fact[Any], reason: Reason) -> Iterator[Any]:
    """Yield the answers of a fact that the ruling does not rest on; none of a condition of the competition."""
    if fact in (date_of_play, form_of_play, the_sides) or not fact.answers:
        return
    yield from (answer for answer in fact.answers if answer not in reason.answers)


def ends_left(pages: Book, known: Mapping[Fact[Any], Any]) -> list[Outcome]:
    """Return every outcome that is left once the facts in ``known`` are established."""
    here: Node | Outcome = pages.root
    while isinstance(here, Node):
        if here.fact not in known:
            with pages.lock:
                return outcomes(Graph(pages.graph).restrict(pages.graph.reduce(here), known))
        here = here.follow(known[here.fact])
    return [here]


def ends_told(pages: Book, known: Mapping[Fact[Any], Any]) -> list[Outcome]:
    """Return every outcome that is left once the facts in ``known`` are established, each as a way that leads there tells it.

    Equal outcomes are one in the graph, whatever they rest on: what an outcome of it says it rests on may be the facts of
    another way, and with them what it finds (a ball lost, or out of bounds). So each is reached anew.
    """
    here: Node | Outcome = pages.root
    while isinstance(here, Node) and here.fact in known:
        here = here.follow(known[here.fact])
    if not isinstance(here, Node):
        return [here]
    with pages.lock:
        left = Graph(pages.graph).restrict(pages.graph.reduce(here), known)
    ways = _one_way_to_each(left)
    told = [walk(pages, {**known, **ways[id(one)]}) for one in outcomes(left)]
    return [one for one in told if not isinstance(one, NeedFacts)]


def _one_way_to_each(vertex: Vertex) -> Mapping[int, Mapping[Fact[Any], Any]]:
    """Return the answers of a shortest way to each vertex, by its identity."""
    pending: deque[tuple[Vertex, dict[Fact[Any], Any]]] = deque([(vertex, {})])
    found: dict[int, Mapping[Fact[Any], Any]] = {}
    while pending:
        here, way = pending.popleft()
        if id(here) in found:
            continue
        found[id(here)] = way
        if not isinstance(here, GraphNode):
            continue
        for branch, child in zip(here.branches, here.children, strict=True):
            pending.append((child, {**way, here.fact: _an_answer(here.fact, branch)}))
    return found


def _an_answer(fact: Fact[Any], branch: Branch) -> Any:
    if branch.answers:
        return branch.answers[0]
    if branch.at_most is not None:
        return branch.at_most
    return branch.above + (timedelta(days=1) if fact.is_date else 1)


def _offered_in(ends: list[Ruling]) -> Iterator[tuple[ReliefOption, bool]]:
    """Yield each option that some of the rulings offer, and whether all of them do."""
    seen: dict[tuple[str, ReliefKind], ReliefOption] = {}
    for ruling in ends:
        for option in ruling.relief:
            if option.kind not in _NEVER_MISSED and option.citation not in _FOR_TWO_STROKES:
                seen.setdefault(_key(option), option)
    for key, option in seen.items():
        yield option, all(key in {_key(one) for one in ruling.relief} for ruling in ends)
