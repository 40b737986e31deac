"""Hole locations: closed forms on simple greens, and the published guidance on a real course.

Guidance: The R&A, Guidance on Running a Competition, hole positions (four paces from any edge; three paces
from a recently used hole; six difficult, six moderate, six easy; over nine four left, four right, one central).
Sheet numbers: the USGA's instructions for its hole location sheet.
"""

import math
from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, Polygon

from marram.course import load
from marram.course.greens.green_frame import PACE, GreenFrame, Side
from marram.course.greens.hole_locations import FROM_EDGE, FROM_RECENT, Depth, Difficulty, propose, unevenness
from marram.course.model import Kind
from marram.errors import BadPlace
from tests.course.drawing import course, feature, hole, square
from tests.course.real_maps import real_map

R = 15.0
SIDES = 240
"""The round green is a regular polygon of so many sides: inside the circle by R (1 - cos(pi / 240)), 1.3 mm."""


def round_green(x=150.0, y=0.0):
    corners = [
        (x + R * math.cos(2 * math.pi * k / SIDES), y + R * math.sin(2 * math.pi * k / SIDES))
        for k in range(SIDES)
    ]
    return feature(Kind.PUTTING_GREEN, Polygon(corners), "round", holes=(1,))


@settings(deadline=None)
@given(bearing=st.floats(0, 2 * math.pi), r=st.floats(0, 14.9), turn=st.floats(0, 2 * math.pi))
def test_the_numbers_of_a_round_green(bearing, r, turn) -> None:
    """On a circle of radius R: depth 2R; front R + t; side the half chord less the offset; edge R - r."""
    green = round_green().geometry
    ahead = (math.cos(bearing), math.sin(bearing))
    frame = GreenFrame(green, LineString([(150 - 100 * ahead[0], -100 * ahead[1]), (150, 0)]))
    along, left = r * math.cos(turn), r * math.sin(turn)
    place = Point(150 + along * ahead[0] - left * ahead[1], along * ahead[1] + left * ahead[0])
    numbers = frame.numbers(place)
    half_chord = math.sqrt(R**2 - along**2)
    assert numbers.green_depth == pytest.approx(2 * R, abs=3e-3)
    assert numbers.from_front == pytest.approx(R + along, abs=2e-3)
    assert numbers.from_side == pytest.approx(half_chord - abs(left), abs=0.02)
    assert numbers.from_edge == pytest.approx(R - r, abs=2e-3)
    if abs(2 * abs(left) - PACE / 2) > 0.05:
        expected = Side.CENTRE if 2 * abs(left) < PACE / 2 else Side.LEFT if left > 0 else Side.RIGHT
        assert numbers.side is expected


def test_paces_are_yards() -> None:
    """A hole 10 yards from the front and 5 from the right of a green 20 yards wide is 10 and 5 paces (common practice)."""
    yard = 0.9144
    green = Polygon([(0, -10 * yard), (30 * yard, -10 * yard), (30 * yard, 10 * yard), (0, 10 * yard)])
    numbers = GreenFrame(green, LineString([(-100, 0), (5, 0)])).numbers(Point(10 * yard, -5 * yard))
    assert numbers.in_paces() == (10, 5)
    assert numbers.side is Side.RIGHT
    assert numbers.green_depth == pytest.approx(30 * yard)


@pytest.mark.parametrize(("y", "side"), [(3, Side.RIGHT), (27, Side.LEFT)])
def test_a_dented_green_is_measured_to_the_edge_on_the_hole_s_side(y, side) -> None:
    """Across a green shaped like a U, the near side is the edge of the arm the hole is in, not beyond the gap."""
    green = Polygon([(0, 0), (30, 0), (30, 10), (10, 10), (10, 20), (30, 20), (30, 30), (0, 30)])
    numbers = GreenFrame(green, LineString([(-100, 15), (5, 15)])).numbers(Point(20, y))
    assert (numbers.from_side, numbers.side) == (pytest.approx(3), side)


def test_a_dogleg_is_measured_along_its_last_stretch() -> None:
    """The usual approach to a green is the last stretch of its line of play, not the line from the tee."""
    frame = GreenFrame(square(100, 50, 10), LineString([(-100, 0), (100, 0), (100, 50)]))
    numbers = frame.numbers(Point(104, 43))
    assert (numbers.from_front, numbers.from_side) == (pytest.approx(3), pytest.approx(6))
    assert numbers.side is Side.RIGHT


