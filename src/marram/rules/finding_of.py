"""What a ruling finds, read from its own data: its notes, its provisions and the facts it rests on, never from words."""

from collections.abc import Iterator, Mapping
from enum import Enum
from typing import Any

from marram.rules.findings import Finding
from marram.rules.ruling import Action, Ruling, Stroke

BY_NOTE: Mapping[str, Finding] = {
    "original_ball_counts": Finding.ORIGINAL_COUNTS,
    "hole_counts_as_tied": Finding.HOLE_TIED,
    "hole_is_tied": Finding.HOLE_TIED,
    "hole_tied": Finding.HOLE_TIED,
    "first_hole_is_tied": Finding.HOLE_TIED,
    "hole_counts_as_won": Finding.HOLE_WON,
    "hole_won": Finding.HOLE_WON,
    "hole_conceded": Finding.HOLE_CONCEDED,
    "hole_won_by_opponent": Finding.HOLE_WON_BY_OTHER,
    "hole_counts_as_lost": Finding.HOLE_LOST,
    "uncorrected_hole_lost": Finding.HOLE_LOST,
    "stopped_ball_decides_hole": Finding.HOLE_DECIDED,
    "side_wins_hole": Finding.SIDE_WINS_HOLE,
    "side_loses_hole": Finding.SIDE_LOSES_HOLE,
    "hole_is_completed": Finding.HOLE_COMPLETED,
    "side_has_completed_hole": Finding.HOLE_COMPLETED,
    "play_after_hole_ignored": Finding.HOLE_COMPLETED,
    "hole_goes_on": Finding.HOLE_GOES_ON,
    "side_still_plays_hole": Finding.HOLE_GOES_ON,
    "hole_out_in_stroke_play": Finding.HOLE_GOES_ON,
    "match_won": Finding.MATCH_WON,
    "match_conceded": Finding.MATCH_CONCEDED,
    "match_ends_tied": Finding.MATCH_TIED,
    "match_is_extended": Finding.MATCH_EXTENDED,
    "match_stands_as_played": Finding.MATCH_STANDS,
    "other_wins_play_off": Finding.PLAY_OFF_DECIDED,
    "lowest_total_wins": Finding.LOWEST_TOTAL_WINS,
    "concession_too_late": Finding.CONCESSION_VOID,
    "caddies_concession_is_void": Finding.CONCESSION_VOID,
    "no_concession_in_stroke_play": Finding.CONCESSION_VOID,
    "nothing_conceded_in_stroke_play": Finding.CONCESSION_VOID,
    "conceded_ball_counts_holed": Finding.NEXT_STROKE_CONCEDED,
    "next_stroke_conceded": Finding.NEXT_STROKE_CONCEDED,
    "score_stands_after_close": Finding.SCORE_STANDS,
    "higher_score_stands": Finding.SCORE_STANDS,
    "actual_score_counts": Finding.SCORE_STANDS,
    "agreed_score_stands": Finding.SCORE_STANDS,
    "too_low_without_effect": Finding.SCORE_STANDS,
    "only_counting_score_matters": Finding.SCORE_STANDS,
    "agreed_result_stands": Finding.RESULT_STANDS,
    "result_is_final": Finding.RESULT_STANDS,
    "correct_hole_result": Finding.RESULT_CORRECTED,
    "correct_match_score": Finding.RESULT_CORRECTED,
    "correct_administrative_mistake": Finding.RESULT_CORRECTED,
    "no_ruling_result_stands": Finding.NO_RULING,
    "ruling_is_given": Finding.RULING_GIVEN,
    "assigned_referee_rules": Finding.RULING_GIVEN,
    "wrong_ruling_stands": Finding.RULING_STANDS,
    "correct_the_ruling": Finding.RULING_CORRECTED,
    "misunderstanding_as_wrong_ruling": Finding.RULING_CORRECTED,
    "follow_referee": Finding.FOLLOW_REFEREE,
    "agreed_outcome_conclusive": Finding.AGREEMENT_BINDS,
    "agreement_not_binding": Finding.AGREEMENT_DOES_NOT_BIND,
    "call_off_agreement_before_start": Finding.CALL_OFF_AGREEMENT,
    "rule_on_what_video_shows": Finding.VIDEO_COUNTS,
    "disregard_what_video_shows": Finding.VIDEO_DOES_NOT_COUNT,
    "no_points_on_hole": Finding.NO_POINTS,
    "uncorrected_no_points": Finding.NO_POINTS,
    **{f"stableford_points_{points}": Finding[f"POINTS_{points}"] for points in range(1, 7)},
    "maximum_on_hole": Finding.MAXIMUM_SCORE,
    "uncorrected_maximum_score": Finding.MAXIMUM_SCORE,
    "first_ball_counts": Finding.FIRST_BALL_COUNTS,
    "chosen_ball_counts": Finding.CHOSEN_BALL_COUNTS,
    "other_ball_counts": Finding.OTHER_BALL_COUNTS,
    "ball_played_out_counts": Finding.PLAYED_OUT_BALL_COUNTS,
    "partner_has_no_score": Finding.SCORE_STANDS,
    "other_partners_score_counts": Finding.PARTNERS_SCORE_COUNTS,
    "score_of_one_partner_counts": Finding.PARTNERS_SCORE_COUNTS,
    "lower_score_counts": Finding.LOWER_SCORE_COUNTS,
    "no_scorecard_in_match_play": Finding.NO_CARD_IN_MATCH,
    "form_does_not_matter": Finding.CARD_HOLDS,
    "one_partner_certifies": Finding.CARD_HOLDS,
    "each_marker_certifies_own_holes": Finding.CARD_HOLDS,
    "committee_adds_up": Finding.COMMITTEE_CORRECTS,
    "committee_establishes_scores": Finding.COMMITTEE_CORRECTS,
    "committee_works_out_handicap": Finding.COMMITTEE_CORRECTS,
    "add_the_penalty_strokes": Finding.ADD_PENALTY_STROKES,
    "match_play_only": Finding.MATCH_PLAY_ONLY,
    "farther_ball_first": Finding.FARTHER_FIRST,
    "honour_by_agreement_or_lot": Finding.HONOUR_BY_LOT,
    "winner_of_last_hole_first": Finding.WINNER_FIRST,
    "order_of_draw": Finding.ORDER_OF_DRAW,
    "lowest_gross_score_first": Finding.LOWEST_SCORE_FIRST,
    "others_tee_off_first": Finding.OTHERS_FIRST,
    "provisional_at_once": Finding.PROVISIONAL_AT_ONCE,
    "turn_by_original_ball": Finding.TURN_BY_ORIGINAL,
    "turn_by_previous_stroke": Finding.TURN_BY_PREVIOUS_STROKE,
    "same_partner_plays": Finding.SAME_PARTNER_PLAYS,
    "other_partner_plays": Finding.OTHER_PARTNER_PLAYS,
    "next_in_turn_plays_provisional": Finding.OTHER_PARTNER_PLAYS,
    "tee_off_by_odd_and_even": Finding.ODD_AND_EVEN,
    "conduct_warning": Finding.WARNING,
    "warn_now": Finding.WARNING,
    "no_bad_time_untimed": Finding.NO_BAD_TIME,
    "tell_of_bad_time_first": Finding.NO_BAD_TIME,
    "short_delay_allowed": Finding.SHORT_DELAY_ALLOWED,
    "stop_when_suspended": Finding.STAY_STOPPED,
    "hole_finished_now_stop": Finding.STAY_STOPPED,
    "resume_when_danger_over": Finding.STAY_STOPPED,
    "resume_where_stopped": Finding.PLAY_RESUMED,
    "holed_with_previous_stroke": Finding.HOLED,
    "not_holed_against_flagstick": Finding.NOT_HOLED,
    "never_at_rest_in_hole": Finding.NOT_HOLED,
    "stuck_in_side_may_be_lifted": Finding.NOT_HOLED,
    "replace_on_lip": Finding.NOT_HOLED,
    "second_ball_is_provisional": Finding.IS_PROVISIONAL,
    "ball_found_is_provisional": Finding.PROVISIONAL_IN_PLAY,
    "choose_one_as_provisional": Finding.PROVISIONAL_IN_PLAY,
    "only_in_penalty_area_no_provisional": Finding.IS_NOT_PROVISIONAL,
    "provisional_may_be_played_on": Finding.IS_PROVISIONAL,
    "provisional_strokes_do_not_count": Finding.ORIGINAL_IN_PLAY,
    "holed_provisional_not_yet_in_play": Finding.IS_PROVISIONAL,
    "ball_is_in_bunker": Finding.IN_BUNKER,
    "lies_in_bunker": Finding.IN_BUNKER,
    "ball_is_not_in_bunker": Finding.NOT_IN_BUNKER,
    "lies_in_general_area": Finding.IN_GENERAL_AREA,
    "ditch_is_general_area": Finding.IN_GENERAL_AREA,
    "bunker_is_general_area": Finding.IN_GENERAL_AREA,
    "lies_in_penalty_area": Finding.IN_PENALTY_AREA,
    "ditch_is_penalty_area": Finding.IN_PENALTY_AREA,
    "lies_on_putting_green": Finding.ON_PUTTING_GREEN,
    "counts_hit_or_missed": Finding.STROKE_MADE,
    "one_stroke_for_double_hit": Finding.STROKE_MADE,
    "no_stroke_made": Finding.NO_STROKE,
    "drop_not_counted": Finding.DROP_DOES_NOT_COUNT,
    "wrong_drops_are_not_counted": Finding.DROP_DOES_NOT_COUNT,
    "second_drop_is_counted": Finding.FIRST_DROP_COUNTS,
    "relief_is_complete": Finding.IN_PLAY,
    "ball_in_play_even_if_wrong": Finding.IN_PLAY,
    "no_free_relief": Finding.NO_FREE_RELIEF,
    "no_relief_stroke_unreasonable": Finding.NO_FREE_RELIEF,
    "no_relief_unreasonable_choice": Finding.NO_FREE_RELIEF,
    "no_line_of_play_relief": Finding.NO_FREE_RELIEF,
    "not_damage_leave_it": Finding.NO_FREE_RELIEF,
    "no_preferred_lie_here": Finding.LIE_MAY_NOT_BE_PREFERRED,
    "may_remove_loose_impediment": Finding.LOOSE_IMPEDIMENT,
    "may_remove_movable_obstruction": Finding.MOVABLE_OBSTRUCTION,
    "not_a_practice_stroke": Finding.NO_PRACTICE_STROKE,
    "outside_influence_or_stroke_and_distance": Finding.MOVED_BY_OUTSIDE_INFLUENCE,
    "substituted_ball_is_in_play": Finding.OTHER_BALL_IN_PLAY,
    "go_on_with_substituted_ball": Finding.OTHER_BALL_IN_PLAY,
    "alternative_original_out_of_play": Finding.OTHER_BALL_IN_PLAY,
    "further_ball_counts": Finding.OTHER_BALL_IN_PLAY,
    "club_counts_as_conforming": Finding.CLUB_CONFORMS,
    "club_may_be_used_again": Finding.CLUB_CONFORMS,
    "do_not_use_club": Finding.CLUB_NOT_TO_BE_USED,
    "not_added_before_stroke": Finding.CLUB_NOT_ADDED,
    "play_a_conforming_ball": Finding.PLAY_ANOTHER_BALL,
    "use_ball_on_list": Finding.PLAY_ANOTHER_BALL,
    "ball_may_come_from_anyone": Finding.BALL_MAY_BE_PLAYED,
    "only_penalty_relief_left": Finding.ONLY_PENALTY_RELIEF,
}
"""What a note of a ruling finds; the first of them that the ruling carries is named."""

