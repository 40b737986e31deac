"""Rule 14.1: marking, lifting and cleaning a ball."""

from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.advice import relief_evident
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.lifting import (
    Lifter,
    Marking,
    ReasonForLifting,
    cleaned_when_lifted,
    reason_for_lifting,
    reason_was_reasonable,
    spot_marking,
    who_lifted,
)
from marram.rules.ruling import Action, Ruling, no_penalty, penalty

_REASON_CITED = {
    ReasonForLifting.SEE_IF_RELIEF: "16.4",
    ReasonForLifting.IDENTIFY: "7.3",
    ReasonForLifting.CUT_OR_CRACKED: "4.2c(1)",
}


@provision("14.1")
def ball_lifted(case: Case) -> Ruling:
    """The player's ball at rest was deliberately lifted: by whom, why, marked, cleaned?"""
    if case.is_one_of(who_lifted, Lifter.SOMEONE_ELSE):
        return lifted_by_someone_else(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return lying_in_teeing_area(case)
    if case.is_one_of(who_lifted, Lifter.CADDIE_WITHOUT_AUTHORITY):
        return lifted_by_caddie(case)
    return lifted_by_player(case)


@provision("14.1b")
def lifted_by_someone_else(_case: Case) -> Ruling:
    """Nobody else may lift the ball; whether they are penalised is a matter of Rule 9.5 or 9.6."""
    return no_penalty("14.1b").replace_ball().note("lifted_by_other_see_rule_9")


@provision("14.1b")
def lifted_by_caddie(case: Case) -> Ruling:
    """A caddie lifts without authority only on the putting green, or where relief is to be expected."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return marked_before_lifting(case)
    if case[relief_evident]:
        return lifted_in_expectation_of_relief(case)
    return _replace(penalty(1, "9.4b").under("14.1b"))


@provision("14.1b Exception")
def lifted_in_expectation_of_relief(case: Case) -> Ruling:
    """Where it is reasonable to expect that the player takes relief, the caddie may lift the ball.

    The 2019 book said so by a clarification of December 2018 to Rule 10.3b(2); the 2023 book in Rule 14.1b.
    """
    citation = "14.1b Exception" if case.played_since(EDITION_2023) else "10.3b(2)"
    return no_penalty(citation).next(Action.GO_ON_WITH_RELIEF).note("go_on_with_relief")


@provision("14.1a")
def lifted_by_player(case: Case) -> Ruling:
    """On the green for any reason once marked; elsewhere to take relief, or for a reason a Rule gives."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return marked_before_lifting(case)
    return lifted_off_the_green(case)


@provision("14.1")
def lifted_off_the_green(case: Case) -> Ruling:
    """Off the green what the ball was lifted for decides: relief taken, no reason, or one that lets it go back."""
    if case.is_one_of(reason_for_lifting, ReasonForLifting.TAKING_RELIEF):
        return no_penalty("14.1a").next(Action.GO_ON_WITH_RELIEF).note("go_on_with_relief")
    if case.is_one_of(reason_for_lifting, ReasonForLifting.NO_RULE_ALLOWED, ReasonForLifting.RELIEF_GIVEN_UP):
        return lifted_without_a_right(case)
    return lifted_to_be_replaced(case)


@provision("9.4b")
def lifted_without_a_right(_case: Case) -> Ruling:
    """One stroke where no Rule allowed lifting; who gives relief up loses the right that taking it gave."""
    return _replace(penalty(1, "9.4b"))


@provision("14.1c")
def lifted_to_be_replaced(case: Case) -> Ruling:
    """Lifted to identify, to inspect, for relief or on request: one stroke for any fault in the procedure."""
    reason = case[reason_for_lifting]
    cited = _REASON_CITED.get(reason, "15.3b(2)")
    if reason in _REASON_CITED and not case[reason_was_reasonable]:
        return _replace(penalty(1, cited))
    if not case.is_one_of(spot_marking, Marking.RIGHT):
        return _replace(penalty(1, "14.1a").under(cited))
    if case[cleaned_when_lifted]:
        return _replace(penalty(1, "14.1c").under(cited)).note("no_need_to_put_dirt_back")
    return _replace(no_penalty(cited).under("14.1a"))


@provision("14.1a")
def marked_before_lifting(case: Case) -> Ruling:
    """On the putting green any ball may be lifted and cleaned, once its spot is marked."""
    if case.is_one_of(spot_marking, Marking.RIGHT):
        return _replace(no_penalty("13.1b").under("14.1a"))
    return _replace(penalty(1, "14.1a"))


def _replace(ruling: Ruling) -> Ruling:
    return must_go_back(ruling).note("replace_as_rule_14_2_says")
