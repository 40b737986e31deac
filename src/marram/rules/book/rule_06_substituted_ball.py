"""Rule 6.3a and 6.3b: the ball a hole is played with, and substituting another."""

from marram.rules.book.rule_06_wrong_ball import wrong_ball_penalty
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.replacing import original_ball_unavailable
from marram.rules.facts.substitution import (
    WhySubstituted,
    stroke_at_original,
    substituted_for_penalty_area,
    substituted_in_wrong_place,
    why_substituted,
)
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.penalty import general, strokes
from marram.rules.ruling import (
    Action,
    Deadline,
    HandOver,
    Ruling,
    WhichBall,
    general_penalty,
    no_penalty,
    penalty,
)


@provision("6.3b")
def another_ball_put_in_play(case: Case) -> Ruling:
    """The player put another ball down: was that allowed?"""
    if case.is_one_of(why_substituted, WhySubstituted.BETWEEN_HOLES):
        return no_penalty("6.3a").next(Action.PLAY_ON, WhichBall.ORIGINAL_OR_ANOTHER)
    if case.is_one_of(why_substituted, WhySubstituted.TAKING_RELIEF):
        return substitution_in_taking_relief(case)
    if case.is_one_of(why_substituted, WhySubstituted.PLAYING_AGAIN):
        return substitution_in_playing_again(case)
    if case.is_one_of(why_substituted, WhySubstituted.REPLACING) and case[original_ball_unavailable]:
        return substitution_in_replacing(case)
    return incorrect_substitution(case)


@provision("6.3b(1)")
def substitution_in_taking_relief(_case: Case) -> Ruling:
    """In taking relief, dropping or placing, any ball may be used each time."""
    return _allowed().under("14.3a")


@provision("6.3b(1)")
def substitution_in_playing_again(_case: Case) -> Ruling:
    """Playing again from where the previous stroke was made, any ball may be used."""
    return _allowed().under("14.6")


@provision("6.3b(1)")
def substitution_in_replacing(_case: Case) -> Ruling:
    """In replacing, another ball may be used only under an exception of Rule 14.2a."""
    return _allowed().under("14.2a Exception")


def _allowed() -> Ruling:
    return (
        no_penalty("6.3b(1)")
        .next(Action.PLAY_ON, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("substituted_ball_is_in_play")
    )


@provision("6.3b(1)")
def incorrect_substitution(case: Case) -> Ruling:
    """Substituting otherwise is a mistake that may be corrected until the ball is played."""
    if case[played_since_put_down]:
        return stroke_at_incorrectly_substituted_ball(case)
    otherwise = strokes(1, "6.3b(3)") if case.played_since(EDITION_2023) else general("6.3b(3)")
    return (
        no_penalty("14.5a")
        .under("6.3b(1)")
        .next(Action.CORRECT_MISTAKE, WhichBall.ORIGINAL)
        .note("mistake_may_be_corrected")
        .correct("change_back_to_original_ball", Deadline.BEFORE_STROKE, otherwise)
    )


@provision("6.3b(3)")
def stroke_at_incorrectly_substituted_ball(case: Case) -> Ruling:
    """One stroke since 2023, the general penalty in 2019; the hole is played out with that ball."""
    if case[substituted_in_wrong_place]:
        return also_played_from_wrong_place(case)
    if case.played_since(EDITION_2023):
        return _play_out(penalty(1, "6.3b(3)"))
    ruling = general_penalty("6.3b(3)")
    return ruling.next(Action.HOLE_OVER) if case.match_play else _play_out(ruling)


@provision("1.3c(4)")
def also_played_from_wrong_place(case: Case) -> Ruling:
    """One stroke from a wrong place with an incorrectly substituted ball gets one general penalty in all."""
    return played_from_wrong_place(case).under("6.3b(3)", "1.3c(4)")


def _play_out(ruling: Ruling) -> Ruling:
    return ruling.play_as_it_lies().stroke_counts().note("play_out_with_substituted_ball")


@provision("6.3b(2)")
def original_found_after_substitution(case: Case) -> Ruling | HandOver:
    """Once another ball is in play under a Rule, the original is out of play even if found in time."""
    if case[stroke_at_original]:
        return wrong_ball_penalty(case).under("6.3b(2)")
    if case[substituted_for_penalty_area]:
        return HandOver("found_after_penalty_area_relief", "17.1c")
    return no_penalty("6.3b(2)").next(Action.PLAY_OTHER_BALL).note("go_on_with_substituted_ball")
