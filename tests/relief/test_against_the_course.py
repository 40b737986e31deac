"""Relief's limits and the course's reading of Rule 2.2c agree about where a place lies, on maps that hold everything.

The course decides by shapely on prepared shapes and by a grid; limits measure on arrays of edges. Both must say the
same of a ball, or a relief area would end where the ruling does not.
"""

import random
from functools import cache

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon, box

from marram.course import area_at, areas_of, load
from marram.course.lies.areas import AREAS
from marram.course.lies.regions import Ground
from marram.course.model import Kind
from marram.demo import COURSE
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.place.ground import feature_at, ground_of
from marram.rules.facts.ball import Area
from tests.course import every_kind
from tests.course.drawing import course, feature, hole
from tests.course.real_maps import real_map

CLEAR = 1e-4
"""Metres: nearer an edge than this, rounding may decide."""


@cache
def the_map(name):
    return {"made": lambda: every_kind.COURSE, "demo": lambda: load(COURSE)}.get(
        name, lambda: load(real_map(name))
    )()


def told_by_limits(ground, place):
    """Return the area of the course whose limits a ball fulfils; ``None`` out of bounds."""
    if any(limit.margin(*place, BALL_RADIUS) < 0 for limit in ground.on_course):
        return None
    (found,) = (
        area for area in Area if all(one.margin(*place, BALL_RADIUS) >= 0 for one in ground.in_area(area))
    )
    return found


def compare(links, number, places):
    """Check of each ball that every reader says the same, but for balls at an edge."""
    ground = ground_of(links, number)
    many = areas_of(links, np.array(places, dtype=float).reshape(-1, 2), number)
    for place, which in zip(places, many, strict=True):
        read = area_at(links, *place, number)
        if read.edge_distance < CLEAR:
            continue
        said = read.area.value if read.area else None
        by_limits, by_ground = told_by_limits(ground, place), ground.area_at(place, BALL_RADIUS)
        assert AREAS[Ground(int(which))] is read.area, place
        assert (by_limits.value if by_limits else None) == said, place
        assert (by_ground.value if by_ground else None) == said, place
        found = feature_at(ground.penalty_areas, place, BALL_RADIUS)
        assert (found is not None) == (said == "penalty_area") or said is None, place
        if said == "penalty_area":
            assert any(piece is read.feature for area, _ in ground.penalty_areas for piece in area.features)


def places_on(links, number, count, rng):
    """Places all over a course and along every edge, seam and corner that counts on a hole."""
    ground = ground_of(links, number)
    members = (
        *ground.penalty_areas,
        *ground.bunkers,
        *ground.green,
        *ground.tees,
        *ground.out_of_bounds,
        *ground.boundary,
    )
    boxes = np.array([outline.bounds for _, outline in members])
    x0, y0, x1, y1 = *np.percentile(boxes[:, :2], 5, axis=0), *np.percentile(boxes[:, 2:], 95, axis=0)
    places = [(rng.uniform(x0, x1), rng.uniform(y0, y1)) for _ in range(count)]
    for area, outline in members:
        edges = [edge for piece in area.pieces for edge in _edges(piece.shape)]
        for start, end in rng.sample(edges, min(3, len(edges))):
            part = rng.random()
            x, y = (start[i] + part * (end[i] - start[i]) for i in (0, 1))
            places += [(x + rng.uniform(-0.1, 0.1), y + rng.uniform(-0.1, 0.1)), (x, y)]
        assert outline.geometry is area.geometry
    return places


def _edges(shape):
    for part in getattr(shape, "geoms", [shape]):
        for ring in (part.exterior, *part.interiors):
            yield from zip(ring.coords[:-1], ring.coords[1:], strict=True)


@pytest.mark.parametrize(
    ("name", "holes", "count"),
    [
        ("made", (1, 2, 3, 4), 300),
        ("demo", (1, 9, 18), 60),
        ("links-18.geojson", (1, 17), 60),
        ("clipped-13.osm", (None,), 60),
    ],
)
def test_every_reader_says_the_same_of_a_ball(name, holes, count):
    """One ball, many balls, and the limits of relief areas agree, all over the map and at its edges and seams."""
    links = the_map(name)
    for number in (next(iter(links.holes)) if one is None else one for one in holes):
        compare(links, number, places_on(links, number, count, random.Random(number)))


def rectangles(most):
    """Strategy: rectangles on a lattice of 2 m, which share sides and corners, overlap, or stand apart."""
    one = st.tuples(st.integers(-9, 8), st.integers(-9, 8), st.integers(1, 5), st.integers(1, 5))
    shape = one.map(lambda r: box(2 * r[0], 2 * r[1], 2 * (r[0] + r[2]), 2 * (r[1] + r[3])))
    return st.lists(shape, max_size=most)


def with_an_island(shapes):
    """The first rectangle that is large enough, with a hole in it."""
    for i, shape in enumerate(shapes):
        if min(shape.bounds[2] - shape.bounds[0], shape.bounds[3] - shape.bounds[1]) >= 6:
            inner = shape.buffer(-2, join_style="mitre")
            return [*shapes[:i], Polygon(shape.exterior, [inner.exterior]), *shapes[i + 1 :]]
    return shapes


