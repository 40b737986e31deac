"""The edges that decide near a ball: how far, on which side, and the boundary always."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, box

from marram.course.model import Course, Feature, Hole, Kind
from marram.course.plane import LocalPlane
from marram.relief.place.edges_near import NEAR, edges_near
from tests.relief.ground_for_tests import course

WHERE = course(Feature(Kind.OUT_OF_BOUNDS, "range", box(-79, 0, -60, 40), name="Range"))


def told(place, accuracy=0.0):
    return [one.sentence for one in edges_near(WHERE, 1, place, accuracy)]


def test_a_ball_just_inside_the_red_line_is_told_so():
    """The pond's west edge is the line x = 20; the boundary is 57.6 m off, beyond all else."""
    assert told((20.4, 80.0)) == ["0.4 m inside the edge (red penalty area)", "60 m inside the boundary"]


def test_the_nearest_edges_come_first_and_two_at_most():
    """Between ditch and bunker: the nearer of the two first, then the boundary."""
    near = edges_near(WHERE, 1, (-8.0, 140.0))

    assert [one.boundary for one in near] == [False, False, True]
    assert near[0].metres <= near[1].metres <= NEAR
    assert "yellow penalty area" in near[0].sentence


@pytest.mark.parametrize(
    ("place", "sentence"),
    [
        ((79.5, 100.0), "0.5 m inside the boundary"),
        ((80.3, 100.0), "0.3 m beyond the boundary"),
        ((-59.0, 20.0), "1.0 m inside the boundary"),
        ((-60.5, 20.0), "0.5 m beyond the boundary"),
    ],
)
def test_the_boundary_is_told_from_either_side(place, sentence):
    """Ground out of bounds inside the outline has a boundary of its own: inside it a ball is beyond the boundary."""
    assert told(place)[-1] == sentence


def test_an_edge_within_the_accuracy_of_the_phone_is_left_to_the_doubt():
    """Known to 2 m only, a ball 0.4 m inside an edge is not said to be inside it."""
    assert told((20.4, 80.0), accuracy=2.0) == ["60 m inside the boundary"]


def test_a_map_without_a_boundary_tells_none():
    """Nothing is known to be out of bounds: no distance is made up."""
    hole = Hole(1, LineString([(0, 0), (0, 200)]), Point(0, 200))
    bare = Course("Bare", LocalPlane(0.0, 50.0), {1: hole}, ())

    assert edges_near(bare, 1, (0.0, 50.0)) == ()


@given(st.floats(-79, 79).map(lambda one: round(one, 2)), st.floats(45, 235).map(lambda one: round(one, 2)))
def test_the_place_of_an_edge_is_as_far_as_it_says(x, y):
    """Wherever a ball lies, each edge's place is that far from it, and the boundary's distance is the true one."""
    near = edges_near(WHERE, 1, (x, y))

    assert all(Point(one.at).distance(Point(x, y)) == pytest.approx(one.metres, abs=1e-6) for one in near)
    true = min(80 - abs(x), y + 30, 240 - y, box(-79, 0, -60, 40).distance(Point(x, y)) or 999)
    if near:
        assert near[-1].metres == pytest.approx(true, abs=1e-6)
