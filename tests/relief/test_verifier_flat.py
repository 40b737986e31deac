"""The verifier's own plane and ground, against geodesics and against places told by hand."""

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from pyproj import Geod

from tests.relief.verifier.ball_places import ground_of
from tests.relief.verifier.balls import Balls
from tests.relief.verifier.flat import Flat
from tests.relief.verifier.joined import crevices
from tests.relief.verifier.made_maps import COURSES, MAPS, made

GEODESICS = Geod(ellps="WGS84")
"""Karney's geodesics (C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87, 2013), as pyproj has them."""

offsets = st.tuples(st.floats(-1000, 1000), st.floats(-1000, 1000))


@given(st.floats(-170, 170), st.floats(-70, 70), offsets, offsets)
def test_distances_in_the_plane_are_those_along_the_ground(longitude, latitude, one, other):
    """Between places within 1.4 km of the middle a distance is that of the geodesic, to 0.1 mm."""
    flat = Flat(longitude, latitude)
    (x1, y1), (x2, y2) = flat.degrees([one, other])
    _, _, along_the_ground = GEODESICS.inv(x1, y1, x2, y2)
    assert np.hypot(one[0] - other[0], one[1] - other[1]) == pytest.approx(along_the_ground, abs=1e-4)


@given(st.floats(-170, 170), st.floats(-70, 70), offsets)
def test_degrees_and_metres_are_each_others_inverse(longitude, latitude, place):
    """There and back is the same place to a micrometre."""
    flat = Flat(longitude, latitude)
    assert flat.metres(flat.degrees([place]))[0] == pytest.approx(np.array(place), abs=1e-6)


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("made")


def drawn_at(folder, name, hole, x, y):
    """The areas of the course at a place of a made map, told in the metres it was drawn in (before it was turned)."""
    from shapely import Point, affinity

    from tests.relief.verifier.drawn_course import MIDDLE, Drawing

    shift = (700.0, 40.0) if name == "two courses" else (0.0, 0.0)
    turn = Drawing(1, COURSES.get(name, name)).turn
    turned = affinity.translate(affinity.rotate(Point(x, y), turn, origin=(45, 160)), *shift)
    ground = ground_of(made(name, folder), COURSES.get(name), hole)
    return ground.area_at(ground.flat.metres(Flat(*MIDDLE).degrees([turned.coords[0]]))[0])


@pytest.mark.parametrize(
    ("name", "hole", "place", "area"),
    [
        ("seams", 1, (20.0, 122.0), "penalty"),  # on the seam of two polygons of the burn
        ("seams", 1, (22.0, 258.0), "bunker"),  # on the seam of two bunkers
        ("islands", 1, (-4.0, 90.0), "bunker"),  # on the island, in its bunker
        ("islands", 1, (-4.0, 86.5), "general"),  # on the island, in the penalty area's hole
        ("islands", 1, (28.0, 47.0), "general"),  # in the hole of a red area
        ("islands", 1, (26.0, 47.0), "penalty"),
        ("unmarked water", 1, (10.0, 100.0), "penalty"),
        ("unmarked water", 1, (-30.0, 148.6), "penalty"),  # a stream 3 m wide
        ("unmarked water", 1, (10.0, 215.0), "general"),  # a drain in a tunnel
        ("coast", 1, (-60.0, 150.0), "penalty"),  # out at sea, in bounds
        ("coast", 1, (10.0, 150.0), "general"),
        ("coast", 1, (-180.0, 150.0), None),  # beyond the boundary
        ("double greens", 2, (25.0, 180.0), "general"),  # a wrong green
        ("two courses", 1, (16.0, 110.0), "penalty"),
        ("out for one hole", 1, (30.0, 100.0), None),
        ("out for one hole", 2, (30.0, 100.0), "general"),
        ("out for one hole", 2, (65.0, 250.0), None),
        ("tee of the day", 1, (0.0, 0.0), "tee"),
        ("tee of the day", 1, (0.0, 3.0), "general"),  # mown tee behind today's
    ],
)
def test_ground_of_made_maps(folder, name, hole, place, area):
    """Places told by hand lie where the drawing of the map has them."""
    assert drawn_at(folder, name, hole, *place) == {area}


@pytest.mark.parametrize("name", MAPS)
def test_same_seed_same_balls(folder, name):
    """The balls of a map depend on its seed alone, and every kind of place that it holds is among them."""
    file = made(name, folder)
    one, other = (list(Balls(file, COURSES.get(name), seed=3).questions(12)) for _ in range(2))
    assert one == other
    assert len({question.sort for question in one}) >= 6


def test_only_what_is_too_narrow_between_two_areas_is_a_crevice():
    """15 mm of ground between two areas are one, 30 mm are not, and a notch in one area never is."""
    one, near, far = shapely.box(0, 0, 5, 5), shapely.box(5.015, 0, 9, 5), shapely.box(5.03, 0, 9, 5)
    assert crevices([one, near]).area == pytest.approx(0.015 * 5, rel=0.05)
    assert crevices([one, far]).is_empty
    notched = one.difference(shapely.box(2, 1, 2.015, 5))
    assert crevices([notched, far]).is_empty
