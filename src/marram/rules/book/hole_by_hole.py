"""A breach that is penalised for every hole on which it happened."""

from marram.rules.book.plain_outcomes import in_breach
from marram.rules.engine.case import Case
from marram.rules.facts.round import BreachWhen, breach_when, holes_of_breach
from marram.rules.penalty import general
from marram.rules.ruling import Ruling

HOLES = 18
"""A round has at most so many holes (Definition of round)."""


def hole_by_hole(case: Case, citation: str) -> Ruling:
    """The general penalty for each hole of the breach; between two holes it counts on the next."""
    when = case[breach_when]
    ruling = in_breach(citation)
    if when is BreachWhen.BETWEEN_HOLES:
        return ruling.note("on_next_hole")
    if when is BreachWhen.SEVERAL_HOLES:
        return breached_on_several(case, citation)
    return ruling


def breached_on_several(case: Case, citation: str) -> Ruling:
    """One general penalty for each hole: two, or three, or as many as a round has."""
    holes = next((count for count in range(2, HOLES) if case.at_most(holes_of_breach, count)), HOLES)
    each = tuple(general(citation) for _ in range(holes - 1))
    return in_breach(citation).also(*each).note("one_penalty_for_each_hole")
