"""Reading a case from JSON: a file, or what a program sends. Older names and shapes are read, all faults at once.

Read are a case, any document of marram that holds one under ``case``, and the files of ``marram situation``, which
may name an ``edition`` instead of a day and leave out both.
"""

from collections.abc import Iterator, Mapping
from datetime import date
from pathlib import Path
from typing import Any, TypeVar

from marram.errors import InputError, shown
from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named
from marram.rules.facts.several import BETWEEN, MOST_INCIDENTS, about_ball, option_taken
from marram.rules.former_names import fact_now, incident_now
from marram.rules.incidents import incident
from marram.said import joined, said
from marram.schema import read_into, read_json
from marram.services.cases.case import Act, Case
from marram.services.cases.given import day_of_play, form_given, local_rules_in_force, sides_given
from marram.services.cases.places import ROLES, WORST_ACCURACY

THE_CASE = said("the case")

VERSION = 1
"""The version of the document."""

_BETWEEN = frozenset(one.name for one in BETWEEN)
_KEYS: tuple[tuple[str, tuple[Fact[Any], ...]], ...] = (("option", option_taken), ("ball", about_ball))
_OF_ONE_ACT = {fact.name: (key, number) for key, facts in _KEYS for number, fact in enumerate(facts, start=1)}
"""Facts that a case holds with the incident they are about: under which key, and of which incident."""
T = TypeVar("T")


def read_case_file(path: Path) -> Case:
    """Return the case that a JSON file holds.

    Raises:
        InputError: it cannot be used; every fault is listed, with its place and what to give.
    """
    return read_case(read_json(path, str(path)), str(path))


def read_case(document: Mapping[str, Any], where: str = THE_CASE) -> Case:
    """Return the case that a JSON document holds.

    Args:
        document: the object.
        where: what it is called, at the start of each fault.

    Raises:
        InputError: it cannot be used; every fault is listed, with its place and what to give.
    """
    inner = document.get("case")
    plain = dict(inner if isinstance(inner, Mapping) else document)
    faults: list[str] = []
    version = plain.pop("marram", VERSION)
    if version != VERSION or isinstance(version, bool):
        faults.append(
            said(
                "{where}: version {version} of the document is not known; this is version {known}.",
                where=where,
                version=shown(version),
                known=VERSION,
            )
        )
    if plain.get("kind") == "case":
        del plain["kind"]
    _conditions(plain, where, faults)
    _incidents(plain, where, faults)
    if isinstance(plain.get("between"), Mapping):
        _between(plain, where, faults)
    found = read_into(Case, plain, where, faults)
    if found is not None:
        faults += [joined(": ", where, fault) for fault in _faults(found)]
    if found is None or faults:
        raise InputError(*faults)
    return found


def _conditions(plain: dict[str, Any], where: str, faults: list[str]) -> None:
    """Read the conditions as generously as options are read; what cannot be read is told and taken out."""

    def told(key: str) -> str:
        return joined(": ", where, key)

    day = None
    try:
        day = day_of_play(plain.get("played_on"), plain.pop("edition", None), told)
    except InputError as error:
        faults += error.faults
    plain["played_on"] = (day or date.today()).isoformat()  # noqa: DTZ011 - the official's own calendar day
    for key, read in (("form_of_play", form_given), ("sides", sides_given)):
        try:
            answer = read(plain.get(key), told(key))
        except InputError as error:
            faults += error.faults
            answer = None
        plain[key] = answer.value if answer else None
    codes = plain.get("local_rules")
    if isinstance(codes, list | tuple) and all(isinstance(code, str) for code in codes) and day:
        try:
            adopted = local_rules_in_force(codes, day, told("local_rules"))
            plain["local_rules"] = list(adopted.codes) if adopted else None
        except InputError as error:
            faults += error.faults


