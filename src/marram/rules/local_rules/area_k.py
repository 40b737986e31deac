"""Model Local Rules, area K: pace of play policies.

The published texts are examples with gaps for the Committee to fill. What a breach costs is therefore asked.
"""

from marram.rules.book.plain_outcomes import free, in_breach, one_stroke, out
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_conduct import (
    PolicyPenalty,
    behind_group_in_front,
    delay_excused,
    over_policy_time,
    policy_penalty,
    told_of_earlier_bad_time,
    told_of_timing,
    within_policy_time,
)
from marram.rules.ruling import Ruling, Who


@provision("5.6b(3)")
def group_over_time(case: Case) -> Ruling:
    """A group that took too long is penalised as such only under a pace of play policy."""
    if case.local_rule("K-1"):
        return over_maximum_time(case)
    for code in ("K-3", "K-4"):
        if case.local_rule(code):
            return over_time_for_holes(case, code)
    return free("5.6b(3)").note("without_policy_only_delay")


@provision("K-1")
def over_maximum_time(case: Case) -> Ruling:
    """Over the time limit and behind the group in front: every player of the group is penalised."""
    if not _late_and_behind(case):
        return free("K-1").note("both_time_and_position")
    ruling = _by_scale(case, "K-1", Who.EACH_PLAYER)
    if case.is_one_of(policy_penalty, PolicyPenalty.ONE_STROKE, PolicyPenalty.GENERAL):
        return ruling.note("last_hole_gets_penalty")
    return ruling


@provision("K-3")
def over_time_for_holes(case: Case, code: str) -> Ruling:
    """Over time at a hole or checkpoint and behind: by the policy's scale, unless it was beyond control."""
    if not _late_and_behind(case):
        return free(code).note("both_time_and_position")
    if case[delay_excused]:
        return free(code).note("tell_group_to_catch_up")
    return _by_scale(case, code, Who.EACH_PLAYER)


@provision("K-2")
def timed_by_policy(case: Case) -> Ruling:
    """A stroke over the time of the policy is a bad time, once the player knows of being timed."""
    if not case[told_of_timing]:
        return free("K-2").note("no_bad_time_untimed")
    if case[within_policy_time]:
        return free("K-2")
    if not case[told_of_earlier_bad_time]:
        return free("K-2").note("tell_of_bad_time_first")
    return _by_scale(case, "K-2", Who.PLAYER).note("bad_times_carry_over")


def _late_and_behind(case: Case) -> bool:
    return case[over_policy_time] and case[behind_group_in_front]


def _by_scale(case: Case, code: str, who: Who) -> Ruling:
    given = case[policy_penalty]
    if given is PolicyPenalty.WARNING:
        return free(code).note("warn_now")
    if given is PolicyPenalty.ONE_STROKE:
        return one_stroke(code, who)
    if given is PolicyPenalty.GENERAL:
        return in_breach(code, who)
    return out(code, who)
