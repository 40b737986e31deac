"""What a ruling request returns: what a provision ends in, or the next question and why it matters."""

from dataclasses import dataclass
from typing import Any

from marram.rules.cost import Cost
from marram.rules.penalty import Penalty
from marram.rules.relief_option import ReliefOption
from marram.rules.ruling import Action, HandOver, Judgement, NotCovered, Reason, Ruling


@dataclass(frozen=True, slots=True)
class Stake:
    """What one way of answering still leaves open.

    Attributes:
        answers: the answers (or ``above`` / ``at_most``) meant.
        outcomes: how many different outcomes remain.
        penalties: the different penalty sets among them.
        costs: what they come to, relief counted.
    """

    answers: tuple[Any, ...]
    above: Any
    at_most: Any
    outcomes: int
    penalties: tuple[tuple[Penalty, ...], ...]
    costs: tuple[Cost, ...] = ()


@dataclass(frozen=True, slots=True)
class Settled:
    """What every remaining outcome has in common; ``None`` where they differ."""

    penalties: tuple[Penalty, ...] | None
    action: Action | None
    relief: tuple[ReliefOption, ...] | None
    cost: Cost | None = None


@dataclass(frozen=True, slots=True)
class NeedFacts:
    """The next question, why it matters, and what is already settled whatever the answer.

    Attributes:
        fact: the name of the fact to establish next.
        citation: the provision that needs it.
        stakes: what each way of answering leaves open.
        settled: what holds whatever the answer.
        reasons: the facts read so far, in order.
    """

    fact: str
    citation: str
    stakes: tuple[Stake, ...]
    settled: Settled
    reasons: tuple[Reason, ...] = ()


Result = Ruling | NeedFacts | Judgement | NotCovered | HandOver
"""Everything a ruling request can return."""
