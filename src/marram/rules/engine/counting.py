"""Counting the paths through the Rules, as chess libraries count moves to prove their rules right."""

from collections import Counter
from datetime import date, timedelta

from marram.rules.editions import EDITIONS, FIRST_DAY
from marram.rules.engine.export import graph_of
from marram.rules.engine.graph import GraphNode, vertices
from marram.rules.engine.request import book
from marram.rules.engine.tree import Node, leaves_on, on_day
from marram.rules.facts.conditions import date_of_play
from marram.rules.incidents import INCIDENTS


def days_of(name: str) -> list[date]:
    """Return the days from which an incident is decided otherwise than before: those of editions, and any between."""
    bounds = {
        bound
        for one in vertices(graph_of(name))
        if isinstance(one, GraphNode) and one.fact is date_of_play
        for branch in one.branches
        if (bound := branch.above) is not None
    }
    found = sorted({*EDITIONS, *(bound + timedelta(days=1) for bound in bounds)})
    return [day for day in found if day >= FIRST_DAY]


def count(name: str, day: date) -> tuple[int, int]:
    """Return the leaves of an incident's tree and the vertices of its graph, for one day of play."""
    return sum(1 for _ in leaves_on(book(name).root, day)), len(list(vertices(graph_of(name, day))))


def counts_text() -> str:
    """Return the counts of every incident on each day from which it is decided otherwise, one a line."""
    rows = [
        "# incident day leaves vertices: every path through an incident from that day on, and its graph's size.",
        "# A change here is a change of the Rules as encoded. Say why in the commit, then run `make pin`.",
    ]
    for one in INCIDENTS:
        for day in days_of(one.name):
            leaves, size = count(one.name, day)
            rows.append(f"{one.name} {day.isoformat()} leaves {leaves} vertices {size}")
    return "\n".join(rows) + "\n"


def leaves_by_branch(name: str, day: date) -> dict[str, int]:
    """Return the leaves below each answer to an incident's first question, to find a change by bisection."""
    root = on_day(book(name).root, day)
    if not isinstance(root, Node):
        return {}
    found: Counter[str] = Counter()
    for branch, child in zip(root.branches, root.children(), strict=True):
        words = (
            "/".join(root.fact.token(answer) for answer in branch.answers)
            or f"≤{branch.at_most} >{branch.above}"
        )
        found[f"{root.fact.name}={words}"] = sum(1 for _ in leaves_on(child, day))
    return dict(found)
