"""A ruling request: an incident, the facts known, the conditions of the competition → a result."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import date
from threading import Lock
from typing import Any, TypeVar

from marram.errors import (
    DateNotCovered,
    InputError,
    UnknownFact,
    UnknownIncident,
    did_you_mean,
    shown,
)
from marram.rules.cost import cost_of
from marram.rules.engine.conditions import (
    check_partners,
    check_sides,
    conditions,
    conditions_of,
    day_meant,
    no_list_of_codes,
)
from marram.rules.engine.fact import FACTS, Fact
from marram.rules.engine.graph import Graph, Vertex, outcomes
from marram.rules.engine.tree import NOTHING_FIXED, Entry, Fixed, Node, grow
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.facts.conditions import form_of_play as the_form
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.incidents import incident
from marram.rules.rather import rather, with_point_told
from marram.rules.result import NeedFacts, Result, Settled, Stake
from marram.rules.ruling import Action, Outcome, Ruling
from marram.said import said, sentences

_UNKNOWN = object()
_MOST_SUGGESTIONS = 50
"""Of how many unknown facts of one request the nearest are looked for: more are no slips of a pen (own choice)."""
_BOOKS: dict[str, "Book"] = {}
"""The tree of each incident asked about, by its name."""
_AMONG_SIDES: dict[tuple[str, Sides], "Book"] = {}
"""The tree of each incident asked about where players compete as sides, by its name and the sides."""
_ACCEPTED: dict[tuple[str, Any], tuple[Fact[Any], Any, type]] = {}
"""Answers as they were given before, with their type: 1 and True are one key, but not one answer.

Only what the vocabulary itself writes is kept, an answer or its own word, so that nothing a caller makes up stays.
"""


class Book:
    """One incident's tree, grown as it is used, and its graph."""

    def __init__(self, entry: Entry, fixed: Fixed = NOTHING_FIXED) -> None:
        self.root = grow(entry, fixed=fixed)
        self.graph = Graph()
        self.lock = Lock()


def book(name: str) -> Book:
    """Return the tree and graph of an incident, shared within the process.

    Raises:
        UnknownIncident: no incident has this name.
    """
    try:
        return _BOOKS[name]
    except (KeyError, TypeError):
        found = incident(name)
        return _BOOKS.setdefault(found.name, Book(found.provision()))


def book_among(name: str, who: Sides) -> Book:
    """Return the tree and graph of an incident where players compete as sides: what it costs, and who bears it.

    Raises:
        UnknownIncident: no incident has this name.
    """
    try:
        return _AMONG_SIDES[name, who]
    except (KeyError, TypeError):
        from marram.rules.incidents.among_sides import entry_among_sides  # noqa: PLC0415 - only with sides

        found = incident(name)
        entry = entry_among_sides(found, who)
        return _AMONG_SIDES.setdefault((found.name, who), Book(entry, {the_sides: who}))


def rule(
    incident: str,
    facts: Mapping[str, Any] | None = None,
    *,
    played_on: date | None = None,
    form_of_play: FormOfPlay | str | None = None,
    sides: Sides | str | None = None,
    local_rules: Iterable[str] | None = None,
    edition: int | str | None = None,
) -> Result:
    """Rule on one incident.

    Args:
        incident: the name of what happened, as in :data:`marram.rules.incidents.INCIDENTS`.
        facts: what is known, by fact name; answers may be enum members, booleans, numbers, or their words
            (``"yes"``, ``"putting_green"``). A fact left out is unknown, never assumed.
        played_on: the day of the round, which decides the edition of the Rules.
        form_of_play: the form of play; ``None`` when unknown.
        sides: who plays together (Foursomes, Four-Ball …): each penalty then names who bears it; ``None`` when
            unknown or where each player competes alone.
        local_rules: the codes of the Model Local Rules in force, e.g. ``["E-5"]``; an empty list says that
            none is; ``None`` when unknown.
        edition: instead of a day, the year of an edition: it is taken as clarified up to its last day
            (:func:`marram.rules.editions.as_clarified`).

    Returns:
        A ``Ruling``, ``Judgement`` or ``NotCovered`` with its reasons; ``HandOver`` where the answers say that
        rather another incident happened; or ``NeedFacts`` with the next question, if its answer can change the
        outcome.

    Raises:
        UnknownIncident, UnknownFact, BadAnswer, InputError: the input is wrong; all faults are listed.
        DateNotCovered: the day lies before the first one covered for this incident.
    """
    try:
        pages = book(incident)
    except UnknownIncident as unknown:
        raise _with_faults_of(facts or {}, unknown) from None
    if played_on is None or edition is not None:
        played_on = day_meant(played_on, edition)
    try:
        adopted = None if local_rules is None else frozenset(local_rules)
    except TypeError:
        raise no_list_of_codes(local_rules) from None
    if isinstance(local_rules, str):  # whose letters are no codes
        raise no_list_of_codes(local_rules)
    try:  # the way of every ruling but those of teaching: no further test of the day
        given = conditions(played_on, form_of_play, adopted)
    except (DateNotCovered, TypeError):
        given = conditions_of(incident, played_on, form_of_play, adopted)
    known = dict(given)
    if sides is not None:
        known[the_sides] = the_sides.parse(sides)
    for pair in (facts or {}).items():
        try:
            fact, answer, kind = _ACCEPTED[pair]
        except (KeyError, TypeError):
            break
        if kind is not type(pair[1]):
            break
        known[fact] = answer
    else:
        return _ruled(incident, pages, known)
    known.update(read_facts(facts or {}))
    return _ruled(incident, pages, known)


