"""The query of a page's address, read into the case that it holds: every fault of it at once."""

import re
from collections.abc import Callable, Iterable, Mapping
from typing import TypeVar

from marram.errors import InputError, UnknownIncident, shown
from marram.rules.engine.request import fact_named
from marram.rules.facts.several import MOST_INCIDENTS
from marram.rules.former_names import fact_now, incident_now
from marram.rules.incidents import incident
from marram.rules.story.story import ANOTHER_PLAYER
from marram.said import joined, said
from marram.services.cases.address import (
    BEGUN,
    BETWEEN,
    BY,
    INCIDENT_KEYS,
    LONGEST_SAID,
    OWN_KEYS,
    STROKES,
    STROKES_BEFORE,
    Address,
    Kept,
)
from marram.services.cases.conditions import Conditions
from marram.services.cases.places import FLAG, read_flag, read_places

LONGEST_STROKES = 3
"""Digits of a number of strokes on a hole."""

LONGEST_NUMBER = 4
"""Digits: a longer number is none of a hole or an incident."""

IDENT = re.compile(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")
"""A UUID in its written form."""

NUMBERED = re.compile(rf"(\d{{1,{LONGEST_NUMBER}}})\.(.*)")

A = TypeVar("A", bound=Address)


def read_address(
    kind: type[A], items: Iterable[tuple[str, str]], conditions: Callable[[Mapping[str, str]], Conditions]
) -> A:
    """Read the query of an address; facts and incidents named as before get their present names.

    Args:
        kind: the kind of address to return.
        items: the pairs of the query.
        conditions: makes the conditions of the pairs that are about no other incident.

    Raises:
        InputError: something in it cannot be used; every fault is listed.
    """
    given: dict[str, str] = {}
    faults: list[str] = []
    for written, value in items:
        key = _present(written)
        if key in given and given[key] != value:
            faults.append(
                said(
                    "{key} is given twice, as {one} and {other}; give it once.",
                    key=key[:60],
                    one=shown(given[key]),
                    other=shown(value),
                )
            )
        given[key] = value
    own, others = _by_number(given)
    kept = {number: _read_kept(number, pairs, faults) for number, pairs in sorted(others.items())}
    facts = _read_facts({key: value for key, value in own.items() if key not in OWN_KEYS}, faults)
    places = read_places(own, faults)
    hole = own.get("hole", "")
    if hole and not (hole.isdecimal() and len(hole) <= LONGEST_NUMBER):
        faults.append(
            said("hole: {hole} is not the number of a hole; give for example hole=7.", hole=shown(hole))
        )
    flag = read_flag(own, faults)
    if own.get(FLAG) and not hole:
        faults.append(said("flag: say of which hole the flagstick is; give for example hole=7."))
    number = _number(own, kept, faults)
    begun = own.get(BEGUN, "")
    if begun and not IDENT.fullmatch(begun):
        faults.append(
            said(
                "begun: {given} is no identifier of a case; leave it out, or begin one at /begin.",
                given=shown(begun),
            )
        )
    strokes = _strokes(own, faults)
    by_another = _by_another(own, faults)
    what, ask = incident_now(own.get("what", "")) or None, own.get("ask") or None
    unknown = _unknown_incidents([what, *(one.what for one in kept.values())])
    if len(unknown) == 1 and not faults:
        raise unknown[0]
    if unknown or faults:
        raise InputError(*(fault for error in unknown for fault in error.faults), *faults)
    if ask:
        ask = fact_named(fact_now(ask)).name
    return kind(
        conditions(own),
        int(hole) if hole else None,
        places.at,
        what,
        {name: answer for name, answer in facts.items() if name not in BETWEEN},
        ask,
        own.get("condition") or None,
        places.accuracy,
        number,
        kept,
        {name: answer for name, answer in facts.items() if name in BETWEEN},
        strokes.pop(0, None),
        strokes,
        by_another,
        own.get("said", "")[:LONGEST_SAID],
        own.get(BEGUN, ""),
        flag,
    )


def _unknown_incidents(names: Iterable[str | None]) -> list[UnknownIncident]:
    """Return the errors of the names that are no incident's."""
    found: list[UnknownIncident] = []
    for name in names:
        try:
            if name:
                incident(name)
        except UnknownIncident as error:
            found.append(error)
    return found


def _by_another(own: Mapping[str, str], faults: list[str]) -> frozenset[int]:
    """Return the numbers of the incidents that were another player's act."""
    told = {number: own[key] for key, number in BY.items() if own.get(key)}
    faults += [
        said(
            "by_{number}: {who} is nobody; give by_{number}={other} or leave it out.",
            number=number,
            who=shown(who),
            other=ANOTHER_PLAYER,
        )
        for number, who in told.items()
        if who != ANOTHER_PLAYER
    ]
    return frozenset(told)


def _strokes(own: Mapping[str, str], faults: list[str]) -> dict[int, int]:
    """Return the strokes told, by the number of their incident; 0: before the first."""
    read: dict[int, int] = {}
    for key, number in {STROKES_BEFORE: 0, **STROKES}.items():
        told = own.get(key, "")
        if told.isdecimal() and len(told) <= LONGEST_STROKES:
            read[number] = int(told)
        elif told:
            faults.append(
                said(
                    "{key}: {told} is no number of strokes; give for example {key}=2.",
                    key=key,
                    told=shown(told),
                )
            )
    return read


def _present(key: str) -> str:
    """Return a key of an address with the present name of its fact."""
    found = NUMBERED.fullmatch(key)
    return f"{found[1]}.{fact_now(found[2])}" if found else fact_now(key)


def _by_number(given: Mapping[str, str]) -> tuple[dict[str, str], dict[int, dict[str, str]]]:
    """Return the pairs of the page's own incident, and those of the others by number."""
    own: dict[str, str] = {}
    others: dict[int, dict[str, str]] = {}
    for key, value in given.items():
        if found := NUMBERED.fullmatch(key):
            others.setdefault(int(found[1]), {})[found[2]] = value
        else:
            own[key] = value
    return own, others


def _read_kept(number: int, pairs: Mapping[str, str], faults: list[str]) -> Kept:
    found: list[str] = []
    if not pairs.get("what"):
        found.append(said("it is not said what happened; give {number}.what=….", number=number))
    found += [
        said("{key} is not said of one incident; give it without a number.", key=key)
        for key in pairs
        if key in BETWEEN | OWN_KEYS - INCIDENT_KEYS
    ]
    facts = {key: value for key, value in pairs.items() if key not in OWN_KEYS | BETWEEN}
    kept = Kept(
        incident_now(pairs.get("what", "")),
        read_places(pairs, found),
        _read_facts(facts, found),
        pairs.get("condition"),
        pairs.get("said", "")[:LONGEST_SAID],
    )
    faults += [joined(": ", said("Incident {number}", number=number), fault) for fault in found]
    return kept


def _read_facts(pairs: Mapping[str, str], faults: list[str]) -> dict[str, str]:
    facts: dict[str, str] = {}
    for key, value in pairs.items():
        try:
            fact_named(key).parse(value)
            facts[key] = value
        except InputError as error:
            faults.extend(error.faults)
    return facts


def _number(own: Mapping[str, str], kept: Mapping[int, Kept], faults: list[str]) -> int:
    """Return the number of the page's own incident: the one given, else the first that is free."""
    text = own.get("number", "")
    free = [number for number in range(1, len(kept) + 2) if number not in kept]
    if max(len(kept) + bool(own.get("what")), *kept, 0) > MOST_INCIDENTS:
        faults.append(
            said(
                "A situation holds one to {most_incidents} incidents, numbered from 1; here are more.",
                most_incidents=MOST_INCIDENTS,
            )
        )
    elif len(free) > 1 or (text and text != str(free[0])):
        missing = ", ".join(str(number) for number in free)
        faults.append(
            said(
                "The incidents are not numbered one after the other: {missing} is free, and this page is about "
                "{number}. Give number={free}, and no gap in the others.",
                missing=missing,
                number=text or said("no number"),
                free=free[0],
            )
        )
    return free[0]
