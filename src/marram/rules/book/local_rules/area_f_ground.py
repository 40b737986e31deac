"""Model Local Rules, area F: ground that a notice, a referee or its own look makes ground under repair."""

from marram.rules.book.local_rules.without_local_rule import no_local_relief
from marram.rules.book.rule_16_conditions import (
    abnormal_course_condition,
    in_teeing_area,
    no_relief_in_penalty_area,
)
from marram.rules.book.rule_19_unplayable import as_it_lies_or_unplayable
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.local_conditions import only_stance_interference, stance_left_out
from marram.rules.facts.local_ground import (
    clearly_hoof_damage,
    declared_on_the_spot,
    ground_marked_under_repair,
    ground_tied_to_obstruction,
    hoof_damage_relief_on_green,
)
from marram.rules.facts.relief import Interference, interference
from marram.rules.ruling import Ruling, no_penalty


@provision("F-3")
def ground_beside_obstruction(case: Case) -> Ruling:
    """Where adopted, marked ground that ends at an obstruction is one condition with it; else they are two."""
    ruling = abnormal_course_condition(case)
    if not any(option.citation.startswith("16.1") for option in ruling.relief):
        return ruling
    if case.local_rule("F-3") and case[ground_tied_to_obstruction]:
        return ruling.under("F-3").note("joined_conditions_are_one")
    return ruling.note("conditions_one_by_one")


@provision("F-4")
def unusual_damage(case: Case) -> Ruling:
    """Where adopted, a referee may declare unusual damage ground under repair; else it has to be marked."""
    elsewhere = in_penalty_area_or_tee(case)
    if elsewhere is not None:
        return elsewhere
    if case[ground_marked_under_repair]:
        return abnormal_course_condition(case)
    if case.local_rule("F-4") and case[declared_on_the_spot]:
        return abnormal_course_condition(case).under("F-4")
    return no_local_relief(case)


@provision("F-13")
def hoof_damage(case: Case) -> Ruling:
    """Where adopted, damage clearly made by hooves is ground under repair; on the green it may be repaired."""
    elsewhere = in_penalty_area_or_tee(case)
    if elsewhere is not None:
        return elsewhere
    on_green = case.is_one_of(area_of_ball, Area.PUTTING_GREEN)
    adopted = case.local_rule("F-13") and case[clearly_hoof_damage]
    if on_green and not (adopted and case[hoof_damage_relief_on_green]):
        ruling = no_penalty("13.1c(2)").note("repair_hoof_damage_on_green")
        return as_it_lies_or_unplayable(ruling, case)
    if not adopted:
        return no_local_relief(case)
    ruling = named_under_repair(case, "F-13")
    return ruling.note("repair_hoof_damage_on_green") if on_green else ruling


@provision("F-21")
def painted_line(case: Case) -> Ruling:
    """Where adopted, painted lines and dots are ground under repair; else they are part of the ground."""
    elsewhere = in_penalty_area_or_tee(case)
    if elsewhere is not None:
        return elsewhere
    if not case.local_rule("F-21"):
        return no_local_relief(case)
    return named_under_repair(case, "F-21")


@provision("16.1a(1)")
def named_under_repair(case: Case, code: str) -> Ruling:
    """Relief as from ground under repair; for the stance alone only if the Local Rule does not leave it out."""
    if stance_does_not_count(case):
        return as_it_lies_or_unplayable(no_penalty(code).note("no_free_relief"), case)
    return abnormal_course_condition(case).under(code)


def stance_does_not_count(case: Case) -> bool:
    """Whether only the stance is interfered with, and the Local Rule as adopted leaves that out."""
    if not case.is_one_of(interference, Interference.STANCE_OR_SWING):
        return False
    return case[stance_left_out] and case[only_stance_interference]


def in_penalty_area_or_tee(case: Case) -> Ruling | None:
    """Return the ruling for a ball where no such Local Rule changes it; ``None`` elsewhere."""
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return no_relief_in_penalty_area(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    return None
