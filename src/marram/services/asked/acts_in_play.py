"""Acts before and between strokes: help, advice, devices, practice, clubs, flagstick, stopping (Rules 4, 5, 10 and 13.2)."""

from marram.services.asked.asked_act import EVERYWHERE, GENERAL, GREEN, OFF_TEE, AskedAct

_ASKED = {"advice_deed": "asked", "was_advice": "yes", "during_round": "yes"}
_FIRST = {"equipment_breach_again": "no"}
_SHOWN = {"line_shown_by": "person", "still_there_in_stroke": "yes", "shown_by_own_side": "yes", "asked_or_allowed": "yes", "attending_flagstick": "no"}  # fmt: skip
_BEHIND = {"in_place_at_stance": "yes", "stood_there_deliberately": "yes", "stood_there_for_aim": "yes", "left_before_stroke": "yes"}  # fmt: skip
_NEARBY = {"putt_or_chip_nearby": "yes", "practised_from_bunker": "no", "practice_delayed_play": "no"}
_TITLE = ("was_advice", "during_round", "in_place_at_stance", "stood_there_deliberately", "stood_there_for_aim", "meant_to_help_aim", "foot_on_line", "still_there_in_stroke", "shown_by_own_side", "asked_or_allowed", "attending_flagstick")  # fmt: skip

HELP: tuple[AskedAct, ...] = (
    AskedAct("ask_distance", "advice_exchanged", {"advice_deed": "asked", "was_advice": "no"}, named=_TITLE),
    AskedAct("ask_club", "advice_exchanged", {**_ASKED, "advice_to_or_from": "player_on_course"}, named=_TITLE, rather=("ask_caddie",)),
    AskedAct("ask_caddie", "advice_exchanged", {**_ASKED, "advice_to_or_from": "own_side"}, named=_TITLE),
    AskedAct("look_in_bag", "advice_exchanged", {"advice_deed": "only_looked"}),
    AskedAct("lift_towel", "advice_exchanged", {"advice_deed": "touched_equipment", "was_advice": "yes", "during_round": "yes"}, named=_TITLE, rather=("look_in_bag",)),
    AskedAct("show_line", "line_of_play_shown", _SHOWN, named=_TITLE, ways=("still_there_in_stroke",)),
    AskedAct("club_for_aim", "object_set_down_for_aim", {"meant_to_help_aim": "yes", "what_was_set_down": "club_or_other_object"}, ways=("what_was_set_down",), named=_TITLE),
    AskedAct("line_on_ball", "object_set_down_for_aim", {"meant_to_help_aim": "yes", "what_was_set_down": "ball_at_rest"}, GREEN, named=_TITLE),
    AskedAct("caddie_behind", "caddie_behind_ball", {**_BEHIND, "backed_away": "no"}, ways=("backed_away",), named=(*_TITLE, "backed_away")),
    AskedAct("umbrella", "helped_in_stroke", {"help_in_stroke": "protection_from_elements"}, rather=("own_umbrella",)),
    AskedAct("own_umbrella", "helped_in_stroke", {"help_in_stroke": "own_protection"}),
    AskedAct("straddle", "stood_across_line", {"foot_on_line": "yes", "stance_to_spare_other_line": "no"}, ways=("stance_to_spare_other_line",), named=(*_TITLE, "stance_to_spare_other_line")),
)  # fmt: skip
"""Advice, aim and help in the stroke."""

EQUIPMENT: tuple[AskedAct, ...] = (
    AskedAct("distance_device", "equipment_used", {"equipment_use": "distance_or_direction", **_FIRST}, named=("equipment_breach_again",), rather=("ask_distance",)),
    AskedAct("slope_device", "equipment_used", {"equipment_use": "elevation_or_recommendation", **_FIRST}, named=("equipment_breach_again",), rather=("distance_device", "ask_distance")),
    AskedAct("wind_device", "equipment_used", {"equipment_use": "wind_measured", **_FIRST}, named=("equipment_breach_again",), rather=("toss_grass",)),
    AskedAct("toss_grass", "equipment_used", {"equipment_use": "grass_tossed"}),
    AskedAct("music", "equipment_used", {"equipment_use": "audio_or_video_help", **_FIRST}, named=("equipment_breach_again",), rather=("sound",)),
    AskedAct("swing_aid", "equipment_used", {"equipment_use": "swing_aid", **_FIRST}, named=("equipment_breach_again",), rather=("stretch",)),
    AskedAct("sound", "equipment_used", {"equipment_use": "audio_unrelated"}),
    AskedAct("stretch", "equipment_used", {"equipment_use": "stretching"}),
    AskedAct("add_club", "club_added", {"more_than_fourteen": "no", "club_source": "elsewhere"}, named=("more_than_fourteen",)),
    AskedAct("borrow_club", "club_shared", {"whose_club": "other_player", "holes_with_breach": "1"}, named=("holes_with_breach",), rather=("add_club",)),
)  # fmt: skip
"""Devices and clubs."""

PLAY: tuple[AskedAct, ...] = (
    AskedAct("practice_on_hole", "practised_during_round", {"struck": "ball_for_practice", "when_practised": "playing_hole"}, rather=("practice_swing_off_ball",)),
    AskedAct("practice_between", "practised_during_round", {"struck": "ball_for_practice", "when_practised": "between_holes", **_NEARBY}, GREEN, rather=("practice_swing_off_ball",)),
    AskedAct("practice_swing_off_ball", "practised_during_round", {"struck": "swing_only"}),
    AskedAct("flagstick_in", "ball_hit_flagstick", {"flagstick_state": "left_in_hole", "flagstick_leant_on_purpose": "no"}, OFF_TEE),
    AskedAct("flagstick_leant", "ball_hit_flagstick", {"flagstick_state": "left_in_hole", "flagstick_leant_on_purpose": "yes"}, GREEN | GENERAL, ("flagstick_leant_on_purpose",), ("flagstick_leant_on_purpose",), rather=("flagstick_in",)),
    AskedAct("stop_for_lightning", "stopped_play", {"stop_reason": "lightning", "reported_stop": "yes"}, EVERYWHERE, named=("reported_stop",)),
    AskedAct("stop_for_rain", "stopped_play", {"stop_reason": "other"}, EVERYWHERE, rather=("stop_for_lightning",)),
)  # fmt: skip
"""Practice, the flagstick, stopping play."""
