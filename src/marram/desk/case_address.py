"""A case as it lives in the address of a page: nothing is kept anywhere else, so nothing is lost."""

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from typing import Any
from urllib.parse import urlencode

from marram.desk.conditions import KEYS, Conditions, conditions_of
from marram.desk.event import Event
from marram.errors import BadPlace, InputError
from marram.rules.engine.request import fact_named
from marram.rules.incidents import incident
from marram.rules.incidents.incident import Incident

Degrees = tuple[float, float]
"""Latitude, longitude in degrees, as it stands in an address: ``ball=55.0012345,3.9912345``."""


PLACE_WORDS = {
    "ball": "where the ball lies",
    "entry": "where the ball last crossed the edge of the penalty area",
    "boundary": "where the ball last crossed the boundary",
    "previous": "where the previous stroke was made",
    "outside": "where the last stroke from outside a penalty area was made",
    "estimated": "where the ball would have come to rest",
    "provisional": "where the provisional ball lies",
}
"""The places an official can show on the map, by role."""

OWN_KEYS = frozenset({"hole", "what", "ask", "q", "condition", *PLACE_WORDS, *KEYS})
"""Keys of an address that are not facts."""


@dataclass(frozen=True)
class CaseAddress:
    """What an address says of a case.

    Attributes:
        conditions: the conditions it is ruled under.
        hole: the number of the hole, if chosen.
        places: the places shown on the map, by role.
        what: the name of the incident, if chosen.
        facts: the answers given, by fact, in the order given.
        ask: the fact to ask again, if one is to be changed.
        condition: the identifier of the mapped condition relief is taken from, if chosen.
    """

    conditions: Conditions
    hole: int | None = None
    places: dict[str, Degrees] = field(default_factory=dict)
    what: str | None = None
    facts: dict[str, str] = field(default_factory=dict)
    ask: str | None = None
    condition: str | None = None

    @property
    def incident(self) -> Incident | None:
        """What happened, if chosen."""
        return incident(self.what) if self.what else None

    def pairs(self, *, without: Iterable[str] = ()) -> list[tuple[str, str]]:
        """Return the address's query as pairs, for links and hidden fields."""
        pairs: list[tuple[str, str]] = []
        if self.hole is not None:
            pairs.append(("hole", str(self.hole)))
        pairs += [(role, f"{at[0]:.7f},{at[1]:.7f}") for role, at in self.places.items()]
        if self.what:
            pairs.append(("what", self.what))
        if self.condition:
            pairs.append(("condition", self.condition))
        pairs += self.facts.items()
        if self.ask:
            pairs.append(("ask", self.ask))
        pairs += self.conditions.pairs()
        left_out = set(without)
        return [(key, value) for key, value in pairs if key not in left_out]

    def url(self, path: str, **changes: Any) -> str:
        """Return the address of ``path`` for this case with ``changes`` made."""
        changed = replace(self, **changes) if changes else self
        return f"{path}?{urlencode(changed.pairs(), safe=',')}"

    def fresh(self) -> str:
        """Return the address of a new case under the same conditions."""
        return CaseAddress(self.conditions).url("/")

    def with_handed(self, side: str) -> str:
        """Return the address of this case for a player who swings ``right`` or ``left``."""
        return self.url("/case", conditions=replace(self.conditions, handed=side))

    def asking(self, fact: str) -> str:
        """Return the address that asks ``fact`` again."""
        return self.url("/case", ask=fact)

    def forgetting(self, fact: str) -> str:
        """Return the address without the answer to ``fact``."""
        rest = {name: answer for name, answer in self.facts.items() if name != fact}
        return self.url("/case", facts=rest, ask=None)

    def pick_url(self, path: str, role: str) -> str:
        """Return the address that picking a place on the map leads to; ``{at}`` stands for the place."""
        pairs = [(key, value) for key, value in self.pairs(without=(role, "ask"))]
        return f"{path}?{role}={{at}}&{urlencode(pairs, safe=',')}"


def read_address(items: Iterable[tuple[str, str]], cookie: str, event: Event) -> CaseAddress:
    """Read the query of an address.

    Raises:
        InputError: something in it cannot be used; every fault is listed.
    """
    given: dict[str, str] = {}
    faults: list[str] = []
    for key, value in items:
        if key in given and given[key] != value:
            faults.append(f"{key} is given twice, as {given[key]!r} and {value!r}; give it once.")
        given[key] = value
    facts: dict[str, str] = {}
    for key, value in given.items():
        if key in OWN_KEYS:
            continue
        try:
            fact_named(key).parse(value)
            facts[key] = value
        except InputError as error:
            faults.extend(error.faults)
    places: dict[str, Degrees] = {}
    for role in PLACE_WORDS:
        if given.get(role):
            try:
                places[role] = _degrees(role, given[role])
            except BadPlace as error:
                faults.extend(error.faults)
    hole = given.get("hole", "")
    if hole and not hole.isdecimal():
        faults.append(f"hole: {hole!r} is not the number of a hole; give for example hole=7.")
    if faults:
        raise InputError(*faults)
    what, ask = given.get("what") or None, given.get("ask") or None
    if what:
        incident(what)
    if ask:
        fact_named(ask)
    return CaseAddress(
        conditions_of(given, cookie, event),
        int(hole) if hole else None,
        places,
        what,
        facts,
        ask,
        given.get("condition") or None,
    )


def _degrees(role: str, text: str) -> Degrees:
    parts = text.split(",")
    try:
        latitude, longitude = (float(part) for part in parts)
    except ValueError:
        latitude = longitude = float("nan")
    if not (-90 <= latitude <= 90 and -180 <= longitude <= 180):
        raise BadPlace(
            f"{role}: {text!r} is not a place. Write latitude,longitude in degrees, e.g. 55.0012345,3.9912345."
        )
    return latitude, longitude
