"""Acts on what lies around the ball: things removed, ground touched or changed, relief looked for (Rules 8, 12, 13, 15 to 19)."""

from marram.services.asked.asked_act import (
    BUNKER,
    EVERYWHERE,
    GENERAL,
    GREEN,
    OFF_BUNKER,
    OFF_GREEN,
    OFF_TEE,
    TEE,
    WATER,
    AskedAct,
)

_STILL = {"ball_when_removed": "at_rest", "removed_thing": "loose_impediment"}
_IN_SAND = {"ball_and_bunker": "lies_in_it"}
_USUAL = {"last_stroke_from_penalty_area": "no"}
_REASONABLE = {"stroke_unreasonable_anyway": "no", "only_by_unreasonable_choice": "no"}
_CLEARING = {"conditions_improved": "yes", "original_object_back": "no", "preparing_how": "none_of_these"}
_SAND = ("sand_touch",)
_IMPROVES = ("conditions_improved", "original_object_back", "green_improved", "removal_improved_conditions")

THINGS: tuple[AskedAct, ...] = (
    AskedAct("loose", "natural_thing_removed", {**_STILL, "removal_moved_ball": "no"}, OFF_BUNKER),
    AskedAct("loose", "thing_removed_from_bunker", {"removed_reasonably": "yes", "removal_moved_ball": "no", "thing_removed_in_bunker": "loose_impediment"}, BUNKER),
    AskedAct("loose", "done_in_penalty_area", {"penalty_area_action": "removed_loose_impediment", "removal_moved_ball": "no"}, WATER),
    AskedAct("loose_moves_ball", "natural_thing_removed", {**_STILL, "removal_moved_ball": "yes", "while_searching": "no", "applying_other_rule": "no"}, OFF_BUNKER - TEE, named=("removal_moved_ball",), rather=("loose",)),
    AskedAct("loose_moves_ball", "thing_removed_from_bunker", {"removed_reasonably": "yes", "removal_moved_ball": "yes", "thing_removed_in_bunker": "loose_impediment"}, BUNKER, named=("removal_moved_ball",), rather=("loose",)),
    AskedAct("loose_moves_ball", "done_in_penalty_area", {"penalty_area_action": "removed_loose_impediment", "removal_moved_ball": "yes"}, WATER, named=("removal_moved_ball",), rather=("loose",)),
    AskedAct("obstruction", "artificial_thing_removed", {"artificial_thing": "movable_obstruction", "motion_during_removal": "no"}),
    AskedAct("boundary_stake", "fixed_object_moved", {**_CLEARING, "fixed_object": "immovable_or_boundary"}, ways=("original_object_back",), named=_IMPROVES),
    AskedAct("tee_marker", "tee_marker_moved", {"about_to_play_from_tee": "yes", "tee_marker": "improved_not_restored"}, TEE, ("tee_marker",), ("about_to_play_from_tee",)),
    AskedAct("bend", "fixed_object_moved", {**_CLEARING, "fixed_object": "growing_or_attached", "altered_place": "elsewhere"}, OFF_GREEN, named=_IMPROVES, rather=("stance_in_bush",)),
    AskedAct("stance_in_bush", "fixed_object_moved", {"conditions_improved": "yes", "fixed_object": "growing_or_attached", "original_object_back": "no", "preparing_how": "taking_stance", "least_intrusive_course": "yes"}, OFF_GREEN, named=_IMPROVES),
)  # fmt: skip
"""What lies, stands or grows around the ball."""