BY_FACT: Mapping[str, Mapping[str, Finding]] = {
    "all_of_ball_out_of_bounds": {"True": Finding.OUT_OF_BOUNDS},
    "whereabouts": {"not_known": Finding.LOST, "out_of_bounds": Finding.OUT_OF_BOUNDS},
    "original_ball": {"lost": Finding.LOST, "out_of_bounds": Finding.OUT_OF_BOUNDS},
    "new_place": {"out_of_bounds": Finding.OUT_OF_BOUNDS},
    "after_penalty_area": {"lost_outside": Finding.LOST, "out_of_bounds": Finding.OUT_OF_BOUNDS},
    "boundary_feature": {"fence": Finding.OUT_OF_BOUNDS, "wall_or_road": Finding.OUT_OF_BOUNDS},
    "road_named": {"True": Finding.OUT_OF_BOUNDS},
    "identified_in_reasonable_time": {"False": Finding.LOST},
    "found_in_penalty_area": {"False": Finding.LOST},
    "found_in_obstruction": {"False": Finding.LOST},
    "ball_found_in_accumulation": {"False": Finding.LOST},
    "own_two_balls_alike": {"True": Finding.LOST},
    "played_by_another_known": {"False": Finding.LOST},
    "search_minutes": {"": Finding.LOST},
}
"""Which of lost and out of bounds the facts tell, where Rule 18.2b is what decides; the first that tells it."""

