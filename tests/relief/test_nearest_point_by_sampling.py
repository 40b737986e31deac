"""The nearest point of complete relief beside every place of a 1 cm grid, in 5,000 random configurations.

The grid is the independent answer: it knows neither convolutions nor candidates, only the original shapes,
shapely's intersection of them, and the distance to the hole. To spend its time where it matters, places are
first taken in squares, large ones and then small ones: where the footprint in the middle of a square overlaps the
obstruction shrunk by half the square's diagonal, it overlaps the obstruction from every place of that square.
"""

from itertools import pairwise
from math import cos, dist, hypot, pi, sin, sqrt

import numpy as np
import pytest
import shapely
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from marram.relief.geometry.outline import Outline
from marram.relief.interference.interference import FootprintOn
from marram.relief.interference.nearest_point import nearest_point
from marram.relief.interference.shape import Footprint

STEP = 0.01
"""Metres: the grid's."""
SQUARES = (16, 4)
"""Steps: the sides of the squares that are taken together, each a multiple of the next."""
BALL = (0.0, 0.0)
TOUCHING = 1e-13
"""Square metres: less is touching, but for rounding (a square corner 0.3 µm deep)."""
NEARER = 0.001
"""Metres: the most by which an answer may be nearer the hole."""


@st.composite
def star(draw, corners, radii):
    """A polygon around (0, 0), dented where neighbouring radii differ; simple by construction."""
    count = draw(st.integers(*corners))
    turn = draw(st.floats(0, 2 * pi))
    return shapely.Polygon(
        (radius * cos(turn + 2 * pi * i / count), radius * sin(turn + 2 * pi * i / count))
        for i, radius in enumerate(draw(st.lists(st.floats(*radii), min_size=count, max_size=count)))
    )


@st.composite
def configurations(draw):
    """A ball in an obstruction, up to two more obstructions near it, a footprint, and a hole 5 to 150 m away."""
    obstructions = [draw(star((3, 8), (0.3, 1.3)))]
    for _ in range(draw(st.integers(0, 2))):
        at = draw(st.floats(-2.5, 2.5)), draw(st.floats(-2.5, 2.5))
        obstructions.append(shapely.affinity.translate(draw(star((3, 5), (0.2, 0.7))), *at))
    away, angle = draw(st.floats(5, 150)), draw(st.floats(0, 2 * pi))
    return obstructions, draw(star((3, 7), (0.2, 0.9))), (away * cos(angle), away * sin(angle))


def first_sampled(obstructions, footprint, hole, within):
    """Return how far the nearest permitted place of the grid is; infinity where none is within a distance."""
    whole = shapely.union_all(obstructions)
    corners = shapely.get_coordinates(footprint)
    side = SQUARES[0] * STEP
    places = _grid(np.arange(-within - side, within + 2 * side, side))
    for square, finer in pairwise((*SQUARES, 1)):
        # A drawn arc of the shrinking lies outside the true one by less than a millimetre.
        deep = whole.buffer(-(square + 1) * STEP / sqrt(2) - 0.001)
        if not deep.is_empty:
            shapely.prepare(deep)
            places = places[~shapely.intersects(deep, _placed(corners, places))]
        inner = _grid((np.arange(0, square, finer) - (square - finer) / 2) * STEP)
        places = (places[:, None, :] + inner[None, :, :]).reshape(-1, 2)
    away = np.hypot(places[:, 0], places[:, 1])
    kept = (away <= within) & (np.hypot(*(places - hole).T) >= hypot(*hole))
    places, away = places[kept], away[kept]
    order = np.argsort(away)
    shrunk = whole.buffer(-1e-5)
    shapely.prepare([whole, shrunk])
    for start in range(0, len(order), 500):
        some = order[start : start + 500]
        placed = _placed(corners, places[some])
        overlapping = shapely.intersects(whole, placed)
        barely = overlapping & ~shapely.intersects(shrunk, placed)
        overlapping[barely] = shapely.area(shapely.intersection(whole, placed[barely])) > TOUCHING
        if not overlapping.all():
            return float(away[some[np.argmin(overlapping)]])
    return float("inf")


def _grid(steps):
    x, y = np.meshgrid(steps, steps)
    return np.column_stack([x.ravel(), y.ravel()])


def _placed(corners, places):
    return shapely.polygons(places[:, None, :] + corners[None, :, :])


@pytest.mark.long
@settings(max_examples=5000, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(configurations())
def test_no_place_of_a_one_centimetre_grid_is_nearer(configuration):
    """The answer overlaps nothing, is not nearer the hole, and no permitted place of the grid is nearer the ball.

    So it differs from the sampled answer by the grid's fineness alone: the permitted place next to the answer.
    """
    obstructions, footprint, hole = configuration
    found = nearest_point(
        BALL, [FootprintOn(tuple(map(Outline, obstructions)), Footprint.of(footprint))], hole
    )

    assert found is not None
    for place in found.points:
        placed = shapely.affinity.translate(footprint, *place)
        assert all(shapely.intersection(placed, one).area <= TOUCHING for one in obstructions)
        assert dist(place, hole) >= hypot(*hole) - NEARER
    assert first_sampled(obstructions, footprint, hole, found.metres - 2e-6) == float("inf")
