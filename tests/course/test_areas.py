"""Where a ball lies: Rules 2.2, 18.2a and the Definitions, by closed forms."""

import math

import numpy as np
import pytest
from shapely.geometry import box

from marram.course.lies.area_grid import areas_of
from marram.course.lies.areas import AREAS, Area, PenaltyColour, area_at, area_at_degrees
from marram.course.lies.doubts import DoubtKind
from marram.course.lies.regions import Ground
from marram.course.lies.tolerance import BALL_RADIUS
from marram.course.model import Kind
from marram.errors import BadPlace
from marram.rules.facts.ball import area_of_ball
from tests.course.drawing import BOUNDARY, RADIUS, course, feature, hole, square
from tests.course.small_links import (
    BUNKER,
    GREEN,
    HOLES,
    LINKS,
    OTHER_GREEN,
    RED,
    TEE,
    YELLOW,
    kinds,
)


def test_the_areas_are_the_answers_to_the_fact() -> None:
    """What the map reads can be given to a case as the fact area_of_ball."""
    assert {area.value for area in Area} == {answer.value for answer in area_of_ball.answers}


@pytest.mark.parametrize(
    ("x", "y", "area", "colour"),
    [
        (30, 0, Area.GENERAL_AREA, None),
        (60, 0, Area.BUNKER, None),
        (80, 0, Area.PENALTY_AREA, PenaltyColour.RED),
        (100, 0, Area.PENALTY_AREA, PenaltyColour.YELLOW),
        (150, 0, Area.PUTTING_GREEN, None),
        (0, 0, Area.TEEING_AREA, None),
        (-150, 0, None, None),
    ],
)
def test_a_ball_in_the_middle_of_an_area_lies_in_it(x, y, area, colour) -> None:
    """Rule 2.2b and Rule 2.1: the five areas, and out of bounds."""
    reading = area_at(LINKS, x, y, 1)
    assert (reading.area, reading.colour) == (area, colour)
    assert reading.out_of_bounds == (area is None)


def test_green_and_tee_of_another_hole_are_general_area() -> None:
    """Rule 2.2b: only the teeing area and green of the hole being played; another hole's green is a wrong green."""
    on_green, on_tee = area_at(LINKS, 150, 60, 1), area_at(LINKS, 0, 60, 1)
    assert (on_green.area, on_green.wrong_green) == (Area.GENERAL_AREA, OTHER_GREEN)
    assert (on_tee.area, on_tee.wrong_green) == (Area.GENERAL_AREA, None)
    assert area_at(LINKS, 150, 60, 2).area is Area.PUTTING_GREEN
    assert area_at(LINKS, 0, 60, 2).area is Area.TEEING_AREA
    assert area_at(LINKS, 0, 60, 2).wrong_green is None


@pytest.mark.parametrize(
    ("first", "second", "area"),
    [
        (RED, Kind.BUNKER, Area.PENALTY_AREA),
        (RED, Kind.PUTTING_GREEN, Area.PENALTY_AREA),
        (BUNKER, Kind.PUTTING_GREEN, Area.BUNKER),
    ],
)
def test_part_of_the_ball_in_two_specific_areas(first, second, area) -> None:
    """Rule 2.2c: penalty area before bunker before putting green, when part of the ball is in either."""
    beside = feature(
        second, box(first.geometry.bounds[2], -5, first.geometry.bounds[2] + 9, 5), "beside", holes=(1,)
    )
    green = beside if second is Kind.PUTTING_GREEN else None
    both = course(BOUNDARY, first, beside, holes=[hole(green=green)])
    x = first.geometry.bounds[2] + 0.01
    assert area_at(both, x, 0, 1).area is area
    assert AREAS[Ground(int(areas_of(both, np.array([[x, 0.0]]), 1)[0]))] is area


@pytest.mark.parametrize("feature_", [BUNKER, RED, YELLOW, GREEN, TEE], ids=lambda f: f.kind.value)
def test_a_ball_lies_in_a_specific_area_as_soon_as_part_of_it_does(feature_) -> None:
    """Rule 2.2c: part of the ball in the general area and part in a specific area counts as the specific area.

    The ball's centre is outside the straight edge by a tenth of a millimetre less, then more, than its radius.
    """
    edge = feature_.geometry.bounds[2]
    inside, outside = (area_at(LINKS, edge + BALL_RADIUS + d, 0, 1) for d in (-1e-4, 1e-4))
    assert inside.feature is feature_
    assert outside.area is Area.GENERAL_AREA
    assert inside.edge_distance == pytest.approx(1e-4, abs=2e-6)
    assert outside.edge_distance == pytest.approx(1e-4, abs=2e-6)


