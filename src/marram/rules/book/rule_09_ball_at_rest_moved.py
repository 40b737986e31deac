"""Rules 9.1 and 9.2: ball played as it lies; deciding whether it moved and what moved it."""

from marram.rules.book.rule_09_natural_forces import moved_by_natural_forces
from marram.rules.book.rule_09_others import (
    certainly_moved_by_outside_influence,
    moved_by_opponent,
    moved_by_opponent_by_accident,
)
from marram.rules.book.rule_09_player import moved_by_player
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.cause import (
    Cause,
    came_back_to_its_spot,
    movement_accidental,
    movement_certain,
    stroke_was_made,
    what_moved_ball,
)
from marram.rules.penalty import Who, strokes
from marram.rules.ruling import Ruling, no_penalty, penalty


@provision("9.2a")
def ball_may_have_moved(case: Case) -> Ruling:
    """A ball has moved only if that is known or virtually certain; else it is played as it lies."""
    if not case[movement_certain]:
        return no_penalty("9.2a").play_as_it_lies()
    if case[came_back_to_its_spot]:
        return only_rocked(case)
    return ball_moved(case)


@provision("Definitions: moved")
def only_rocked(_case: Case) -> Ruling:
    """A ball that rocks and comes back to its spot has not moved."""
    return no_penalty("Definitions: moved").under("9.2a").play_as_it_lies()


@provision("9.2b")
def ball_moved(case: Case) -> Ruling:
    """What moved the ball decides whether it goes back and whether anybody is penalised."""
    if case.is_one_of(what_moved_ball, Cause.NATURAL_FORCES):
        return moved_by_natural_forces(case).under("9.2b(2)")
    if case.is_one_of(what_moved_ball, Cause.PLAYER):
        return moved_by_player(case)
    if case.is_one_of(what_moved_ball, Cause.ONE_OF_THESE):
        return moved_by_one_of_several(case)
    if case.is_one_of(what_moved_ball, Cause.OPPONENT) and case.match_play:
        return moved_by_opponent(case)
    return certainly_moved_by_outside_influence(case)


@provision("9.2b(2)")
def moved_by_one_of_several(_case: Case) -> Ruling:
    """Certainly not natural forces, so it goes back; no one is certain to be the cause, so no one pays."""
    return must_go_back(no_penalty("9.2b(2)")).note("each_proven_cause_counts")


@provision("9.1b")
def ball_moved_during_swing(case: Case) -> Ruling:
    """A ball that begins to move after the backswing began, and is then played, is not replaced."""
    if not case[stroke_was_made]:
        return ball_moved(case)
    if case.is_one_of(what_moved_ball, Cause.PLAYER):
        return moved_by_own_swing(case)
    if case.is_one_of(what_moved_ball, Cause.OPPONENT) and case.match_play:
        return moved_by_opponent_in_swing(case)
    return played_while_moving_in_swing(case)


@provision("9.1b")
def played_while_moving_in_swing(_case: Case) -> Ruling:
    """The stroke counts, and the ball is played from where it comes to rest after it."""
    return no_penalty("9.1b").stroke_counts().play_as_it_lies().note("not_replaced_after_the_stroke")


@provision("9.5b")
def moved_by_opponent_in_swing(case: Case) -> Ruling:
    """The player's stroke counts; an opponent who set the ball in motion is still penalised, if not excepted."""
    played = played_while_moving_in_swing(case)
    if not case[movement_accidental]:
        return played.also(strokes(1, "9.5b", Who.OPPONENT))
    return played.also(*moved_by_opponent_by_accident(case).penalties)


@provision("9.4b")
def moved_by_own_swing(case: Case) -> Ruling:
    """The player who set the ball in motion pays one stroke, not in the teeing area nor by accident on the green."""
    ruling = played_while_moving_in_swing(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return ruling.under("6.2b(6)")
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN) and case[movement_accidental]:
        return ruling.under("13.1d(1)")
    return (
        penalty(1, "9.4b")
        .under("9.1b")
        .stroke_counts()
        .play_as_it_lies()
        .note("not_replaced_after_the_stroke")
    )