GROUND: tuple[AskedAct, ...] = (
    AskedAct("ground_club", "sand_touched", {**_IN_SAND, "sand_touch": "club_by_ball"}, BUNKER, _SAND),
    AskedAct("ground_club", "done_in_penalty_area", {"penalty_area_action": "touched_ground_or_water", "improved_in_penalty_area": "no"}, WATER),
    AskedAct("ground_club", "ground_altered", {"altered_place": "elsewhere", "conditions_improved": "yes", "preparing_how": "grounding_club", "grounded_lightly": "yes"}, GENERAL, named=_IMPROVES),
    AskedAct("press_behind", "ground_altered", {**_CLEARING, "altered_place": "elsewhere", "alteration": "surface"}, GENERAL | WATER, named=_IMPROVES, rather=("ground_club",)),
    AskedAct("repair_off_green", "ground_altered", {**_CLEARING, "altered_place": "elsewhere", "alteration": "surface"}, GENERAL | GREEN, named=_IMPROVES, rather=("repair", "ground_club")),
    AskedAct("dew", "ground_altered", {**_CLEARING, "altered_place": "elsewhere", "alteration": "dew_frost_water"}, GENERAL, named=_IMPROVES),
    AskedAct("dew", "teeing_area_improved", {"tee_improvement": "ground_or_grass"}, TEE),
    AskedAct("press_behind", "teeing_area_improved", {"tee_improvement": "ground_or_grass"}, TEE),
    AskedAct("tee_ground", "teeing_area_improved", {"tee_improvement": "ground_or_grass"}, TEE),
    AskedAct("practice_swing", "sand_touched", {**_IN_SAND, "sand_touch": "practice_swing"}, BUNKER, _SAND),
    AskedAct("backswing_sand", "sand_touched", {**_IN_SAND, "sand_touch": "backswing"}, BUNKER, _SAND),
    AskedAct("test_sand", "sand_touched", {**_IN_SAND, "sand_touch": "testing"}, BUNKER, _SAND),
    AskedAct("dig_in", "sand_touched", {**_IN_SAND, "sand_touch": "taking_stance"}, BUNKER),
    AskedAct("lean_in_bunker", "sand_touched", {**_IN_SAND, "sand_touch": "any_other_way", "sand_improved": "no"}, BUNKER),
    AskedAct("smooth_sand", "sand_touched", {**_IN_SAND, "sand_touch": "smoothing"}, BUNKER),
    AskedAct("rake_elsewhere", "sand_touched", {"ball_and_bunker": "lies_elsewhere", "sand_touch": "smoothing", "sand_improved": "no"}, GENERAL | GREEN),
    AskedAct("brush_sand", "natural_thing_removed", {"removed_thing": "sand_or_loose_soil", "removed_on_green": "yes"}, GREEN, named=("removed_on_green",)),
    AskedAct("brush_sand", "natural_thing_removed", {"removed_thing": "sand_or_loose_soil", "removed_on_green": "no", "removal_improved_conditions": "yes"}, GENERAL, ("removed_on_green",), (*_IMPROVES, "removed_on_green")),
    AskedAct("repair", "green_repaired", {"mark_on_green": "person_or_outside_influence", "repair_within_limits": "yes", "repair_delayed_play": "no"}, GREEN),
    AskedAct("repair_natural", "green_repaired", {"mark_on_green": "natural_imperfection", "green_improved": "yes"}, GREEN, named=_IMPROVES, rather=("repair",)),
    AskedAct("test_green", "green_tested", {"green_test": "rubbed", "meant_to_test": "yes", "tested_green": "any_other"}, GREEN, ("tested_green",), ("meant_to_test",)),
    AskedAct("roll_ball", "green_tested", {"green_test": "rolled_ball", "meant_to_test": "yes", "tested_green": "any_other"}, GREEN, ("tested_green",), ("meant_to_test",)),
)  # fmt: skip
"""Ground, sand, grass and green touched or changed."""

_CONDITION = {"interference": "ball", **_REASONABLE, **_USUAL}

RELIEF: tuple[AskedAct, ...] = (
    AskedAct("unplayable", "unplayable_ball", {"spot_of_ball_known": "yes", **_USUAL}, relief=("19",), rather=("penalty_area",)),
    AskedAct("penalty_area", "ball_in_penalty_area", {"found_in_penalty_area": "yes", **_USUAL}, WATER, relief=("17",)),
    AskedAct("path", "abnormal_course_condition", {"in_the_way": "immovable_obstruction", **_CONDITION}, OFF_TEE, relief=("free",), rather=("unplayable", "penalty_area")),
    AskedAct("path_on_line", "abnormal_course_condition", {"in_the_way": "immovable_obstruction", **_CONDITION, "interference": "line_of_play"}, OFF_TEE, relief=("free",), rather=("sprinkler_on_line", "unplayable", "penalty_area")),
    AskedAct("sprinkler_on_line", "obstruction_near_green", {"obstruction_on_line": "yes", "obstruction_from_green": "2", "obstruction_from_ball": "2", "only_for_short_grass": "no", "line_of_play_unreasonable": "no", "stroke_unreasonable_anyway": "no"}, GENERAL, named=("obstruction_on_line",), relief=("free",), rather=("unplayable",)),
    AskedAct("water", "abnormal_course_condition", {"in_the_way": "temporary_water", **_CONDITION}, OFF_TEE, relief=("free",), rather=("unplayable", "penalty_area")),
    AskedAct("bare_ground", "abnormal_course_condition", {"in_the_way": "unmarked_ground", **_CONDITION}, GENERAL | BUNKER, relief=("free",), rather=("unplayable",)),
    AskedAct("fence", "abnormal_course_condition", {"in_the_way": "boundary_or_integral_object", **_CONDITION, "interference": "stance_or_swing"}, GENERAL | BUNKER, relief=("free",), rather=("unplayable",)),
    AskedAct("embedded", "embedded_ball", {"in_own_pitch_mark": "yes", "below_ground_level": "yes", "in_sand_not_fairway": "no", "stroke_unreasonable_anyway": "no", **_USUAL}, OFF_TEE, named=("in_own_pitch_mark",), relief=("free",), rather=("unplayable", "penalty_area", "repair")),
    AskedAct("tree_shaken", "ball_dislodged_from_tree", {"tree_purpose": "other", **_USUAL}, GENERAL, named=("last_stroke_from_penalty_area",), rather=("unplayable",)),
    AskedAct("animal", "dangerous_animal", {"animal_near_ball": "dangerous", **_REASONABLE, **_USUAL}, OFF_TEE, relief=("free",), rather=("unplayable", "penalty_area")),
    AskedAct("again", "play_again_from_previous_spot", {"second_ball": "nothing_yet"}, EVERYWHERE, relief=("18",)),
)  # fmt: skip
"""Relief taken."""
