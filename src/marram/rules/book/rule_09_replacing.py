"""What follows when a moved ball must go back to its spot."""

from marram.rules.ruling import Deadline, Ruling, general


def must_go_back(ruling: Ruling) -> Ruling:
    """The ball is replaced before the next stroke; playing it from elsewhere is a wrong place (14.7a)."""
    return ruling.replace_ball().correct("replace_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
