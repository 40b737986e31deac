"""Rule 21: Stableford, Maximum Score, Par/Bogey, Three-Ball match play."""

from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.book.plain_outcomes import free, out
from marram.rules.book.rule_09_ball_marker import marker_moved_by
from marram.rules.book.rule_09_others import moved_by_opponent
from marram.rules.book.rule_11_deliberate_acts import deflected_on_purpose, deliberately_deflected
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.facts.deflection import Deflector, deflector
from marram.rules.facts.forms import (
    Cancelled,
    Maximum,
    Uncorrected,
    cancelled_in,
    could_still_score,
    holed_out,
    maximum_reached,
    maximum_set_as,
    strokes_over_target,
    uncorrected_mistake,
)
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Ruling, no_penalty

_SCORED_ALONE = {
    FormOfPlay.STABLEFORD: ("21.1d", "no_points_on_hole"),
    FormOfPlay.MAXIMUM_SCORE: ("21.2d", "maximum_on_hole"),
    FormOfPlay.PAR_BOGEY: ("21.3d", "hole_counts_as_lost"),
}
"""Where each hole is scored on its own: the provision on stopping a ball, and what the hole then scores."""

_POINTS = ((-4, 6), (-3, 5), (-2, 4), (-1, 3), (0, 2), (1, 1))
"""Strokes over the fixed target score, at most, and the points they earn (Rule 21.1b(1))."""


@provision("21.1b(1)")
def stableford_points(case: Case) -> Ruling:
    """Points come from the score for the hole against the fixed target score."""
    if not case[holed_out]:
        return no_penalty("21.1b(1)").next(Action.HOLE_OVER).note("no_points_on_hole")
    for over, points in _POINTS:
        if case.at_most(strokes_over_target, over):
            return no_penalty("21.1b(1)").next(Action.HOLED).note(f"stableford_points_{points}")
    return no_penalty("21.1b(1)").next(Action.HOLE_OVER).note("no_points_on_hole")


@provision("21.2b(1)")
def maximum_score_hole(case: Case) -> Ruling:
    """The score for a hole is capped; without holing out it is the maximum."""
    if case[holed_out] and not case[maximum_reached]:
        return no_penalty("21.2b(1)").next(Action.HOLED).note("actual_score_counts")
    how = {
        Maximum.FIXED: "maximum_is_fixed",
        Maximum.MULTIPLE_OF_PAR: "maximum_is_multiple_of_par",
        Maximum.NET_DOUBLE_BOGEY: "maximum_is_net_double_bogey",
    }[case[maximum_set_as]]
    return no_penalty("21.2b(1)").next(Action.HOLE_OVER).note("maximum_on_hole", how, "pick_up_at_maximum")


@provision("21.3b(1)")
def par_bogey_hole(case: Case) -> Ruling:
    """A hole is won below, tied at and lost above the fixed target score."""
    lost = no_penalty("21.3b(1)").next(Action.HOLE_OVER).note("hole_counts_as_lost")
    if not case[holed_out]:
        return lost
    if case.at_most(strokes_over_target, -1):
        return no_penalty("21.3b(1)").next(Action.HOLED).note("hole_counts_as_won")
    if case.at_most(strokes_over_target, 0):
        return no_penalty("21.3b(1)").next(Action.HOLED).note("hole_counts_as_tied")
    return lost


@provision("21.1c")
def mistake_not_corrected(case: Case) -> Ruling:
    """Mistakes that disqualify if not corrected cost only the hole where each hole is scored on its own."""
    if case.match_play:
        return no_penalty("3.2a").next(Action.PLAY_ON).note("no_such_correction_in_match")
    citation = {
        Uncorrected.HOLING_OUT: "3.3c",
        Uncorrected.TEEING_AREA: "6.1b(2)",
        Uncorrected.WRONG_BALL: "6.3c(1)",
        Uncorrected.WRONG_PLACE: "14.7b",
        Uncorrected.WRONG_ORDER: "22.3",
    }[case[uncorrected_mistake]]
    if citation == "22.3":
        return wrong_order_not_corrected(case)
    return disqualified_or_without_score(case, citation).under(citation)


@provision("22.3")
def wrong_order_not_corrected(case: Case) -> Ruling:
    """A wrong order not corrected puts the side out; since 2023 only of the hole where holes count alone."""
    if case.played_since(EDITION_2023) and not case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY):
        return disqualified_or_without_score(case, "22.3").under("22.3")
    return out("22.3", Who.SIDE)


@provision("21.1d")
def hopeless_ball_stopped(case: Case) -> Ruling:
    """Stopping a ball in motion is free once no point, score below the maximum or tied hole hangs on it."""
    if not case.is_one_of(form_of_play, *_SCORED_ALONE):
        return deliberately_deflected(case)
    if case[could_still_score]:
        return stopped_while_it_mattered(case)
    citation, note = _SCORED_ALONE[case[form_of_play]]
    return no_penalty(citation).next(Action.HOLE_OVER).note(note)


@provision("11.2b")
def stopped_while_it_mattered(case: Case) -> Ruling:
    """While the player could still score on the hole, stopping the ball is a deliberate deflection like any other."""
    by = case[deflector]
    no_breach = by in {Deflector.LIFTED_FROM_WATER, Deflector.BALL_OR_MARKER_LEFT}
    return deliberately_deflected(case) if no_breach else deflected_on_purpose(case, by)


@provision("21.4b")
def three_ball_out_of_turn(case: Case) -> Ruling:
    """In Three-Ball each opponent may cancel in their own match; then two balls may be needed."""
    where = case[cancelled_in]
    if where is Cancelled.NEITHER:
        return no_penalty("21.4b").stroke_counts().play_as_it_lies()
    if where is Cancelled.ONE:
        return free("21.4b").note("one_ball_in_each_match")
    return no_penalty("21.4b").stroke_does_not_count().next(Action.REPLAY)


@provision("21.4c")
def three_ball_moved_by_opponent(case: Case) -> Ruling:
    """In Three-Ball an opponent's stroke for moving the ball counts in the match with its owner only."""
    ruling = moved_by_opponent(case).under("21.4c")
    return ruling.note("stroke_in_that_match_only") if ruling.penalties else ruling


@provision("21.4c")
def three_ball_marker_moved(case: Case) -> Ruling:
    """In Three-Ball an opponent's stroke for moving the ball-marker counts in the match with its owner only."""
    ruling = marker_moved_by(case, Who.OPPONENT).under("21.4c")
    return ruling.note("stroke_in_that_match_only") if ruling.penalties else ruling
