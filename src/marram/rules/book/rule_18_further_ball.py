"""Rule 18.3a: a further ball played from where a provisional ball had been played (Clarification 18.3a/3)."""

from dataclasses import replace

from marram.rules.book.relief_options import CONTINUE_WITH_PROVISIONAL
from marram.rules.book.rule_18_provisional import (
    MUST_BE_ABANDONED,
    choice_between_balls,
    original_holed,
    play_on_with_original,
)
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.lost import (
    Announced,
    OriginalBall,
    announced,
    nearer_stroke_at_provisional,
    original_ball,
)
from marram.rules.penalty import strokes
from marram.rules.ruling import Action, Ruling, no_penalty, penalty

_CONTINUE_WITH_FURTHER_BALL = replace(CONTINUE_WITH_PROVISIONAL, penalty=2)
"""Going on with the further ball: stroke and distance for the original, and again for the provisional ball."""


@provision("Clarification 18.3a/3")
def further_ball_played(case: Case) -> Ruling:
    """Each ball relates only to the one last played from that spot: announced, it is provisional for that one."""
    if case.is_one_of(announced, Announced.BEFORE, Announced.NOBODY_NEAR):
        ruling = no_penalty("18.3a").under("Clarification 18.3a/3").next(Action.PLAY_ON)
        return ruling.note("each_provisional_for_the_last")
    return further_ball_not_announced(case)


@provision("18.3b")
def further_ball_not_announced(case: Case) -> Ruling:
    """Not announced, it took the provisional ball's place for a stroke; whether it counts depends on the original."""
    original = case[original_ball]
    if original is OriginalBall.IN_THE_HOLE:
        return original_holed(case)
    if original is OriginalBall.NOT_FOUND_YET:
        if case[nearer_stroke_at_provisional]:
            return further_ball_counts(case)
        ruling = no_penalty("18.3c(1)").under("Clarification 18.3a/3").next(Action.PLAY_ON)
        return ruling.note("further_ball_replaces_provisional", "provisional_may_be_played_on")
    if original in (OriginalBall.LOST, OriginalBall.OUT_OF_BOUNDS):
        return further_ball_counts(case)
    if original in MUST_BE_ABANDONED:
        return play_on_with_original(case, original).under("Clarification 18.3a/3")
    return choice_between_balls(case, original, _CONTINUE_WITH_FURTHER_BALL).under("Clarification 18.3a/3")


@provision("18.3c(2)")
def further_ball_counts(_case: Case) -> Ruling:
    """With the original lost or out of bounds, two balls have been given up: two strokes of stroke and distance."""
    return (
        penalty(1, "18.3c(2)")
        .also(strokes(1, "18.1"))
        .under("Clarification 18.3a/3")
        .next(Action.PLAY_OTHER_BALL)
        .note("further_ball_counts")
    )
