"""What follows if what a ruling requires is done wrong: what it says itself, else what holds for every such step.

A ball put down in a wrong place or a wrong way may be lifted and put right until it is played (Rule 14.5); a stroke from
a wrong place gets the general penalty (Rule 14.7a), and so does one at a ball that is out of play (Rule 6.3c(1)).
"""

from collections.abc import Mapping
from dataclasses import replace

from marram.rules.ruling import Action, Correction, Deadline, Ruling, Who, general

_WRONG_PLACE = general("14.7a")
_WRONG_BALL = general("6.3c(1)")

AS_EVER: Mapping[Action, Correction] = {
    Action.REPLACE: Correction("replace_before_stroke", Deadline.BEFORE_STROKE, _WRONG_PLACE),
    Action.PLACE: Correction("place_where_required", Deadline.BEFORE_STROKE, _WRONG_PLACE),
    Action.DROP: Correction("put_relief_right", Deadline.BEFORE_STROKE, _WRONG_PLACE),
    Action.DROP_AGAIN: Correction("put_relief_right", Deadline.BEFORE_STROKE, _WRONG_PLACE),
    Action.TAKE_RELIEF: Correction("put_relief_right", Deadline.BEFORE_STROKE, _WRONG_PLACE),
    Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF: Correction(
        "put_relief_right", Deadline.BEFORE_STROKE, _WRONG_PLACE
    ),
    Action.REPLAY: Correction("play_from_previous_spot", Deadline.BEFORE_STROKE, _WRONG_PLACE),
    Action.PLAY_PROVISIONAL: Correction("leave_ball_out_of_play", Deadline.BEFORE_STROKE, _WRONG_BALL),
    Action.PLAY_OTHER_BALL: Correction("leave_ball_out_of_play", Deadline.BEFORE_STROKE, _WRONG_BALL),
}
"""For each step with the ball that can be done wrong: what puts it right, until when, and what it costs if not."""


def corrections_of(ruling: Ruling) -> tuple[Correction, ...]:
    """Return what follows if what the ruling requires is done wrong; nothing where there is nothing to do."""
    if ruling.corrections or ruling.action is None:
        return ruling.corrections
    usual = AS_EVER.get(ruling.action)
    if usual is None or usual.otherwise is None:
        return () if usual is None else (usual,)
    return (replace(usual, otherwise=replace(usual.otherwise, who=_who_plays(ruling))),)


def _who_plays(ruling: Ruling) -> Who:
    """Return who would bear what is done wrong with the ball: who bears what was done, the side in Foursomes."""
    if any(citation.startswith("22.") for citation in ruling.citations):
        return Who.SIDE
    if any(one.who in (Who.ONE_PARTNER, Who.EACH_PARTNER) for one in ruling.penalties):
        return Who.ONE_PARTNER
    return Who.PLAYER
