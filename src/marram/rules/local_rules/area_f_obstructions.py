"""Model Local Rules, area F: obstructions near the green, and temporary immovable obstructions."""

from marram.rules.book.relief_options import free, offer
from marram.rules.book.rule_16_conditions import (
    abnormal_course_condition,
    in_teeing_area,
    stroke_unreasonable,
    unreasonable_choice,
)
from marram.rules.book.rule_16_options import in_general_area, on_putting_green
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.local_conditions import (
    StandInterference,
    condition_at_fairway_height,
    cut_to_fairway_height,
    line_of_play_unreasonable,
    obstruction_from_ball,
    obstruction_from_green,
    obstruction_on_line,
    only_for_short_grass,
    stand_interference,
    stand_within_reach,
)
from marram.rules.facts.relief import only_by_unreasonable_choice, stroke_unreasonable_anyway
from marram.rules.relief_option import Limit, Reference, ReliefOption
from marram.rules.ruling import NotCovered, Ruling, no_penalty

CLOSE_TO_GREEN = 2
"""Club-lengths within which the obstruction must be of the green, and of the ball (F-5)."""


@provision("F-5")
def obstruction_near_green(case: Case) -> Ruling:
    """Where adopted, line of play relief from an immovable obstruction close to the green and to the ball."""
    if not case.is_one_of(area_of_ball, Area.GENERAL_AREA):
        return not_from_general_area(case)
    if not (case.local_rule("F-5") and close_enough(case) and short_enough(case)):
        return no_line_relief(case)
    if case[line_of_play_unreasonable]:
        return no_line_relief(case)
    if case[stroke_unreasonable_anyway]:
        return stroke_unreasonable(case)
    ruling = offer(no_penalty("F-5").under("16.1b"), in_general_area())
    return ruling.note("clear_of_line_of_play_too")


def close_enough(case: Case) -> bool:
    """On the line of play, within two club-lengths of the green and of the ball."""
    return (
        case[obstruction_on_line]
        and case.at_most(obstruction_from_green, CLOSE_TO_GREEN)
        and case.at_most(obstruction_from_ball, CLOSE_TO_GREEN)
    )


def short_enough(case: Case) -> bool:
    """The narrower form wants ball and obstruction in ground cut to fairway height or less."""
    if not case[only_for_short_grass]:
        return True
    return case[cut_to_fairway_height] and case[condition_at_fairway_height]


def no_line_relief(_case: Case) -> Ruling:
    """Off the green the line of play alone gives no relief."""
    return no_penalty("16.1a(1)").play_as_it_lies().note("no_line_of_play_relief")


@provision("F-5")
def not_from_general_area(case: Case) -> Ruling:
    """On the green Rule 16.1d already gives line of play relief; from a bunker or penalty area none does."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN) and case[obstruction_on_line]:
        return offer(no_penalty("16.1d"), on_putting_green(case))
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    return no_line_relief(case)


@provision("F-23")
def temporary_immovable_obstruction(case: Case) -> Ruling | NotCovered:
    """Where adopted, stands, tents and boards give relief from the line of sight too; else Rule 16.1 alone."""
    if not case.local_rule("F-23"):
        return abnormal_course_condition(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    if not case.is_one_of(area_of_ball, Area.GENERAL_AREA):
        return NotCovered("stand_outside_general_area", "F-23")
    how = case[stand_interference]
    if how is StandInterference.NONE:
        return no_penalty("F-23").play_as_it_lies().note("no_free_relief")
    if case[stroke_unreasonable_anyway]:
        return stroke_unreasonable(case)
    if case[only_by_unreasonable_choice]:
        return unreasonable_choice(case)
    if how is StandInterference.PHYSICAL:
        return offer(no_penalty("16.1b").under("F-23"), in_general_area())
    return in_line_of_sight(case, also_physical=how is StandInterference.BOTH)


@provision("F-23")
def in_line_of_sight(case: Case, *, also_physical: bool) -> Ruling:
    """Relief from the line of sight wants an obstruction that the ball could reach."""
    if not case[stand_within_reach]:
        if also_physical:
            return offer(no_penalty("16.1b").under("F-23"), in_general_area())
        return no_penalty("F-23").play_as_it_lies().note("no_free_relief")
    options = (in_general_area(), clear_of_line_of_sight()) if also_physical else (clear_of_line_of_sight(),)
    return offer(no_penalty("F-23"), *options).note("move_along_the_arc")


def clear_of_line_of_sight() -> ReliefOption:
    """Within one club-length of the nearest point where neither interference is left."""
    return free(
        "F-23",
        Reference.NEAREST_POINT,
        (Limit.NOT_NEARER, Limit.GENERAL_AREA, Limit.COMPLETE_RELIEF),
    )
