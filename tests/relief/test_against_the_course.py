"""The layer agrees with the course layer about where a place lies, on the demonstration course."""

import random
from functools import cache

import pytest

from marram.course import area_at, load
from marram.demo import COURSE
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.place.ground import ground_of


@cache
def demo():
    return load(COURSE)


@pytest.mark.parametrize("hole", [1, 9, 18])
def test_the_area_of_a_ball_is_read_alike(hole):
    """Two independent readings of Rule 2.2c agree on balls all over the course and along every edge.

    The course layer measures with shapely on unions of areas, this one with its own arrays feature by feature.
    """
    course, rng = demo(), random.Random(hole)
    ground = ground_of(course, hole)
    x0, y0, x1, y1 = ground.boundary[0][1].bounds
    places = [(rng.uniform(x0, x1), rng.uniform(y0, y1)) for _ in range(60)]
    for _, outline in (*ground.penalty_areas, *ground.bunkers, *ground.green, *ground.tees):
        for edge in outline.edges[:: max(1, len(outline.edges) // 3)]:
            x, y = (edge[:2] + edge[2:]) / 2
            places += [(x + rng.uniform(-0.1, 0.1), y + rng.uniform(-0.1, 0.1)) for _ in range(2)]
    for place in places:
        read = area_at(course, *place, hole)
        ours = ground.area_at(place, BALL_RADIUS)

        if read.edge_distance > 1e-6:
            assert (ours.value if ours else None) == (read.area.value if read.area else None), place
