"""Model Local Rules, area F: loose impediments that are ground under repair as well."""

from marram.rules.book.rule_16_conditions import abnormal_course_condition, in_teeing_area
from marram.rules.book.rule_18_lost import lost_or_out, not_found_in_condition, stroke_and_distance_instead
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.local_ground import (
    accumulation_named,
    ball_found_in_accumulation,
    certain_in_accumulation,
    dung_of_animal_named,
)
from marram.rules.facts.lost import CrossedArea, crossed_area
from marram.rules.ruling import Ruling, no_penalty


@provision("F-11")
def ant_hill(case: Case) -> Ruling:
    """An ant hill may be removed; where adopted, it may be treated as ground under repair instead."""
    ruling = removed_or_relief(case, "F-11") if case.local_rule("F-11") else only_removed(case)
    return ruling.caution("ants_may_sting")


@provision("F-12")
def animal_dung(case: Case) -> Ruling:
    """Dung may be removed; where adopted, that of animals named may be treated as ground under repair instead."""
    if case.local_rule("F-12") and case[dung_of_animal_named]:
        return removed_or_relief(case, "F-12")
    return only_removed(case)


@provision("15.1a")
def only_removed(_case: Case) -> Ruling:
    """A loose impediment may be removed, and gives no relief."""
    return no_penalty("15.1a").play_as_it_lies().note("may_remove_loose_impediment")


@provision("15.1a")
def removed_or_relief(case: Case, code: str) -> Ruling:
    """The player may remove it, or take the relief of Rule 16.1 if there is interference; a ball in the teeing area may be moved."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case).under("15.1a").note("may_remove_loose_impediment")
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return only_removed(case)
    return abnormal_course_condition(case).under(code, "15.1a").note("may_remove_loose_impediment")


@provision("F-14")
def accumulated_loose_impediments(case: Case) -> Ruling:
    """Where adopted, ground under a temporary accumulation on the holes named is ground under repair."""
    adopted = case.local_rule("F-14") and case[accumulation_named]
    if not case[ball_found_in_accumulation]:
        return not_found_in_accumulation(case) if adopted else lost_or_out(case)
    if adopted and case.is_one_of(area_of_ball, Area.GENERAL_AREA, Area.BUNKER, Area.TEEING_AREA):
        return removed_or_relief(case, "F-14")
    return only_removed(case)


@provision("F-14")
def not_found_in_accumulation(case: Case) -> Ruling:
    """Relief for a ball not found wants knowledge or virtual certainty; not where it went in on the green."""
    if not case[certain_in_accumulation] or case.is_one_of(crossed_area, CrossedArea.PUTTING_GREEN):
        return lost_or_out(case)
    return not_found_in_condition(case, *stroke_and_distance_instead(case)).under("F-14")
