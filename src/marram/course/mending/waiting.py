"""Faults that follow from another fault and wait for it: mended by themselves, they would be mended wrongly.

A tee at a line of play whose number cannot be read belongs to no hole, and the green at its end to none either. To
offer it to another hole, or to call that green a practice green, would be wrong: with the line mended both belong to it.
So with a line of play that runs backwards, and with the green at its end that cannot be read yet. While several courses
share their numbers, nobody can tell which hole is meant, and all that is said of holes waits for the course; where
longitude and latitude are swapped, no length is right and all but broken shapes waits.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

import shapely
from shapely import STRtree
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault
from marram.course.mending.courses import CHOOSE_COURSE
from marram.course.mending.hole_writing import read_writing
from marram.course.mending.lines import NEAR_GREEN, WITHOUT_LINE, numbers_of
from marram.course.mending.proposal import Proposal
from marram.course.mending.setting import LineThing, Setting
from marram.course.model import Kind
from marram.course.reading.holes import TEE_PART, TEE_REACH
from marram.course.reading.selection import FURTHEST_DEGREES
from marram.course.reading.shapes import hole_numbers
from marram.course.scheme import meaning

NUMBER_AT_FAULT = frozenset({"hole_without_number", "repeated_hole"})
"""Faults of the number of a line of play."""

LINE_AT_FAULT = NUMBER_AT_FAULT | {
    "bad_position",
    "hole_not_a_line",
    "misplaced",
    "no_geometry",
    "out_of_range",
    "too_short",
}
"""Faults of a line of play that keep it from being a hole."""

OF_TURNED = frozenset(
    {"hole_off_green", "hole_without_green", "hole_without_tee", "tee_far_off", "two_greens", "two_pins"}
)
"""What follows from a line of play that runs the wrong way, or of which only a part is read as the hole's."""

SHAPE_AT_FAULT = frozenset(
    {
        "bad_position",
        "incomplete",
        "invalid_geometry",
        "misplaced",
        "no_geometry",
        "open_ring",
        "out_of_range",
    }
)
"""Faults of the shape of a green or tee that keep it from being its hole's."""

BOUNDARY_AT_FAULT = frozenset({"all_out_of_bounds", "boundary_gap", "open_ring", "invalid_geometry"})
"""Faults that keep the boundary from being one."""

WITHOUT_BOUNDARY = frozenset({"no_boundary", "outline_as_boundary"})
"""What is said where no boundary could be read."""

SOMEWHERE = frozenset({"misplaced", "out_of_range"})
"""… of which the place on the ground is not known before."""

LACKS = {
    "hole_without_green": Kind.PUTTING_GREEN,
    "hole_off_green": Kind.PUTTING_GREEN,
    "hole_without_tee": Kind.TEEING_AREA,
}
"""What a hole seems to lack, by the check that says so."""


def with_waiting(setting: Setting, proposals: Sequence[Proposal]) -> Iterator[Proposal]:
    """Yield proposals but those for faults that follow from another one, each with the faults that wait for it.

    Args:
        setting: the map.
        proposals: what is proposed for each fault by itself.
    """
    after = _After(setting, proposals)
    waits = {id(one): first for one in proposals if (first := after.of(one.fault, one)) is not None}
    waiting: dict[int, list[Fault]] = {id(one): [] for one in proposals}

    def wait(faults: Sequence[Fault], first: Proposal) -> None:
        seen = {id(first)}
        while (before := waits.get(id(first))) is not None and id(before) not in seen:
            first = before
            seen.add(id(first))
        waiting[id(first)] += faults

    for one in proposals:
        if (first := waits.get(id(one))) is not None:
            wait([one.fault, *one.also], first)
    proposed = {id(fault) for one in proposals for fault in (one.fault, *one.also)}
    for fault in setting.faults:
        if id(fault) not in proposed and (first := after.of(fault)) is not None:
            wait([fault], first)
    for one in proposals:
        if id(one) not in waits:
            yield replace(one, waiting=tuple(waiting[id(one)])) if waiting[id(one)] else one


