"""The footprint of a stroke: the ground around the ball that lie, stance and swing take up.

Its dimensions are common practice, not Rule: the area of intended stance and swing is what the player would
really use for that stroke (Definitions of conditions affecting the stroke and of nearest point of complete
relief). On the ground the player takes the stance and swings; the referee sets the figures to match.
"""

from dataclasses import dataclass
from functools import cached_property
from math import atan2, cos, pi, sin

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from marram.errors import BadPlace
from marram.relief.convex_pieces import convex_pieces
from marram.relief.corners import Floats
from marram.relief.outline import XY, Outline
from marram.relief.tolerance import BALL_RADIUS

USUAL_STROKE_CLUB = 0.94
"""Metres: the length of a middle iron, about 37 inches (common practice)."""
TOES_PER_CLUB_LENGTH = 0.6
"""The distance from the ball to the line of the toes, in lengths of the club used (common practice)."""
FOOT_LENGTH = 0.30
"""Metres from toe to heel of a shoe (common practice)."""
STANCE_WIDTH = 0.50
"""Metres from the outside of one shoe to the outside of the other (common practice)."""
LOW_SWING = 0.45
"""Metres behind and past the ball in which a club head is near the ground (common practice)."""
LOW_SWING_WIDTH = 0.12
"""Metres: the width of a club head, about the most allowed (5 inches, Equipment Rules, Part 2)."""
SWING_ALONG_PER_CLUB_LENGTH = 1.9
"""How far a full swing reaches along the line of play from the middle of the body, in lengths of the club
(arms and club together, seen from above; common practice)."""
SWING_ACROSS_PER_CLUB_LENGTH = 1.2
"""The same across the line of play: the plane of the swing is inclined (common practice)."""


@dataclass(frozen=True)
class Footprint:
    """Lie, stance and swing as areas about a ball at (0, 0), turned to the direction of play.

    Attributes:
        area: all of it, as one polygon or several.
        parts: the parts by name (``lie``, ``stance``, ``swing``), for pictures and for comparing interference.
    """

    area: BaseGeometry
    parts: tuple[tuple[str, BaseGeometry], ...] = ()

    @cached_property
    def outline(self) -> Outline:
        """The edges of the area."""
        return Outline(self.area)

    @cached_property
    def pieces(self) -> tuple[Floats, ...]:
        """Convex pieces of the area, each anticlockwise.

        Raises:
            BadPlace: if the area has a hole.
        """
        pieces: list[Floats] = []
        for polygon in shapely.get_parts(self.area):
            if len(polygon.interiors):
                raise BadPlace("A footprint cannot have a hole; fill it.")
            pieces.extend(convex_pieces(shapely.get_coordinates(orient(polygon).exterior)[:-1]))
        return tuple(pieces)

    @cached_property
    def sides(self) -> tuple[tuple[Floats, NDArray[np.bool_]], ...]:
        """The pieces, each with a mark for every side: an edge of the area, or only a cut between pieces."""
        edges = {tuple(one) for one in self.outline.edges.tolist()}
        return tuple(
            (piece, np.array([(*one, *other) in edges for one, other in _sides(piece)]))
            for piece in self.pieces
        )

    @cached_property
    def inner_points(self) -> tuple[XY, ...]:
        """One point inside each separate part of the area."""
        inner = [shapely.point_on_surface(part) for part in shapely.get_parts(self.area)]
        return tuple((float(one.x), float(one.y)) for one in inner)

    @cached_property
    def radius(self) -> float:
        """Metres from the ball to the farthest point of the area."""
        points = shapely.get_coordinates(self.area)
        return float(np.hypot(points[:, 0], points[:, 1]).max())

    def at(self, place: XY) -> BaseGeometry:
        """Return the area with the ball at a place."""
        return shapely.transform(self.area, lambda points: points + np.asarray(place))


def footprint(
    *,
    right_handed: bool,
    direction: float,
    club: float = USUAL_STROKE_CLUB,
    stance: bool = True,
    swing: bool = True,
    tall: bool = False,
) -> Footprint:
    """Return the footprint of a stroke.

    Args:
        right_handed: whether the stroke is right-handed: the player stands to the left of the ball, seen
            in the direction of play.
        direction: of play, radians anticlockwise from east.
        club: metres, the length of the club that would be used.
        stance: whether the stance counts.
        swing: whether the swing counts.
        tall: whether the condition stands up (a wall, a hut): then the whole swing counts; a path or
            ground under repair meets only the part of the swing near the ground.
    """
    side = 1.0 if right_handed else -1.0
    # Until it is turned, play goes along +x and a right-handed player stands on the +y side.
    toes = TOES_PER_CLUB_LENGTH * club
    parts: list[tuple[str, shapely.Polygon]] = [("lie", _disc(BALL_RADIUS))]
    feet = shapely.box(-STANCE_WIDTH / 2, toes, STANCE_WIDTH / 2, toes + FOOT_LENGTH)
    if stance:
        parts.append(("stance", feet))
    if swing:
        parts.append(("swing", _full_swing(club, toes) if tall else _low_swing()))
    turned = tuple((name, _turned(shape, side, direction)) for name, shape in parts)
    return Footprint(shapely.union_all([shape for _, shape in turned]), turned)


def facing(ball: XY, target: XY) -> float:
    """Return the direction of play from a ball to a target, radians anticlockwise from east."""
    return atan2(target[1] - ball[1], target[0] - ball[0])


def _sides(piece: Floats) -> list[tuple[list[float], list[float]]]:
    points = piece.tolist()
    return list(zip(points, points[1:] + points[:1], strict=True))


def _disc(radius: float, corners: int = 16) -> shapely.Polygon:
    """Return a polygon around a circle, so that no part of a ball is left out."""
    angles = np.arange(corners) * 2 * pi / corners
    outer = radius / cos(pi / corners)
    return shapely.Polygon(np.column_stack([outer * np.cos(angles), outer * np.sin(angles)]))


def _low_swing() -> shapely.Polygon:
    half = LOW_SWING_WIDTH / 2
    return shapely.box(-LOW_SWING, -half, LOW_SWING, half)


def _full_swing(club: float, toes: float, corners: int = 24) -> shapely.Polygon:
    angles = np.arange(corners) * 2 * pi / corners
    middle = toes / 2
    oval = np.column_stack(
        [
            SWING_ALONG_PER_CLUB_LENGTH * club * np.cos(angles),
            middle + SWING_ACROSS_PER_CLUB_LENGTH * club * np.sin(angles),
        ]
    )
    return shapely.Polygon(oval)


def _turned(shape: shapely.Polygon, side: float, direction: float) -> shapely.Polygon:
    c, s = cos(direction), sin(direction)
    turn = np.array([[c, s], [-side * s, side * c]])
    return orient(shapely.transform(shape, lambda points: points @ turn))