BY_PROVISION: Mapping[str, Finding] = {
    "18.2a(1)": Finding.FOUND_IN_TIME,
    "18.2a(2)": Finding.IN_BOUNDS,
    "18.3c(2)": Finding.PROVISIONAL_IN_PLAY,
    "18.3c(3)": Finding.ORIGINAL_IN_PLAY,
    "13.1f(2)": Finding.ON_WRONG_GREEN,
    "16.1f(1)": Finding.IN_NO_PLAY_ZONE,
    "16.1f(2)": Finding.IN_NO_PLAY_ZONE,
    "17.1e(1)": Finding.IN_NO_PLAY_ZONE,
    "17.1e(2)": Finding.IN_NO_PLAY_ZONE,
    "16.1e": Finding.IN_CONDITION,
    "17.1b": Finding.IN_PENALTY_AREA,
    "17.1c": Finding.IN_PENALTY_AREA,
    "17.1d": Finding.IN_PENALTY_AREA,
    "17.2a": Finding.IN_PENALTY_AREA,
    "17.3": Finding.IN_PENALTY_AREA,
    "19.1": Finding.UNPLAYABLE_IS_THE_PLAYERS_CHOICE,
}
"""What the provision that decides finds of the ball."""

_BY_STROKE: Mapping[Stroke, Finding] = {
    Stroke.COUNTS: Finding.STROKE_COUNTS,
    Stroke.DOES_NOT_COUNT: Finding.STROKE_DOES_NOT_COUNT,
    Stroke.OPPONENT_MAY_CANCEL: Finding.STROKE_MAY_BE_CANCELLED,
}
_LOST_OR_OUT = "18.2b"


