"""Labels that stand at their own mark: none overlaps another, covers a relief area, or leaves the picture."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, hypot, pi, sin

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from marram.relief.geometry.outline import XY
from marram.relief.pictures.type_width import text_width

Numbers = NDArray[np.float64]
Place = tuple[list[float], bool]
"""Where a label may stand: left, top, right and bottom in the picture, and whether a line joins it to its mark."""

SIZE = 16.0
"""Picture units: the height of the letters; legible on a phone in sunlight."""
_PAD = 3.0
_DISTANCES = (12.0, 18.0, 26.0, 40.0, 60.0, 85.0, 115.0, 150.0, 190.0, 240.0)
_WITH_LEADER = 26.0
"""Picture units: a label farther than this from its mark is joined to it by a thin line."""
_DIRECTIONS = 16
_CLEARLY = 6.0
"""Picture units by which a label without a line must be nearer to its own mark than to any other."""
_LEADER_COSTS = 40.0
_LINE_COSTS = 30.0
_TURN_COSTS = 0.6
"""What a label costs for standing away from the right of its mark, a step: a reader looks there first."""


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle in the picture."""

    left: float
    top: float
    right: float
    bottom: float

    def overlaps(self, other: "Box") -> bool:
        """Return whether two rectangles share any place."""
        return (
            self.left < other.right
            and other.left < self.right
            and self.top < other.bottom
            and other.top < self.bottom
        )

    def nearest(self, place: XY) -> XY:
        """Return the place of the rectangle nearest to a place."""
        return (
            min(max(place[0], self.left), self.right),
            min(max(place[1], self.top), self.bottom),
        )

    def away(self, place: XY) -> float:
        """Return how far a place is from the rectangle; 0 inside."""
        x, y = self.nearest(place)
        return hypot(x - place[0], y - place[1])


@dataclass(frozen=True, slots=True)
class Label:
    """A label placed in the picture.

    Attributes:
        text: what it says.
        anchor: what it belongs to.
        box: where it stands.
        leader: whether a thin line joins it to its anchor.
    """

    text: str
    anchor: XY
    box: Box
    leader: bool


def place_labels(
    wanted: Sequence[tuple[str, XY]],
    pixels: float,
    taken: Sequence[Box],
    areas: Sequence[BaseGeometry] = (),
    lines: Sequence[BaseGeometry] = (),
) -> list[Label]:
    """Place labels near their anchors, most important first.

    A label without a line to its anchor stands clearly nearer to it than to any other, so that none is read as
    belonging to another mark. Where the order given leaves a label out, another order is tried.

    Args:
        wanted: the text and anchor of each label.
        pixels: the side of the picture.
        taken: places that labels must leave free.
        areas: relief areas in the picture, which no label covers.
        lines: lines of the construction in the picture, which a label covers only where it must.

    Returns:
        The labels placed; one that finds no free place is left out (its distance stands below the map).
    """
    frame = Box(0, 0, pixels, pixels)
    occupied = [*taken, *(_around(anchor) for _, anchor in wanted)]
    options = [
        _options(label, [at for _, at in wanted if at != label[1]], frame, occupied, areas, lines)
        for label in wanted
    ]
    order = list(range(len(wanted)))
    best: dict[int, Label] = {}
    for _ in order or [0]:
        placed = _in_order(order, wanted, options)
        if len(placed) > len(best) or not best:
            best = placed
        missing = [one for one in order if one not in placed]
        if not missing:
            break
        order = [missing[0], *(one for one in order if one != missing[0])]
    return [best[one] for one in sorted(best)]


