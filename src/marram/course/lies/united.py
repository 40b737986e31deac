"""What is joined on the ground is one area, in however many pieces it is mapped.

Pieces that overlap, touch, or lie no further apart than :data:`~marram.course.lies.tolerance.SEAM` make one area. Its
outline is that of its pieces wherever they do not meet; between them no edge is left, nor a gap too narrow to be one.
An area of one piece keeps the very geometry of the map. Areas of different kinds that adjoin stay two, and no gap is left
between them either.
"""

import math
from collections import defaultdict
from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from marram.course.lies.crowded import beyond, crowded, showing_pairs
from marram.course.lies.extents import Extent
from marram.course.lies.groups import Numbers, groups
from marram.course.lies.joints import joints
from marram.course.lies.tolerance import EDGE_TOLERANCE, SEAM
from marram.course.model import Feature, Kind
from marram.course.near_pairs import near_pairs
from marram.course.near_parts import near_parts

CORNER = 5 * SEAM
"""Shapes that meet along less than this, metres, meet at a corner, and share no side."""

NEAR = 20 * SEAM
"""Metres: further from another shape than this, nothing of a shape matters to the seam between them (its window and the
longest mitre reach eight seams)."""

SLIT = 5 * EDGE_TOLERANCE
"""Metres: rounding leaves no wider slit than twice this between shapes that meet."""

CLOSING = SEAM / 2 + EDGE_TOLERANCE
"""Metres that areas grow, and shrink again, to close the gaps no wider than the seam: half its width, and rounding."""

Shapes = NDArray[np.object_]


@dataclass(frozen=True, eq=False)
class UnitedArea:
    """One area on the ground, and the mapped features it is made of.

    Attributes:
        pieces: the ground each feature covers, in the order of the map.
        geometry: the whole area, polygon(s) in metres.
        kept: what was once worked out from it, by what it is.
    """

    pieces: tuple[Extent, ...]
    geometry: BaseGeometry
    kept: dict[Hashable, Any] = field(default_factory=dict, repr=False)

    @property
    def features(self) -> tuple[Feature, ...]:
        """The mapped features, in the order of the map, each once."""
        return tuple({id(piece.feature): piece.feature for piece in self.pieces}.values())

    @property
    def kind(self) -> Kind:
        """The kind of the first feature; water that is not marked may be joined with a marked penalty area."""
        return self.pieces[0].feature.kind

    @property
    def ident(self) -> str:
        """The identifier of the first feature, for messages."""
        return self.pieces[0].feature.ident

    @property
    def name(self) -> str:
        """The first name that one of the features has, or an empty string."""
        return next((feature.name for feature in self.features if feature.name), "")

    @cached_property
    def _shapes(self) -> Shapes:
        shapes = np.array([piece.shape for piece in self.pieces], dtype=object)
        shapely.prepare(shapes)
        return shapes

    @cached_property
    def _edges(self) -> Shapes:
        edges = np.asarray(shapely.boundary(self._shapes), dtype=object)
        shapely.prepare(edges)
        return edges

    def holding(self, place: Point) -> Feature:
        """Return the feature that a place is nearest to or deepest in."""
        if len(self.pieces) == 1:
            return self.pieces[0].feature
        outside = shapely.distance(self._shapes, place)
        nearest = np.flatnonzero(outside == outside.min())
        depths = shapely.distance(self._edges[nearest], place)
        return self.pieces[int(nearest[np.argmax(depths)])].feature

    def edge_near(self, place: Point) -> Feature:
        """Return the feature whose edge is nearest to a place."""
        if len(self.pieces) == 1:
            return self.pieces[0].feature
        return self.pieces[int(np.argmin(shapely.distance(self._edges, place)))].feature

    def touching(self, place: Point, distance: float) -> tuple[Feature, ...]:
        """Return the features no further from a place than a distance; the nearest where only a joint is so near."""
        near = np.flatnonzero(shapely.distance(self._shapes, place) <= distance)
        found = {id(self.pieces[i].feature): self.pieces[i].feature for i in near}
        return tuple(found.values()) or (self.holding(place),)


def unite(
    pieces: Sequence[Extent], *, apart: Callable[[Feature], bool] = lambda _: False
) -> tuple[UnitedArea, ...]:
    """Return the areas that pieces of ground make, in the order of their first pieces.

    Args:
        pieces: the ground of features that are one area where they are joined.
        apart: which features stay by themselves, whatever they touch.
    """
    if not pieces:
        return ()
    shapes = np.array([piece.shape for piece in pieces], dtype=object)
    pairs = _joined(shapes, [apart(piece.feature) for piece in pieces])
    return tuple(
        UnitedArea(
            tuple(pieces[i] for i in group),
            _union([pieces[i] for i in group], within),
        )
        for group, within in groups(len(pieces), pairs)
    )


def one_by_one(pieces: Sequence[Extent]) -> tuple[UnitedArea, ...]:
    """Return each piece of ground as an area by itself."""
    return tuple(UnitedArea((piece,), piece.shape) for piece in pieces)


