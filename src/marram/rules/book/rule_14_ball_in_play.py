"""Rules 14.4 to 14.6: when a ball is in play again, correcting mistakes, playing again from the same place."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_06_wrong_ball import wrong_ball_penalty
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_19_unplayable import unplayable_relief_in_bunker, unplayable_relief_outside_bunker
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.wrong_place import (
    MistakeInRelief,
    PreviousStrokeArea,
    RuleUsed,
    WhyPlayedAgain,
    area_of_previous_stroke,
    mistake_in_relief,
    played_since_put_down,
    put_down_to_be_in_play,
    rule_used,
    why_played_again,
)
from marram.rules.penalty import general
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.ruling import Action, Deadline, Ruling, WhichBall, no_penalty


@provision("14.4")
def ball_set_down(case: Case) -> Ruling:
    """A ball was set down or let go: is it in play?"""
    if case[put_down_to_be_in_play]:
        return ball_is_in_play(case)
    return ball_is_not_in_play(case)


@provision("14.4")
def ball_is_in_play(_case: Case) -> Ruling:
    """Put down with that intent the ball is in play, even if substituted, in a wrong way or in a wrong place."""
    return (
        no_penalty("14.4").next(Action.PLAY_ON).note("ball_in_play_even_if_wrong", "correct_before_playing")
    )


@provision("14.4")
def ball_is_not_in_play(case: Case) -> Ruling:
    """Without that intent it is not in play, and a stroke at it is one at a wrong ball."""
    if case[played_since_put_down]:
        return wrong_ball_penalty(case).under("14.4", "Definitions: wrong ball")
    return no_penalty("14.4").next(Action.LIFT).note("put_ball_in_play_first", "no_trial_drops")


@provision("14.5b")
def mistake_in_relief_noticed(case: Case) -> Ruling:
    """Before the ball is played a mistake in taking relief may be corrected: under which Rule and option?"""
    mistake = case[mistake_in_relief]
    if mistake is MistakeInRelief.DROP_AGAIN:
        return same_rule_and_option(case)
    if mistake is MistakeInRelief.WRONG_PLACE:
        return same_rule_any_option(case)
    return any_rule_that_applies(case)


@provision("14.5b")
def same_rule_and_option(case: Case) -> Ruling:
    """Right Rule, right place: the same Rule and the same option must be used again."""
    numbered = "14.5b(1)" if case.played_since(EDITION_2023) else "14.5b(3)"
    return _correct(no_penalty(numbered)).note("same_rule_same_option")


@provision("14.5b(2)")
def same_rule_any_option(case: Case) -> Ruling:
    """Right Rule, wrong place: the same Rule, but any of its options that apply."""
    ruling = no_penalty("14.5b(2)").under("14.5c").note("same_rule_any_option", "acts_with_wrong_ball_void")
    used = case[rule_used]
    if used is RuleUsed.UNPLAYABLE:
        return offer(ruling, *unplayable_relief_outside_bunker(case), may_play_as_it_lies=False)
    if used is RuleUsed.UNPLAYABLE_IN_BUNKER:
        return offer(ruling, *unplayable_relief_in_bunker(case), may_play_as_it_lies=False)
    if used is RuleUsed.PENALTY_AREA:
        return offer(ruling, *penalty_area_relief(case), may_play_as_it_lies=False)
    return _correct(ruling)


@provision("14.5b")
def any_rule_that_applies(case: Case) -> Ruling:
    """Wrong Rule: any Rule that applies to the situation may be used."""
    numbered = "14.5b(3)" if case.played_since(EDITION_2023) else "14.5b(1)"
    return _correct(no_penalty(numbered)).note("any_rule_any_option")


def _correct(ruling: Ruling) -> Ruling:
    return (
        ruling.under("14.5c")
        .next(Action.CORRECT_MISTAKE, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("acts_with_wrong_ball_void")
        .correct("correct_relief_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    )


@provision("14.6")
def played_again_from_previous_spot(case: Case) -> Ruling:
    """A ball is to be played from where the previous stroke was made: how is it put into play there?"""
    where = case[area_of_previous_stroke]
    if where is PreviousStrokeArea.TEEING_AREA:
        return again_from_teeing_area(case)
    if where is PreviousStrokeArea.PUTTING_GREEN:
        return again_from_putting_green(case)
    return again_from_elsewhere(case)


@provision("14.6a")
def again_from_teeing_area(case: Case) -> Ruling:
    """From the teeing area a ball is played from anywhere inside it, on a tee if wished."""
    option = _again(case, "14.6a", None, (Limit.TEEING_AREA,), Setting.AS_THE_SPOT_ALLOWS)
    return _play(option, "14.6a", Action.PLAY_FROM_TEEING_AREA).note("anywhere_in_teeing_area")


@provision("14.6b")
def again_from_elsewhere(case: Case) -> Ruling:
    """From the general area, a bunker or a penalty area a ball is dropped within one club-length."""
    option = _again(case, "14.6b", 1, (Limit.NOT_NEARER, Limit.SAME_AREA_AS_REFERENCE), Setting.DROP)
    return _play(option, "14.6b", Action.DROP)


@provision("14.6c")
def again_from_putting_green(case: Case) -> Ruling:
    """From the putting green a ball is placed on the spot of the previous stroke."""
    option = _again(case, "14.6c", 0, (Limit.SAME_AREA_AS_REFERENCE,), Setting.PLACE)
    return _play(option, "14.6c", Action.PLACE).note("place_on_spot_of_previous_stroke")


def _again(
    case: Case, citation: str, club_lengths: float | None, limits: tuple[Limit, ...], setting: Setting
) -> ReliefOption:
    where = Reference.PREVIOUS_STROKE
    if case.is_one_of(why_played_again, WhyPlayedAgain.STROKE_DOES_NOT_COUNT):
        return ReliefOption(ReliefKind.REPLAY, citation, where, club_lengths, limits, 0, setting)
    return ReliefOption(ReliefKind.STROKE_AND_DISTANCE, "18.1", where, club_lengths, limits, 1, setting)


def _play(option: ReliefOption, citation: str, action: Action) -> Ruling:
    return (
        Ruling(relief=(option,))
        .under(citation)
        .next(action, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("estimate_previous_spot")
        .correct("play_from_previous_spot", Deadline.BEFORE_STROKE, general("14.7a"))
    )
