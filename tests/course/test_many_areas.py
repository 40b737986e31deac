"""Where balls lie on random maps: against an independent calculation, and one ball against many."""

import math

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point, Polygon

from marram.course.lies.area_grid import areas_of
from marram.course.lies.areas import AREAS, PenaltyColour, area_at
from marram.course.lies.regions import Ground
from marram.course.model import Kind
from tests.course.drawing import RADIUS, course, feature, hole


def blobs(kind, count):
    """Strategy: star-shaped areas of one kind."""
    radii = st.lists(st.floats(1, 12), min_size=5, max_size=12)
    one = st.tuples(st.floats(-40, 40), st.floats(-40, 40), radii)

    def draw(parts):
        x, y, r = parts
        angles = np.linspace(0, 2 * np.pi, len(r), endpoint=False)
        return feature(kind, Polygon(np.column_stack([x + r * np.cos(angles), y + r * np.sin(angles)])))

    return st.lists(one.map(draw), max_size=count)


maps = st.tuples(
    blobs(Kind.RED_PENALTY_AREA, 2),
    blobs(Kind.YELLOW_PENALTY_AREA, 2),
    blobs(Kind.BUNKER, 3),
    blobs(Kind.PUTTING_GREEN, 1),
    blobs(Kind.TEEING_AREA, 1),
    blobs(Kind.OUT_OF_BOUNDS, 1),
    blobs(Kind.WATER, 2),
    st.booleans(),
)
RING = feature(Kind.BOUNDARY, Point(0, 0).buffer(45), tags={"marram": "boundary"})


def drawn_map(parts):
    red, yellow, bunkers, greens, tees, fences, waters, bounded = parts
    only = hole(green=greens[0] if greens else None, tees=tees)
    return course(
        *([RING] if bounded else []), *red, *yellow, *bunkers, *greens, *tees, *fences, *waters, holes=[only]
    )


def signed(ring, places):
    """Signed distances to a ring, negative inside, by ray casting and by distances to segments: no GEOS."""
    a = np.asarray(ring.coords)[:-1]
    b = np.roll(a, -1, axis=0)
    p = places[:, None, :]
    t = np.clip(((p - a) * (b - a)).sum(-1) / ((b - a) ** 2).sum(-1), 0, 1)
    distance = np.sqrt(((p - a - t[..., None] * (b - a)) ** 2).sum(-1)).min(1)
    crosses = (a[:, 1] > p[..., 1]) != (b[:, 1] > p[..., 1])
    with np.errstate(divide="ignore", invalid="ignore"):
        east = a[:, 0] + (p[..., 1] - a[:, 1]) * (b[:, 0] - a[:, 0]) / (b[:, 1] - a[:, 1])
    inside = (crosses & (p[..., 0] < east)).sum(1) % 2 == 1
    return np.where(inside, -distance, distance)


