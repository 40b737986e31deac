"""A case: what is known of one situation, read by provisions as they need it.

A case is narrowed answer by answer. Reading a fact that is still open raises :class:`FactNeeded`
inside the engine, which the tree (:mod:`marram.rules.engine.tree`) turns into a branching point; the
caller never sees it as an exception.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any, TypeVar

from marram.errors import shown
from marram.rules.engine.fact import Fact
from marram.rules.facts.conditions import LOCAL_RULES, FormOfPlay, date_of_play, form_of_play
from marram.said import said

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Branch:
    """One way a question can go: a set of answers of a choice, or one side of a threshold.

    Attributes:
        answers: the answers that lead this way; empty for a threshold.
        above: for a threshold, the number or date the answer lies above, if any.
        at_most: for a threshold, the number or date the answer does not exceed, if any.
    """

    answers: tuple[Any, ...] = ()
    above: Any = None
    at_most: Any = None


@dataclass(frozen=True, slots=True)
class Question:
    """A fact that a provision read, split into the ways that matter there."""

    fact: Fact[Any]
    branches: tuple[Branch, ...]


class FactNeeded(Exception):
    """A provision read a fact that is still open."""

    def __init__(self, question: Question, citation: str) -> None:
        self.question = question
        self.citation = citation


class Case:
    """What is known of one situation so far."""

    __slots__ = ("_fixed", "_open", "_provisions")

    def __init__(
        self, narrowed: Sequence[tuple[Fact[Any], Branch]] = (), fixed: Mapping[Fact[Any], Any] | None = None
    ) -> None:
        """Start a case with these facts narrowed to these branches, in the order they were settled.

        Args:
            narrowed: the facts and branches.
            fixed: facts that can have one answer only: where one is read, there is one way to go, and it stands
                among the reasons.
        """
        self._fixed = fixed or {}
        self._open: dict[Fact[Any], Branch] = {}
        self._provisions: list[str] = []
        for fact, branch in narrowed:
            before = self._open.get(fact)
            if before is not None and not fact.answers:
                branch = Branch(  # noqa: PLW2901 - the earlier side of the threshold still holds
                    above=before.above if branch.above is None else branch.above,
                    at_most=before.at_most if branch.at_most is None else branch.at_most,
                )
            self._open[fact] = branch

    def enter(self, citation: str) -> None:
        """Note that the provision ``citation`` is now reading."""
        self._provisions.append(citation)

    def leave(self) -> None:
        """Note that the provision entered last has returned."""
        self._provisions.pop()

    def __getitem__(self, fact: Fact[T]) -> T:
        """Return the answer to a fact that has a fixed list of answers."""
        answers = self._left(fact)
        if len(answers) == 1:
            answer: T = answers[0]
            return answer
        raise self._needed(fact, tuple(Branch((answer,)) for answer in answers))

    def is_one_of(self, fact: Fact[T], *wanted: T) -> bool:
        """Tell whether the answer is one of ``wanted``, without asking more than that."""
        answers = self._left(fact)
        inside = tuple(answer for answer in answers if answer in wanted)
        outside = tuple(answer for answer in answers if answer not in wanted)
        if not outside:
            return True
        if not inside:
            return False
        raise self._needed(fact, (Branch(inside), Branch(outside)))

    def at_most(self, fact: Fact[Any], bound: Any) -> bool:
        """Tell whether a number or date is at most ``bound``, without asking more than that."""
        narrowed = self._open.get(fact)
        if narrowed is not None:
            if narrowed.at_most is not None and narrowed.at_most <= bound:
                return True
            if narrowed.above is not None and narrowed.above >= bound:
                return False
        raise self._needed(fact, (Branch(at_most=bound), Branch(above=bound)))

    def more_than(self, fact: Fact[Any], bound: Any) -> bool:
        """Tell whether a number or date is more than ``bound``."""
        return not self.at_most(fact, bound)

    def played_since(self, edition: date) -> bool:
        """Tell whether the round was played on or after the first day of ``edition``."""
        return not self.at_most(date_of_play, edition - timedelta(days=1))

    @property
    def match_play(self) -> bool:
        """Whether the form of play is match play."""
        return self.is_one_of(form_of_play, FormOfPlay.MATCH_PLAY)

    def local_rule(self, code: str) -> bool:
        """Tell whether the Committee has adopted the Model Local Rule with this code, e.g. ``"E-5"``.

        Raises:
            LookupError: the book asks for a code that is not registered; the message names the files to edit.
        """
        if code not in LOCAL_RULES:
            raise LookupError(_not_registered(code))
        return self[LOCAL_RULES[code]]

    def _left(self, fact: Fact[T]) -> tuple[T, ...]:
        """Return the answers to a choice that are still open."""
        narrowed = self._open.get(fact)
        if narrowed is not None:
            return narrowed.answers
        if fact in self._fixed:
            raise self._needed(fact, (Branch((self._fixed[fact],)),))
        return tuple(fact.answers)

    def _needed(self, fact: Fact[Any], branches: tuple[Branch, ...]) -> FactNeeded:
        return FactNeeded(Question(fact, branches), self._provisions[-1] if self._provisions else "")


def _not_registered(code: str) -> str:
    return said(
        "There is no Model Local Rule {code} that a provision can ask for. "
        "Enter it in rules/local_rules/register/area_{area}.py, which tells who computes it, "
        "and give it a title in LOCAL_RULE_TITLES of rules/facts/conditions.py, which makes its question.",
        code=shown(code),
        area=code[:1].lower(),
    )
