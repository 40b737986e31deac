"""A breach that is penalised for every hole on which it happened."""

from marram.rules.book.plain_outcomes import in_breach
from marram.rules.engine.case import Case
from marram.rules.facts.round import BreachWhen, breach_when
from marram.rules.ruling import Ruling


def hole_by_hole(case: Case, citation: str) -> Ruling:
    """The general penalty for each hole of the breach; between two holes it counts on the next."""
    when = case[breach_when]
    ruling = in_breach(citation)
    if when is BreachWhen.BETWEEN_HOLES:
        return ruling.note("on_next_hole")
    if when is BreachWhen.SEVERAL_HOLES:
        return ruling.note("one_penalty_for_each_hole")
    return ruling
