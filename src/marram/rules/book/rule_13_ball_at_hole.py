"""Rule 13.3 and the Definition of holed: a ball in the hole, or overhanging it."""

from marram.rules.book.rule_13_flagstick import ball_against_flagstick
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.at_hole import InHole, ball_in_hole
from marram.rules.facts.green import (
    Overhang,
    OverhangMover,
    overhang,
    overhang_mover,
    own_side_lift_allowed,
    seconds_at_hole,
)
from marram.rules.penalty import Who, general
from marram.rules.ruling import Action, Deadline, Ruling, general_penalty, no_penalty, penalty

WAITING_TIME = 10
"""Seconds a player may wait at the hole (Rule 13.3a)."""


@provision("Definitions: holed")
def is_ball_holed(case: Case) -> Ruling:
    """A ball is holed when it is at rest in the hole after a stroke, all of it below the surface."""
    if case.is_one_of(ball_in_hole, InHole.AGAINST_FLAGSTICK):
        return ball_against_flagstick(case)
    if case.is_one_of(ball_in_hole, InHole.TAKEN_OUT_MOVING):
        return no_penalty("Clarification Holed/2").stroke_counts().next(Action.HOLED)
    if case.is_one_of(ball_in_hole, InHole.ALL_BELOW):
        return no_penalty("Definitions: holed").stroke_counts().next(Action.HOLED)
    ruling = no_penalty("Definitions: holed").play_as_it_lies()
    if case.is_one_of(ball_in_hole, InHole.PARTLY_ABOVE):
        return ruling.note("stuck_in_side_may_be_lifted")
    return ruling.note("never_at_rest_in_hole")


@provision("13.3")
def ball_overhung_hole(case: Case) -> Ruling:
    """Time to reach the hole and ten seconds more; then the ball is at rest."""
    event = case[overhang]
    if event is Overhang.STAYED:
        return no_penalty("13.3a").play_as_it_lies().note("ten_seconds_then_at_rest")
    if event is Overhang.FELL_IN:
        return ball_fell_into_hole(case)
    if event is Overhang.FELL_IN_AFTER_REPLACING:
        return _replaced_on_lip(no_penalty("13.1d(2)"))
    return overhanging_ball_moved(case)


@provision("13.3a")
def ball_fell_into_hole(case: Case) -> Ruling:
    """Within ten seconds the ball is holed with the previous stroke; later it costs one penalty stroke."""
    if case.at_most(seconds_at_hole, WAITING_TIME):
        return no_penalty("13.3a").stroke_counts().next(Action.HOLED)
    return penalty(1, "13.3a").stroke_counts().next(Action.HOLED)


@provision("13.3b")
def overhanging_ball_moved(case: Case) -> Ruling:
    """A ball lifted or moved before the time is over counts as at rest and is replaced on the lip."""
    mover = case[overhang_mover]
    if mover is OverhangMover.OTHER_PLAYER_ON_PURPOSE:
        return overhanging_ball_taken_by_other(case)
    if mover is OverhangMover.OWN_SIDE and not case[own_side_lift_allowed]:
        return _replaced_on_lip(penalty(1, "9.4b").under("13.3b", "14.1a"))
    return _replaced_on_lip(no_penalty("13.3b"))


@provision("13.3b")
def overhanging_ball_taken_by_other(case: Case) -> Ruling:
    """Match play: the ball is treated as holed. Stroke play: the general penalty for the one who took it."""
    if case.match_play:
        return no_penalty("13.3b").stroke_counts().next(Action.HOLED).note("opponent_gave_the_putt")
    return _replaced_on_lip(general_penalty("13.3b", Who.OTHER_PLAYER))


def _replaced_on_lip(ruling: Ruling) -> Ruling:
    return (
        ruling.replace_ball()
        .note("waiting_time_is_over")
        .correct("replace_on_lip_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    )
