"""The nearest point of complete relief, against closed forms, brute force and the original shapes."""

from math import cos, hypot, pi, sin, sqrt

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity
from shapely.geometry import Point, Polygon, box

from marram.relief.geometry.limits import Inside, Outside
from marram.relief.geometry.outline import Outline
from marram.relief.geometry.outlines import Outlines
from marram.relief.interference.convex_pieces import convex_pieces
from marram.relief.interference.interference import FootprintOn
from marram.relief.interference.line_of_play import LineOfPlayOn
from marram.relief.interference.nearest_point import nearest_point
from marram.relief.interference.shape import Footprint
from marram.relief.interference.usual_footprint import footprint

SQUARE = Footprint.of(box(-0.5, -0.5, 0.5, 0.5))
FAR_AHEAD = (0.0, 1000.0)


def look(obstruction, shape, ball, hole, domain=()):
    obstructions = obstruction if isinstance(obstruction, tuple) else (obstruction,)
    return nearest_point(
        ball, [FootprintOn(tuple(Outline(one) for one in obstructions), shape)], hole, domain
    )


def test_off_a_straight_path_it_is_half_a_footprint_beside_the_edge():
    """A square of side 1 clears the edge of a path at half a metre: ball 1 m inside, 1.5 m to go."""
    found = look(box(-1, -100, 9, 100), SQUARE, (0.0, 0.0), (-1000.0, 0.0))

    # The hole lies across the near edge, so that way is nearer the hole; the far edge is 9 m + 0.5 m away.
    assert found.points == ((pytest.approx(9.5), pytest.approx(0.0)),)


def test_towards_the_near_edge_when_that_is_not_nearer_the_hole():
    """With the hole on the other side the near edge is taken: 1 m + 0.5 m."""
    found = look(box(-1, -100, 9, 100), SQUARE, (0.0, 0.0), (1000.0, 0.0))

    assert found.points == ((pytest.approx(-1.5), pytest.approx(0.0)),)
    assert found.metres == pytest.approx(1.5)


def test_the_circle_about_the_hole_limits_a_way_that_would_come_nearer():
    """Where the near edge lies towards the hole, the way out leads along the circle about the hole.

    Obstruction x <= 1, ball (0.5, 0), hole (10, 0): clear places have x >= 1.5, and those on the circle of
    radius 9.5 have y = ±sqrt(9.5² - 8.5²) = ±sqrt(18). Both are equally near.
    """
    found = look(box(-50, -50, 1, 50), SQUARE, (0.5, 0.0), (10.0, 0.0))

    assert sorted(found.points) == [
        (pytest.approx(1.5), pytest.approx(-sqrt(18))),
        (pytest.approx(1.5), pytest.approx(sqrt(18))),
    ]
    assert found.metres == pytest.approx(sqrt(19))


def test_a_corner_is_rounded_by_nothing():
    """At the corner of an obstruction the clear places end in straight lines: the diagonal is not a way out."""
    found = look(box(-5, -5, 0.2, 0.3), SQUARE, (0.0, 0.0), (-1000.0, -900.0))

    assert found.points == ((pytest.approx(0.7), pytest.approx(0.0)),)


def test_where_nothing_interferes_the_ball_is_its_own_nearest_point():
    """A ball clear of the obstruction has 0 m to go."""
    assert look(box(5, 5, 6, 6), SQUARE, (0.0, 0.0), FAR_AHEAD).metres == 0


def test_touching_is_not_interference():
    """A footprint whose edge lies on the edge of the condition does not overlap it."""
    assert look(box(0.5, -5, 6, 6), SQUARE, (0.0, 0.0), FAR_AHEAD).metres == 0


def test_inside_a_large_condition_with_no_edge_near_it_interferes():
    """A footprint wholly inside a condition meets no edge, and still interferes."""
    found = look(box(-40, -40, 40, 40), SQUARE, (1.0, 0.0), (-1000.0, 0.0))

    assert found.points == ((pytest.approx(40.5), pytest.approx(0.0)),)


def test_a_condition_with_a_hole_may_be_clear_inside():
    """Inside a ring-shaped condition there is room, if the footprint fits."""
    ring = box(-10, -10, 10, 10).difference(box(-2, -2, 2, 2))
    found = look(ring, SQUARE, (2.5, 0.0), (1000.0, 0.0))

    assert found.points == ((pytest.approx(1.5), pytest.approx(0.0)),)


def test_several_conditions_are_cleared_at_once():
    """Between two paths 0.9 m apart a footprint of 1 m does not fit."""
    paths = (box(-3, -50, 0, 50), box(0.9, -50, 4, 50))
    found = look(paths, SQUARE, (-0.2, 0.0), (-0.2, 1000.0))

    assert found.points[0][0] == pytest.approx(-3.5)


