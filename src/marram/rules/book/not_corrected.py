"""What follows when a mistake that must be corrected is not: disqualification, or no score for the hole."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.ruling import Action, Ruling, disqualification, no_penalty


def disqualified_or_without_score(case: Case, citation: str) -> Ruling:
    """Disqualify under ``citation`` in regular stroke play; elsewhere only the hole is lost.

    For a failure to correct a stroke from outside the teeing area (Rule 6.1b), a wrong ball (Rule 6.3c) or
    a serious breach in playing from a wrong place (Rule 14.7b). In match play the question does not arise.
    """
    if case.is_one_of(form_of_play, FormOfPlay.STABLEFORD):
        return no_points(case)
    if case.is_one_of(form_of_play, FormOfPlay.MAXIMUM_SCORE):
        return maximum_score(case)
    if case.is_one_of(form_of_play, FormOfPlay.PAR_BOGEY):
        return hole_lost(case)
    return disqualification(citation).next(Action.HOLE_OVER)


@provision("21.1c")
def no_points(_case: Case) -> Ruling:
    """Stableford: zero points for the hole instead of disqualification."""
    return no_penalty("21.1c").next(Action.HOLE_OVER).note("uncorrected_no_points")


@provision("21.2c")
def maximum_score(_case: Case) -> Ruling:
    """Maximum Score: the maximum score for the hole instead of disqualification."""
    return no_penalty("21.2c").next(Action.HOLE_OVER).note("uncorrected_maximum_score")


@provision("21.3c")
def hole_lost(_case: Case) -> Ruling:
    """Par/Bogey: the hole is lost instead of disqualification."""
    return no_penalty("21.3c").next(Action.HOLE_OVER).note("uncorrected_hole_lost")