def closed_up(areas: Sequence[UnitedArea], *others: Sequence[UnitedArea]) -> tuple[UnitedArea, ...]:
    """Return areas with the gaps filled that are too narrow to be one between them and areas of other kinds.

    What lies between two areas that adjoin is no strip of general area: it counts to the first. Areas that adjoin
    none of the others stay as they are, to the last bit.
    """
    every = (*areas, *(one for some in others for one in some))
    shapes = np.array([area.geometry for area in every], dtype=object)
    if not areas or len(every) == len(areas):
        return tuple(areas)
    first, second = near_pairs(STRtree(shapes[len(areas) :]), shapes[: len(areas)], SEAM)
    fillings: dict[int, list[BaseGeometry]] = defaultdict(list)
    one, other = shapes[first], shapes[second + len(areas)]
    for pair, filling in _seams(one, other):
        fillings[int(first[pair])].append(filling)
    return tuple(
        replace(area, geometry=_sum([area.geometry, *fillings[i]]), kept={}) if fillings[i] else area
        for i, area in enumerate(areas)
    )


def _joined(shapes: Shapes, apart: Sequence[bool]) -> Numbers:
    """Return which pairs of shapes are joined, the lesser index first, shape (n, 2)."""
    first, second = near_pairs(STRtree(shapes), shapes, SEAM)
    single = np.asarray(apart)
    kept = (first < second) & ~single[first] & ~single[second]
    return np.column_stack([first[kept], second[kept]])


def _union(pieces: Sequence[Extent], pairs: Numbers) -> BaseGeometry:
    lines = [(line, piece.half) for piece in pieces for line in piece.middles]
    between = joints(lines)
    if not between and len(pieces) == 1:
        return pieces[0].shape
    shapes = np.array([piece.shape for piece in pieces], dtype=object)
    whole = None
    if crowded(len(pieces), len(pairs)):
        whole = shapely.union_all(shapes)
        pairs = showing_pairs(shapes, whole)
    lined = np.array([bool(piece.middles) for piece in pieces])
    first, second = shapes[pairs[~lined[pairs].all(axis=1)]].T
    between += [filling for _, filling in _seams(first, second, STRtree(shapes), whole)]
    return _sum([*shapes, *between])


def _sum(shapes: Sequence[BaseGeometry]) -> BaseGeometry:
    # Where edges cross or run together, rounding leaves corners a hair apart: no edge of theirs is one.
    return shapely.remove_repeated_points(shapely.union_all(shapes), EDGE_TOLERANCE)


def _seams(
    first: Shapes, second: Shapes, every: STRtree | None = None, whole: BaseGeometry | None = None
) -> Iterator[tuple[int, BaseGeometry]]:
    """Yield what fills the gaps between pairs of joined shapes that are too narrow to be one, with the pair's number.

    A gap is filled by closing (growing and shrinking again by half its width), near the seam alone. Each filling
    reaches a micrometre into both shapes, so that rounding leaves nothing between. Where two shapes only touch at a
    corner there is nothing to fill.

    Args:
        first: one shape of each pair.
        second: the other.
        every: all shapes that are closed together near a seam; without it those of the pair alone.
        whole: the union of all shapes, where they are crowded: what it covers is no seam.
    """
    if not len(first):
        return
    first, second = near_parts(first, second, NEAR)
    # Pieces that share their corners touch all along the seam: there is no gap.
    seams, touch = _meeting(first, second, SEAM)
    # Where one has corners that the other lacks, rounding leaves slits that are too thin for a difference to show.
    slits, tight = _meeting(first, second, SLIT)
    if whole is not None:
        seams = beyond(seams, whole)
    for pair in np.flatnonzero(~(touch & tight) & ~shapely.is_empty(seams)).tolist():
        one, other, seam = first[pair], second[pair], seams[pair]
        if math.dist(seam.bounds[:2], seam.bounds[2:]) < CORNER:
            continue
        window = shapely.buffer(seam, 3 * SEAM, quad_segs=2)
        near = (one, other) if every is None else every.geometries[every.query(window)]
        here = shapely.union_all(shapely.intersection(near, window))
        closed = _grown(_grown(here, CLOSING), -CLOSING)
        inner = _grown(closed, -2 * EDGE_TOLERANCE)
        for gap in shapely.get_parts(_without(closed, here)):
            # What lies along the outside, no wider than rounding, is no gap between the two.
            filling = _grown(gap, EDGE_TOLERANCE)
            if gap.intersects(inner) and filling.intersects(one) and filling.intersects(other):
                yield pair, filling
        slit = shapely.intersection(slits[pair], closed)
        if not tight[pair] and slit.area:
            yield pair, slit


def _meeting(first: Shapes, second: Shapes, by: float) -> tuple[Shapes, Numbers]:
    """Return where shapes of each pair are no further apart than twice a distance, and whether they touch all along there."""
    seams = shapely.intersection(_grown(first, by), _grown(second, by))
    shared = shapely.buffer(shapely.intersection(first, second), 2 * by, quad_segs=4)
    return seams, shapely.covers(shared, seams)


def _grown(shape: Any, by: float) -> Any:
    # GEOS lets the mitre of two edges in one line divide by zero, and then bevels it.
    with np.errstate(divide="ignore", invalid="ignore"):
        return shapely.buffer(shape, by, join_style="mitre")


def _without(shape: BaseGeometry, other: BaseGeometry) -> BaseGeometry:
    # GEOS divides by zero where two edges nearly lie in one line, and then crosses them in another way.
    with np.errstate(divide="ignore", invalid="ignore"):
        return shapely.difference(shape, other)
