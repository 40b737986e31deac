"""Model Local Rules, area K: pace of play policies for groups.

The published texts are examples with gaps for the Committee to fill. What a breach by a group costs is
therefore asked; for strokes that are timed see :mod:`marram.rules.book.local_rules.area_k_timing`.
"""

from marram.rules.book.local_rules.area_k_timing import as_adopted
from marram.rules.book.plain_outcomes import free
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_conduct import (
    PolicyPenalty,
    behind_group_in_front,
    delay_excused,
    over_policy_time,
    policy_penalty,
)
from marram.rules.penalty import Who
from marram.rules.ruling import Ruling


@provision("5.6b(3)")
def group_over_time(case: Case) -> Ruling:
    """A group that took too long is penalised as such only under a pace of play policy."""
    if case.local_rule("K-1"):
        return over_maximum_time(case)
    if not case.played_since(EDITION_2023) and case.local_rule("K-3"):
        return over_time_for_holes(case, "K-3")
    if case.local_rule("K-4"):
        return over_time_for_holes(case, "K-4")
    return free("5.6b(3)").note("without_policy_only_delay")


@provision("K-1")
def over_maximum_time(case: Case) -> Ruling:
    """Over the time limit and behind the group in front: every player of the group is penalised."""
    if not _late_and_behind(case):
        return free("K-1").note("both_time_and_position")
    ruling = as_adopted(case, "K-1", Who.EACH_PLAYER)
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
    return as_adopted(case, code, Who.EACH_PLAYER)


def _late_and_behind(case: Case) -> bool:
    return case[over_policy_time] and case[behind_group_in_front]
