"""Faults that follow from another fault and wait for it: mended by themselves, they would be mended wrongly.

A tee at a line of play whose number cannot be read belongs to no hole, and the green at its end to none either. To
offer it to another hole, or to call that green a practice green, would be wrong: with the line mended both belong to it.
So with a line of play that runs backwards, and with the green at its end that cannot be read yet.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

import shapely
from shapely import STRtree

from marram.course.fault import Fault
from marram.course.mending.hole_writing import read_writing
from marram.course.mending.lines import WITHOUT_LINE, numbers_of
from marram.course.mending.proposal import Proposal
from marram.course.mending.setting import Setting
from marram.course.reading.holes import TEE_REACH
from marram.course.reading.shapes import hole_numbers

LINE_AT_FAULT = frozenset(
    {
        "bad_position",
        "hole_not_a_line",
        "hole_without_number",
        "misplaced",
        "no_geometry",
        "out_of_range",
        "repeated_hole",
        "too_short",
    }
)
"""Faults of a line of play that keep it from being a hole."""

OF_TURNED = frozenset({"hole_off_green", "tee_far_off"})
"""What follows from a line of play that runs the wrong way."""

GREEN_AT_FAULT = frozenset({"invalid_geometry", "open_ring", "bad_position", "no_geometry"})
"""Faults of a green's shape that keep a line of play from ending on it."""


def without_waiting(setting: Setting, proposals: Sequence[Proposal]) -> Iterator[Proposal]:
    """Yield proposals but those for faults that follow from another one, which is proposed to be mended.

    What waits is told with the proposal it waits for: mending that answers it.
    """
    of_lines = {
        fault.feature: one
        for one in reversed(proposals)
        for fault in (one.fault, *one.also)
        if fault.check in LINE_AT_FAULT and fault.feature in setting.holes
    }
    lines = _Lines(setting, tuple(of_lines))
    turned = {
        one.fault.hole: one for one in proposals if one.mending == "turn_line" and one.fault.hole is not None
    }
    shapes = {one.fault.feature: one for one in proposals if one.fault.check in GREEN_AT_FAULT}
    waiting: dict[int, list[Fault]] = {id(one): [] for one in proposals}
    waits = set()
    for one in proposals:
        first = _waits_for(setting, one, turned, shapes)
        if first is None and (line := lines.of(one.fault)) is not None:
            first = of_lines[line]
        if first is not None:
            waiting[id(first)] += [one.fault, *one.also]
            waits.add(id(one))
    for one in proposals:
        if id(one) not in waits:
            also = waiting[id(one)]
            yield replace(one, also=(*one.also, *also)) if also else one


def _waits_for(
    setting: Setting, one: Proposal, turned: Mapping[int, Proposal], shapes: Mapping[str, Proposal]
) -> Proposal | None:
    """Return the proposal for the line to be turned, or for the green that it ends on, that a fault of a hole follows from."""
    hole = one.fault.hole
    if one.fault.check in OF_TURNED and hole is not None and hole in turned:
        return turned[hole]
    if one.mending != "end_on_green":
        return None
    line = setting.line(one.fault)
    ends = (green.ident for green in setting.greens if line is not None and green.shape.covers(line.end))
    return next((shapes[ident] for ident in ends if ident in shapes), None)


class _Lines:
    """Lines of play at fault, by the numbers written at them and by where they begin and end."""

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
        read = [setting.plane.inward(setting.read[ident].geometry) for ident in self._idents]
        self._ends = STRtree(shapely.boundary(read))

    def of(self, fault: Fault) -> str | None:
        """Return which of the lines a tee or green at fault belongs to: by its number, else where it stands."""
        if fault.check not in WITHOUT_LINE or fault.feature not in self._things:
            return None
        thing, reach = self._things[fault.feature]
        if named := numbers_of(thing):
            return next((self._by_number[one] for one in named if one in self._by_number), None)
        near = self._ends.query(thing.shape, predicate="dwithin", distance=reach)
        return self._idents[int(near.min())] if len(near) else None
