"""A ruling request: an incident, the facts known, the conditions of the competition → a result."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import date
from enum import Enum
from functools import cache
from threading import Lock
from typing import Any, TypeVar

from marram.errors import BadAnswer, DateNotCovered, InputError, UnknownFact, did_you_mean
from marram.rules.editions import EDITIONS, FIRST_DAY
from marram.rules.engine.fact import FACTS, Fact
from marram.rules.engine.graph import Graph, Vertex, outcomes
from marram.rules.engine.tree import Entry, Node, grow
from marram.rules.facts.conditions import LOCAL_RULES, FormOfPlay, date_of_play, form_of_play
from marram.rules.incidents import incident
from marram.rules.result import NeedFacts, Result, Settled, Stake
from marram.rules.ruling import Outcome, Ruling

_UNKNOWN = object()
_ACCEPTED: dict[tuple[str, Any], tuple[Fact[Any], Any]] = {}


class Book:
    """One incident's tree, grown as it is used, and its graph."""

    def __init__(self, entry: Entry) -> None:
        self.root = grow(entry)
        self.graph = Graph()
        self.lock = Lock()


@cache
def book(name: str) -> Book:
    """Return the tree and graph of an incident, shared within the process.

    Raises:
        UnknownIncident: no incident has this name.
    """
    return Book(incident(name).provision())


def rule(
    incident: str,
    facts: Mapping[str, Any] | None = None,
    *,
    played_on: date,
    form_of_play: FormOfPlay | str | None = None,
    local_rules: Iterable[str] | None = None,
) -> Result:
    """Rule on one incident.

    Args:
        incident: the name of what happened, as in :data:`marram.rules.incidents.INCIDENTS`.
        facts: what is known, by fact name; answers may be enum members, booleans, numbers, or their words
            (``"yes"``, ``"putting_green"``). A fact left out is unknown, never assumed.
        played_on: the day of the round, which decides the edition of the Rules.
        form_of_play: the form of play; ``None`` when unknown.
        local_rules: the codes of the Model Local Rules in force, e.g. ``["E-5"]``; an empty list says that
            none is; ``None`` when unknown.

    Returns:
        A ``Ruling``, ``Judgement`` or ``NotCovered`` with its reasons; or ``NeedFacts`` with the next
        question, if its answer can change the outcome.

    Raises:
        UnknownIncident, UnknownFact, BadAnswer, InputError: the input is wrong; all faults are listed.
        DateNotCovered: the day lies before the first one covered for this incident.
    """
    pages = book(incident)
    adopted = None if local_rules is None else frozenset(local_rules)
    try:  # the way of every ruling but those of teaching: no further test of the day
        given = conditions(played_on, form_of_play, adopted)
    except DateNotCovered:
        given = conditions_of(incident, played_on, form_of_play, adopted)
    known = dict(given)
    for pair in (facts or {}).items():
        try:
            fact, answer = _ACCEPTED[pair]
        except (KeyError, TypeError):
            known.update(read_facts(facts or {}))
            break
        known[fact] = answer
    return walk(pages, known)


def walk(pages: Book, known: Mapping[Fact[Any], Any]) -> Result:
    """Walk a tree with the answers known; stop at an outcome, or at a question that can change it."""
    here = pages.root
    idle: set[str] = set()
    while isinstance(here, Node):
        answer = known.get(here.fact, _UNKNOWN)
        if answer is not _UNKNOWN:
            here = here.follow(answer)
            continue
        ahead = _past_open(pages, here, known)
        if isinstance(ahead, NeedFacts):
            return _without(ahead, idle)
        idle.add(here.fact.name)
        here = ahead
    return _without(here, idle) if idle else here


def read_facts(facts: Mapping[str, Any]) -> dict[Fact[Any], Any]:
    """Return the facts and answers that names and words stand for.

    Raises:
        UnknownFact, BadAnswer: one is wrong; with several faults, an ``InputError`` that lists them all.
    """
    read: dict[Fact[Any], Any] = {}
    faults: list[InputError] = []
    for name, given in facts.items():
        try:
            fact = fact_named(name)
            answer = read[fact] = fact.parse(given)
        except InputError as error:
            faults.append(error)
            continue
        if fact.answers and isinstance(given, str | bool | Enum):
            _ACCEPTED[name, given] = (fact, answer)
    if len(faults) == 1:
        raise faults[0]
    if faults:
        raise InputError(*(fault for error in faults for fault in error.faults))
    return read


