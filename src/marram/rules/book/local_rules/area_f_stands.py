"""Model Local Rules, area F: temporary immovable obstructions (stands, tents, boards).

Of Model Local Rule F-23 the purpose, the definition and the line of sight were read in print; its procedures in a bunker
or a penalty area, and for one penalty stroke outside them, are second-hand and from memory.
"""

from dataclasses import replace

from marram.rules.book.local_rules.area_e_options import only_dropping_zone, with_dropping_zone
from marram.rules.book.relief_options import free_option, offer
from marram.rules.book.rule_16_conditions import (
    abnormal_course_condition,
    in_teeing_area,
    stroke_unreasonable,
    unreasonable_choice,
)
from marram.rules.book.rule_16_options import in_bunker, in_general_area
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.local_conditions import StandInterference, stand_interference, stand_within_reach
from marram.rules.facts.relief import (
    nearest_point_exists,
    only_by_unreasonable_choice,
    stroke_unreasonable_anyway,
)
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption
from marram.rules.ruling import Ruling, no_penalty

OUTSIDE = ReliefOption(
    ReliefKind.COMPLETE_RELIEF_OUTSIDE,
    "F-23",
    Reference.NEAREST_POINT,
    1,
    (Limit.NOT_NEARER, Limit.GENERAL_AREA, Limit.COMPLETE_RELIEF),
    1,
    clear_of_sight=True,
)
"""For one stroke: out of the bunker or penalty area, at the nearest point in the general area."""


@provision("F-23")
def temporary_immovable_obstruction(case: Case) -> Ruling:
    """Where adopted, stands, tents and boards give relief from the line of sight too; else Rule 16.1 alone."""
    if not case.local_rule("F-23") or case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return abnormal_course_condition(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    how = counted_interference(case)
    if how is StandInterference.NONE:
        return no_penalty("F-23").play_as_it_lies().note("no_free_relief")
    if case[stroke_unreasonable_anyway] or case[only_by_unreasonable_choice]:
        return no_relief_from_stand(case)
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        free_or_outside = (*in_same_area(case, Limit.IN_PENALTY_AREA), OUTSIDE)
        ruling = offer(no_penalty("F-23"), *free_or_outside, *penalty_area_relief(case))
    else:
        first = "16.1b" if how is StandInterference.PHYSICAL else "F-23"
        ruling = offer(no_penalty(first).under("F-23"), *stand_relief(case, how))
    return ruling if how is StandInterference.PHYSICAL else ruling.note("move_along_the_arc")


@provision("F-23")
def counted_interference(case: Case) -> StandInterference:
    """Interference with the line of sight counts only if the ball could reach the obstruction."""
    how = case[stand_interference]
    if how in (StandInterference.NONE, StandInterference.PHYSICAL) or case[stand_within_reach]:
        return how
    return StandInterference.PHYSICAL if how is StandInterference.BOTH else StandInterference.NONE


@provision("16.1a(3)")
def no_relief_from_stand(case: Case) -> Ruling:
    """No free relief when the stroke is unreasonable for another reason, or by choice."""
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        ruling = no_penalty("16.1a(3)").under("F-23").note("no_free_relief")
        return offer(ruling, *penalty_area_relief(case))
    return stroke_unreasonable(case) if case[stroke_unreasonable_anyway] else unreasonable_choice(case)


@provision("F-23")
def stand_relief(case: Case, how: StandInterference) -> tuple[ReliefOption, ...]:
    """The relief of Rule 16.1 from physical interference, and that of the Local Rule from both kinds."""
    if only_dropping_zone(case):
        return with_dropping_zone(case, (), penalty=0)
    physical, sight = how is not StandInterference.LINE_OF_SIGHT, how is not StandInterference.PHYSICAL
    options: tuple[ReliefOption, ...]
    if case.is_one_of(area_of_ball, Area.BUNKER):
        options = in_bunker(case) if physical else ()
        options = (*options, *(in_same_area(case, Limit.IN_BUNKER) if sight else ()), OUTSIDE)
    else:
        options = (in_general_area(),) if physical else ()
        options = (*options, clear_of_line_of_sight(Limit.GENERAL_AREA)) if sight else options
    return with_dropping_zone(case, options, penalty=0)


@provision("F-23")
def in_same_area(case: Case, limit: Limit) -> tuple[ReliefOption]:
    """Free relief in the bunker or penalty area: complete, or as much as can be had there."""
    if case[nearest_point_exists]:
        return (clear_of_line_of_sight(limit),)
    return (
        ReliefOption(
            ReliefKind.MAXIMUM_AVAILABLE, "F-23", Reference.MAXIMUM_POINT, 1, (Limit.NOT_NEARER, limit)
        ),
    )


def clear_of_line_of_sight(limit: Limit) -> ReliefOption:
    """Within one club-length of the nearest point where neither interference is left."""
    limits = (Limit.NOT_NEARER, limit, Limit.COMPLETE_RELIEF)
    return replace(free_option("F-23", Reference.NEAREST_POINT, limits), clear_of_sight=True)