def test_a_hole_off_the_green_is_refused() -> None:
    """Numbers are given for places on the green only; a hole without a mapped green has none."""
    frame = GreenFrame(round_green().geometry, LineString([(0, 0), (150, 0)]))
    with pytest.raises(BadPlace, match=r"5\.00 m off the green"):
        frame.numbers(Point(170, 0))
    with pytest.raises(BadPlace, match="green of hole 1 is not mapped"):
        GreenFrame.of(hole())


def nine_round_greens(*, bunkers=False):
    """Nine holes whose greens are equal circles at (150, 0), (150, 100) …, some with a bunker at their left edge."""
    greens = [round_green(y=100.0 * n) for n in range(9)]
    holes = [hole(n + 1, tee=(0, 100 * n), cup=(150, 100 * n), green=green) for n, green in enumerate(greens)]
    pits = [feature(Kind.BUNKER, square(150, 100 * n + 12, 4.5), f"pit {n}") for n in range(9) if bunkers]
    return course(*greens, *pits, holes=holes)


def test_proposals_on_round_greens_keep_their_distances() -> None:
    """Every proposal lies within R - 4 paces of the middle and 3 paces from the recent hole; all thirds occur."""
    links = nine_round_greens()
    recent = {number: [Point(155, 100 * (number - 1))] for number in links.holes}
    places = [
        found for seed in range(4) for found in propose(links, recent=recent, seed=seed).locations.values()
    ]
    assert len(places) == 36
    for found in places:
        middle = Point(150, 100 * (found.hole - 1))
        assert found.place.distance(middle) <= R - 4 * PACE + 1e-3
        assert found.place.distance(recent[found.hole][0]) >= 3 * PACE
        assert found.numbers.from_edge >= FROM_EDGE - 1e-9
    assert {found.depth for found in places} == set(Depth)
    assert {found.side for found in places} == set(Side)
    assert {found.difficulty for found in places} == set(Difficulty)


def test_the_thirds_of_a_round_green() -> None:
    """Depth, side and difficulty are what they are called: front is near the player, hard is near the edge."""
    usable = R - FROM_EDGE
    third = usable / 3
    slack = 1.0  # the places tried are a pace apart, so the thirds of what they span are a little smaller
    for seed in range(4):
        for found in propose(nine_round_greens(), seed=seed).locations.values():
            along, left = found.place.x - 150, found.place.y - 100 * (found.hole - 1)
            assert {
                Depth.FRONT: along <= -third + slack,
                Depth.MIDDLE: abs(along) <= third + slack,
                Depth.BACK: along >= third - slack,
            }[found.depth]
            assert {
                Side.LEFT: left >= third - slack,
                Side.CENTRE: abs(left) <= third + slack,
                Side.RIGHT: left <= -third + slack,
            }[found.side]
            # A third of the usable circle lies outside sqrt(2/3) of its radius, a third inside sqrt(1/3).
            r = math.hypot(along, left)
            outer, inner = usable * math.sqrt(2 / 3), usable * math.sqrt(1 / 3)
            assert {
                Difficulty.HARD: r >= outer - slack,
                Difficulty.MODERATE: inner - slack <= r <= outer + slack,
                Difficulty.EASY: r <= inner + slack,
            }[found.difficulty]


def test_a_bunker_makes_the_places_near_it_hard() -> None:
    """Nearer to a bunker than any place may be to the edge is hard; without the bunker such places can be moderate."""

    def near_pit(links, seeds):
        """Yield the difficulty of each proposal nearer to where the bunker is than four paces."""
        for seed in range(seeds):
            for found in propose(links, seed=seed).locations.values():
                if found.place.distance(square(150, 100 * (found.hole - 1) + 12, 4.5)) < FROM_EDGE - 0.2:
                    yield found.difficulty

    assert set(near_pit(nine_round_greens(bunkers=True), 8)) == {Difficulty.HARD}
    assert any(difficulty is Difficulty.MODERATE for difficulty in near_pit(nine_round_greens(), 60))


def test_a_green_that_offers_no_place_says_why() -> None:
    """A green too small, one used up, and one not mapped get no proposal and a reason."""
    small = feature(Kind.PUTTING_GREEN, square(150, 0, 3), "small", holes=(1,))
    tiny = course(small, holes=[hole(green=small), hole(2)])
    assert propose(tiny).without == {
        1: "no place on its green is 3.7 m from every edge",
        2: "its green is not mapped",
    }
    used = {1: [Point(150, 0)]}
    crowded = propose(tiny, recent=used, from_edge=2.5)
    assert crowded.without[1] == "no place on its green is 2.7 m from every recent hole"
    assert propose(tiny, from_edge=2.5).locations[1].numbers.from_edge >= 2.5


