"""Routine questions whose usual answer is plain, gathered so that they are confirmed together.

A fact may say what its answer usually is (:attr:`marram.rules.engine.fact.Fact.usual`). That answer is never taken: it is
offered, with the others of the same kind that would come next, and only what a person confirms is a fact.
"""

from collections.abc import Callable, Mapping
from typing import Any

from marram.rules.engine.request import fact_named
from marram.rules.result import NeedFacts, Result


def usual_answers(ask: Callable[[Mapping[str, Any]], Result], facts: Mapping[str, Any]) -> dict[str, Any]:
    """Return the routine questions that come next and can change the outcome, each with its usual answer.

    They are those that follow one another when each is answered as usual; the first question with no usual answer, or
    a result, ends them. None where the next question is not a routine one.

    Args:
        ask: rules on what is known.
        facts: what is known, by fact name.
    """
    gathered: dict[str, Any] = {}
    result = ask(facts)
    while isinstance(result, NeedFacts):
        fact = fact_named(result.fact)
        if fact.usual is None:
            break
        gathered[fact.name] = fact.usual
        result = ask({**facts, **gathered})
    return gathered