class _After:
    """What a fault has to wait for, among the proposals of a map."""

    def __init__(self, setting: Setting, proposals: Sequence[Proposal]) -> None:
        self._setting = setting
        self._proposals = proposals
        self._changing = {ident: one for one in reversed(proposals) for ident in one.idents}
        self._course = next((one for one in proposals if one.mending == CHOOSE_COURSE), None)
        self._swapped = next((one for one in proposals if one.fault.check == "perhaps_swapped"), None)
        self._of_lines = {
            fault.feature: one
            for one in reversed(proposals)
            for fault in (one.fault, *one.also)
            if fault.check in LINE_AT_FAULT and fault.feature in setting.holes
        }
        self._turned = {
            one.fault.hole: one
            for one in proposals
            if one.mending == "turn_line" and one.fault.hole is not None
        }
        self._of_numbers = {
            one.fault.hole: one
            for one in reversed(proposals)
            if one.fault.check in LINE_AT_FAULT and one.fault.hole is not None
        }
        # A line that is turned has one edit: itself.
        self._of_lines |= {one.idents[0]: one for one in self._turned.values()}
        self._lines = _Lines(setting, tuple(self._of_lines))
        self._shapes = [
            one
            for one in proposals
            if one.fault.check in SHAPE_AT_FAULT and one.fault.feature in setting.features
        ]
        self._named = [one for one in proposals if one.mending in {"name_tee", "name_green"}]
        self._ends = self._ends_of_missing_holes()

    def of(self, fault: Fault, proposal: Proposal | None = None) -> Proposal | None:
        """Return the proposal that a fault, or what is proposed for it, follows from."""
        if self._swapped is not None and proposal is not self._swapped and fault.check not in SHAPE_AT_FAULT:
            return self._swapped
        if self._course is not None and proposal is not self._course and self._of_a_hole(fault):
            return self._course
        if proposal is not None and proposal.mending == "turn_line":
            return None
        if fault.check in OF_TURNED and fault.hole in self._turned:
            return self._turned[fault.hole]
        if (line := self._lines.of(fault)) is not None:
            return self._of_lines[line]
        if (end := self._other_end(fault)) is not None:
            return end
        if proposal is None and (found := self._unproposed(fault)) is not None:
            return found
        if fault.check in LACKS and (proposal is None or proposal.mending == "end_on_green"):
            return self._lacking(fault, LACKS[fault.check], proposal)
        return None

    def _unproposed(self, fault: Fault) -> Proposal | None:
        """Return what a fault waits for that nothing is proposed for: its own feature, a line of play, the boundary."""
        if fault.check == "holes_missing":
            return next(iter((*self._of_lines.values(), *self._ends.values())), None)
        if fault.check in WITHOUT_BOUNDARY:
            return next((one for one in self._proposals if self._is_boundary(one)), None)
        if fault.check in OF_TURNED and fault.hole in self._of_numbers:
            return self._of_numbers[fault.hole]
        return self._changing.get(fault.feature)

    def _ends_of_missing_holes(self) -> dict[int, Proposal]:
        """Return what mends a tee or green by the hole it names, of the holes that have no line of play.

        Only once both ends can be read a line is drawn between them.
        """
        with_line = {number for line in self._setting.lines for number in line.writing.numbers}
        ends: dict[int, Proposal] = {}
        for one in self._shapes:
            tags = self._setting.tags(one.fault.feature)
            if meaning(tags) in {Kind.TEEING_AREA, Kind.PUTTING_GREEN}:
                named = hole_numbers(tags.get("holes", "")) or read_writing(tags.get("ref", "")).numbers
                for number in set(named) - with_line:
                    ends.setdefault(number, one)
        return ends

    def _other_end(self, fault: Fault) -> Proposal | None:
        """Return what mends the green of the hole that a tee names and that has no line of play, or its tee."""
        if fault.check not in WITHOUT_LINE or not self._ends:
            return None
        things = (*self._setting.tees, *self._setting.greens)
        named = next((numbers_of(one) for one in things if one.ident == fault.feature), ())
        return next((self._ends[number] for number in named if number in self._ends), None)

    def _is_boundary(self, one: Proposal) -> bool:
        return one.fault.check in BOUNDARY_AT_FAULT and any(
            meaning(self._setting.tags(ident)) in {Kind.BOUNDARY, Kind.OUT_OF_BOUNDS}
            for ident in one.idents
            if ident in self._setting.features
        )

    def _of_a_hole(self, fault: Fault) -> bool:
        """Whether a fault says something of a hole, or of a line of play other than its shape."""
        if fault.check in SHAPE_AT_FAULT or fault.check in LINE_AT_FAULT - NUMBER_AT_FAULT:
            return False
        return (
            fault.hole is not None
            or fault.feature in self._setting.holes
            or fault.check in WITHOUT_LINE | {"holes_missing", "no_holes"}
        )

    def _lacking(self, fault: Fault, kind: Kind, proposal: Proposal | None) -> Proposal | None:
        """Return the proposal for the green or tee of a hole that seems to have none."""
        line = self._setting.line(fault)
        if line is None:
            return None
        at_fault = (one for one in self._shapes if self._may_be_of(line, kind, one))
        if (found := next(at_fault, None)) is not None or proposal is not None:
            return found
        return next((one for one in self._named if _names(one, fault.hole)), None)

    def _may_be_of(self, line: LineThing, kind: Kind, shape: Proposal) -> bool:
        fault = shape.fault
        found = meaning(self._setting.tags(fault.feature))
        # A line that begins on a green may have to be turned, and has its tee at the other end.
        ends = (line.start, line.end) if found is kind else (line.start,)
        if found not in {kind, Kind.PUTTING_GREEN}:
            return False
        if fault.check in SOMEWHERE or fault.latitude is None or fault.longitude is None:
            return True
        plane = self._setting.plane
        away = abs(fault.longitude - plane.longitude), abs(fault.latitude - plane.latitude)
        if max(away) > FURTHEST_DEGREES:  # misplaced too, which is told once its shape is mended
            return True
        at = Point(plane.to_metres(fault.longitude, fault.latitude))
        reach = NEAR_GREEN if found is Kind.PUTTING_GREEN else TEE_REACH
        return min(end.distance(at) for end in ends) <= reach


