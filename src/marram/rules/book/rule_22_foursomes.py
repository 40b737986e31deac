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
from marram.rules.facts.scorecard import too_late_to_correct
from marram.rules.ruling import Action, Ruling, WhichBall, Who, general_penalty


@provision("22.3")
def foursomes_wrong_order(case: Case) -> Ruling:
    """Partners alternate; a stroke by the wrong partner gets the general penalty."""
    ruling = general_penalty("22.3", Who.SIDE)
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    if case[too_late_to_correct]:
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


@provision("22.4")
def foursomes_start(case: Case) -> Ruling:
    """The partner who plays first is ready at the start, the other there or near where the ball should land."""
    if case[both_partners_present]:
        return free("22.4")
    ruling = started_off_time(case).under("22.4")
    return replace(ruling, penalties=tuple(replace(one, who=Who.SIDE) for one in ruling.penalties))
