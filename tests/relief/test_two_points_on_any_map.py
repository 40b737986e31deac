"""The alternative to stroke and distance on maps with and without a boundary, and with things mapped over each other.

The Local Rule (Committee Procedures, Section 8, Model Local Rule E-5, 2019 and 2023) calls fairway any grass in
the general area cut to fairway height or less, and takes for a ball out of bounds the point where it last crossed
the edge of the course.
"""

from dataclasses import replace
from math import hypot

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, box

from marram.course.model import Course, Feature, Hole, Kind
from marram.course.plane import LocalPlane
from marram.errors import BadPlace
from marram.relief import Bound, Drawn, NeedsPlace, Place, Situation, relief_areas
from marram.relief.geometry.tolerance import TOLERANCE
from tests.relief.ground_for_tests import FAIRWAY, HOLE, IN_2019, IN_2023, PLAYER, TWO_POINTS, course

LONG = box(-20, -900, 20, 150)
WIDTH = 2 * PLAYER.club_length


def hole_with(*features):
    """A hole played north to (0, 200) on a map that holds nothing but these features."""
    line = LineString([(0, -900), HOLE])
    return Course("Made Links", LocalPlane(0.0, 50.0), {1: Hole(1, line, Point(HOLE))}, features)


def fairway(shape=LONG):
    return Feature(Kind.FAIRWAY, "fairway", shape, holes=(1,))


def draw(where, ball, played_on=IN_2023, **more):
    situation = Situation(where, 1, ball=ball, played_on=played_on, player=PLAYER, **more)
    (answer,) = relief_areas(situation, [TWO_POINTS])
    return answer


def fairway_point(area):
    return next(one.at for one in area.construction if one.role.value == "fairway_point")


@pytest.mark.parametrize("played_on", [IN_2019, IN_2023])
@pytest.mark.parametrize("away", [100.0, 399.0, 401.0, 650.0, 1000.0])
def test_without_a_boundary_the_area_is_whole_at_any_distance_and_says_where_the_drawing_ends(
    away, played_on
):
    """A ball however far from the hole gets a valid area at least 300 m deep, and is told that it goes on."""
    answer = draw(hole_with(fairway()), (40.0, 200.0 - away), played_on)

    (area,) = answer.areas
    assert area.polygon.is_valid
    assert area.area_m2 > 20 * 300
    assert "relief.goes_on_beyond_the_drawing" in area.assumed
    behind = (40.0 * 1.2, 200.0 - 1.2 * away)
    assert area.contains(*behind).inside
    assert area.polygon.distance(Point(behind)) == 0


def test_with_a_boundary_the_area_ends_at_it_and_nothing_is_said():
    """The boundary is a limit of the Rules, not of the drawing."""
    (area,) = draw(course(), (40.0, 110.0)).areas

    assert "relief.goes_on_beyond_the_drawing" not in area.assumed
    assert box(-80, -30, 80, 240).buffer(1e-9).covers(area.polygon)
    assert area.polygon.distance(LineString([(-80, -30), (80, -30)])) == pytest.approx(0.0, abs=1e-9)


def test_for_a_ball_out_of_bounds_where_it_crossed_the_boundary_is_asked():
    """The spot where a ball lies out of bounds is no reference point."""
    assert draw(course(), (95.0, 100.0)) == NeedsPlace(TWO_POINTS, (Place.BOUNDARY_POINT,))


def test_the_area_of_a_ball_out_of_bounds_hangs_on_where_it_crossed_the_boundary():
    """A crossing marked two metres off is moved onto the edge, said, and is the reference point."""
    (area,) = draw(course(), (95.0, 100.0), boundary_point=(82.0, 90.0)).areas

    assert area.reference == (80.0, 90.0)
    assert "relief.boundary_point_moved_onto_edge" in area.assumed
    least = hypot(80.0, 110.0)
    assert all(one.radius == least for one in area.limits if one.bound is Bound.NOT_NEARER)


def test_a_crossing_far_from_every_boundary_is_refused():
    """A crossing in the middle of the course cannot be meant."""
    with pytest.raises(BadPlace, match="80 m from every boundary"):
        draw(course(), (95.0, 100.0), boundary_point=(0.0, 50.0))


def test_a_ball_lost_on_the_course_does_not_ask_for_the_boundary():
    """A crossing of the boundary given for a ball on the course changes nothing."""
    with_it = draw(course(), (40.0, 110.0), boundary_point=(80.0, 110.0)).areas[0]

    assert with_it.reference == (40.0, 110.0)


