"""Rule 18.3: provisional ball."""

from marram.rules.book.relief_options import CONTINUE_WITH_PROVISIONAL, offer
from marram.rules.book.rule_06_wrong_ball import ball_out_of_play_played
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_18_lost import (
    lost_or_out,
    moved_by_outside_influence,
    not_found_in_condition,
    not_found_in_movable_obstruction,
)
from marram.rules.book.rule_18_two_provisional_balls import provisional_in_play
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.lost import (
    Announced,
    BallsAlike,
    OriginalBall,
    ProvisionalState,
    SecondBallReason,
    StrokeAtProvisional,
    announced,
    balls_alike,
    lifted_from_hole_first,
    nearer_stroke_at_provisional,
    original_ball,
    provisional_became_in_play,
    provisional_lift_allowed,
    second_ball_reason,
    stroke_at_provisional,
)
from marram.rules.relief_option import ReliefOption
from marram.rules.ruling import Action, Ruling, no_penalty, penalty

MUST_BE_ABANDONED = (
    OriginalBall.FOUND_ON_COURSE,
    OriginalBall.FOUND_IN_PENALTY_AREA,
    OriginalBall.CERTAIN_IN_PENALTY_AREA,
)
"""What is known of the original ball when a provisional ball not yet in play has to be abandoned."""


@provision("18.3a")
def another_ball_played(case: Case) -> Ruling:
    """A provisional ball is allowed when the original might be lost outside a penalty area, or out of bounds."""
    if not case.is_one_of(second_ball_reason, SecondBallReason.MIGHT_BE_LOST_OR_OUT):
        return provisional_not_allowed(case)
    how = case[announced]
    if how is Announced.NOT_CLEARLY:
        return not_announced(case)
    ruling = no_penalty("18.3a") if how is Announced.BEFORE else no_penalty("Clarification 18.3b/1")
    return ruling.next(Action.PLAY_ON).note("second_ball_is_provisional", "each_provisional_for_the_last")


@provision("18.3a")
def provisional_not_allowed(case: Case) -> Ruling:
    """Where a provisional ball is not allowed, the ball played is in play under stroke and distance."""
    ruling = penalty(1, "18.1").under("18.3a").next(Action.PLAY_OTHER_BALL).note("original_out_of_play")
    if case.is_one_of(second_ball_reason, SecondBallReason.ONLY_IN_PENALTY_AREA):
        return ruling.note("only_in_penalty_area_no_provisional")
    return ruling


@provision("18.3b")
def not_announced(_case: Case) -> Ruling:
    """A ball not clearly announced as provisional is in play under stroke and distance, whatever was meant."""
    return penalty(1, "18.1").under("18.3b").next(Action.PLAY_OTHER_BALL).note("original_out_of_play")


@provision("18.3c")
def provisional_played(case: Case) -> Ruling:
    """What becomes of a provisional ball depends on the original, and on where strokes were made."""
    original = case[original_ball]
    if original is OriginalBall.IN_THE_HOLE:
        return original_holed(case)
    if original is OriginalBall.NOT_FOUND_YET:
        return search_goes_on(case)
    if original in (OriginalBall.LOST, OriginalBall.OUT_OF_BOUNDS):
        return provisional_in_play(case)
    if original in MUST_BE_ABANDONED:
        return must_be_abandoned(case, original)
    if case[nearer_stroke_at_provisional]:
        return provisional_in_play(case)
    return choice_between_balls(case, original)


@provision("6.5")
def original_holed(_case: Case) -> Ruling:
    """The hole was complete when the original was holed; play with the provisional ball does not count."""
    return no_penalty("6.5").next(Action.HOLED).note("provisional_strokes_do_not_count")


@provision("18.3c(1)")
def search_goes_on(case: Case) -> Ruling:
    """A provisional ball stays provisional until it is played from nearer the hole than the original."""
    if case[nearer_stroke_at_provisional]:
        return provisional_in_play(case)
    return no_penalty("18.3c(1)").next(Action.PLAY_ON).note("provisional_may_be_played_on")


