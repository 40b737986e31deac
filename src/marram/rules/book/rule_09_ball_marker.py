"""Rule 9.7: ball-marker lifted or moved before the ball is put back."""

from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.cause import (
    APPLYING_A_RULE,
    Doing,
    Mover,
    actions_reasonable,
    marker_move_allowed,
    moved_while,
    movement_accidental,
    who_moved_marker,
)
from marram.rules.penalty import Who
from marram.rules.ruling import Ruling, no_penalty, penalty


@provision("9.7a")
def ball_marker_moved(case: Case) -> Ruling:
    """The ball or the ball-marker goes back to the original spot, whatever moved the ball-marker."""
    if case.is_one_of(who_moved_marker, Mover.SOMEBODY_ELSE):
        return put_back(no_penalty("9.7a"))
    if case.is_one_of(who_moved_marker, Mover.OPPONENT):
        if not case.match_play:
            return put_back(no_penalty("9.7a"))
        return marker_moved_by(case, Who.OPPONENT)
    return marker_moved_by(case, Who.PLAYER)


@provision("9.7b")
def marker_moved_by(case: Case, who: Who) -> Ruling:
    """The player or the opponent gets one stroke, with the same exceptions as for moving the ball."""
    free = put_back(no_penalty("9.7b Exception"))
    if not case[movement_accidental]:
        return free if case[marker_move_allowed] else put_back(penalty(1, "9.7b", who))
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return free.under("13.1d(1)")
    applying = case.is_one_of(moved_while, Doing.REMOVING_MOVABLE_OBSTRUCTION, *APPLYING_A_RULE)
    if applying and case[actions_reasonable]:
        return free.under("9.4b Exception 4")
    return put_back(penalty(1, "9.7b", who))


def put_back(ruling: Ruling) -> Ruling:
    """The ball is replaced, or a ball-marker set down, on the original spot before the next stroke."""
    return must_go_back(ruling).under("9.7a").note("or_set_marker_on_the_spot")
