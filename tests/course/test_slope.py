"""The slope of greens: planes and crests in closed form, each file format, and the published figures.

Figures: J. Lemons, "Putting green speeds, slopes, and non-conforming hole locations", USGA Green Section Record,
July/August 2008, as tabulated in Golf Course Industry, "Green slopes". Guidance: The R&A, Guidance on Running a
Competition, hole positions (two to three feet around the hole as level as can be; three paces from a severe slope).
"""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point

from marram.course.greens.elevation import Elevations
from marram.course.greens.green_frame import PACE
from marram.course.greens.hole_locations import propose
from marram.course.greens.slope import AROUND_HOLE, GreenSlopes, Surface, slope_limits
from marram.course.model import Kind
from marram.errors import InputError
from tests.course.drawing import course, feature, hole, square
from tests.course.test_hole_locations import nine_round_greens

GREEN = feature(Kind.PUTTING_GREEN, square(150, 0, 10), "green 1", holes=(1,))
LINKS = course(GREEN, holes=[hole(green=GREEN)])
GRID = np.array([(x, y) for x in np.arange(135, 166, 1.0) for y in np.arange(-15, 16, 1.0)])


def measured(height, places=GRID):
    return Elevations(
        np.column_stack([places, [height(x, y) for x, y in places]]), np.zeros(len(places), dtype=np.intp)
    )


@settings(deadline=None, max_examples=40)
@given(east=st.floats(-0.08, 0.08), north=st.floats(-0.08, 0.08), x=st.floats(142, 158), y=st.floats(-8, 8))
def test_the_slope_of_a_plane(east, north, x, y) -> None:
    """On z = ax + by the slope is 100 sqrt(a² + b²) % everywhere, and it falls along -(a, b)."""
    found = Surface(measured(lambda x, y: east * x + north * y + 20)).at(Point(x, y))
    steep = math.hypot(east, north)
    assert found.percent == pytest.approx(100 * steep, abs=1e-6)
    if steep > 1e-3:
        assert found.fall == pytest.approx((-east / steep, -north / steep), abs=1e-6)


@settings(deadline=None, max_examples=40)
@given(a=st.floats(0.001, 0.004), x=st.floats(-6, 6), y=st.floats(-6, 6))
def test_the_slope_of_a_bowl_grows_outwards(a, x, y) -> None:
    """On z = a r² measured every metre the slope is 2ar, within what 1 m facets and the steeper outer half add."""
    found = Surface(measured(lambda u, v: a * ((u - 150) ** 2 + v**2))).at(Point(150 + x, y))
    r = math.hypot(x, y)
    assert 200 * a * (r - 0.75) <= found.percent <= 200 * a * (r + AROUND_HOLE + 0.75)


def test_a_crest_is_as_steep_as_its_sides() -> None:
    """On a ridge falling 5 % to both sides the ground at the top is not level: it falls 5 % on each half."""
    found = Surface(measured(lambda _x, y: -0.05 * abs(y))).at(Point(150, 0))
    assert found.percent == pytest.approx(5, abs=1e-6)


def test_nothing_is_said_where_nothing_was_measured() -> None:
    """Off the measured ground, and between elevations more than 5 m apart, the slope is not known."""
    ground = Surface(measured(lambda x, _y: 0.02 * x))
    assert ground.at(Point(150, 30)) is None
    sparse = np.array([(x, y) for x in (140.0, 150.0, 160.0) for y in (-10.0, 0.0, 10.0)])
    assert Surface(measured(lambda x, _y: 0.02 * x, sparse)).at(Point(151, 1)) is None


@pytest.mark.parametrize(
    ("speed", "recommended", "critical"),
    [
        (9, 4.35, 5.95),
        (10, 3.90, 5.42),
        (11, 3.58, 4.90),
        (12, 3.24, 4.55),
        (13, 2.99, 4.20),
        (14, 2.90, 3.85),
    ],
)
def test_the_published_figures(speed, recommended, critical) -> None:
    """Lemons's table, row by row; without a speed the fastest row stands, below nine feet that of nine feet."""
    found = slope_limits(speed)
    assert (found.recommended, found.critical) == pytest.approx((recommended, critical))
    assert slope_limits().critical == pytest.approx(3.85)
    assert slope_limits(7.5).critical == pytest.approx(5.95)
    assert 3.58 < slope_limits(10.5).recommended < 3.90


@pytest.mark.parametrize("speed", [4, 15, float("nan")])
def test_a_speed_beyond_the_figures_is_refused(speed) -> None:
    """Beyond what was published nothing is made up."""
    with pytest.raises(InputError, match="Give the Stimpmeter reading in feet"):
        slope_limits(speed)


def terraced(x, y):
    """A green in two levels 0.5 m apart, joined over 3 m in the middle: 17 %, far beyond every figure."""
    return 12 + 0.5 * min(max((x - 150) / 3 + 0.5, 0), 1) + 0.01 * y


def test_proposals_keep_off_steep_ground_and_three_paces_from_it() -> None:
    """No proposal within three paces of the face between two levels; each lies on ground of 1 %."""
    links = nine_round_greens()
    places = np.vstack([GRID + np.array([0, 100 * n]) for n in range(9)])
    slopes = GreenSlopes(
        links, measured(lambda x, y: terraced(x, (y + 50) % 100 - 50), places), slope_limits(10)
    )
    for seed in range(3):
        proposal = propose(links, seed=seed, slopes=slopes)
        assert len(proposal.locations) == 9
        assert proposal.slope_unknown == ()
        for found in proposal.locations.values():
            assert abs(found.place.x - 150) - 1.5 > 3 * PACE - 1.0  # the places looked at are a pace apart
            assert found.slope.percent == pytest.approx(1, abs=0.01)
    flat = propose(links, seed=1)
    assert any(abs(one.place.x - 150) < 1.5 + 3 * PACE - 1.0 for one in flat.locations.values())
    assert flat.slope_unknown == tuple(range(1, 10))


def test_a_green_too_steep_everywhere_offers_nothing_and_says_so() -> None:
    """A 6 % green is beyond the marginal 5.42 % at ten feet; at 5 % it is taken, for want of better."""
    for percent, offered in ((6, False), (5, True)):
        slopes = GreenSlopes(LINKS, measured(lambda x, _y, p=percent: p / 100 * x), slope_limits(10))
        proposal = propose(LINKS, slopes=slopes)
        assert (1 in proposal.locations) is offered
        if not offered:
            assert proposal.without[1] == "no place on its green is level enough (5.42 % at most)"


def test_gentle_ground_is_preferred() -> None:
    """Half the green 2 %, half 4.5 % (marginal at ten feet): only the gentle half is proposed."""

    def height(x, _y):
        return 0.02 * (x - 150) if x < 150 else 0.045 * (x - 150)

    slopes = GreenSlopes(LINKS, measured(height), slope_limits(10))
    for seed in range(5):
        assert propose(LINKS, seed=seed, slopes=slopes).locations[1].slope.percent <= 3.90


def test_a_line_of_equal_height_alone_says_nothing() -> None:
    """Within one contour line the ground may rise or fall: triangles of its own places are left out."""
    ring = [(x, y) for x in (145.0, 149.0) for y in np.arange(-4, 5, 1.0)]
    places = np.array([(x, y, 12.0) for x, y in ring])
    same = Surface(Elevations(places, np.ones(len(places), dtype=np.intp)))
    assert same.at(Point(147, 0)) is None
    apart = Surface(Elevations(places, np.zeros(len(places), dtype=np.intp)))
    assert apart.at(Point(147, 0)).percent == pytest.approx(0, abs=1e-9)
