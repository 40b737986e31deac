"""Model Local Rules, area A: boundaries that hold for some holes only, and stakes that show a boundary."""

from marram.rules.book.rule_02_course import no_free_relief
from marram.rules.book.rule_16_conditions import abnormal_course_condition
from marram.rules.book.rule_18_lost import near_boundary
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.course import Thing
from marram.rules.facts.local_course import (
    CourseStake,
    boundary_for_tee_stroke,
    boundary_for_this_hole,
    course_stake,
)
from marram.rules.ruling import Ruling, no_penalty


@provision("A-4")
def inner_boundary_holds(case: Case) -> str:
    """Return the Local Rule by which a boundary inside the course holds for this stroke; empty if none does."""
    if case.local_rule("A-4") and case[boundary_for_this_hole]:
        return "A-4"
    if case.played_since(EDITION_2023) and case.local_rule("A-4.2") and case[boundary_for_tee_stroke]:
        return "A-4.2"
    return ""


@provision("A-4")
def beyond_internal_boundary(case: Case) -> Ruling:
    """A boundary inside the course exists only by Local Rule, and only for what it names."""
    holds = inner_boundary_holds(case)
    if not holds:
        return no_penalty("2.1").play_as_it_lies().note("only_boundary_of_notice")
    return near_boundary(case).under(holds)


@provision("A-5")
def stake_in_the_way(case: Case) -> Ruling:
    """Stakes that only show a boundary are obstructions where the Local Rule says so, else boundary objects."""
    if case[course_stake] is CourseStake.INTERNAL_BOUNDARY:
        return internal_stake_in_the_way(case)
    if case.local_rule("A-5"):
        return abnormal_course_condition(case).under("A-5").note("stake_is_obstruction")
    return no_free_relief(case, Thing.BOUNDARY_OBJECT)


@provision("A-4")
def internal_stake_in_the_way(case: Case) -> Ruling:
    """Stakes of an inner boundary are boundary objects for the holes it holds for, else obstructions.

    A boundary for strokes from the teeing area only (A-4.2) leaves them obstructions for every ball that has
    left it.
    """
    if case.local_rule("A-4") and case[boundary_for_this_hole]:
        return no_free_relief(case, Thing.BOUNDARY_OBJECT).under("A-4")
    return abnormal_course_condition(case).note("stake_is_obstruction")
