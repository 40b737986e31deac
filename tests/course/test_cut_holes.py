"""Holes set for a day move the hole: distances and "nearer the hole" are measured from where it is cut."""

import pytest
from shapely.geometry import Point

from marram.course import load
from marram.course.greens.cut_holes import with_holes_cut
from marram.demo import COURSE
from marram.relief.place.ground import ground_of


def test_a_hole_is_cut_elsewhere_and_the_others_stay() -> None:
    """Only the hole that was set moves; the map it was made from is as it was."""
    course = load(COURSE)
    before = {number: hole.location for number, hole in course.holes.items()}
    east = Point(before[7].x + 4.0, before[7].y - 2.0)
    moved = with_holes_cut(course, {7: course.plane.to_degrees(east.x, east.y)})

    assert moved.holes[7].location.distance(east) == pytest.approx(0, abs=1e-6)
    assert {n: hole.location for n, hole in moved.holes.items() if n != 7} == {
        n: at for n, at in before.items() if n != 7
    }
    assert course.holes[7].location == before[7]


def test_relief_is_measured_from_where_the_hole_is_cut() -> None:
    """The ground that relief stands on has the hole where it is cut, not where it is mapped."""
    course = load(COURSE)
    at = course.holes[3].location
    moved = with_holes_cut(course, {3: course.plane.to_degrees(at.x, at.y + 5.0)})

    assert ground_of(moved, 3).location == pytest.approx((at.x, at.y + 5.0), abs=1e-6)
    assert ground_of(course, 3).location == pytest.approx((at.x, at.y), abs=1e-6)


def test_a_hole_that_the_map_does_not_have_is_left_out() -> None:
    """Hole locations kept for a longer course do not stop rulings on this one."""
    course = load(COURSE)

    assert with_holes_cut(course, {99: (0.0, 0.0)}) is course