def finding_of(ruling: Ruling) -> Finding | None:
    """Return what a ruling finds; ``None`` where its penalty and its next step say all."""
    return next(_findings(ruling), None)


def _findings(ruling: Ruling) -> Iterator[Finding]:
    """Yield what a ruling finds, the most telling first."""
    if _LOST_OR_OUT in ruling.citations and not ruling.penalties and ruling.action is Action.TAKE_RELIEF:
        yield _lost_or_out(ruling)
    yield from (BY_NOTE[note] for note in ruling.notes if note in BY_NOTE)
    if ruling.action is Action.HOLED:
        yield Finding.HOLED
    if ruling.stroke is not None:
        yield _BY_STROKE[ruling.stroke]
    if _LOST_OR_OUT in ruling.citations and ruling.action is Action.TAKE_RELIEF:
        yield _lost_or_out(ruling)
    if ruling.action not in (None, Action.HOLE_OVER, Action.CORRECT_MISTAKE, Action.PLAY_ON):
        yield from (BY_PROVISION[one] for one in ruling.citations[:1] if one in BY_PROVISION)
    if ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF and any(
        not option.penalty for option in ruling.relief
    ):
        yield Finding.FREE_RELIEF


def _lost_or_out(ruling: Ruling) -> Finding:
    """Return whether the ball is lost or out of bounds, where the facts tell which."""
    for reason in ruling.reasons:
        told = BY_FACT.get(reason.fact)
        if told is None:
            continue
        found = {told.get(word) for word in ([_word(one) for one in reason.answers] or [""])}
        only = found.pop()
        if not found and only is not None:
            return only
    return Finding.LOST_OR_OUT


def _word(answer: Any) -> str:
    return str(answer.value if isinstance(answer, Enum) else answer)


__all__ = ["BY_FACT", "BY_NOTE", "BY_PROVISION", "finding_of"]