def _in_order(
    order: Sequence[int], wanted: Sequence[tuple[str, XY]], options: Sequence[Sequence[Place]]
) -> dict[int, Label]:
    placed: dict[int, Label] = {}
    for index in order:
        text, anchor = wanted[index]
        for edges, leader in options[index]:
            box = Box(*edges)
            if any(box.overlaps(other.box) for other in placed.values()):
                continue
            if leader and any(_crosses(anchor, box, other.box) for other in placed.values()):
                continue
            if any(other.leader and _crosses(other.anchor, other.box, box) for other in placed.values()):
                continue
            placed[index] = Label(text, anchor, box, leader)
            break
    return placed


def _options(  # noqa: PLR0917 - a label, and all that it must leave free
    label: tuple[str, XY],
    others: Sequence[XY],
    frame: Box,
    occupied: Sequence[Box],
    areas: Sequence[BaseGeometry],
    lines: Sequence[BaseGeometry],
) -> list[Place]:
    """Return where a label may stand whatever becomes of the other labels, the best place first.

    No place covers an area or is taken for another mark's; one that covers a line costs more.
    """
    text, anchor = label
    edges, turns = _round_about(anchor, text_width(text, SIZE) + 2 * _PAD, SIZE + 2 * _PAD, frame, occupied)
    away = _away(edges, anchor)
    leader = away > _WITH_LEADER
    own = [leader | (_away(edges, other) >= away + _CLEARLY) for other in others]
    kept = np.logical_and.reduce(own) if own else np.full(len(edges), True)
    boxes = shapely.box(*edges.T)
    for area in areas:
        kept &= ~shapely.intersects(area, boxes)
    costs = away + turns * _TURN_COSTS + leader * _LEADER_COSTS
    if lines:
        costs += _LINE_COSTS * np.logical_or.reduce([shapely.intersects(one, boxes) for one in lines])
    order = np.flatnonzero(kept)
    order = order[np.argsort(costs[order], kind="stable")]
    return list(zip(edges[order].tolist(), leader[order].tolist(), strict=True))


def _away(edges: Numbers, place: XY) -> Numbers:
    """Return how far a place is from each rectangle, as :meth:`Box.away` does."""
    left, top, right, bottom = edges.T
    x, y = place
    away: Numbers = np.hypot(np.clip(x, left, right) - x, np.clip(y, top, bottom) - y)
    return away


def _turns() -> Numbers:
    """Return the directions round a mark as (cosine, sine); to the right first, then alternately up and down."""
    turns = [(step + 1) // 2 * (1 if step % 2 else -1) * 2 * pi / _DIRECTIONS for step in range(_DIRECTIONS)]
    return np.array([(cos(turn), sin(turn)) for turn in turns])


_ROUND = _turns()


def _round_about(
    anchor: XY, width: float, height: float, frame: Box, occupied: Sequence[Box]
) -> tuple[Numbers, Numbers]:
    """Return the free places around an anchor: left, top, right and bottom of each, and its steps from the right of it."""
    distance = np.repeat(_DISTANCES, _DIRECTIONS)
    across, down = np.tile(_ROUND, (len(_DISTANCES), 1)).T
    x = anchor[0] + across * (distance + width / 2)
    y = anchor[1] - down * (distance + height / 2)
    left, top, right, bottom = x - width / 2, y - height / 2, x + width / 2, y + height / 2
    free = (left >= frame.left) & (top >= frame.top) & (right <= frame.right) & (bottom <= frame.bottom)
    for other in occupied:
        free &= ~((left < other.right) & (other.left < right) & (top < other.bottom) & (other.top < bottom))
    return np.column_stack((left, top, right, bottom))[free], (np.arange(len(free)) % _DIRECTIONS)[free]


def _crosses(anchor: XY, box: Box, other: Box) -> bool:
    """Return whether the line from an anchor to its label runs through another label."""
    line = shapely.LineString([anchor, box.nearest(anchor)])
    return bool(line.intersects(shapely.box(other.left, other.top, other.right, other.bottom)))


def _around(anchor: XY, half: float = 9.0) -> Box:
    return Box(anchor[0] - half, anchor[1] - half, anchor[0] + half, anchor[1] + half)
