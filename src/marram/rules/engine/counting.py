"""Counting the paths through the Rules, as chess libraries count moves to prove their rules right."""

from collections import Counter
from datetime import date

from marram.rules.editions import EDITIONS
from marram.rules.engine.export import graph_of
from marram.rules.engine.graph import vertices
from marram.rules.engine.request import book
from marram.rules.engine.tree import Node, leaves_on, on_day
from marram.rules.incidents import INCIDENTS


def count(name: str, day: date) -> tuple[int, int]:
    """Return the leaves of an incident's tree and the vertices of its graph, for one day of play."""
    return sum(1 for _ in leaves_on(book(name).root, day)), len(list(vertices(graph_of(name, day))))


def counts_text() -> str:
    """Return the counts of every incident and edition, one a line."""
    rows = [
        "# incident edition leaves vertices: every path through an incident in that edition, and its graph's size.",
        "# A change here is a change of the Rules as encoded. Say why in the commit, then run `make pin`.",
    ]
    for one in INCIDENTS:
        for day in EDITIONS:
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
