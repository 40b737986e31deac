"""Rule 3.3b: the marker in stroke play: one for the whole round, unless the Committee approves a change."""

from marram.rules.book.plain_outcomes import free, out
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.marker import WhoKeptScore, marker_change_approved, who_kept_score
from marram.rules.facts.scorecard import marker_at_fault
from marram.rules.ruling import Ruling


@provision("3.3b")
def marker_changed_or_missing(case: Case) -> Ruling:
    """In stroke play a player keeps the same marker for the round; a breach disqualifies, with one exception."""
    if case.match_play:
        return free("3.3b").note("no_scorecard_in_match_play")
    kept_by_other = case.is_one_of(who_kept_score, WhoKeptScore.OTHER_PERSON)
    if kept_by_other and case[marker_change_approved]:
        return free("3.3b").under("3.3b(1)").note("each_marker_certifies_own_holes")
    if case[marker_at_fault]:
        return free("3.3b(2) Exception").under("3.3b").note("committee_establishes_scores")
    return out("3.3b").under("3.3b(2)")
