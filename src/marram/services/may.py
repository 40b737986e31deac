"""May I? What a player may do where the ball lies, may not do, and at what cost, asked before anything is done.

Nothing is written down for it: the engine rules on each act of :data:`marram.services.acts.ACTS` as if it had been done,
and where that costs a penalty looks for the nearest way of doing it, one fact changed, that does not.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date
from enum import Enum
from typing import Any

import marram
from marram.rules.engine.request import fact_named
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.relief_family import family
from marram.rules.result import NeedFacts, Result
from marram.rules.ruling import Ruling
from marram.services.acts import ACTS, AskedAct
from marram.words.headline import costs_something

MOST_OPEN = 3
"""How many open questions of an act are followed, each in every way it can be answered (own choice)."""


class Verdict(Enum):
    """What a player is told who asks beforehand."""

    YES = "yes"
    AT_A_COST = "at_a_cost"
    """Allowed, and it costs penalty strokes: relief that must be paid for."""
    NO = "no"
    DEPENDS = "depends"
    """It hangs on a fact that is not known."""
    NO_RELIEF = "no_relief"
    """The Rules give no such relief here."""


@dataclass(frozen=True, slots=True)
class MayAsk:
    """The place and the lie, and the conditions.

    Attributes:
        area: the area of the course in which the ball lies.
        played_on: the day of the round.
        form_of_play: the form of play, if known.
        local_rules: the Local Rules in force; ``None``: not known.
        facts: what else is known, by fact name; it outweighs what an act takes for granted.
    """

    area: Area
    played_on: date
    form_of_play: FormOfPlay | None = None
    local_rules: tuple[str, ...] | None = ()
    facts: Mapping[str, Any] | None = None


@dataclass(frozen=True, slots=True)
class Instead:
    """The nearest way that is allowed: one fact otherwise."""

    fact: str
    answers: tuple[Any, ...]


@dataclass(frozen=True, slots=True)
class MayAnswer:
    """What a player is told about one act.

    Attributes:
        act: the name of the act.
        incident: the incident that it is when done.
        verdict: whether the player may.
        result: what the book says of it when done.
        hangs_on: the fact it hangs on, where it depends.
        costs: penalty strokes it costs, over the options; empty where none, or where it is not allowed.
        instead: for what is not allowed, the nearest way that is; ``None`` where there is none one fact away.
        elsewhere: for what is not allowed, the areas of the course in which it is, all else the same.
    """

    act: str
    incident: str
    verdict: Verdict
    result: Result
    hangs_on: str = ""
    costs: tuple[int, ...] = ()
    instead: Instead | None = None
    elsewhere: tuple[Area, ...] = ()


def may(asked: MayAsk) -> tuple[MayAnswer, ...]:
    """Return what the player may do where the ball lies, may not do, and at what cost.

    Raises:
        UnknownFact, BadAnswer, InputError: a fact or a condition cannot be used.
        DateNotCovered: the day lies before the editions.
    """
    answers = (_answer(asked, act) for act in ACTS if asked.area in act.areas)
    return tuple(_with_elsewhere(asked, one) for one in answers)


def _with_elsewhere(asked: MayAsk, answer: MayAnswer) -> MayAnswer:
    """Add to what is not allowed the areas of the course in which the same act is."""
    if answer.verdict not in (Verdict.NO, Verdict.NO_RELIEF):
        return answer
    allowed = {
        area
        for act in ACTS
        if act.name == answer.act
        for area in act.areas - {asked.area}
        if _answer(replace(asked, area=area), act).verdict in (Verdict.YES, Verdict.AT_A_COST)
    }
    return replace(answer, elsewhere=tuple(area for area in Area if area in allowed))


RELIEF = {"unplayable": ("19",), "path": ("free",), "embedded": ("free",), "again": ("18",)}
"""The acts that are relief taken, and the families of relief that the question is about."""


def _answer(asked: MayAsk, act: AskedAct) -> MayAnswer:
    facts = {area_of_ball.name: area_of_ball.token(asked.area), **act.facts, **(asked.facts or {})}
    result = _rule(asked, act, facts)
    ends = list(_ends(asked, act, facts, MOST_OPEN))
    if act.name in RELIEF:
        return _relief_answer(act, result, ends)
    costly = [one for one in ends if not isinstance(one, Ruling) or costs_something(one)]
    if not costly:
        return MayAnswer(act.name, act.incident, Verdict.YES, result)
    if len(costly) < len(ends) and isinstance(result, NeedFacts):
        return MayAnswer(act.name, act.incident, Verdict.DEPENDS, result, hangs_on=result.fact)
    instead = _instead(asked, act, facts, result)
    return MayAnswer(act.name, act.incident, Verdict.NO, result, instead=instead)


def _relief_answer(act: AskedAct, result: Result, ends: list[Result]) -> MayAnswer:
    """Return whether relief of the kind asked about is offered, and what it costs."""
    costs: set[int] = set()
    without = 0
    for end in ends:
        offered = [] if not isinstance(end, Ruling) else [
            one.penalty for one in end.relief if family(one) in RELIEF[act.name]
        ]  # fmt: skip
        costs |= set(offered)
        without += not offered
    if not costs:
        return MayAnswer(act.name, act.incident, Verdict.NO_RELIEF, result)
    if without and isinstance(result, NeedFacts):
        return MayAnswer(act.name, act.incident, Verdict.DEPENDS, result, hangs_on=result.fact)
    verdict = Verdict.YES if costs == {0} else Verdict.AT_A_COST
    return MayAnswer(act.name, act.incident, verdict, result, costs=tuple(sorted(costs)))


def _rule(asked: MayAsk, act: AskedAct, facts: Mapping[str, Any]) -> Result:
    return marram.rule(
        act.incident,
        facts,
        played_on=asked.played_on,
        form_of_play=asked.form_of_play,
        local_rules=asked.local_rules,
    )


def _ends(asked: MayAsk, act: AskedAct, facts: Mapping[str, Any], depth: int) -> Iterator[Result]:
    """Yield what an act can end in, following each open question in every way; what is open still deeper, as it is."""
    result = _rule(asked, act, facts)
    if not isinstance(result, NeedFacts) or not depth:
        yield result
        return
    fact = fact_named(result.fact)
    for stake in result.stakes:
        answer = (
            stake.answers[0] if stake.answers else (stake.at_most if stake.above is None else stake.above + 1)
        )
        yield from _ends(asked, act, {**facts, fact.name: answer}, depth - 1)


def _instead(asked: MayAsk, act: AskedAct, facts: Mapping[str, Any], result: Result) -> Instead | None:
    """Return the nearest way of the act that costs nothing: another answer to the fact that was read last."""
    for reason in reversed(result.reasons):
        fact = fact_named(reason.fact)
        if fact.name not in act.ways:
            continue
        allowed = tuple(
            answer
            for answer in fact.answers
            if answer not in reason.answers and _is_free(asked, act, {**facts, fact.name: answer})
        )
        if allowed:
            return Instead(fact.name, allowed)
    return None


def _is_free(asked: MayAsk, act: AskedAct, facts: Mapping[str, Any]) -> bool:
    ends = list(_ends(asked, act, facts, MOST_OPEN))
    return all(isinstance(one, Ruling) and not costs_something(one) for one in ends)
