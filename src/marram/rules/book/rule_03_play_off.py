"""Rule 3.3a: a play-off for a tie in stroke play that not all players complete."""

from marram.rules.book.plain_outcomes import free
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.play_off import PlayOff, not_completing_play_off
from marram.rules.ruling import Action, Ruling, no_penalty


@provision("3.3a")
def play_off_not_completed(case: Case) -> Ruling:
    """With two players the other has won; with more, the order in which they left decides where it must."""
    if case.match_play:
        return free("3.2a(4)").note("tied_match_has_no_play_off")
    if case.is_one_of(not_completing_play_off, PlayOff.ONE_OF_TWO):
        return no_penalty("3.3a").next(Action.HOLE_OVER).note("other_wins_play_off")
    return free("3.3a").note("order_of_leaving_play_off")