def test_the_radius_is_that_of_the_equipment_rules() -> None:
    """Equipment Rules: a ball's diameter is not less than 1.680 inches, 42.67 mm."""
    assert abs(2 * BALL_RADIUS - 1.680 * 0.0254) < 5e-6


def test_out_of_bounds_only_when_all_of_the_ball_is() -> None:
    """Rule 18.2a: a ball with any part inside the boundary edge is in bounds."""
    assert area_at(LINKS, 300 + RADIUS - 1e-4, 0, 1).area is Area.GENERAL_AREA
    assert area_at(LINKS, 300 + RADIUS + 1e-4, 0, 1).out_of_bounds
    assert area_at(LINKS, 300, 0, 1).edge_distance == pytest.approx(RADIUS, abs=2e-6)


def test_a_tangent_ball_touches() -> None:
    """Within the one named tolerance a ball that just touches an edge touches it."""
    assert area_at(LINKS, BUNKER.geometry.bounds[2] + RADIUS, 0, 1).area is Area.BUNKER
    assert area_at(LINKS, 300 + RADIUS, 0, 1).area is Area.GENERAL_AREA


def test_a_corner_is_decided_by_distance() -> None:
    """Beyond a corner the ball touches within a quarter circle of its radius, not within a square."""
    x, y = BUNKER.geometry.bounds[2:]
    diagonal = RADIUS / math.sqrt(2)
    assert area_at(LINKS, x + diagonal - 1e-4, y + diagonal - 1e-4, 1).area is Area.BUNKER
    assert area_at(LINKS, x + 0.9 * RADIUS, y + 0.9 * RADIUS, 1).area is Area.GENERAL_AREA


def test_an_area_out_of_bounds_inside_the_boundary() -> None:
    """An internal boundary counts only on the holes it is set for (Committee Procedures 2A(2)), and wholly inside only."""
    fence = feature(Kind.OUT_OF_BOUNDS, square(200, 0, 10), "fence", holes=(1,))
    links = course(BOUNDARY, fence, GREEN, OTHER_GREEN, holes=HOLES)
    assert area_at(links, 200, 0, 1).out_of_bounds
    assert area_at(links, 200, 0, 1).feature is fence
    assert area_at(links, 200, 0, 2).area is Area.GENERAL_AREA
    assert area_at(links, 210 - RADIUS + 1e-4, 0, 1).area is Area.GENERAL_AREA
    assert area_at(links, 210 - RADIUS - 1e-4, 0, 1).out_of_bounds


def test_without_a_boundary_out_of_bounds_is_not_told() -> None:
    """A map without a boundary says on every answer that it cannot tell out of bounds, save inside a mapped area."""
    links = course(BUNKER, feature(Kind.OUT_OF_BOUNDS, square(200, 0, 10)))
    assert DoubtKind.NO_BOUNDARY in kinds(area_at(links, 60, 0, 1))
    assert area_at(links, 200, 0, 1).out_of_bounds
    assert area_at(links, 5000, 0, 1).area is Area.GENERAL_AREA
    assert list(areas_of(links, np.array([[200.0, 0.0], [5000.0, 0.0], [60.0, 0.0]]), 1)) == [
        Ground.OUT_OF_BOUNDS,
        Ground.GENERAL_AREA,
        Ground.BUNKER,
    ]


def test_conditions_touched_are_listed() -> None:
    """Every condition that any part of the ball touches is named, whatever the area."""
    path = feature(Kind.PATH, square(30, 0, 2), "path", tags={"surface": "asphalt"})
    repair = feature(Kind.GROUND_UNDER_REPAIR, square(33, 0, 2), "repair")
    links = course(BOUNDARY, path, repair)
    reading = area_at(links, 31.5, 0, 1)
    assert reading.conditions == (path, repair)
    assert reading.touches(Kind.GROUND_UNDER_REPAIR)
    assert not reading.touches(Kind.NO_PLAY_ZONE)
    assert area_at(links, 32 + RADIUS - 1e-4, 0, 1).touches(Kind.PATH)
    assert not area_at(links, 32 + RADIUS + 1e-4, 0, 1).touches(Kind.PATH)


