"""Facts about a ball that is lost or out of bounds, and about provisional balls."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, number, yes_no


class Whereabouts(Enum):
    """What is known or virtually certain of a ball that has not been found."""

    NOT_KNOWN = "not_known"
    OUT_OF_BOUNDS = "out_of_bounds"
    PENALTY_AREA = "penalty_area"
    ABNORMAL_COURSE_CONDITION = "abnormal_course_condition"
    PENALTY_AREA_OR_CONDITION = "penalty_area_or_condition"
    OUTSIDE_INFLUENCE = "outside_influence"
    MOVABLE_OBSTRUCTION = "movable_obstruction"
    DELIBERATELY_STOPPED = "deliberately_stopped"


class ProvisionalState(Enum):
    """Whether a provisional ball was played, and what became of it."""

    NOT_PLAYED = "not_played"
    FOUND = "found"
    LOST_OR_OUT = "lost_or_out"
    SECOND_FOUND = "second_found"
    """Two were played from the same spot, each for the one before: the first is gone, the second at hand."""
    BOTH_LOST_OR_OUT = "both_lost_or_out"


AT_HAND = (ProvisionalState.FOUND, ProvisionalState.SECOND_FOUND)
"""A provisional ball with which the hole is gone on with once the original is lost or out of bounds."""


class OriginalBall(Enum):
    """What is known of the original ball after a provisional ball was played."""

    NOT_FOUND_YET = "not_found_yet"
    FOUND_ON_COURSE = "found_on_course"
    FOUND_IN_PENALTY_AREA = "found_in_penalty_area"
    CERTAIN_IN_PENALTY_AREA = "certain_in_penalty_area"
    LOST = "lost"
    OUT_OF_BOUNDS = "out_of_bounds"
    IN_CONDITION = "in_condition"
    MOVED_BY_OUTSIDE_INFLUENCE = "moved_by_outside_influence"
    IN_MOVABLE_OBSTRUCTION = "in_movable_obstruction"
    IN_THE_HOLE = "in_the_hole"


class StrokeAtProvisional(Enum):
    """Whether a stroke has made the provisional ball the ball in play, or was made at a wrong ball."""

    NONE = "none"
    NEARER_BEFORE = "nearer_before"
    AFTER = "after"


class SecondBallReason(Enum):
    """What was known when another ball was played from where the previous stroke was made."""

    MIGHT_BE_LOST_OR_OUT = "might_be_lost_or_out"
    ONLY_IN_PENALTY_AREA = "only_in_penalty_area"
    ALREADY_LOST = "already_lost"
    NO_DOUBT = "no_doubt"


class Announced(Enum):
    """How the play of a provisional ball was announced (Rule 18.3b)."""

    BEFORE = "before"
    NOBODY_NEAR = "nobody_near"
    NOT_CLEARLY = "not_clearly"


class SecondBall(Enum):
    """What has been done with another ball at the place of the previous stroke."""

    NOTHING_YET = "nothing_yet"
    TEED = "teed"
    DROPPED_OR_PLACED = "dropped_or_placed"
    STROKE_MADE = "stroke_made"


class CrossedArea(Enum):
    """Where the ball last crossed the edge of the abnormal course condition."""

    GENERAL_AREA = "general_area"
    BUNKER = "bunker"
    PUTTING_GREEN = "putting_green"


class BallsAlike(Enum):
    """How many of two balls that cannot be told apart were found on the course (Rule 18.3c(2))."""

    NONE = "none"
    ONE = "one"
    BOTH = "both"


whereabouts = choice(
    "whereabouts",
    "What is known or virtually certain (about 95 %) of the ball that was not found?",
    {
        Whereabouts.NOT_KNOWN: "nothing that certain",
        Whereabouts.OUT_OF_BOUNDS: "it is out of bounds",
        Whereabouts.PENALTY_AREA: "it is in a penalty area",
        Whereabouts.ABNORMAL_COURSE_CONDITION: "it is in or on an abnormal course condition",
        Whereabouts.PENALTY_AREA_OR_CONDITION: "it is in a penalty area or a condition beside it, either as likely",
        Whereabouts.OUTSIDE_INFLUENCE: "an outside influence moved or took it at rest, or another player played it by mistake",
        Whereabouts.MOVABLE_OBSTRUCTION: "it is in or on a movable obstruction",
        Whereabouts.DELIBERATELY_STOPPED: "a person deliberately deflected or stopped it in motion",
    },
    help="Use all evidence to be had within the three minutes of search. Likely is not enough.",
    source="18.2b, Definitions: known or virtually certain",
)

provisional_state = choice(
    "provisional_state",
    "Was a provisional ball played, and what became of it?",
    {
        ProvisionalState.NOT_PLAYED: "none was played",
        ProvisionalState.FOUND: "one was played (or two), and it (or the first) is at hand on the course",
        ProvisionalState.LOST_OR_OUT: "one was played, and it too is lost or out of bounds",
        ProvisionalState.SECOND_FOUND: "two were played; the first is lost or out of bounds, and the second is at hand",
        ProvisionalState.BOTH_LOST_OR_OUT: "two were played, and both are lost or out of bounds",
    },
    help="Announced as a provisional ball, and played from where the previous stroke was made.",
    source="18.3",
)

all_of_ball_out_of_bounds = yes_no(
    "all_of_ball_out_of_bounds",
    "Does all of the ball lie outside the boundary edge?",
    help="Edge: course side of a line, or of stakes or a fence at ground level. Any part inside: in bounds.",
    source="18.2a(2)",
    decided_by=DecidedBy.MAP,
)

search_minutes = number(
    "search_minutes",
    "How many minutes after the search began was the ball found?",
    help="The search begins when the player, caddie or partner starts. Time away for good reason does not count.",
    source="18.2a(1)",
    unit="minutes",
    whole=False,
)

identified_in_reasonable_time = yes_no(
    "identified_in_reasonable_time",
    "Was it promptly identified as the player's ball (with reasonable time to get there)?",
    help="Identifying may end after the three minutes, if the ball was found within them.",
    source="18.2a(1)",
)

late_ball_played = yes_no(
    "late_ball_played",
    "Has the player made a stroke at the ball that was lost?",
    help="Ask the player and the marker.",
    source="6.3c",
)

crossed_area = choice(
    "crossed_area",
    "In which area of the course did the ball last cross the edge of the condition?",
    {
        CrossedArea.GENERAL_AREA: "the general area",
        CrossedArea.BUNKER: "a bunker",
        CrossedArea.PUTTING_GREEN: "the putting green",
    },
    help="Estimate the point; it serves as the spot of the ball for finding the relief area.",
    source="16.1e",
    decided_by=DecidedBy.MAP,
)

second_ball_reason = choice(
    "second_ball_reason",
    "What did the player know of the original ball when the other ball was played?",
    {
        SecondBallReason.MIGHT_BE_LOST_OR_OUT: "it might be lost outside a penalty area, or out of bounds",
        SecondBallReason.ONLY_IN_PENALTY_AREA: "if not found, it could only be in a penalty area",
        SecondBallReason.ALREADY_LOST: "it was lost already: three minutes were over",
        SecondBallReason.NO_DOUBT: "there was no doubt: it was on the course and would be found",
    },
    help="Only what the player knew at that time counts.",
    source="18.3a",
)

announced = choice(
    "announced",
    "Was it announced as a provisional ball before the stroke?",
    {
        Announced.BEFORE: "yes: 'provisional', or other words that made it clear",
        Announced.NOBODY_NEAR: "nobody was near to hear it, and others were told as soon as possible",
        Announced.NOT_CLEARLY: "no, or only 'another ball', 'playing again' or the like",
    },
    help="Others nearby must be able to hear it. What the player meant is not enough.",
    source="18.3b",
)

second_ball = choice(
    "second_ball",
    "What has been done with another ball where the previous stroke was made?",
    {
        SecondBall.NOTHING_YET: "nothing yet",
        SecondBall.TEED: "it was teed, dropped or placed in the teeing area, but not played",
        SecondBall.DROPPED_OR_PLACED: "it was dropped or placed elsewhere on the course to play it",
        SecondBall.STROKE_MADE: "it was played",
    },
    help="Not a provisional ball, and not a second ball under Rule 14.7b or 20.1c(3).",
    source="18.1",
)

lifted_to_play_again = yes_no(
    "lifted_to_play_again",
    "When the ball was lifted, did the player already mean to play again from the previous spot?",
    help="Ask what was said or done at that time.",
    source="Clarification 18.1/2",
)

original_ball = choice(
    "original_ball",
    "What is known of the original ball?",
    {
        OriginalBall.NOT_FOUND_YET: "not found yet, and three minutes are not over",
        OriginalBall.FOUND_ON_COURSE: "found within three minutes on the course, not in a penalty area",
        OriginalBall.FOUND_IN_PENALTY_AREA: "found within three minutes in a penalty area",
        OriginalBall.CERTAIN_IN_PENALTY_AREA: "not found, but virtually certain to be in a penalty area",
        OriginalBall.LOST: "lost: not found in three minutes",
        OriginalBall.OUT_OF_BOUNDS: "out of bounds",
        OriginalBall.IN_CONDITION: "not found, but virtually certain to be in an abnormal course condition",
        OriginalBall.MOVED_BY_OUTSIDE_INFLUENCE: "not found, but virtually certain to have been moved or taken by an outside influence",
        OriginalBall.IN_MOVABLE_OBSTRUCTION: "not found, but virtually certain to be in or on a movable obstruction",
        OriginalBall.IN_THE_HOLE: "it is in the hole",
    },
    help="Three minutes run from when the player, caddie or partner began to search.",
    source="18.3c",
)

stroke_at_provisional = choice(
    "stroke_at_provisional",
    "What strokes were made at the provisional ball?",
    {
        StrokeAtProvisional.NONE: "none, or only from as far from the hole as the original's estimated spot, or farther",
        StrokeAtProvisional.NEARER_BEFORE: "one from nearer the hole than that spot, before the original was found or its place certain",
        StrokeAtProvisional.AFTER: "one after the original was found or its place certain",
    },
    help="Only a stroke counts; dropping or lifting it nearer the hole does not yet. Go by what was known when it was made.",
    source="18.3c(2)",
)

nearer_stroke_at_provisional = yes_no(
    "nearer_stroke_at_provisional",
    "Was the provisional ball played from nearer the hole than the original's estimated spot?",
    help="Compare distances to the hole. Only a stroke before the original was found, or its place certain, counts; "
    "taking a holed provisional ball from the hole counts like one.",
    source="18.3c(2)",
    decided_by=DecidedBy.MAP,
)

lifted_from_hole_first = yes_no(
    "lifted_from_hole_first",
    "Was the provisional ball taken out of the hole before the original was found?",
    help="Establish the order in which the two happened.",
    source="Clarification 18.3c(2)/4",
)

provisional_lift_allowed = yes_no(
    "provisional_lift_allowed",
    "Did a Rule allow the provisional ball to be lifted (e.g. marked on the green, interference, relief)?",
    help="Picking it up because the original seemed to be found is not such a case.",
    source="9.4a",
)

provisional_became_in_play = yes_no(
    "provisional_became_in_play",
    "Did the provisional ball then turn out to be the ball in play?",
    help="The original is lost or out of bounds.",
    source="18.3c(2)",
)

balls_alike = choice(
    "balls_alike",
    "How many of the two balls that the player cannot tell apart were found on the course?",
    {
        BallsAlike.NONE: "neither",
        BallsAlike.ONE: "one",
        BallsAlike.BOTH: "both",
    },
    help="Original and provisional ball, played to the same area. Ask for every mark that could tell them apart.",
    source="18.3c(2)",
)
