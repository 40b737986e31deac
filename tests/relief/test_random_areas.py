"""Relief areas in random places, against brute force: every grid point judged by plain distances."""

from math import cos, dist, pi, sin

import numpy as np
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point, Polygon, box

from marram.course.model import Feature, Kind
from marram.relief import NoRelief, Player, Situation, Why, relief_areas
from marram.rules.relief_option import Limit, Reference, ReliefKind
from tests.relief.ground_for_tests import IN_2023, LATERAL_UNPLAYABLE, course_at, option

STEP = 0.05
OUTSIDE = option(
    ReliefKind.LATERAL, Reference.CROSSING_POINT, 2, Limit.NOT_NEARER, Limit.OUTSIDE_PENALTY_AREA
)
IN_GENERAL_AREA = option(
    ReliefKind.UNDER_WHERE_IT_CAME_TO_REST, Reference.UNDER_BALL, 1, Limit.NOT_NEARER, Limit.GENERAL_AREA
)


@st.composite
def scenes(draw):
    """A star-shaped pond about (0, 0), a bunker beside it, and a hole 1 m to 150 m away, any way."""
    count = draw(st.integers(3, 9))
    radii = [draw(st.floats(0.5, 4.0)) for _ in range(count)]
    pond = Polygon([(r * cos(2 * pi * i / count), r * sin(2 * pi * i / count)) for i, r in enumerate(radii)])
    bunker = box(
        *(corner := (draw(st.floats(-3, 3)), draw(st.floats(-3, 3)))), corner[0] + 2, corner[1] + 1.5
    )
    away, angle = draw(st.floats(1.0, 150.0)), draw(st.floats(0, 2 * pi))
    return (
        pond,
        bunker,
        (away * cos(angle), away * sin(angle)),
        draw(st.floats(0, 1)),
        draw(st.floats(0.9, 1.2)),
    )


def on(pond, bunker, hole):
    return course_at(
        hole, Feature(Kind.RED_PENALTY_AREA, "pond", pond), Feature(Kind.BUNKER, "bunker", bunker)
    )


def compare(area, centre, radius, hole, forbidden):
    """Grid points not within 2 mm of a limit are judged alike; the sizes agree to the grid's fineness."""
    steps = np.arange(-radius - STEP, radius + 2 * STEP, STEP)
    x, y = (one.ravel() for one in np.meshgrid(centre[0] + steps, centre[1] + steps))
    places = shapely.points(x, y)
    from_hole = np.hypot(x - hole[0], y - hole[1]) - dist(centre, hole)
    margin = np.minimum(radius - np.hypot(x - centre[0], y - centre[1]), from_hole)
    for one in forbidden:
        away = shapely.distance(one.boundary, places)
        margin = np.minimum(margin, np.where(shapely.contains_xy(one, x, y), -away, away))
    for i in np.flatnonzero(
        (np.abs(margin) > 0.002) & ((np.abs(margin) < STEP) | (np.arange(len(x)) % 9 == 0))
    ):
        assert area.contains(float(x[i]), float(y[i])).inside == (margin[i] > 0), (x[i], y[i], margin[i])
    # A grid misjudges at most the cells an edge runs through.
    edge = area.polygon.length + 4 * STEP
    assert abs(area.area_m2 - np.count_nonzero(margin >= 0) * STEP * STEP) <= edge * STEP


@settings(max_examples=12, deadline=None)
@given(scenes())
def test_lateral_relief_from_a_random_pond(scene):
    """Two club-lengths from any edge of any pond, hole anywhere: like brute force."""
    pond, bunker, hole, part, club = scene
    reference = pond.exterior.interpolate(part, normalized=True).coords[0]
    (answer,) = relief_areas(
        Situation(on(pond, bunker, hole), 1, played_on=IN_2023, player=Player(club), entry=reference),
        [OUTSIDE],
    )
    if isinstance(answer, NoRelief):
        assert answer.why is Why.NO_ROOM
        return
    area = answer.areas[0]
    compare(area, area.reference, 2 * club, hole, [pond])


@settings(max_examples=12, deadline=None)
@given(scenes())
def test_relief_that_must_be_in_the_general_area(scene):
    """One club-length about any spot, without pond and bunker: like brute force."""
    pond, bunker, hole, part, club = scene
    spot = (5 * part - 2.5, 1.0)
    (answer,) = relief_areas(
        Situation(on(pond, bunker, hole), 1, ball=spot, played_on=IN_2023, player=Player(club)),
        [IN_GENERAL_AREA],
    )
    if isinstance(answer, NoRelief):
        least = dist(spot, hole)
        around = Point(spot).buffer(club - 0.01).difference(pond.union(bunker).buffer(0.01))
        assert around.difference(Point(hole).buffer(least + 0.01, quad_segs=2000)).area < 1e-4
        return
    compare(answer.areas[0], spot, club, hole, [pond, bunker])


@settings(max_examples=12, deadline=None)
@given(scenes())
def test_unplayable_relief_may_lie_in_any_area(scene):
    """Two club-lengths about any spot, whatever lies there (Rule 19.2c): like brute force."""
    pond, bunker, hole, part, club = scene
    spot = (5 * part - 2.5, 1.0)
    (answer,) = relief_areas(
        Situation(on(pond, bunker, hole), 1, ball=spot, played_on=IN_2023, player=Player(club)),
        [LATERAL_UNPLAYABLE],
    )
    compare(answer.areas[0], spot, 2 * club, hole, [])
