"""Rule 5.7: stopping play, and resuming it."""

from marram.rules.book.plain_outcomes import free, in_breach, out, stay_stopped
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.round import (
    BallWhenStopped,
    PlayedOn,
    StopReason,
    Suspension,
    WhyStopped,
    ball_when_stopped,
    committee_ordered_play,
    exceptional_circumstances,
    minutes_off,
    opponent_stopped,
    played_on,
    playing_on_justified,
    ready_on_resumption,
    refused_to_go_on,
    reported_stop,
    stop_reason,
    stopping_delays_competition,
    suspension,
    why_play_stopped,
)
from marram.rules.penalty import Who, general
from marram.rules.ruling import Action, Deadline, Ruling, WhichBall, no_penalty

_LIGHTNING = ("lightning_shelter", "follow_local_safety_code")
_DANGER = ("shelter_from_danger", "follow_local_safety_code")
"""Where play was suspended and it was not told for what: lightning is the usual danger, and not the only one."""


@provision("5.7a")
def stopped_play(case: Case) -> Ruling:
    """A player stops for a suspension, by agreement in a match, or for lightning; nothing else."""
    reason = case[stop_reason]
    if reason is StopReason.SUSPENDED:
        return stay_stopped("5.7a").note("stop_when_suspended").caution(*_DANGER)
    if reason is StopReason.LIGHTNING:
        return stopped_for_lightning(case)
    if reason is StopReason.AGREED_IN_MATCH:
        return stopped_by_agreement(case)
    if reason is StopReason.SHORT_PAUSE:
        return free("5.7a").note("pause_is_matter_of_delay")
    return out("5.7a")


@provision("5.7a")
def stopped_for_lightning(case: Case) -> Ruling:
    """A player who reasonably believes there is danger from lightning may stop, and reports it."""
    ruling = stay_stopped("5.7a") if case[reported_stop] else out("5.7a")
    return ruling.caution(*_LIGHTNING)


@provision("5.7a")
def stopped_by_agreement(case: Case) -> Ruling:
    """Players in a match may agree to stop unless that delays the competition."""
    if not case.match_play:
        return out("5.7a")
    if case[stopping_delays_competition]:
        return out("5.7a", Who.EACH_PLAYER)
    return stay_stopped("5.7a").note("agreement_ends_when_one_wants")


@provision("5.7b")
def played_after_suspension(case: Case) -> Ruling:
    """Playing on after a suspension disqualifies, unless allowed or justified."""
    if case[suspension] is Suspension.IMMEDIATE:
        ruling = disqualified_unless_justified(case, "5.7b(1)")
        return ruling.caution(*_DANGER)
    return played_after_normal_suspension(case)


@provision("5.7b(2)")
def played_after_normal_suspension(case: Case) -> Ruling:
    """After a normal suspension a hole already begun may be finished, but no other begun, nor one taken up again."""
    what = case[played_on]
    if what is PlayedOn.BEGAN_HOLE or what is PlayedOn.AFTER_STOPPING:
        return disqualified_unless_justified(case, "5.7b(2)")
    if case.match_play:
        if case[opponent_stopped]:
            return in_breach("5.7b(2)").next(Action.HOLE_OVER)
        return stay_stopped("5.7b(2)").note("hole_finished_now_stop")
    if what is PlayedOn.FINISHED_WITHOUT_MARKER:
        return disqualified_unless_justified(case, "5.7b(2)")
    return stay_stopped("5.7b(2)").note("hole_finished_now_stop", "marker_must_stay")


@provision("5.7b")
def disqualified_unless_justified(case: Case, citation: str) -> Ruling:
    """The Committee may find that failing to stop was justified; play is still suspended."""
    if case[playing_on_justified]:
        return stay_stopped("5.7b Exception").under(citation)
    return out("5.7b").under(citation)


@provision("5.7c(2)")
def resumed_off_time(case: Case) -> Ruling:
    """Play goes on where it stopped, when the Committee says, or when it is safe or one player wants to."""
    why = case[why_play_stopped]
    if why is WhyStopped.LIGHTNING and not case[committee_ordered_play]:
        return stay_stopped("5.7c(2)").note("resume_when_danger_over").caution(*_LIGHTNING)
    if why is WhyStopped.AGREEMENT:
        return resumed_after_agreement(case)
    if case[ready_on_resumption]:
        return free("5.7c(2)").note("resume_where_stopped")
    ruling = not_ready_on_resumption(case)
    return ruling.under("Clarification 5.7c/1") if why is WhyStopped.LIGHTNING else ruling


@provision("5.7a")
def resumed_after_agreement(case: Case) -> Ruling:
    """An agreement to stop ends when one of the players wants to go on; the other must then go on too."""
    if case[refused_to_go_on]:
        return out("5.7a").under("5.7c(2)")
    return stay_stopped("5.7a").note("agreement_ends_when_one_wants")


@provision("5.7c")
def not_ready_on_resumption(case: Case) -> Ruling:
    """Disqualification, with the exceptions that hold for starting on time and for not stopping."""
    if case[exceptional_circumstances]:
        return free("5.3a Exception 3").under("5.7c(2)")
    if case[playing_on_justified]:
        return free("5.7b Exception").under("5.7c(2)")
    if case.at_most(minutes_off, 5):
        return in_breach("5.7c(2)").note("on_hole_resumed")
    return out("5.7c(2)")


@provision("5.7d")
def ball_when_play_stopped(case: Case) -> Ruling:
    """The ball may be marked and lifted; it, or another ball, goes back on its spot before play goes on."""
    if case[ball_when_stopped] is BallWhenStopped.LEFT_IN_PLACE:
        return no_penalty("5.7d(1)").play_as_it_lies().note("may_still_mark_lift_replace")
    citation = "5.7d(1)" if case[ball_when_stopped] is BallWhenStopped.LIFTED else "5.7d(2)"
    return (
        no_penalty(citation)
        .next(Action.REPLACE, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("lie_after_stop", "take_conditions_as_found")
        .correct("replace_before_resuming", Deadline.BEFORE_STROKE, general("14.7a"))
    )
