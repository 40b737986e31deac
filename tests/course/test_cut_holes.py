"""Holes set for a day move the hole: distances and "nearer the hole" are measured from where it is cut."""

from dataclasses import replace

import pytest
from shapely.geometry import Point

from marram.course import load
from marram.course.greens.cut_holes import with_hole_at, with_holes_cut
from marram.course.model import Course, Kind
from marram.demo import COURSE
from marram.relief.place.ground import ground_of
from tests.course.drawing import course, feature, square


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


def drawn() -> Course:
    """A map without a line of play: a green, a green beside, two tees of which one names its hole, two fairways likewise."""
    return replace(
        course(
            feature(Kind.PUTTING_GREEN, square(0, 0, 8), "green"),
            feature(Kind.PUTTING_GREEN, square(40, 0, 8), "beside"),
            feature(Kind.TEEING_AREA, square(0, -300, 4), "tee 4", ref="4"),
            feature(Kind.TEEING_AREA, square(30, -300, 4), "tee"),
            feature(Kind.FAIRWAY, square(0, -100, 20), "fairway"),
            feature(Kind.FAIRWAY, square(0, -200, 20), "fairway 4", holes=(4,)),
        ),
        holes={},
    )


def test_a_hole_without_a_line_of_play_is_where_its_flag_is() -> None:
    """Its green is the one the flag stands on; tees and fairways are its own only where they name it."""
    links = drawn()
    ground = ground_of(with_hole_at(links, 4, links.plane.to_degrees(1.0, 2.0)), 4)

    assert ground.location == pytest.approx((1.0, 2.0), abs=1e-6)
    assert [area.ident for area, _ in ground.green] == ["green"]
    assert [area.ident for area, _ in ground.wrong_greens] == ["beside"]
    assert [area.ident for area, _ in ground.tees] == ["tee 4"]
    assert [area.ident for area, _ in ground.fairways] == ["fairway 4"]


def test_a_flag_on_no_green_leaves_the_hole_without_one() -> None:
    """Beside every green none is taken to be the hole's, and every green is a wrong one."""
    links = drawn()
    ground = ground_of(with_hole_at(links, 7, links.plane.to_degrees(20.0, 0.0)), 7)

    assert not ground.green
    assert {area.ident for area, _ in ground.wrong_greens} == {"green", "beside"}


def test_a_flag_on_the_green_of_a_hole_moves_the_hole_alone() -> None:
    """A hole that the map has keeps its line, its green and its tees; on another green, that green is in use."""
    links = load(COURSE)
    before = links.holes[7]
    green = before.green
    assert green is not None
    at = green.geometry.representative_point()
    moved = with_hole_at(links, 7, links.plane.to_degrees(at.x, at.y)).holes[7]
    assert moved.location.distance(at) == pytest.approx(0, abs=1e-6)
    assert (moved.line, moved.green, moved.tees) == (before.line, green, before.tees)

    other = links.holes[8].green
    assert other is not None
    there = other.geometry.representative_point()
    assert with_hole_at(links, 7, links.plane.to_degrees(there.x, there.y)).holes[7].green is other
