"""Shapes of very many corners beside many others: found as by plain distance, and gone over once, not once for each."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import STRtree
from shapely.geometry import Polygon, box

from marram.course.feature_index import as_array
from marram.course.near_pairs import near_pairs
from marram.course.near_parts import MANY, near_parts

METRES = st.integers(-60, 60)
SQUARES = st.lists(st.tuples(METRES, METRES, st.integers(1, 15)), min_size=1, max_size=12)
CORNERS = st.sampled_from([12, MANY + 100])


def wavy(x: float, y: float, radius: float, corners: int) -> Polygon:
    """An area with a wavy edge."""
    turn = [2 * math.pi * i / corners for i in range(corners)]
    return Polygon(
        [
            (
                x + (radius + 2 * math.sin(9 * t)) * math.cos(t),
                y + (radius + 2 * math.sin(9 * t)) * math.sin(t),
            )
            for t in turn
        ]
    )


def squares(drawn) -> np.ndarray:
    return as_array(box(x, y, x + side, y + side) for x, y, side in drawn)


@settings(max_examples=60, deadline=None)
@given(drawn=SQUARES, corners=CORNERS, distance=st.sampled_from([0.0, 0.02, 3.0]))
def test_pairs_are_those_of_plain_distances(drawn, corners, distance) -> None:
    """The pairs are exactly those no further apart than the distance, whichever of the two has more corners."""
    some, large = squares(drawn), as_array([wavy(0, 0, 40, corners), wavy(30, 10, 12, corners)])
    for tree, others in ((some, large), (large, some)):
        found = set(zip(*(one.tolist() for one in near_pairs(STRtree(tree), others, distance)), strict=True))
        assert found == {
            (i, j)
            for i, one in enumerate(others)
            for j, other in enumerate(tree)
            if one.distance(other) <= distance
        }


@settings(max_examples=60, deadline=None)
@given(drawn=SQUARES, corners=CORNERS, reach=st.sampled_from([0.4, 2.0]))
def test_near_the_other_shape_nothing_is_cut(drawn, corners, reach) -> None:
    """Within reach of the other's bounds a part is the shape itself; a shape of few corners is the very same."""
    some = squares(drawn)
    large = np.full(len(some), wavy(0, 0, 40, corners), dtype=object)
    parts, same = near_parts(large, some, reach)
    assert all(one is other for one, other in zip(same, some, strict=True))
    for part, shape, other in zip(parts, large, some, strict=True):
        west, south, east, north = other.bounds
        window = box(west - reach, south - reach, east + reach, north + reach)
        assert shapely.symmetric_difference(part & window, shape & window).area < 1e-9
        assert (part is shape) == (corners <= MANY)


@pytest.mark.parametrize("count", [250, 1000])
def test_a_long_edge_is_shared_out_among_its_neighbours(count) -> None:
    """All parts of an edge with as many corners as neighbours have so many corners for each neighbour, however long it is."""
    large = wavy(0, 0, 2 * count, 8 * count)
    around = [large.exterior.interpolate(i / count, normalized=True) for i in range(count)]
    some = as_array(place.buffer(2, quad_segs=3) for place in around)
    parts, _ = near_parts(np.full(count, large, dtype=object), some, 1.0)
    assert shapely.get_num_coordinates(parts).sum() < 16 * count


def test_nothing_has_no_pairs() -> None:
    """No shapes on either side give no pairs, at any distance."""
    one, none = as_array([box(0, 0, 1, 1)]), as_array([])
    for tree, others in ((one, none), (none, one)):
        assert [len(side) for side in near_pairs(STRtree(tree), others, 1.0)] == [0, 0]
