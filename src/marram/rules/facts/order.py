"""Facts about the order of play and about completing a hole (Rules 6.4 and 6.5)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class Cancellation(Enum):
    """What the opponent did about a stroke made out of turn."""

    CANCELLED = "cancelled"
    LET_STAND = "let_stand"
    UNDECIDED = "undecided"


class TurnMoment(Enum):
    """When in a hole the question of whose turn it is comes up."""

    FIRST_TEE = "first_tee"
    LATER_TEE = "later_tee"
    AFTER_START = "after_start"
    ANOTHER_BALL_FROM_TEE = "another_ball_from_tee"
    TAKING_RELIEF = "taking_relief"
    PROVISIONAL_ELSEWHERE = "provisional_elsewhere"


class BallNotHoled(Enum):
    """What became of a ball that was not holed out."""

    LIES = "lies"
    MARKED_ON_GREEN = "marked_on_green"
    PICKED_UP = "picked_up"


class HoleEnd(Enum):
    """What may have ended the play of a hole."""

    HOLED = "holed"
    CONCEDED = "conceded"
    RESULT_DECIDED = "result_decided"
    NOTHING = "nothing"


agreed_for_advantage = yes_no(
    "agreed_for_advantage",
    "Had two or more players agreed to play out of turn so as to give one of them an advantage?",
    help="Agreeing for convenience or to save time is no such agreement.",
    source="6.4b(1)",
)
agreed_out_of_turn = yes_no(
    "agreed_out_of_turn",
    "Had the opponent invited the player to play out of turn, or agreed to it, to save time?",
    help="Ask both players; an invitation given once covers that stroke only.",
    source="6.4a(2) Exception",
)
opponent_on_cancelling = choice(
    "opponent_on_cancelling",
    "What did the opponent do about the stroke?",
    {
        Cancellation.CANCELLED: "cancelled it promptly, before either player made another stroke",
        Cancellation.LET_STAND: "did not cancel it in time",
        Cancellation.UNDECIDED: "nothing yet, and neither player has made another stroke",
    },
    help="A cancellation cannot be taken back.",
    source="6.4a(2)",
)
moment_of_turn = choice(
    "moment_of_turn",
    "At what moment is the order of play in question?",
    {
        TurnMoment.FIRST_TEE: "starting the first hole",
        TurnMoment.LATER_TEE: "starting any other hole",
        TurnMoment.AFTER_START: "after all have started the hole",
        TurnMoment.ANOTHER_BALL_FROM_TEE: "a provisional or another ball from the teeing area",
        TurnMoment.TAKING_RELIEF: "a player will play from elsewhere than where the ball lies",
        TurnMoment.PROVISIONAL_ELSEWHERE: "a provisional ball from anywhere but the teeing area",
    },
    help="Choose what fits the player whose turn is in doubt.",
    source="6.4",
)
honour_depends_on_ruling = yes_no(
    "honour_depends_on_ruling",
    "Does the honour hang on a ruling request, made in time, that the Committee has not decided yet?",
    help="Rule 20.1b says when a request is in time.",
    source="6.4a(1)",
)
must_take_stroke_and_distance = yes_no(
    "must_take_stroke_and_distance",
    "Does the player know that stroke and distance must be taken?",
    help="Ball lost or out of bounds. Where the player has a choice, answer no.",
    source="6.4d(1)",
)
decided_to_wait = yes_no(
    "decided_to_wait",
    "Did the player wait before deciding to play a provisional ball?",
    help="For example by going forward to look first.",
    source="6.4d(2)",
)
how_hole_ended = choice(
    "how_hole_ended",
    "What has happened to end the hole?",
    {
        HoleEnd.HOLED: "the player has holed out",
        HoleEnd.CONCEDED: "the player's next stroke was conceded",
        HoleEnd.RESULT_DECIDED: "the result of the hole is decided",
        HoleEnd.NOTHING: "none of these",
    },
    help="A result is decided by concession of the hole, by score, or by a loss of hole penalty.",
    source="6.5",
)
ball_not_holed = choice(
    "ball_not_holed",
    "What became of the ball that was not holed out?",
    {
        BallNotHoled.LIES: "it lies where it came to rest, or somebody else lifted or moved it",
        BallNotHoled.MARKED_ON_GREEN: "it was lifted on the putting green, and its spot is or was marked",
        BallNotHoled.PICKED_UP: "the player or caddie picked it up or knocked it away, its spot not marked on the green",
    },
    help="A ball picked up without a right costs one stroke before it is put back; a marked ball on the green costs nothing.",
    source="3.3c, 9.4b, 14.1a",
)
knew_hole_completed = yes_no(
    "knew_hole_completed",
    "Did the player know that the hole was completed?",
    help="Ask why the player played on.",
    source="6.5",
)
