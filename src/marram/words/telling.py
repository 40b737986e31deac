"""A situation as somebody tells it: an opening for the incident, then each fact in one sentence."""

import re
from collections.abc import Mapping
from typing import Any

from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import LOCAL_RULE_TITLES, LOCAL_RULES, FormOfPlay
from marram.rules.incidents import incident
from marram.words.english.told import told_sentences
from marram.words.english.told.openings import OPENINGS
from marram.words.language import translate
from marram.words.messages import amount_words
from marram.words.one_case import one_case
from marram.words.texts import capital, text

_PLACE = re.compile(r"\{player\}")
_FIRST_IN_TITLE = re.compile(r"^(?:The|A) player\b")
_CODES: Mapping[str, str] = {fact.name: code for code, fact in LOCAL_RULES.items()}
"""The code of each Model Local Rule by the fact that it is in force."""
_OF_TODAY = ", since 2023"
"""What ends the second meaning of a code, where it has two: the one of today."""
SIDES_OF_NONE = ("above", "below")
"""Which sentence tells a number that can be more or fewer than something else."""


def opening(name: str, player: str, instead: str | None = None) -> str:
    """Return what a person says first about an incident: its own opening, or its title with the player's name.

    Args:
        name: the incident.
        player: the name of the player.
        instead: another opening than the incident's own.
    """
    found = OPENINGS.get(name) if instead is None else instead
    if found is not None:
        return _PLACE.sub(player, translate()(found))
    title = _FIRST_IN_TITLE.sub("{player}", translate()(incident(name).title))
    title = title.replace("?", "").rstrip(".")
    return capital(_PLACE.sub(player, title)) + "."


def told(name: str, answer: Any, player: str, instead: str | None = None) -> str:
    """Return a fact with its answer as one sentence.

    Args:
        name: the fact's name.
        answer: its answer, or the answer as a token.
        player: the name of the player it happened to; said where the sentence begins with it, "the player" elsewhere.
        instead: another sentence than the answer's own.

    Raises:
        KeyError: nobody has said yet how this fact is told.
    """
    fact = fact_named(name)
    given = fact.parse(answer)
    sentences = told_sentences()
    keys = (f"{name}.{fact.token(given)}", f"{name}.{_side_of(fact, given)}", name)
    own = (sentences[key] for key in keys if key in sentences)
    spoken = translate()(next(own) if instead is None else instead)
    spoken = re.sub(r"^\{player\}", lambda _: player, spoken)
    spoken = spoken.replace("{player}", text("situations.the_player"))
    answered = _answer_words(fact, given)
    return spoken.replace("{answer}", answered).replace("{Answer}", capital(answered))


def is_told(fact: Fact[Any]) -> bool:
    """Whether every answer of a fact has a sentence."""
    sentences = told_sentences()
    if fact.name in sentences or fact.name in _CODES:
        return True
    cases = fact.tokens() if fact.answers else ("0", *SIDES_OF_NONE)
    return all(f"{fact.name}.{each}" in sentences for each in cases)


def telling(
    incident_name: str, facts: Mapping[str, Any], player: str, form: FormOfPlay | None = None
) -> tuple[str, ...]:
    """Return an incident with its facts as sentences, in the order given, what the Committee adopted last.

    Args:
        incident_name: the incident.
        facts: what is told, by fact name, answers as tokens; the form of play is no part of it.
        player: the name of the player it happened to.
        form: the form of play, of a situation made up for teaching: a fact that covers several things is then told as one of them.
    """
    cases = {} if form is None else one_case(incident_name, facts, form)
    said = [opening(incident_name, player, cases.get("opening"))]
    for name, answer in facts.items():
        if name not in _CODES and cases.get(name) != "":
            said.append(told(name, answer, player, cases.get(name)))
    adopted = [code for name, code in _CODES.items() if facts.get(name) in ("yes", True)]
    without = [code for name, code in _CODES.items() if facts.get(name) in ("no", False)]
    said += [text("situations.adopted", code=code, title=_title(code)) for code in adopted]
    if "E-1.3" in adopted and "E-1" in without:
        without.remove("E-1")  # its other form is in force
    if len(without) == 1:
        said.append(text("situations.not_adopted", codes=without[0]))
    elif without:
        said.append(text("situations.none_adopted", codes=", ".join(without)))
    return tuple(said)


def _title(code: str) -> str:
    """Return what a Local Rule does now; what its code once meant is no part of a situation of today."""
    before, _, after = translate()(LOCAL_RULE_TITLES[code]).partition("; ")
    return after.removesuffix(_OF_TODAY) if after.endswith(_OF_TODAY) else before


def _side_of(fact: Fact[Any], answer: Any) -> str:
    """Return on which side of none a number is."""
    return SIDES_OF_NONE[answer < 0] if not fact.answers and not fact.is_date else ""


def _answer_words(fact: Fact[Any], answer: Any) -> str:
    if fact.answers:
        return translate()(fact.answers[answer])
    told_by_side = f"{fact.name}.below" in told_sentences()
    return amount_words(abs(answer) if told_by_side else answer, fact.unit)
