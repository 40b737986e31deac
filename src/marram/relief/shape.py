"""A shape around the ball, cut into what a search needs."""

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import cos, sin

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from marram.errors import BadPlace
from marram.relief.convex_pieces import convex_pieces
from marram.relief.corners import Corners, Floats
from marram.relief.outline import XY, Outline
from marram.relief.tolerance import ROUNDING


@dataclass(frozen=True, slots=True)
class Piece:
    """A convex piece: its corners anticlockwise, its outward normals, and how far it reaches along each.

    A side that is an edge of the whole gives way by a rounding error, so that touching is no overlap; a side
    that only cuts the whole into pieces does not, so that nothing slips through between them.
    """

    corners: Floats
    normals: Floats
    reach: Floats

    def turned(self, turn: Floats) -> "Piece":
        """Return the piece turned by a rotation matrix (for rows)."""
        return Piece(self.corners @ turn, self.normals @ turn, self.reach)


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
            raise BadPlace("A footprint cannot have a hole; fill it.")
        edges = self.outline.edges
        starts = np.flatnonzero(self.outline.previous >= np.arange(len(edges)))
        rings = [edges[start:end, :2] for start, end in pairwise((*starts.tolist(), len(edges)))]
        whole = [convex_pieces(ring) for ring in rings]
        known = {tuple(one) for one in edges.tolist()} if any(len(pieces) > 1 for pieces in whole) else None
        return tuple(_piece(corners, known) for pieces in whole for corners in pieces)

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


def _piece(corners: Floats, edges: set[tuple[float, ...]] | None) -> Piece:
    ahead = np.concatenate((corners[1:], corners[:1]))
    sides = ahead - corners
    normals = np.stack((sides[:, 1], -sides[:, 0]), axis=1)
    normals /= np.sqrt((normals * normals).sum(axis=1))[:, None]
    real: NDArray[np.bool_] = np.ones(len(corners), dtype=bool)
    if edges is not None:
        real = np.array([tuple(one) in edges for one in np.concatenate((corners, ahead), axis=1).tolist()])
    return Piece(corners, normals, (normals * corners).sum(axis=1) - np.where(real, ROUNDING, -ROUNDING))
