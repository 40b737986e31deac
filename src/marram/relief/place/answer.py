"""What drawing a relief option can end in: an area, places that are still needed, or none, and why."""

from dataclasses import dataclass
from enum import Enum

from marram.relief.areas.relief_area import ReliefArea
from marram.rules.relief_option import ReliefOption


class Place(Enum):
    """A place or fact that has to be given before an option can be drawn."""

    BALL = "ball"
    """The spot of the original ball, estimated if need be."""
    CROSSING_POINT = "crossing_point"
    """Where the ball last crossed the edge of the penalty area, estimated."""
    PREVIOUS_SPOT = "previous_spot"
    """Where the previous stroke was made."""
    LAST_STROKE_OUTSIDE = "last_stroke_outside"
    """Where the last stroke from outside a penalty area was made."""
    ESTIMATED_SPOT = "estimated_spot"
    """Where a ball deliberately deflected or stopped would have come to rest, estimated."""
    TEE_MARKERS = "tee_markers"
    """Where the tee-markers stand."""
    CONDITION = "condition"
    """The outline of the condition that relief is taken from."""
    HANDEDNESS = "handedness"
    """Whether the player would play the stroke right-handed or left-handed."""
    BOUNDARY_POINT = "boundary_point"
    """Where a ball out of bounds last crossed the edge of the course, estimated (Model Local Rule E-5)."""
    FAIRWAY = "fairway"
    """The outline of the fairway of the hole being played."""
    DROPPING_ZONE = "dropping_zone"
    """Which dropping zone."""
    PROVISIONAL_BALL = "provisional_ball"
    """Where the provisional ball lies."""
    OPPOSITE_EDGE = "opposite_edge"
    """The point across the penalty area as far from the hole as where the ball last crossed its edge (B-2)."""


class Why(Enum):
    """Why no relief can be taken under an option."""

    NO_NEAREST_POINT = "no_nearest_point"
    """There is no point of complete relief in the required area of the course, not nearer the hole."""
    NO_ROOM = "no_room"
    """No place fulfils all limits of the relief area."""
    NO_FAIRWAY_POINT = "no_fairway_point"
    """No fairway (and no teeing area) of the hole lies as far from the hole as the ball."""
    COMPLETE_RELIEF_AVAILABLE = "complete_relief_available"
    """There is a point of complete relief, so that one is the reference point."""
    NO_INTERFERENCE = "no_interference"
    """The condition does not interfere with the lie, stance or swing given: there is nothing to take relief from."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """An option, drawn. Several areas mean that the player has that choice (a tie of nearest points)."""

    option: ReliefOption
    areas: tuple[ReliefArea, ...]


@dataclass(frozen=True, slots=True)
class NeedsPlace:
    """An option that cannot be drawn before these places are given. Nothing is guessed."""

    option: ReliefOption
    needs: tuple[Place, ...]


@dataclass(frozen=True, slots=True)
class NoRelief:
    """An option that gives no place here, and why."""

    option: ReliefOption
    why: Why


Answer = Drawn | NeedsPlace | NoRelief
"""What drawing an option can end in."""
