"""Rule 3.3: stroke play: the scorecard, and holing out."""

from marram.rules.book.conduct_found import found_by_committee
from marram.rules.book.correctable import correct_before_next_hole
from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.book.plain_outcomes import free, in_breach, out
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, Sides, form_of_play, sides
from marram.rules.facts.order import BallNotHoled, ball_not_holed
from marram.rules.facts.scorecard import (
    CardFault,
    HandicapShown,
    HoleScore,
    WhyTooLow,
    card_fault,
    card_strokes_affected,
    competition_closed,
    handicap_shown,
    hole_result_affected,
    marker_at_fault,
    returned_score,
    why_too_low,
)
from marram.rules.facts.wrong_place import next_hole_started
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Judgement, Ruling, no_penalty, penalty

_SCORED_BY_HOLE = {
    FormOfPlay.STABLEFORD: ("21.1b", "no_points_on_hole"),
    FormOfPlay.MAXIMUM_SCORE: ("21.2b", "maximum_on_hole"),
    FormOfPlay.PAR_BOGEY: ("21.3b", "hole_counts_as_lost"),
}
"""The Rule on scoring, in parts (1) for the hole and (2) for the card, and what a hole without a score gets."""


@provision("3.3b(3)")
def hole_score_wrong(case: Case) -> Ruling:
    """A returned score too high stands; one too low, or none, disqualifies, with one exception."""
    if case.match_play:
        return free("3.3b").note("no_scorecard_in_match_play")
    returned = case[returned_score]
    if returned is HoleScore.HIGHER:
        return free("3.3b(3)").note("higher_score_stands")
    if returned is HoleScore.NONE:
        return no_score_returned(case)
    return score_too_low(case)


@provision("3.3b(3)")
def no_score_returned(case: Case) -> Ruling:
    """Without a score for a hole the player is out, except where a hole may go unscored."""
    if case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY):
        return out("3.3b(3)")
    scoring, note = _SCORED_BY_HOLE[case[form_of_play]]
    return free(f"{scoring}(2)").note(note)


@provision("3.3b(3)")
def score_too_low(case: Case) -> Ruling:
    """A score too low disqualifies, unless only unknown penalty strokes were left out."""
    if not case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY) and not case[hole_result_affected]:
        scoring, _ = _SCORED_BY_HOLE[case[form_of_play]]
        return free(f"{scoring}(2)").note("too_low_without_effect")
    if case.is_one_of(why_too_low, WhyTooLow.PENALTY_NOT_KNOWN):
        return unknown_penalty_left_out(case)
    if case.is_one_of(why_too_low, WhyTooLow.PENALTY_IS_DISQUALIFICATION) and case[competition_closed]:
        return free("20.2e(2)").note("score_stands_after_close")
    return out("3.3b(3)")


@provision("3.3b(3) Exception")
def unknown_penalty_left_out(case: Case) -> Ruling:
    """Penalty strokes the player did not know of are added while the competition is open."""
    if case[competition_closed]:
        return free("20.2e(2)").under("3.3b(3) Exception").note("score_stands_after_close")
    return free("3.3b(3) Exception").note("add_the_penalty_strokes")


@provision("3.3b(2)")
def scorecard_fault(case: Case) -> Ruling | Judgement:
    """Both must certify, the card is returned promptly and not changed; totals are the Committee's."""
    if case.match_play:
        return free("3.3b").note("no_scorecard_in_match_play")
    fault = case[card_fault]
    if fault is CardFault.TOTAL_WRONG:
        return free("3.3b(4)").note("committee_adds_up")
    if fault is CardFault.FORM_ONLY:
        return free("3.3b(2)").note("form_does_not_matter")
    if fault is CardFault.MARKER_KNEW_SCORE_WRONG:
        return marker_certified_wrong_score(case)
    if fault is CardFault.CHANGED_AFTER_RETURN or fault is CardFault.CHANGED_WITHOUT_AGREEMENT:
        return out("3.3b(2)")
    if case[marker_at_fault]:
        return free("3.3b(2) Exception")
    if fault is CardFault.NOT_RETURNED_PROMPTLY:
        return out("3.3b(2)")
    return not_certified(case)


@provision("3.3b(2)")
def not_certified(case: Case) -> Ruling:
    """Hole scores not certified disqualify, unless a Local Rule softens it."""
    if case.local_rule("L-1"):
        return in_breach("L-1").under("3.3b(2)").note("last_hole_gets_penalty")
    return out("3.3b(2)")


@provision("3.3b(1)")
def marker_certified_wrong_score(case: Case) -> Ruling | Judgement:
    """A marker who is a player and knowingly certifies a wrong score risks disqualification for misconduct."""
    return found_by_committee(case, ("marker_knew", "marker_gained_nothing", "marker_should_be_disqualified"))


@provision("3.3b(4)")
def card_handicap_wrong(case: Case) -> Ruling:
    """Until 2022 the player answered for the handicap on the card; since 2023 the Committee does."""
    if case.match_play:
        return free("3.2c(1)").note("handicap_declared_in_match")
    if not case.played_since(EDITION_2023):
        return player_answers_for_handicap(case, "3.3b(4)")
    if case.local_rule("L-2"):
        return player_answers_for_handicap(case, "L-2")
    return free("3.3b(4)").note("committee_works_out_handicap")


@provision("3.3b(4)")
def player_answers_for_handicap(case: Case, citation: str) -> Ruling:
    """No handicap, or one that is too high and matters, is out of the net competition; too low stands."""
    shown = case[handicap_shown]
    if shown is HandicapShown.NONE:
        return no_handicap_shown(case, citation)
    if shown is HandicapShown.TOO_HIGH and case[card_strokes_affected]:
        return out(citation).note("out_of_net_competition_only")
    if shown is HandicapShown.TOO_LOW:
        return free(citation).note("lower_handicap_stands")
    return free(citation)


@provision("3.3b(4)")
def no_handicap_shown(case: Case, citation: str) -> Ruling:
    """In Foursomes the card shows the handicap of each partner, and the side is out if it does not."""
    if case.is_one_of(sides, Sides.FOURSOMES):
        return out(citation, Who.SIDE).under("22.1").note("out_of_net_competition_only")
    return out(citation).note("out_of_net_competition_only")


@provision("3.3c")
def did_not_hole_out(case: Case) -> Ruling:
    """In stroke play every hole is holed out; a mistake is put right before another hole is begun."""
    if case.match_play:
        return no_penalty("6.5").next(Action.HOLE_OVER).note("picked_up_in_match")
    if not case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY):
        return hole_without_score(case)
    if case[next_hole_started]:
        return disqualified_or_without_score(case, "3.3c")
    ruling = no_penalty("3.3c")
    match case[ball_not_holed]:
        case BallNotHoled.MARKED_ON_GREEN:
            ruling = ruling.note("put_back_and_hole_out")
        case BallNotHoled.PICKED_UP:
            ruling = penalty(1, "9.4b").under("14.1a", "3.3c").note("put_back_and_hole_out")
    return correct_before_next_hole(case, ruling.next(Action.CORRECT_MISTAKE), "hole_out", "3.3c")


@provision("3.3c")
def hole_without_score(case: Case) -> Ruling:
    """Where a hole may go unscored, picking up ends it without penalty."""
    scoring, note = _SCORED_BY_HOLE[case[form_of_play]]
    return no_penalty(f"{scoring}(1)").next(Action.HOLE_OVER).note(note)
