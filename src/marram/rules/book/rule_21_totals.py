"""Rules 21.1c and 21.3c: which penalties counted against the total until 2022."""

from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.penalty import PenaltyKind


@provision("21.1c")
def counts_against_total(case: Case) -> PenaltyKind | None:
    """Until 2022 penalties for clubs, starting time and delay were taken off the total.

    Stableford deducted points from the total of the round, Par/Bogey deducted holes from its result. Since
    2023 these penalties are counted on the hole, as in regular stroke play.
    """
    if case.played_since(EDITION_2023):
        return None
    if case.is_one_of(form_of_play, FormOfPlay.STABLEFORD):
        return PenaltyKind.POINTS_DEDUCTED
    if case.is_one_of(form_of_play, FormOfPlay.PAR_BOGEY):
        return PenaltyKind.HOLES_DEDUCTED
    return None
