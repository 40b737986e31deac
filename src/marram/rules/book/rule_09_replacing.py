"""What follows when a moved ball must go back to its spot."""

from dataclasses import replace

from marram.rules.penalty import Who, general
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.ruling import Action, Deadline, Ruling, WhichBall

SIMILAR_LIE = ReliefOption(
    ReliefKind.NEAREST_SPOT,
    "14.2d(2)",
    Reference.BALL,
    1,
    (Limit.NOT_NEARER, Limit.SAME_AREA_AS_REFERENCE),
    setting=Setting.PLACE,
)
"""Where the lie was altered, not in sand: the nearest spot with the most similar lie, within one club-length."""


def must_go_back(ruling: Ruling, played_by: Who = Who.PLAYER) -> Ruling:
    """The ball is replaced before the next stroke; its player who plays it from elsewhere plays from a wrong place (14.7a)."""
    otherwise = general("14.7a", played_by)
    return ruling.replace_ball().correct("replace_before_stroke", Deadline.BEFORE_STROKE, otherwise)


def place_on_similar_lie(ruling: Ruling) -> Ruling:
    """The lie was altered, not in sand: the ball is placed on the nearest spot with the most similar lie."""
    placed = replace(ruling, relief=(SIMILAR_LIE,)).under("14.2d(2)").next(Action.PLACE, WhichBall.ORIGINAL)
    return placed.note("nearest_spot_with_similar_lie", "estimate_the_lie_if_not_known").correct(
        "place_on_similar_lie", Deadline.BEFORE_STROKE, general("14.7a")
    )
