"""Facts read in a sentence, as proposals: each with the words it rests on, to be confirmed before it counts."""

import re
from collections.abc import Collection
from dataclasses import dataclass
from typing import Any

from marram.rules.engine.export import facts_of
from marram.rules.engine.fact import Fact
from marram.rules.finding.cues import AMOUNTS, CUES, NUMBERS
from marram.rules.finding.sentence import plain

DENIED = re.compile(r"\b(?:(?:not|never|no|without|nor|neither)(?: \w+){0,2}|whether(?: \w+)*)\s*$")
"""What turns the words after it into their contrary, or into a question; such words answer nothing unless a cue says so itself."""


@dataclass(frozen=True, slots=True)
class FactTold:
    """An answer that a sentence seems to give.

    Attributes:
        fact: the name of the fact.
        answer: the answer as it is written on the command line.
        words: the words it rests on.
    """

    fact: str
    answer: str
    words: str


def told_facts(incident: str, sentence: str, known: Collection[str] = ()) -> tuple[FactTold, ...]:
    """Return the answers a sentence seems to give to the questions of an incident, in the order they are asked.

    Args:
        incident: the name of the incident.
        sentence: what was told.
        known: names of facts that are known already; they are not read.

    Raises:
        UnknownIncident: there is no such incident.
    """
    text = re.sub(r"\s+", " ", plain(sentence))
    found = (_read(fact, text) for fact in facts_of(incident) if fact.name not in known)
    return tuple(one for one in found if one is not None)


def _read(fact: Fact[Any], text: str) -> FactTold | None:
    if fact.unit in AMOUNTS:
        return _amount(fact, text)
    told = [
        FactTold(fact.name, answer, words)
        for answer, pattern in CUES.get(fact.name, {}).items()
        if answer in fact.tokens() and (words := _affirmed(pattern, text))
    ]
    told = [one for one in told if not any(_inside(one.words, other.words) for other in told)]
    return told[0] if len(told) == 1 else None


def _affirmed(pattern: re.Pattern[str], text: str) -> str:
    """Return the first words that a pattern meets and that are not denied; empty for none."""
    for match in pattern.finditer(text):
        if not DENIED.search(text[: match.start()]):
            return match[0].strip()
    return ""


def _inside(words: str, others: str) -> bool:
    """Tell whether words are only a part of longer ones: "on purpose" says nothing beside "not on purpose"."""
    return words != others and words in others


def _amount(fact: Fact[Any], text: str) -> FactTold | None:
    """Return the one number that stands before a unit; where there are several, none is taken."""
    numbers = rf"[0-9]+(?:\.[0-9]+)?|{'|'.join(NUMBERS)}"
    found = list(
        re.finditer(rf"\b({numbers})(?: (?:and a half|full|whole))?[ -]{AMOUNTS[fact.unit]}\b", text)
    )
    if len(found) != 1 or "half" in found[0][0]:
        return None
    number = NUMBERS.get(found[0][1], found[0][1])
    if fact.whole and "." in str(number):
        return None
    return FactTold(fact.name, str(number), found[0][0])
