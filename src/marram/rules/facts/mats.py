"""Facts about mats that the Committee requires on the fairway (Model Local Rule E-12, from 2023)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class OnMat(Enum):
    """How far the ball has got on its way to the mat, or off it."""

    NOT_YET = "not_yet"
    ROLLED_OFF = "rolled_off"
    ROLLED_OFF_AGAIN = "rolled_off_again"
    MOVED_BY_ACCIDENT = "moved_by_accident"
    PLAYED_WITHOUT = "played_without"


mat_required_here = yes_no(
    "mat_required_here",
    "Does the ball lie in the general area where the grass is cut to fairway height or less, the stroke not being made with a putter?",
    help="In the rough, in a bunker and on the green no mat is used. A stroke with the putter is made as the ball lies.",
    source="E-12",
)
on_mat = choice(
    "on_mat",
    "What has become of the ball?",
    {
        OnMat.NOT_YET: "it still lies on the grass and has not been played",
        OnMat.ROLLED_OFF: "placed on the mat, it rolled off for the first time",
        OnMat.ROLLED_OFF_AGAIN: "it rolled off for the second time",
        OnMat.MOVED_BY_ACCIDENT: "ball or mat was moved by accident before the stroke",
        OnMat.PLAYED_WITHOUT: "it was played from the grass, without a mat",
    },
    help="A tee may fix the mat to the ground, but the ball must not be placed on that tee.",
    source="E-12",
)
put_on_mat = yes_no(
    "put_on_mat",
    "Has the player lifted the ball and put it on a mat?",
    help="Without the Local Rule that is lifting a ball that had to be played as it lies.",
    source="E-12, 9.4",
)