def test_a_bunker_inside_a_penalty_area_changes_nothing() -> None:
    """Rule 2.2c decides by the first area in the order: only edges before it can change the answer."""
    pit = feature(Kind.BUNKER, square(80, 0, 1), "pit")
    links = course(BOUNDARY, RED, pit)
    assert area_at(links, 81, 0, 1).edge_distance == pytest.approx(4 + RADIUS, abs=2e-6)


def test_an_island_in_a_penalty_area_is_not_in_it() -> None:
    """A hole in a mapped area is outside it, by distance to the inner edge."""
    moat = feature(Kind.YELLOW_PENALTY_AREA, square(100, 0, 20).difference(square(100, 0, 5)), "moat")
    links = course(BOUNDARY, moat)
    assert area_at(links, 100, 0, 1).area is Area.GENERAL_AREA
    assert area_at(links, 100, 0, 1).edge_distance == pytest.approx(5 - RADIUS, abs=2e-6)
    assert area_at(links, 105 - RADIUS + 1e-4, 0, 1).area is Area.PENALTY_AREA


def test_the_ball_in_two_colours_is_left_to_the_referee() -> None:
    """Part in a red and part in a yellow penalty area: a penalty area, its colour open."""
    red = feature(Kind.RED_PENALTY_AREA, box(70, -5, 80, 5), "red")
    yellow = feature(Kind.YELLOW_PENALTY_AREA, box(80, -5, 90, 5), "yellow")
    links = course(BOUNDARY, red, yellow)
    reading = area_at(links, 80, 0, 1)
    assert (reading.area, reading.colour) == (Area.PENALTY_AREA, None)
    assert DoubtKind.TWO_COLOURS in kinds(reading)
    assert area_at(links, 80 - 2 * RADIUS, 0, 1).colour is PenaltyColour.RED
    assert area_at(links, 80 + 2 * RADIUS, 0, 1).colour is PenaltyColour.YELLOW
    assert area_at(links, 80 + 2 * RADIUS, 0, 1).edge_distance == pytest.approx(RADIUS, abs=2e-6)


@pytest.mark.parametrize("accuracy", [-1.0, math.inf, math.nan])
def test_an_accuracy_that_is_none_is_refused(accuracy) -> None:
    """Accuracy is a finite number of metres, 0 or more."""
    with pytest.raises(BadPlace, match="accuracy"):
        area_at(LINKS, 0, 0, 1, accuracy=accuracy)


@pytest.mark.parametrize("place", [(math.nan, 0), (1e6, 0), (0, -math.inf)])
def test_a_place_far_from_the_course_is_refused(place) -> None:
    """A place that is not on or near the course is an error, never an answer."""
    with pytest.raises(BadPlace, match=r"middle of the course|no number"):
        area_at(LINKS, *place, 1)
    with pytest.raises(BadPlace, match="middle of the course"):
        areas_of(LINKS, np.array([place], dtype=float), 1)


def test_a_hole_that_is_not_in_the_map_is_refused() -> None:
    """The error names the holes there are."""
    with pytest.raises(BadPlace, match="has no hole 7; it has: 1, 2"):
        area_at(LINKS, 0, 0, 7)
    with pytest.raises(BadPlace, match="no hole 7"):
        areas_of(LINKS, np.zeros((1, 2)), 7)


def test_degrees_read_as_metres_do() -> None:
    """A place in degrees is the same place in metres; degrees out of range are refused."""
    longitude, latitude = LINKS.plane.to_degrees(60, 0)
    assert area_at_degrees(LINKS, longitude, latitude, 1).area is Area.BUNKER
    with pytest.raises(BadPlace, match="no latitude and longitude"):
        area_at_degrees(LINKS, 3.0, 95.0, 1)


def test_places_of_another_shape_are_refused() -> None:
    """Many places come as an array of two columns; none is an empty answer."""
    with pytest.raises(BadPlace, match=r"\(n, 2\)"):
        areas_of(LINKS, np.zeros(4), 1)
    assert len(areas_of(LINKS, np.zeros((0, 2)), 1)) == 0
