"""A case as the address of a page holds it: nothing is kept anywhere else, so nothing is lost.

A case is one incident, or several of one story: the page is about one of them, and the others are kept
with their number before each key, as in ``1.what=…&1.cause_known=yes&number=2&what=…``.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field

from marram.rules.facts.several import BETWEEN as FACTS_BETWEEN
from marram.rules.facts.several import MOST_INCIDENTS
from marram.rules.incidents import incident
from marram.rules.incidents.incident import Incident
from marram.rules.story.story import ANOTHER_PLAYER
from marram.services.cases.conditions import KEYS, Conditions
from marram.services.cases.places import FLAG, ROLES, Degrees, Places, written
from marram.services.cases.rulings import Asked

INCIDENT_KEYS = frozenset({"what", "said", "condition", *ROLES})
"""Keys that belong to one incident, beside its facts."""

STROKES_BEFORE = "strokes_before"
STROKES = {f"strokes_{number}": number for number in range(1, MOST_INCIDENTS + 1)}
"""Keys for the strokes made from an incident until the next, by its number."""
BY = {f"by_{number}": number for number in range(1, MOST_INCIDENTS + 1)}
"""Keys that say whose act an incident was, by its number."""

BEGUN = "begun"
"""The key of the identifier of a case that was begun for somebody, so that it is found again."""

OWN_KEYS = frozenset(
    {BEGUN, FLAG, "hole", "number", "ask", "q", STROKES_BEFORE, *STROKES, *BY, *INCIDENT_KEYS, *KEYS}
)
"""Keys of an address that are not facts."""

BETWEEN = frozenset(fact.name for fact in FACTS_BETWEEN)
"""Facts about two incidents of a story rather than about one."""

LONGEST_SAID = 600
"""Letters of what was said that an address keeps."""


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
        begun: the identifier of the case, where it was begun for somebody; empty where it was not.
        flag: where the hole is cut, as the official showed it for a hole that the map has no line of play for.
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
    begun: str = ""
    flag: Degrees | None = None

    @property
    def incident(self) -> Incident | None:
        """What happened, if chosen."""
        return incident(self.what) if self.what else None

    def pairs(self, *, without: Iterable[str] = ()) -> list[tuple[str, str]]:
        """Return the address's query as pairs, for links and hidden fields."""
        pairs: list[tuple[str, str]] = []
        if self.hole is not None:
            pairs.append(("hole", str(self.hole)))
        if self.flag is not None:
            pairs.append((FLAG, written(self.flag)))
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
        if self.begun:
            pairs.append((BEGUN, self.begun))
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
            flag=self.flag,
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
