"""Rule 18.3: two provisional balls played from one spot, each standing for the ball before it (Clarification 18.3a/3)."""

from dataclasses import replace

from marram.rules.book.relief_options import CONTINUE_WITH_PROVISIONAL
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.lost import ProvisionalState
from marram.rules.ruling import Action, Ruling, no_penalty, penalty

CONTINUE_WITH_SECOND = replace(CONTINUE_WITH_PROVISIONAL, penalty=2)
"""Going on with the second provisional ball: stroke and distance for the original, and for the first one."""


@provision("18.3c(2)")
def provisional_in_play(_case: Case) -> Ruling:
    """The provisional ball has become the ball in play, under stroke and distance."""
    ruling = no_penalty("18.3c(2)").with_options(CONTINUE_WITH_PROVISIONAL)
    return ruling.next(Action.PLAY_PROVISIONAL).note("original_out_of_play")


@provision("Clarification 18.3a/3")
def second_provisional_in_play(_case: Case) -> Ruling:
    """With the original and the first provisional ball gone, the second comes into play for two strokes."""
    ruling = no_penalty("18.3c(2)").under("Clarification 18.3a/3").with_options(CONTINUE_WITH_SECOND)
    return ruling.next(Action.PLAY_PROVISIONAL).note("original_out_of_play", "second_provisional_counts")


def which_provisional_in_play(case: Case, provisional: ProvisionalState) -> Ruling:
    """Return the ruling where a provisional ball is at hand: the first, or the second where the first is gone."""
    if provisional is ProvisionalState.SECOND_FOUND:
        return second_provisional_in_play(case)
    return provisional_in_play(case)


def provisional_gone_too(provisional: ProvisionalState) -> Ruling:
    """Return the strokes of stroke and distance for the original, and for all but the last provisional ball."""
    if provisional is ProvisionalState.BOTH_LOST_OR_OUT:
        return penalty(2, "18.2b").under("Clarification 18.3a/3").note("both_provisionals_lost_too")
    return penalty(1, "18.2b").note("provisional_lost_too")
