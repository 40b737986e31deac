"""An act a player may ask about beforehand: an incident with the facts of its being done."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from marram.rules.facts.ball import Area

EVERYWHERE = frozenset(Area)
BUNKER, WATER, GREEN, TEE, GENERAL = (
    frozenset({one})
    for one in (Area.BUNKER, Area.PENALTY_AREA, Area.PUTTING_GREEN, Area.TEEING_AREA, Area.GENERAL_AREA)
)
OFF_TEE = EVERYWHERE - TEE
OFF_GREEN = OFF_TEE - GREEN
OFF_BUNKER = EVERYWHERE - BUNKER - WATER


@dataclass(frozen=True, slots=True)
class AskedAct:
    """One way in which an act is done.

    Attributes:
        name: the act; several entries have one name where the Rules look at it differently by area.
        incident: the incident that the act done is.
        facts: what is known of it then, beside the area of the course.
        areas: the areas of the course it is asked about in this way.
        ways: facts whose other answers are other ways of doing it, among which the nearest that is allowed is sought.
        named: facts that its name says; the others are what it takes for granted, and told.
        relief: the families of relief that the question is about, where the act is relief taken.
        rather: acts that an official would point to instead, where this one is not allowed; the first that is, is told.
    """

    name: str
    incident: str
    facts: Mapping[str, str] = field(default_factory=dict)
    areas: frozenset[Area] = EVERYWHERE
    ways: tuple[str, ...] = ()
    named: tuple[str, ...] = ()
    relief: tuple[str, ...] = ()
    rather: tuple[str, ...] = ()
