"""May I? What a player may do where the ball lies, may not do, and at what cost, asked before anything is done.

Nothing is written down for it: the engine rules on each act of :data:`marram.services.asked.acts.ACTS` as if it had been done,
and where that costs a penalty looks for the nearest way of doing it, one fact changed, that does not.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date
from enum import Enum
from typing import Any

import marram
from marram.rules.engine.request import fact_named
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conditions import LOCAL_RULES, FormOfPlay, Sides
from marram.rules.penalty import Penalty
from marram.rules.relief_family import family
from marram.rules.relief_option import ReliefKind, ReliefOption
from marram.rules.result import NeedFacts, Result, Stake
from marram.rules.ruling import HandOver, Ruling, Stroke
from marram.services.asked.acts import ACTS, GROUPS
from marram.services.asked.asked_act import AskedAct
from marram.words.headline import costs_something

MOST_OPEN = 4
"""How many open questions of an act are followed, each in every way it can be answered (own choice); whether a Local Rule is
in force is followed besides."""


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
        sides: who plays together, if known: each penalty then names who bears it.
    """

    area: Area
    played_on: date
    form_of_play: FormOfPlay | None = None
    local_rules: tuple[str, ...] | None = ()
    facts: Mapping[str, Any] | None = None
    sides: Sides | None = None


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
        group: what the act is about, a key of :data:`marram.services.asked.acts.GROUPS`.
        penalties: for what is not allowed, what it costs; several, where that hangs on what is not known.
        granted: the facts that the act takes for granted, with their answers, where the ruling rests on them.
        rather: for what is not allowed, another act that is.
        citation: the provision that decides; where it depends, the one that asks.
        local_rule: where it depends on a Local Rule of which nobody told whether it is in force, its code.
        in_force, not_in_force: what the answer is then with that Local Rule alone, and with none.
    """

    act: str
    incident: str
    verdict: Verdict
    result: Result
    hangs_on: str = ""
    costs: tuple[int, ...] = ()
    instead: Instead | None = None
    elsewhere: tuple[Area, ...] = ()
    group: str = ""
    penalties: tuple[tuple[Penalty, ...], ...] = ()
    granted: tuple[tuple[str, str], ...] = ()
    rather: str = ""
    citation: str = ""
    local_rule: str = ""
    in_force: "MayAnswer | None" = None
    not_in_force: "MayAnswer | None" = None


def may(asked: MayAsk) -> tuple[MayAnswer, ...]:
    """Return what the player may do where the ball lies, may not do, and at what cost.

    Raises:
        UnknownFact, BadAnswer, InputError: a fact or a condition cannot be used.
        DateNotCovered: the day lies before the editions.
    """
    acts = [act for act in ACTS if asked.area in act.areas]
    answers = {act.name: _answer(asked, act) for act in acts}
    return tuple(
        replace(
            _with_elsewhere(asked, answers[act.name]),
            group=_GROUP_OF[act.name],
            granted=_granted(asked, act, answers[act.name].result),
            rather=_rather(act, answers),
            citation=_citation(asked, act, answers[act.name]),
            **_by_local_rule(asked, act, answers[act.name]),
        )
        for act in acts
    )


def local_rules_that_decide(answers: Iterable[MayAnswer]) -> tuple[str, ...]:
    """Return the codes of the Local Rules that answers depend on: asked once for all of them."""
    return tuple(sorted({one.local_rule for one in answers if one.local_rule}))


_CODES = {fact.name: code for code, fact in LOCAL_RULES.items()}
_LOCAL_RULES = frozenset(_CODES)
_GROUP_OF = {act.name: name for name, group in GROUPS.items() for act in group}
_ALLOWED = (Verdict.YES, Verdict.AT_A_COST)
_ALWAYS_GRANTED = ("spot_marking",)


def _granted(asked: MayAsk, act: AskedAct, result: Result) -> tuple[tuple[str, str], ...]:
    """Return what the act takes for granted beside what its name says, where the ruling rests on it."""
    read = {one.fact for one in result.reasons}
    return tuple(
        (fact, answer)
        for fact, answer in act.facts.items()
        if fact in read and fact not in act.named and fact not in (asked.facts or {})
        if answer in ("yes", "no") or fact in _ALWAYS_GRANTED
    )


def _citation(asked: MayAsk, act: AskedAct, answer: MayAnswer) -> str:
    """Return the provision that decides: where something is open but does not matter, the one that an end rests on."""
    result = answer.result
    if isinstance(result, NeedFacts) and answer.verdict is not Verdict.DEPENDS:
        facts = _facts(asked, act)
        ends = [end for end in _ends(asked, act, facts, MOST_OPEN) if isinstance(end, Ruling)]
        if ends:  # of relief that is allowed the last: without Local Rules
            result = ends[-1 if act.relief and answer.verdict in _ALLOWED else 0]
    if isinstance(result, Ruling):
        return result.citations[0] if result.citations else ""
    return "" if isinstance(result, HandOver) else result.citation


def _rather(act: AskedAct, answers: Mapping[str, MayAnswer]) -> str:
    """Return the act that an official would point to instead: the first of those named that is allowed here."""
    if answers[act.name].verdict in (*_ALLOWED, Verdict.DEPENDS):
        return ""
    return next((name for name in act.rather if name in answers and answers[name].verdict in _ALLOWED), "")


def _by_local_rule(asked: MayAsk, act: AskedAct, answer: MayAnswer) -> dict[str, Any]:
    """Return the answer with the Local Rule that it depends on, and with none."""
    if answer.hangs_on not in _LOCAL_RULES:
        return {}
    code = _CODES[answer.hangs_on]
    alone, none = (_answer(replace(asked, local_rules=codes), act) for codes in ((code,), ()))
    return {"local_rule": code, "in_force": alone, "not_in_force": none}


def _with_elsewhere(asked: MayAsk, answer: MayAnswer) -> MayAnswer:
    """Add to what is not allowed the areas of the course in which the same act is."""
    if answer.verdict not in (Verdict.NO, Verdict.NO_RELIEF):
        return answer
    allowed = {
        area
        for act in ACTS
        if act.name == answer.act
        for area in act.areas - {asked.area}
        if _answer(replace(asked, area=area), act).verdict in _ALLOWED
    }
    return replace(answer, elsewhere=tuple(area for area in Area if area in allowed))


def _facts(asked: MayAsk, act: AskedAct) -> dict[str, Any]:
    return {area_of_ball.name: area_of_ball.token(asked.area), **act.facts, **(asked.facts or {})}


def _answer(asked: MayAsk, act: AskedAct) -> MayAnswer:
    facts = _facts(asked, act)
    result = _rule(asked, act, facts)
    if act.relief:
        return _relief_answer(asked, act, facts, result)
    ends = list(_ends(asked, act, facts, MOST_OPEN))
    costly = [one for one in ends if not isinstance(one, Ruling) or _is_refused(one)]
    if not costly:
        return MayAnswer(act.name, act.incident, Verdict.YES, result)
    if len(costly) < len(ends) and isinstance(result, NeedFacts):
        return MayAnswer(act.name, act.incident, Verdict.DEPENDS, result, hangs_on=result.fact)
    instead = _instead(asked, act, facts, result)
    penalties = tuple(dict.fromkeys(one.penalties for one in costly if isinstance(one, Ruling)))
    return MayAnswer(act.name, act.incident, Verdict.NO, result, instead=instead, penalties=penalties)


def _relief_answer(asked: MayAsk, act: AskedAct, facts: Mapping[str, Any], result: Result) -> MayAnswer:
    """Return whether relief of the kind asked about is offered, and what it costs."""
    costs, without = _costs_of_relief(asked, act, facts)
    if not costs:
        instead = _instead(asked, act, facts, result)
        return MayAnswer(act.name, act.incident, Verdict.NO_RELIEF, result, instead=instead)
    if without and isinstance(result, NeedFacts):
        return MayAnswer(act.name, act.incident, Verdict.DEPENDS, result, hangs_on=result.fact)
    verdict = Verdict.YES if costs == {0} else Verdict.AT_A_COST
    return MayAnswer(act.name, act.incident, verdict, result, costs=tuple(sorted(costs)))


def _costs_of_relief(asked: MayAsk, act: AskedAct, facts: Mapping[str, Any]) -> tuple[set[int], int]:
    """Return what the relief asked about costs, over all the act can end in, and in how many of them it is not offered."""
    costs: set[int] = set()
    without = 0
    for end in _ends(asked, act, facts, MOST_OPEN):
        offered = [] if not isinstance(end, Ruling) else [
            one.penalty for one in end.relief if _is_asked_about(one, end, act)
        ]  # fmt: skip
        costs |= set(offered)
        without += not offered
    return costs, without


def _is_asked_about(option: ReliefOption, end: Ruling, act: AskedAct) -> bool:
    """Tell whether an option is the relief asked about: a dropping zone (E-1) says where it is taken, not whether."""
    if option.kind is not ReliefKind.DROPPING_ZONE or not option.penalty:
        return family(option) in act.relief
    return end.citations[0].split(".")[0] in act.relief


def _rule(asked: MayAsk, act: AskedAct, facts: Mapping[str, Any]) -> Result:
    return marram.rule(
        act.incident,
        facts,
        played_on=asked.played_on,
        form_of_play=asked.form_of_play,
        local_rules=asked.local_rules,
        sides=asked.sides,
    )


def _ends(asked: MayAsk, act: AskedAct, facts: Mapping[str, Any], depth: int) -> Iterator[Result]:
    """Yield what an act can end in, following each open question in every way; what is open still deeper, as it is."""
    result = _rule(asked, act, facts)
    if not isinstance(result, NeedFacts) or not depth:
        yield result
        return
    fact = fact_named(result.fact)
    for stake in result.stakes:
        for answer in _answers(stake):
            yield from _ends(
                asked, act, {**facts, fact.name: answer}, depth - (fact.name not in _LOCAL_RULES)
            )


def _answers(stake: Stake) -> tuple[Any, ...]:
    """Return the answers of a stake that have to be followed: one for all, where all end alike."""
    if not stake.answers:
        return (stake.at_most if stake.above is None else stake.above + 1,)
    return stake.answers if stake.outcomes > 1 else stake.answers[:1]


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
    """Tell whether the act costs nothing so; of relief, whether it is offered for nothing, whatever is still open."""
    if act.relief:
        return _costs_of_relief(asked, act, facts) == ({0}, 0)
    ends = list(_ends(asked, act, facts, MOST_OPEN))
    return all(isinstance(one, Ruling) and not _is_refused(one) for one in ends)


def _is_refused(end: Ruling) -> bool:
    """Tell whether what was done costs something, or comes to nothing: a stroke that does not count, or may be cancelled."""
    return costs_something(end) or end.stroke in (Stroke.DOES_NOT_COUNT, Stroke.OPPONENT_MAY_CANCEL)
