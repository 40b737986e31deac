"""The compiled form: the tree with equal parts shared and idle questions removed.

It is reduced as binary decision diagrams are: a node all of whose answers lead to the same place is
no node, and two nodes alike in every way are one. The interview asks only what stays in the graph;
the graph is exported as JSON, evaluated, and compared between editions.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from marram.rules.engine.case import Branch
from marram.rules.engine.fact import Fact
from marram.rules.engine.tree import Node
from marram.rules.ruling import Outcome


@dataclass(frozen=True, slots=True, eq=False)
class GraphNode:
    """A question that can change the outcome, and where each way of answering leads."""

    fact: Fact[Any]
    branches: tuple[Branch, ...]
    children: "tuple[GraphNode | Outcome, ...]"
    citation: str


Vertex = GraphNode | Outcome


class Graph:
    """A store of shared vertices: reducing twice in one graph gives the same objects for equal parts.

    Args:
        base: a graph whose vertices are shared too, and which gets no new ones: what is left of it once some
            facts are known is needed for one question only, and goes with it.
    """

    def __init__(self, base: "Graph | None" = None) -> None:
        self._base: Mapping[tuple[Any, ...], GraphNode] = base.nodes if base else {}
        self._outcomes: dict[Outcome, Outcome] = {}
        self.nodes: dict[tuple[Any, ...], GraphNode] = {}
        self._reduced: dict[int, tuple[Node, Vertex]] = {}

    def reduce(self, node: Node | Outcome) -> Vertex:
        """Return the vertex that stands for everything below ``node``, growing the whole tree below it."""
        if not isinstance(node, Node):
            return self._outcomes.setdefault(node, node)
        known = self._reduced.get(id(node))
        if known is None:
            children = tuple(self.reduce(child) for child in node.children())
            known = self._reduced[id(node)] = (
                node,
                self._share(node.fact, node.branches, children, node.citation),
            )
        return known[1]

    def restrict(
        self, vertex: Vertex, known: Mapping[Fact[Any], Any], seen: dict[int, Vertex] | None = None
    ) -> Vertex:
        """Return what is left of ``vertex`` once the facts in ``known`` are established."""
        if not isinstance(vertex, GraphNode):
            return vertex
        seen = {} if seen is None else seen
        found = seen.get(id(vertex))
        if found is None:
            if vertex.fact in known:
                found = self.restrict(follow(vertex, known[vertex.fact]), known, seen)
            else:
                children = tuple(self.restrict(child, known, seen) for child in vertex.children)
                found = self._share(vertex.fact, vertex.branches, children, vertex.citation)
            seen[id(vertex)] = found
        return found

    def _share(
        self, fact: Fact[Any], branches: tuple[Branch, ...], children: tuple[Vertex, ...], citation: str
    ) -> Vertex:
        if all(child is children[0] for child in children):
            return children[0]
        key = (fact, branches, tuple(id(child) for child in children))
        node = self._base.get(key) or self.nodes.get(key)
        if node is None:
            node = self.nodes[key] = GraphNode(fact, branches, children, citation)
        return node


def follow(vertex: GraphNode, answer: Any) -> Vertex:
    """Return where ``answer`` leads from ``vertex``."""
    for branch, child in zip(vertex.branches, vertex.children, strict=True):
        if answer in branch.answers:
            return child
        if not branch.answers and (
            answer <= branch.at_most if branch.at_most is not None else answer > branch.above
        ):
            return child
    raise KeyError(answer)


def vertices(root: Vertex) -> Iterator[Vertex]:
    """Yield every vertex reachable from ``root`` once, the root first."""
    pending, seen = [root], {id(root)}
    while pending:
        here = pending.pop()
        yield here
        if isinstance(here, GraphNode):
            for child in here.children:
                if id(child) not in seen:
                    seen.add(id(child))
                    pending.append(child)


def outcomes(root: Vertex) -> list[Outcome]:
    """Return every different outcome reachable from ``root``."""
    return [vertex for vertex in vertices(root) if not isinstance(vertex, GraphNode)]
