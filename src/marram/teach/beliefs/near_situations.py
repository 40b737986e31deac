"""Beliefs that would be right in a situation near by: the same, but for one fact."""

from marram.teach.beliefs.belief import Belief

_IN_THE_WAY = {
    "interference": "stance_or_swing",
    "local_rule_f_6": "no",
    "stroke_unreasonable_anyway": "no",
    "only_by_unreasonable_choice": "no",
    "local_rule_e_1_3": "no",
    "local_rule_e_1": "no",
}
"""Answers by which something in the way gives free relief."""

OF_NEAR_SITUATIONS: tuple[Belief, ...] = (
    Belief(
        "edge_of_bounds",
        "18.2a(2)",
        ("ball_near_boundary",),
        {"all_of_ball_out_of_bounds": "no"},
        {
            "all_of_ball_out_of_bounds": "yes",
            "provisional_state": "not_played",
            "local_rule_e_5": "no",
            "last_stroke_from_penalty_area": "no",
        },
    ),
    Belief(
        "search_five",
        "18.2a(1)",
        ("ball_found_in_time", "teaching_search_time"),
        {"late_ball_played": "no"},
        {"search_minutes": 3, "identified_in_reasonable_time": "yes"},
    ),
    Belief(
        "must_be_in_water",
        "17.1c",
        ("ball_in_penalty_area",),
        {"certain_in_penalty_area": "no"},
        {
            "certain_in_penalty_area": "yes",
            "last_stroke_from_penalty_area": "no",
            "local_rule_e_1": "no",
            "local_rule_e_1_3": "no",
            "local_rule_b_2": "no",
            "penalty_area_colour": "red",
        },
    ),
    Belief(
        "green_touch",
        "13.1d(1)",
        ("ball_moved_by_player",),
        {"area_of_ball": "putting_green", "movement_accidental": "yes"},
        {"area_of_ball": "general_area", "cause_known": "yes", "moved_while": "something_else"},
    ),
    Belief(
        "tee_ball_falls", "6.2b(5)", ("fell_off_tee",), {"tee_ball_struck": "no"}, {"tee_ball_struck": "yes"}
    ),
    Belief(
        "swing_begun",
        "Definitions: stroke",
        ("swing_in_doubt",),
        {"what_swing": "stopped_or_steered_clear"},
        {"what_swing": "struck_at"},
    ),
    Belief(
        "blown_after_replacing",
        "9.3 Exception 1",
        ("ball_moved_by_natural_forces",),
        {"area_of_ball": "putting_green", "lifted_and_replaced_on_green": "yes"},
        {"lifted_and_replaced_on_green": "no", "new_place": "same_area"},
    ),
    Belief(
        "embedded_everywhere",
        "16.3a(1)",
        ("embedded_ball", "teaching_embedded"),
        {"area_of_ball": "bunker"},
        {
            "area_of_ball": "general_area",
            "in_own_pitch_mark": "yes",
            "below_ground_level": "yes",
            "in_sand_not_fairway": "no",
            "stroke_unreasonable_anyway": "no",
            "local_rule_f_2_1": "no",
            "local_rule_f_2_2": "no",
            "spot_behind_in_general_area": "yes",
        },
    ),
    Belief(
        "path_in_penalty_area",
        "16.1a(2)",
        ("abnormal_course_condition",),
        {"area_of_ball": "penalty_area"},
        {
            "area_of_ball": "general_area",
            "in_the_way": "immovable_obstruction",
            **_IN_THE_WAY,
        },
    ),
    Belief(
        "boundary_stake",
        "Definitions: boundary object",
        ("stake_in_the_way",),
        {"course_stake": "shows_line_or_fence", "local_rule_a_5": "no"},
        {
            "local_rule_a_5": "yes",
            "area_of_ball": "general_area",
            **_IN_THE_WAY,
        },
    ),
    Belief(
        "out_of_turn",
        "6.4b",
        ("played_out_of_turn", "teaching_out_of_turn"),
        {"agreed_for_advantage": "no"},
        {"agreed_for_advantage": "yes"},
    ),
    Belief(
        "wait_at_the_hole", "13.3a", ("ball_overhung_hole",), {"overhang": "fell_in"}, {"seconds_at_hole": 10}
    ),
    Belief(
        "leaning_ball",
        "13.2c",
        ("ball_against_flagstick", "teaching_against_flagstick"),
        {"part_in_hole": "yes"},
        {"part_in_hole": "no", "moved_with_flagstick": "no"},
    ),
    Belief(
        "distance_is_advice",
        "Definitions: advice",
        ("advice_exchanged",),
        {"was_advice": "no"},
        {
            "was_advice": "yes",
            "advice_deed": "asked",
            "during_round": "yes",
            "advice_to_or_from": "player_on_course",
        },
    ),
    Belief(
        "clean_what_is_lifted",
        "16.4",
        ("lifted_to_see",),
        {"marked_and_not_cleaned": "no"},
        {"marked_and_not_cleaned": "yes"},
    ),
    Belief(
        "choose_provisional",
        "18.3c(3)",
        ("provisional_ball",),
        {"original_ball": "found_on_course"},
        {"original_ball": "lost"},
    ),
    Belief(
        "another_is_provisional",
        "18.3b",
        ("another_ball_played",),
        {"second_ball_reason": "might_be_lost_or_out", "announced": "not_clearly"},
        {"announced": "before"},
    ),
    Belief(
        "sand_everywhere",
        "12.2b(3)",
        ("sand_touched",),
        {"ball_and_bunker": "lies_elsewhere", "sand_improved": "no", "sand_touch": "practice_swing"},
        {"ball_and_bunker": "lies_in_it"},
    ),
)
"""Our own list (common practice)."""
