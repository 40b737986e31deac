"""Facts about playing from a wrong place, and about correcting mistakes (Rules 14.4 to 14.7)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class SeriousBreach(Enum):
    """Whether playing from a wrong place was a serious breach."""

    NO = "no"
    YES = "yes"
    UNCERTAIN = "uncertain"


class Elsewhere(Enum):
    """Cases that are told as a wrong place and ruled on elsewhere."""

    NEITHER = "neither"
    STROKE_NOT_REPLAYED = "stroke_not_replayed"
    OUTSIDE_TEEING_AREA = "outside_teeing_area"
    ORIGINAL_LOST_OR_OUT = "original_lost_or_out"


class SecondBallPlace(Enum):
    """Where the ball played to correct a wrong place was itself played from."""

    RIGHT_PLACE = "right_place"
    WRONG_NOT_SERIOUS = "wrong_not_serious"
    WRONG_SERIOUS = "wrong_serious"


class BallsPlayed(Enum):
    """How the player went on after playing from a wrong place."""

    CORRECTED_BALL_ONLY = "corrected_ball_only"
    TWO_BALLS = "two_balls"
    NOT_CORRECTED = "not_corrected"


class MistakeInRelief(Enum):
    """What was wrong with the relief taken, noticed before the ball was played."""

    DROP_AGAIN = "drop_again"
    WRONG_PLACE = "wrong_place"
    WRONG_RULE = "wrong_rule"


class RuleUsed(Enum):
    """The Rule under which relief was being taken."""

    UNPLAYABLE = "unplayable"
    UNPLAYABLE_IN_BUNKER = "unplayable_in_bunker"
    PENALTY_AREA = "penalty_area"
    FREE_RELIEF = "free_relief"


class PreviousStrokeArea(Enum):
    """Where the previous stroke was made."""

    TEEING_AREA = "teeing_area"
    PUTTING_GREEN = "putting_green"
    ELSEWHERE = "elsewhere"


class WhyPlayedAgain(Enum):
    """Why the player plays from where the previous stroke was made."""

    STROKE_AND_DISTANCE = "stroke_and_distance"
    STROKE_DOES_NOT_COUNT = "stroke_does_not_count"


serious_breach = choice(
    "serious_breach",
    "Could the player have gained a significant advantage by playing from the wrong place (serious breach)?",
    {SeriousBreach.YES: "yes", SeriousBreach.NO: "no", SeriousBreach.UNCERTAIN: "not decided yet"},
    help="Weigh the difficulty of the stroke, the distance to the hole, obstacles and the lie.",
    source="Definitions: serious breach",
    decided_by=DecidedBy.COMMITTEE,
)
balls_after_wrong_place = choice(
    "balls_after_wrong_place",
    "How did the player go on after playing from the wrong place?",
    {
        BallsPlayed.NOT_CORRECTED: "with that ball only, or not yet at all",
        BallsPlayed.CORRECTED_BALL_ONLY: "without any doubt gave that ball up, and played on with a ball from the right place",
        BallsPlayed.TWO_BALLS: "being uncertain decided to play a second ball as well, whether or not both were played out",
    },
    help="Ask which balls were played, and when the player decided to.",
    source="14.7b(1)",
    usual=BallsPlayed.NOT_CORRECTED,
)
next_hole_started = yes_no(
    "next_hole_started",
    "Has the player (or side) begun another hole or, after the final hole, returned the scorecard?",
    help="That is the latest moment at which the mistake can be corrected.",
    source="3.3c, 6.1b(2), 6.3c(1), 14.7b(1), 22.3",
)
facts_reported = yes_no(
    "facts_reported",
    "Did the player report the facts to the Committee before returning the scorecard?",
    help="Necessary even if both balls scored the same.",
    source="14.7b(2), 20.1c(3)",
    decided_by=DecidedBy.COMMITTEE,
)
first_ball_serious = yes_no(
    "first_ball_serious",
    "Does the Committee find that playing the first ball from the wrong place was a serious breach?",
    help="Could the player have gained a significant advantage by it?",
    source="14.7b(3)",
    decided_by=DecidedBy.COMMITTEE,
)
place_of_second_ball = choice(
    "place_of_second_ball",
    "Where was the ball meant to correct the mistake played from?",
    {
        SecondBallPlace.RIGHT_PLACE: "the right place",
        SecondBallPlace.WRONG_NOT_SERIOUS: "a wrong place too, not a serious breach",
        SecondBallPlace.WRONG_SERIOUS: "a wrong place too, and a serious breach",
    },
    help="Check the second ball as carefully as the first.",
    source="14.7b(3)",
    decided_by=DecidedBy.COMMITTEE,
)
not_a_wrong_place = choice(
    "not_a_wrong_place",
    "Is it one of these cases, which are ruled on elsewhere?",
    {
        Elsewhere.NEITHER: "none of them",
        Elsewhere.STROKE_NOT_REPLAYED: "a stroke from the putting green had to be replayed, and the ball was played from where it came to rest",
        Elsewhere.OUTSIDE_TEEING_AREA: "the hole was begun from outside the teeing area",
        Elsewhere.ORIGINAL_LOST_OR_OUT: "the original was lost or out of bounds, and another ball was played from near there",
    },
    help="A stroke not replayed, or from outside the teeing area, is no wrong place; for a ball lost, stroke and distance is owed too.",
    source="Definitions: wrong place; 18.2b",
)
mistake_in_relief = choice(
    "mistake_in_relief",
    "What was wrong with the relief taken?",
    {
        MistakeInRelief.DROP_AGAIN: "the right Rule and place, but it has to be dropped or placed again",
        MistakeInRelief.WRONG_PLACE: "the right Rule, but dropped or placed in a wrong place",
        MistakeInRelief.WRONG_RULE: "a Rule that did not apply",
    },
    help="Ask the player which Rule and option were used, then look at where the ball was put.",
    source="14.5b",
)
rule_used = choice(
    "rule_used",
    "Under which Rule was relief being taken?",
    {
        RuleUsed.UNPLAYABLE: "unplayable ball, not in a bunker",
        RuleUsed.UNPLAYABLE_IN_BUNKER: "unplayable ball in a bunker",
        RuleUsed.PENALTY_AREA: "ball in a penalty area",
        RuleUsed.FREE_RELIEF: "a Rule that gives free relief",
    },
    help="Ask the player what relief was intended.",
    source="14.5b(2)",
)
area_of_previous_stroke = choice(
    "area_of_previous_stroke",
    "Where was the previous stroke made?",
    {
        PreviousStrokeArea.TEEING_AREA: "in the teeing area",
        PreviousStrokeArea.PUTTING_GREEN: "on the putting green",
        PreviousStrokeArea.ELSEWHERE: "in the general area, a bunker or a penalty area",
    },
    help="Where the ball lay when that stroke was made.",
    source="14.6",
    decided_by=DecidedBy.MAP,
)
why_played_again = choice(
    "why_played_again",
    "Why is the ball played again from there?",
    {
        WhyPlayedAgain.STROKE_AND_DISTANCE: "stroke and distance",
        WhyPlayedAgain.STROKE_DOES_NOT_COUNT: "the stroke was cancelled or does not count",
    },
    help="Stroke and distance costs a penalty stroke; replaying a stroke that does not count costs none.",
    source="14.6",
)
played_since_put_down = yes_no(
    "played_since_put_down",
    "Has a stroke been made at the ball since it was put down?",
    help="Ask player and marker. Until then a mistake in putting it down can be corrected without penalty.",
    source="14.5",
)
put_down_to_be_in_play = yes_no(
    "put_down_to_be_in_play",
    "Was the ball put back on the course with the intent that it be in play?",
    help="A ball set down only to be held there, or let go as a trial, is not in play.",
    source="14.4",
)
