"""Facts about a ball or ball-marker helping or interfering with play (Rule 15.3)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class HelpingBall(Enum):
    """What was done about a ball on the putting green that might help."""

    LIFTED = "lifted"
    OWNER_PLAYS_FIRST = "owner_plays_first"
    LEFT_BY_AGREEMENT = "left_by_agreement"
    LEFT_WITHOUT_AGREEMENT = "left_without_agreement"
    STROKE_WITHOUT_WAITING = "stroke_without_waiting"
    REFUSED_TO_LIFT = "refused_to_lift"


class InterferingBall(Enum):
    """What was done about a ball that might interfere."""

    LIFTED_ON_REQUEST = "lifted_on_request"
    LIFTED_UNASKED = "lifted_unasked"
    OWNER_PLAYS_FIRST = "owner_plays_first"
    REFUSED_TO_LIFT = "refused_to_lift"


class BallMarkerMove(Enum):
    """What was done about a ball-marker that might help or interfere."""

    MOVED_AND_BACK = "moved_and_back"
    NOT_MOVED_BACK = "not_moved_back"
    STROKE_WITHOUT_WAITING = "stroke_without_waiting"
    REFUSED_TO_MOVE = "refused_to_move"


helping_ball = choice(
    "helping_ball",
    "What was done about the helping ball?",
    {
        HelpingBall.LIFTED: "it was marked and lifted, by its owner's wish or at another player's request",
        HelpingBall.OWNER_PLAYS_FIRST: "its owner was asked to lift it and wants to play first instead",
        HelpingBall.LEFT_BY_AGREEMENT: "players agreed to leave it to help a player",
        HelpingBall.LEFT_WITHOUT_AGREEMENT: "it was left, nobody having asked or agreed",
        HelpingBall.STROKE_WITHOUT_WAITING: "a player who knew it was to be lifted played without waiting",
        HelpingBall.REFUSED_TO_LIFT: "its owner refused to lift it when required to, and the other player then played",
    },
    help="Ask who said what before the stroke.",
    source="15.3a",
)
stroke_with_helping_ball = yes_no(
    "stroke_with_helping_ball",
    "Has the stroke been made with the helping ball in place?",
    help="Before the stroke the ball can still be lifted.",
    source="15.3a",
)
interfering_ball = choice(
    "interfering_ball",
    "What was done about the interfering ball?",
    {
        InterferingBall.LIFTED_ON_REQUEST: "its owner lifted it at the other player's request",
        InterferingBall.LIFTED_UNASKED: "its owner lifted it without being asked",
        InterferingBall.OWNER_PLAYS_FIRST: "its owner was asked to lift it and wants to play first instead",
        InterferingBall.REFUSED_TO_LIFT: "its owner refused to lift it when required to, and the other player then played",
    },
    help="Interference: with stance, swing or line of play, or so close as to distract.",
    source="15.3b",
)
marker_in_the_way = choice(
    "marker_in_the_way",
    "What was done about the ball-marker?",
    {
        BallMarkerMove.MOVED_AND_BACK: "it was moved aside by measuring and then moved back",
        BallMarkerMove.NOT_MOVED_BACK: "it was moved aside, and the ball was played from the new spot",
        BallMarkerMove.STROKE_WITHOUT_WAITING: "a player who knew that a helping one was to be moved played without waiting",
        BallMarkerMove.REFUSED_TO_MOVE: "its owner refused to move it when required to, and the other player then played",
    },
    help="Measured from the original spot, by one or more clubhead-lengths.",
    source="15.3c",
)