@provision("18.3c(3)")
def must_be_abandoned(case: Case, original: OriginalBall) -> Ruling:
    """A provisional ball not yet in play is abandoned when the original is found, or is in a penalty area."""
    made = case[stroke_at_provisional]
    if made is StrokeAtProvisional.NEARER_BEFORE:
        return provisional_in_play(case)
    if made is StrokeAtProvisional.AFTER:
        return ball_out_of_play_played(case, "correct_by_playing_original", "18.3c(3)")
    return play_on_with_original(case, original)


@provision("18.3c(3)")
def play_on_with_original(case: Case, original: OriginalBall) -> Ruling:
    """The original is played as it lies or under penalty area relief; the provisional ball does not count."""
    if original is OriginalBall.FOUND_ON_COURSE:
        ruling = no_penalty("18.3c(3)").play_as_it_lies()
    else:
        found = original is OriginalBall.FOUND_IN_PENALTY_AREA
        ruling = no_penalty("18.3c(3)").under("17.1d")
        ruling = offer(ruling, *penalty_area_relief(case), may_play_as_it_lies=found)
    return ruling.note("provisional_strokes_do_not_count")


def choice_between_balls(
    case: Case, original: OriginalBall, instead: ReliefOption = CONTINUE_WITH_PROVISIONAL
) -> Ruling:
    """Where a Rule gives free relief though the ball was not found, the player may use it or play on."""
    if original is OriginalBall.IN_CONDITION:
        return not_found_in_condition(case, instead)
    if original is OriginalBall.IN_MOVABLE_OBSTRUCTION:
        return not_found_in_movable_obstruction(case, instead)
    return moved_by_outside_influence(case, instead)


@provision("Clarification 18.3c(2)/4")
def provisional_holed(case: Case) -> Ruling:
    """A holed provisional ball counts once it is taken from the hole, unless the original was found before."""
    original = case[original_ball]
    if original is OriginalBall.IN_THE_HOLE:
        return original_holed(case)
    if original in (OriginalBall.LOST, OriginalBall.OUT_OF_BOUNDS) or case[lifted_from_hole_first]:
        ruling = penalty(1, "18.3c(2)").under("Clarification 18.3c(2)/4").next(Action.HOLED)
        return ruling.note("holed_provisional_counts")
    if original is OriginalBall.NOT_FOUND_YET:
        ruling = no_penalty("Clarification 18.3c(2)/4").next(Action.PLAY_ON)
        return ruling.note("holed_provisional_not_yet_in_play")
    if original in MUST_BE_ABANDONED:
        return play_on_with_original(case, original)
    return choice_between_balls(case, original)


@provision("9.4b")
def provisional_lifted(case: Case) -> Ruling:
    """Lifting a provisional ball costs a stroke only if a Rule did not allow it and it becomes the ball in play."""
    if case[provisional_lift_allowed]:
        return no_penalty("9.4a").replace_ball().note("replace_provisional_if_it_counts")
    if case[provisional_became_in_play]:
        return must_go_back(penalty(1, "9.4b").under("18.3c(2)")).note("provisional_cost_its_stroke")
    return no_penalty("18.3c(3)").play_as_it_lies().note("provisional_strokes_do_not_count")


@provision("18.3c(2)")
def balls_not_told_apart(case: Case) -> Ruling:
    """Original and provisional ball that cannot be told apart: one of them is the provisional, now in play."""
    if case.is_one_of(balls_alike, BallsAlike.NONE):
        return lost_or_out(case, provisional=ProvisionalState.LOST_OR_OUT)
    return provisional_found_alike(case)


@provision("18.3c(2)")
def provisional_found_alike(case: Case) -> Ruling:
    """Of one ball found, or of both, one is the provisional ball and is now in play."""
    ruling = no_penalty("18.3c(2)").with_options(CONTINUE_WITH_PROVISIONAL).next(Action.PLAY_PROVISIONAL)
    if case.is_one_of(balls_alike, BallsAlike.BOTH):
        return ruling.note("choose_one_as_provisional")
    return ruling.note("ball_found_is_provisional")
