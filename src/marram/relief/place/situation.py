"""What is known about one situation on the ground, and what a relief option still needs."""

from dataclasses import dataclass, replace
from datetime import date
from enum import Enum
from functools import cached_property

from marram.course.model import Feature
from marram.errors import BadPlace
from marram.relief.geometry.area import ReliefArea
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.interference.shape import Footprint
from marram.relief.place.ground import EDGE_REACH, Ground, feature_at, nearest_edge
from marram.relief.place.player import Player
from marram.rules.facts.ball import Area
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


@dataclass(frozen=True)
class Situation:
    """Everything given about one situation, in local metres.

    Attributes:
        ground: the ground of the hole being played.
        player: the player.
        played_on: the day of play.
        ball: the spot of the original ball; for a ball out of bounds where it last crossed the boundary.
        entry: where the ball last crossed the edge of the penalty area.
        previous: where the previous stroke was made.
        opposite: the point on the opposite edge of the penalty area (Model Local Rule B-2).
        last_outside: where the last stroke from outside a penalty area was made.
        estimated: where a ball deliberately deflected or stopped would have come to rest.
        conditions: what relief is taken from.
        footprint: lie, stance and swing about the ball, facing the direction of play.
        tee_markers: where the two tee-markers stand.
        dropping_zone: the dropping zone to use.
        provisional: where the provisional ball lies.
        dropped_at: back on the line: the spot the ball touched (2023) or the point chosen (2019).
        assumed: what was taken for granted, as message keys.
        line_of_play: whether the line of play counts as interference (only on the putting green).
        line_of_sight: whether the line of sight counts (Model Local Rule F-23).
    """

    ground: Ground
    player: Player
    played_on: date
    ball: XY | None = None
    entry: XY | None = None
    previous: XY | None = None
    opposite: XY | None = None
    last_outside: XY | None = None
    estimated: XY | None = None
    conditions: tuple[Outline, ...] = ()
    footprint: Footprint | None = None
    tee_markers: tuple[XY, XY] | None = None
    dropping_zone: Outline | None = None
    provisional: XY | None = None
    dropped_at: XY | None = None
    line_of_play: bool = False
    line_of_sight: bool = False
    assumed: tuple[str, ...] = ()

    @property
    def hole(self) -> XY:
        """Where the hole is cut."""
        return self.ground.location

    def penalty_area(self) -> tuple[Feature, Outline] | None:
        """Return the penalty area the ball is in: at the crossing point, else at the ball."""
        if self.entry is not None:
            near = nearest_edge(self.ground.penalty_areas, self.entry)
            return near[1] if near else None
        return feature_at(self.ground.penalty_areas, self.ball, BALL_RADIUS) if self.ball else None

    def bunker(self) -> tuple[Feature, Outline] | None:
        """Return the bunker the ball is in."""
        return feature_at(self.ground.bunkers, self.ball, BALL_RADIUS) if self.ball else None

    @cached_property
    def ball_area(self) -> Area | None:
        """The area of the course the ball is in (Rule 2.2c); ``None`` out of bounds or unknown."""
        return self.ground.area_at(self.ball, BALL_RADIUS) if self.ball else None

    def on_edge(self) -> "Situation":
        """Return the situation with the crossing point on the edge of the penalty area.

        Raises:
            BadPlace: if no penalty area has an edge near the crossing point given.
        """
        if self.entry is None:
            return self
        near = nearest_edge(self.ground.penalty_areas, self.entry)
        if near is None or near[0] > EDGE_REACH:
            raise BadPlace(
                f"The crossing point ({self.entry[0]:.2f}, {self.entry[1]:.2f}) is not on the edge of a "
                f"penalty area, nor within {EDGE_REACH:g} m of one. Mark where the ball last crossed the edge."
            )
        away, (_, outline) = near
        moved = outline.nearest_on_edge(*self.entry)
        said = self.assumed if away < 0.01 else (*self.assumed, "relief.crossing_point_moved_onto_edge")
        return replace(self, entry=moved, assumed=said)
