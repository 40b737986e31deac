"""What there is to teach about a ruling: the way to it as a picture, the principle behind it, what players believe."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.teach.beliefs.telling import Believed, believed_of
from marram.teach.explaining import Decided, explain
from marram.teach.pathway import path_svg
from marram.teach.principles import principles_of


@dataclass(frozen=True, slots=True)
class Lesson:
    """What there is to teach about a ruling.

    Attributes:
        headline: the ruling in one line.
        decided: the facts that decided, with where other answers would have led.
        path: the way there as a picture: for a phone, and for a wide screen; empty where nothing was asked.
        principles: the principles behind it, in our own words.
        believed: what players commonly believe of it and why it is wrong.
    """

    headline: str
    decided: tuple[Decided, ...]
    path: tuple[str, ...]
    principles: tuple[str, ...]
    believed: tuple[Believed, ...]


def lesson(
    incident: str,
    facts: Mapping[str, Any],
    *,
    played_on: date,
    form_of_play: FormOfPlay | None = None,
    local_rules: Iterable[str] | None = None,
    sides: Sides | None = None,
) -> Lesson:
    """Return what there is to teach about a ruling; what is believed only where the form of play is known.

    Args:
        incident: the name of the incident.
        facts: what is known, by fact name; all that the ruling needs.
        played_on: the day of the round.
        form_of_play: the form of play, if known.
        local_rules: the Local Rules in force, if known.
        sides: who plays together, if known.

    Raises:
        InputError: a fact is still open, or what :func:`marram.rule` refuses.
    """
    why = explain(
        incident,
        facts,
        played_on=played_on,
        form_of_play=form_of_play,
        local_rules=local_rules,
        sides=sides,
    )
    decided = tuple(one for one in why.decided if one.matters)
    return Lesson(
        why.headline,
        decided,
        (path_svg(why, prefix="way"), path_svg(why, wide=True, prefix="wide-way")) if decided else (),
        principles_of(why.citations),
        believed_of(incident, _tokens(facts), why.headline, form=form_of_play, played_on=played_on)
        if form_of_play
        else (),
    )


def _tokens(facts: Mapping[str, Any]) -> dict[str, str]:
    return {name: (fact := fact_named(name)).token(fact.parse(answer)) for name, answer in facts.items()}
