"""Does a footprint overlap a condition? Tested on the original shapes by separating axes.

A segment and a convex polygon do not overlap exactly when a line parallel to the segment or to an edge of
the polygon separates them (separating axis theorem). The footprint is taken as its convex pieces, each edge
of the condition as a segment; a footprint that meets no edge but lies wholly in the condition is found by
one point of each part. A cut of at most :data:`~marram.relief.tolerance.ROUNDING` counts as touching.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from marram.relief.convolution import convolution
from marram.relief.corners import Corners, Floats
from marram.relief.footprint import Footprint
from marram.relief.outline import XY, Outline
from marram.relief.tolerance import ROUNDING

Booleans = NDArray[np.bool_]


class Prepared(Protocol):
    """An interference as far as it matters within some distance of a ball; places are relative to the ball."""

    segments: Floats
    """Segments that hold every boundary of the places without interference."""

    def clear(self, places: Floats) -> Booleans:
        """Return for each place (a row) whether no edge interferes there."""

    def outside(self, place: XY) -> bool:
        """Return whether a place that is clear of edges is also not wholly inside the condition."""


class Interference(Protocol):
    """Something that must not interfere at a place."""

    def prepare(self, ball: XY, reach: float) -> Prepared:
        """Return what matters within ``reach`` metres of the ball."""


@dataclass(frozen=True, eq=False)
class FootprintOn:
    """Lie, stance and swing must not overlap any of the conditions.

    Attributes:
        conditions: the outlines of the conditions.
        footprint: lie, stance and swing about the ball.
    """

    conditions: tuple[Outline, ...]
    footprint: Footprint

    @cached_property
    def _mirrored(self) -> Corners:
        outline = self.footprint.outline
        return Corners(-outline.edges, outline.previous)

    def prepare(self, ball: XY, reach: float) -> "PreparedFootprint":
        """Return what matters within ``reach`` metres of the ball."""
        within = reach + self.footprint.radius
        near = [one.corners.near(*ball, within) for one in self.conditions if one.apart(*ball) <= within]
        return PreparedFootprint(self, self._mirrored, ball, near)

    def overlaps(self, place: XY) -> bool:
        """Return whether the footprint overlaps a condition with the ball at a place."""
        here = self.prepare(place, 0.0)
        return not (bool(here.clear(np.zeros((1, 2)))[0]) and here.outside((0.0, 0.0)))


class PreparedFootprint:
    """The edges of conditions near a ball, with all that does not depend on the place computed."""

    def __init__(self, whole: FootprintOn, mirrored: Corners, ball: XY, near: Sequence[Corners]) -> None:
        self._whole = whole
        self._ball = ball
        shift = np.array((*ball, *ball))
        parts = [one.edges for one in near]
        self._edges = np.vstack(parts) - shift if parts else np.empty((0, 4))
        moved = [convolution(one, mirrored) for one in near]
        self.segments: Floats = np.vstack(moved) - shift if moved else np.empty((0, 4))
        self._tables = [_Table(piece, real, self._edges) for piece, real in whole.footprint.sides]

    def clear(self, places: Floats) -> Booleans:
        """Return for each place whether no edge of a condition cuts into the footprint there."""
        free = np.ones(len(places), dtype=bool)
        if len(self._edges):
            for table in self._tables:
                free &= ~table.meets(places)
        return free

    def outside(self, place: XY) -> bool:
        """Return whether no part of the footprint lies wholly inside a condition."""
        x, y = place[0] + self._ball[0], place[1] + self._ball[1]
        return not any(
            one.apart(x + px, y + py) <= 0 and one.depth(x + px, y + py) > ROUNDING
            for one in self._whole.conditions
            for px, py in self._whole.footprint.inner_points
        )


class _Table:
    """One convex piece against all near edges: how far each edge is separated along each axis."""

    __slots__ = ("_across", "_ahead", "_behind", "_beyond", "_normals")

    def __init__(self, piece: Floats, real: Booleans, edges: Floats) -> None:
        sides = np.roll(piece, -1, axis=0) - piece
        normals = np.column_stack([sides[:, 1], -sides[:, 0]])
        normals /= np.sqrt((normals * normals).sum(axis=1))[:, None]
        # A side that only cuts the footprint into pieces is no edge: there the touching counts as overlap.
        reach = (normals * piece).sum(axis=1) - np.where(real, ROUNDING, -ROUNDING)
        least = np.minimum(edges[:, :2] @ normals.T, edges[:, 2:] @ normals.T)
        self._normals = np.ascontiguousarray(normals.T)
        self._beyond = least - reach
        along = edges[:, 2:] - edges[:, :2]
        across = np.column_stack([along[:, 1], -along[:, 0]])
        across /= np.sqrt((across * across).sum(axis=1))[:, None]
        corners = piece @ across.T
        at = (across * edges[:, :2]).sum(axis=1)
        self._across = np.ascontiguousarray(across.T)
        self._ahead = at - corners.max(axis=0) + ROUNDING
        self._behind = at - corners.min(axis=0) - ROUNDING

    def meets(self, places: Floats) -> Booleans:
        """Return for each place whether an edge overlaps the piece moved there."""
        along = places @ self._normals
        apart = (self._beyond >= along[:, None, :]).any(axis=2)
        across = places @ self._across
        apart |= (self._ahead >= across) | (self._behind <= across)
        result: Booleans = ~apart.all(axis=1)
        return result
