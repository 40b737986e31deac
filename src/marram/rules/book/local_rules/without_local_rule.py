"""What is left where no Local Rule helps: as it lies, or relief with penalty."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_16_conditions import in_teeing_area
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_19_unplayable import as_it_lies_or_unplayable
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.ruling import Ruling, no_penalty


@provision("9.1a")
def no_local_relief(case: Case) -> Ruling:
    """The ball is played as it lies, or relief with penalty is taken, by the area of the course."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    ruling = no_penalty("9.1a").note("no_free_relief")
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return offer(ruling, *penalty_area_relief(case))
    return as_it_lies_or_unplayable(ruling, case)
