"""Acts with the ball itself: lifted, cleaned, changed, dropped, and who may do it (Rules 4.2, 6.3, 7, 10.3, 14 to 16, 18)."""

from marram.services.asked.asked_act import (
    EVERYWHERE,
    GENERAL,
    GREEN,
    OFF_GREEN,
    OFF_TEE,
    TEE,
    WATER,
    AskedAct,
)

_OWN = {"whose_ball_lifted": "players", "cleaned_when_lifted": "no"}
_PLAYED = {"played_since_put_down": "yes", "substituted_in_wrong_place": "no"}

LIFTED: tuple[AskedAct, ...] = (
    AskedAct("clean", "lifted_to_be_cleaned", {"ball_in_cleaning_area": "yes", "spot_marking": "right"}, OFF_GREEN, rather=("identify",)),
    AskedAct("clean", "ball_lifted", {"who_lifted": "player_or_authorised", "spot_marking": "right"}, GREEN),
    AskedAct("clean_in_relief", "ball_lifted", {"who_lifted": "player_or_authorised", "reason_for_lifting": "taking_relief"}, OFF_GREEN),
    AskedAct("lift_unmarked", "ball_lifted", {"who_lifted": "player_or_authorised", "spot_marking": "not_marked"}, GREEN, ("spot_marking",), ("spot_marking",)),
    AskedAct("identify", "ball_lifted_to_identify", {**_OWN, "lifting_needed_to_identify": "yes", "spot_marking": "right"}, OFF_TEE, named=("cleaned_when_lifted",)),
    AskedAct("see_damage", "lifted_to_see_damage", {"lifting_fault": "none"}, OFF_TEE),
    AskedAct("see_relief", "lifted_to_see", {"believed_relief_allowed": "yes", "condition_found": "none", "marked_and_not_cleaned": "yes"}, OFF_TEE),
    AskedAct("caddie_lifts", "caddie_acted", {"caddie_deed": "marked_and_lifted_on_green", "caddie_authorised": "no", "spot_marking": "right"}, GREEN, ("caddie_authorised",), ("caddie_authorised",)),
    AskedAct("caddie_lifts", "caddie_acted", {"caddie_deed": "lifted_to_be_replaced", "caddie_authorised": "no", "spot_marking": "right"}, OFF_GREEN, ("caddie_authorised",), ("caddie_authorised",), rather=("identify",)),
    AskedAct("ask_to_lift", "interfering_ball", {"interfering_ball": "lifted_on_request", "spot_marking": "right", "cleaned_when_lifted": "no"}, OFF_TEE),
    AskedAct("lift_unasked", "interfering_ball", {"interfering_ball": "lifted_unasked", "spot_marking": "right", "cleaned_when_lifted": "no"}, OFF_TEE, ("interfering_ball",)),
    AskedAct("leave_helping", "helping_ball", {"helping_ball": "left_by_agreement", "stroke_with_helping_ball": "yes", "knew_it_applied": "no"}, GREEN, ("helping_ball",), ("stroke_with_helping_ball",)),
)  # fmt: skip
"""A ball lifted, and put back."""

CHANGED: tuple[AskedAct, ...] = (
    AskedAct("change_damaged", "damaged_ball_changed", {"ball_damage": "cut_or_cracked_on_hole", "ball_set_down": "another_played"}, OFF_TEE),
    AskedAct("change_scratched", "damaged_ball_changed", {"ball_damage": "surface_only", "ball_set_down": "another_played"}, OFF_TEE, rather=("change_damaged",)),
    AskedAct("change_in_relief", "another_ball_put_in_play", {"why_substituted": "taking_relief", **_PLAYED}, OFF_TEE, named=("played_since_put_down", "substituted_in_wrong_place")),
    AskedAct("change_on_spot", "another_ball_put_in_play", {"why_substituted": "replacing", **_PLAYED, "original_ball_unavailable": "no"}, OFF_TEE, ("original_ball_unavailable",), ("played_since_put_down", "substituted_in_wrong_place")),
    AskedAct("provisional", "another_ball_played", {"second_ball_reason": "might_be_lost_or_out", "announced": "before"}, EVERYWHERE),
    AskedAct("provisional_for_water", "another_ball_played", {"second_ball_reason": "only_in_penalty_area", "announced": "before"}, EVERYWHERE, ("second_ball_reason",)),
    AskedAct("tee_again", "fell_off_tee", {"tee_ball_struck": "no"}, TEE, named=("tee_ball_struck",)),
    AskedAct("stand_outside_tee", "ball_at_edge_of_teeing_area", {"part_of_ball_in_teeing_area": "yes"}, TEE, named=("part_of_ball_in_teeing_area",)),
    AskedAct("moving_water", "moving_ball_played", {"how_ball_was_moving": "in_water"}, WATER),
    AskedAct("stand_out_of_bounds", "ball_near_boundary", {"all_of_ball_out_of_bounds": "no"}, GENERAL, named=("all_of_ball_out_of_bounds",)),
)  # fmt: skip
"""Another ball, another place, or the ball as it lies."""

DROPPED: tuple[AskedAct, ...] = (
    AskedAct("drop_from_knee", "dropped_ball_played", {"way_of_dropping": "right", "ball_in_relief_area": "yes"}, OFF_TEE, named=("ball_in_relief_area",)),
    AskedAct("drop_from_shoulder", "dropped_ball_played", {"way_of_dropping": "not_knee_height", "ball_in_relief_area": "yes"}, OFF_TEE, ("way_of_dropping",), ("ball_in_relief_area",)),
    AskedAct("place_not_drop", "dropped_ball_played", {"way_of_dropping": "placed", "ball_in_relief_area": "yes"}, OFF_TEE, ("way_of_dropping",), ("ball_in_relief_area",)),
    AskedAct("drop_over_there", "dropped_ball_played", {"way_of_dropping": "right", "ball_in_relief_area": "no", "serious_breach": "no", "balls_after_wrong_place": "not_corrected"}, OFF_TEE, ("ball_in_relief_area",), ("ball_in_relief_area",), rather=("drop_from_knee",)),
    AskedAct("caddie_drops", "dropped_ball_played", {"way_of_dropping": "by_someone_else", "ball_in_relief_area": "yes"}, OFF_TEE, ("way_of_dropping",), ("ball_in_relief_area",)),
)  # fmt: skip
"""A ball in hand, put down in taking relief."""