def _ruled(name: str, pages: Book, known: dict[Fact[Any], Any]) -> Result:
    """Walk the tree of an incident, and take in what is known beyond what its provisions ask for."""
    other = rather(name, known)
    if other is not None:
        return other
    result = _walk_among_sides(name, known) if the_sides in known else walk(pages, known)
    return with_point_told(result, known)


def _walk_among_sides(name: str, known: dict[Fact[Any], Any]) -> Result:
    """Walk the tree of an incident where it is known who plays together.

    Raises:
        BadAnswer: Three-Ball is said to be played in a form other than match play, or of an incident of partners.
    """
    who = known[the_sides]
    if who is Sides.INDIVIDUAL:
        return walk(book(name), known)
    if who is Sides.THREE_BALL:
        check_partners(name, incident(name).rule, who)
        check_sides(who, known.setdefault(the_form, FormOfPlay.MATCH_PLAY))
    return walk(book_among(name, who), known)


def _with_faults_of(facts: Mapping[str, Any], unknown: UnknownIncident) -> InputError:
    """Return the error of an unknown incident, with the faults of the answers given for it."""
    try:
        read_facts(facts)
    except InputError as error:
        return InputError(*unknown.faults, *error.faults)
    return unknown


def walk(pages: Book, known: Mapping[Fact[Any], Any]) -> Result:
    """Walk a tree with the answers known; stop at an outcome, or at a question that can change it."""
    here = pages.root
    idle: set[str] = set()
    while isinstance(here, Node):
        answer = known.get(here.fact, _UNKNOWN)
        if answer is not _UNKNOWN:
            here = here.follow(answer)
            continue
        ahead = past_open(pages, here, known)
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
            fact = fact_named(name, suggest=len(faults) < _MOST_SUGGESTIONS)
            answer = read[fact] = fact.parse(given)
        except InputError as error:
            faults.append(error)
            continue
        if fact.answers and (given is answer or (type(given) is str and given == fact.token(answer))):
            _ACCEPTED[name, given] = (fact, answer, type(given))
    if len(faults) == 1:
        raise faults[0]
    if faults:
        raise InputError(*(fault for error in faults for fault in error.faults))
    return read


def fact_named(name: str, *, suggest: bool = True) -> Fact[Any]:
    """Return the fact called ``name``.

    Args:
        name: the name.
        suggest: whether to look for the nearest names where there is no such fact.

    Raises:
        UnknownFact: there is none.
    """
    if name not in FACTS:
        from marram.rules.facts import vocabulary  # noqa: PLC0415 - the rest of the vocabulary, only when needed

        vocabulary()
    if name in FACTS:
        return FACTS[name]
    near = did_you_mean(name, FACTS) if suggest else ""
    raise UnknownFact(
        sentences(
            said("There is no fact {name}.", name=shown(name)),
            near,
            said("'marram facts' lists them all."),
        )
    )


def past_open(pages: Book, node: Node, known: Mapping[Fact[Any], Any]) -> Node | Outcome | NeedFacts:
    """Step past a question that cannot change the outcome, or return it as the next question."""
    with pages.lock:  # equal parts must stay one object, also when several officials ask at once
        whole, ways = pages.graph.reduce(node), [pages.graph.reduce(child) for child in node.children()]
        left = Graph(pages.graph)
        ahead = left.restrict(whole, known)
        branches = [left.restrict(way, known) for way in ways]
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
    costs = tuple(dict.fromkeys(cost_of(end) for end in ends if isinstance(end, Ruling)))
    return Stake(answers, above, at_most, len(ends), penalties, costs)


def _settled(vertex: Vertex) -> Settled:
    ends = outcomes(vertex)
    if not all(isinstance(end, Ruling) for end in ends):
        return Settled(None, None, None)
    rulings = [end for end in ends if isinstance(end, Ruling)]

    def common(values: list[Any]) -> Any:
        return values[0] if all(value == values[0] for value in values) else None

    penalties = common([ruling.penalties for ruling in rulings])
    action = common([ruling.action for ruling in rulings])
    if action is Action.PLAY_ON and penalties is None and all(ruling.penalties for ruling in rulings):
        action = (
            None  # a penalty is certain and only its size is open: "play on" would say that nothing is owed
        )
    relief = common([ruling.relief for ruling in rulings])
    return Settled(penalties, action, relief, common([cost_of(ruling) for ruling in rulings]))


__all__ = ["Book", "book", "conditions", "conditions_of", "fact_named", "read_facts", "rule", "walk"]
