"""Marked on the map, but of use only under a Local Rule: what the conditions leave without effect is said, not passed over.

A dropping zone may be used only where a Local Rule provides it (Committee Procedures, 8E-1; Rule 2.4 and Committee
Procedures, 8E-8 to 8E-10, for no play zones). The codes are those of the register (``rules/local_rules/register``).
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

from marram.course.fault import Fault, FaultList, Where
from marram.course.model import Course, Feature, Kind
from marram.relief.place.dropping_zones import zones_serving
from marram.rules.engine.request import rule
from marram.rules.facts.local_relief import dropping_zone_provided
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Ruling
from marram.said import one_of, said
from marram.services.cases.rulings import Ruled
from marram.services.ground.lies import to_plane
from marram.words.ground import ground_words
from marram.words.spoken import spoken
from marram.words.texts import text

PROVIDED_BY: dict[Kind, tuple[str, ...]] = {
    Kind.DROPPING_ZONE: ("E-1", "E-1.3"),
    Kind.NO_PLAY_ZONE: ("E-8", "E-9", "E-10"),
}
"""Any one of these Local Rules gives a marking its meaning."""


@dataclass(frozen=True, slots=True)
class WithoutLocalRule:
    """Markings of a kind that need a Local Rule.

    Attributes:
        kind: what is marked.
        features: where.
        codes: the Local Rules of which one is needed.
        known: whether the Local Rules in force are known, and none of these is among them.
    """

    kind: Kind
    features: tuple[Feature, ...]
    codes: tuple[str, ...]
    known: bool

    @property
    def codes_words(self) -> str:
        """The codes, in words."""
        return spoken(one_of(self.codes))

    @property
    def words(self) -> str:
        """What the map has and the Local Rules do not, as a sentence."""
        names = ", ".join(one.name or ground_words(self.kind) for one in self.features)
        key = f"marked.{self.kind.value}" if self.known else "marked.unknown"
        return text(key, names=names, codes=self.codes_words)

    @property
    def here_words(self) -> str:
        """What a ruling leaves out for it, as a sentence."""
        names = ", ".join(one.name or ground_words(self.kind) for one in self.features)
        return text("marked.here", names=names, codes=self.codes_words)


def without_local_rule(
    course: Course, codes: Collection[str] | None, also: Collection[str] = ()
) -> tuple[WithoutLocalRule, ...]:
    """Return the markings of a map that need a Local Rule which is not known to be in force.

    Args:
        course: the map.
        codes: the Local Rules in force; ``None``: not known.
        also: codes that the event adopts beside them, such as those that only define an area.
    """
    in_force = {*(codes or ()), *also}
    return tuple(
        WithoutLocalRule(kind, marked, needed, codes is not None)
        for kind, needed in PROVIDED_BY.items()
        if (marked := tuple(course.of(kind))) and not in_force.intersection(needed)
    )


def marking_faults(course: Course, found: Sequence[WithoutLocalRule]) -> list[Fault]:
    """Return these markings as what a check of the map finds, each with its place."""
    faults = FaultList(course.plane)
    for one in found:
        for feature in one.features:
            what = said(
                "{name} is marked, and rests on Local Rule {codes}",
                name=feature.name or feature.kind.value.replace("_", " "),
                codes=one_of(one.codes),
            )
            where: Where = {"feature": feature.ident, "at": feature.geometry}
            if len(feature.holes) == 1:
                where["hole"] = feature.holes[0]
            if one.known:
                remedy = said("Not in force: adopt it, or take the marking away.")
                faults.warn("needs_local_rule", what, remedy, **where)
            else:
                remedy = said("See that it is in force when the course is played.")
                faults.note("needs_local_rule", what, remedy, **where)
    return faults.found


def zones_not_offered(course: Course, ruled: Ruled) -> WithoutLocalRule | None:
    """Return the dropping zones that this ruling would offer, were their Local Rule in force; ``None`` where there are none.

    The book is asked again with the Local Rule, so that only what would truly be offered is told.
    """
    codes, ball = ruled.asked.conditions.local, ruled.asked.places.at.get("ball")
    needed = PROVIDED_BY[Kind.DROPPING_ZONE]
    if codes is None or ball is None or ruled.lie.hole is None or ruled.asked.what is None:
        return None
    if not isinstance(ruled.result, Ruling) or set(codes).intersection(needed):
        return None
    if ruled.known.get(dropping_zone_provided.name) not in ("yes", True):
        return None
    conditions = replace(ruled.asked.conditions, local=(*codes, needed[0]))
    then = rule(ruled.asked.what, ruled.known, **conditions.request())
    if not isinstance(then, Ruling) or all(one.kind is not ReliefKind.DROPPING_ZONE for one in then.relief):
        return None
    zones = zones_serving(course, ruled.lie.hole.number, to_plane(course, ball))
    return WithoutLocalRule(Kind.DROPPING_ZONE, zones, needed, known=True) if zones else None


__all__ = [
    "PROVIDED_BY",
    "WithoutLocalRule",
    "marking_faults",
    "without_local_rule",
    "zones_not_offered",
]
