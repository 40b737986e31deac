"""The routine questions of a case that come next, with their usual answers, to be confirmed together."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

import marram
from marram.rules.engine.request import fact_named
from marram.rules.engine.usual import usual_answers
from marram.rules.result import Result
from marram.services.cases.rulings import Ruled
from marram.words.language import translate

LEAST_TOGETHER = 2
"""Fewer routine questions are not gathered: one of them alone is answered with one tap anyway."""


@dataclass(frozen=True, slots=True)
class UsualAnswer:
    """One routine question, and the answer that is offered to be confirmed.

    Attributes:
        fact: its name.
        question: the question.
        token: the usual answer as it is written in an address or on the command line.
        answer: the usual answer in words.
    """

    fact: str
    question: str
    token: str
    answer: str


def usual_here(ruled: Ruled) -> tuple[UsualAnswer, ...]:
    """Return the routine questions of a case that are next, each with its usual answer; none where they are few."""
    if ruled.asked.what is None:
        return ()
    what, request = ruled.asked.what, ruled.asked.conditions.request()
    return usual_together(lambda facts: marram.rule(what, facts, **request), ruled.known)


def usual_together(
    ask: Callable[[Mapping[str, Any]], Result], facts: Mapping[str, Any]
) -> tuple[UsualAnswer, ...]:
    """Return the routine questions that come next, in words; none where fewer than two do.

    Args:
        ask: rules on what is known.
        facts: what is known, by fact name.
    """
    gathered = usual_answers(ask, facts)
    if len(gathered) < LEAST_TOGETHER:
        return ()
    return tuple(
        UsualAnswer(
            name,
            translate()(fact_named(name).question),
            fact_named(name).token(answer),
            translate()(fact_named(name).answers[answer]),
        )
        for name, answer in gathered.items()
    )
