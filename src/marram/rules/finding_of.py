"""What a ruling finds, read from its own data: its notes, its provisions and the facts it rests on, never from words."""

from collections.abc import Iterable, Iterator, Mapping
from enum import Enum
from typing import Any

from marram.rules.findings import Finding
from marram.rules.free_findings import FREE_BY_FACT, FREE_BY_PROVISION, FREE_STROKE_BY_FACT
from marram.rules.noted_findings import BY_NOTE
from marram.rules.ruling import Action, Reason, Ruling, Stroke

BY_FACT: Mapping[str, Mapping[str, Finding]] = {
    "all_of_ball_out_of_bounds": {"True": Finding.OUT_OF_BOUNDS},
    "whereabouts": {"not_known": Finding.LOST, "out_of_bounds": Finding.OUT_OF_BOUNDS},
    "original_ball": {"lost": Finding.LOST, "out_of_bounds": Finding.OUT_OF_BOUNDS},
    "new_place": {"out_of_bounds": Finding.OUT_OF_BOUNDS},
    "after_penalty_area": {"lost_outside": Finding.LOST, "out_of_bounds": Finding.OUT_OF_BOUNDS},
    "boundary_feature": {"fence": Finding.OUT_OF_BOUNDS, "wall_or_road": Finding.OUT_OF_BOUNDS},
    "boundary_for_this_hole": {"True": Finding.OUT_OF_BOUNDS},
    "balls_alike": {"none": Finding.LOST},
    "road_named": {"True": Finding.OUT_OF_BOUNDS},
    "identified_in_reasonable_time": {"False": Finding.LOST},
    "found_in_penalty_area": {"False": Finding.LOST},
    "found_after_moving": {"False": Finding.LOST},
    "how_identified": {"not_at_all": Finding.LOST},
    "ball_found_in_accumulation": {"False": Finding.LOST},
    "own_two_balls_alike": {"True": Finding.LOST},
    "search_minutes": {"": Finding.LOST},
}
"""Which of lost and out of bounds the facts tell, where Rule 18.2b is what decides; the first that tells it."""

BY_PROVISION: Mapping[str, Finding] = {
    "18.2a(1)": Finding.FOUND_IN_TIME,
    "18.2a(2)": Finding.IN_BOUNDS,
    "18.3c(2)": Finding.PROVISIONAL_IN_PLAY,
    "18.3c(3)": Finding.ORIGINAL_IN_PLAY,
    "13.1f(2)": Finding.ON_WRONG_GREEN,
    "16.1f(1)": Finding.IN_NO_PLAY_ZONE,
    "16.1f(2)": Finding.IN_NO_PLAY_ZONE,
    "17.1e(1)": Finding.IN_NO_PLAY_ZONE,
    "17.1e(2)": Finding.IN_NO_PLAY_ZONE,
    "16.1e": Finding.IN_CONDITION,
    "17.1b": Finding.IN_PENALTY_AREA,
    "17.1c": Finding.IN_PENALTY_AREA,
    "17.1d": Finding.IN_PENALTY_AREA,
    "17.2a": Finding.IN_PENALTY_AREA,
    "17.3": Finding.IN_PENALTY_AREA,
    "6.2b(6)": Finding.IN_TEEING_AREA,
    "14.3c(1)": Finding.IN_PLAY,
    "14.4": Finding.NOT_IN_PLAY,
    "6.2b(5)": Finding.NOT_IN_PLAY,
    "18.1": Finding.STROKE_AND_DISTANCE,
    "19.1": Finding.UNPLAYABLE_IS_THE_PLAYERS_CHOICE,
}
"""What the provision that decides finds of the ball."""

