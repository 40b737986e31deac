"""Facts about which ball is played: substituted and wrong balls (Rule 6.3)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class WhySubstituted(Enum):
    """What the player was doing when another ball was put down."""

    TAKING_RELIEF = "taking_relief"
    PLAYING_AGAIN = "playing_again"
    REPLACING = "replacing"
    NO_PROCEDURE = "no_procedure"
    BETWEEN_HOLES = "between_holes"


class BallStruck(Enum):
    """Which ball a stroke was made at."""

    IN_PLAY = "in_play"
    PROVISIONAL_OR_SECOND = "provisional_or_second"
    WRONG = "wrong"


class Exchange(Enum):
    """Whether player and opponent played each other's ball, and who did so first."""

    ONLY_THE_PLAYER = "only_the_player"
    PLAYER_FIRST = "player_first"
    OPPONENT_FIRST = "opponent_first"
    NOT_KNOWN = "not_known"


why_substituted = choice(
    "why_substituted",
    "What was the player doing when another ball was put down?",
    {
        WhySubstituted.TAKING_RELIEF: "taking relief by dropping or placing a ball",
        WhySubstituted.PLAYING_AGAIN: "playing again from where the previous stroke was made",
        WhySubstituted.REPLACING: "replacing a ball on its spot",
        WhySubstituted.NO_PROCEDURE: "nothing that calls for putting a ball down",
        WhySubstituted.BETWEEN_HOLES: "starting a hole from the teeing area, with a ball other than on the last hole",
    },
    help="Relief and playing again leave the choice of ball; replacing does not.",
    source="6.3b(1)",
)
substituted_in_wrong_place = yes_no(
    "substituted_in_wrong_place",
    "Was the substituted ball also played from a wrong place?",
    help="Check where the ball had to be played from.",
    source="14.7a",
)
stroke_at_original = yes_no(
    "stroke_at_original",
    "After another ball was in play, did the player make a stroke at the original ball?",
    help="The ball in play is the one put in play under a Rule, even if the original is found within three minutes.",
    source="6.3b(2)",
)
ball_struck = choice(
    "ball_struck",
    "Which ball was the stroke made at?",
    {
        BallStruck.IN_PLAY: "the player's ball in play (original or substituted)",
        BallStruck.PROVISIONAL_OR_SECOND: "a provisional ball, or a second ball played in stroke play under a Rule",
        BallStruck.WRONG: "any other ball: another player's, a stray ball, or the player's own ball out of play",
    },
    help="The player's own ball is out of play when lost, out of bounds, lifted and not put back, or abandoned.",
    source="Definitions: wrong ball",
)
wrong_ball_moving_in_water = yes_no(
    "wrong_ball_moving_in_water",
    "Was that ball moving in water in a penalty area or in temporary water?",
    help="The water must have been carrying the ball when the stroke was made.",
    source="6.3c(1) Exception",
)
exchange_of_balls = choice(
    "exchange_of_balls",
    "Did player and opponent play each other's ball, and who first?",
    {
        Exchange.PLAYER_FIRST: "yes, the player first",
        Exchange.OPPONENT_FIRST: "yes, the opponent first",
        Exchange.NOT_KNOWN: "yes, and it is not known who was first",
        Exchange.ONLY_THE_PLAYER: "no, only the player played a wrong ball",
    },
    help="Reconstruct the order of strokes on the hole from both players' accounts.",
    source="6.3c(1)",
)
wrong_ball_corrected = yes_no(
    "wrong_ball_corrected",
    "Has the player gone back and continued with the right ball?",
    help="By playing the original ball as it lies, or by taking relief under the Rules.",
    source="6.3c(1)",
)
exchanged_during_hole = yes_no(
    "exchanged_during_hole",
    "Is it known or virtually certain that the balls were exchanged during the play of this hole?",
    help="Ask when each ball was last identified; balls may be changed freely between two holes.",
    source="6.3a",
)
played_by_another_known = yes_no(
    "played_by_another_known",
    "Is it known or virtually certain that another player played this ball as a wrong ball?",
    help="About 95 % certain, on all evidence reasonably available.",
    source="6.3c(2)",
)
substituted_for_penalty_area = yes_no(
    "substituted_for_penalty_area",
    "Was the other ball dropped because the original was taken to be in a penalty area, and then found elsewhere?",
    help="Then it matters whether that was known or virtually certain when the ball was dropped.",
    source="17.1c",
)
