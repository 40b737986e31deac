"""Facts about a swing: whether it was a stroke (Definition of stroke)."""

from enum import Enum

from marram.rules.engine.fact import choice


class Swing(Enum):
    """What happened in a swing."""

    STRUCK_AT = "struck_at"
    CLUB_STOPPED_BY_SOMETHING = "club_stopped_by_something"
    COULD_NOT_STOP = "could_not_stop"
    STOPPED_OR_STEERED_CLEAR = "stopped_or_steered_clear"
    PREPARING = "preparing"
    HEAD_OFF_AND_WENT_ON = "head_off_and_went_on"
    HEAD_OFF_AND_STOPPED = "head_off_and_stopped"
    HEAD_OFF_IN_BACKSWING = "head_off_in_backswing"
    BRANCH_STRUCK = "branch_struck"


what_swing = choice(
    "what_swing",
    "What happened in the swing?",
    {
        Swing.STRUCK_AT: "the player meant to strike the ball, and hit it or missed it",
        Swing.CLUB_STOPPED_BY_SOMETHING: "meant for the ball, but a branch or the like turned or stopped the clubhead",
        Swing.COULD_NOT_STOP: "the player gave it up in the downswing, but hit the ball all the same",
        Swing.STOPPED_OR_STEERED_CLEAR: "the player gave it up in the downswing: stopped the club, or missed on purpose",
        Swing.PREPARING: "a practice swing, or a movement in getting ready, hit the ball by accident",
        Swing.HEAD_OFF_AND_WENT_ON: "the clubhead came off in the downswing, and the player swung on with the shaft",
        Swing.HEAD_OFF_AND_STOPPED: "the clubhead came off in the downswing, and the player stopped short of the ball",
        Swing.HEAD_OFF_IN_BACKSWING: "the clubhead came off in the backswing; the shaft was swung and missed the ball",
        Swing.BRANCH_STRUCK: "not the ball but a branch was struck, to bring down the ball lodged higher up in it",
    },
    help="Ask what the player meant to do, and at which moment of the swing that changed.",
    source="Definitions: stroke",
)
