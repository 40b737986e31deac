"""Model Local Rules, area F: immovable obstructions near the putting green."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_16_conditions import in_teeing_area, stroke_unreasonable
from marram.rules.book.rule_16_options import in_general_area, on_putting_green
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.local_conditions import (
    condition_at_fairway_height,
    cut_to_fairway_height,
    line_of_play_unreasonable,
    obstruction_from_ball,
    obstruction_from_green,
    obstruction_on_line,
    only_for_short_grass,
)
from marram.rules.facts.relief import stroke_unreasonable_anyway
from marram.rules.ruling import Ruling, no_penalty

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
