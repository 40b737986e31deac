"""Faults of tees and greens that wait for their line of play: it is on the map, but nothing tells yet which hole it is.

A tee at a line of play whose number cannot be read belongs to no hole, and the green at its end to none either. To
offer it to another hole, or to call that green a practice green, would be wrong: with the line mended both belong to it.
"""

from collections.abc import Iterator, Sequence
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


def without_waiting(setting: Setting, proposals: Sequence[Proposal]) -> Iterator[Proposal]:
    """Yield proposals but those for tees and greens of a line of play that is proposed to be mended itself.

    What waits is told with the proposal for the line: mending that answers it.
    """
    of_lines = {
        fault.feature: one
        for one in reversed(proposals)
        for fault in (one.fault, *one.also)
        if fault.check in LINE_AT_FAULT and fault.feature in setting.holes
    }
    lines = _Lines(setting, tuple(of_lines))
    waiting: dict[int, list[Fault]] = {id(one): [] for one in proposals}
    waits = set()
    for one in proposals:
        line = lines.of(one.fault)
        if line is not None:
            waiting[id(of_lines[line])] += [one.fault, *one.also]
            waits.add(id(one))
    for one in proposals:
        if id(one) not in waits:
            also = waiting[id(one)]
            yield replace(one, also=(*one.also, *also)) if also else one


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
