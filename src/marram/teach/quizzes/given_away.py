"""Which situations, and which titles, tell the answer to the question about them: a penalty, or an end that is only said again."""

import re
from collections.abc import Mapping

from marram.rules.facts.conditions import FormOfPlay
from marram.teach.situations.situation import Situation
from marram.word_stems import stem

_TOLD_WITH: Mapping[str, frozenset[str]] = {
    "code_penalty": frozenset({"warning", "one_stroke", "general", "disqualification"}),
    "conduct_finding": frozenset({"no_disqualification", "disqualified"}),
    "match_may_end_tied": frozenset({"yes", "no"}),
    "match_state": frozenset({"hole_penalty"}),
    "policy_penalty": frozenset({"warning", "one_stroke", "general", "disqualification"}),
}
"""By fact: answers that are told as the penalty itself, or as what becomes of the hole."""
_TOLD_WITH_INCIDENT: Mapping[str, Mapping[str, frozenset[str]]] = {
    "ball_after_provisional": {"original_ball": frozenset({"in_the_hole", "not_found_yet"})},
    "crossing_point_was_wrong": {"dropping_zone_provided": frozenset({"yes"})},
    "embedded_ball": {
        "cut_to_fairway_height": frozenset({"no"}),
        "ball_in_stacked_turf_face": frozenset({"yes"}),
    },
    "interfering_ball": {"area_of_ball": frozenset({"teeing_area"})},
    "lifted_to_see": {"relief_taken_after_lifting": frozenset({"yes"})},
    "advice_exchanged": {"advice_to_or_from": frozenset({"advice_giver"})},
    "ball_marker_in_the_way": {"marker_in_the_way": frozenset({"moved_and_back"})},
    "ball_not_found": {"provisional_state": frozenset({"second_found"})},
    "ball_when_play_stopped": {"ball_when_stopped": frozenset({"left_in_place"})},
    "caddie_against_local_rule": {
        "local_rule_h_1_1": frozenset({"no"}),
        "local_rule_h_1_2": frozenset({"no"}),
        "local_rule_h_1_3": frozenset({"no"}),
    },
    "another_ball_put_in_play": {"why_substituted": frozenset({"playing_again", "taking_relief"})},
    "caddie_acted": {
        "caddie_deed": frozenset({"decided_on_relief", "routine_help"}),
        "reason_for_lifting": frozenset({"taking_relief"}),
        "relief_evident": frozenset({"no"}),
    },
    "club_added": {"holes_with_breach": frozenset({"0"})},
    "club_damaged": {"after_damage": frozenset({"nothing_yet"}), "holes_with_breach": frozenset({"0"})},
    "club_shared": {"holes_with_breach": frozenset({"0"})},
    "club_limited": {"stroke_with_club": frozenset({"not_counted"})},
    "club_lost": {"holes_with_breach": frozenset({"0"})},
    "concession": {
        "conceded": frozenset({"hole", "match"}),
        "someone_had_started": frozenset({"no", "called_off"}),
    },
    "decided_among_players": {"referee_assigned": frozenset({"yes"})},
    "four_ball_card": {"why_too_low": frozenset({"penalty_is_disqualification"})},
    "foursomes_whose_turn": {"turn_after": frozenset({"start_of_hole"})},
    "helped_in_stroke": {"help_in_stroke": frozenset({"ended_before_stroke"})},
    "hole_completed": {"how_hole_ended": frozenset({"holed"})},
    "hole_score_wrong": {"why_too_low": frozenset({"penalty_is_disqualification"})},
    "ignored_a_rule": {"knew_it_applied": frozenset({"no"})},
    "mistake_in_relief_noticed": {"mistake_in_relief": frozenset({"drop_again", "wrong_rule"})},
    "shared_caddie_in_breach": {"for_whom_shared_caddie_acted": frozenset({"neither"})},
    "wrong_green": {
        "excluded_green": frozenset({"played_as_it_lies"}),
        "local_rule_d_3": frozenset({"yes"}),
    },
    "no_play_zone": {"only_by_unreasonable_choice": frozenset({"yes"})},
    "other_person_acted": {"how_involved": frozenset({"neither"})},
    "stroke_took_long": {"local_rule_k_3": frozenset({"yes"})},
    "too_many_clubs": {"holes_with_breach": frozenset({"0"})},
    "three_ball_out_of_turn": {"cancelled_in": frozenset({"one"})},
    "wrong_ball_played": {"ball_struck": frozenset({"in_play"})},
    "young_tree": {"only_by_unreasonable_choice": frozenset({"yes"})},
}
"""By incident: that a caddie may do what caddies do, that a hole conceded is won, that a hole is completed once the ball is holed, that a ball in play is no wrong ball, that it is dropped again.

Of a ball dropped beside a penalty area it is not told whether that was in a dropping zone. What a Local Rule says of an embedded
ball is told with it, and the relief that was decided on is the answer.
Where a Local Rule names an advice giver, a caddie, a green or a stance on it, what it says is told with it; a Rule that a shared caddie
broke is told with its penalty; and of two provisional balls one alone is at hand.
What the other scale of penalties for bad times gives is not told with it (Model Local Rule K-3).
Where a stroke is cancelled in one of two matches, two balls are played on (Rule 21.4b), which no answer says. Whether relief goes on that a caddie decided on, the player has yet to say. Where nobody knew of a penalty, that of the Rule itself still stands, and which that was is not told (Rule 1.3b(1)). What a referee of the match decides is not told either (Rule 20.1b(1)). Where a caddie lifts a ball for relief that the player was not seen to want, whether it is taken is not told (Rule 10.3b).
After relief under a Rule that did not apply, what is right hangs on which Rule does, and that is not told (Rule 14.5b(3)).
A ball put down in relief or for a stroke played again may have its price, whichever ball it is (Rules 14.3a and 14.6). A club that does not count as added yet has to go out of the bag all the same (Rule 4.1b(1)). A penalty of disqualification left out makes no score too low. Whoever could choose a stroke with which a no play zone does not interfere may play that one. Of what an outsider did, it is not told whether the ball has to be replaced (Rule 9.6).
"""

