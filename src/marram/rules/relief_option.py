"""A relief option as the Rules describe it: reference point, size, limits. No map is needed."""

from dataclasses import dataclass
from enum import Enum


class ReliefKind(Enum):
    """The kinds of relief."""

    STROKE_AND_DISTANCE = "stroke_and_distance"
    BACK_ON_THE_LINE = "back_on_the_line"
    LATERAL = "lateral"
    FREE = "free"
    MAXIMUM_AVAILABLE = "maximum_available"
    EXTENDED = "extended"
    """The Local Rule alternative to stroke and distance (Model Local Rule E-5)."""
    DROPPING_ZONE = "dropping_zone"
    UNDER_WHERE_IT_CAME_TO_REST = "under_where_it_came_to_rest"
    """The spot under a ball at rest in or on something that may not be played from."""
    PROVISIONAL = "provisional"
    """Going on with the provisional ball, already played under stroke and distance."""
    NEAREST_SPOT = "nearest_spot"
    """Placing on the nearest spot that will do, where a ball cannot go back to its own (Rules 14.2d and e)."""
    PREFERRED_LIE = "preferred_lie"
    """Placing once near the spot, within the length the notice gives (Model Local Rule E-3)."""
    REPLAY = "replay"
    """Playing again, without penalty, where a stroke that does not count was made."""
    COMPLETE_RELIEF_OUTSIDE = "complete_relief_outside"
    """For a penalty stroke: complete relief outside the bunker or penalty area (Model Local Rule F-23)."""


class Reference(Enum):
    """The point, spot or line that a relief area is measured from."""

    PREVIOUS_STROKE = "previous_stroke"
    """Where the previous stroke was made: anywhere in the teeing area, a spot on the green, else estimated."""
    LAST_STROKE_OUTSIDE_PENALTY_AREA = "last_stroke_outside_penalty_area"
    """Where the last stroke from outside a penalty area was made (Rule 17.2)."""
    CROSSING_POINT = "crossing_point"
    """Where the ball last crossed the edge of the penalty area (estimated)."""
    LINE_THROUGH_CROSSING_POINT = "line_through_crossing_point"
    """The line from the hole back through where the ball last crossed the edge."""
    BALL = "ball"
    """The spot of the original ball."""
    LINE_THROUGH_BALL = "line_through_ball"
    """The line from the hole back through the spot of the original ball."""
    NEAREST_POINT = "nearest_point"
    """The nearest point of complete relief."""
    MAXIMUM_POINT = "maximum_point"
    """The point of maximum available relief."""
    BEHIND_EMBEDDED_BALL = "behind_embedded_ball"
    """The spot right behind where the ball is embedded."""
    NEAREST_SPOT_IN_GENERAL_AREA = "nearest_spot_in_general_area"
    """Embedded ball since 2023: the nearest spot in the general area not nearer the hole than the spot behind."""
    UNDER_BALL = "under_ball"
    """The point directly under where the ball came to rest in or on something."""
    UNDER_EDGE_CROSSED = "under_edge_crossed"
    """The point directly under where an unfound ball last crossed the edge of the movable obstruction (15.2b)."""
    ESTIMATED_SPOT = "estimated_spot"
    """The estimated spot where a deliberately deflected ball would have come to rest."""
    TWO_POINTS = "two_points"
    """E-5: the estimated ball reference point and the fairway reference point."""
    DROPPING_ZONE = "dropping_zone"
    PROVISIONAL_BALL = "provisional_ball"
    OPPOSITE_EDGE = "opposite_edge"
    """B-2: the point across the penalty area as far from the hole as where the ball last crossed its edge."""


class Limit(Enum):
    """The limits of a relief area."""

    NOT_NEARER = "not_nearer"
    """Not nearer the hole than the reference point."""
    NOT_NEARER_THAN_CROSSING_POINT = "not_nearer_than_crossing_point"
    NOT_NEARER_THAN_BALL = "not_nearer_than_ball"
    """Not nearer the hole than the spot of the original ball."""
    SAME_AREA_AS_REFERENCE = "same_area_as_reference"
    """In the same area of the course as the reference point."""
    SAME_AREA_AS_FIRST_TOUCHED = "same_area_as_first_touched"
    """In the same area of the course that the ball first touched when dropped."""
    GENERAL_AREA = "general_area"
    IN_BUNKER = "in_bunker"
    OUTSIDE_BUNKER = "outside_bunker"
    """Outside that bunker, in any area of the course."""
    IN_PENALTY_AREA = "in_penalty_area"
    OUTSIDE_PENALTY_AREA = "outside_penalty_area"
    """Outside that penalty area, in any area of the course."""
    ON_GREEN_OR_GENERAL_AREA = "on_green_or_general_area"
    COMPLETE_RELIEF = "complete_relief"
    """No interference by the condition is left."""
    GENERAL_AREA_OR_TEE = "general_area_or_tee"
    TEEING_AREA = "teeing_area"
    WITHIN_DROPPING_ZONE = "within_dropping_zone"


class Setting(Enum):
    """How the ball is put into play."""

    DROP = "drop"
    PLACE = "place"
    AS_THE_SPOT_ALLOWS = "as_the_spot_allows"
    """From the teeing area: played from anywhere inside it; from the green: placed; else dropped."""
    PLAY = "play"
    DROP_FROM_SHOULDER = "drop_from_shoulder"
    """Former Rules, until 2018."""
    AS_THE_SPOT_ALLOWED_BEFORE_2019 = "as_the_spot_allowed_before_2019"
    """Former Rules, until 2018: teed inside the teeing ground, placed on the green, else dropped on the spot."""


@dataclass(frozen=True, slots=True)
class ReliefOption:
    """One way to take relief.

    Attributes:
        kind: the kind of relief.
        citation: the provision that gives it.
        reference: what the relief area is measured from.
        club_lengths: the size of the relief area; 0 for a spot; ``None`` where it is not so measured.
        limits: the limits of the relief area.
        penalty: penalty strokes the option costs.
        setting: how the ball is put into play.
        dropped_on_line: back on the line since 2023: the ball is dropped on the line, and the spot where it
            first touches the ground sets the relief area (one club-length in any direction); in 2019 the
            player chose a reference point on the line.
        clear_of_sight: the condition must be out of the line of sight too (Model Local Rule F-23).
    """

    kind: ReliefKind
    citation: str
    reference: Reference
    club_lengths: float | None
    limits: tuple[Limit, ...]
    penalty: int = 0
    setting: Setting = Setting.DROP
    dropped_on_line: bool = False
    clear_of_sight: bool = False
