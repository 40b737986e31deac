"""Rules 20.1b(4) and 20.1c(3)-(4): playing two balls when uncertain."""

from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.book.plain_outcomes import free, out
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.doubt import (
    BallResult,
    chosen_ball,
    counting_ball_holed,
    decided_before_stroke,
    opponent_objected,
    other_ball,
)
from marram.rules.facts.wrong_place import facts_reported
from marram.rules.ruling import Action, Ruling, general_penalty


@provision("20.1c(3)")
def two_balls(case: Case) -> Ruling:
    """In stroke play a player in doubt may play two balls; in a match nobody may."""
    if case.match_play:
        return two_balls_in_match(case)
    if not case[decided_before_stroke]:
        return free("20.1c(3)").note("first_ball_counts")
    if not case[facts_reported]:
        return out("20.1c(3)")
    return which_score_counts(case)


@provision("20.1b(4)")
def two_balls_in_match(case: Case) -> Ruling:
    """In a match the original ball's score counts, or the hole is lost if the opponent objected in time."""
    if case[opponent_objected]:
        return general_penalty("6.3c(1)").under("20.1b(4)", "Clarification 20.1b(4)/1").next(Action.HOLE_OVER)
    return free("20.1b(4)").under("Clarification 20.1b(4)/1").note("original_ball_counts")


@provision("20.1c(4)")
def which_score_counts(case: Case) -> Ruling:
    """The chosen ball counts if its procedure was allowed, else the other one if its was."""
    chosen = case[chosen_ball]
    if chosen is BallResult.ALLOWED:
        return free("20.1c(4)").note("chosen_ball_counts")
    if case.is_one_of(other_ball, BallResult.ALLOWED):
        return free("20.1c(4)").note("other_ball_counts")
    if chosen is BallResult.NOT_ALLOWED:
        return _with_its_penalty("chosen_ball_counts")
    if case[other_ball] is BallResult.NOT_ALLOWED:
        return _with_its_penalty("other_ball_counts")
    return disqualified_or_without_score(case, "14.7b").under("20.1c(4)")


@provision("20.1c(4)")
def one_of_two_picked_up(case: Case) -> Ruling:
    """Both balls need not be played out, but a ball that was picked up gives no score (Rule 3.3c)."""
    if case.match_play:
        return two_balls_in_match(case)
    if not case[facts_reported]:
        return out("20.1c(3)")
    if case[counting_ball_holed]:
        return free("20.1c(4)").note("ball_played_out_counts")
    return disqualified_or_without_score(case, "3.3c").under("20.1c(4)").note("picked_up_ball_counts")


def _with_its_penalty(note: str) -> Ruling:
    return (
        general_penalty("14.7a").under("20.1c(4)").next(Action.PLAY_ON).note(note, "its_own_penalty_counts")
    )