_TOLD_TOGETHER: tuple[Mapping[str, frozenset[str]], ...] = (
    {
        "after_lifting": frozenset({"goes_elsewhere", "went_elsewhere"}),
        "area_of_ball": frozenset({"penalty_area"}),
    },
)
"""Answers that leave a price open together: relief from a penalty area has its own (Rule 17.1d)."""
_UNTOLD_IN_MATCH = frozenset({"mistake_not_corrected"})
"""Incidents of which too little is told in a match: which mistake it was, and so whether the hole is lost by it."""
_UNTOLD_BUT_IN_MATCH: Mapping[str, Mapping[str, frozenset[str]]] = {
    "helped_ball_in_motion": {"moved_in_path": frozenset({"ball_off_green"})}
}
"""By incident: answers of which, unless the hole is lost, it would have to be said which of two balls is played as it lies (Rule 11.3)."""
_MAY_GIVE_UP = frozenset({FormOfPlay.MAXIMUM_SCORE, FormOfPlay.PAR_BOGEY, FormOfPlay.STABLEFORD})
"""Forms of play in which whoever has not holed out may go on or stop, so that whether the hole is over is up to the player (Rule 6.5)."""
_GIVEN_UP = {"balls_after_wrong_place": "corrected_ball_only", "next_hole_started": "no"}
"""The ball that counts was given up, and has to be holed out only by whoever wants a score (Rules 14.7b(1) and 3.3c)."""
_DENIED: Mapping[str, Mapping[str, frozenset[str]]] = {
    "anothers_conditions_altered": {"deliberate_act": frozenset({"none_of_these"})},
    "card_handicap_wrong": {"handicap_shown": frozenset({"right"})},
    "fixed_object_moved": {"meant_for_later_play": frozenset({"no"})},
    "amputee_player": {"device_accepted": frozenset({"yes"})},
    "foursomes_start": {"both_partners_present": frozenset({"yes"})},
    "green_tested": {"green_test": frozenset({"otherwise"})},
    "ground_altered": {"meant_for_later_play": frozenset({"no"})},
    "helping_ball": {"area_of_ball": frozenset({"bunker", "general_area", "penalty_area", "teeing_area"})},
    "mobility_device": {"device_accepted": frozenset({"yes"})},
    "no_play_zone": {"no_play_zone_interference": frozenset({"none"})},
    "object_put_in_position": {"meant_for_later_play": frozenset({"no"})},
    "own_conditions_altered": {"deliberate_act": frozenset({"none_of_these"})},
    "played_after_suspension": {"playing_on_justified": frozenset({"yes"})},
    "practised_before_round": {"within_practice_limits": frozenset({"yes"})},
    "resumed_off_time": {
        "committee_ordered_play": frozenset({"no"}),
        "exceptional_circumstances": frozenset({"yes"}),
        "playing_on_justified": frozenset({"yes"}),
        "ready_on_resumption": frozenset({"yes"}),
    },
    "shoes_worn": {"shoes_barred": frozenset({"no"})},
    "stood_across_line": {"foot_on_line": frozenset({"no"})},
    "stopped_play": {"stop_reason": frozenset({"suspended"})},
    "strokes_told": {"strokes_right": frozenset({"yes"})},
    "tee_marker_moved": {"tee_marker": frozenset({"missing"})},
    "unreasonable_delay": {"delay_reasonable": frozenset({"yes"})},
    "zone_beyond_boundary": {"zone_beyond_boundary_interferes": frozenset({"no"})},
}
"""By incident: answers by which what it is about did not happen, or is excused, so that everybody knows that nothing is penalised."""
_REPLACED_AND_BLOWN_IN: Mapping[str, frozenset[str]] = {
    "new_place": frozenset({"in_the_hole"}),
    "put_in_play_by_hand": frozenset({"yes"}),
}
_LEFT_OPEN: Mapping[str, tuple[Mapping[str, frozenset[str]], ...]] = {
    "another_ball_put_in_play": (
        {
            "balls_after_wrong_place": frozenset({"corrected_ball_only"}),
            "serious_breach": frozenset({"no"}),
        },
    ),
    "ball_may_have_moved": (_REPLACED_AND_BLOWN_IN,),
    "ball_moved_by_natural_forces": (_REPLACED_AND_BLOWN_IN,),
    "ball_moved_during_swing": (_REPLACED_AND_BLOWN_IN,),
    "identifying_ball": (
        {"how_identified": frozenset({"seen_to_come_to_rest"})},
        {"how_identified": frozenset({"identifying_mark"}), "identical_ball_there": frozenset({"no"})},
        {"own_two_balls_alike": frozenset({"yes"}), "local_rule_e_5": frozenset({"yes"})},
    ),
    "played_out_of_turn": ({"opponent_on_cancelling": frozenset({"undecided"})},),
}
"""By incident: answers that together leave more than one answer, or none but the right one.

Whoever gives up a ball played from a wrong place, though the breach was not serious, has still to hole out with it; what the other ball
comes to, the Rules do not say (Rule 14.7b(1)). Nor do they say of a ball that was put down, and that wind took into the hole, that the
hole is another area of the course (Rule 9.3 Exception 2). A stroke out of turn that may still be cancelled neither stands nor does not.
Where a ball is known by its mark, or was seen to come to rest, nothing is in question.
"""


