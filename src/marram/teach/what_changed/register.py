"""The changes that can be told: each with the places in the book where it was decided, and its Rule.

The sentences of a change stand in the catalogue (``what_changed.KEY.title``, ``.before``, ``.now``). A test holds that
every turning point that moves an outcome belongs to one change, and that none is named here that moves nothing.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Known:
    """A change that has its words.

    Attributes:
        key: its name, as in the catalogue.
        rule: the provision as it is numbered on the later day.
        places: ``module:function`` below ``marram.rules.book``, each a turning point of it.
        incident: the incident to take the example from, where the shortest would not be typical.
        facts: answers that the example should hold, for the same reason.
        common: how often players meet it, from 1 (in most rounds) to 4 (hardly ever): common practice, our own judgement.
    """

    key: str
    rule: str
    places: tuple[str, ...]
    common: int
    incident: str = ""
    facts: tuple[tuple[str, str], ...] = ()


SINCE_2023: tuple[Known, ...] = (
    Known(
        "back_on_the_line", "14.3b(3)",
        (
            "relief_options:back_on_the_line",
            "back_on_the_line_drop:came_to_rest_in_relief_area",
            "local_rules.area_e_options:may_be_played_outside_relief_area",
            "local_rules.area_e_options:played_outside_relief_area_by_local_rule",
        ), 1, facts=(("line_relief", "unplayable"), ("deflection_of_drop", "nothing"), ("rest_nearer_than_chosen_point", "yes"), ("rest_nearer_than_start_of_line", "no"))
    ),
    Known(
        "natural_forces", "9.3 Exception 2",
        (
            "rule_09_natural_forces:moved_by_natural_forces",
            "rule_09_wrong_spot:not_replaced_after_natural_forces",
            "rule_17_penalty_areas:relief_ball_moved_by_nature",
        ), 2, incident="ball_moved_by_natural_forces", facts=(("area_of_ball", "general_area"),)
    ),
    Known(
        "substituted_ball", "6.3b(3)",
        (
            "rule_06_substituted_ball:stroke_at_incorrectly_substituted_ball",
            "rule_04_ball_and_equipment:damaged_ball_changed_wrongly",
        ), 2, incident="another_ball_put_in_play"
    ),
    Known("damaged_club", "4.1a(2)", ("rule_04_clubs:replacing_allowed",), 2, facts=(("club_source", "elsewhere"),)),
    Known("abused_club", "4.1a(2)", ("rule_04_clubs:club_repaired",), 4),
    Known("damaged_club_local_rule", "G-9", ("local_rules.area_g_damaged:damage_lets_club_be_replaced",), 3),
    Known("club_built_from_parts", "G-9", ("local_rules.area_g_damaged:built_from_parts_as_allowed",), 4),
    Known(
        "handicap_on_the_card", "3.3b(4)",
        ("rule_03_scorecard:card_handicap_wrong", "rule_20_rulings:found_after_result"), 1, incident="card_handicap_wrong"
    ),
    Known("putt_hits_player_or_insect", "11.1b(2)", ("rule_11_accidental_deflection:putt_hit_player_club_or_insect",), 3),
    Known("putt_not_replayed", "11.1b(2)", ("rule_11_accidental_deflection:stroke_from_green_not_replayed",), 4, facts=(("serious_breach", "no"),)),
    Known(
        "object_set_down", "10.2b(1)–(3)",
        ("rule_10_other_help:object_set_down", "rule_10_other_help:set_down_for_stance", "rule_10_other_help:line_shown_off_green"), 2, incident="line_of_play_shown", facts=(("area_of_ball", "general_area"),)
    ),
    Known("self_standing_putter", "Clarification 10.2b/1", ("rule_10_other_help:self_standing_putter",), 3),
    Known("caddie_behind_ball", "10.2b(4)", ("rule_10_other_help:caddie_behind_ball",), 3, facts=(("stood_there_for_aim", "no"), ("backed_away", "no"), ("left_before_stroke", "yes"))),
    Known("distractions_kept_off", "10.2b(5)", ("rule_10_other_help:helped_in_stroke",), 4),
    Known("shared_caddie", "10.3a(2)", ("rule_10_caddies:shared_caddie_in_breach",), 4),
    Known("embedded_beside_the_general_area", "16.3b", ("rule_16_embedded:free_relief", "rule_16_embedded:embedded_relief"), 3, incident="embedded_ball",facts=(("spot_behind_in_general_area", "no"), ("general_area_within_club_length", "no"))),
    Known(
        "wrong_place_corrected", "14.7b(2)",
        ("rule_14_wrong_place:first_ball_given_up", "rule_14_wrong_place:corrected_wrong_place"), 3,
    ),
    Known("totals_in_other_forms", "21.1c, 21.3c", ("rule_21_totals:counts_against_total",), 2),
    Known("wrong_order_in_foursomes", "22.3", ("rule_21_other_forms:wrong_order_not_corrected",), 4),
    Known("partner_stood_behind", "22.6, 23.8", ("rule_23_four_ball:partner_stood_behind",), 3, facts=(("sides", "foursomes"),)),
    Known("four_ball_hole_completed", "23.3", ("rule_23_four_ball:four_ball_hole_completed",), 4),
    Known(
        "players_with_disabilities", "25",
        (
            "rule_25_disability:modifications_apply",
            "rule_25_disability:dropped_with_disability",
            "rule_25_disability:replaced_with_equipment",
        ), 2, incident="blind_player"
    ),
    Known("placed_for_wheeled_device", "M-1", ("local_rules.area_m:placed_for_wheeled_device",), 4),
    Known("fence_as_boundary", "A-3", ("local_rules.area_a_edges:inside_boundary_fence",), 3),
    Known("beyond_public_road", "A-4", ("local_rules.area_a_edges:beyond_public_road",), 3),
    Known("boundary_for_the_tee_stroke", "A-4.2", ("local_rules.area_a:inner_boundary_holds",), 3),
    Known("fringe_of_wrong_green", "D-4.2", ("local_rules.area_d:fringe_belongs_to_green",), 3),
    Known("fairway_mats", "E-12", ("local_rules.area_e_mats:fairway_mat",), 2, facts=(("mat_required_here", "yes"),)),
    Known("power_line_not_replayed", "E-11", ("local_rules.area_e_places:not_replayed",), 4),
    Known("bad_times_scale", "K-3", ("local_rules.area_k_timing:scale_modified_by",), 4),
    Known("group_over_time", "K-1, K-4", ("local_rules.area_k:group_over_time",), 4),
)  # fmt: skip
"""From the Rules of 2019 to those of 2023, with what was clarified since."""

SINCE_2019: tuple[Known, ...] = (
    Known("search_time", "18.2a", ("former_rules.ball:ball_found_after_search",), 1, facts=(("search_minutes", "4"), ("identified_in_reasonable_time", "yes"), ("late_ball_played", "no"), ("provisional_state", "found"))),
    Known("penalty_areas", "17.1d", ("former_rules.relief:relief_from_penalty_area",), 1, facts=(("found_in_penalty_area", "yes"), ("penalty_area_colour", "red"), ("last_stroke_from_penalty_area", "no"))),
    Known("wrong_green", "13.1f", ("former_rules.green:interference_by_wrong_green",), 2, facts=(("wrong_green_interference", "stance_only"), ("local_rule_d_5", "no"), ("played_despite_wrong_green", "no"))),
    Known("flagstick", "13.2", ("former_rules.green:ball_hit_the_flagstick",), 1),
    Known("against_flagstick", "13.2c", ("former_rules.green:ball_rests_against_flagstick",), 3),
    Known("embedded_ball", "16.3", ("former_rules.relief:ball_was_embedded",), 1, facts=(("area_of_ball", "general_area"), ("in_own_pitch_mark", "yes"), ("below_ground_level", "yes"), ("in_sand_not_fairway", "no"))),
    Known("lost_or_out", "E-5", ("former_rules.relief:ball_lost_or_out",), 1, facts=(("provisional_state", "not_played"), ("local_rule_e_5", "yes"))),
    Known("unplayable", "19.3", ("former_rules.relief:ball_unplayable",), 1, facts=(("area_of_ball", "bunker"),)),
    Known("club_length", "Definitions: club-length", ("former_rules.relief:club_used_to_measure",), 1),
    Known("dropping", "14.3b", ("former_rules.relief:ball_was_dropped",), 1),
    Known("another_ball_for_relief", "14.3a", ("former_rules.relief:another_ball_used_for_relief",), 2),
    Known("line_on_green_shown", "10.2b(2)", ("former_rules.green:line_on_green_shown",), 3, facts=(("shown_by_own_side", "yes"),)),
    Known("line_on_green_touched", "13.1c", ("former_rules.green:line_on_green_touched",), 2),
    Known("damage_on_green", "13.1c(2)", ("former_rules.green:mark_repaired_on_green",), 1, facts=(("repaired_mark", "shoe_damage"), ("repair_delayed_play", "no"))),
    Known("caddie_lined_up", "10.2b(4)", ("former_rules.green:caddie_lined_player_up",), 3, facts=(("left_before_stroke", "yes"), ("backed_away", "no"))),
    Known("club_laid_down", "10.2b(3)", ("former_rules.green:club_laid_down_for_aim",), 2, facts=(("area_of_ball", "general_area"), ("club_lay_in_stroke", "no"), ("stance_with_object", "yes"))),
    Known("lifted_to_identify", "7.3", ("former_rules.ball:own_ball_lifted_to_be_identified",), 2, facts=(("area_of_ball", "general_area"), ("announced_and_observed", "no"), ("spot_marking", "right"))),
    Known("ball_hits_own_side", "11.1a", ("former_rules.ball:ball_hit_own_side",), 2),
    Known("caddie_lifts_on_green", "14.1b", ("former_rules.ball:caddie_lifted_on_green",), 4, facts=(("caddie_authorised", "no"),)),
    Known("cause_of_movement", "9.2b", ("former_rules.ball:who_moved_ball_in_general_area",), 3),
    Known("moved_on_green", "13.1d(1)", ("former_rules.ball:own_ball_moved_on_green",), 2),
    Known("blown_after_replacing", "13.1d(2)", ("former_rules.ball:ball_moved_by_nature_on_green",), 2),
    Known("moved_in_search", "7.4", ("former_rules.ball:own_ball_moved_in_search",), 2),
    Known("loose_impediments_in_bunkers", "15.1", ("former_rules.play:thing_removed_in_own_bunker",), 1, facts=(("removal_moved_ball", "no"),)),
    Known("sand_touched", "12.2b", ("former_rules.play:sand_touched_in_own_bunker",), 1),
    Known("ground_touched_in_penalty_area", "17.1b", ("former_rules.play:done_in_water_hazard",), 1, facts=(("penalty_area_action", "touched_ground_or_water"), ("touch_allowed_before_2019", "no"), ("improved_in_penalty_area", "no"))),
    Known("out_of_turn", "6.4b", ("former_rules.play:played_before_turn",), 2),
    Known("not_holed_out", "3.3c", ("former_rules.play:picked_up_before_holing_out",), 4),
    Known("double_hit", "10.1a", ("former_rules.play:ball_hit_twice",), 2),
)  # fmt: skip
"""From the Rules in force until 2018 to those of 2019."""

BY_PLACE: dict[str, Known] = {
    place: one for every in (SINCE_2023, SINCE_2019) for one in every for place in one.places
}
"""The change that each turning point belongs to."""
BY_KEY: dict[str, Known] = {one.key: one for every in (SINCE_2023, SINCE_2019) for one in every}
"""Each change by its name."""
