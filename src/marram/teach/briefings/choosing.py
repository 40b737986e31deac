"""Which situations a briefing shows: of topics, for beginners, of Local Rules, of what happened at an event."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import islice
from random import Random
from typing import Any

from marram.errors import InputError, did_you_mean
from marram.rules.engine.changes import substance
from marram.rules.engine.export import facts_of
from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import LOCAL_RULES, form_of_play
from marram.rules.former_names import incident_now
from marram.rules.incidents import INCIDENTS
from marram.rules.ruling import Ruling
from marram.said import said, sentences
from marram.teach.book.contents import entries
from marram.teach.book.permanent import situation_at
from marram.teach.briefings.points import FOR_BEGINNERS, SHOWN_IN, Point, answers
from marram.teach.situations.how_often import IN_MANY_ROUNDS, IN_MOST_ROUNDS, oddity
from marram.teach.situations.reaching import reached, reached_from
from marram.teach.situations.sampling import situation
from marram.teach.situations.situation import Situation, ruled
from marram.words.telling import is_told

_NO_POINT: Point = {}
_TRIES = 24
_EASY = 1
_COMMON = IN_MOST_ROUNDS | IN_MANY_ROUNDS


def of_topics(given: Sequence[str], seed: int, count: int) -> list[Situation]:
    """Return situations of topics by turns: each an incident, a Rule (``17``) or a provision (``17.1d``).

    Raises:
        InputError: one is none of these; every such one is listed, with the nearest.
    """
    ways, faults = [], []
    for one in given:
        found = _ways(one)
        if found:
            ways.append(found)
        else:
            names = [each.name for each in INCIDENTS if not each.for_teaching]
            faults.append(
                sentences(
                    said(
                        "{topic}: give an incident, a Rule such as 17, or a provision such as 17.1d.",
                        topic=one,
                    ),
                    did_you_mean(one, [*names, *reached_from()]),
                )
            )
    if faults or not ways:
        raise InputError(*(faults or [said("Give a topic: an incident, a Rule or a provision.")]))
    return list(islice(_by_turns(ways, seed), count))


def _ways(topic: str) -> list[tuple[str, str]]:
    """Return the incidents, each with a provision its rulings must cite, that a topic can be shown by."""
    name = incident_now(topic)
    if reached().get(name):
        return [(name, "")]
    if topic in reached_from():
        return [(each, topic) for each in reached_from()[topic]]
    whole = [one for one in reached_from() if topic.isdigit() and one.startswith(f"{topic}.")]
    return [(each, one) for one in whole for each in reached_from()[one]]


def for_beginners(seed: int, count: int) -> list[Situation]:
    """Return easy situations of what beginners meet, from the tee to the card."""
    ways = [[(name, "")] for name in FOR_BEGINNERS if reached().get(name)]
    found = list(islice(_by_turns(ways, seed, plain=True), count))
    order = {name: place for place, name in enumerate(FOR_BEGINNERS)}
    return sorted(found, key=lambda one: order[one.incident])


def of_local_rules(
    codes: Iterable[str], seed: int, count: int
) -> tuple[dict[str, Situation], tuple[str, ...]]:
    """Return by code a situation for each Local Rule in force, told as if no other were in doubt; and the codes none shows.

    Raises:
        InputError: no codes are given.
    """
    adopted = tuple(dict.fromkeys(codes))
    if not adopted:
        raise InputError(said("No Local Rule is in force: there is nothing to brief about."))
    found: dict[str, Situation] = {}
    conditions = _conditions(adopted)
    for code in adopted:
        lot = Random(f"{seed} {code}")  # noqa: S311 - a seed, no secret
        ways = [
            (name, one.citation)
            for one in entries().values()
            if code in one.citation.replace(",", " ").split()
            for name in reached_from().get(one.citation, ())
        ]
        known, point = conditions, _NO_POINT
        if code in SHOWN_IN:
            name, point = SHOWN_IN[code]
            ways = [(name, "")]
            known = {**known, **answers(point)}
        every = (situation(*_drawn(ways, lot), known) for _ in range(_TRIES if ways else 0))
        agreeing = [one for one in every if one is not None and _agrees(one, adopted)]
        agreeing = [one for one in agreeing if one.facts.keys() >= point.keys()] or agreeing
        offering = [one for one in agreeing if _relief_by(code, one)] or _beside_a_rule(code, adopted, lot)
        shown = offering or agreeing
        moved = [one for one in shown if _decides(code, one)]
        plainest = min(moved or shown, key=_how_plain, default=None)
        if plainest is not None:
            found[code] = plainest
    chosen = dict(islice(found.items(), count))
    return chosen, tuple(code for code in adopted if code not in found)


def _conditions(adopted: tuple[str, ...]) -> dict[Fact[Any], Any]:
    """Return of every Local Rule that is asked about whether it is in force."""
    return {
        fact: fact.parse("yes" if _in_force(fact, adopted) else "no")
        for name, fact in vocabulary().items()
        if name.startswith("local_rule_")
    }


def _in_force(fact: Fact[Any], adopted: tuple[str, ...]) -> bool:
    return any(code in adopted for code in fact.source.replace(",", " ").split())


def _beside_a_rule(code: str, adopted: tuple[str, ...], lot: Random) -> list[Situation]:
    """Return situations in which a Local Rule only adds a way of relief, and no provision of its own decides."""
    name = f"local_rule_{code.lower().replace('-', '_').replace('.', '_')}"
    if name not in vocabulary():
        return []
    known = _conditions(adopted)
    drawn = (
        situation(each, lot, known=known)
        for each in sorted(_COMMON)
        if reached().get(each) and fact_named(name) in facts_of(each)
        for _ in range(_TRIES)
    )
    return [one for one in drawn if one is not None and _relief_by(code, one) and _agrees(one, adopted)]


def _relief_by(code: str, one: Situation) -> bool:
    """Whether a ruling offers relief under a Local Rule."""
    return any(code in each.citation.split() for each in one.ruling.relief)


def _decides(code: str, one: Situation) -> bool:
    """Whether a situation would be ruled otherwise, were a Local Rule that is in force in it not."""
    name = LOCAL_RULES[code].name if code in LOCAL_RULES else ""
    if name not in one.facts:
        return False
    without = ruled(one.incident, {**one.facts, name: "no"}, one.form, one.played_on)
    return isinstance(without, Ruling) and substance(without) != substance(one.ruling)


def _drawn(ways: list[tuple[str, str]], lot: Random) -> tuple[str, Random, str]:
    name, provision = lot.choice(ways)
    return name, lot, provision


def _agrees(one: Situation, adopted: tuple[str, ...]) -> bool:
    """Whether a situation has no Local Rule in force that is not, and none out of force that is."""
    for name, answer in one.facts.items():
        in_force = answer in {True, "yes", "true"}
        if name.startswith("local_rule_") and in_force != _in_force(fact_named(name), adopted):
            return False
    return True


@dataclass(frozen=True, slots=True)
class Met:
    """A situation as an event met it.

    Attributes:
        situation: the situation.
        times: how often it was ruled on.
        went: what was not plain about it: ``corrected``, ``otherwise``, ``opinion``.
        at_first: what was ruled before it was put right, in one line each.
    """

    situation: Situation
    times: int
    went: frozenset[str]
    at_first: tuple[str, ...]


def of_event(cases: Iterable[Mapping[str, Any]], count: int) -> tuple[list[Met], int]:
    """Return what was ruled on at an event, what went wrong first, then what cost something; and how many could not be told.

    Args:
        cases: each with ``incident``, ``facts`` and ``form``; ``went`` and ``at_first`` as :class:`Met` has them.
        count: how many at most.
    """
    found: dict[tuple[str, str], Met] = {}
    left_out = 0
    for one in cases:
        pairs = [
            ("form", str(one["form"])),
            *((name, _as_told(to)) for name, to in one["facts"].items() if _can_be_told(name)),
        ]
        try:
            made = situation_at(str(one["incident"]), pairs)
        except InputError:
            left_out += 1
            continue
        key = (made.incident, made.headline)
        before = found.get(key, Met(made, 0, frozenset(), ()))
        at_first = (str(one["at_first"]),) if one.get("at_first") else ()
        found[key] = Met(
            made,
            before.times + 1,
            before.went | frozenset(one.get("went", ())),
            tuple(dict.fromkeys(before.at_first + at_first)),
        )
    ordered = sorted(
        found.values(), key=lambda each: (not each.went, not each.situation.ruling.penalties, -each.times)
    )
    return ordered[:count], left_out


def _as_told(answer: object) -> str:
    return ("yes" if answer else "no") if isinstance(answer, bool) else str(answer)


def _can_be_told(name: str) -> bool:
    """Whether a fact is part of a situation; what joins several incidents to one case is not."""
    return name not in vocabulary() or is_told(fact_named(name))


def _by_turns(ways: list[list[tuple[str, str]]], seed: int, *, plain: bool = False) -> Iterator[Situation]:
    """Yield situations of each way by turns, none told twice, until nothing new is found."""
    lot = Random(seed)  # noqa: S311 - a seed, no secret
    told: set[tuple[str, str]] = set()
    idle = 0
    while idle < 3:
        idle += 1
        for some in ways:
            one = _new(some, lot, told, plain=plain)
            if one is not None:
                told.add((one.incident, one.headline))
                idle = 0
                yield one


def _new(
    ways: list[tuple[str, str]], lot: Random, told: set[tuple[str, str]], *, plain: bool
) -> Situation | None:
    """Return a situation whose ruling was not told; the plainest of those drawn, or the first."""
    every = (_of_its_point(*_drawn(ways, lot), plain=plain) for _ in range(_TRIES))
    fresh = (one for one in every if one is not None and (one.incident, one.headline) not in told)
    return min(fresh, key=_how_plain, default=None) if plain else next(fresh, None)


def _of_its_point(name: str, lot: Random, provision: str, *, plain: bool) -> Situation | None:
    point = FOR_BEGINNERS.get(name, _NO_POINT) if plain else _NO_POINT
    return situation(name, lot, provision, answers(point))


def _how_plain(one: Situation) -> float:
    """Order situations: what happens most comes first, of that the easier and the shorter to tell."""
    known = {fact_named(name): fact_named(name).parse(token) for name, token in one.facts.items()}
    odd = oddity({**known, form_of_play: one.form})
    return odd + 0.5 * (one.level - _EASY) + 0.3 * len(known)
