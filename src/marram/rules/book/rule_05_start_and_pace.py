"""Rules 5.3, 5.4 and 5.6: starting on time, the group, pace of play."""

from marram.rules.book.local_rules.area_k_timing import timed_by_own_policy, timed_by_policy
from marram.rules.book.plain_outcomes import free, in_breach, one_stroke, out
from marram.rules.book.rule_21_totals import counts_against_total
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.round import (
    BreachNumber,
    OffTime,
    delay_breach,
    delay_reasonable,
    exceptional_circumstances,
    group_change_approved,
    minutes_off,
    off_time,
    opponent_off_time_too,
    ready_when_group_could_start,
    seconds_for_stroke,
    time_limit_in_policy,
)
from marram.rules.penalty import PenaltyKind, Who, holes_deducted, points_deducted
from marram.rules.ruling import Action, Judgement, Ruling


@provision("5.3a")
def started_off_time(case: Case) -> Ruling:
    """Not starting on time means disqualification, except within five minutes or in exceptional cases."""
    early = case[off_time] is OffTime.EARLY
    if not early and case[ready_when_group_could_start]:
        return free("5.3a")
    if not early and case[exceptional_circumstances]:
        return free("5.3a Exception 3")
    if case.at_most(minutes_off, 5):
        return off_by_five_minutes_at_most(case, "5.3a Exception 2" if early else "5.3a Exception 1")
    return out("5.3a")


@provision("5.3a")
def off_by_five_minutes_at_most(case: Case, citation: str) -> Ruling:
    """Up to five minutes early or late costs the general penalty on the first hole."""
    total = counts_against_total(case)
    if total is PenaltyKind.POINTS_DEDUCTED:
        return _against_total(_points(2, "5.3a"), "deduct_two_points", citation, "21.1c")
    if total is PenaltyKind.HOLES_DEDUCTED:
        return _against_total(_one_hole("5.3a"), "deduct_one_hole", citation, "21.3c")
    if case.match_play and case[opponent_off_time_too]:
        return both_off_time(case, citation)
    return in_breach("5.3a").under(citation).note("on_first_hole")


@provision("5.3a")
def both_off_time(_case: Case, citation: str) -> Ruling:
    """Player and opponent both lose the first hole of their match, so it is tied (Rule 3.2a(2))."""
    return in_breach("5.3a", Who.EACH_PLAYER).under(citation).note("first_hole_is_tied")


@provision("5.6a")
def unreasonable_delay(case: Case) -> Ruling:
    """Unreasonable delay: one stroke, then the general penalty, then disqualification."""
    if case[delay_reasonable]:
        return free("5.6a").note("short_delay_allowed")
    return delayed_unreasonably(case)


@provision("5.6a")
def delayed_unreasonably(case: Case) -> Ruling:
    """An unreasonable delay costs more each time in the round."""
    breach = case[delay_breach]
    if breach is BreachNumber.THIRD:
        return out("5.6a")
    return delay_penalty(case, breach).note("look_at_pace_policy")


@provision("5.6a")
def delay_penalty(case: Case, breach: BreachNumber) -> Ruling:
    """The first two delays count on the hole, or between holes on the next; in 2019 some against the total."""
    total = counts_against_total(case)
    first = breach is BreachNumber.FIRST
    if total is PenaltyKind.POINTS_DEDUCTED:
        note = "deduct_one_point" if first else "deduct_two_points"
        return _against_total(_points(1 if first else 2, "5.6a"), note, "21.1c")
    if total is PenaltyKind.HOLES_DEDUCTED and not first:
        return _against_total(_one_hole("5.6a"), "deduct_one_hole", "21.3c")
    if first:
        return one_stroke("5.6a").note("between_holes_next_hole")
    return in_breach("5.6a").note("between_holes_next_hole")


@provision("5.6b(1)")
def stroke_took_long(case: Case) -> Ruling | Judgement:
    """A stroke should take no more than 40 seconds; the Rule recommends, a policy or Rule 5.6a penalises."""
    if case.local_rule("K-2"):
        return timed_by_policy(case)
    if case[time_limit_in_policy]:
        return timed_by_own_policy(case)
    if case.at_most(seconds_for_stroke, 40):
        return free("5.6b(1)").note("usually_quicker_than_40")
    return Judgement(
        "5.6a",
        "referee",
        ("delay_others_waiting", "delay_reason", "delay_40_is_recommendation"),
        (free("5.6b(1)"), one_stroke("5.6a")),
    )


@provision("5.4")
def left_the_group(case: Case) -> Ruling:
    """Player and opponent, or the stroke-play group as drawn, play each hole together."""
    if case.match_play:
        return out("5.4a")
    if case[group_change_approved]:
        return free("5.4b")
    return out("5.4b")


def _points(count: int, citation: str) -> Ruling:
    return Ruling().also(points_deducted(count, citation))


def _one_hole(citation: str) -> Ruling:
    return Ruling().also(holes_deducted(1, citation))


def _against_total(ruling: Ruling, note: str, *citations: str) -> Ruling:
    return ruling.under(*citations).next(Action.PLAY_ON).note(note, "report_before_returning_card")
