"""Model Local Rules, area K: strokes timed one by one, and the two published scales of penalties."""

from marram.rules.book.plain_outcomes import free, in_breach, one_stroke, out
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_conduct import (
    BadTime,
    PolicyPenalty,
    bad_time_number,
    policy_penalty,
    told_of_earlier_bad_time,
    told_of_timing,
    within_policy_time,
)
from marram.rules.penalty import Who
from marram.rules.ruling import Ruling


def as_adopted(case: Case, code: str, who: Who) -> Ruling:
    """What the policy as adopted gives for this breach."""
    given = case[policy_penalty]
    if given is PolicyPenalty.WARNING:
        return free(code).note("warn_now")
    if given is PolicyPenalty.ONE_STROKE:
        return one_stroke(code, who)
    if given is PolicyPenalty.GENERAL:
        return in_breach(code, who)
    return out(code, who)


@provision("K-2")
def timed_by_policy(case: Case) -> Ruling:
    """A stroke over the time of the policy is a bad time, once the player knows of being timed."""
    if not case[told_of_timing]:
        return free("K-2").note("no_bad_time_untimed")
    if case[within_policy_time]:
        return free("K-2")
    if not case[told_of_earlier_bad_time]:
        return free("K-2").note("tell_of_bad_time_first")
    return by_scale(case).note("bad_times_carry_over", "scale_of_notice_decides")


@provision("5.6b(3)")
def timed_by_own_policy(case: Case) -> Ruling:
    """Under a policy of the Committee's own, its times and its scale of penalties are asked."""
    if not case[told_of_timing]:
        return free("5.6b(3)").note("no_bad_time_untimed")
    if case[within_policy_time]:
        return free("5.6b(3)")
    if not case[told_of_earlier_bad_time]:
        return free("5.6b(3)").note("tell_of_bad_time_first")
    return as_adopted(case, "5.6b(3)", Who.PLAYER).note("bad_times_carry_over")


@provision("K-2")
def by_scale(case: Case) -> Ruling:
    """One stroke, the general penalty, disqualification; or, as modified, a warning before these."""
    number = case[bad_time_number]
    modified_by = scale_modified_by(case)
    if modified_by:
        return by_modified_scale(number, modified_by)
    if number is BadTime.FIRST:
        return one_stroke("K-2")
    if number is BadTime.SECOND:
        return in_breach("K-2")
    return out("K-2")


@provision("K-5")
def scale_modified_by(case: Case) -> str:
    """Return the code of the other scale where it is adopted: K-5 until 2022, K-3 since; empty if it is not."""
    code = "K-3" if case.played_since(EDITION_2023) else "K-5"
    return code if case.local_rule(code) else ""


def by_modified_scale(number: BadTime, code: str) -> Ruling:
    """The first bad time is a warning; each later one costs what one fewer would have cost."""
    if number is BadTime.FIRST:
        return free("K-2").under(code).note("warn_now")
    if number is BadTime.SECOND:
        return one_stroke("K-2").under(code)
    if number is BadTime.THIRD:
        return in_breach("K-2").under(code)
    return out("K-2").under(code)