def _names(proposal: Proposal, hole: int | None) -> bool:
    """Whether one of the choices gives something to a hole."""
    refs = (
        (edit.feature or {}).get("properties", {}).get("ref", "")
        for choice in proposal.choices
        for edit in choice.edits
    )
    return any(hole in hole_numbers(str(ref)) for ref in refs)


class _Lines:
    """Lines of play at fault, by the numbers written at them and by where they run."""

    def __init__(self, setting: Setting, idents: Sequence[str]) -> None:
        greens = {one.ident for one in setting.greens} if idents else set()
        things = (*setting.tees, *setting.greens) if idents else ()
        self._things = {one.ident: (one, 0.0 if one.ident in greens else TEE_REACH) for one in things}
        self._by_number: dict[int, str] = {}
        for ident in reversed(idents):
            written = setting.tags(ident).get("ref", "")
            numbers = hole_numbers(written) or read_writing(written).numbers
            self._by_number |= dict.fromkeys(numbers, ident)
        self._idents = [ident for ident in idents if ident in setting.read]
        self._read = [setting.plane.inward(setting.read[ident].geometry) for ident in self._idents]
        self._near = STRtree(self._read)

    def of(self, fault: Fault) -> str | None:
        """Return which of the lines a tee or green at fault belongs to: by its number, else where it stands."""
        if fault.check not in WITHOUT_LINE or fault.feature not in self._things:
            return None
        thing, reach = self._things[fault.feature]
        if named := numbers_of(thing):
            return next((self._by_number[one] for one in named if one in self._by_number), None)
        near = self._near.query(thing.shape, predicate="dwithin", distance=reach)
        own = [int(at) for at in near if self._may_own(self._read[at], thing.shape, reach)]
        return self._idents[min(own)] if own else None

    @staticmethod
    def _may_own(line: BaseGeometry, shape: BaseGeometry, reach: float) -> bool:
        """Whether a green lies at an end of a line, or a tee at one or beside its beginning, from either end."""
        if shape.distance(shapely.boundary(line)) <= reach:
            return True
        if reach == 0 or line.geom_type != "LineString":
            return False
        along = line.project(shape.centroid, normalized=True)
        return min(along, 1 - along) <= TEE_PART
