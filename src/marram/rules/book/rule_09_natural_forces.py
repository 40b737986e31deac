"""Rule 9.3: ball moved by natural forces."""

from marram.rules.book.relief_options import stroke_and_distance
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.movement import (
    NewPlace,
    lifted_and_replaced_on_green,
    new_place,
    put_in_play_by_hand,
)
from marram.rules.ruling import Action, Ruling, WhichBall, no_penalty


@provision("9.3")
def moved_by_natural_forces(case: Case) -> Ruling:
    """Wind, water, gravity and the like cost nothing, and the ball is played from its new spot."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN) and case[lifted_and_replaced_on_green]:
        return moved_after_being_replaced_on_green(case)
    if case.is_one_of(new_place, NewPlace.SAME_AREA):
        if case.is_one_of(area_of_ball, Area.TEEING_AREA):
            return lying_in_teeing_area(case)
        return moved_within_its_area(case)
    if case.is_one_of(new_place, NewPlace.IN_THE_HOLE) and case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return blown_into_the_hole(case)
    if case.played_since(EDITION_2023) and case[put_in_play_by_hand]:
        return moved_to_another_area_after_being_put_in_play(case)
    if case.is_one_of(new_place, NewPlace.IN_THE_HOLE):
        return blown_into_the_hole(case)
    if case.is_one_of(new_place, NewPlace.OUT_OF_BOUNDS):
        return blown_out_of_bounds(case)
    return no_penalty("9.3").play_as_it_lies().note("rules_of_new_area_apply")


@provision("9.3")
def moved_within_its_area(_case: Case) -> Ruling:
    """A ball that natural forces moved within its area of the course is played from where it is now."""
    return no_penalty("9.3").play_as_it_lies()


@provision("13.1d(2)")
def moved_after_being_replaced_on_green(_case: Case) -> Ruling:
    """A ball on the green that had already been lifted and replaced goes back, whatever moved it."""
    return must_go_back(no_penalty("13.1d(2)").under("9.3"))


@provision("9.3 Exception 2")
def moved_to_another_area_after_being_put_in_play(_case: Case) -> Ruling:
    """Since 2023 a ball that was dropped, placed or replaced goes back when it leaves its area."""
    return must_go_back(no_penalty("9.3 Exception 2"))


@provision("9.3")
def blown_into_the_hole(_case: Case) -> Ruling:
    """A ball that natural forces move into the hole is holed with the previous stroke."""
    return no_penalty("9.3").next(Action.HOLED).note("holed_with_previous_stroke")


@provision("18.2b")
def blown_out_of_bounds(_case: Case) -> Ruling:
    """A ball at rest that natural forces move out of bounds is out of bounds."""
    return (
        no_penalty("9.3").under("18.2b").with_options(stroke_and_distance("18.2b"), may_play_as_it_lies=False)
    )


@provision("6.2b(6)")
def lying_in_teeing_area(_case: Case) -> Ruling:
    """A ball in the teeing area may be moved without penalty and played from anywhere inside it."""
    return no_penalty("6.2b(6)").next(Action.PLAY_FROM_TEEING_AREA, WhichBall.ORIGINAL_OR_ANOTHER)
