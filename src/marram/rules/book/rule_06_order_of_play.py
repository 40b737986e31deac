"""Rules 6.4 and 6.5: order of play, and completing a hole."""

from dataclasses import replace

from marram.rules.book.rule_05_practice import practised_between_holes
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.facts.order import (
    Cancellation,
    HoleEnd,
    TurnMoment,
    agreed_for_advantage,
    agreed_out_of_turn,
    decided_to_wait,
    honour_depends_on_ruling,
    how_hole_ended,
    knew_hole_completed,
    moment_of_turn,
    must_take_stroke_and_distance,
    opponent_on_cancelling,
)
from marram.rules.facts.wrong_place import next_hole_started
from marram.rules.penalty import Who
from marram.rules.ruling import Action, HandOver, Ruling, Stroke, general_penalty, no_penalty


@provision("6.4")
def played_out_of_turn(case: Case) -> Ruling:
    """A player made a stroke when it was another player's turn."""
    if case.match_play:
        return out_of_turn_in_match(case)
    return out_of_turn_in_stroke_play(case)


@provision("6.4a(2)")
def out_of_turn_in_match(case: Case) -> Ruling:
    """No penalty, but the opponent may promptly cancel the stroke."""
    if case[agreed_out_of_turn]:
        return out_of_turn_by_agreement(case)
    answer = case[opponent_on_cancelling]
    if answer is Cancellation.CANCELLED:
        return (
            no_penalty("6.4a(2)")
            .next(Action.REPLAY)
            .stroke_does_not_count()
            .note("replay_in_turn", "no_way_back")
        )
    if answer is Cancellation.LET_STAND:
        return no_penalty("6.4a(2)").play_as_it_lies().stroke_counts()
    return replace(
        no_penalty("6.4a(2)").play_as_it_lies().note("cancel_before_next_stroke"),
        stroke=Stroke.OPPONENT_MAY_CANCEL,
    )


@provision("6.4a(2) Exception")
def out_of_turn_by_agreement(_case: Case) -> Ruling:
    """Who invites or agrees to a stroke out of turn to save time has given up the right to cancel it."""
    return no_penalty("6.4a(2) Exception").play_as_it_lies().stroke_counts()


@provision("6.4b(1)")
def out_of_turn_in_stroke_play(case: Case) -> Ruling:
    """No penalty, unless players agreed to it to give one of them an advantage."""
    if case[agreed_for_advantage]:
        return out_of_turn_for_advantage(case)
    return ready_golf(case)


@provision("6.4b(1)")
def out_of_turn_for_advantage(_case: Case) -> Ruling:
    """Each player who made such an agreement gets the general penalty once one of them has so played."""
    return general_penalty("6.4b(1)", Who.EACH_PLAYER).play_as_it_lies().stroke_counts()


@provision("6.4b(2)")
def ready_golf(_case: Case) -> Ruling:
    """Playing out of turn in a safe and responsible way is allowed and encouraged."""
    return (
        no_penalty("6.4b(2)")
        .play_as_it_lies()
        .stroke_counts()
        .note("ready_golf_no_advantage")
        .caution("ready_golf_only_when_safe")
    )


@provision("6.4")
def whose_turn(case: Case) -> Ruling:
    """Whose turn is it? Binding in match play, recommended in stroke play."""
    moment = case[moment_of_turn]
    if moment is TurnMoment.FIRST_TEE:
        return _order("6.4a(1)", "order_of_draw").under("6.4b(1)")
    if moment is TurnMoment.LATER_TEE:
        return honour(case)
    if moment is TurnMoment.AFTER_START:
        return after_start(case)
    if moment is TurnMoment.ANOTHER_BALL_FROM_TEE:
        return another_ball_from_teeing_area(case)
    if moment is TurnMoment.TAKING_RELIEF:
        return turn_when_taking_relief(case)
    return turn_for_provisional_ball(case)


