"""How a relief area is constructed: the points, lines and arcs to draw it, tape it out and explain it."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum
from math import atan2, degrees, hypot

from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.tolerance import YARD


class Role(Enum):
    """What a mark of the construction stands for."""

    HOLE = "hole"
    BALL = "ball"
    """The spot of the original ball."""
    REFERENCE = "reference"
    """The reference point."""
    SPOT = "place_here"
    """The spot on which a ball is placed (Rules 14.2 and 16.1d)."""
    CROSSING_POINT = "crossing_point"
    PREVIOUS_SPOT = "previous_spot"
    FAIRWAY_POINT = "fairway_point"
    BOUNDARY_POINT = "boundary_point"
    """Where a ball out of bounds last crossed the edge of the course."""
    FIRST_TOUCHED = "first_touched"
    """Where the dropped ball first touches the ground."""
    EXAMPLE_SPOT = "example_spot"
    """An example of where the player may drop or choose; any other on the line will do."""
    LINE_TO_HOLE = "line_to_hole"
    DROP_LINE = "drop_line"
    """The line from the hole back through a point, as far as a ball may be dropped on it."""
    REFERENCE_LINE = "reference_line"
    """The line on which the player chose a reference point in 2019."""
    CLUB_LENGTHS = "club_lengths"
    """The arc of the club-lengths."""
    NOT_NEARER = "not_nearer"
    """The arc about the hole that must not be crossed."""
    CORRIDOR_EDGE = "corridor_edge"
    SHIFT = "shift"
    """From the ball to the nearest point of complete relief."""
    STANCE = "stance"
    """Stance, swing and lie at the nearest point."""
    CONDITION = "condition"
    TEEING_AREA = "teeing_area"
    TEE_LINE = "tee_line"
    """The line of the tee-markers, the front of the teeing area."""
    DROPPING_ZONE = "dropping_zone"


@dataclass(frozen=True, slots=True)
class PointMark:
    """A point to mark on the ground."""

    role: Role
    at: XY


@dataclass(frozen=True, slots=True)
class LineMark:
    """A straight line to stretch."""

    role: Role
    start: XY
    end: XY


@dataclass(frozen=True, slots=True)
class ArcMark:
    """An arc to swing: centre, radius in metres, from and to in radians anticlockwise from east."""

    role: Role
    centre: XY
    radius: float
    start: float
    end: float


@dataclass(frozen=True, slots=True)
class ShapeMark:
    """A closed outline, as points, with the islands in it."""

    role: Role
    points: tuple[XY, ...]
    holes: tuple[tuple[XY, ...], ...] = ()


Mark = PointMark | LineMark | ArcMark | ShapeMark


@dataclass(frozen=True, slots=True)
class Measure:
    """A distance to check on the ground.

    Attributes:
        start: what it is measured from.
        end: what it is measured to; for ``CLUB_LENGTHS`` the radius of the area.
        metres: the distance.
        bearing: of the end seen from the start, degrees clockwise from the map's north; ``None`` for a radius.
    """

    start: Role
    end: Role
    metres: float
    bearing: float | None = None

    @property
    def yards(self) -> float:
        """The distance in yards."""
        return self.metres / YARD


def distance(one: XY, other: XY) -> float:
    """Return the distance of two places in metres."""
    return hypot(other[0] - one[0], other[1] - one[1])


def bearing(start: XY, end: XY) -> float:
    """Return the direction of ``end`` from ``start``, degrees clockwise from north, 0 to below 360."""
    return degrees(atan2(end[0] - start[0], end[1] - start[1])) % 360.0


def measure(start: Role, start_at: XY, end: Role, end_at: XY) -> Measure:
    """Return the distance and bearing from one mark to another."""
    return Measure(start, end, distance(start_at, end_at), bearing(start_at, end_at))


def shape_marks(role: Role, outlines: Iterable[Outline]) -> tuple[ShapeMark, ...]:
    """Return areas as marks, with the islands in them."""
    return tuple(ShapeMark(role, ring, islands) for one in outlines for ring, islands in one.rings)
