"""Rule 22: Foursomes."""

from dataclasses import replace

from marram.rules.book.correctable import correct_before_next_hole
from marram.rules.book.plain_outcomes import free
from marram.rules.book.rule_05_start_and_pace import started_off_time
from marram.rules.book.rule_21_other_forms import wrong_order_not_corrected
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.forms import both_partners_present
from marram.rules.facts.partners import TurnAfter, first_to_tee_off_was_right, turn_after
from marram.rules.facts.wrong_place import next_hole_started
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Ruling, WhichBall, general_penalty, penalty


@provision("22.3")
def foursomes_wrong_order(case: Case) -> Ruling:
    """Partners alternate; a stroke by the wrong partner gets the general penalty."""
    ruling = general_penalty("22.3", Who.SIDE)
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    if case[next_hole_started]:
        return wrong_order_not_corrected(case)
    ruling = (
        ruling.stroke_does_not_count()
        .next(Action.REPLAY, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("right_partner_plays_from_first_wrong_spot", "penalties_do_not_change_order")
    )
    hole_only = case.played_since(EDITION_2023)
    return correct_before_next_hole(
        case, ruling, "right_partner_plays", "22.3", Who.SIDE, hole_only=hole_only
    )


@provision("22.3")
def foursomes_whose_turn(case: Case) -> Ruling:
    """Partners alternate; penalty strokes change nothing, and a stroke that does not count is made again."""
    after = case[turn_after]
    if after is TurnAfter.START_OF_HOLE:
        return free("22.3").note("tee_off_by_odd_and_even")
    if after is TurnAfter.MISSED_ON_PURPOSE:
        return free("Clarification 22.3/3").under("22.3").note("same_partner_plays")
    if after is TurnAfter.STROKE_NOT_COUNTED:
        return free("22.3").note("same_partner_plays")
    if after is TurnAfter.PROVISIONAL_BALL:
        return free("22.3").note("next_in_turn_plays_provisional")
    if after is TurnAfter.STROKE_AND_DISTANCE:
        return (
            free("22.3")
            .under("Clarification 22.3/1")
            .note("other_partner_plays", "same_tee_for_both_partners")
        )
    ruling = free("22.3").note("other_partner_plays")
    return ruling.note("penalties_do_not_change_order") if after is TurnAfter.PENALTY_STROKES else ruling


@provision("Clarification 22.3/2")
def foursomes_both_teed_off(case: Case) -> Ruling:
    """The second ball is the side's ball: under stroke and distance, or as the correction of a wrong order."""
    if case[first_to_tee_off_was_right]:
        return second_ball_goes_on(penalty(1, "18.1", Who.SIDE).under("Clarification 22.3/2"))
    ruling = general_penalty("22.3", Who.SIDE).under("Clarification 22.3/2")
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    return second_ball_goes_on(ruling.stroke_does_not_count())


def second_ball_goes_on(ruling: Ruling) -> Ruling:
    """Three strokes are taken either way, and the partner who teed off first plays next."""
    return ruling.next(Action.PLAY_OTHER_BALL).note("second_ball_has_taken_three")


@provision("22.4")
def foursomes_start(case: Case) -> Ruling:
    """The partner who plays first is ready at the start, the other there or near where the ball should land."""
    if case[both_partners_present]:
        return free("22.4")
    ruling = started_off_time(case).under("22.4")
    on_sides = {Who.EACH_PLAYER: Who.EACH_SIDE}
    borne_by = tuple(replace(one, who=on_sides.get(one.who, Who.SIDE)) for one in ruling.penalties)
    return replace(ruling, penalties=borne_by)
