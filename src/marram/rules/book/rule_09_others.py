"""Rules 9.5 and 9.6: ball lifted or moved by the opponent, or by an outside influence."""

from marram.rules.book.relief_options import stroke_and_distance
from marram.rules.book.rule_09_natural_forces import moved_by_natural_forces
from marram.rules.book.rule_09_replacing import must_go_back, place_on_similar_lie
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.cause import (
    APPLYING_A_RULE,
    Doing,
    OutsideCause,
    actions_reasonable,
    moved_while,
    opponent_cause_known,
    outside_cause_known,
)
from marram.rules.facts.movement import (
    MovedBall,
    OpponentAct,
    found_after_moving,
    going_elsewhere,
    moved_ball_found,
    opponent_act,
    opponent_marked_spot,
)
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Ruling, WhichBall, no_penalty, penalty


@provision("9.2b(2)")
def ball_moved_by_opponent(case: Case) -> Ruling:
    """Only knowledge or virtual certainty makes the opponent the cause; opponents exist in match play only."""
    if not case.match_play:
        return moved_by_outside_influence(case)
    if not case[opponent_cause_known]:
        return moved_by_natural_forces(case).under("9.2b(2)")
    return moved_by_opponent(case)


@provision("9.5")
def moved_by_opponent(case: Case) -> Ruling:
    """The opponent gets one stroke for lifting, touching or moving the ball, unless an exception applies."""
    if case.is_one_of(opponent_act, OpponentAct.CONCEDED_STROKE, OpponentAct.CONCEDED_HOLE_OR_MATCH):
        return lifted_when_conceding(case)
    if case.is_one_of(opponent_act, OpponentAct.AT_PLAYERS_REQUEST):
        return lifted_at_players_request(case)
    if case.is_one_of(opponent_act, OpponentAct.LIFTED_AS_OWN):
        return lifted_by_opponent_as_own(case)
    if case.is_one_of(opponent_act, OpponentAct.MOVED_BY_ACCIDENT):
        return moved_by_opponent_by_accident(case)
    return opponent_penalised(case)


@provision("9.5b")
def opponent_penalised(case: Case) -> Ruling:
    """The opponent gets one penalty stroke; a ball that was only touched stays where it is."""
    ruling = penalty(1, "9.5b", Who.OPPONENT)
    if case.is_one_of(opponent_act, OpponentAct.TOUCHED_ON_PURPOSE):
        return ruling.play_as_it_lies()
    return must_go_back(ruling.under("9.5a"))


@provision("9.5b Exception 1")
def lifted_when_conceding(case: Case) -> Ruling:
    """Lifting the ball in conceding costs nothing, and the ball need not go back."""
    ruling = no_penalty("9.5b Exception 1").under("9.5a", "3.2b")
    if case.is_one_of(opponent_act, OpponentAct.CONCEDED_STROKE):
        return ruling.next(Action.HOLED).note("next_stroke_conceded")
    return ruling.next(Action.HOLE_OVER)


@provision("9.5b Exception 1")
def lifted_at_players_request(case: Case) -> Ruling:
    """Lifting at the player's request costs nothing; the ball goes back unless the player goes elsewhere."""
    ruling = no_penalty("9.5b Exception 1").under("9.5a")
    if case[going_elsewhere]:
        return ruling.next(Action.PLAY_ON).note("go_on_under_that_rule")
    return must_go_back(ruling)


@provision("9.5b Exception 2")
def lifted_by_opponent_as_own(case: Case) -> Ruling:
    """On the green, marking and lifting the player's ball in the belief that it is one's own costs nothing."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN) and case[opponent_marked_spot]:
        return must_go_back(no_penalty("9.5b Exception 2").under("9.5a"))
    return must_go_back(penalty(1, "9.5b", Who.OPPONENT).under("9.5a"))


@provision("9.5b Exception 3")
def moved_by_opponent_by_accident(case: Case) -> Ruling:
    """The opponent is protected by the same exceptions for accidents as the player."""
    free = must_go_back(no_penalty("9.5b Exception 3").under("9.5a"))
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return free.under("13.1d(1)")
    if case.is_one_of(moved_while, Doing.SEARCHING):
        return free.under("7.4")
    if case.is_one_of(moved_while, Doing.MOVING_AWAY_FROM_BALL):
        return must_go_back(no_penalty("Clarification 11.1b/2").under("9.5a"))
    applying = case.is_one_of(moved_while, Doing.REMOVING_MOVABLE_OBSTRUCTION, *APPLYING_A_RULE)
    if applying and case[actions_reasonable]:
        return free.under("9.4b Exception 4")
    return must_go_back(penalty(1, "9.5b", Who.OPPONENT).under("9.5a"))


@provision("9.6")
def moved_by_outside_influence(case: Case) -> Ruling:
    """A ball that an outside influence lifted or moved goes back without penalty, found or not."""
    if case.is_one_of(outside_cause_known, OutsideCause.AN_ANIMAL):
        return certainly_moved_by_outside_influence(case).caution("animal_may_be_near")
    if case.is_one_of(outside_cause_known, OutsideCause.YES):
        return certainly_moved_by_outside_influence(case)
    if case[found_after_moving]:
        return moved_by_natural_forces(case).under("9.2b(2)")
    return lost_unless_certain(case)


@provision("9.6")
def certainly_moved_by_outside_influence(case: Case) -> Ruling:
    """It goes back; another ball serves if it cannot be got back with reasonable effort."""
    found = case[moved_ball_found]
    if found is MovedBall.LIE_ALTERED:
        return place_on_similar_lie(no_penalty("9.6"))
    ruling = must_go_back(no_penalty("9.6"))
    if found is MovedBall.FOUND:
        return ruling
    return ruling.next(Action.REPLACE, WhichBall.ORIGINAL_OR_ANOTHER).under("14.2a Exception")


@provision("9.6")
def lost_unless_certain(_case: Case) -> Ruling:
    """A ball not found is lost when it is not certain that an outside influence took it."""
    relief = stroke_and_distance("18.2b")
    return no_penalty("9.6").under("18.2a(1)").with_options(relief, may_play_as_it_lies=False)
