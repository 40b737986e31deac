"""The frame of a drawing has the scale of the decision: the point measured from, the club-lengths, ball and edge."""

from dataclasses import replace
from math import hypot

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point, box

from marram.course.model import Feature, Kind
from marram.relief import Situation, relief_areas
from marram.relief.areas.construction import ArcMark, PointMark, Role
from marram.relief.pictures.view import overview_of, view_of
from marram.relief.pictures.wanted import area_names
from marram.relief.pictures.where_not import not_nearer_arcs, where_not
from tests.relief.ground_for_tests import (
    FREE_GENERAL,
    FREE_GREEN,
    IN_2019,
    IN_2023,
    LINE_2019,
    PLAYER,
    TWO_POINTS,
    course,
    course_at,
)
from tests.relief.test_drawing import CASES, COURSE, areas

SIDE = 390.0


def on_a_path(length: float, ball: float = 0.5):
    path = Feature(Kind.PATH, "path", box(-ball, -length / 2, 3 - ball, length / 2))
    where = course_at((0.0, 2000.0), path)
    (answer,) = relief_areas(
        Situation(where, 1, ball=(0.0, 0.0), played_on=IN_2023, player=PLAYER, condition=path), [FREE_GENERAL]
    )
    return answer.areas


@pytest.mark.parametrize("name", CASES)
def test_a_circle_of_club_lengths_fills_the_frame(name):
    """Whatever is measured in club-lengths spans a fifth of the frame at least, and is wholly in it."""
    view = view_of(areas(name), SIDE)
    circles = [
        mark
        for area in areas(name)
        for mark in area.construction
        if isinstance(mark, ArcMark) and mark.role is Role.CLUB_LENGTHS
    ]

    assert all(view.holds(Point(one.centre).buffer(one.radius)) for one in circles)
    assert all(2 * one.radius > view.size / 5 for one in circles)


@settings(deadline=None, max_examples=15)
@given(st.floats(20, 1500).map(round))
def test_the_length_of_a_path_does_not_change_the_scale(length):
    """A path of 20 m and one of 1500 m are drawn alike: its nearest edge decides, not where it ends."""
    assert view_of(on_a_path(length), SIDE).size == pytest.approx(view_of(on_a_path(40), SIDE).size, rel=0.02)


def test_a_line_that_may_be_chosen_on_for_ever_does_not_change_the_scale():
    """In 2019 the reference point is chosen on a line back to the boundary; the example is drawn, not the line."""
    (answer,) = relief_areas(
        Situation(COURSE, 1, entry=(-10.0, 134.0), played_on=IN_2019, player=PLAYER), [LINE_2019]
    )
    view = view_of(answer.areas, SIDE)

    assert view.size < 12
    assert view.shows((-10.0, 134.0))


def test_a_ball_far_from_the_reference_point_is_left_to_the_overview():
    """In the middle of a field of repair 80 m wide the circle keeps its size; the overview holds ball, point and hole."""
    ground = Feature(Kind.GROUND_UNDER_REPAIR, "field", box(-40, 20, 40, 100))
    where = course(ground)
    (answer,) = relief_areas(
        Situation(where, 1, ball=(1.0, 60.0), played_on=IN_2023, player=PLAYER, condition=ground),
        [FREE_GENERAL],
    )
    (area, *_) = answer.areas
    view, overview = view_of(answer.areas[:1], SIDE), overview_of(answer.areas, SIDE)

    assert hypot(area.reference[0] - 1.0, area.reference[1] - 60.0) > 30
    assert view.size < 20
    assert view.shows(area.reference)
    assert all(overview.shows(one) for one in ((1.0, 60.0), area.reference, area.hole))


def test_the_overview_holds_the_whole_of_the_drawing_where_the_hole_is_near():
    """A ball on a green 5 m from the hole: the frame in the overview is a square, not one stray edge of it."""
    hole = (0.0, 5.5)
    puddle = Feature(Kind.TEMPORARY_WATER, "puddle", Point(0.0, 0.0).buffer(3.0))
    green = Feature(Kind.PUTTING_GREEN, "green", Point(0.0, 0.0).buffer(12.0), (1,))
    (answer,) = relief_areas(
        Situation(
            course_at(hole, puddle, green),
            1,
            ball=(0.0, -1.0),
            played_on=IN_2023,
            player=PLAYER,
            condition=puddle,
        ),
        [FREE_GREEN],
    )
    view = view_of(answer.areas, SIDE)
    overview = overview_of(answer.areas, SIDE, view)

    assert not view.shows(hole)
    assert overview.holds(view.frame)
    assert overview.shows(hole)
    assert not overview_of(answer.areas, SIDE).holds(view.frame)


def test_the_two_points_of_the_alternative_fill_their_frame():
    """The area goes on for 100 m and more; its two points stand a quarter of the frame apart at least."""
    (area,) = areas("two points")
    view = view_of([area], SIDE)
    points = [
        mark.at for mark in area.construction if isinstance(mark, PointMark) and mark.role is not Role.HOLE
    ]
    (x1, y1), (x2, y2) = points

    assert all(view.shows(one) for one in points)
    assert hypot(x1 - x2, y1 - y2) > view.size / 4
    assert area.option is TWO_POINTS


@pytest.mark.parametrize("name", CASES)
def test_where_not_is_the_rest_of_the_circle(name):
    """Relief area and what is hatched share nothing, and make up the circle of the club-lengths together."""
    for area in areas(name):
        rest = where_not(area)
        assert rest.intersection(area.polygon).area == pytest.approx(0, abs=1e-6)
        if area.radius:
            whole = Point(area.reference).buffer(area.radius, quad_segs=512).area
            assert rest.area + area.polygon.area == pytest.approx(whole, rel=0.001, abs=0.011)


def test_the_limit_about_the_hole_is_drawn_for_two_points_too():
    """The arc goes through the ball reference point and past the fairway point, about the hole (E-5)."""
    (area,) = areas("two points")
    (arc,) = not_nearer_arcs(area)

    assert arc.centre == area.hole
    assert arc.radius == pytest.approx(
        hypot(area.reference[0] - area.hole[0], area.reference[1] - area.hole[1])
    )
    assert arc.end > arc.start


@pytest.mark.parametrize(
    ("points", "names"),
    [
        (((-3.0, 0.0), (3.0, 0.0)), ["left of the line", "right of the line"]),
        (((3.0, 1.0), (3.0, -2.0)), ["3.2 m at 72°", "3.6 m at 124°"]),
        (((-2.0, -1.0), (0.0, -3.0)), ["left of the line", "behind"]),
    ],
)
def test_several_areas_of_one_option_are_told_apart(points, names):
    """By the side of the line from the ball to the hole (play goes north); on one side, by distance and bearing."""
    (one, *_) = on_a_path(60)
    several = [replace(one, reference=point) for point in points]

    assert area_names(several) == names
