"""Distances: against geodesics on the ellipsoid, and closed forms."""

import math

import pytest
from geographiclib.geodesic import Geodesic
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point

from marram.course.distances import (
    distance_to_hole,
    farthest_from_hole,
    in_club_lengths,
    is_nearer_hole,
    within_club_lengths,
)
from marram.errors import BadPlace
from tests.course.drawing import course, hole

LINKS = course(holes=[hole(cup=(300.0, 400.0))])
near = st.floats(-1500, 1500)


@settings(deadline=None)
@given(x=near, y=near)
def test_the_distance_to_the_hole_is_the_geodesic(x, y) -> None:
    """To a millimetre, against Karney's geodesic (geographiclib)."""
    place, cup = LINKS.plane.to_degrees(x, y), LINKS.plane.to_degrees(300, 400)
    geodesic = Geodesic.WGS84.Inverse(place[1], place[0], cup[1], cup[0])["s12"]
    assert distance_to_hole(LINKS, (x, y), 1) == pytest.approx(geodesic, abs=1e-3)


def test_a_distance_by_pythagoras() -> None:
    """From the middle of the plane to (300, 400) are 500 m."""
    assert distance_to_hole(LINKS, Point(0, 0), 1) == pytest.approx(500)


def test_which_ball_is_farther() -> None:
    """Rule 6.4b(1): the ball farther from the hole plays first; how much farther is told."""
    order = farthest_from_hole(LINKS, [(300, 390), (300, 388), (300, 395)], 1)
    assert order.farthest == 1
    assert order.margin == pytest.approx(2)
    assert order.distances == pytest.approx((10, 12, 5))


@pytest.mark.parametrize(("accuracy", "farthest"), [(0.0, 1), (0.9, 1), (1.0, None), (3.0, None)])
def test_accuracy_can_leave_open_which_is_farther(accuracy, farthest) -> None:
    """Two distances 2 m apart, each off by as much as the accuracy, can change places from 1 m on."""
    assert farthest_from_hole(LINKS, [(300, 390), (300, 388)], 1, accuracy=accuracy).farthest == farthest


def test_equal_distances_are_left_open() -> None:
    """Balls as far as each other: neither is farther."""
    assert farthest_from_hole(LINKS, [(290, 400), (300, 390)], 1).farthest is None


def test_one_ball_is_not_farther_than_none() -> None:
    """Fewer than two balls are refused."""
    with pytest.raises(BadPlace, match="at least two"):
        farthest_from_hole(LINKS, [(0, 0)], 1)


@settings(deadline=None)
@given(bearing=st.floats(0, 2 * math.pi), r=st.floats(1, 400))
def test_the_same_distance_is_not_nearer(bearing, r) -> None:
    """A place on the arc through the reference point is not nearer the hole; a centimetre inside it is."""

    def at(radius):
        return 300 + radius * math.cos(bearing), 400 + radius * math.sin(bearing)

    assert not is_nearer_hole(LINKS, at(r), (300 + r, 400), 1)
    assert is_nearer_hole(LINKS, at(r - 0.01), (300 + r, 400), 1)


def test_within_club_lengths() -> None:
    """Two club-lengths of a 1.143 m club are 2.286 m; the limit itself is within."""
    assert within_club_lengths((2.286, 0), (0, 0), 2, 1.143)
    assert not within_club_lengths((2.287, 0), (0, 0), 2, 1.143)
    assert in_club_lengths(2.286, 1.143) == pytest.approx(2)


@pytest.mark.parametrize(("club_lengths", "club"), [(0, 1.1), (2, 0), (2, -1), (math.nan, 1), (2, math.inf)])
def test_club_lengths_that_are_none_are_refused(club_lengths, club) -> None:
    """Numbers that measure nothing are errors."""
    with pytest.raises(BadPlace, match="positive"):
        within_club_lengths((0, 0), (0, 0), club_lengths, club)
    with pytest.raises(BadPlace, match="positive"):
        in_club_lengths(1.0, 0)


def test_a_place_that_is_none_is_refused() -> None:
    """A place needs two finite numbers."""
    with pytest.raises(BadPlace, match="finite"):
        distance_to_hole(LINKS, (math.nan, 0), 1)
