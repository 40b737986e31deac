"""A shape around the ball, cut into what a search needs."""

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import cos, dist, hypot, sin

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from marram.errors import BadPlace
from marram.relief.geometry.corners import Corners, Floats
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.tolerance import ROUNDING
from marram.relief.interference.convex_pieces import convex_pieces
from marram.said import said

CUT_END = 1e-6
"""Metres: how far before the corners it joins a cut between two pieces ends."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A convex piece: its corners anticlockwise, its outward normals, and how far it reaches along each.

    A piece gives way by a rounding error, so that touching is no overlap. What a piece gives way along a cut
    between two pieces is held by the cut, a piece without a breadth: an edge that meets it is inside the
    whole, so it gives no way. It ends just short of the corners it joins, since in a dent a corner of a
    condition may touch them.

    Attributes:
        corners: anticlockwise, as rows.
        normals: the outward directions, as rows.
        reach: metres along each of the normals, less what gives way.
        gives: metres by which it gives way; negative for a cut.
    """

    corners: Floats
    normals: Floats
    reach: Floats
    gives: float

    def turned(self, turn: Floats) -> "Piece":
        """Return the piece turned by a rotation matrix (for rows)."""
        return Piece(self.corners @ turn, self.normals @ turn, self.reach, self.gives)


@dataclass(frozen=True, eq=False)
class Shape:
    """One or more polygons about a ball at (0, 0); all that is computed from them is computed once."""

    area: BaseGeometry

    @cached_property
    def outline(self) -> Outline:
        """The edges of the area."""
        return Outline(self.area)

    @cached_property
    def pieces(self) -> tuple[Piece, ...]:
        """Convex pieces that make up the area.

        Raises:
            BadPlace: if the area has a hole.
        """
        if any(len(polygon.interiors) for polygon in self.outline.parts):
            raise BadPlace(said("A footprint cannot have a hole; fill it."))
        edges = self.outline.edges
        starts = np.flatnonzero(self.outline.previous >= np.arange(len(edges)))
        rings = [edges[start:end, :2] for start, end in pairwise((*starts.tolist(), len(edges)))]
        return tuple(_piece(corners) for ring in rings for corners in convex_pieces(ring))

    @cached_property
    def cuts(self) -> tuple[Piece, ...]:
        """The cuts between the pieces, without their ends."""
        sides = {tuple(side) for piece in self.pieces for side in _sides(piece.corners).tolist()}
        # A cut is a side of two pieces, one on either hand; an edge of the whole is a side of one.
        ends = [
            ((ax, ay), (bx, by))
            for ax, ay, bx, by in sides
            if (bx, by, ax, ay) in sides and (ax, ay) < (bx, by)
        ]
        return tuple(_cut(np.array(one)) for one in ends if dist(*one) > 2 * CUT_END)

    @cached_property
    def inner_points(self) -> Floats:
        """One point inside each separate part, as rows."""
        return shapely.get_coordinates(shapely.point_on_surface(self.outline.parts))

    @cached_property
    def radius(self) -> float:
        """Metres from the ball to the farthest point."""
        edges = self.outline.edges
        return float(np.sqrt((edges[:, :2] * edges[:, :2]).sum(axis=1).max()))


@dataclass(frozen=True, eq=False)
class Footprint:
    """Lie, stance and swing as areas about a ball at (0, 0), turned to the direction of play.

    Attributes:
        shape: all of it, for play along +x.
        parts: the parts by name (``lie``, ``stance``, ``swing``), for play along +x.
        direction: of play, radians anticlockwise from east.
    """

    shape: Shape
    parts: tuple[tuple[str, BaseGeometry], ...] = ()
    direction: float = 0.0

    @classmethod
    def of(cls, area: BaseGeometry, direction: float = 0.0) -> "Footprint":
        """Return the footprint of an area drawn for play along +x (east)."""
        return cls(Shape(area), (), direction)

    @cached_property
    def _turn(self) -> Floats:
        c, s = cos(self.direction), sin(self.direction)
        return np.array(((c, s), (-s, c)))

    @cached_property
    def area(self) -> BaseGeometry:
        """All of it as polygons."""
        return self.turned(self.shape.area)

    @cached_property
    def pieces(self) -> tuple[Piece, ...]:
        """Convex pieces that make up the area."""
        return tuple(piece.turned(self._turn) for piece in self.shape.pieces)

    @cached_property
    def cuts(self) -> tuple[Piece, ...]:
        """The cuts between the pieces, without their ends."""
        return tuple(cut.turned(self._turn) for cut in self.shape.cuts)

    @cached_property
    def mirrored(self) -> Corners:
        """The corners of the footprint mirrored in the ball."""
        edges = -(self.shape.outline.edges.reshape(-1, 2) @ self._turn).reshape(-1, 4)
        return Corners(edges, self.shape.outline.previous)

    @cached_property
    def inner_points(self) -> tuple[XY, ...]:
        """One point inside each separate part."""
        return tuple((float(x), float(y)) for x, y in self.shape.inner_points @ self._turn)

    @property
    def radius(self) -> float:
        """Metres from the ball to the farthest point of the area."""
        return self.shape.radius

    def turned(self, part: BaseGeometry) -> BaseGeometry:
        """Return a part drawn for play along +x, turned to the direction of play."""
        return shapely.transform(part, lambda points: points @ self._turn)

    def rings_at(self, place: XY) -> tuple[tuple[XY, ...], ...]:
        """Return the outer rings of the area with the ball at a place."""
        rings = [shapely.get_coordinates(part.exterior) for part in self.shape.outline.parts]
        return tuple(tuple(map(tuple, (ring @ self._turn + np.asarray(place)).tolist())) for ring in rings)

    def at(self, place: XY) -> BaseGeometry:
        """Return the area with the ball at a place."""
        return shapely.transform(self.area, lambda points: points + np.asarray(place))


def _sides(corners: Floats) -> Floats:
    """Return the sides of a polygon as rows (x from, y from, x to, y to)."""
    return np.concatenate((corners, np.concatenate((corners[1:], corners[:1]))), axis=1)


def _piece(corners: Floats) -> Piece:
    sides = np.concatenate((corners[1:], corners[:1])) - corners
    normals = np.stack((sides[:, 1], -sides[:, 0]), axis=1)
    normals /= np.sqrt((normals * normals).sum(axis=1))[:, None]
    return Piece(corners, normals, (normals * corners).sum(axis=1) - ROUNDING, ROUNDING)


def _cut(ends: Floats) -> Piece:
    along = ends[1] - ends[0]
    along /= hypot(*along)
    kept = ends + CUT_END * np.array((along, -along))
    across = np.array((along[1], -along[0]))
    normals = np.array((across, -across, along, -along))
    return Piece(kept, normals, (kept @ normals.T).max(axis=0) + ROUNDING, -ROUNDING)
