"""What follows if what a ruling requires is done wrong: what it says itself, else what holds for every such step.

A ball put down in a wrong place or a wrong way may be lifted and put right until it is played (Rule 14.5); a stroke from
a wrong place gets the general penalty (Rule 14.7a), and so does one at a ball that is out of play (Rule 6.3c(1)).
"""

from collections.abc import Mapping
from dataclasses import replace

from marram.rules.penalty import Who, disqualified, general
from marram.rules.ruling import Action, Correction, Deadline, Ruling

_WRONG_PLACE = general("14.7a")
_WRONG_BALL = general("6.3c(1)")
_BEFORE_STROKE = Deadline.BEFORE_STROKE

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
    Action.GO_ON_WITH_RELIEF: Correction("put_relief_right", Deadline.BEFORE_STROKE, _WRONG_PLACE),
    Action.PLAY_FROM_TEEING_AREA: Correction("play_inside_teeing_area", Deadline.BEFORE_STROKE, _WRONG_PLACE),
}
"""For each step with the ball that can be done wrong: what puts it right, until when, and what it costs if not."""

BY_NOTE: Mapping[str, Correction] = {
    "stop_when_suspended": Correction("stay_stopped", _BEFORE_STROKE, disqualified("5.7b")),
    "hole_finished_now_stop": Correction("stay_stopped", _BEFORE_STROKE, disqualified("5.7b(2)")),
    "resume_when_danger_over": Correction("be_ready_on_resumption", Deadline.PROMPTLY),
    "agreement_ends_when_one_wants": Correction(
        "go_on_when_one_wants", Deadline.PROMPTLY, disqualified("5.7a")
    ),
    "put_ball_in_play_first": Correction("put_ball_in_play", _BEFORE_STROKE, _WRONG_BALL),
    "lift_when_asked_in_match": Correction("lift_when_asked", _BEFORE_STROKE, general("15.3")),
    "go_on_with_right_ball": Correction("go_on_with_right_ball_now", _BEFORE_STROKE, _WRONG_BALL),
    "nothing_conceded_in_stroke_play": Correction(
        "hole_out", Deadline.BEFORE_NEXT_HOLE, disqualified("3.3c")
    ),
    "may_restore_and_clean": Correction("restore_no_further", _BEFORE_STROKE, general("8.1a")),
    "correct_the_ruling": Correction("correct_ruling_in_time", Deadline.BEFORE_RESULT),
}
"""What the note of a ruling asks for: what puts it right, until when, and what it costs if not."""

STOPPED_FOR_LIGHTNING = Correction("be_ready_on_resumption", Deadline.PROMPTLY)
"""Rule 5.7c: whoever stopped for lightning is back in place when the Committee orders play to go on."""

TEEING_OFF = Correction("tee_inside_teeing_area", Deadline.BEFORE_STROKE)
"""Rule 6.1b: from outside the teeing area, what it costs depends on the form of play; the words say both."""

_HOLE_NOT_BEGUN = ("6.1b", "6.2b(1)", "6.2b(5)")


def corrections_of(ruling: Ruling) -> tuple[Correction, ...]:
    """Return what follows if what the ruling requires is done wrong; nothing where there is nothing to do."""
    if ruling.corrections or ruling.action is None:
        return ruling.corrections
    usual = _usual(ruling, ruling.action)
    if usual is None or usual.otherwise is None:
        return () if usual is None else (usual,)
    return (replace(usual, otherwise=replace(usual.otherwise, who=_who_plays(ruling))),)


def _usual(ruling: Ruling, action: Action) -> Correction | None:
    """Return what a note of the ruling asks for, else what holds for every such step."""
    noted = next((BY_NOTE[note] for note in ruling.notes if note in BY_NOTE), None)
    if noted is not None:
        return noted
    if action is Action.STOP_PLAY:
        return STOPPED_FOR_LIGHTNING
    if action is Action.PLAY_FROM_TEEING_AREA and ruling.citations[0].startswith(_HOLE_NOT_BEGUN):
        return TEEING_OFF
    return AS_EVER.get(action)


def _who_plays(ruling: Ruling) -> Who:
    """Return who would bear what is done wrong with the ball: who bears what was done, the side in Foursomes."""
    if any(citation.startswith("22.") for citation in ruling.citations):
        return Who.SIDE
    if any(one.who in (Who.ONE_PARTNER, Who.EACH_PARTNER) for one in ruling.penalties):
        return Who.ONE_PARTNER
    return Who.PLAYER
