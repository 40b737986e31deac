"""The decision graph of an incident as plain data, and what can be read off it."""

from datetime import date
from typing import Any

from marram.rules.engine.fact import Fact
from marram.rules.engine.graph import GraphNode, Vertex, vertices
from marram.rules.engine.request import book, book_among, conditions_of
from marram.rules.facts.conditions import Sides
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.plain import as_plain

FORMAT_VERSION = 1
"""Version of the exported document; it grows when a reader of the old one would misread the new one."""


def graph_of(name: str, played_on: date | None = None, who: Sides | None = None) -> Vertex:
    """Return the root of an incident's graph, for one day of play or (``None``) for all days.

    Args:
        name: the incident.
        played_on: the day of play.
        who: who plays together; with sides the graph goes on to who bears each penalty.

    Raises:
        UnknownIncident, DateNotCovered: as for :func:`marram.rule`.
    """
    pages = book(name) if who in (None, Sides.INDIVIDUAL) else book_among(name, who)
    with pages.lock:
        whole = pages.graph.reduce(pages.root)
        if played_on is None:
            return whole
        return pages.graph.restrict(whole, conditions_of(name, played_on, None, None))


def facts_of(name: str, who: Sides | None = None) -> list[Fact[Any]]:
    """Return the facts that can change the outcome of an incident, in the order they are met."""
    every = vertices(graph_of(name, who=who))
    return list(dict.fromkeys(vertex.fact for vertex in every if isinstance(vertex, GraphNode)))


def graph_document(name: str, played_on: date | None = None, who: Sides | None = None) -> dict[str, Any]:
    """Return an incident's graph as a document for JSON.

    ``vertices[0]`` is the root. A question has ``fact``, ``citation`` and ``branches``; each branch has
    ``answers`` (tokens), or ``at_most`` / ``above``, and ``to``, the index of the vertex it leads to. An
    outcome has ``kind`` and ``outcome``.
    """
    found = list(vertices(graph_of(name, played_on, who)))
    index = {id(vertex): number for number, vertex in enumerate(found)}
    return {
        "marram": FORMAT_VERSION,
        "kind": "decision_graph",
        "incident": name,
        "played_on": played_on.isoformat() if played_on else None,
        "sides": the_sides.token(who) if who else None,
        "vertices": [_vertex(vertex, index) for vertex in found],
    }


def _vertex(vertex: Vertex, index: dict[int, int]) -> dict[str, Any]:
    if not isinstance(vertex, GraphNode):
        outcome = as_plain(vertex)
        del outcome["reasons"]
        return {"kind": type(vertex).__name__, "outcome": outcome}
    branches = []
    for branch, child in zip(vertex.branches, vertex.children, strict=True):
        way: dict[str, Any] = {"to": index[id(child)]}
        if branch.answers:
            way["answers"] = [vertex.fact.token(answer) for answer in branch.answers]
        elif branch.at_most is not None:
            way["at_most"] = as_plain(branch.at_most)
        else:
            way["above"] = as_plain(branch.above)
        branches.append(way)
    return {"fact": vertex.fact.name, "citation": vertex.citation, "branches": branches}
