"""What a situation tells of the ground: the facts a map can confirm, and why some situations have no drawing."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum
from typing import Any

from marram.course.model import Kind
from marram.rules.facts.ball import Area
from marram.rules.facts.relief import InTheWay

KINDS_IN_THE_WAY: Mapping[str, tuple[Kind, ...]] = {
    InTheWay.GROUND_UNDER_REPAIR.value: (Kind.GROUND_UNDER_REPAIR,),
    InTheWay.TEMPORARY_WATER.value: (Kind.TEMPORARY_WATER,),
    InTheWay.IMMOVABLE_OBSTRUCTION.value: (Kind.PATH, Kind.OBSTRUCTION),
}
"""The kinds of the map that each thing in the way is mapped as; others are on no map."""

ASKED_OF_THE_MAP = frozenset(
    {
        "all_of_ball_out_of_bounds",
        "area_of_ball",
        "dropping_zone_provided",
        "in_the_way",
        "interference",
        "nearest_point_exists",
        "no_play_zone_interference",
        "penalty_area_colour",
        "wrong_green_interference",
    }
)
"""Facts that the map answers about a place, as it does for a case; the drawing agrees with them."""

_AREAS: Mapping[tuple[str, str], str] = {
    ("ball_and_bunker", "lies_in_it"): Area.BUNKER.value,
    ("ball_in_teeing_area", "yes"): Area.TEEING_AREA.value,
    ("both_on_green", "yes"): Area.PUTTING_GREEN.value,
    ("cut_to_fairway_height", "yes"): Area.GENERAL_AREA.value,
    ("cut_to_fairway_height", "no"): Area.GENERAL_AREA.value,
    ("in_sand_not_fairway", "yes"): Area.GENERAL_AREA.value,
    ("in_sand_not_fairway", "no"): Area.GENERAL_AREA.value,
    ("original_ball", "certain_in_penalty_area"): Area.PENALTY_AREA.value,
    ("original_ball", "found_in_penalty_area"): Area.PENALTY_AREA.value,
    ("played_from_green", "yes"): Area.PUTTING_GREEN.value,
    ("whereabouts", "penalty_area"): Area.PENALTY_AREA.value,
}
"""Answers that say in other words in which area of the course the ball lies."""

_INCIDENTS: Mapping[str, str] = {
    "ball_in_penalty_area": Area.PENALTY_AREA.value,
    "ball_overhung_hole": Area.PUTTING_GREEN.value,
    "done_in_penalty_area": Area.PENALTY_AREA.value,
    "thing_removed_from_bunker": Area.BUNKER.value,
}
"""Incidents in which the ball lies in one area of the course only."""
AT_THE_HOLE = frozenset({"ball_overhung_hole"})
"""Incidents in which the ball lies at the edge of the hole."""

NOT_ON_A_MAP = frozenset(
    {
        "balls_alike",
        "condition_at_fairway_height",
        "found_in_obstruction",
        "fringe_interference",
        "local_interference",
        "obstruction_from_green",
        "obstruction_on_line",
        "stand_interference",
        "zone_beyond_boundary_interferes",
        "zone_beyond_boundary_named",
    }
)
"""Facts about things that no map holds as such (a stand, the fringe as a Local Rule adds it, distances of F-5), or of which
it is open which ball they are about."""

_OUT: Mapping[str, str] = {
    "after_penalty_area": "out_of_bounds",
    "all_of_ball_out_of_bounds": "yes",
    "original_ball": "out_of_bounds",
    "whereabouts": "out_of_bounds",
}
"""Answers that say that the ball lies out of bounds."""
_ELSEWHERE: Mapping[str, frozenset[str]] = {
    "original_ball": frozenset({"in_condition", "in_movable_obstruction", "in_the_hole"}),
}
"""Answers by which the ball lies in or on something that the situation does not tell more about."""

ABOUT_WHAT_NO_MAP_HOLDS = frozenset(
    {
        "accumulated_loose_impediments",
        "aeration_hole",
        "animal_damage",
        "animal_dung",
        "ant_hill",
        "ball_against_flagstick",
        "ball_hit_flagstick",
        "ball_in_hole",
        "ball_in_or_on_movable_obstruction",
        "ball_in_two_areas",
        "ball_in_watercourse",
        "beyond_internal_boundary",
        "beyond_public_road",
        "crack_in_ground",
        "dangerous_animal",
        "fairway_mat",
        "flooded_bunker",
        "ground_beside_obstruction",
        "hit_power_line",
        "hit_temporary_line",
        "hoof_damage",
        "movable_treated_as_immovable",
        "obstruction_near_green",
        "on_boundary_feature",
        "painted_line",
        "road_or_path",
        "something_in_the_way",
        "stake_in_the_way",
        "temporary_immovable_obstruction",
        "temporary_line_in_the_way",
        "tree_root",
        "turf_seam",
        "unusual_damage",
        "young_tree",
        "zone_beyond_boundary",
    }
)
"""Incidents about a thing beside the ball that no map holds as such; a drawing without it would mislead."""
NOT_SEEN: Mapping[str, frozenset[str]] = {
    "after_penalty_area": frozenset({"lost_outside"}),
    "original_ball": frozenset(
        {"certain_in_penalty_area", "lost", "moved_by_outside_influence", "not_found_yet"}
    ),
    "found_in_penalty_area": frozenset({"no"}),
    "ball_found_in_accumulation": frozenset({"no"}),
    "spot_of_ball_known": frozenset({"no"}),
}
"""Answers after which nobody has seen the ball: it is drawn where it is taken to be."""
NEVER_FOUND = frozenset({"alternative_to_stroke_and_distance", "ball_not_found", "dropped_where_lost"})
"""Incidents in which nobody has seen the ball."""


class WhyNone(Enum):
    """Why a situation has no drawing; the values are the ends of message keys."""

    NOTHING_OF_THE_GROUND = "nothing_of_the_ground"
    NOT_ON_A_MAP = "not_on_a_map"
    NO_SUCH_PLACE = "no_such_place"


@dataclass(frozen=True, slots=True)
class Grounds:
    """What the map has to say of the place of the ball.

    Attributes:
        area: the area of the course, as ``area_of_ball`` answers it; empty where any will do.
        out_of_bounds: whether the ball lies out of bounds.
        facts: what is told that the map must answer alike, by fact, as tokens.
        fairway: whether the ball lies in ground cut to fairway height; ``None``: not told.
        previous: where the previous stroke was made: an area, ``elsewhere``, ``penalty_area`` or empty.
        previous_colour: the colour of the penalty area it was made from; empty where it is not told.
        seen: whether anybody has seen the ball there.
        at_the_hole: whether it lies at the edge of the hole.
    """

    area: str
    out_of_bounds: bool
    facts: Mapping[str, str]
    fairway: bool | None
    previous: str
    previous_colour: str
    seen: bool
    at_the_hole: bool = False

    @property
    def at_boundary(self) -> bool:
        """Whether the boundary is what it is about: the ball lies close to it, on either side."""
        return self.out_of_bounds or "all_of_ball_out_of_bounds" in self.facts

    @property
    def kinds(self) -> tuple[Kind, ...]:
        """The kinds of the map that the ball lies in or near, the most telling first; none: anywhere on a hole."""
        if "wrong_green_interference" in self.facts:
            return (Kind.PUTTING_GREEN,)
        if "no_play_zone_interference" in self.facts:
            return (Kind.NO_PLAY_ZONE,)
        if "in_the_way" in self.facts:
            return KINDS_IN_THE_WAY[self.facts["in_the_way"]]
        if self.facts.get("interference", "none") != "none":
            return tuple(kind for kinds in KINDS_IN_THE_WAY.values() for kind in kinds)
        if self.at_boundary:
            return (Kind.BOUNDARY, Kind.OUT_OF_BOUNDS)
        if self.area == Area.PENALTY_AREA.value:
            colour = self.facts.get("penalty_area_colour")
            colours = {"red": Kind.RED_PENALTY_AREA, "yellow": Kind.YELLOW_PENALTY_AREA}
            return (colours[colour],) if colour else tuple(colours.values())
        return {
            Area.BUNKER.value: (Kind.BUNKER,),
            Area.PUTTING_GREEN.value: (Kind.PUTTING_GREEN,),
            Area.TEEING_AREA.value: (Kind.TEEING_AREA,),
        }.get(self.area, ())


def grounds_of(incident: str, facts: Mapping[str, Any], *, relief: bool) -> Grounds | WhyNone:
    """Return what a situation tells of the ground, or why it cannot be drawn.

    Args:
        incident: the incident.
        facts: what is told, by fact, answers as tokens.
        relief: whether the ruling offers relief that is measured from a place.
    """
    given = {name: str(answer) for name, answer in facts.items()}
    if incident in ABOUT_WHAT_NO_MAP_HOLDS or given.keys() & NOT_ON_A_MAP:
        return WhyNone.NOT_ON_A_MAP
    if any(given.get(name) in answers for name, answers in _ELSEWHERE.items()):
        return WhyNone.NOT_ON_A_MAP
    mapped = {name: answer for name, answer in given.items() if name in ASKED_OF_THE_MAP}
    if mapped.get("in_the_way", InTheWay.TEMPORARY_WATER.value) not in KINDS_IN_THE_WAY:
        return WhyNone.NOT_ON_A_MAP
    if "interference" in mapped and "in_the_way" not in mapped and incident != "abnormal_course_condition":
        return WhyNone.NOT_ON_A_MAP  # of something that this incident alone speaks of
    if mapped.get("interference") in {"ball_above_ground", "out_of_bounds_only"}:
        return WhyNone.NOT_ON_A_MAP
    out = any(given.get(name) == answer for name, answer in _OUT.items())
    area = mapped.get("area_of_ball") or _area_told(incident, given)
    from_colour = given.get("first_penalty_area_colour", "")
    if area not in {"", Area.PENALTY_AREA.value}:  # then it is the colour of the one that was played from
        from_colour = mapped.pop("penalty_area_colour", from_colour)
    elif "penalty_area_colour" in mapped:
        area = Area.PENALTY_AREA.value
    if not (mapped or area or out or relief):
        return WhyNone.NOTHING_OF_THE_GROUND
    seen = incident not in NEVER_FOUND and not any(given.get(name) in some for name, some in NOT_SEEN.items())
    fairway = {"yes": True, "no": False}.get(given.get("cut_to_fairway_height", ""))
    if fairway is None and not (seen or out or area):
        fairway = False  # nobody loses a ball there
    previous = given.get("area_of_previous_stroke", "")
    if given.get("last_stroke_from_penalty_area") == "yes":
        previous = Area.PENALTY_AREA.value
    at_the_hole = incident in AT_THE_HOLE
    return Grounds(area, out, mapped, fairway, previous, from_colour, seen, at_the_hole)


def _area_told(incident: str, given: Mapping[str, str]) -> str:
    for (name, answer), area in _AREAS.items():
        if given.get(name) == answer:
            return area
    return _INCIDENTS.get(incident, "")
