"""A Local Rule of areas E and F changes the situations it is about, and no other."""

from functools import cache

import pytest

from marram.rules.editions import EDITIONS
from marram.rules.engine.export import graph_of
from marram.rules.engine.graph import GraphNode, vertices
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.incidents import INCIDENTS

SITUATIONS = {
    "E-2": {"lifted_to_be_cleaned"},
    "E-3": {"lie_preferred"},
    "E-4": {"aeration_hole"},
    "E-9": {"zone_beyond_boundary"},
    "E-10": {"young_tree"},
    "E-11": {"hit_power_line"},
    "E-12": {
        "back_on_the_line_drop",
        "ball_dropped",
        "dropped_ball_played",
        "fairway_mat",
        "relief_ball_moved_by_nature",
    },
    "F-2.1": {"embedded_ball", "lifted_to_see"},
    "F-2.2": {"embedded_ball", "lifted_to_see"},
    "F-3": {"ground_beside_obstruction"},
    "F-4": {"unusual_damage"},
    "F-5": {"abnormal_course_condition", "obstruction_near_green", "something_in_the_way"},
    "F-7": {"turf_seam"},
    "F-8": {"crack_in_ground"},
    "F-9": {"tree_root"},
    "F-10": {"animal_damage"},
    "F-11": {"ant_hill"},
    "F-12": {"animal_dung"},
    "F-13": {"hoof_damage"},
    "F-14": {"accumulated_loose_impediments"},
    "F-16": {"flooded_bunker"},
    "F-17": {"road_or_path"},
    "F-18": {"movable_treated_as_immovable"},
    "F-21": {"painted_line"},
    "F-22": {"hit_temporary_line", "temporary_line_in_the_way"},
    "F-23": {"temporary_immovable_obstruction"},
}
"""What each is about, by the Rule that the Committee Procedures say it modifies.

Dropping zones (E-1), the alternative to stroke and distance (E-5) and stance relief (F-6) reach wherever
relief is taken, and are not among them.
"""


@cache
def situations_asking() -> dict[str, set[str]]:
    """For each code, the situations in which it can change the ruling; those for teaching left out."""
    code_of = {fact: code for code, fact in LOCAL_RULES.items()}
    found: dict[str, set[str]] = {code: set() for code in LOCAL_RULES}
    for incident in INCIDENTS:
        if incident.name.startswith("teaching_"):
            continue
        for day in EDITIONS:
            for vertex in vertices(graph_of(incident.name, day)):
                if isinstance(vertex, GraphNode) and vertex.fact in code_of:
                    found[code_of[vertex.fact]].add(incident.name)
    return found


@pytest.mark.parametrize("code", SITUATIONS)
def test_it_changes_only_the_situations_it_is_about(code: str) -> None:
    """Adopted or not, no other situation is ruled differently."""
    assert situations_asking()[code] == SITUATIONS[code]


def test_every_local_rule_of_the_areas_is_accounted_for() -> None:
    """A Local Rule of areas E or F that can be adopted is among them, or reaches wherever relief is taken."""
    every = {code for code in LOCAL_RULES if code[0] in "EF"}
    assert every == SITUATIONS.keys() | {"E-1", "E-1.3", "E-5", "F-6"}