KINDS = (
    (Kind.RED_PENALTY_AREA, 4),
    (Kind.YELLOW_PENALTY_AREA, 2),
    (Kind.WATER, 3),
    (Kind.BUNKER, 4),
    (Kind.OUT_OF_BOUNDS, 2),
)


@settings(max_examples=60, deadline=None)
@given(
    parts=st.tuples(*(rectangles(most) for _, most in KINDS)),
    of_hole_1=st.tuples(rectangles(1), rectangles(1), rectangles(1)),
    only_hole_1=st.booleans(),
    bounded=st.booleans(),
    places=st.lists(st.tuples(st.integers(-120, 120), st.integers(-120, 120)), min_size=1, max_size=40),
)
def test_every_reader_says_the_same_on_any_map(parts, of_hole_1, only_hole_1, bounded, places):
    """Rectangles that share sides, hold islands, lie over each other, bar one hole only: balls 10 cm off every lattice line too."""
    features = [
        feature(
            kind,
            shape,
            f"{kind.value} {i}",
            holes=(1,) if kind is Kind.OUT_OF_BOUNDS and only_hole_1 else (),
            tags={"natural": "water"} if kind is Kind.WATER else {},
        )
        for (kind, _), shapes in zip(KINDS, parts, strict=True)
        for i, shape in enumerate(with_an_island(shapes))
    ]
    if bounded:
        features.append(feature(Kind.BOUNDARY, box(-15, -15, 15, 15), tags={"marram": "boundary"}))
    green, tee, today = of_hole_1
    greens = [feature(Kind.PUTTING_GREEN, shape, "green", holes=(1,)) for shape in green]
    tees = [feature(Kind.TEEING_AREA, shape, "tee", holes=(1,)) for shape in tee]
    tees += [
        feature(Kind.TEEING_AREA, shape, "today", holes=(1,), tags={"marram": "teeing_area"})
        for shape in today
    ]
    holes = [
        hole(1, green=greens[0] if greens else None, tees=tees),
        hole(2, tee=(0, 90), cup=(150, 90)),
    ]
    links = course(*features, *greens, *tees, holes=holes)
    for number in (1, 2):
        compare(links, number, [(0.2 * x + 0.1, 0.2 * y + 0.05) for x, y in places])


@settings(max_examples=60, deadline=None)
@given(
    wet=st.lists(st.tuples(st.integers(-5, 4), st.integers(-5, 4), st.integers(1, 5)), max_size=3),
    kind=st.sampled_from([Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA, Kind.WATER]),
    places=st.lists(st.tuples(st.integers(-60, 60), st.integers(-60, 60)), min_size=1, max_size=40),
    radius=st.sampled_from([0.0, BALL_RADIUS]),
)
def test_relief_outside_a_bunker_leaves_out_the_bunker_as_it_is_read(wet, kind, places, radius):
    """Rules 2.2c, 19.3b: what a penalty area covers of a bunker is none of it, so a ball there lies outside the bunker."""
    tags = {"natural": "water"} if kind is Kind.WATER else {}
    water = [
        feature(kind, box(2 * x, 2 * y, 2 * (x + size), 2 * (y + size)), f"wet {i}", tags=tags)
        for i, (x, y, size) in enumerate(wet)
    ]
    bunker = Polygon([(-8, -6), (8, -6), (8, 6), (1, 6), (1, 2), (-1, 2), (-1, 6), (-8, 6)])
    links = course(feature(Kind.BUNKER, bunker, "bunker"), *water, holes=[hole(1, cup=(150, 0))])
    ground = ground_of(links, 1)
    (outline,) = ground.bunkers.outlines
    for place in [(0.2 * x + 0.1, 0.2 * y + 0.05) for x, y in places]:
        kept_off = any(one.margin(*place, radius) < 0 for one in ground.outside_bunker(outline))
        assert kept_off == (ground.area_at(place, radius) is Area.BUNKER), place


def test_ground_out_of_bounds_bars_only_the_holes_named():
    """A fence of hole 1 is out of bounds for it and ground like any other on hole 2, for every reader."""
    fenced = (100.0, 80.0)
    assert area_at(every_kind.COURSE, *fenced, 1).out_of_bounds
    assert told_by_limits(ground_of(every_kind.COURSE, 1), fenced) is None
    assert told_by_limits(ground_of(every_kind.COURSE, 2), fenced) is Area.GENERAL_AREA


def test_the_teeing_area_of_the_day_is_the_teeing_area():
    """Where tee-markers are mapped, the mown ground behind and around them is general area for relief too."""
    ground = ground_of(every_kind.COURSE, 1)
    assert ground.area_at((-1.0, 0.0)) is Area.TEEING_AREA
    assert told_by_limits(ground, (4.0, 0.0)) is Area.GENERAL_AREA
