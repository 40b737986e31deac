"""Rule 2: the course."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area
from marram.rules.book.rule_16_conditions import something_interferes
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_19_unplayable import as_it_lies_or_unplayable
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.course import (
    Thing,
    thing_in_the_way,
    touches_bunker,
    touches_green,
    touches_penalty_area,
)
from marram.rules.ruling import HandOver, Ruling, no_penalty


@provision("2.2c")
def ball_in_two_areas(case: Case) -> Ruling:
    """A ball lies in one area only: a specific area before the general area; among them a fixed order."""
    if case[touches_penalty_area]:
        treated = "lies_in_penalty_area"
    elif case[touches_bunker]:
        treated = "lies_in_bunker"
    elif case[touches_green]:
        treated = "lies_on_putting_green"
    else:
        treated = "lies_in_general_area"
    return no_penalty("2.2c").play_as_it_lies().note(treated)


@provision("2.3")
def something_in_the_way(case: Case) -> Ruling | HandOver:
    """What may be done about a thing in the way depends on what it is."""
    thing = case[thing_in_the_way]
    if thing is Thing.LOOSE_IMPEDIMENT:
        return no_penalty("15.1a").play_as_it_lies().note("may_remove_loose_impediment")
    if thing is Thing.MOVABLE_OBSTRUCTION:
        return no_penalty("15.2a(1)").play_as_it_lies().note("may_remove_movable_obstruction")
    if thing is Thing.CONDITION:
        return something_interferes(case)
    return no_free_relief(case, thing)


@provision("2.3")
def no_free_relief(case: Case, thing: Thing) -> Ruling:
    """There is no free relief from boundary objects, integral objects and growing things."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return lying_in_teeing_area(case).under("2.3")
    ruling = no_penalty("2.3").note("no_free_relief", "do_not_move_it")
    if thing is Thing.BOUNDARY_OBJECT:
        ruling = ruling.under("Definitions: boundary object")
    if thing is Thing.INTEGRAL_OBJECT:
        ruling = ruling.under("Definitions: integral object")
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return offer(ruling, *penalty_area_relief(case))
    return as_it_lies_or_unplayable(ruling, case)
