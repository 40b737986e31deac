"""Rule 14.7: playing from a wrong place, and how the hole is then completed in stroke play."""

from marram.rules.book.correctable import correct_before_next_hole
from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.wrong_place import (
    BallsPlayed,
    Elsewhere,
    SecondBallPlace,
    SeriousBreach,
    balls_after_wrong_place,
    facts_reported,
    first_ball_serious,
    next_hole_started,
    not_a_wrong_place,
    place_of_second_ball,
    serious_breach,
)
from marram.rules.penalty import disqualified, general
from marram.rules.ruling import Action, Deadline, HandOver, Ruling, disqualification, general_penalty


@provision("14.7")
def ball_played_from_elsewhere(case: Case) -> Ruling | HandOver:
    """A ball was played from another place than the Rules require or allow."""
    if case.is_one_of(not_a_wrong_place, Elsewhere.NEITHER):
        return played_from_wrong_place(case)
    return no_wrong_place(case)


@provision("Definitions: wrong place")
def no_wrong_place(case: Case) -> HandOver:
    """A stroke from the green not replayed, or made from outside the teeing area, has a penalty in another Rule.

    So has a ball played from near where the original was lost: stroke and distance is owed besides (Rule 18.2b).
    """
    if case.is_one_of(not_a_wrong_place, Elsewhere.ORIGINAL_LOST_OR_OUT):
        return HandOver("dropped_where_lost", "18.2b", (("played_since_put_down", "yes"),))
    if case.is_one_of(not_a_wrong_place, Elsewhere.STROKE_NOT_REPLAYED):
        return HandOver("stroke_from_green_not_replayed", "Definitions: wrong place")
    return HandOver("began_outside_teeing_area", "Definitions: wrong place")


@provision("14.7a")
def played_from_wrong_place(case: Case) -> Ruling:
    """The general penalty; in stroke play the rest depends on whether the breach was serious."""
    if case.match_play:
        return general_penalty("14.7a").next(Action.HOLE_OVER)
    breach = case[serious_breach]
    if breach is SeriousBreach.NO:
        return no_serious_breach_and_how_play_went_on(case)
    if breach is SeriousBreach.YES:
        return serious_breach_in_stroke_play(case)
    return uncertain_whether_serious(case)


@provision("14.7b(1)")
def no_serious_breach(_case: Case) -> Ruling:
    """Without a serious breach the hole is played out with the ball played from the wrong place."""
    return (
        general_penalty("14.7a")
        .under("14.7b(1)")
        .play_as_it_lies()
        .stroke_counts()
        .note("do_not_correct_wrong_place")
    )


@provision("14.7b")
def no_serious_breach_and_how_play_went_on(case: Case) -> Ruling:
    """The ball played from the wrong place counts, but two balls must have been reported, and it must be holed."""
    went_on = case[balls_after_wrong_place]
    if went_on is BallsPlayed.NOT_CORRECTED:
        return no_serious_breach(case)
    if went_on is BallsPlayed.CORRECTED_BALL_ONLY:
        return first_ball_given_up(case)
    if case[facts_reported]:
        return first_ball_counts(case)
    return disqualification("14.7b(2)").next(Action.HOLE_OVER)


@provision("14.7b(1)")
def first_ball_given_up(case: Case) -> Ruling:
    """Corrected although it was no serious breach: the first ball still counts, and has to be holed (Rule 3.3c)."""
    if not case.played_since(EDITION_2023) and not case[facts_reported]:
        return disqualification("14.7b(2)").next(Action.HOLE_OVER)
    if case[next_hole_started]:
        return disqualified_or_without_score(case, "3.3c").under("14.7b(1)")
    ruling = (
        general_penalty("14.7a")
        .under("14.7b(1)", "3.3c")
        .next(Action.CORRECT_MISTAKE)
        .note("first_ball_counts_second_ignored")
    )
    return correct_before_next_hole(case, ruling, "hole_out", "3.3c")


@provision("14.7b(1)")
def serious_breach_in_stroke_play(case: Case) -> Ruling:
    """A serious breach must be corrected by playing out the hole from the right place, in time."""
    if case.is_one_of(balls_after_wrong_place, BallsPlayed.CORRECTED_BALL_ONLY, BallsPlayed.TWO_BALLS):
        return corrected_wrong_place(case)
    if case[next_hole_started]:
        return disqualified_or_without_score(case, "14.7b(1)")
    ruling = (
        general_penalty("14.7a")
        .under("14.7b(1)")
        .next(Action.CORRECT_MISTAKE)
        .stroke_does_not_count()
        .note("play_out_from_right_place")
    )
    return correct_before_next_hole(case, ruling, "correct_serious_breach", "14.7b(1)")


@provision("14.7b(1)")
def uncertain_whether_serious(_case: Case) -> Ruling:
    """In doubt the player should play out both balls, and must report the facts to the Committee."""
    return (
        general_penalty("14.7a")
        .under("14.7b(1)")
        .next(Action.PLAY_ON)
        .note("play_out_both_balls")
        .correct("report_two_balls", Deadline.BEFORE_SCORECARD, disqualified("14.7b(2)"))
    )


@provision("14.7b(2)")
def corrected_wrong_place(case: Case) -> Ruling:
    """Facts to be reported: in 2019 after any correction, since 2023 where two balls were played."""
    if case.played_since(EDITION_2023) and case.is_one_of(
        balls_after_wrong_place, BallsPlayed.CORRECTED_BALL_ONLY
    ):
        return serious_breach_counts_second_ball(case)
    if case[facts_reported]:
        return serious_breach_counts_second_ball(case)
    return disqualification("14.7b(2)").next(Action.HOLE_OVER)


@provision("14.7b")
def second_ball_played(case: Case) -> Ruling:
    """After a stroke from a wrong place a second ball was played: reported, and which ball counts?"""
    if case.match_play:
        return general_penalty("14.7a").next(Action.HOLE_OVER)
    if not case[facts_reported]:
        return disqualification("14.7b(2)").next(Action.HOLE_OVER)
    if case[first_ball_serious]:
        return serious_breach_counts_second_ball(case)
    return first_ball_counts(case)


@provision("14.7b(3)")
def first_ball_counts(_case: Case) -> Ruling:
    """Without a serious breach the first ball counts, with the general penalty; the other is disregarded."""
    return (
        general_penalty("14.7a")
        .under("14.7b(3)")
        .next(Action.PLAY_ON)
        .note("first_ball_counts_second_ignored")
    )


@provision("14.7b(3)")
def serious_breach_counts_second_ball(case: Case) -> Ruling:
    """With a serious breach the ball played to correct it counts, unless that was a serious breach too."""
    place = case[place_of_second_ball]
    if place is SecondBallPlace.WRONG_SERIOUS:
        return disqualified_or_without_score(case, "14.7b(3)")
    ruling = (
        general_penalty("14.7a")
        .under("14.7b(3)")
        .next(Action.PLAY_ON)
        .note("second_ball_counts_first_ignored")
    )
    if place is SecondBallPlace.WRONG_NOT_SERIOUS:
        return ruling.also(general("14.7a")).note("two_general_penalties_on_second_ball")
    return ruling