_BY_STROKE: Mapping[Stroke, Finding] = {
    Stroke.COUNTS: Finding.STROKE_COUNTS,
    Stroke.DOES_NOT_COUNT: Finding.STROKE_DOES_NOT_COUNT,
    Stroke.OPPONENT_MAY_CANCEL: Finding.STROKE_MAY_BE_CANCELLED,
}
_LOST_OR_OUT = ("18.2b", "18.2a(1)")
_NOT_WITH: Mapping[Finding, tuple[Action, ...]] = {
    Finding.IN_TEEING_AREA: (Action.PLAY_AS_IT_LIES,),
    Finding.NOT_IN_PLAY: (Action.PLAY_AS_IT_LIES,),
    Finding.STROKE_AND_DISTANCE: (Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF,),
}
_INSTEAD: Mapping[tuple[Finding, Action], Finding] = {
    (Finding.IN_PENALTY_AREA, Action.PLAY_OTHER_BALL): Finding.OTHER_BALL_IN_PLAY,
}
"""What is found where the next step shows that the provision speaks of the ball that is out of play."""

_PLAYED_ON = (None, Action.PLAY_ON, Action.PLAY_AS_IT_LIES, Action.STOP_PLAY)


def finding_of(ruling: Ruling) -> Finding | None:
    """Return what a ruling finds; ``None`` where its penalty and its next step say all."""
    return next(_findings(ruling), None)


def _findings(ruling: Ruling) -> Iterator[Finding]:
    """Yield what a ruling finds, the most telling first."""
    noted = [BY_NOTE[note] for note in ruling.notes if note in BY_NOTE]
    if ruling.action is Action.HOLED:
        yield from (one for one in noted if one is not Finding.ORIGINAL_IN_PLAY)
        yield Finding.HOLED
    lost = ruling.action is Action.TAKE_RELIEF and any(one in ruling.citations for one in _LOST_OR_OUT)
    if lost and not ruling.penalties:
        yield _lost_or_out(ruling)
    yield from noted
    if ruling.stroke is Stroke.COUNTS and not ruling.penalties and ruling.action in _PLAYED_ON:
        yield from _told_by(reversed(ruling.reasons), FREE_STROKE_BY_FACT)
    if ruling.stroke is not None:
        yield _BY_STROKE[ruling.stroke]
    if lost:
        yield _lost_or_out(ruling)
    if ruling.action not in (None, Action.HOLE_OVER, Action.CORRECT_MISTAKE, Action.PLAY_ON):
        yield from (found for one in ruling.citations[:1] for found in _by_provision(one, ruling.action))
    if ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF and any(
        not option.penalty for option in ruling.relief
    ):
        yield Finding.FREE_RELIEF
    if not ruling.penalties and ruling.action in _PLAYED_ON:
        yield from _told_by(reversed(ruling.reasons), FREE_BY_FACT)
        yield from (FREE_BY_PROVISION[one] for one in ruling.citations[:1] if one in FREE_BY_PROVISION)


def _by_provision(citation: str, action: Action) -> Iterator[Finding]:
    """Yield what a provision finds, where the next step does not say that it finds something else."""
    found = BY_PROVISION.get(citation)
    if found is not None and action not in _NOT_WITH.get(found, ()):
        yield _INSTEAD.get((found, action), found)


def _lost_or_out(ruling: Ruling) -> Finding:
    """Return whether the ball is lost or out of bounds, where the facts tell which; lost only once the search is over."""
    if "search_time_goes_on" in ruling.notes:
        return Finding.LOST_UNLESS_FOUND
    return next(_told_by(ruling.reasons, BY_FACT), Finding.LOST_OR_OUT)


def _told_by(reasons: Iterable[Reason], findings: Mapping[str, Mapping[str, Finding]]) -> Iterator[Finding]:
    """Yield what each answer finds of which that is known, whatever it may be of the answers a branch stands for."""
    for reason in reasons:
        told = findings.get(reason.fact)
        if told is None:
            continue
        found = {told.get(word) for word in ([_word(one) for one in reason.answers] or [""])}
        only = found.pop()
        if not found and only is not None:
            yield only


def _word(answer: Any) -> str:
    return str(answer.value if isinstance(answer, Enum) else answer)


__all__ = ["BY_FACT", "BY_NOTE", "BY_PROVISION", "finding_of"]
