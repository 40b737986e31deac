"""What a place on the map answers for the Rules, where something about it must be looked at on the ground."""

import pytest
from shapely.geometry import LineString, box

from marram import rule
from marram.course.model import Feature, Kind
from marram.relief.place.place_facts import place_facts
from tests.relief.ground_for_tests import DITCH, IN_2023, course


def facts(ball, *more, accuracy=0.3):
    links = course(*more)
    return place_facts(links, links.hole(1), ball, accuracy=accuracy)


def next_question(incident, known):
    return getattr(rule(incident, known, played_on=IN_2023, local_rules=[]), "fact", None)


STRIP = Feature(Kind.RED_PENALTY_AREA, "strip", box(-70, 40, -69.72, 90))


@pytest.mark.parametrize(
    ("ball", "more"),
    [((19.70, 80.0), ()), ((-69.86, 60.0), (STRIP,))],
    ids=["beside it", "in a strip 28 cm wide"],
)
def test_the_colour_is_known_where_only_the_area_is_open(ball, more):
    """Whether the ball lies in the red area must be looked at; that it is red stands on the map (Rule 17.1a)."""
    found = facts(ball, *more)

    assert found.area_open
    assert "area_of_ball" not in found.facts
    assert found.facts["penalty_area_colour"] == "red"
    known = {**found.facts, "found_in_penalty_area": "yes", "last_stroke_from_penalty_area": "no"}
    assert next_question("ball_in_penalty_area", known) is None
    del known["penalty_area_colour"]
    assert next_question("ball_in_penalty_area", known) == "penalty_area_colour"


def test_two_colours_within_reach_leave_the_colour_open():
    """Where a red and a yellow area meet, the ground tells which one it is."""
    beside_ditch = Feature(Kind.RED_PENALTY_AREA, "beside", box(-20, 134, 20, 140))
    assert "penalty_area_colour" not in facts((0.0, 134.1), beside_ditch).facts
    assert facts((0.0, 137.0), beside_ditch).facts["penalty_area_colour"] == "red"
    assert facts((0.0, DITCH.bounds[1] - 0.2)).facts["penalty_area_colour"] == "yellow"


def test_no_colour_is_told_far_from_a_penalty_area_or_of_what_may_be_one():
    """A tee leaves the area open, but no penalty area is near; a wetland may be one of a colour that nobody told."""
    assert facts((0.0, 0.0)).area_open
    assert "penalty_area_colour" not in facts((0.0, 0.0)).facts
    wet = Feature(Kind.WETLAND, "wet", box(10, 60, 18, 100))
    assert "penalty_area_colour" not in facts((19.8, 80.0), wet).facts


def test_unmarked_water_near_is_red():
    """Its edge is not known, its colour is: red where none was given (Definition of penalty area)."""
    burn = Feature(Kind.WATER, "burn", LineString([(-70, 20), (-70, 180)]))
    found = facts((-67.0, 60.0), burn)
    assert found.area_open
    assert found.facts["penalty_area_colour"] == "red"


def test_the_colour_of_an_edge_that_a_phone_drew_roughly():
    """An edge known to 6 m is looked at within 6 m; another colour that near leaves the colour open."""
    rough = Feature(Kind.RED_PENALTY_AREA, "rough", box(-60, 40, -50, 50), tags={"accuracy": "6"})
    near = Feature(Kind.YELLOW_PENALTY_AREA, "near", box(-45, 40, -44, 50))
    assert facts((-47.0, 45.0), rough).facts["penalty_area_colour"] == "red"
    assert "penalty_area_colour" not in facts((-47.0, 45.0), rough, near).facts


def test_where_a_ball_lies_in_the_general_area_so_does_the_spot_right_behind_it():
    """A ball embedded in mid-fairway: the reference point of Rule 16.3b is not asked about; beside a bunker it is."""
    embedded = {
        "in_own_pitch_mark": "yes",
        "below_ground_level": "yes",
        "in_sand_not_fairway": "no",
        "stroke_unreasonable_anyway": "no",
    }
    assert next_question("embedded_ball", {**facts((0.0, 60.0)).facts, **embedded}) is None
    at_bunker = facts((-14.3, 150.5), accuracy=0.6)
    assert at_bunker.area_open
    known = {**at_bunker.facts, "area_of_ball": "general_area", **embedded}
    assert next_question("embedded_ball", known) == "spot_behind_in_general_area"


def test_a_ball_well_on_a_path_of_which_only_the_middle_is_mapped_is_on_it():
    """It is taken as wide as paths are, and that is said; towards the edge of that width the ground tells."""
    track = Feature(
        Kind.PATH,
        "track",
        LineString([(-50, 20), (-50, 180)]),
        tags={"golf": "cartpath", "surface": "asphalt"},
    )
    on_it = facts((-50.4, 60.0), track)
    assert (on_it.facts["interference"], on_it.facts["in_the_way"]) == ("ball", "immovable_obstruction")
    assert any("taken as" in doubt for doubt in on_it.doubts)
    assert "interference" not in facts((-51.1, 60.0), track).facts
    unsurfaced = Feature(Kind.PATH, "trail", LineString([(-50, 20), (-50, 180)]), tags={"golf": "cartpath"})
    assert "interference" not in facts((-50.0, 60.0), unsurfaced).facts
