"""Rules 2.4, 16.1f and 17.1e: no play zones."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.book.rule_16_conditions import condition_or_zone, in_teeing_area
from marram.rules.book.rule_16_options import in_penalty_area
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_19_unplayable import unplayable_relief
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.relief import (
    ZoneInterference,
    no_play_zone_interference,
    only_by_unreasonable_choice,
    played_despite_zone,
    point_in_penalty_area_exists,
    stroke_unreasonable_anyway,
)
from marram.rules.relief_option import ReliefOption
from marram.rules.ruling import Ruling, no_penalty


@provision("2.4")
def no_play_zone(case: Case) -> Ruling:
    """A ball must not be played from a no play zone, nor with stance or swing interfered with by one."""
    if case.is_one_of(no_play_zone_interference, ZoneInterference.NONE):
        return no_penalty("2.4").play_as_it_lies()
    if case[played_despite_zone]:
        return played_from_zone(case)
    inside = case.is_one_of(no_play_zone_interference, ZoneInterference.BALL_INSIDE)
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return in_zone_of_penalty_area(case) if inside else beside_zone_in_penalty_area(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    return in_zone_of_condition(case) if inside else beside_zone(case)


@provision("2.4")
def played_from_zone(case: Case) -> Ruling:
    """A stroke from a no play zone, or with one interfering, is a stroke from a wrong place."""
    return played_from_wrong_place(case).under("2.4")


@provision("16.1f(1)")
def in_zone_of_condition(case: Case) -> Ruling:
    """A ball in a no play zone must be played from elsewhere: relief as from an abnormal course condition."""
    return offer(no_penalty("16.1f(1)"), *condition_or_zone(case), may_play_as_it_lies=False)


@provision("16.1f(2)")
def beside_zone(case: Case) -> Ruling:
    """A zone interfering with stance or swing: free relief where allowed, or unplayable ball relief."""
    options: tuple[ReliefOption, ...] = ()
    if not (case[stroke_unreasonable_anyway] or case[only_by_unreasonable_choice]):
        options = condition_or_zone(case)
    options = (*options, *unplayable_relief(case))
    return offer(no_penalty("16.1f(2)"), *options, may_play_as_it_lies=False)


@provision("17.1e(1)")
def in_zone_of_penalty_area(case: Case) -> Ruling:
    """A ball in a no play zone of a penalty area must be played from outside, with penalty relief."""
    return offer(no_penalty("17.1e(1)"), *penalty_area_relief(case), may_play_as_it_lies=False)


@provision("17.1e(2)")
def beside_zone_in_penalty_area(case: Case) -> Ruling:
    """A zone interfering with stance or swing: penalty relief, or free relief inside the penalty area."""
    options: tuple[ReliefOption, ...] = ()
    unreasonable = case[stroke_unreasonable_anyway] or case[only_by_unreasonable_choice]
    if not unreasonable and case[point_in_penalty_area_exists]:
        options = (in_penalty_area("17.1e(2)"),)
    options = (*options, *penalty_area_relief(case))
    return offer(no_penalty("17.1e(2)"), *options, may_play_as_it_lies=False)
