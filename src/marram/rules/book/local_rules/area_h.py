"""Model Local Rules, area H: caddies forbidden, restricted or required."""

from marram.rules.book.hole_by_hole import hole_by_hole
from marram.rules.book.plain_outcomes import free
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_conduct import CaddieFault, caddie_fault
from marram.rules.facts.round import BreachWhen, breach_when
from marram.rules.ruling import Ruling

_CADDIE_RULES = {
    CaddieFault.HAD_CADDIE: "H-1.1",
    CaddieFault.HAD_BARRED_CADDIE: "H-1.2",
    CaddieFault.HAD_NO_CADDIE: "H-1.3",
}


@provision("10.3a")
def caddie_against_local_rule(case: Case) -> Ruling:
    """Having a caddie is free unless a Local Rule forbids, restricts or requires it."""
    fault = case[caddie_fault]
    code = _CADDIE_RULES[fault]
    if not case.local_rule(code):
        return free("10.3a")
    if fault is CaddieFault.HAD_NO_CADDIE:
        return had_no_caddie(case)
    return hole_by_hole(case, code)


@provision("H-1.3")
def had_no_caddie(case: Case) -> Ruling:
    """Only holes played without a caddie count, not the time between holes."""
    if case.is_one_of(breach_when, BreachWhen.BETWEEN_HOLES):
        return free("H-1.3")
    return hole_by_hole(case, "H-1.3")
