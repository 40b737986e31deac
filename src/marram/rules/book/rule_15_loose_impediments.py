"""Rule 15.1: removing loose impediments."""

from marram.rules.book.rule_08_breach import breach
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.cause import while_searching
from marram.rules.facts.deflection import meant_to_affect_ball
from marram.rules.facts.loose_things import (
    BallWhenRemoved,
    RemovedThing,
    applying_other_rule,
    ball_when_removed,
    likely_to_move_ball,
    removal_improved_conditions,
    removal_moved_ball,
    removed_on_green,
    removed_thing,
)
from marram.rules.ruling import Action, Ruling, no_penalty, penalty


@provision("15.1")
def natural_thing_removed(case: Case) -> Ruling:
    """A natural thing was removed: was it a loose impediment, and where was the ball?"""
    thing = case[removed_thing]
    if thing is RemovedThing.LOOSE_IMPEDIMENT:
        return loose_impediment_removed(case)
    if thing is RemovedThing.SAND_OR_LOOSE_SOIL and case[removed_on_green]:
        return sand_removed_on_green(case)
    return not_a_loose_impediment(case)


@provision("13.1c(1)")
def sand_removed_on_green(_case: Case) -> Ruling:
    """Sand and loose soil may be removed from the putting green, and nowhere else."""
    return no_penalty("13.1c(1)").next(Action.PLAY_ON)


@provision("Definitions: loose impediment")
def not_a_loose_impediment(case: Case) -> Ruling:
    """What is no loose impediment may not be removed so as to improve the conditions of the stroke."""
    if not case[removal_improved_conditions]:
        return no_penalty("8.1a").under("Definitions: loose impediment").next(Action.PLAY_ON)
    return breach(case, "8.1a", "Definitions: loose impediment")


@provision("15.1a")
def loose_impediment_removed(case: Case) -> Ruling:
    """A loose impediment may be removed anywhere and in any way, with two exceptions."""
    state = case[ball_when_removed]
    if state is BallWhenRemoved.AT_REST:
        return with_ball_at_rest(case)
    if state is BallWhenRemoved.TO_BE_REPLACED:
        return where_ball_must_be_replaced(case)
    if state is BallWhenRemoved.IN_MOTION:
        return to_affect_ball_in_motion(case)
    return before_dropping_or_placing(case)


@provision("Clarification 15.1a/1")
def before_dropping_or_placing(_case: Case) -> Ruling:
    """Before a ball is dropped or placed in taking relief, loose impediments may be removed."""
    return no_penalty("15.1a").under("Clarification 15.1a/1").next(Action.PLAY_ON)


@provision("15.1a Exception 1")
def where_ball_must_be_replaced(case: Case) -> Ruling:
    """Off the putting green nothing may be removed that would probably have moved the ball lying there."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN) or not case[likely_to_move_ball]:
        return no_penalty("15.1a").replace_ball()
    return penalty(1, "15.1a Exception 1").replace_ball().note("removed_thing_stays_away")


@provision("15.1a Exception 2")
def to_affect_ball_in_motion(case: Case) -> Ruling:
    """While a ball is in motion nothing may be removed on purpose to affect where it comes to rest."""
    if not case[meant_to_affect_ball]:
        return no_penalty("15.1a").next(Action.PLAY_ON)
    return breach(case, "11.3", "15.1a Exception 2")


@provision("15.1b")
def with_ball_at_rest(case: Case) -> Ruling:
    """If the removal moves the ball it is replaced, for one stroke unless the area or an exception saves it."""
    if not case[removal_moved_ball]:
        return no_penalty("15.1a").play_as_it_lies()
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return must_go_back(no_penalty("13.1d(1)").under("15.1b"))
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return moved_in_teeing_area(case)
    if case[while_searching]:
        return must_go_back(no_penalty("7.4").under("15.1b"))
    if case[applying_other_rule]:
        return must_go_back(no_penalty("9.4b Exception 4").under("15.1b"))
    return must_go_back(penalty(1, "9.4b").under("15.1b"))


@provision("6.2b(6)")
def moved_in_teeing_area(_case: Case) -> Ruling:
    """A ball lying in the teeing area may be moved without penalty and played from anywhere in it."""
    return no_penalty("6.2b(6)").under("15.1b").next(Action.PLAY_FROM_TEEING_AREA)
