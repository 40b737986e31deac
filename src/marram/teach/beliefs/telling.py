"""Which beliefs are told of a ruling: those whose outcome is computed, and is not the ruling."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from marram.rules.editions import FORMER_RULES
from marram.rules.engine.conditions import conditions_of
from marram.rules.engine.request import book, fact_named, read_facts
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.nearby import ends_told
from marram.rules.ruling import Ruling
from marram.teach.beliefs.belief import Belief
from marram.teach.beliefs.near_situations import OF_NEAR_SITUATIONS
from marram.teach.beliefs.until_2018 import RIGHT_UNTIL_2018
from marram.words.changes import fact_words
from marram.words.headline import headline
from marram.words.texts import text

BELIEFS = (*OF_NEAR_SITUATIONS, *RIGHT_UNTIL_2018)
MOST_ENDS = 1
"""Of how many possible outcomes a belief is still told (own choice: of more than one it would not be told which)."""


@dataclass(frozen=True, slots=True)
class Believed:
    """A belief told of a ruling.

    Attributes:
        key: the belief.
        said: what is believed.
        why: why it is wrong, in our own words.
        rule: the provision.
        computed: what the ruling would be or was, as computed.
    """

    key: str
    said: str
    why: str
    rule: str
    computed: tuple[str, ...]


def believed_of(
    incident: str, facts: Mapping[str, Any], line: str, *, form: FormOfPlay, played_on: date
) -> tuple[Believed, ...]:
    """Return what players believe of a situation and why it is wrong; empty where nothing of the list holds.

    Args:
        incident: the name of the incident.
        facts: what decides, as tokens.
        line: the ruling in one line.
        form: the form of play.
        played_on: the day of the round.
    """
    told = []
    for one in BELIEFS:
        if incident not in one.about or any(str(facts.get(name)) != str(to) for name, to in one.when.items()):
            continue
        first = next(iter(one.otherwise), None)
        if first is not None and (first not in facts or str(facts[first]) == str(one.otherwise[first])):
            continue
        lines = _lines(one, incident, facts, form, played_on)
        if not lines or line in lines:
            continue
        if one.former:
            computed = [text("beliefs.until", headline=line) for line in lines]
        else:
            changed = fact_words(first, one.otherwise[first]) if first else ""
            computed = [
                text("beliefs.if", facts=changed),
                *(text("beliefs.then", headline=line) for line in lines),
            ]
        said, why = text(f"beliefs.{one.key}.said"), text(f"beliefs.{one.key}.why")
        told.append(Believed(one.key, said, why, one.rule, tuple(computed)))
    return tuple(told)


def _lines(one: Belief, incident: str, facts: Mapping[str, Any], form: FormOfPlay, day: date) -> list[str]:
    """Return the rulings by which the belief would be right, in one line each; none where there are too many, or no ruling."""
    name, given, on = (
        (*one.former, FORMER_RULES) if one.former else (incident, {**facts, **one.otherwise}, day)
    )
    known = {**conditions_of(name, on, form, None), **_read(given)}
    ends = list(ends_told(book(name), known))
    lines = list(dict.fromkeys(headline(end, form) for end in ends if isinstance(end, Ruling)))
    rulings_only = all(isinstance(end, Ruling) for end in ends)
    return lines if rulings_only and len(lines) <= MOST_ENDS else []


def _read(facts: Mapping[str, Any]) -> Mapping[Any, Any]:
    """Return facts as values; local rules told as facts too."""
    return read_facts({name: to for name, to in facts.items() if fact_named(name)})
