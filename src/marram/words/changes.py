"""Differences between two outcomes in words, fit for a briefing."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from marram.rules.engine.changes import Change
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.ruling import Outcome, Ruling
from marram.words.language import translate
from marram.words.messages import amount_words, say
from marram.words.provisions import Cited, cited
from marram.words.sheet import Sheet, sheet


@dataclass(frozen=True, slots=True)
class ChangeWords:
    """One change: under which facts, what the ruling was and is, and what exactly differs."""

    incident: str
    provision: Cited
    facts: tuple[str, ...]
    before: str
    after: str
    differences: tuple[str, ...]


def change_words(change: Change, form: FormOfPlay | None = None) -> ChangeWords:
    """Return a change in words; the provision named is the one the later outcome rests on.

    Args:
        change: the change.
        form: how general penalties are resolved, where the facts of the change do not say the form of play.
    """
    form = dict(change.facts).get(form_of_play.name, form)
    old, new = sheet(change.before, form_of_play=form), sheet(change.after, form_of_play=form)
    return ChangeWords(
        change.incident,
        cited(_deciding(change.after) or _deciding(change.before)),
        tuple(fact_words(name, answer) for name, answer in change.facts),
        old.headline,
        new.headline,
        tuple(differences(old, new)),
    )


def _deciding(outcome: Outcome) -> str:
    if isinstance(outcome, Ruling):
        return outcome.citations[0] if outcome.citations else ""
    return outcome.citation


def fact_words(name: str, answer: Any) -> str:
    """Return a fact as question and answer.

    Args:
        name: the fact's name.
        answer: its answer, or the answer as a token.
    """
    fact = fact_named(name)
    if not fact.answers:
        return f"{translate()(fact.question)} {amount_words(answer, fact.unit)}"
    return f"{translate()(fact.question)} {translate()(fact.answers[fact.parse(answer)])}"


def differences(old: Sheet, new: Sheet) -> Iterator[str]:
    """Yield what stands only in the earlier sheet, and what only in the later."""
    for part in ("penalties", "steps", "options", "if_wrong", "cautions", "criteria"):
        before = [_line(one) for one in getattr(old, part)]
        after = [_line(one) for one in getattr(new, part)]
        yield from (say("TERMS", "change.before").format(what=one) for one in before if one not in after)
        yield from (say("TERMS", "change.after").format(what=one) for one in after if one not in before)


def _line(thing: object) -> str:
    if isinstance(thing, str):
        return thing
    parts = [getattr(thing, name) for name in ("title", "cost", "size", "reference")]
    return ", ".join([*(part for part in parts if part), *getattr(thing, "limits", ())])