def _incidents(plain: dict[str, Any], where: str, faults: list[str]) -> None:
    """Give incidents and facts their present names, and answers the form they are written in."""
    acts = plain.get("incidents")
    if not isinstance(acts, list | tuple):
        return
    if not 1 <= len(acts) <= MOST_INCIDENTS:
        faults.append(
            said(
                '{where}: "incidents" must be a list of at least one incident, one to {most_incidents}; '
                "{count} are given.",
                where=where,
                most_incidents=MOST_INCIDENTS,
                count=len(acts),
            )
        )
    read = []
    for number, act in enumerate(acts[:MOST_INCIDENTS], start=1):
        if not isinstance(act, Mapping):
            read.append(act)
            continue
        one = dict(act)
        if isinstance(one.get("incident"), str):
            one["incident"] = incident_now(one["incident"])
        name = one.get("incident")
        told = joined(
            ": ",
            where,
            said("Incident {number} ({name})", number=number, name=name)
            if isinstance(name, str)
            else said("Incident {number}", number=number),
        )
        try:
            if isinstance(name, str):
                incident(name)
        except InputError as error:
            faults += [joined(": ", told, fault) for fault in error.faults]
        if isinstance(one.get("facts"), Mapping):
            one["facts"] = _answers(one["facts"], told, faults)
        for key, facts in _KEYS:
            if isinstance(one.get(key), str):
                one[key] = _word(facts[number - 1], key, one[key], told, faults)
        read.append(one)
    plain["incidents"] = read


def _between(plain: dict[str, Any], where: str, faults: list[str]) -> None:
    """Read what is known between incidents; an option taken, and the ball it was about, go to their incident."""
    answers = _answers(plain["between"], where, faults)
    unknown = [name for name in answers if name not in _BETWEEN]
    faults += [
        said(
            "{where}: {name} says nothing between two incidents; give it with the facts of one.",
            where=where,
            name=name,
        )
        for name in unknown
    ]
    acts = plain.get("incidents")
    for name, (key, number) in _OF_ONE_ACT.items():
        if name not in answers or not isinstance(acts, list) or number > len(acts):
            continue
        act = acts[number - 1]
        if not isinstance(act, dict):
            continue
        given, told = act.get(key), answers.pop(name)
        if given is None:
            act[key] = told
        elif given != told:
            faults.append(
                said(
                    "{told}: {fact} is given twice, as {one} and {other}; leave one out.",
                    told=where,
                    fact=name,
                    one=given,
                    other=told,
                )
            )
    plain["between"] = answers


def _answers(given: Mapping[Any, Any], told: str, faults: list[str]) -> dict[str, str]:
    """Return answers as they are written, by the present name of their fact."""
    answers: dict[str, str] = {}
    for name, value in given.items():
        try:
            fact = fact_named(fact_now(name) if isinstance(name, str) else name)
            token = fact.token(fact.parse(value))
        except InputError as error:
            faults += [joined(": ", told, fault) for fault in error.faults]
            continue
        if answers.setdefault(fact.name, token) != token:
            faults.append(
                said(
                    "{told}: {fact} is given twice, as {one} and {other}; leave one out.",
                    told=told,
                    fact=fact.name,
                    one=answers[fact.name],
                    other=token,
                )
            )
    return answers


def _word(fact: Fact[Any], key: str, given: str, told: str, faults: list[str]) -> str | None:
    """Return the answer to a fact of one incident as it is written; it is called by its key there."""
    try:
        return fact.token(fact.parse(given, key))
    except InputError as error:
        faults += [joined(": ", told, fault) for fault in error.faults]
        return None


def _faults(case: Case) -> Iterator[str]:
    """Yield what no case can hold although its shape is right."""
    length = case.player.club_length
    if length is not None and not 0.4572 <= length <= 1.2292:
        yield said(
            "player, club_length is {length:g} m; clubs other than putters measure 0.46 m to 1.22 m.",
            length=length,
        )
    for number, act in enumerate(case.incidents, start=1):
        yield from _faults_of_places(number, act)


def _faults_of_places(number: int, act: Act) -> Iterator[str]:
    for role, spot in act.places.items():
        told = f"incidents {number}, places, {role}"
        if role not in ROLES:
            yield said("{told}: there is no such place. Known: {roles}.", told=told, roles=", ".join(ROLES))
        if not (-90 <= spot.latitude <= 90 and -180 <= spot.longitude <= 180):
            yield said(
                "{told} is not on the globe; give degrees, latitude from -90 to 90, longitude from -180 to 180.",
                told=told,
            )
        if spot.accuracy is not None and not 0 <= spot.accuracy <= WORST_ACCURACY:
            yield said(
                "{told}: an accuracy of {accuracy:g} m says nothing; give 0 to {worst_accuracy:g}.",
                told=told,
                accuracy=spot.accuracy,
                worst_accuracy=WORST_ACCURACY,
            )
