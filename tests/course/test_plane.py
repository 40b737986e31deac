"""The local plane against geodesics on the ellipsoid (Karney 2013, by geographiclib and by PROJ)."""

import math

import pytest
from geographiclib.geodesic import Geodesic
from hypothesis import given, settings
from hypothesis import strategies as st
from pyproj import Geod
from shapely.geometry import LineString, Point

from marram.course.plane import LocalPlane

WGS84 = Geodesic.WGS84
near = st.floats(-2000, 2000)
latitudes = st.floats(-70, 70)


@settings(max_examples=40, deadline=None)
@given(latitude=latitudes, x=near, y=near)
def test_distance_and_bearing_from_the_centre_are_the_geodesic(latitude, x, y) -> None:
    """From the centre, distance and bearing in the plane are those of the geodesic: azimuthal equidistant.

    Within a millimetre of the centre PROJ answers with the centre itself.
    """
    plane = LocalPlane(1.5, latitude)
    longitude, north = plane.to_degrees(x, y)
    geodesic = WGS84.Inverse(latitude, 1.5, north, longitude)
    assert geodesic["s12"] == pytest.approx(math.hypot(x, y), abs=1e-6 if math.hypot(x, y) > 1e-3 else 1e-3)
    if math.hypot(x, y) > 1:
        turn = math.remainder(math.radians(geodesic["azi1"]) - math.atan2(x, y), 2 * math.pi)
        assert abs(turn) < 1e-6


@settings(max_examples=40, deadline=None)
@given(latitude=latitudes, x=near, y=near, u=near, v=near)
def test_a_distance_within_2_km_of_the_centre_is_off_by_at_most_a_millimetre(latitude, x, y, u, v) -> None:
    """Plane distance and geodesic differ by no more than 1 mm anywhere within 2 km (x and y) of the centre."""
    plane = LocalPlane(-2.8, latitude)
    a, b = plane.to_degrees(x, y), plane.to_degrees(u, v)
    geodesic = WGS84.Inverse(a[1], a[0], b[1], b[0])["s12"]
    assert math.hypot(x - u, y - v) == pytest.approx(geodesic, abs=1e-3)


@settings(max_examples=40, deadline=None)
@given(latitude=latitudes, bearing=st.floats(0, 360), r=st.floats(100, 3000))
def test_the_scale_error_stays_below_the_stated_bound(latitude, bearing, r) -> None:
    """Across the radius the scale is too great by at most (r / R)² / 6, the bound of the docstring."""
    plane = LocalPlane(0.0, latitude)
    x, y = r * math.sin(math.radians(bearing)), r * math.cos(math.radians(bearing))
    across = 10.0
    ux, uy = across * y / r, -across * x / r
    a, b = plane.to_degrees(x - ux / 2, y - uy / 2), plane.to_degrees(x + ux / 2, y + uy / 2)
    _, _, geodesic = Geod(ellps="WGS84").inv(*a, *b)
    # 6,335 km is the least radius of curvature of WGS 84 (along the meridian at the equator).
    bound = (r / 6_335_000) ** 2 / 6
    assert abs(across / geodesic - 1) <= bound * 1.05 + 2e-9


@settings(max_examples=40, deadline=None)
@given(latitude=latitudes, x=near, y=near)
def test_there_and_back_is_the_same_place(latitude, x, y) -> None:
    """Metres to degrees and back is the same place to a micrometre; within a millimetre of the centre it is the centre."""
    plane = LocalPlane(10.0, latitude)
    assert plane.to_metres(*plane.to_degrees(x, y)) == pytest.approx(
        (x, y), abs=1e-6 if math.hypot(x, y) > 1e-3 else 1e-3
    )


@settings(max_examples=40, deadline=None)
@given(latitude=latitudes, x=near, y=near, radius=st.floats(0.5, 200))
def test_an_area_is_the_geodesic_area(latitude, x, y, radius) -> None:
    """An area in m² is that of the geodesic polygon (Karney 2013, as in PROJ) to a part in a million.

    The plane's own share of the difference is at most (r / R)² / 3, below 1e-7 here. Polygons of PROJ have geodesics as
    sides; their areas are differences of large sums, good to some square centimetres here.
    """
    plane = LocalPlane(-2.8, latitude)
    shape = Point(x, y).buffer(radius, quad_segs=8)
    geodesic, _ = Geod(ellps="WGS84").geometry_area_perimeter(plane.outward(shape).reverse())
    assert abs(geodesic) == pytest.approx(shape.area, rel=1e-6, abs=1e-3)


def test_geometries_go_both_ways() -> None:
    """A line in metres becomes degrees and the same line again."""
    plane = LocalPlane(3.0, 51.0)
    line = LineString([(0, 0), (100, 50)])
    assert plane.inward(plane.outward(line)).equals_exact(line, 1e-6)