@pytest.mark.parametrize(
    ("kind", "name"),
    [
        (Kind.BUNKER, "bunker"),
        (Kind.RED_PENALTY_AREA, "pond"),
        (Kind.OUT_OF_BOUNDS, "out"),
        (Kind.YELLOW_PENALTY_AREA, "burn"),
        (Kind.PUTTING_GREEN, "practice green"),
    ],
)
def test_the_fairway_point_never_lies_in_what_is_mapped_over_by_the_fairway(kind, name):
    """Sand, water or out of bounds along the fairway's edge moves the point to the grass beside it."""
    over = box(5, 60, 25, 120)
    plain = fairway_point(draw(hole_with(fairway()), (40.0, 90.0)).areas[0])
    moved = fairway_point(draw(hole_with(fairway(), Feature(kind, name, over)), (40.0, 90.0)).areas[0])

    assert over.contains(Point(plain).buffer(0.5).intersection(LONG))
    assert not over.buffer(-1e-6).intersects(Point(moved))
    assert LONG.covers(Point(moved).buffer(1e-9).centroid)
    assert hypot(moved[0], moved[1] - 200) >= hypot(40, 110) - TOLERANCE


def test_a_fairway_beyond_the_boundary_is_not_on_the_course():
    """The fairway of a map drawn across the boundary counts only as far as the course goes."""
    edge = Feature(Kind.BOUNDARY, "edge", box(-30, -1000, 10, 300))
    point = fairway_point(
        draw(hole_with(fairway(), edge), (60.0, 90.0), boundary_point=(10.0, 90.0)).areas[0]
    )

    assert point[0] <= 10 + 1e-9


def test_a_ball_in_a_bunker_mapped_over_by_the_fairway_is_not_on_the_fairway():
    """Its fairway point is beside the bunker."""
    sand = Feature(Kind.BUNKER, "sand", box(-5, 60, 5, 90))
    (area,) = draw(hole_with(fairway(), sand), (0.0, 70.0)).areas

    assert fairway_point(area) in {(-5.0, 70.0), (5.0, 70.0), (0.0, 60.0)}


@st.composite
def made_maps(draw_one):
    """A fairway with sand and water over it anywhere, with or without a boundary, and a ball anywhere."""
    number = st.floats(-60, 60).map(lambda one: round(one, 2))
    features = [fairway(FAIRWAY if draw_one(st.booleans()) else LONG)]
    for index in range(draw_one(st.integers(0, 4))):
        x, y = draw_one(number), 90 + 2 * draw_one(number)
        wide, high = draw_one(st.floats(0.5, 40)), draw_one(st.floats(0.5, 40))
        kind = draw_one(
            st.sampled_from([Kind.BUNKER, Kind.RED_PENALTY_AREA, Kind.OUT_OF_BOUNDS, Kind.PUTTING_GREEN])
        )
        features.append(Feature(kind, f"{kind.value} {index}", box(x, y, x + wide, y + high)))
    if draw_one(st.booleans()):
        features.append(Feature(Kind.BOUNDARY, "edge", box(-70, -1000, 70, 260)))
    away = draw_one(st.one_of(st.floats(1, 200), st.floats(200, 1200)))
    return hole_with(*features), (draw_one(number), 200.0 - away)


@settings(deadline=None)
@given(made_maps())
def test_every_area_is_valid_and_its_points_obey_the_local_rule(made):
    """The drawing is valid, never empty, in the general area and not nearer; so is the fairway point."""
    where, ball = made
    answer = draw(where, ball)
    if not isinstance(answer, Drawn):
        return
    (area,) = answer.areas
    least = hypot(ball[0] - HOLE[0], ball[1] - HOLE[1])
    assert area.polygon.is_valid
    assert area.area_m2 > 0
    assert area.polygon.distance(Point(HOLE)) >= least - TOLERANCE
    point = Point(fairway_point(area))
    for feature in where.features:
        inside = point.within(feature.geometry) and point.distance(feature.geometry.boundary) > TOLERANCE
        if feature.kind in {Kind.BUNKER, Kind.RED_PENALTY_AREA, Kind.OUT_OF_BOUNDS}:
            assert not inside
            assert area.polygon.intersection(feature.geometry).area < 1e-6
        if feature.kind is Kind.BOUNDARY:
            assert feature.geometry.distance(point) < TOLERANCE
    assert hypot(point.x - HOLE[0], point.y - HOLE[1]) >= least - TOLERANCE


def test_the_class_of_the_option_does_not_change_with_the_reach():
    """An option of three club-lengths is three wide, however far it is drawn."""
    wide = replace(TWO_POINTS, club_lengths=3)
    (answer,) = relief_areas(
        Situation(hole_with(fairway()), 1, ball=(0.0, -500.0), played_on=IN_2023, player=PLAYER), [wide]
    )

    assert answer.areas[0].contains(3 * PLAYER.club_length - 0.01, -510.0).inside
    assert not answer.areas[0].contains(3 * PLAYER.club_length + 0.01, -510.0).inside