def independent(links, places):
    """What each ball lies in, by signed distances alone, and whether it is clear of every tie."""
    answers = np.full(len(places), int(Ground.GENERAL_AREA))
    clear = np.ones(len(places), dtype=bool)

    def touches(kind):
        hit = np.zeros(len(places), dtype=bool)
        for f in links.of(kind):
            d = signed(f.geometry.exterior, places)
            hit |= d <= RADIUS
            clear[np.abs(np.abs(d) - RADIUS) < 1e-4] = False
        return hit

    order = [
        (Ground.TEEING_AREA, Kind.TEEING_AREA),
        (Ground.PUTTING_GREEN, Kind.PUTTING_GREEN),
        (Ground.BUNKER, Kind.BUNKER),
    ]
    for ground, kind in order:
        answers[touches(kind)] = ground
    red, yellow, wet = (
        touches(kind) for kind in (Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA, Kind.WATER)
    )
    # Along a marked edge a strip of water less than a metre wide is loose drawing: left to the closed forms.
    for f in links.of(Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA):
        distance = signed(f.geometry.exterior, places)
        if any(f.geometry.intersects(water.geometry) for water in links.of(Kind.WATER)):
            clear[wet & ~(red | yellow)] = False
        # Part of a ball in water that a marking covers is in the marking, whatever lies beside it.
        clear[wet & (np.abs(distance) <= 2 * RADIUS)] = False
    red |= wet & ~(red | yellow)
    answers[red] = Ground.RED_PENALTY_AREA
    answers[yellow] = Ground.YELLOW_PENALTY_AREA
    answers[red & yellow] = Ground.PENALTY_AREA_OF_TWO_COLOURS
    out = np.zeros(len(places), dtype=bool)
    touches(Kind.OUT_OF_BOUNDS), touches(Kind.BOUNDARY)
    for f in links.of(Kind.OUT_OF_BOUNDS):
        out |= signed(f.geometry.exterior, places) < -RADIUS
    for f in links.of(Kind.BOUNDARY):
        out |= signed(f.geometry.exterior, places) > RADIUS
    if links.of(Kind.OUT_OF_BOUNDS) and links.of(Kind.BOUNDARY):
        # Near where a fence crosses the boundary a ball can be out by both together: left to the closed forms.
        fence, ring = links.of(Kind.OUT_OF_BOUNDS)[0], links.of(Kind.BOUNDARY)[0]
        both = np.abs(signed(fence.geometry.exterior, places)), np.abs(signed(ring.geometry.exterior, places))
        clear[(both[0] < 0.1) & (both[1] < 0.1)] = False
    answers[out] = Ground.OUT_OF_BOUNDS
    return answers, clear


SPREAD = np.random.default_rng(7).uniform(-60, 60, (300, 2))
"""Balls all over the ground, the same in every example; those of an example are drawn, so that they shrink."""


@settings(max_examples=60, deadline=None)
@given(
    parts=maps,
    balls=st.lists(st.tuples(st.floats(-60, 60), st.floats(-60, 60)), max_size=30),
    off=st.floats(-0.1, 0.1),
    bearing=st.floats(0, 2 * math.pi),
)
def test_many_balls_agree_with_an_independent_calculation(parts, balls, off, bearing) -> None:
    """Grid and distances give what ray casting and segment distances in numpy give, anywhere and at the corners."""
    links = drawn_map(parts)
    places = np.vstack([SPREAD, np.reshape(balls, (-1, 2))])
    corners = [np.asarray(f.geometry.exterior.coords) for f in links.features]
    if corners:
        beside = off * np.array([math.cos(bearing), math.sin(bearing)])
        places = np.vstack([places, np.vstack(corners) + beside])
    expected, clear = independent(links, places)
    found = areas_of(links, places, 1)
    assert (found[clear] == expected[clear]).all()


@settings(max_examples=60, deadline=None)
@given(parts=maps, x=st.floats(-60, 60), y=st.floats(-60, 60), bearing=st.floats(0, 2 * math.pi))
def test_no_answer_changes_within_its_edge_distance(parts, x, y, bearing) -> None:
    """A ball moved by less than the edge distance in any direction keeps its area and colour."""
    links = drawn_map(parts)
    reading = area_at(links, x, y, 1)
    step = min(reading.edge_distance, 100.0) * 0.999
    moved = area_at(links, x + step * math.cos(bearing), y + step * math.sin(bearing), 1)
    assert (moved.area, moved.colour) == (reading.area, reading.colour)


@settings(max_examples=60, deadline=None)
@given(parts=maps, x=st.floats(-60, 60), y=st.floats(-60, 60))
def test_one_ball_and_many_agree(parts, x, y) -> None:
    """area_at and areas_of decide alike."""
    links = drawn_map(parts)
    reading = area_at(links, x, y, 1)
    ground = Ground(int(areas_of(links, np.array([[x, y]]), 1)[0]))
    assert AREAS[ground] is reading.area
    assert (ground is Ground.RED_PENALTY_AREA) == (reading.colour is PenaltyColour.RED)
