"""What a ruling without penalty finds, read from the answer that decides: allowed, in time, not the player's act, and so on."""

from collections.abc import Iterable, Mapping

from marram.rules.findings import Finding

_YES, _NO = "True", "False"


def _each(finding: Finding, answers: Iterable[str]) -> dict[str, Finding]:
    return dict.fromkeys(answers, finding)


_WHOEVER_HELPS = (
    "aim_stance_advice",
    "object_removed",
    "lifted_on_green",
    "dropped_by_other",
    "replaced_with_equipment",
    "help_with_position",
    "stance_with_device",
    "sand_touched",
    "advice_and_help",
)
"""What a player with a disability may do or have done (Rules 25.2 to 25.5), under the facts that ask for it."""

FREE_BY_FACT: Mapping[str, Mapping[str, Finding]] = {
    # Time, pace and the group (Rules 5.3 to 5.7)
    "ready_when_group_could_start": {_YES: Finding.IN_TIME},
    "both_partners_present": {_YES: Finding.IN_TIME},
    "exceptional_circumstances": {_YES: Finding.EXCUSED},
    "playing_on_justified": {_YES: Finding.EXCUSED},
    "marker_at_fault": {_YES: Finding.SCORE_STANDS},
    "delay_excused": {_YES: Finding.EXCUSED},
    "within_policy_time": {_YES: Finding.WITHIN_TIME},
    "seconds_for_stroke": {"": Finding.WITHIN_TIME},
    "over_policy_time": {_NO: Finding.WITHIN_TIME},
    "behind_group_in_front": {_NO: Finding.IN_POSITION},
    "local_rule_k_4": {_NO: Finding.NO_PACE_POLICY},
    "no_play_zone_interference": {"none": Finding.ZONE_DOES_NOT_INTERFERE},
    "zone_beyond_boundary_interferes": {_NO: Finding.ZONE_DOES_NOT_INTERFERE},
    "sent_there_by_committee": {_YES: Finding.AS_COMMITTEE_SET},
    "order_set_by_committee": {_YES: Finding.AS_COMMITTEE_SET},
    "group_change_approved": {_YES: Finding.CHANGE_APPROVED},
    "stop_reason": {"short_pause": Finding.SHORT_PAUSE},
    "reported_stop": {_YES: Finding.STOPPING_ALLOWED},
    "stopping_delays_competition": {_NO: Finding.STOPPING_ALLOWED},
    "refused_to_go_on": {_NO: Finding.STOPPING_ALLOWED},
    # Practice (Rules 5.2 and 5.5)
    "practised_before": {"exempt": Finding.PRACTICE_ALLOWED, "on_other_day": Finding.PRACTICE_ALLOWED},
    "day_of_play_over": {_YES: Finding.PRACTICE_ALLOWED},
    "within_practice_limits": {_YES: Finding.PRACTICE_ALLOWED},
    "local_rule_i_1_1": {_NO: Finding.PRACTICE_ALLOWED},
    "practice_delayed_play": {_NO: Finding.PRACTICE_ALLOWED},
    "practice_allowed_when_stopped": {_YES: Finding.PRACTICE_ALLOWED},
    "match_stopped_until_another_day": {_YES: Finding.PRACTICE_ALLOWED},
    "local_rule_i_2": {_NO: Finding.PRACTICE_ALLOWED},
    "tested_green": {"practice_green": Finding.PRACTICE_ALLOWED},
    "green_test": {"otherwise": Finding.NOT_A_TEST},
    "meant_to_test": {_NO: Finding.NOT_A_TEST},
    # Matches, cards and the Committee (Rules 1, 3 and 20)
    "someone_had_started": {"called_off": Finding.NOT_BOUND_BY_AGREEMENT},
    "knew_it_applied": {_NO: Finding.NOT_IGNORED_KNOWINGLY},
    "conduct_finding": {"no_disqualification": Finding.NO_DISQUALIFICATION},
    "strokes_right": {_YES: Finding.NUMBER_RIGHT},
    "strokes_put_right": {_YES: Finding.PUT_RIGHT_IN_TIME},
    "handicap_put_right": {_YES: Finding.PUT_RIGHT_IN_TIME},
    "result_misunderstood": {_NO: Finding.WITHOUT_EFFECT},
    "strokes_given_affected": {_NO: Finding.WITHOUT_EFFECT},
    "card_strokes_affected": {_NO: Finding.WITHOUT_EFFECT},
    "handicap_shown": {"right": Finding.CARD_HOLDS},
    "told_of_penalty_in_time": {_YES: Finding.TOLD_IN_TIME},
    "opponent_knew_penalty": {_YES: Finding.OPPONENT_KNEW},
    "how_involved": {"neither": Finding.NOT_THE_PLAYERS_ACT},
    # Clubs, balls, equipment and caddies (Rules 4 and 10.3)
    "club_source": dict.fromkeys(("elsewhere", "built_from_parts"), Finding.CLUB_CONFORMS),
    "after_damage": {"kept": Finding.CLUB_CONFORMS},
    "driver_made_before_1999": {_YES: Finding.CLUB_CONFORMS},
    **{one: {_NO: Finding.CLUB_CONFORMS} for one in ("local_rule_g_1", "local_rule_g_2", "local_rule_g_10")},
    **{one: {_NO: Finding.BALL_MAY_BE_PLAYED} for one in ("local_rule_g_3", "local_rule_g_4")},
    "more_than_fourteen": {_NO: Finding.CLUBS_MAY_BE_SHARED},
    "equipment_use": _each(
        Finding.USE_ALLOWED, ("compass", "weather_report", "grass_tossed", "plain_glove_or_towel", "stretching")
    ),
    **{one: {_NO: Finding.USE_ALLOWED} for one in ("local_rule_g_5", "local_rule_g_8", "local_rule_g_11")},
    **{one: {_YES: Finding.USE_ALLOWED} for one in ("approved_book_only", "medical_use_accepted", "tape_not_excessive", "device_accepted")},
    **{one: {_NO: Finding.NO_LOCAL_RULE_AGAINST} for one in ("local_rule_g_6", "local_rule_g_7", "local_rule_h_1_1", "local_rule_h_1_2", "local_rule_h_1_3")},
    "ride_allowed": {_YES: Finding.RIDE_ALLOWED},
    "shoes_barred": {_NO: Finding.USE_ALLOWED},
    "breach_when": {"between_holes": Finding.NO_BREACH},
    "second_helper": {
        **_each(Finding.NO_SECOND_CADDIE, ("carries_other_things", "courtesy")),
        **_each(Finding.CADDIE_ALLOWED, ("replaced_caddie", "player_not_playing")),
    },
    "caddie_deed": {"routine_help": Finding.CADDIE_MAY},
    # Teeing area, stance and advice (Rules 6.2 and 10.2)
    "about_to_play_from_tee": {_NO: Finding.MOVABLE_OBSTRUCTION},
    "tee_marker": {"not_improved": Finding.NOT_IMPROVED, "improved_restored": Finding.PUT_RIGHT_IN_TIME},
    "tee_improvement": {"ground_or_grass": Finding.TEEING_AREA_MAY_BE_IMPROVED},
    "teed_on": {"ground_or_tee": Finding.TEED_AS_ALLOWED},
    "advice_to_or_from": _each(Finding.ADVICE_ALLOWED, ("own_side", "advice_giver", "anyone_else")),
    "advice_giver_allowed": {_YES: Finding.ADVICE_ALLOWED},
    "team_members_in_same_group": {_YES: Finding.ADVICE_ALLOWED},
    "during_round": {_NO: Finding.NOT_DURING_ROUND},
    "was_advice": {_NO: Finding.NOT_ADVICE},
    "advice_deed": {"only_looked": Finding.ONLY_LOOKED},
    "ongoing_advice": _each(Finding.NOT_THE_PLAYERS_ACT, ("once", "went_on_and_objected")),
    "asked_or_allowed": {_NO: Finding.NOT_THE_PLAYERS_ACT},
    # Conditions altered, things removed (Rules 8, 12, 13 and 15)
    "conditions_improved": {_NO: Finding.NOT_IMPROVED},
    "improved_by_search": {_NO: Finding.NOT_IMPROVED},
    "removal_improved": {_NO: Finding.NOT_IMPROVED},
    "removal_improved_conditions": {_NO: Finding.NOT_IMPROVED},
    "water_line_improved": {_NO: Finding.NOT_IMPROVED},
    "sand_improved": {_NO: Finding.NOT_IMPROVED},
    "original_object_back": {_YES: Finding.PUT_RIGHT_IN_TIME},
    "placed_object_removed": {_YES: Finding.PUT_RIGHT_IN_TIME},
    "deliberate_act": {
        "none_of_these": Finding.NO_BREACH,
        "allowed_by_rule_8": Finding.PUTTING_RIGHT_ALLOWED,
    },
    "purpose_of_act": {"care_for_course": Finding.CARE_FOR_COURSE},
    "ball_when_removed": {"to_be_dropped_or_placed": Finding.REMOVAL_ALLOWED},
    "meant_to_affect_ball": {_NO: Finding.NOT_MEANT_TO_AFFECT},
    "removed_on_green": {_YES: Finding.REMOVAL_ALLOWED},
    "removal_moved_ball": {_NO: Finding.REMOVAL_ALLOWED},
    "obstruction_removal_moved_ball": {_NO: Finding.REMOVAL_ALLOWED},
    # Balls moved, lifted, put down (Rules 6.3, 7, 9, 14 and 15.3)
    "movement_certain": {_NO: Finding.COUNTS_AS_NOT_MOVED},
    "came_back_to_its_spot": {_YES: Finding.NOT_MOVED},
    "how_identified": {"seen_to_come_to_rest": Finding.BALL_IDENTIFIED},
    "preferred_lie": {"put_back": Finding.IN_PLAY},
    "drops_before": {"one_outside": Finding.SECOND_DROP_REQUIRED},
    "measured_with": {"longest_club": Finding.MEASURED_RIGHT},
    "ball_in_relief_area": {_YES: Finding.IN_RELIEF_AREA},
    "helping_ball": {"left_without_agreement": Finding.NO_AGREEMENT},
    "why_substituted": {"between_holes": Finding.BALL_CHANGE_ALLOWED},
    "ball_struck": _each(Finding.NO_WRONG_BALL, ("in_play", "provisional_or_second")),
    # Forms of play (Rules 22 to 24)
    "arrived": {"between_holes": Finding.PARTNER_MAY_JOIN},
    "act_for_partner": {"allowed": Finding.PARTNER_MAY},
    "play_helped_partner": {_NO: Finding.DID_NOT_HELP_PARTNER},
    "stood_to_learn_line": {_NO: Finding.NO_BREACH},
    # Players with disabilities (Rule 25)
    **dict.fromkeys(("blind_help", "device_act", "aide_act", "amputee_act"), _each(Finding.ALLOWED_FOR_PLAYER, _WHOEVER_HELPS)),
    "behind_helped_during_stroke": {_NO: Finding.ALLOWED_FOR_PLAYER},
    "sand_tested_or_improved": {_NO: Finding.ALLOWED_FOR_PLAYER},
    "handled_clubs_as_courtesy": {_YES: Finding.ALLOWED_FOR_PLAYER},
    "cannot_swing_without_anchoring": {_YES: Finding.ALLOWED_FOR_PLAYER},
    "supervisor_gave_advice": {_NO: Finding.ALLOWED_FOR_PLAYER},
}  # fmt: skip
"""What an answer finds where nothing is penalised and no note says it; of the answers that led there, the last that tells."""

