"""Rules 11.2 and 11.3: a ball in motion deliberately deflected, stopped or helped."""

from marram.rules.book.relief_options import free_option, stroke_and_distance
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.facts.deflection import (
    Deflector,
    MovedInPath,
    WhyStopped,
    WouldHaveStopped,
    could_be_holed,
    deflector,
    meant_to_affect_ball,
    moved_in_path,
    needed_for_points,
    played_from_green,
    why_stopped,
    would_have_stopped,
)
from marram.rules.penalty import Who, general
from marram.rules.relief_option import Limit, Reference
from marram.rules.ruling import Action, Deadline, HandOver, Ruling, WhichBall, general_penalty, no_penalty

_NO_SCORE = {
    FormOfPlay.STABLEFORD: ("21.1d", "no_points_on_hole"),
    FormOfPlay.MAXIMUM_SCORE: ("21.2d", "maximum_on_hole"),
    FormOfPlay.PAR_BOGEY: ("21.3d", "hole_counts_as_lost"),
}
_NOT_PROHIBITED = (MovedInPath.REMOVED_FLAGSTICK, MovedInPath.EQUIPMENT)


@provision("11.2b")
def deliberately_deflected(case: Case) -> Ruling:
    """The general penalty for a player who deliberately deflects or stops any ball in motion."""
    by = case[deflector]
    if by is Deflector.LIFTED_FROM_WATER:
        return no_penalty("11.2b Exception").next(Action.GO_ON_WITH_RELIEF).note("go_on_from_moving_water")
    if by is Deflector.BALL_OR_MARKER_LEFT:
        return ran_into_ball_or_marker(case)
    return deflected_with_no_chance(case) or deflected_on_purpose(case, by)


@provision("11.2a")
def ran_into_ball_or_marker(_case: Case) -> Ruling:
    """A ball at rest or a ball-marker left in the way does not make it a deliberate deflection."""
    return no_penalty("11.2a").stroke_counts().play_as_it_lies().note("left_on_purpose_see_15_3")


@provision("11.2a Exception")
def deflected_with_no_chance(case: Case) -> Ruling | None:
    """No penalty where only holing the ball would have mattered and it had no chance to be holed."""
    if case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY):
        return None
    if case.match_play:
        return stopped_with_no_chance(case)
    if case[could_be_holed] or not case[needed_for_points]:
        return None
    citation, note = _NO_SCORE[case[form_of_play]]
    return no_penalty(citation).next(Action.HOLE_OVER).note(note)


@provision("11.2a Exception")
def stopped_with_no_chance(case: Case) -> Ruling | None:
    """In match play a ball past hope may be stopped: by anybody if it had to be holed to tie, else to concede."""
    if case[could_be_holed]:
        return None
    no_breach = no_penalty("11.2a Exception")
    if case.is_one_of(why_stopped, WhyStopped.NEEDED_TO_TIE):
        return no_breach.next(Action.HOLE_OVER).note("stopped_ball_decides_hole")
    if case.is_one_of(why_stopped, WhyStopped.NEITHER):
        return None
    if case.is_one_of(why_stopped, WhyStopped.STROKE_CONCEDED):
        return no_breach.under("3.2b").next(Action.HOLED).note("next_stroke_conceded")
    return no_breach.under("3.2b").next(Action.HOLE_OVER)


@provision("11.2b")
def deflected_on_purpose(case: Case, by: Deflector) -> Ruling:
    """Who gets the penalty, and where the ball is played from."""
    if by is Deflector.OUTSIDER:
        ruling = no_penalty("11.2c")
    elif by is Deflector.OWN_SIDE:
        ruling = general_penalty("11.2b")
    else:
        ruling = general_penalty("11.2b", Who.OPPONENT if case.match_play else Who.OTHER_PLAYER)
    if case[played_from_green]:
        return deflected_putt(case, ruling)
    return deflected_elsewhere(case, ruling)


@provision("11.2c(2)")
def deflected_putt(case: Case, ruling: Ruling) -> Ruling:
    """A stroke from the putting green does not count and is replayed."""
    otherwise = "11.2c(2)" if case.played_since(EDITION_2023) else "14.7a"
    return (
        ruling.under("11.2c(2)")
        .stroke_does_not_count()
        .next(Action.REPLAY, WhichBall.ORIGINAL_OR_ANOTHER)
        .correct("replay_the_putt", Deadline.BEFORE_STROKE, general(otherwise))
    )


@provision("11.2c(1)")
def deflected_elsewhere(case: Case, ruling: Ruling) -> Ruling:
    """A stroke from elsewhere counts; relief is taken from where the ball would have come to rest."""
    ruling = ruling.under("11.2c(1)").stroke_counts()
    where = case[would_have_stopped]
    if where is WouldHaveStopped.OUT_OF_BOUNDS:
        return ruling.with_options(stroke_and_distance("18.2b"), may_play_as_it_lies=False)
    ruling = ruling.correct("relief_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    if where is WouldHaveStopped.PUTTING_GREEN:
        return ruling.next(Action.PLACE, WhichBall.ORIGINAL_OR_ANOTHER).note("place_on_estimated_spot")
    option = free_option(
        "11.2c(1)", Reference.ESTIMATED_SPOT, (Limit.NOT_NEARER, Limit.SAME_AREA_AS_REFERENCE)
    )
    ruling = ruling.with_options(option, may_play_as_it_lies=False)
    ruling = ruling.next(Action.TAKE_RELIEF, WhichBall.ORIGINAL_OR_ANOTHER)
    if where is WouldHaveStopped.PENALTY_AREA and case.played_since(EDITION_2023):
        return ruling.under("11.2c(1) Exception").note("or_penalty_area_relief_at_once")
    return ruling


@provision("11.3")
def helped_ball_in_motion(case: Case) -> Ruling | HandOver:
    """Nothing may be removed or altered to affect a ball in motion, a few things excepted."""
    if not case[meant_to_affect_ball]:
        return no_penalty("11.3").play_as_it_lies()
    if case.is_one_of(moved_in_path, MovedInPath.BALL_ON_GREEN):
        return HandOver("ball_lifted", "11.3 Exception", (("area_of_ball", "putting_green"),))
    if case.is_one_of(moved_in_path, *_NOT_PROHIBITED):
        return no_penalty("11.3 Exception").play_as_it_lies()
    ruling = general_penalty("11.3").play_as_it_lies().note("penalty_to_whoever_did_it")
    if case.is_one_of(moved_in_path, MovedInPath.BALL_OFF_GREEN):
        return ruling.under("14.2").note("lifted_ball_is_replaced")
    return ruling
