"""Model Local Rules, area B: relief on the opposite side of a red penalty area."""

from marram.rules.book.relief_options import lateral
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_course import crossed_where_opposite_allowed
from marram.rules.relief_option import Limit, Reference, ReliefOption


@provision("B-2")
def opposite_side_relief(case: Case) -> tuple[ReliefOption, ...]:
    """One more option for one stroke: across a red penalty area, from the point as far from the hole."""
    if case.local_rule("B-2") and case[crossed_where_opposite_allowed]:
        return (lateral("B-2", Reference.OPPOSITE_EDGE, extra_limits=(Limit.OUTSIDE_PENALTY_AREA,)),)
    return ()
