"""Rules 9.3 to 9.7: a moved ball played from where it should not have been."""

from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.cause import Cause, what_moved_ball
from marram.rules.facts.lifting import Marking, spot_marking
from marram.rules.facts.movement import (
    NewPlace,
    known_before_stroke,
    lifted_and_replaced_on_green,
    new_place,
    put_in_play_by_hand,
)
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.penalty import general
from marram.rules.ruling import Deadline, Ruling, no_penalty, penalty


@provision("14.7a")
def moved_ball_not_replaced(case: Case) -> Ruling:
    """Playing a moved ball without replacing it is a wrong place, unless nobody could know that it moved."""
    if case.is_one_of(what_moved_ball, Cause.PLAYER):
        return not_replaced_after_moving_it_oneself(case)
    if not case[known_before_stroke]:
        return movement_learned_of_too_late(case)
    if case.is_one_of(what_moved_ball, Cause.NATURAL_FORCES):
        return not_replaced_after_natural_forces(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return played_from_inside_teeing_area(case)
    return played_from_wrong_place(case)


@provision("6.2b(6)")
def played_from_inside_teeing_area(_case: Case) -> Ruling:
    """A ball that lay in the teeing area need not go back: it may be played from anywhere inside it."""
    return no_penalty("6.2b(6)").stroke_counts().play_as_it_lies()


@provision("9.3")
def not_replaced_after_natural_forces(case: Case) -> Ruling:
    """After natural forces only a ball under one of the exceptions had to be replaced."""
    if case[lifted_and_replaced_on_green]:
        return played_from_wrong_place(case).under("13.1d(2)")
    if not case.played_since(EDITION_2023) or not case[put_in_play_by_hand]:
        return no_penalty("9.3").stroke_counts().play_as_it_lies()
    if case.is_one_of(new_place, NewPlace.SAME_AREA):
        return no_penalty("9.3").stroke_counts().play_as_it_lies()
    return played_from_wrong_place(case).under("9.3 Exception 2")


@provision("1.3c(4)")
def not_replaced_after_moving_it_oneself(case: Case) -> Ruling:
    """Who moves the ball and plays it unreplaced gets the general penalty in total, even when unaware."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return played_from_inside_teeing_area(case)
    return played_from_wrong_place(case).under("9.4b", "1.3c(4)", "Clarification 9.2a/2")


@provision("9.2a")
def movement_learned_of_too_late(_case: Case) -> Ruling:
    """A stroke made before anybody could know of the movement was made from the right place."""
    return no_penalty("9.2a").under("Clarification 9.2a/1").stroke_counts().play_as_it_lies()


@provision("9.3")
def ball_put_back_when_not_allowed(case: Case) -> Ruling:
    """A ball that had to be played from its new spot was lifted, and put in a wrong place."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return played_from_inside_teeing_area(case)
    if case[played_since_put_down]:
        return played_from_wrong_place(case).under("9.3")
    back = "put_back_where_it_had_come_to_rest"
    ruling = lifted_where_it_had_come_to_rest(case).replace_ball().note(back)
    return ruling.correct(back, Deadline.BEFORE_STROKE, general("14.7a"))


@provision("9.4b")
def lifted_where_it_had_come_to_rest(case: Case) -> Ruling:
    """Lifting it costs one stroke, but on the green only if its spot was not marked."""
    if not case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return penalty(1, "9.4b")
    if case.is_one_of(spot_marking, Marking.RIGHT):
        return no_penalty("13.1b")
    return penalty(1, "14.1a").under("13.1b")