def test_a_real_course_is_balanced_as_the_guidance_asks() -> None:
    """18 greens: 6 hard, 6 moderate, 6 easy; 6 front, 6 middle, 6 back; each nine 4 left, 4 right, 1 central."""
    links = load(real_map("links-18.geojson"))
    first = propose(links, seed=1)
    assert len(first.locations) == 18
    for round_ in (first, propose(links, recent={n: [p.place] for n, p in first.locations.items()}, seed=2)):
        locations = round_.locations
        assert Counter(p.difficulty for p in locations.values()) == dict.fromkeys(Difficulty, 6)
        assert Counter(p.depth for p in locations.values()) == dict.fromkeys(Depth, 6)
        for nine in (range(1, 10), range(10, 19)):
            sides = Counter(locations[n].side for n in nine)
            assert sides == {Side.LEFT: 4, Side.RIGHT: 4, Side.CENTRE: 1}
        assert unevenness(locations) == pytest.approx(0)
        for number, found in locations.items():
            edge = links.hole(number).green.geometry.boundary
            assert edge.distance(found.place) >= 4 * 0.9144 - 1e-9
    for number, found in locations.items():
        assert found.place.distance(first.locations[number].place) >= FROM_RECENT - 1e-9


def test_the_same_seed_proposes_the_same() -> None:
    """Proposals repeat with their seed and vary with another."""
    links = nine_round_greens()
    assert propose(links, seed=5) == propose(links, seed=5)
    assert propose(links, seed=5) != propose(links, seed=6)


@settings(deadline=None)
@given(r=st.floats(0, 14.5), turn=st.floats(0, 2 * math.pi), bearing=st.floats(0, 2 * math.pi))
def test_a_place_is_found_again_by_its_numbers(r, turn, bearing) -> None:
    """Depth and side typed from a sheet give back the place they were measured at."""
    ahead = (math.cos(bearing), math.sin(bearing))
    frame = GreenFrame(
        round_green().geometry, LineString([(150 - 100 * ahead[0], -100 * ahead[1]), (150, 0)])
    )
    place = Point(150 + r * math.cos(turn), r * math.sin(turn))
    numbers = frame.numbers(place)
    if numbers.side is not Side.CENTRE:
        again = frame.place(numbers.from_front, numbers.from_side, numbers.side)
        assert again.distance(place) < 1e-6


def test_the_centre_is_the_middle_between_both_sides() -> None:
    """Ten yards from the front of a green 20 yards wide, the centre is ten yards from each side."""
    yard = 0.9144
    green = Polygon([(0, -10 * yard), (30 * yard, -10 * yard), (30 * yard, 10 * yard), (0, 10 * yard)])
    frame = GreenFrame(green, LineString([(-100, 0), (5, 0)]))
    place = frame.place(10 * yard, 0, Side.CENTRE)
    assert (place.x, place.y) == pytest.approx((10 * yard, 0))


@pytest.mark.parametrize(
    ("front", "side", "words"), [(40, 3, "40 paces from the front is off"), (10, 25, "20 paces wide")]
)
def test_numbers_off_the_green_are_refused(front, side, words) -> None:
    """A green 30 paces deep and 20 wide has no place 40 paces in, nor 25 from the left."""
    yard = 0.9144
    green = Polygon([(0, -10 * yard), (30 * yard, -10 * yard), (30 * yard, 10 * yard), (0, 10 * yard)])
    frame = GreenFrame(green, LineString([(-100, 0), (5, 0)]))
    with pytest.raises(BadPlace, match=words):
        frame.place(front * yard, side * yard, Side.LEFT)


@pytest.mark.parametrize(
    ("direction", "words"),
    [
        ((0, 1), "back"),
        ((0, -1), "front"),
        ((-1, 0), "left"),
        ((1, -1), "front right"),
        ((-1, 1), "back left"),
    ],
)
def test_directions_are_the_players(direction, words) -> None:
    """On a hole played northwards west is left and south is the front."""
    frame = GreenFrame(square(0, 0, 10), LineString([(0, -100), (0, 0)]))
    assert frame.way(direction) == words
