"""Rule 10.2a: advice."""

from marram.rules.book.plain_outcomes import free, in_breach
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.advice import (
    AdviceDeed,
    AdvicePerson,
    OngoingAdvice,
    advice_deed,
    advice_to_or_from,
    during_round,
    ongoing_advice,
    was_advice,
)
from marram.rules.ruling import Ruling


@provision("10.2a")
def advice_exchanged(case: Case) -> Ruling:
    """During a round advice may be given to, and asked of, one's own side only."""
    deed = case[advice_deed]
    if deed is AdviceDeed.ONLY_LOOKED:
        return free("10.2a").note("looking_is_free_touching_is_not")
    if not case[was_advice]:
        return free("Definitions: advice")
    if not case[during_round]:
        return free("10.2a").note("advice_free_outside_round")
    if deed is AdviceDeed.TOUCHED_EQUIPMENT:
        return in_breach("10.2a")
    if deed is AdviceDeed.RECEIVED_UNASKED:
        return advice_received_unasked(case)
    if deed is AdviceDeed.GAVE:
        return advice_given(case)
    return advice_asked(case)


@provision("10.2a")
def advice_given(case: Case) -> Ruling:
    """Giving advice to a player of the competition who is playing is a breach."""
    if case.is_one_of(advice_to_or_from, AdvicePerson.PLAYER_ON_COURSE):
        return in_breach("10.2a").note("receiver_not_penalised_unless_asked")
    return free("10.2a")


@provision("10.2a")
def advice_asked(case: Case) -> Ruling:
    """Asking anybody but one's own side, or a named advice giver, is a breach, whether or not answered."""
    asked = case[advice_to_or_from]
    if asked is AdvicePerson.OWN_SIDE:
        return free("10.2a")
    if asked is AdvicePerson.ADVICE_GIVER:
        return free("24.4a")
    return in_breach("10.2a").note("adviser_penalised_if_answered")


@provision("Clarification 10.2a/2")
def advice_received_unasked(case: Case) -> Ruling:
    """Unasked advice costs the receiver nothing, unless the player lets it go on."""
    if case.is_one_of(ongoing_advice, OngoingAdvice.WENT_ON_UNOPPOSED):
        return in_breach("10.2a").under("Clarification 10.2a/2")
    return free("Clarification 10.2a/2").note("giver_in_breach_if_player")
