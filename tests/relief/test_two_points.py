"""The alternative to stroke and distance (Model Local Rule E-5), against half-planes and circles."""

from math import hypot

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, box

from marram.relief import Bound, NoRelief, Situation, Why, relief_areas
from marram.relief.constructions.two_points import nearest_not_nearer
from marram.relief.geometry.outline import Outline
from tests.relief.ground_for_tests import FAIRWAY, HOLE, IN_2019, IN_2023, PLAYER, TWO_POINTS, course

WIDTH = 2 * PLAYER.club_length


def draw(ball, played_on=IN_2023):
    (answer,) = relief_areas(
        Situation(course(), 1, ball=ball, played_on=played_on, player=PLAYER), [TWO_POINTS]
    )
    return answer


def fairway_point(area):
    return next(one.at for one in area.construction if one.role.value == "fairway_point")


def test_the_fairway_point_is_where_the_circle_about_the_hole_meets_the_fairway():
    """For a ball level with the fairway, its nearest point not nearer the hole lies on the circle or beyond."""
    area = draw((40.0, 110.0)).areas[0]
    x, y = fairway_point(area)

    # The fairway's edge is x = 15; the circle about (0, 200) through (40, 110) meets it at this height.
    assert (x, y) == (15.0, pytest.approx(200 - (40**2 + 90**2 - 15**2) ** 0.5))


def test_it_is_two_club_lengths_wider_than_the_lines_on_either_side():
    """Places just within and just beyond two club-lengths outside each line are in and out."""
    ball = (40.0, 110.0)
    area = draw(ball).areas[0]
    for through, side in ((ball, -1.0), (fairway_point(area), 1.0)):
        length = hypot(through[0] - HOLE[0], through[1] - HOLE[1])
        along = ((through[0] - HOLE[0]) / length, (through[1] - HOLE[1]) / length)
        outward = (side * along[1], -side * along[0])
        far = length + 8.0
        for width, expected in ((WIDTH - 0.01, True), (WIDTH + 0.01, False)):
            place = (
                HOLE[0] + far * along[0] + width * outward[0],
                HOLE[1] + far * along[1] + width * outward[1],
            )

            assert area.contains(*place).inside is expected, (through, width)


def test_it_is_not_nearer_the_hole_than_the_ball_point_and_goes_back_without_end():
    """Between the lines everything farther from the hole than the ball reference point is in."""
    area = draw((40.0, 110.0)).areas[0]

    assert area.contains(30.0, 105.0).inside
    assert area.contains(45.0, 10.0).inside
    assert [one.bound for one in area.contains(20.0, 135.0).failures].count(Bound.NOT_NEARER) == 1


def test_a_place_on_the_far_side_of_the_hole_is_outside():
    """The lines start at the hole: places behind it belong to no corridor."""
    area = draw((1.0, 110.0)).areas[0]

    assert not area.contains(0.0, 200.0 + 120.0).inside


def test_it_stays_in_the_general_area():
    """The pond between the lines is left out of the area."""
    area = draw((40.0, 110.0)).areas[0]

    assert [one.bound for one in area.contains(40.0, 90.0).failures] == [Bound.AREA]


def test_a_ball_on_the_fairway_has_one_line():
    """A ball lost on the fairway: both points are one, and the area two club-lengths to either side."""
    area = draw((0.0, 80.0)).areas[0]

    assert area.contains(WIDTH - 0.01, 60.0).inside
    assert area.contains(-WIDTH + 0.01, 60.0).inside
    assert not area.contains(WIDTH + 0.01, 60.0).inside


def test_short_of_the_fairway_the_teeing_area_will_do():
    """No part of the fairway is as far from the hole as a ball lost just off the tee: the tee is used, and said."""
    area = draw((30.0, 5.0)).areas[0]

    assert "relief.teeing_area_used_as_fairway" in area.assumed
    assert fairway_point(area) == (pytest.approx(5.0), pytest.approx(200 - (30**2 + 195**2 - 25) ** 0.5))


def test_behind_everything_there_is_no_fairway_point():
    """A ball lost behind the tee, farther from the hole than any short grass, gives no area."""
    assert draw((0.0, -20.0)) == NoRelief(TWO_POINTS, Why.NO_FAIRWAY_POINT)


def test_both_editions_draw_the_same():
    """The text of the Local Rule did not change in 2023."""
    before, since = draw((40.0, 110.0), IN_2019).areas[0], draw((40.0, 110.0)).areas[0]

    assert before.construction == since.construction
    assert before.area_m2 == since.area_m2


@settings(deadline=None)
@given(st.floats(-70, 70), st.floats(-20, 150))
def test_the_nearest_fairway_point_agrees_with_sampling(x, y):
    """No sampled point of the fairway not nearer the hole is nearer to the ball than the point found."""
    found = nearest_not_nearer([Outline(FAIRWAY)], (x, y), HOLE)
    apart = hypot(x - HOLE[0], y - HOLE[1])
    ring = LineString(FAIRWAY.exterior.coords)
    sampled = [ring.interpolate(step * 0.25) for step in range(int(ring.length / 0.25) + 1)]
    allowed = [one for one in sampled if hypot(one.x - HOLE[0], one.y - HOLE[1]) >= apart]
    if found is None:
        assert not allowed
        return
    assert hypot(found[0] - HOLE[0], found[1] - HOLE[1]) >= apart - 1e-9
    assert FAIRWAY.distance(Point(found)) < 1e-9
    if not FAIRWAY.covers(Point(x, y)):
        least = min((hypot(one.x - x, one.y - y) for one in allowed), default=float("inf"))
        assert hypot(found[0] - x, found[1] - y) <= least + 1e-9


def test_a_square_fairway_gives_its_corner():
    """For a ball diagonally off a corner and level beyond it, the corner is the nearest point."""
    corner = nearest_not_nearer([Outline(box(0, 0, 10, 10))], (14.0, 14.0), (0.0, 100.0))

    assert corner == (10.0, 10.0)
