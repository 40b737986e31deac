"""Model Local Rules, area F: power lines and cables put up for a competition."""

from marram.rules.book.local_rules.area_e_places import stroke_replayed
from marram.rules.book.local_rules.area_f_ground import in_penalty_area_or_tee
from marram.rules.book.local_rules.without_local_rule import no_local_relief
from marram.rules.book.relief_options import offer
from marram.rules.book.rule_16_conditions import abnormal_course_condition
from marram.rules.book.rule_16_options import in_penalty_area
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.local_zones import (
    TemporaryLine,
    hit_rising_part,
    temporary_line_hit_for_certain,
    temporary_line_thing,
)
from marram.rules.facts.relief import (
    Interference,
    interference,
    only_by_unreasonable_choice,
    point_in_penalty_area_exists,
    stroke_unreasonable_anyway,
)
from marram.rules.ruling import Ruling, no_penalty


@provision("F-22")
def hit_temporary_line(case: Case) -> Ruling:
    """Where adopted, a stroke whose ball hit a hung line is replayed, but not one that hit its rising part."""
    as_it_lies = no_penalty("11.1a").stroke_counts().play_as_it_lies()
    if not (case.local_rule("F-22") and case[temporary_line_hit_for_certain]):
        return as_it_lies
    if case[hit_rising_part]:
        return as_it_lies.under("F-22").note("rising_part_is_not_replayed")
    return stroke_replayed(case, "F-22")


@provision("F-22")
def temporary_line_in_the_way(case: Case) -> Ruling:
    """Cables, mats and stands are obstructions; where adopted, a covered trench is ground under repair too."""
    thing = case[temporary_line_thing]
    if thing is TemporaryLine.MOVABLE:
        return no_penalty("15.2a(1)").play_as_it_lies().note("may_remove_movable_obstruction")
    if thing is TemporaryLine.COVERED_TRENCH:
        return covered_trench(case)
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA) and case.local_rule("F-22"):
        return fixed_line_in_penalty_area(case)
    return abnormal_course_condition(case)


@provision("F-22")
def covered_trench(case: Case) -> Ruling:
    """Where adopted, a cable trench under grass is ground under repair, even if it is not marked."""
    elsewhere = in_penalty_area_or_tee(case)
    if elsewhere is not None:
        return elsewhere
    if case.local_rule("F-22"):
        return abnormal_course_condition(case).under("F-22")
    return no_local_relief(case)


@provision("F-22")
def fixed_line_in_penalty_area(case: Case) -> Ruling:
    """Where adopted, free relief inside the penalty area, or penalty relief outside it."""
    touched = case.is_one_of(
        interference, Interference.BALL, Interference.BALL_ABOVE_GROUND, Interference.STANCE_OR_SWING
    )
    ruling = no_penalty("F-22").under("17.1b")
    if not touched or case[stroke_unreasonable_anyway] or case[only_by_unreasonable_choice]:
        return offer(ruling.note("no_free_relief"), *penalty_area_relief(case))
    if not case[point_in_penalty_area_exists]:
        return offer(ruling.note("no_free_relief"), *penalty_area_relief(case))
    return offer(ruling, in_penalty_area("F-22"), *penalty_area_relief(case))