FREE_STROKE_BY_FACT: Mapping[str, Mapping[str, Finding]] = {
    "contact": {"fair": Finding.NO_BREACH},
    "held_against_body": _each(Finding.NO_BREACH, ("nothing", "merely_touched", "hand_or_forearm")),
    "foot_on_line": {_NO: Finding.NO_BREACH},
    "stance_to_spare_other_line": {_YES: Finding.NO_BREACH},
    "in_place_at_stance": {_NO: Finding.NO_BREACH},
    "stood_there_deliberately": {_NO: Finding.NO_BREACH},
    "backed_away": {_YES: Finding.NO_BREACH},
    "meant_to_help_aim": {_NO: Finding.NO_BREACH},
    "still_there_in_stroke": {_NO: Finding.NO_BREACH},
    "touch_improved_green": {_NO: Finding.NO_BREACH},
    "help_in_stroke": _each(Finding.NO_BREACH, ("own_protection", "chance_bystander", "ended_before_stroke")),
}
"""What an answer finds where it was asked whether a stroke was made as the Rules allow, and it was (Rules 10.1 and 10.2)."""

_WHAT_MAY_BE_DONE = (
    *(f"8.1b({number})" for number in range(1, 12)),
    "8.1d(1)",
    "10.3b(2)",
    "11.3 Exception",
    "12.2b(1)",
    "12.2b(2)",
    "12.2b(3)",
    "13.1c(2)",
    "J-2",
)
FREE_BY_PROVISION: Mapping[str, Finding] = {
    **dict.fromkeys(_WHAT_MAY_BE_DONE, Finding.ALLOWED),
    **dict.fromkeys(("7.1a", "7.1b", "8.1d(2)", "13.1c(1)"), Finding.NO_BREACH),
    **dict.fromkeys(("2.1", "A-2", "A-3"), Finding.IN_BOUNDS),
    **dict.fromkeys(("13.1f", "13.1f Exception", "D-3"), Finding.NO_FREE_RELIEF),
    "9.3": Finding.BY_NATURAL_FORCES,
    "9.4b Exception 1": Finding.LIFTING_ALLOWED,
}
"""What the provision that decides finds where nothing is penalised, and neither a note nor an answer says it."""
