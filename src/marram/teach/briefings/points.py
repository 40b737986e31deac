"""What makes the point of a page: the answers that a situation for beginners, or of a Local Rule, has to have where they are asked."""

from collections.abc import Mapping
from typing import Any

from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named

Point = Mapping[str, str]
"""Answers by fact, as tokens."""
_FREE = {
    "area_of_ball": "general_area",
    "stroke_unreasonable_anyway": "no",
    "only_by_unreasonable_choice": "no",
}
_LOST = {"whereabouts": "not_known", "provisional_state": "not_played"}
FOR_BEGINNERS: Mapping[str, Point] = {
    "fell_off_tee": {},
    "provisional_ball": {"original_ball": "found_on_course", "stroke_at_provisional": "none"},
    "ball_not_found": _LOST,
    "ball_near_boundary": {},
    "identifying_ball": {},
    "ball_in_penalty_area": {
        "found_in_penalty_area": "no",
        "certain_in_penalty_area": "yes",
        "penalty_area_colour": "red",
    },
    "unplayable_ball": {"spot_of_ball_known": "yes", "area_of_ball": "general_area"},
    "abnormal_course_condition": {
        **_FREE,
        "in_the_way": "immovable_obstruction",
        "interference": "stance_or_swing",
    },
    "embedded_ball": {
        **_FREE,
        "in_own_pitch_mark": "yes",
        "below_ground_level": "yes",
        "in_sand_not_fairway": "no",
        "spot_behind_in_general_area": "yes",
    },
    "natural_thing_removed": {"removed_thing": "loose_impediment", "ball_when_removed": "at_rest"},
    "artificial_thing_removed": {"artificial_thing": "movable_obstruction", "motion_during_removal": "no"},
    "sand_touched": {"ball_and_bunker": "lies_in_it"},
    "ball_dropped": {},
    "ball_moved_by_player": {},
    "ball_lifted": {"who_lifted": "player_or_authorised", "area_of_ball": "putting_green"},
    "green_repaired": {
        "mark_on_green": "person_or_outside_influence",
        "repair_within_limits": "yes",
        "repair_delayed_play": "no",
    },
    "ball_hit_flagstick": {},
    "wrong_ball_played": {"ball_struck": "wrong", "wrong_ball_moving_in_water": "no"},
    "advice_exchanged": {
        "advice_deed": "asked",
        "was_advice": "yes",
        "during_round": "yes",
        "advice_to_or_from": "player_on_course",
    },
    "whose_turn": {},
    "wrong_green": {"wrong_green_interference": "ball_on_it", "played_despite_wrong_green": "no"},
    "scorecard_fault": {},
    "ball_overhung_hole": {},
    "conditions_worsened": {"worsened_after_rest": "yes"},
}
"""What a beginner meets, from the tee to the card, with the point to be made of it (common practice of rules evenings, our own
choice and order)."""
SHOWN_IN: Mapping[str, tuple[str, Mapping[str, str]]] = {
    "A-1": ("ball_near_boundary", {"all_of_ball_out_of_bounds": "no"}),
    "B-1": ("ball_in_penalty_area", {"found_in_penalty_area": "yes"}),
    "C-1": ("ball_in_two_areas", {"touches_penalty_area": "no", "touches_bunker": "yes"}),
    "C-2": (
        "ball_in_two_areas",
        {"touches_penalty_area": "no", "touches_bunker": "no", "touches_green": "no"},
    ),
    "C-3": ("natural_thing_removed", {"removed_thing": "sand_or_loose_soil", "removed_on_green": "no"}),
    "D-1": (
        "ball_in_two_areas",
        {"touches_penalty_area": "no", "touches_bunker": "no", "touches_green": "yes"},
    ),
    "D-2": ("wrong_green", {"wrong_green_interference": "ball_on_it", "played_despite_wrong_green": "no"}),
    "D-6": ("wrong_green", {"wrong_green_interference": "ball_on_it", "played_despite_wrong_green": "no"}),
    "E-1.3": ("ball_in_penalty_area", {"found_in_penalty_area": "yes", "dropping_zone_provided": "yes"}),
    "E-8": (
        "no_play_zone",
        {
            "no_play_zone_interference": "ball_inside",
            "played_despite_zone": "no",
            "area_of_ball": "general_area",
        },
    ),
    "E-10": (
        "young_tree",
        {
            "no_play_zone_interference": "ball_inside",
            "played_despite_zone": "no",
            "area_of_ball": "general_area",
        },
    ),
    "F-1": (
        "abnormal_course_condition",
        {"in_the_way": "ground_under_repair", "interference": "ball", "area_of_ball": "general_area"},
    ),
    "H-2": ("advice_in_team", {"advice_giver_allowed": "yes"}),
    "H-5": ("advice_in_team", {"team_members_in_same_group": "yes"}),
    "J-1": ("played_after_suspension", {}),
}
"""Local Rules that no provision of their own tells, or that say what or where something is: the incident they are met in,
with what makes the point (own choice)."""


def answers(point: Point) -> dict[Fact[Any], Any]:
    """Return the answers of a point as the sampling takes them."""
    return {fact_named(name): fact_named(name).parse(token) for name, token in point.items()}
