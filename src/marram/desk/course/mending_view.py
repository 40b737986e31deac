"""What is shown of a map that is mended: faults as places to visit, proposals with before and after, the ground."""

from collections import defaultdict
from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace
from typing import Any

from marram.course.fault import Fault, Severity
from marram.course.mending.draft import Draft
from marram.course.mending.proposal import Choice, Proposal
from marram.course.mending.setting import plain
from marram.course.model import Kind
from marram.course.reading.geojson_geometry import Unreadable, geometry_of
from marram.course.reading.shapes import hole_numbers
from marram.course.scheme import Role, meaning
from marram.course.versions.map_edits import Feature, by_ident
from marram.desk.shell.map_drawing import DRAWN
from marram.words.spoken import spoken

MANY = 6
"""Of more choices than this one is taken from a list (own choice)."""

NAMES: dict[Kind | Role, str] = {Role.HOLE: "line_of_play", Role.COURSE: "outline"}
"""What is no area of the course, as the map on the screen calls it."""


@dataclass(frozen=True, slots=True)
class Place:
    """One fault as it is listed.

    Attributes:
        number: its number on the page and on the map.
        fault: the fault.
        proposal: how it can be mended, or ``None``.
        left: whether the official left it in this session.
        alike: at the first of several that are mended alike and leave nothing to choose: all of them, itself too.
    """

    number: int
    fault: Fault
    proposal: Proposal | None
    left: bool = False
    alike: "tuple[Place, ...]" = ()

    @property
    def must(self) -> bool:
        """Whether the map cannot be used before this is mended."""
        return self.severity is Severity.ERROR

    @property
    def severity(self) -> Severity:
        """How grave it is, with what waits for it."""
        return self.proposal.severity if self.proposal else self.fault.severity

    @property
    def mark(self) -> str:
        """The mark of its only choice, or an empty string."""
        return self.proposal.choices[0].mark if self.proposal and len(self.proposal.choices) == 1 else ""

    @property
    def in_list(self) -> bool:
        """Whether its choices are so many that they are taken from a list."""
        return self.proposal is not None and len(self.proposal.choices) > MANY


def places(draft: Draft, left: Collection[str]) -> list[Place]:
    """Return the faults in the order they are visited: errors first, those with a proposal before those without.

    Args:
        draft: the map.
        left: the keys of proposals left in this session; they come last.
    """
    with_proposal = [(one.fault, one) for one in draft.proposals]
    without = [(fault, None) for fault in draft.unmended()]
    order = list(Severity)
    listed: list[tuple[Fault, Proposal | None]] = sorted(
        [*with_proposal, *without],
        key=lambda one: (
            one[1] is not None and one[1].key in left,
            order.index((one[1] or one[0]).severity),
            one[1] is None,
        ),
    )
    found = [
        Place(number, fault, proposal, proposal is not None and proposal.key in left)
        for number, (fault, proposal) in enumerate(listed, 1)
    ]
    alike = _alike(found)
    return [replace(one, alike=alike.get(one.number, ())) for one in found]


def _alike(listed: Iterable[Place]) -> dict[int, tuple[Place, ...]]:
    """Return by the number of the first what is mended alike, leaves nothing to choose and changes nothing twice."""
    kinds: dict[tuple[str, Severity], list[Place]] = defaultdict(list)
    changed: set[str] = set()
    for one in listed:
        if one.proposal is None or one.left or not one.mark or not changed.isdisjoint(one.proposal.idents):
            continue
        changed.update(one.proposal.idents)
        kinds[one.proposal.mending, one.severity].append(one)
    return {some[0].number: tuple(some) for some in kinds.values() if len(some) > 1}


def told(draft: Draft, listed: Iterable[Place]) -> list[dict[str, Any]]:
    """Return the places as a program, the page's script among them, is told of them."""
    before = by_ident(draft.document)
    lines = _lines_of_play(draft)
    return [
        {
            "number": one.number,
            "severity": one.severity.value,
            "check": one.fault.check,
            "what": spoken(one.fault.what),
            "remedy": spoken(one.fault.remedy),
            "where": spoken(one.fault.where),
            "at": _at(one.fault),
            "left": one.left,
            "key": one.proposal.key if one.proposal else None,
            "mending": one.proposal.mending if one.proposal else None,
            "why": spoken(one.proposal.why) if one.proposal else None,
            "also": [spoken(fault.sentence) for fault in one.proposal.also] if one.proposal else [],
            "waiting": [spoken(fault.sentence) for fault in one.proposal.waiting] if one.proposal else [],
            "feature": _shapes([before.get(one.fault.feature or lines.get(one.fault.hole, ""))]),
            "choices": [_choice(choice, before) for choice in one.proposal.choices] if one.proposal else [],
        }
        for one in listed
    ]


def _lines_of_play(draft: Draft) -> dict[int | None, str]:
    """Return the line of play of each hole by its number: what is drawn of a fault that is the whole hole's."""
    return {
        number: one.ident
        for one in reversed(draft.features)
        if meaning(one.tags) is Role.HOLE
        for number in hole_numbers(one.tags.get("ref", ""))
    }


def _choice(choice: Choice, before: dict[str, Feature]) -> dict[str, Any]:
    """Return a choice with the shapes it changes, as they are and as they would be."""
    gone = [before.get(edit.ident) for edit in choice.edits if edit.feature is None]
    changed = [
        (before.get(edit.ident), edit.feature)
        for edit in choice.edits
        if edit.feature is None
        or edit.action != "change"
        or (before[edit.ident].get("geometry") != (edit.feature or {}).get("geometry"))
    ]
    touched = [before.get(edit.ident) for edit in choice.edits]
    return {
        "mark": choice.mark,
        "words": spoken(choice.words),
        "said": [spoken(one) for one in choice.said],
        "before": _shapes([one for one, after in changed if after is not None] or ([] if gone else touched)),
        "after": _shapes([one for _, one in changed]),
        "gone": _shapes(gone),
    }


def _shapes(features: Iterable[Feature | None]) -> list[dict[str, Any]]:
    """Return the geometries of features that can be drawn; rings left open are drawn as the lines they are."""
    found = []
    for feature in features:
        geometry = (feature or {}).get("geometry")
        if not isinstance(geometry, dict):
            continue
        try:
            found.append(plain(geometry_of(geometry)))
        except Unreadable:
            if geometry.get("type") == "Polygon":
                lines = [
                    {"type": "LineString", "coordinates": ring} for ring in geometry.get("coordinates") or []
                ]
                found += _shapes([{"geometry": line} for line in lines])
    return found


def _at(fault: Fault) -> list[float] | None:
    if fault.latitude is None or fault.longitude is None or abs(fault.latitude) > 90:
        return None
    return [fault.latitude, fault.longitude]


def ground(draft: Draft) -> list[dict[str, Any]]:
    """Return what could be read of the map, lowest first: kind and geometry, lines of play with their number."""
    order: dict[Any, int] = {
        Role.COURSE: -1,
        **{kind: index for index, kind in enumerate(DRAWN)},
        Role.HOLE: len(DRAWN),
    }
    found = []
    for one in draft.features:
        what = meaning(one.tags)
        if what is None or what not in order:
            continue
        name = NAMES.get(what, what.value)
        if one.geometry.geom_type == "Point" and what is not Kind.STAKE:
            continue
        shape = {"kind": name, "ref": one.tags.get("ref", ""), "geometry": plain(one.geometry)}
        found.append((order[what], shape))
    return [shape for _, shape in sorted(found, key=lambda pair: pair[0])]
