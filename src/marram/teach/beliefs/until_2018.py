"""Beliefs that were right until 2018, each with the incident of the former Rules that shows it."""

from marram.teach.beliefs.belief import Belief

RIGHT_UNTIL_2018: tuple[Belief, ...] = (
    Belief(
        "green_touch_former",
        "13.1d(1)",
        ("teaching_ball_moved_on_green",),
        {},
        {},
        ("teaching_ball_moved_on_green", {"moved_in_allowed_act": "no"}),
    ),
    Belief("double_hit", "10.1a", ("teaching_double_hit",), {}, {}, ("teaching_double_hit", {})),
    Belief(
        "hit_myself",
        "11.1a",
        ("deflected_off_green", "teaching_ball_hit_own_side"),
        {"rests_on": "on_course"},
        {},
        ("teaching_ball_hit_own_side", {"rests_on": "on_course"}),
    ),
    Belief(
        "putt_at_flagstick",
        "13.2a(2)",
        ("ball_hit_flagstick", "teaching_flagstick"),
        {"flagstick_state": "left_in_hole", "flagstick_leant_on_purpose": "no"},
        {},
        (
            "teaching_flagstick",
            {
                "flagstick_state": "left_in_hole",
                "flagstick_leant_on_purpose": "no",
                "played_from_green": "yes",
            },
        ),
    ),
    Belief(
        "leaves_in_bunker",
        "12.2a",
        ("thing_removed_from_bunker", "teaching_thing_removed_from_bunker"),
        {"removal_moved_ball": "no", "removed_reasonably": "yes"},
        {},
        (
            "teaching_thing_removed_from_bunker",
            {
                "removal_moved_ball": "no",
                "removed_reasonably": "yes",
                "thing_removed_in_bunker": "loose_impediment",
            },
        ),
    ),
    Belief(
        "ground_club_in_water",
        "17.1b",
        ("done_in_penalty_area", "teaching_penalty_area_touched"),
        {"penalty_area_action": "touched_ground_or_water", "improved_in_penalty_area": "no"},
        {},
        (
            "teaching_penalty_area_touched",
            {"penalty_area_action": "touched_ground_or_water", "touch_allowed_before_2019": "no"},
        ),
    ),
    Belief(
        "leaves_in_water",
        "17.1b",
        ("done_in_penalty_area", "teaching_penalty_area_touched"),
        {"penalty_area_action": "removed_loose_impediment", "removal_moved_ball": "no"},
        {},
        (
            "teaching_penalty_area_touched",
            {"penalty_area_action": "removed_loose_impediment", "removal_moved_ball": "no"},
        ),
    ),
    Belief(
        "spike_marks",
        "13.1c(2)",
        ("green_repaired", "teaching_green_repaired"),
        {"repair_within_limits": "yes", "repair_delayed_play": "no"},
        {},
        (
            "teaching_green_repaired",
            {"repaired_mark": "shoe_damage", "repair_within_limits": "yes", "repair_might_help": "yes"},
        ),
    ),
)
"""Our own list (common practice)."""