@provision("6.4")
def honour(case: Case) -> Ruling:
    """The honour goes by the holes won in match play, and by gross scores in stroke play."""
    if not case.match_play:
        return _order("6.4b(1)", "lowest_gross_score_first", "ready_golf_allowed")
    if case[honour_depends_on_ruling]:
        return _order("6.4a(1)", "honour_by_agreement_or_lot")
    return _order("6.4a(1)", "winner_of_last_hole_first")


@provision("6.4")
def after_start(case: Case) -> Ruling:
    """The ball farther, or farthest, from the hole is played first."""
    if case.match_play:
        return _order("6.4a(1)", "farther_ball_first")
    return _order("6.4b(1)", "farther_ball_first", "ready_golf_allowed")


@provision("6.4c")
def another_ball_from_teeing_area(_case: Case) -> Ruling:
    """All others in the group make their first stroke before a further ball is played from the teeing area."""
    return _order("6.4c", "others_tee_off_first")


@provision("6.4d(1)")
def turn_when_taking_relief(case: Case) -> Ruling:
    """The spot that counts is where the original ball lies, or the previous stroke if that must be replayed."""
    if case[must_take_stroke_and_distance]:
        return _order("6.4d(1)", "turn_by_previous_stroke")
    return _order("6.4d(1)", "turn_by_original_ball")


@provision("6.4d(2)")
def turn_for_provisional_ball(case: Case) -> Ruling:
    """A provisional ball is played right after the stroke, unless the player waited before deciding."""
    if case[decided_to_wait]:
        return _order("6.4d(2)", "turn_by_previous_stroke")
    return _order("6.4d(2)", "provisional_at_once")


def _order(citation: str, *notes: str) -> Ruling:
    return no_penalty(citation).next(Action.PLAY_ON).note(*notes)


@provision("6.5")
def hole_completed(case: Case) -> Ruling | HandOver:
    """Has the player completed the hole?"""
    if case.is_one_of(how_hole_ended, HoleEnd.HOLED):
        return hole_is_completed(case)
    if case.match_play:
        if case.is_one_of(how_hole_ended, HoleEnd.CONCEDED, HoleEnd.RESULT_DECIDED):
            return hole_is_completed(case)
        return hole_is_not_completed(case)
    if case.is_one_of(form_of_play, FormOfPlay.STABLEFORD, FormOfPlay.MAXIMUM_SCORE, FormOfPlay.PAR_BOGEY):
        return may_pick_up(case)
    return must_hole_out(case)


@provision("6.5")
def hole_is_completed(_case: Case) -> Ruling:
    """By holing out; in match play also by a conceded stroke or a decided result."""
    return no_penalty("6.5").next(Action.HOLE_OVER).note("hole_is_completed")


@provision("6.5")
def hole_is_not_completed(_case: Case) -> Ruling:
    """Until then the hole goes on."""
    return no_penalty("6.5").next(Action.PLAY_ON).note("hole_goes_on")


@provision("3.3c")
def must_hole_out(case: Case) -> Ruling | HandOver:
    """In stroke play every hole is holed out, whatever anybody concedes; on the next hole it is too late."""
    if case[next_hole_started]:
        return HandOver("did_not_hole_out", "3.3c")
    return no_penalty("6.5").under("3.3c").next(Action.PLAY_ON).note("hole_out_in_stroke_play")


@provision("6.5")
def may_pick_up(_case: Case) -> Ruling:
    """In Stableford, Maximum Score and Par/Bogey a player may also choose not to hole out."""
    return (
        no_penalty("6.5")
        .under("21.1b(1)", "21.2b(1)", "21.3b(1)")
        .next(Action.PLAY_ON)
        .note("may_stop_playing_hole")
    )


@provision("6.5")
def played_on_after_hole(case: Case) -> Ruling:
    """Who plays on without knowing that the hole is completed is not practising and gets no penalty."""
    if case[knew_hole_completed]:
        return practised_between_holes(case).under("6.5")
    return no_penalty("6.5").next(Action.HOLE_OVER).stroke_does_not_count().note("play_after_hole_ignored")
