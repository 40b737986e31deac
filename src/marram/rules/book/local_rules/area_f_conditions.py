"""Model Local Rules, area F: ground, roots, roads and objects treated as abnormal course conditions."""

from marram.rules.book.local_rules.without_local_rule import no_local_relief
from marram.rules.book.relief_options import offer
from marram.rules.book.rule_16_conditions import (
    abnormal_course_condition,
    bunker_relief,
    stroke_unreasonable,
    unreasonable_choice,
)
from marram.rules.book.rule_16_options import in_general_area, on_putting_green
from marram.rules.book.rule_17_options import without_dropping_inside
from marram.rules.book.rule_19_unplayable import unplayable_relief_in_bunker, unplayable_relief_outside_bunker
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.local_conditions import (
    LocalInterference,
    bunker_taken_out_of_play,
    condition_at_fairway_height,
    cut_to_fairway_height,
    local_interference,
    object_named_immovable,
    stance_left_out,
    way_artificially_surfaced,
)
from marram.rules.facts.penalty_area import last_stroke_from_penalty_area
from marram.rules.facts.relief import (
    Interference,
    interference,
    only_by_unreasonable_choice,
    stroke_unreasonable_anyway,
)
from marram.rules.relief_option import ReliefOption
from marram.rules.ruling import Ruling, no_penalty


@provision("F-7")
def turf_seam(case: Case) -> Ruling:
    """Where adopted, relief from a seam of laid turf for ball or swing, never for the stance alone."""
    if not case.local_rule("F-7"):
        return no_local_relief(case)
    if not case.is_one_of(area_of_ball, Area.GENERAL_AREA, Area.PUTTING_GREEN):
        return no_local_relief(case)
    if not case.is_one_of(local_interference, LocalInterference.BALL, LocalInterference.SWING):
        return no_local_relief(case)
    return local_relief(case, "F-7").note("seams_count_as_one")


@provision("F-8")
def crack_in_ground(case: Case) -> Ruling:
    """Where adopted, cracks in ground cut to fairway height or less are ground under repair."""
    if not (case.local_rule("F-8") and _in_general_area(case) and case[cut_to_fairway_height]):
        return no_local_relief(case)
    return relief_with_stance(case, "F-8")


@provision("F-9")
def tree_root(case: Case) -> Ruling:
    """Where adopted, roots showing in ground cut to fairway height are ground under repair for a ball there."""
    if not (case.local_rule("F-9") and _in_general_area(case) and case[cut_to_fairway_height]):
        return no_local_relief(case)
    if not case[condition_at_fairway_height]:
        return no_local_relief(case)
    return relief_with_stance(case, "F-9")


@provision("F-10")
def animal_damage(case: Case) -> Ruling:
    """Where adopted, damage by the animals named is ground under repair in the general area."""
    if not (case.local_rule("F-10") and _in_general_area(case)):
        return no_local_relief(case)
    return relief_with_stance(case, "F-10")


def _in_general_area(case: Case) -> bool:
    return case.is_one_of(area_of_ball, Area.GENERAL_AREA)


@provision("16.1a(1)")
def relief_with_stance(case: Case, code: str) -> Ruling:
    """Ball, swing or stance; the stance alone only if the Local Rule as adopted does not leave it out."""
    how = case[local_interference]
    if how is LocalInterference.NONE:
        return no_local_relief(case)
    if how is LocalInterference.STANCE_ONLY and case[stance_left_out]:
        return no_local_relief(case)
    return local_relief(case, code)


@provision("16.1b")
def local_relief(case: Case, code: str) -> Ruling:
    """Free relief as from ground under repair, with the exceptions of Rule 16.1a(3)."""
    if case[stroke_unreasonable_anyway]:
        return stroke_unreasonable(case)
    if case[only_by_unreasonable_choice]:
        return unreasonable_choice(case)
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return offer(no_penalty(code).under("16.1d"), on_putting_green(case))
    return offer(no_penalty(code).under("16.1b"), in_general_area())


@provision("F-16")
def flooded_bunker(case: Case) -> Ruling:
    """Where adopted, a flooded bunker that is named is ground under repair in the general area, not a bunker."""
    taken_out = case.local_rule("F-16") and case[bunker_taken_out_of_play]
    if not case.is_one_of(
        interference, Interference.BALL, Interference.BALL_ABOVE_GROUND, Interference.STANCE_OR_SWING
    ):
        return offer(no_penalty("16.1a(1)").note("no_free_relief"), *flooded_unplayable(case, taken_out))
    if case[stroke_unreasonable_anyway] or case[only_by_unreasonable_choice]:
        return offer(no_penalty("16.1a(3)").note("no_free_relief"), *flooded_unplayable(case, taken_out))
    if taken_out:
        ruling = offer(no_penalty("F-16").under("16.1b"), in_general_area())
        return ruling.note("bunker_is_general_area")
    return offer(no_penalty("16.1c"), *bunker_relief(case))


@provision("19.2")
def flooded_unplayable(case: Case, taken_out: bool) -> tuple[ReliefOption, ...]:
    """Unplayable ball relief, as outside a bunker when the bunker is none today."""
    options = unplayable_relief_outside_bunker(case) if taken_out else unplayable_relief_in_bunker(case)
    if case[last_stroke_from_penalty_area]:
        return (*options, *without_dropping_inside(case))
    return options


@provision("F-17")
def road_or_path(case: Case) -> Ruling:
    """Where adopted, all roads and paths are immovable obstructions; else only those with artificial surface."""
    if case.local_rule("F-17"):
        return abnormal_course_condition(case).under("F-17")
    if case[way_artificially_surfaced]:
        return abnormal_course_condition(case)
    return no_local_relief(case)


@provision("F-18")
def movable_treated_as_immovable(case: Case) -> Ruling:
    """Where adopted, objects that could be moved, such as stakes, are immovable obstructions and stay put."""
    if case.local_rule("F-18") and case[object_named_immovable]:
        return abnormal_course_condition(case).under("F-18").note("named_object_stays")
    return no_penalty("15.2a(1)").play_as_it_lies().note("may_remove_movable_obstruction")
