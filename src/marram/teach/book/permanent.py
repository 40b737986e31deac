"""A situation as an address and back: what happened, what is known, the form of play; the same for ever."""

from collections.abc import Iterable, Mapping
from random import Random
from typing import Any
from urllib.parse import urlencode

from marram.errors import InputError
from marram.rules.engine.request import fact_named, rule
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.conditions import form_of_play as the_form
from marram.rules.former_names import incident_now
from marram.rules.incidents import incident
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.said import said
from marram.teach.situations.reaching import TODAY
from marram.teach.situations.sampling import NAMES, hole_of
from marram.teach.situations.situation import Situation, deciding
from marram.words.telling import is_told

BOOK = "/book"


def address_of(one: Situation) -> str:
    """Return the address of a situation: the name of the incident, then the facts as they are asked."""
    pairs = [("form", one.form.value), *((name, str(answer)) for name, answer in one.facts.items())]
    return f"{BOOK}/situation/{one.incident}?{urlencode(pairs)}"


def situation_at(name: str, pairs: Iterable[tuple[str, str]]) -> Situation:
    """Return the situation that an address holds, ruled by the newest edition.

    Args:
        name: the incident, by its name of today or a former one.
        pairs: the facts, and ``form`` for the form of play; what is unknown is not written.

    Raises:
        UnknownIncident: there is no such incident.
        InputError: a fact or an answer does not exist, or the facts end in no ruling; every fault is listed.
    """
    known = incident(incident_now(name)).name
    given, faults = dict(pairs), list[str]()
    form = FormOfPlay.STROKE_PLAY
    if "form" in given:
        form = the_form.parse(given.pop("form"))
    facts: dict[str, Any] = {}
    for key, answer in given.items():
        if key not in vocabulary():
            faults.append(said("{key}: there is no such fact; leave it out.", key=key))
            continue
        fact = fact_named(key)
        if not is_told(fact):
            faults.append(said("{key}: this is no part of a situation; leave it out.", key=key))
            continue
        try:
            value = fact.parse(answer)
        except InputError as error:
            faults.extend(error.faults)
            continue
        facts[key] = value
    if faults:
        raise InputError(*faults)
    return _ruled(known, facts, form)


def _ruled(name: str, facts: Mapping[str, Any], form: FormOfPlay) -> Situation:
    found = rule(name, facts, played_on=TODAY, form_of_play=form)
    if isinstance(found, NeedFacts):
        raise InputError(
            said("{fact} is not answered, and the ruling needs it: add it to the address.", fact=found.fact)
        )
    if not isinstance(found, Ruling):
        raise InputError(
            said("The Rules leave this to judgement or to somebody else: it is no situation with a ruling.")
        )
    told = deciding(found, facts)
    lot = Random(f"{name} {sorted(map(str, told.items()))}")  # noqa: S311 - the same player for the same situation
    hole = hole_of(name, told, lot)
    return Situation(name, told, form, TODAY, lot.choice(NAMES), hole, found)