def test_a_right_handed_player_clears_the_near_edge_of_a_path_on_the_left_with_the_stance():
    """Play north, ball near a path's west edge: right-handed, the feet go west and off the path first.

    The ball has only to clear the edge by its radius, as lie and low swing are narrower than the way.
    """
    shape = footprint(right_handed=True, direction=pi / 2)
    found = look(box(0, -50, 3, 50), shape, (0.5, 0.0), (0.5, 1000.0))
    widest = shapely.bounds(shape.area)[2]

    assert found.points[0][0] == pytest.approx(-widest)


def test_a_left_handed_player_mirrors_a_right_handed_one():
    """Mirroring path, ball and player mirrors the answer."""
    right = look(box(0, -50, 3, 50), footprint(right_handed=True, direction=pi / 2), (0.5, 0.0), (0.5, 1e4))
    left = look(
        box(-3, -50, 0, 50), footprint(right_handed=False, direction=pi / 2), (-0.5, 0.0), (-0.5, 1e4)
    )

    assert left.points[0][0] == pytest.approx(-right.points[0][0])


def test_the_corner_of_a_condition_may_touch_the_bottom_of_a_dent():
    """A footprint with a notch slips over a corner of the condition until the corner touches its bottom.

    The condition is a wedge pointing north with its tip at (0, 0.5), sides falling 2 for 1; the notch under the
    ball opens southward 1 for 1, with its bottom at the ball's spot. So the ball must go 0.5 m north, where tip
    and bottom touch. The pieces the footprint is cut into meet just there.
    """
    wedge = Polygon([(0, 0.5), (-2.25, -4), (2.25, -4)])
    notched = Polygon([(0, 0), (0.4, -0.4), (0.4, 0.3), (-0.4, 0.3), (-0.4, -0.4)])
    found = look(wedge, Footprint.of(notched), (0.0, 0.0), (0.0, -500.0))

    assert found.points == ((pytest.approx(0.0), pytest.approx(0.5)),)


def test_the_required_area_of_the_course_bounds_it():
    """A clear place in a bunker is passed over when the point must be outside it."""
    bunker = Outline(box(-6, -100, -1, 100))
    path = box(-1, -100, 1, 100)
    free = look(path, SQUARE, (-0.5, 0.0), (-0.5, 1000.0))
    outside = look(path, SQUARE, (-0.5, 0.0), (-0.5, 1000.0), [Outside(Outlines((bunker,)))])

    assert free.points[0][0] == pytest.approx(-1.5)
    assert outside.points[0][0] == pytest.approx(1.5)


def test_in_a_bunker_without_room_there_is_none():
    """Where water fills the bunker there is no point of complete relief in it."""
    sand = Outline(box(-3, -3, 3, 3))

    assert look(box(-4, -4, 4, 4), SQUARE, (0.0, 0.0), FAR_AHEAD, [Inside(Outlines((sand,)))]) is None


def test_on_the_green_water_on_the_line_of_play_is_cleared_too():
    """A puddle between ball and hole is cleared where the straight line just passes its outermost corner.

    Puddle 1 <= y <= 2, |x| <= 1, hole (0, 10), ball (0.2, -5). Seen from the hole the corner (1, 2) is the
    outermost, so the clear places begin at the ray from the hole along (1, -8). Going square to that ray
    would come nearer the hole; the answer is where the ray meets the circle about the hole through the ball.
    """
    puddle = Outline(box(-1, 1, 1, 2))
    ball, hole = (0.2, -5.0), (0.0, 10.0)
    lie = Footprint.of(Point(0, 0).buffer(0.021, quad_segs=4))
    found = nearest_point(ball, [FootprintOn((puddle,), lie), LineOfPlayOn((puddle,), hole)], hole)
    apart = hypot(0.2, 15.0)

    assert found.points == ((pytest.approx(apart / sqrt(65)), pytest.approx(10 - 8 * apart / sqrt(65))),)


@st.composite
def star(draw, corners, low, high):
    """A star-shaped polygon around (0, 0): simple by construction, dented where radii differ."""
    count = draw(st.integers(*corners))
    radii = [draw(st.floats(low, high)) for _ in range(count)]
    turn = draw(st.floats(0, 2 * pi))
    points = [
        (radius * cos(turn + 2 * pi * i / count), radius * sin(turn + 2 * pi * i / count))
        for i, radius in enumerate(radii)
    ]
    return Polygon(points)