def gives_itself_away(one: Situation) -> bool:
    """Return whether a situation tells the answer to the question about it, or too little for one, so that nothing is asked."""
    if one.incident in _UNTOLD_IN_MATCH and one.form is FormOfPlay.MATCH_PLAY:
        return True
    if one.form in _MAY_GIVE_UP and _GIVEN_UP.items() <= one.facts.items():
        return True
    if one.incident == "hole_completed" and one.form in _MAY_GIVE_UP:
        return True
    if any(
        all(str(one.facts.get(name)) in tokens for name, tokens in each.items())
        for each in (*_TOLD_TOGETHER, *_LEFT_OPEN.get(one.incident, ()))
    ):
        return True
    out_of_match = {} if one.form is FormOfPlay.MATCH_PLAY else _UNTOLD_BUT_IN_MATCH.get(one.incident, {})
    told = (
        _TOLD_WITH,
        _TOLD_WITH_INCIDENT.get(one.incident, {}),
        _DENIED.get(one.incident, {}),
        out_of_match,
    )
    return any(str(one.facts.get(name)) in tokens for each in told for name, tokens in each.items())


_LEADS_ON = frozenset(
    ("a", "an", "and", "are", "as", "at", "ball", "be", "been", "by", "for", "from", "had", "has", "in", "is", "it", "its", "no", "not", "of", "on", "one", "or", "other", "penalties", "penalty", "player", "player's", "stroke", "strokes", "that", "the", "their", "this", "to", "two", "was", "were", "which", "who", "with")
)  # fmt: skip
"""Words that say nothing of an answer: those of grammar, and what every situation is about."""


def title_gives_away(title: str, told: str, headline: str) -> bool:
    """Return whether a title says what the ruling finds and the situation does not tell ("The ball is lost").

    A title that asks, or that names one thing or another, leaves it open.

    Args:
        title: what a situation is called.
        told: the situation as it is told.
        headline: the ruling in one line, what it finds before the colon.
    """
    if "?" in title or re.search(r"\bor\b", title):
        return False
    finding = headline.partition(":")[0]
    return bool((_stems(title) & _stems(finding)) - _stems(told))


def _stems(words: str) -> set[str]:
    return {stem(one) for one in re.findall(r"[a-z']+", words.lower()) if one not in _LEADS_ON}