def fact_named(name: str) -> Fact[Any]:
    """Return the fact called ``name``.

    Raises:
        UnknownFact: there is none; the message suggests the nearest.
    """
    if name not in FACTS:
        from marram.rules.facts import vocabulary  # noqa: PLC0415 - the rest of the vocabulary, only when needed

        vocabulary()
    if name in FACTS:
        return FACTS[name]
    raise UnknownFact(
        f"There is no fact {name!r}.{did_you_mean(name, sorted(FACTS))} 'marram facts' lists them all."
    )


@cache
def conditions(
    played_on: date, form: FormOfPlay | str | None, local_rules: frozenset[str] | None
) -> Mapping[Fact[Any], Any]:
    """Return the facts that the conditions of the competition establish.

    Raises:
        DateNotCovered: ``played_on`` lies before the first edition covered.
        BadAnswer: an unknown form of play or Local Rule.
    """
    if played_on < FIRST_DAY:
        raise DateNotCovered(
            f"Play on {played_on.isoformat()} is not covered: marram knows the editions of the Rules from "
            f"{', '.join(day.isoformat() for day in EDITIONS)}. Give a day on or after {FIRST_DAY.isoformat()}."
        )
    return _established(played_on, form, local_rules)


def conditions_of(
    name: str, played_on: date, form: FormOfPlay | str | None, local_rules: frozenset[str] | None
) -> Mapping[Fact[Any], Any]:
    """Return the facts that the conditions establish, for an incident that may reach back before the editions.

    Raises:
        DateNotCovered: ``played_on`` lies before the first day covered for this incident.
        UnknownIncident, BadAnswer: the incident, a form of play or a Local Rule is unknown.
    """
    first = incident(name).covered_from
    if first == FIRST_DAY:
        return conditions(played_on, form, local_rules)
    if played_on < first:
        raise DateNotCovered(
            f"Play on {played_on.isoformat()} is not covered: the incident {name!r} shows what the Rules ruled "
            f"from {first.isoformat()} on. Give a day on or after {first.isoformat()}."
        )
    return _established(played_on, form, local_rules)


def _established(
    played_on: date, form: FormOfPlay | str | None, local_rules: frozenset[str] | None
) -> Mapping[Fact[Any], Any]:
    known: dict[Fact[Any], Any] = {date_of_play: played_on}
    if form is not None:
        known[form_of_play] = form_of_play.parse(form)
    if local_rules is not None:
        unknown = sorted(local_rules - LOCAL_RULES.keys())
        if unknown:
            raise BadAnswer(
                *(
                    f"There is no Local Rule {code!r} that changes a ruling here. "
                    f"Known codes: {', '.join(LOCAL_RULES)}."
                    for code in unknown
                )
            )
        known.update({fact: code in local_rules for code, fact in LOCAL_RULES.items()})
    return known


def _past_open(pages: Book, node: Node, known: Mapping[Fact[Any], Any]) -> Node | Outcome | NeedFacts:
    """Step past a question that cannot change the outcome, or return it as the next question."""
    with pages.lock:  # equal parts must stay one object, also when several officials ask at once
        ahead = pages.graph.restrict(pages.graph.reduce(node), known)
        branches = [pages.graph.restrict(pages.graph.reduce(child), known) for child in node.children()]
    if all(branch is branches[0] for branch in branches):
        return node.child(0)
    return NeedFacts(
        fact=node.fact.name,
        citation=node.citation,
        stakes=tuple(
            _stake(branch.answers, branch.above, branch.at_most, vertex)
            for branch, vertex in zip(node.branches, branches, strict=True)
        ),
        settled=_settled(ahead),
        reasons=node.reasons,
    )


R = TypeVar("R", bound=Result)


def _without(result: R, idle: set[str]) -> R:
    """Drop from the reasons the open questions that made no difference."""
    return replace(result, reasons=tuple(reason for reason in result.reasons if reason.fact not in idle))


def _stake(answers: tuple[Any, ...], above: Any, at_most: Any, vertex: Vertex) -> Stake:
    ends = outcomes(vertex)
    penalties = tuple(dict.fromkeys(end.penalties for end in ends if isinstance(end, Ruling)))
    return Stake(answers, above, at_most, len(ends), penalties)


def _settled(vertex: Vertex) -> Settled:
    ends = outcomes(vertex)
    if not all(isinstance(end, Ruling) for end in ends):
        return Settled(None, None, None)
    rulings = [end for end in ends if isinstance(end, Ruling)]

    def common(values: list[Any]) -> Any:
        return values[0] if all(value == values[0] for value in values) else None

    return Settled(
        common([ruling.penalties for ruling in rulings]),
        common([ruling.action for ruling in rulings]),
        common([ruling.relief for ruling in rulings]),
    )


__all__ = ["Book", "book", "conditions", "conditions_of", "fact_named", "read_facts", "rule", "walk"]
