"""A case as the address of a page holds it: nothing is kept anywhere else, so nothing is lost.

A case is one incident, or several of one story: the page is about one of them, and the others are kept
with their number before each key, as in ``1.what=…&1.cause_known=yes&number=2&what=…``.
"""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from typing import TypeVar

from marram.errors import InputError, UnknownIncident, shown
from marram.rules.engine.request import fact_named
from marram.rules.facts.several import BETWEEN as FACTS_BETWEEN
from marram.rules.facts.several import MOST_INCIDENTS
from marram.rules.former_names import fact_now, incident_now
from marram.rules.incidents import incident
from marram.rules.incidents.incident import Incident
from marram.rules.story.story import ANOTHER_PLAYER
from marram.said import joined, said
from marram.services.conditions import KEYS, Conditions
from marram.services.places import ROLES, Degrees, Places, read_places
from marram.services.rulings import Asked

INCIDENT_KEYS = frozenset({"what", "said", "condition", *ROLES})
"""Keys that belong to one incident, beside its facts."""

STROKES_BEFORE = "strokes_before"
STROKES = {f"strokes_{number}": number for number in range(1, MOST_INCIDENTS + 1)}
"""Keys for the strokes made from an incident until the next, by its number."""
BY = {f"by_{number}": number for number in range(1, MOST_INCIDENTS + 1)}
"""Keys that say whose act an incident was, by its number."""

OWN_KEYS = frozenset({"hole", "number", "ask", "q", STROKES_BEFORE, *STROKES, *BY, *INCIDENT_KEYS, *KEYS})
"""Keys of an address that are not facts."""

BETWEEN = frozenset(fact.name for fact in FACTS_BETWEEN)
"""Facts about two incidents of a story rather than about one."""

LONGEST_STROKES = 3
"""Digits of a number of strokes on a hole."""

LONGEST_NUMBER = 4
"""Digits: a longer number is none of a hole or an incident."""

LONGEST_SAID = 600
"""Letters of what was said that an address keeps."""

NUMBERED = re.compile(rf"(\d{{1,{LONGEST_NUMBER}}})\.(.*)")


@dataclass(frozen=True)
class Kept:
    """An incident of the story that the page is not about.

    Attributes:
        what: the name of the incident.
        places: the places shown on the map for it.
        facts: the answers given for it, in the order given.
        condition: the mapped condition relief is taken from, if chosen.
        said: the words it was told in; what is read in them is no fact until it is confirmed.
    """

    what: str
    places: Places = field(default_factory=Places)
    facts: dict[str, str] = field(default_factory=dict)
    condition: str | None = None
    said: str = ""


@dataclass(frozen=True)
class Address:
    """What an address says of a case.

    Attributes:
        conditions: the conditions it is ruled under.
        hole: the number of the hole, if chosen.
        places: the places shown on the map, by role.
        what: the name of the incident, if chosen.
        facts: the answers given, by fact, in the order given.
        ask: the fact to ask again, if one is to be changed.
        condition: the identifier of the mapped condition relief is taken from, if chosen.
        accuracy: how well a place is known, in metres, by role, where the phone said so.
        number: the place of this incident in the story, from 1.
        kept: the other incidents of the story, by number.
        between: what is known between incidents, by fact.
        strokes_before: strokes on the hole before the first incident, penalty strokes included, where told.
        strokes: strokes made from an incident until the next, by its number, where they were told.
        by_another: the numbers of the incidents that were another player's act.
        said: the words that this incident was told in; what is read in them is no fact until it is confirmed.
    """

    conditions: Conditions
    hole: int | None = None
    places: dict[str, Degrees] = field(default_factory=dict)
    what: str | None = None
    facts: dict[str, str] = field(default_factory=dict)
    ask: str | None = None
    condition: str | None = None
    accuracy: dict[str, float] = field(default_factory=dict)
    number: int = 1
    kept: dict[int, Kept] = field(default_factory=dict)
    between: dict[str, str] = field(default_factory=dict)
    strokes_before: int | None = None
    strokes: dict[int, int] = field(default_factory=dict)
    by_another: frozenset[int] = frozenset()
    said: str = ""

    @property
    def incident(self) -> Incident | None:
        """What happened, if chosen."""
        return incident(self.what) if self.what else None

    def pairs(self, *, without: Iterable[str] = ()) -> list[tuple[str, str]]:
        """Return the address's query as pairs, for links and hidden fields."""
        pairs: list[tuple[str, str]] = []
        if self.hole is not None:
            pairs.append(("hole", str(self.hole)))
        for number, one in sorted(self.kept.items()):
            pairs += [(f"{number}.{key}", value) for key, value in _incident_pairs(one)]
        if self.kept:
            pairs.append(("number", str(self.number)))
        pairs += _incident_pairs(self.own())
        pairs += self.between.items()
        if self.strokes_before is not None:
            pairs.append((STROKES_BEFORE, str(self.strokes_before)))
        pairs += [(f"strokes_{number}", str(made)) for number, made in sorted(self.strokes.items())]
        pairs += [(f"by_{number}", ANOTHER_PLAYER) for number in sorted(self.by_another)]
        if self.ask:
            pairs.append(("ask", self.ask))
        pairs += self.conditions.pairs()
        left_out = set(without)
        return [(key, value) for key, value in pairs if key not in left_out]

    def asked(self) -> Asked:
        """Return what the Rules are asked about the incident of this page."""
        return Asked(
            self.conditions,
            self.what,
            self.hole,
            Places(self.places, self.accuracy),
            self.facts,
            self.condition,
        )

    def own(self) -> Kept:
        """Return the incident of this page by itself."""
        return Kept(
            self.what or "", Places(self.places, self.accuracy), self.facts, self.condition, self.said
        )


def _incident_pairs(one: Kept) -> list[tuple[str, str]]:
    pairs = one.places.pairs()
    if one.what:
        pairs.append(("what", one.what))
    if one.said:
        pairs.append(("said", one.said))
    if one.condition:
        pairs.append(("condition", one.condition))
    return [*pairs, *one.facts.items()]


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
    number = _number(own, kept, faults)
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
