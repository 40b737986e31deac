"""Model Local Rules, area E: cleaning the ball, preferred lies, aeration holes."""

from marram.rules.book.local_rules.without_local_rule import no_local_relief
from marram.rules.book.relief_options import offer
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.book.rule_16_conditions import stroke_unreasonable
from marram.rules.book.rule_16_options import in_general_area, on_putting_green
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.lifting import Marking, spot_marking
from marram.rules.facts.local_relief import (
    PreferredLie,
    ball_in_aeration_hole,
    ball_in_cleaning_area,
    ball_in_preferred_area,
    placed_within_limits,
    preferred_lie,
)
from marram.rules.facts.relief import stroke_unreasonable_anyway
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.ruling import Ruling, no_penalty, penalty

PREFERRED_LIE = ReliefOption(
    ReliefKind.PREFERRED_LIE,
    "E-3",
    Reference.BALL,
    None,
    (Limit.NOT_NEARER, Limit.GENERAL_AREA),
    0,
    Setting.PLACE,
)
"""Placing within the length that the notice gives: a hand's breadth, a scorecard, a club-length."""


@provision("E-2")
def lifted_to_be_cleaned(case: Case) -> Ruling:
    """Off the putting green a ball may be lifted for cleaning only where the Committee allows it."""
    if not (case.local_rule("E-2") and case[ball_in_cleaning_area]):
        return lifted_without_reason(case)
    if not case.is_one_of(spot_marking, Marking.RIGHT):
        return must_go_back(penalty(1, "14.1a").under("E-2"))
    return must_go_back(no_penalty("E-2"))


@provision("9.4b")
def lifted_without_reason(_case: Case) -> Ruling:
    """A ball lifted where no Rule allows it goes back, for one stroke, whether it was cleaned or not."""
    return must_go_back(penalty(1, "9.4b"))


@provision("9.4b")
def preferred_without_local_rule(case: Case) -> Ruling:
    """One stroke and back it goes; played from where it was placed, the general penalty in total."""
    if case.is_one_of(preferred_lie, PreferredLie.PLACED) and case[played_since_put_down]:
        return played_from_wrong_place(case).under("9.4b")
    return lifted_without_reason(case)


@provision("E-3")
def lie_preferred(case: Case) -> Ruling:
    """Where adopted, a ball may be placed once near its spot, without penalty."""
    allowed = case.local_rule("E-3") and case[ball_in_preferred_area]
    if case.is_one_of(preferred_lie, PreferredLie.LIES):
        return choice_to_prefer(case) if allowed else no_preferred_lie(case)
    if not allowed:
        return preferred_without_local_rule(case)
    if case.is_one_of(preferred_lie, PreferredLie.LIFTED, PreferredLie.PUT_BACK):
        return placing(case)
    if case.is_one_of(preferred_lie, PreferredLie.LIFTED_AGAIN):
        return preferred_twice(case)
    return placed(case)


def no_preferred_lie(_case: Case) -> Ruling:
    """Without the Local Rule, or outside its area, the ball is played as it lies."""
    return no_penalty("9.1a").play_as_it_lies().note("no_preferred_lie_here")


def choice_to_prefer(_case: Case) -> Ruling:
    """The player may play the ball as it lies, or place it."""
    return offer(no_penalty("E-3"), PREFERRED_LIE).note("prefer_once")


@provision("E-3")
def placing(case: Case) -> Ruling:
    """A ball lifted is placed on a spot the player chooses; one put back may be played."""
    if case.is_one_of(preferred_lie, PreferredLie.PUT_BACK):
        return no_penalty("E-3").play_as_it_lies()
    return offer(no_penalty("E-3"), PREFERRED_LIE, may_play_as_it_lies=False).note("prefer_once")


@provision("9.4b")
def preferred_twice(_case: Case) -> Ruling:
    """A ball placed is in play: lifting it to place it again costs one stroke, and it goes back."""
    return must_go_back(penalty(1, "9.4b").under("E-3"))


@provision("E-3")
def placed(case: Case) -> Ruling:
    """In the relief area it is in play; outside it, it is put right before it is played."""
    if case[placed_within_limits]:
        return no_penalty("E-3").play_as_it_lies()
    if case[played_since_put_down]:
        return played_from_wrong_place(case).under("E-3")
    ruling = offer(no_penalty("E-3").under("14.5b"), PREFERRED_LIE, may_play_as_it_lies=False)
    return ruling.note("lift_wrongly_placed_ball")


@provision("E-4")
def aeration_hole(case: Case) -> Ruling:
    """Where adopted, free relief for a ball in or touching an aeration hole, but not for stance or line."""
    if not (case.local_rule("E-4") and case[ball_in_aeration_hole]):
        return no_local_relief(case)
    if not case.is_one_of(area_of_ball, Area.GENERAL_AREA, Area.PUTTING_GREEN):
        return no_local_relief(case)
    if case[stroke_unreasonable_anyway]:
        return stroke_unreasonable(case)
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return offer(no_penalty("E-4").under("16.1d"), on_putting_green(case))
    return offer(no_penalty("E-4").under("16.1b"), in_general_area()).note("aeration_hole_again")
