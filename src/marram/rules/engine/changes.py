"""What another day of play, or a Local Rule, changes: every way the facts can lead to another outcome."""

from collections import deque
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Any

from marram.rules.engine.export import graph_of
from marram.rules.engine.fact import Fact
from marram.rules.engine.graph import GraphNode, Vertex, vertices
from marram.rules.engine.request import Book, book, book_among
from marram.rules.facts.conditions import FormOfPlay, Sides, form_of_play
from marram.rules.ruling import Judgement, Outcome, Ruling

Known = dict[Fact[Any], Any]


@dataclass(frozen=True)
class Change:
    """One pair of outcomes that the same facts lead to on two days, or without and with a Local Rule.

    Attributes:
        incident: the incident's name.
        facts: a smallest set of facts found that leads to the pair, each with its answer; for numbers and
            dates the answer is an example.
        before: the outcome on the earlier day, or without it.
        after: the outcome on the later day, or with it.
        combinations: how many different sets of facts were met that lead to the pair.
    """

    incident: str
    facts: tuple[tuple[str, Any], ...]
    before: Outcome
    after: Outcome
    combinations: int

    @property
    def renumbered_only(self) -> bool:
        """Whether both outcomes come to the same, under other provisions and with other notes."""
        return bool(substance(self.before) == substance(self.after))


def changes(
    name: str, earlier: date, later: date, form: FormOfPlay | None = None, who: Sides | None = None
) -> list[Change]:
    """Return every pair of differing outcomes of an incident, those with the fewest facts first.

    Args:
        name: the incident.
        earlier: a day of the earlier edition.
        later: a day of the later one.
        form: the form of play, where only that one is asked about.
        who: who plays together, where players compete as sides.

    Raises:
        UnknownIncident, DateNotCovered: as for :func:`marram.rule`.
    """
    pages = book(name) if who in (None, Sides.INDIVIDUAL) else book_among(name, who)
    before, after = graph_of(name, earlier, who), graph_of(name, later, who)
    with pages.lock:
        if form is not None:
            before, after = (pages.graph.restrict(one, {form_of_play: form}) for one in (before, after))
        return _listed(name, pages, before, after)


def adopting(name: str, day: date, local_rule: Fact[bool]) -> list[Change]:
    """Return every pair of outcomes that differ by whether a Local Rule is in force, those with the fewest facts first.

    Args:
        name: the incident.
        day: the day of play.
        local_rule: the fact that it is in force.

    Raises:
        UnknownIncident, DateNotCovered: as for :func:`marram.rule`.
    """
    pages, whole = book(name), graph_of(name, day)
    with pages.lock:
        without, adopted = (pages.graph.restrict(whole, {local_rule: one}) for one in (False, True))
        return _listed(name, pages, without, adopted)


def _listed(name: str, pages: Book, before: Vertex, after: Vertex) -> list[Change]:
    found: dict[tuple[Outcome, Outcome], tuple[Known, int]] = {}
    for known, old, new in _differences(pages, before, after):
        first, met = found.get((old, new), (known, 0))
        found[old, new] = (first, met + 1)
    listed = [
        Change(name, _named(_fewest(pages, before, after, known, pair)), *pair, met)
        for pair, (known, met) in found.items()
    ]
    return sorted(listed, key=lambda change: len(change.facts))


def substance(outcome: Outcome) -> Any:
    """Return what an outcome means for the player, whatever the provisions are called."""
    if isinstance(outcome, Judgement):
        return outcome.decided_by, outcome.criteria, [substance(one) for one in outcome.outcomes]
    if not isinstance(outcome, Ruling):
        return replace(outcome, citation="")
    penalties = [replace(one, citation="") for one in outcome.penalties]
    relief = [replace(one, citation="") for one in outcome.relief]
    return penalties, outcome.action, outcome.which_ball, outcome.stroke, relief, outcome.cautions


def _differences(pages: Book, before: Vertex, after: Vertex) -> Iterator[tuple[Known, Outcome, Outcome]]:
    """Yield the facts that lead to differing outcomes, and the outcomes; breadth first, so shortest first."""
    pending: deque[tuple[Known, Vertex, Vertex]] = deque([({}, before, after)])
    while pending:
        known, old, new = pending.popleft()
        if old is new:
            continue
        asked = old if isinstance(old, GraphNode) else new
        if not isinstance(asked, GraphNode):
            assert not isinstance(old, GraphNode)
            assert not isinstance(new, GraphNode)
            yield known, old, new
            continue
        for answer in answers_to_tell_apart(asked.fact, old, new):
            more = {asked.fact: answer}
            pending.append(
                ({**known, **more}, pages.graph.restrict(old, more), pages.graph.restrict(new, more))
            )


def answers_to_tell_apart(fact: Fact[Any], *roots: Vertex) -> list[Any]:
    """Return the answers to tell apart: each allowed one, or, of a number or date, an example between any two thresholds."""
    branches = [
        branch
        for root in roots
        for vertex in vertices(root)
        if isinstance(vertex, GraphNode) and vertex.fact is fact
        for branch in vertex.branches
    ]
    if fact.answers:
        met = {answer for branch in branches for answer in branch.answers}
        return [answer for answer in fact.answers if answer in met]
    bounds = sorted({branch.at_most for branch in branches if branch.at_most is not None})
    return [*bounds, _next(fact, bounds[-1])]


def _next(fact: Fact[Any], bound: Any) -> Any:
    return bound + timedelta(days=1) if fact.is_date else bound + 1


def _fewest(pages: Book, before: Vertex, after: Vertex, known: Known, pair: tuple[Outcome, Outcome]) -> Known:
    """Leave out, one by one, the facts without which the same pair is still certain."""
    kept = dict(known)
    for fact in list(known):
        rest = {one: answer for one, answer in kept.items() if one is not fact}
        if (pages.graph.restrict(before, rest), pages.graph.restrict(after, rest)) == pair:
            kept = rest
    return kept


def _named(known: Known) -> tuple[tuple[str, Any], ...]:
    return tuple((fact.name, answer) for fact, answer in known.items())
