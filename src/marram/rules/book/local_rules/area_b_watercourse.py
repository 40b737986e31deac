"""Model Local Rules, area B: a ditch or other open watercourse that is no penalty area."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_16_options import in_general_area
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_19_unplayable import after_penalty_area, unplayable_relief_outside_bunker
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_course import Watercourse, watercourse_by_notice
from marram.rules.ruling import Ruling, no_penalty


@provision("B-4")
def ball_in_watercourse(case: Case) -> Ruling:
    """An open watercourse is a penalty area, marked or dry, unless the Local Rule makes it general area."""
    how = case[watercourse_by_notice] if case.local_rule("B-4") else Watercourse.NOT_NAMED
    if how is Watercourse.GENERAL_AREA:
        options = (*unplayable_relief_outside_bunker(case), *after_penalty_area(case))
        return offer(no_penalty("B-4").note("ditch_is_general_area"), *options)
    if how is Watercourse.OBSTRUCTION:
        ruling = no_penalty("B-4").under("16.1b").note("ditch_is_obstruction")
        return offer(ruling, in_general_area())
    ruling = no_penalty("17.1b").under("Definitions: penalty area", "17.1d")
    return offer(ruling, *penalty_area_relief(case)).note("ditch_is_penalty_area")
