"""Acts of the trade a player may ask about beforehand, each as an incident with the facts of its being done.

An act is data: what it is called stands in the catalogue (``may.NAME``), what it costs is what the book rules of the same
act done. What stays open, such as whether the lie is improved by it, is left open, and told as what it hangs on.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

from marram.rules.facts.ball import Area

EVERYWHERE = frozenset(Area)
OFF_BUNKER = EVERYWHERE - {Area.BUNKER, Area.PENALTY_AREA}
GENERAL_AND_HAZARDS = EVERYWHERE - {Area.PUTTING_GREEN, Area.TEEING_AREA}


@dataclass(frozen=True, slots=True)
class AskedAct:
    """One way in which an act is done.

    Attributes:
        name: the act; several entries have one name where the Rules look at it differently by area.
        incident: the incident that the act done is.
        facts: what is known of it then, beside the area of the course.
        areas: the areas of the course it is asked about in this way.
        ways: facts whose other answers are other ways of doing it, among which the nearest that is allowed is sought.
    """

    name: str
    incident: str
    facts: Mapping[str, str] = field(default_factory=dict)
    areas: frozenset[Area] = EVERYWHERE
    ways: tuple[str, ...] = ()


_STILL = {"ball_when_removed": "at_rest", "removed_thing": "loose_impediment"}
_IN_SAND = {"ball_and_bunker": "lies_in_it"}
_BUNKER, _WATER, _GREEN = (frozenset({one}) for one in (Area.BUNKER, Area.PENALTY_AREA, Area.PUTTING_GREEN))
_USUAL = {"last_stroke_from_penalty_area": "no"}

ACTS: tuple[AskedAct, ...] = (
    AskedAct("loose", "natural_thing_removed", {**_STILL, "removal_moved_ball": "no"}, OFF_BUNKER),
    AskedAct("loose", "thing_removed_from_bunker", {"removed_reasonably": "yes", "removal_moved_ball": "no", "thing_removed_in_bunker": "loose_impediment"}, _BUNKER),
    AskedAct("loose", "done_in_penalty_area", {"penalty_area_action": "removed_loose_impediment", "removal_moved_ball": "no"}, _WATER),
    AskedAct("loose_moves_ball", "natural_thing_removed", {**_STILL, "removal_moved_ball": "yes", "while_searching": "no", "applying_other_rule": "no"}, OFF_BUNKER),
    AskedAct("loose_moves_ball", "thing_removed_from_bunker", {"removed_reasonably": "yes", "removal_moved_ball": "yes", "thing_removed_in_bunker": "loose_impediment"}, _BUNKER),
    AskedAct("loose_moves_ball", "done_in_penalty_area", {"penalty_area_action": "removed_loose_impediment", "removal_moved_ball": "yes"}, _WATER),
    AskedAct("obstruction", "artificial_thing_removed", {"artificial_thing": "movable_obstruction", "motion_during_removal": "no"}),
    AskedAct("ground_club", "sand_touched", {**_IN_SAND, "sand_touch": "club_by_ball"}, _BUNKER, ("sand_touch",)),
    AskedAct("ground_club", "done_in_penalty_area", {"penalty_area_action": "touched_ground_or_water", "improved_in_penalty_area": "no"}, _WATER),
    AskedAct("ground_club", "ground_altered", {"altered_place": "elsewhere", "conditions_improved": "yes", "preparing_how": "grounding_club", "grounded_lightly": "yes"}, frozenset({Area.GENERAL_AREA})),
    AskedAct("practice_swing", "sand_touched", {**_IN_SAND, "sand_touch": "practice_swing"}, _BUNKER, ("sand_touch",)),
    AskedAct("dig_in", "sand_touched", {**_IN_SAND, "sand_touch": "taking_stance"}, _BUNKER),
    AskedAct("smooth_sand", "sand_touched", {**_IN_SAND, "sand_touch": "smoothing"}, _BUNKER),
    AskedAct("clean", "lifted_to_be_cleaned", {"ball_in_cleaning_area": "yes", "spot_marking": "right"}, EVERYWHERE - _GREEN - {Area.TEEING_AREA}),
    AskedAct("clean", "ball_lifted", {"who_lifted": "player_or_authorised", "spot_marking": "right"}, _GREEN),
    AskedAct("repair", "green_repaired", {"mark_on_green": "person_or_outside_influence", "repair_within_limits": "yes", "repair_delayed_play": "no"}, _GREEN),
    AskedAct("repair_natural", "green_repaired", {"mark_on_green": "natural_imperfection"}, _GREEN, ("mark_on_green",)),
    AskedAct("brush_sand", "natural_thing_removed", {"removed_thing": "sand_or_loose_soil", "removed_on_green": "yes"}, _GREEN),
    AskedAct("brush_sand", "natural_thing_removed", {"removed_thing": "sand_or_loose_soil", "removed_on_green": "no"}, EVERYWHERE - _GREEN),
    AskedAct("bend", "fixed_object_moved", {"conditions_improved": "yes", "fixed_object": "growing_or_attached", "original_object_back": "no", "altered_place": "elsewhere", "preparing_how": "none_of_these"}, GENERAL_AND_HAZARDS),
    AskedAct("boundary_stake", "fixed_object_moved", {"conditions_improved": "yes", "fixed_object": "immovable_or_boundary", "original_object_back": "no", "preparing_how": "none_of_these"}, ways=("original_object_back",)),
    AskedAct("test_green", "green_tested", {"green_test": "rubbed", "meant_to_test": "yes", "tested_green": "any_other"}, _GREEN, ("tested_green",)),
    AskedAct("unplayable", "unplayable_ball", {"spot_of_ball_known": "yes", **_USUAL}),
    AskedAct("path", "abnormal_course_condition", {"in_the_way": "immovable_obstruction", "interference": "ball", "stroke_unreasonable_anyway": "no", "only_by_unreasonable_choice": "no", **_USUAL}, EVERYWHERE - {Area.TEEING_AREA}),
    AskedAct("embedded", "embedded_ball", {"in_own_pitch_mark": "yes", "below_ground_level": "yes", "in_sand_not_fairway": "no", "stroke_unreasonable_anyway": "no", **_USUAL}, EVERYWHERE - {Area.TEEING_AREA}),
    AskedAct("again", "play_again_from_previous_spot", {"second_ball": "nothing_yet"}),
)  # fmt: skip
"""Every act that is asked about, in the order it is told."""
