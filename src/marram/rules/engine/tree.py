"""The tree of all paths through an incident, grown only where somebody walks.

A node is a question some provision asked; its branches are the ways the answer can go; a leaf is an
outcome with its reasons. Growing a branch runs the incident's entry provision once with the answers
of that path, so the tree *is* the Rules as encoded: no second description exists.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from datetime import date
from typing import Any

from marram.errors import BookError
from marram.rules.engine.case import Branch, Case, FactNeeded, Question
from marram.rules.engine.fact import Fact
from marram.rules.facts.conditions import date_of_play
from marram.rules.ruling import HandOver, Judgement, NotCovered, Outcome, Reason, Ruling

Entry = Callable[[Case], Outcome]
Path = tuple[tuple[Fact[Any], Branch, str], ...]
Fixed = Mapping[Fact[Any], Any]
"""Facts that have one answer throughout a tree."""
NOTHING_FIXED: Fixed = {}


class Node:
    """A branching point: the fact to establish, the provision that needs it, and where answers lead.

    Attributes:
        fact: the fact to establish.
        branches: the ways the answer can go.
        bound: the threshold, for numbers and dates; else ``None``.
        citation: the provision that read it.
    """

    __slots__ = (
        "_children",
        "_entry",
        "_fixed",
        "_path",
        "bound",
        "branches",
        "by_answer",
        "citation",
        "fact",
    )

    def __init__(
        self, entry: Entry, path: Path, question: Question, citation: str, fixed: Fixed = NOTHING_FIXED
    ) -> None:
        self.fact = question.fact
        self.branches = question.branches
        self.citation = citation
        self.bound: Any = None if question.fact.answers else question.branches[0].at_most
        self.by_answer = {
            answer: index for index, branch in enumerate(question.branches) for answer in branch.answers
        }
        self._entry = entry
        self._path = path
        self._fixed = fixed
        self._children: list[Node | Outcome | None] = [None] * len(question.branches)

    def child(self, index: int) -> "Node | Outcome":
        """Return where branch ``index`` leads, growing it on first use."""
        found = self._children[index]
        if found is None:
            found = self._children[index] = grow(
                self._entry, (*self._path, (self.fact, self.branches[index], self.citation)), self._fixed
            )
        return found

    def children(self) -> "Iterator[Node | Outcome]":
        """Yield where each branch leads, in order."""
        for index in range(len(self.branches)):
            yield self.child(index)

    def follow(self, answer: Any) -> "Node | Outcome":
        """Return where ``answer`` leads."""
        index = self.by_answer[answer] if self.bound is None else int(answer > self.bound)
        return self._children[index] or self.child(index)

    @property
    def reasons(self) -> tuple[Reason, ...]:
        """The facts settled on the way here, in order."""
        return _reasons(self._path)


def grow(entry: Entry, path: Path = (), fixed: Fixed = NOTHING_FIXED) -> Node | Outcome:
    """Run ``entry`` with the answers of ``path``; return the next node, or the outcome with its reasons.

    A fact of ``fixed`` is a node with one way to go.

    Raises:
        BookError: the provision returned something that is not an outcome.
    """
    case = Case(tuple((fact, branch) for fact, branch, _ in path), fixed)
    try:
        outcome = entry(case)
    except FactNeeded as needed:
        return Node(entry, path, needed.question, needed.citation, fixed)
    if not isinstance(outcome, Ruling | Judgement | NotCovered | HandOver):
        raise BookError(
            f"{getattr(entry, '__name__', entry)} ended in {outcome!r} instead of a ruling; "
            f"the path was {', '.join(f'{fact.name}' for fact, _, _ in path)}."
        )
    return replace(outcome, reasons=_reasons(path))


def leaves(node: Node | Outcome) -> Iterator[Outcome]:
    """Yield every outcome below ``node``."""
    pending = [node]
    while pending:
        here = pending.pop()
        if isinstance(here, Node):
            pending.extend(reversed(list(here.children())))
        else:
            yield here


def on_day(node: Node | Outcome, day: date) -> Node | Outcome:
    """Return the first node or outcome from ``node`` on that is not a question of the date of play."""
    while isinstance(node, Node) and node.fact is date_of_play:
        node = node.follow(day)
    return node


def leaves_on(node: Node | Outcome, day: date) -> Iterator[Outcome]:
    """Yield every outcome below ``node`` for a round played on ``day``."""
    pending = [on_day(node, day)]
    while pending:
        here = pending.pop()
        if isinstance(here, Node):
            pending.extend(on_day(child, day) for child in reversed(list(here.children())))
        else:
            yield here


def _reasons(path: Path) -> tuple[Reason, ...]:
    """One reason for each fact: its narrowest answer, cited by the provision that narrowed it last."""
    reasons: dict[str, Reason] = {}
    for fact, branch, citation in path:
        before = reasons.pop(fact.name, None)
        above, at_most = branch.above, branch.at_most
        if before is not None:
            above = before.above if above is None else above
            at_most = before.at_most if at_most is None else at_most
        reasons[fact.name] = Reason(fact.name, citation, branch.answers, above, at_most)
    return tuple(reasons.values())
