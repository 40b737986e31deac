"""Rules 16.3 and 16.4: embedded ball; lifting a ball to see whether relief is allowed."""

from marram.rules.book.local_rules.area_f_limits import embedded_in_turf_face, embedded_where_no_relief
from marram.rules.book.relief_options import free_option, offer
from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_16_conditions import condition_or_zone, in_teeing_area
from marram.rules.book.rule_16_options import under_the_ball
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_19_unplayable import as_it_lies_or_unplayable
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.relief import (
    ConditionFound,
    believed_relief_allowed,
    below_ground_level,
    condition_found,
    general_area_within_club_length,
    in_own_pitch_mark,
    in_sand_not_fairway,
    marked_and_not_cleaned,
    relief_taken_after_lifting,
    spot_behind_in_general_area,
    stroke_unreasonable_anyway,
)
from marram.rules.relief_option import Limit, Reference, ReliefOption
from marram.rules.ruling import Ruling, no_penalty, penalty

_LIMITS = (Limit.NOT_NEARER, Limit.GENERAL_AREA)


@provision("16.3a(1)")
def embedded_ball(case: Case) -> Ruling:
    """Free relief for a ball embedded in the general area only."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return on_putting_green(case)
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return offer(no_penalty("16.3a(1)").under("17.3").note("no_free_relief"), *penalty_area_relief(case))
    if case.is_one_of(area_of_ball, Area.BUNKER):
        return no_relief(case, "16.3a(1)")
    if not is_embedded(case):
        return no_relief(case, "16.3a(2)")
    if case[in_sand_not_fairway] or case[stroke_unreasonable_anyway]:
        return no_relief(case, "16.3a(1) Exceptions")
    if embedded_where_no_relief(case):
        return no_relief(case, "F-2.1")
    if embedded_in_turf_face(case):
        return no_relief(case, "F-2.2")
    return embedded_relief(case)


@provision("16.3a(2)")
def is_embedded(case: Case) -> bool:
    """Embedded means in its own pitch-mark, with part of the ball below the level of the ground."""
    return case[in_own_pitch_mark] and case[below_ground_level]


@provision("16.3b")
def embedded_relief(case: Case) -> Ruling:
    """Drop within one club-length of the spot right behind the ball, in the general area."""
    if case.played_since(EDITION_2023):
        return offer(no_penalty("16.3b"), free_relief(case))
    if case[spot_behind_in_general_area]:
        return offer(no_penalty("16.3b"), behind_the_ball())
    return spot_behind_not_in_general_area(case)


@provision("Clarification 16.3b/1")
def spot_behind_not_in_general_area(case: Case) -> Ruling:
    """Until 2022: no relief unless some general area lies within the club-length."""
    if case[general_area_within_club_length]:
        return offer(no_penalty("16.3b"), behind_the_ball())
    return no_relief(case, "Clarification 16.3b/1")


@provision("16.3b")
def free_relief(case: Case) -> ReliefOption:
    """Measured from the spot right behind the ball or, since 2023, from the nearest in the general area."""
    if case.played_since(EDITION_2023) and not case[spot_behind_in_general_area]:
        return free_option("16.3b", Reference.NEAREST_SPOT_IN_GENERAL_AREA, _LIMITS)
    return behind_the_ball()


def behind_the_ball() -> ReliefOption:
    """Free relief measured from the spot right behind where the ball is embedded."""
    return free_option("16.3b", Reference.BEHIND_EMBEDDED_BALL, _LIMITS)


@provision("13.1c(2)")
def on_putting_green(_case: Case) -> Ruling:
    """On the putting green the ball may be marked, lifted and cleaned, the mark repaired, the ball replaced."""
    return must_go_back(no_penalty("13.1c(2)").under("16.3a(1)")).note("embedded_on_green")


def no_relief(case: Case, citation: str) -> Ruling:
    """No relief under Rule 16.3: as it lies, or unplayable."""
    return as_it_lies_or_unplayable(no_penalty(citation).note("no_free_relief"), case)


@provision("16.4")
def lifted_to_see(case: Case) -> Ruling:
    """A ball may be lifted to see whether free relief is allowed; mark it first, and do not clean it."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return lying_in_teeing_area(case)
    allowed = case.is_one_of(area_of_ball, Area.PUTTING_GREEN) or case[believed_relief_allowed]
    so_far = no_penalty("16.4") if allowed else penalty(1, "16.4")
    found = case[condition_found]
    if found is not ConditionFound.NONE and case[relief_taken_after_lifting] and relief_allowed(case, found):
        return offer(so_far, *relief_found(case, found), may_play_as_it_lies=False)
    if allowed and not case[marked_and_not_cleaned]:
        return must_go_back(penalty(1, "16.4"))
    return must_go_back(so_far)


@provision("16.4")
def relief_allowed(case: Case, found: ConditionFound) -> bool:
    """Relief that no Rule gives there is none: the ball goes back as if nothing had been found.

    In a penalty area there is no free relief from a condition or an embedded ball (Rules 16.1a and 17.3), for an
    embedded ball only in the general area (Rule 16.3a(1)), and where no Local Rule takes it away.
    """
    if found is ConditionFound.MOVABLE_OBSTRUCTION:
        return True
    if found is ConditionFound.ABNORMAL_COURSE_CONDITION:
        return not case.is_one_of(area_of_ball, Area.PENALTY_AREA)
    if not case.is_one_of(area_of_ball, Area.GENERAL_AREA):
        return False
    return not (embedded_where_no_relief(case) or embedded_in_turf_face(case))


@provision("16.4")
def relief_found(case: Case, found: ConditionFound) -> tuple[ReliefOption, ...]:
    """The relief from the condition that lifting the ball showed."""
    if found is ConditionFound.EMBEDDED:
        return (free_relief(case),)
    if found is ConditionFound.MOVABLE_OBSTRUCTION:
        return (under_the_ball(on_green=case.is_one_of(area_of_ball, Area.PUTTING_GREEN)),)
    return condition_or_zone(case)
