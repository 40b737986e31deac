"""May I? Acts that hang on what is going on: a ball in motion, play that is stopped, another player's turn or line."""

from marram.services.asked.asked_act import BUNKER, EVERYWHERE, GENERAL, GREEN, OFF_TEE, TEE, AskedAct

_ON_PURPOSE = {"meant_to_affect_ball": "yes"}
_MOVED = ("meant_to_affect_ball", "moved_in_path")
_FINISHED = {"suspension": "normal", "played_on": "finished_hole"}
_WRONG_PLACE = {"serious_breach": "no", "balls_after_wrong_place": "not_corrected"}
_OFF_GREEN = OFF_TEE - GREEN

MOTION: tuple[AskedAct, ...] = (
    AskedAct("rake_in_motion", "helped_ball_in_motion", {**_ON_PURPOSE, "moved_in_path": "movable_obstruction"}, ways=("moved_in_path",), named=_MOVED),
    AskedAct("loose_in_motion", "helped_ball_in_motion", {**_ON_PURPOSE, "moved_in_path": "loose_impediment"}, ways=("moved_in_path",), named=_MOVED),
    AskedAct("press_in_motion", "helped_ball_in_motion", {**_ON_PURPOSE, "moved_in_path": "physical_condition"}, named=_MOVED, rather=("flagstick_in_motion",)),
    AskedAct("flagstick_in_motion", "helped_ball_in_motion", {**_ON_PURPOSE, "moved_in_path": "removed_flagstick"}, named=_MOVED),
    AskedAct("bag_in_motion", "helped_ball_in_motion", {**_ON_PURPOSE, "moved_in_path": "equipment"}, named=_MOVED),
    AskedAct("ball_in_motion", "ball_lifted", {"who_lifted": "player_or_authorised", "spot_marking": "right"}, GREEN),
    AskedAct("flagstick_out_in_motion", "flagstick_moved", {"flagstick_mover": "own_side", "flagstick_moved_to_affect": "yes"}, ways=("flagstick_moved_to_affect",), named=("flagstick_moved_to_affect",)),
    AskedAct("stop_putt", "deliberately_deflected", {"deflector": "own_side", "played_from_green": "yes"}, GREEN, named=("played_from_green",), rather=("flagstick_in_motion",)),
    AskedAct("wait_ten", "ball_overhung_hole", {"overhang": "fell_in", "seconds_at_hole": "10"}, GREEN),
    AskedAct("wait_longer", "ball_overhung_hole", {"overhang": "fell_in", "seconds_at_hole": "20"}, GREEN, rather=("wait_ten",)),
)  # fmt: skip

STOPPED: tuple[AskedAct, ...] = (
    AskedAct("stop_at_signal", "stopped_play", {"stop_reason": "suspended"}),
    AskedAct("play_on_at_once", "played_after_suspension", {"suspension": "immediate", "playing_on_justified": "no"}, named=("playing_on_justified",), rather=("lift_when_stopped", "stop_at_signal")),
    AskedAct("finish_hole", "played_after_suspension", _FINISHED, OFF_TEE),
    AskedAct("begin_hole", "played_after_suspension", {"suspension": "normal", "played_on": "began_hole", "playing_on_justified": "no"}, TEE, named=("playing_on_justified",), rather=("stop_at_signal",)),
    AskedAct("lift_when_stopped", "ball_when_play_stopped", {"ball_when_stopped": "lifted"}, OFF_TEE),
    AskedAct("leave_when_stopped", "ball_when_play_stopped", {"ball_when_stopped": "left_in_place"}, OFF_TEE),
    AskedAct("practise_when_stopped", "practised_during_round", {"struck": "ball_for_practice", "when_practised": "play_stopped", "practice_allowed_when_stopped": "no"}, EVERYWHERE, ("practice_allowed_when_stopped",), ("practice_allowed_when_stopped",)),
)  # fmt: skip

OTHERS: tuple[AskedAct, ...] = (
    AskedAct("play_first", "played_out_of_turn", {"agreed_for_advantage": "no"}),
    AskedAct("play_first_agreed", "played_out_of_turn", {"agreed_for_advantage": "no", "agreed_out_of_turn": "yes"}),
    AskedAct("marker_aside", "ball_marker_in_the_way", {"marker_in_the_way": "moved_and_back"}, GREEN),
    AskedAct("marker_stays_aside", "ball_marker_in_the_way", {"marker_in_the_way": "not_moved_back", **_WRONG_PLACE}, GREEN, named=("serious_breach",), rather=("marker_aside",)),
)  # fmt: skip

ZONES: tuple[AskedAct, ...] = (
    AskedAct("wrong_green", "wrong_green", {"wrong_green_interference": "ball_on_it", "played_despite_wrong_green": "no"}, GENERAL, named=("played_despite_wrong_green",), relief=("free",)),
    AskedAct("from_wrong_green", "wrong_green", {"wrong_green_interference": "ball_on_it", "played_despite_wrong_green": "yes", **_WRONG_PLACE}, GENERAL, named=("played_despite_wrong_green",), rather=("wrong_green",)),
    AskedAct("no_play_zone", "no_play_zone", {"no_play_zone_interference": "ball_inside", "played_despite_zone": "no"}, _OFF_GREEN, named=("played_despite_zone",), relief=("free",), rather=("penalty_area",)),
    AskedAct("from_no_play_zone", "no_play_zone", {"no_play_zone_interference": "ball_inside", "played_despite_zone": "yes", **_WRONG_PLACE}, _OFF_GREEN, named=("played_despite_zone",), rather=("no_play_zone", "penalty_area")),
    AskedAct("out_of_bunker", "abnormal_course_condition", {"in_the_way": "temporary_water", "interference": "ball", "stroke_unreasonable_anyway": "no", "only_by_unreasonable_choice": "no", "last_stroke_from_penalty_area": "no"}, BUNKER, relief=("other",)),
)  # fmt: skip
