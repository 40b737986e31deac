"""Rule 8.1b: what may be done in preparing for a stroke, even if it improves the conditions."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.cause import actions_reasonable, stroke_was_made
from marram.rules.facts.conditions_affecting import (
    Alteration,
    Preparing,
    alteration,
    grounded_lightly,
    least_intrusive_course,
    natural_object_returned,
    preparing_how,
    was_damage_on_green,
)

_REASONABLE = {
    Preparing.SEARCHING: "8.1b(1)",
    Preparing.REMOVING_LOOSE_OR_MOVABLE: "8.1b(2)",
    Preparing.MARKING_LIFTING_REPLACING: "8.1b(3)",
    Preparing.PLACING_FEET: "8.1b(5)",
}
"""Actions allowed as far as they are reasonable, with the provision that allows each."""


@provision("8.1b")
def allowed_in_preparing(case: Case) -> str:
    """Return the provision that allows what the player did, or an empty string."""
    for doing, citation in _REASONABLE.items():
        if case.is_one_of(preparing_how, doing):
            return citation if case[actions_reasonable] else ""
    if case.is_one_of(preparing_how, Preparing.GROUNDING_CLUB):
        return "8.1b(4)" if case[grounded_lightly] else ""
    if case.is_one_of(preparing_how, Preparing.TAKING_STANCE):
        return "8.1b(6)" if case[least_intrusive_course] else ""
    if case.is_one_of(preparing_how, Preparing.STROKE):
        return "8.1b(7)"
    if case.is_one_of(preparing_how, Preparing.BACKSWING):
        return "8.1b(7)" if case[stroke_was_made] else ""
    return ""


@provision("8.1b(11)")
def allowed_in_testing(case: Case) -> str:
    """A natural object may be moved to see whether it is loose, and goes back if it is not."""
    tested = case.is_one_of(preparing_how, Preparing.TESTING_WHETHER_LOOSE)
    return "8.1b(11)" if tested and case[natural_object_returned] else ""


@provision("8.1b(10)")
def allowed_on_green(case: Case) -> bool:
    """On the green sand and loose soil may be removed and damage repaired, but dew and frost stay."""
    if case.is_one_of(alteration, Alteration.SAND_OR_SOIL):
        return True
    return case.is_one_of(alteration, Alteration.SURFACE) and case[was_damage_on_green]