@settings(max_examples=40, deadline=None)
@given(
    star((3, 9), 1.0, 3.0),
    star((3, 8), 0.4, 1.2),
    st.lists(st.tuples(st.floats(-4, 4), st.floats(-4, 4)), max_size=2),
    st.floats(0, 2 * pi),
)
def test_against_a_grid_and_the_original_shapes(obstruction, shape, others, angle):
    """No place of an 8 cm grid is permitted and nearer; the answer itself overlaps nothing.

    Dented obstructions and footprints, one to three obstructions. Overlap is measured with shapely on the
    original shapes, not with the construction under test.
    """
    obstructions = [
        obstruction,
        *(affinity.translate(affinity.scale(obstruction, 0.3, 0.3), *at) for at in others),
    ]
    hole = (60 * cos(angle), 60 * sin(angle))
    found = look(tuple(obstructions), Footprint.of(shape), (0.0, 0.0), hole)
    everything = shapely.union_all(obstructions)

    for x, y in found.points:
        placed = affinity.translate(shape, x, y)
        assert placed.intersection(everything).area < 1e-8
        assert hypot(x - hole[0], y - hole[1]) >= 60 - 1e-3

    step = np.arange(-found.metres, found.metres, 0.08)
    x, y = (one.ravel() for one in np.meshgrid(step, step))
    nearer = (np.hypot(x, y) < found.metres - 1e-6) & (np.hypot(x - hole[0], y - hole[1]) >= 60)
    points = shapely.get_coordinates(shape)
    placed = shapely.polygons(np.column_stack([x, y])[nearer][:, None, :] + points[None])
    shapely.prepare(everything)
    assert (shapely.area(shapely.intersection(placed, everything)) > 0).all()


@settings(max_examples=60, deadline=None)
@given(star((5, 12), 0.2, 1.5))
def test_nothing_slips_between_the_pieces_of_a_dented_footprint(shape):
    """A condition as thin as rounding errors, along a cut through the footprint, interferes all the same."""
    dented = Footprint.of(shape)
    for cut in dented.cuts:
        start, end = cut.corners
        along = (end - start) / hypot(*(end - start))
        across = 1e-11 * np.array((along[1], -along[0]))
        needle = Polygon([start + across, end + across, end - across, start - across])
        assert FootprintOn((Outline(needle),), dented).overlaps((0.0, 0.0))


@settings(max_examples=60, deadline=None)
@given(star((3, 14), 0.2, 1.5))
def test_convex_pieces_make_up_the_whole(shape):
    """The pieces are convex, do not overlap, and their areas add up."""
    points = shapely.get_coordinates(shapely.geometry.polygon.orient(shape).exterior)[:-1]
    pieces = [Polygon(one) for one in convex_pieces(points)]

    assert sum(one.area for one in pieces) == pytest.approx(shape.area)
    assert all(one.convex_hull.area == pytest.approx(one.area) for one in pieces)
    assert shapely.union_all(pieces).area == pytest.approx(shape.area)


@settings(max_examples=30, deadline=None)
@given(
    radius=st.floats(0.5, 8),
    corners=st.integers(3, 40),
    turn=st.floats(0, 6.3),
    away=st.floats(0.1, 20),
    bearing=st.floats(0, 6.3),
)
def test_water_about_the_hole_leaves_no_line_of_play_clear(radius, corners, turn, away, bearing):
    """Every line to a hole that lies in water runs over it: no place is clear, not even on the ray through a corner."""
    hole = (0.0, 0.0)
    ball = (away * cos(bearing), away * sin(bearing))
    ring = [
        (radius * cos(turn + 2 * pi * i / corners), radius * sin(turn + 2 * pi * i / corners))
        for i in range(corners)
    ]
    water = Outline(shapely.Polygon(ring))

    assert nearest_point(ball, [LineOfPlayOn((water,), hole)], hole, farthest=60.0) is None


@settings(max_examples=30, deadline=None)
@given(
    middle=st.tuples(st.floats(-6, 6), st.floats(2.5, 9)),
    half=st.tuples(st.floats(0.2, 2), st.floats(0.2, 2)),
    ball=st.tuples(st.floats(-8, 8), st.floats(5, 20)),
)
def test_the_line_of_play_from_a_place_found_runs_over_no_water(middle, half, ball):
    """The water shrunk by a tenth of a millimetre meets no line from the place found to the hole."""
    x, y = middle
    water = shapely.box(x - half[0], y - half[1], x + half[0], y + half[1])
    found = nearest_point(ball, [LineOfPlayOn((Outline(water),), (0.0, 0.0))], (0.0, 0.0), farthest=60.0)

    assert found is not None
    for place in found.points:
        assert not shapely.LineString([place, (0.0, 0.0)]).intersects(water.buffer(-1e-4))
