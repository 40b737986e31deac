"""Rule 3.2a: who won a hole or a match, and what follows a tie."""

from marram.rules.book.plain_outcomes import free
from marram.rules.book.rule_01_playing_by_the_rules import agreed_to_ignore
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conduct import knew_it_applied
from marram.rules.facts.match_result import (
    MatchState,
    hole_had_begun,
    match_may_end_tied,
    match_state,
)
from marram.rules.ruling import Action, Ruling, no_penalty

_DECIDED = {
    MatchState.FEWER_STROKES: ("3.2a(1)", "hole_won"),
    MatchState.HOLE_PENALTY: ("3.2a(1)", "hole_won_by_opponent"),
    MatchState.SAME_STROKES: ("3.2a(2)", "hole_tied"),
    MatchState.LEADS_BY_MORE: ("3.2a(3)", "match_won"),
    MatchState.OPPONENT_OUT: ("3.2a(3)", "match_won"),
}


@provision("3.2a")
def hole_or_match_result(case: Case) -> Ruling:
    """A match is played by holes; in stroke play the lowest total decides."""
    if not case.match_play:
        return free("3.3a").note("lowest_total_wins")
    state = case[match_state]
    if state is MatchState.AGREED_TIED:
        return agreed_to_tie(case)
    if state is MatchState.LEVEL_AT_END:
        return tied_after_last_hole(case)
    citation, note = _DECIDED[state]
    return no_penalty(citation).next(Action.HOLE_OVER).note(note)


@provision("3.2a(2)")
def agreed_to_tie(case: Case) -> Ruling:
    """Once one of them has begun the hole, the players may agree on a tie; before that they may not."""
    if case[hole_had_begun]:
        return no_penalty("3.2a(2)").next(Action.HOLE_OVER).note("hole_tied")
    if not case[knew_it_applied]:
        return free("3.2a(2)").under("1.3b(1)").note("no_tie_before_hole_begins")
    return agreed_to_ignore(case).under("3.2a(2)")


@provision("3.2a(4)")
def tied_after_last_hole(case: Case) -> Ruling:
    """A tied match goes on hole by hole, in the order of the round, unless it may end in a tie."""
    if case[match_may_end_tied]:
        return no_penalty("3.2a(4)").next(Action.HOLE_OVER).note("match_ends_tied")
    return free("3.2a(4)").note("match_is_extended")
