"""Facts about penalty areas."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class Colour(Enum):
    """How the penalty area is marked (Definition of penalty area)."""

    RED = "red"
    YELLOW = "yellow"


class AfterPenaltyArea(Enum):
    """What became of a ball played from a penalty area (Rule 17.2)."""

    SAME_PENALTY_AREA = "same_penalty_area"
    ANOTHER_PENALTY_AREA = "another_penalty_area"
    LOST_OUTSIDE = "lost_outside"
    OUT_OF_BOUNDS = "out_of_bounds"
    UNPLAYABLE_OUTSIDE = "unplayable_outside"


class PenaltyAreaAction(Enum):
    """What was done before the stroke at a ball in a penalty area."""

    TOUCHED_GROUND_OR_WATER = "touched_ground_or_water"
    REMOVED_LOOSE_IMPEDIMENT = "removed_loose_impediment"
    REMOVED_MOVABLE_OBSTRUCTION = "removed_movable_obstruction"
    PLAYED_MOVING_BALL_IN_WATER = "played_moving_ball_in_water"


class WrongPointKnown(Enum):
    """When it became known that the point used as the crossing point was wrong."""

    BEFORE_NOT_PLAYED = "before_not_played"
    BEFORE_BUT_PLAYED = "before_but_played"
    AFTER_STROKE = "after_stroke"


class MovedTo(Enum):
    """Where natural forces took a ball that had been dropped, placed or replaced."""

    SAME_AREA = "same_area"
    PENALTY_AREA = "penalty_area"
    ANOTHER_AREA = "another_area"
    OUT_OF_BOUNDS = "out_of_bounds"


COLOURS = {
    Colour.RED: "red, or not marked with a colour",
    Colour.YELLOW: "yellow",
}

penalty_area_colour = choice(
    "penalty_area_colour",
    "Is the penalty area red or yellow?",
    COLOURS,
    help="Look at the stakes or lines, or the Committee's notice. With no colour given it counts as red.",
    source="Definitions: penalty area",
    decided_by=DecidedBy.MAP,
)

first_penalty_area_colour = choice(
    "first_penalty_area_colour",
    "Is the penalty area that the ball was played from red or yellow?",
    COLOURS,
    help="Look at the stakes or lines, or the Committee's notice. With no colour given it counts as red.",
    source="17.2",
    decided_by=DecidedBy.MAP,
)

found_in_penalty_area = yes_no(
    "found_in_penalty_area",
    "Has the ball been found in the penalty area, within three minutes of beginning to search?",
    help="Found and identified there. Found later: answer no; it may not be played, and counts as not found.",
    source="17.1c",
)

certain_in_penalty_area = yes_no(
    "certain_in_penalty_area",
    "Is it known or virtually certain (about 95 %) that the ball is in the penalty area?",
    help="Weigh where it was seen, the ground, the water, the rough around it. Likely is not enough.",
    source="17.1c",
)

after_penalty_area = choice(
    "after_penalty_area",
    "What became of the ball played from the penalty area?",
    {
        AfterPenaltyArea.SAME_PENALTY_AREA: "it came to rest in the same penalty area, or never left it",
        AfterPenaltyArea.ANOTHER_PENALTY_AREA: "it came to rest in another penalty area",
        AfterPenaltyArea.LOST_OUTSIDE: "it is lost outside a penalty area",
        AfterPenaltyArea.OUT_OF_BOUNDS: "it is out of bounds",
        AfterPenaltyArea.UNPLAYABLE_OUTSIDE: "it lies outside, and the player treats it as unplayable",
    },
    help="A ball not found, but virtually certain to be in a penalty area, counts as lying there.",
    source="17.2",
)

penalty_area_action = choice(
    "penalty_area_action",
    "What was done while the ball lay in the penalty area?",
    {
        PenaltyAreaAction.TOUCHED_GROUND_OR_WATER: "ground, water or plants were touched (club, hand, practice swing)",
        PenaltyAreaAction.REMOVED_LOOSE_IMPEDIMENT: "a loose impediment was removed",
        PenaltyAreaAction.REMOVED_MOVABLE_OBSTRUCTION: "a movable obstruction was removed",
        PenaltyAreaAction.PLAYED_MOVING_BALL_IN_WATER: "a stroke was made at the ball moving in water",
    },
    help="By the player or caddie (or partner), before the stroke.",
    source="17.1b",
)

improved_in_penalty_area = yes_no(
    "improved_in_penalty_area",
    "Did it improve the conditions affecting the stroke (other than by lightly grounding the club)?",
    help="Lie, area of stance or swing, line of play: was something bent, broken, pressed down or cleared?",
    source="8.1a",
)

rested_in_relief_area = yes_no(
    "rested_in_relief_area",
    "Had the ball come to rest in the relief area, or on its spot, before it moved?",
    help="At rest means it had stopped, however briefly, after being dropped, placed or replaced.",
    source="14.3c(1)",
)

moved_by_nature_to = choice(
    "moved_by_nature_to",
    "Where did wind, water or gravity then take the ball?",
    {
        MovedTo.SAME_AREA: "it stayed in the same area of the course",
        MovedTo.PENALTY_AREA: "into a penalty area",
        MovedTo.ANOTHER_AREA: "into another area of the course (not a penalty area)",
        MovedTo.OUT_OF_BOUNDS: "out of bounds",
    },
    help="The player, caddie or an outside influence did not cause it.",
    source="9.3",
    decided_by=DecidedBy.MAP,
)

certain_when_relief_taken = yes_no(
    "certain_when_relief_taken",
    "When the ball was dropped, was the original known or virtually certain to be in the penalty area?",
    help="Judge it by what was known then, not by where the ball was found later.",
    source="17.1c",
)

wrong_point_known = choice(
    "wrong_point_known",
    "When did it become known that the ball had crossed the edge somewhere else?",
    {
        WrongPointKnown.BEFORE_NOT_PLAYED: "before the dropped ball was played; it has not been played yet",
        WrongPointKnown.BEFORE_BUT_PLAYED: "before, and the dropped ball was played all the same",
        WrongPointKnown.AFTER_STROKE: "only after the dropped ball was played",
    },
    help="For example the original ball is found where it could not have come from the point used.",
    source="Clarification 17.1d(3)/2",
)

crossing_point_estimated_with_care = yes_no(
    "crossing_point_estimated_with_care",
    "Had the player made a reasonable effort to estimate where the ball crossed the edge?",
    help="With what could be known there and then: own view, other players, spectators, the shape of the edge.",
    source="1.3b(2)",
)

last_stroke_from_penalty_area = yes_no(
    "last_stroke_from_penalty_area",
    "Was the last stroke at the ball made from inside a penalty area?",
    help="Where the ball lay for its last stroke. After a stroke from a penalty area there are more options.",
    source="17.2",
    decided_by=DecidedBy.MAP,
    usual=False,
)
