"""Does a footprint overlap a condition? Tested on the original shapes by separating axes.

A segment and a convex polygon do not overlap exactly when a line parallel to the segment or to an edge of
the polygon separates them (separating axis theorem). The footprint is taken as its convex pieces and the
cuts between them, each edge of the condition as a segment; a footprint that meets no edge but lies wholly in
the condition is found by one point of each part. An overlap no deeper than :data:`~marram.relief.geometry.tolerance.ROUNDING` counts as touching.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from marram.relief.geometry.corners import Corners, Floats
from marram.relief.geometry.outline import XY, Outline
from marram.relief.interference.convolution import convolution
from marram.relief.interference.shape import Footprint, Piece

Booleans = NDArray[np.bool_]


class Prepared(Protocol):
    """An interference as far as it matters within some distance of a ball; places are relative to the ball."""

    @property
    def segments(self) -> Floats:
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

    def prepare(self, ball: XY, reach: float) -> "PreparedFootprint":
        """Return what matters within ``reach`` metres of the ball."""
        within = reach + self.footprint.radius
        near = [one.corners.near(*ball, within) for one in self.conditions if one.apart(*ball) <= within]
        return PreparedFootprint(self, ball, near)

    def overlaps(self, place: XY) -> bool:
        """Return whether the footprint overlaps a condition with the ball at a place."""
        here = self.prepare(place, 0.0)
        return not (bool(here.clear(np.zeros((1, 2)))[0]) and here.outside((0.0, 0.0)))


class PreparedFootprint:
    """The edges of conditions near a ball, with all that does not depend on the place computed."""

    def __init__(self, whole: FootprintOn, ball: XY, near: Sequence[Corners]) -> None:
        self._whole = whole
        self._ball = ball
        self._near = near
        self._tables: list[_Table] = []
        if near:
            edges = np.concatenate([one.edges for one in near]) - np.array((*ball, *ball))
            along = np.concatenate([one.along for one in near])
            every = (*whole.footprint.pieces, *whole.footprint.cuts)
            self._tables = [_Table(piece, edges, along) for piece in every]

    @cached_property
    def segments(self) -> Floats:
        """Segments that hold every boundary of the places without interference, relative to the ball."""
        if not self._near:
            return np.empty((0, 4))
        mirrored = self._whole.footprint.mirrored
        moved = np.concatenate([convolution(one, mirrored) for one in self._near])
        result: Floats = moved - np.array((*self._ball, *self._ball))
        return result

    def clear(self, places: Floats) -> Booleans:
        """Return for each place whether no edge of a condition cuts into the footprint there."""
        free = np.ones(len(places), dtype=bool)
        for table in self._tables:
            free &= table.clear(places)
            if not free.any():
                break
        return free

    def outside(self, place: XY) -> bool:
        """Return whether no part of the footprint lies wholly inside a condition."""
        x, y = place[0] + self._ball[0], place[1] + self._ball[1]
        return not any(
            one.holds(x + px, y + py)
            for one in self._whole.conditions
            for px, py in self._whole.footprint.inner_points
        )


class _Table:
    """One convex piece against all near edges: how far each edge is separated along each axis."""

    __slots__ = ("_across", "_ahead", "_behind", "_beyond", "_normals")

    def __init__(self, piece: Piece, edges: Floats, along: Floats) -> None:
        normals = piece.normals.T
        start = edges[:, :2]
        self._normals = normals
        # The axes come first: numpy reduces a short last axis slowly.
        beyond = np.minimum(start @ normals, edges[:, 2:] @ normals) - piece.reach
        self._beyond = np.ascontiguousarray(beyond.T)[:, None, :]
        self._across = np.array((along[:, 1], -along[:, 0]))
        corners = piece.corners @ self._across
        at = (start.T * self._across).sum(axis=0)
        self._ahead = at - corners.max(axis=0) + piece.gives
        self._behind = at - corners.min(axis=0) - piece.gives

    def clear(self, places: Floats) -> Booleans:
        """Return for each place whether no edge overlaps the piece moved there."""
        along = (places @ self._normals).T
        apart = (self._beyond >= along[:, :, None]).any(axis=0)
        across = places @ self._across
        apart |= self._ahead >= across
        apart |= self._behind <= across
        result: Booleans = apart.all(axis=1)
        return result
