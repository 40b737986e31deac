"""Where a ball lies: Rules 2.2, 18.2a and the Definitions, by closed forms and by an independent calculation."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, Polygon, box

from marram.course.area_grid import areas_of
from marram.course.areas import AREAS, Area, PenaltyColour, area_at, area_at_degrees
from marram.course.doubts import DoubtKind
from marram.course.model import Kind
from marram.course.regions import BALL_RADIUS, Ground
from marram.errors import BadPlace
from marram.rules.facts.ball import area_of_ball
from tests.course.drawing import BOUNDARY, RADIUS, course, feature, hole, square

GREEN = feature(Kind.PUTTING_GREEN, square(150, 0, 10), "green 1", holes=(1,))
OTHER_GREEN = feature(Kind.PUTTING_GREEN, square(150, 60, 10), "green 2", holes=(2,))
TEE = feature(Kind.TEEING_AREA, square(0, 0, 5), "tee 1", holes=(1,))
OTHER_TEE = feature(Kind.TEEING_AREA, square(0, 60, 5), "tee 2", holes=(2,))
HOLES = (
    hole(1, green=GREEN, tees=[TEE]),
    hole(2, tee=(0, 60), cup=(150, 60), green=OTHER_GREEN, tees=[OTHER_TEE]),
)
BUNKER = feature(Kind.BUNKER, square(60, 0, 5), "bunker")
RED = feature(Kind.RED_PENALTY_AREA, square(80, 0, 5), "red")
YELLOW = feature(Kind.YELLOW_PENALTY_AREA, square(100, 0, 5), "yellow")
LINKS = course(BOUNDARY, GREEN, OTHER_GREEN, TEE, OTHER_TEE, BUNKER, RED, YELLOW, holes=HOLES)


def kinds(reading):
    return {doubt.kind for doubt in reading.doubts}


def test_the_areas_are_the_answers_to_the_fact() -> None:
    """What the map reads can be given to a case as the fact area_of_ball."""
    assert {area.value for area in Area} == {answer.value for answer in area_of_ball.answers}


@pytest.mark.parametrize(
    ("x", "y", "area", "colour"),
    [
        (30, 0, Area.GENERAL_AREA, None),
        (60, 0, Area.BUNKER, None),
        (80, 0, Area.PENALTY_AREA, PenaltyColour.RED),
        (100, 0, Area.PENALTY_AREA, PenaltyColour.YELLOW),
        (150, 0, Area.PUTTING_GREEN, None),
        (0, 0, Area.TEEING_AREA, None),
        (-150, 0, None, None),
    ],
)
def test_a_ball_in_the_middle_of_an_area_lies_in_it(x, y, area, colour) -> None:
    """Rule 2.2b and Rule 2.1: the five areas, and out of bounds."""
    reading = area_at(LINKS, x, y, 1)
    assert (reading.area, reading.colour) == (area, colour)
    assert reading.out_of_bounds == (area is None)


def test_green_and_tee_of_another_hole_are_general_area() -> None:
    """Rule 2.2b: only the teeing area and green of the hole being played; another hole's green is a wrong green."""
    on_green, on_tee = area_at(LINKS, 150, 60, 1), area_at(LINKS, 0, 60, 1)
    assert (on_green.area, on_green.wrong_green) == (Area.GENERAL_AREA, OTHER_GREEN)
    assert (on_tee.area, on_tee.wrong_green) == (Area.GENERAL_AREA, None)
    assert area_at(LINKS, 150, 60, 2).area is Area.PUTTING_GREEN
    assert area_at(LINKS, 0, 60, 2).area is Area.TEEING_AREA
    assert area_at(LINKS, 0, 60, 2).wrong_green is None


@pytest.mark.parametrize(
    ("first", "second", "area"),
    [
        (RED, Kind.BUNKER, Area.PENALTY_AREA),
        (RED, Kind.PUTTING_GREEN, Area.PENALTY_AREA),
        (BUNKER, Kind.PUTTING_GREEN, Area.BUNKER),
    ],
)
def test_part_of_the_ball_in_two_specific_areas(first, second, area) -> None:
    """Rule 2.2c: penalty area before bunker before putting green, when part of the ball is in either."""
    beside = feature(
        second, box(first.geometry.bounds[2], -5, first.geometry.bounds[2] + 9, 5), "beside", holes=(1,)
    )
    green = beside if second is Kind.PUTTING_GREEN else None
    both = course(BOUNDARY, first, beside, holes=[hole(green=green)])
    x = first.geometry.bounds[2] + 0.01
    assert area_at(both, x, 0, 1).area is area
    assert AREAS[Ground(int(areas_of(both, np.array([[x, 0.0]]), 1)[0]))] is area


@pytest.mark.parametrize("feature_", [BUNKER, RED, YELLOW, GREEN, TEE], ids=lambda f: f.kind.value)
def test_a_ball_lies_in_a_specific_area_as_soon_as_part_of_it_does(feature_) -> None:
    """Rule 2.2c: part of the ball in the general area and part in a specific area counts as the specific area.

    The ball's centre is outside the straight edge by a tenth of a millimetre less, then more, than its radius.
    """
    edge = feature_.geometry.bounds[2]
    inside, outside = (area_at(LINKS, edge + BALL_RADIUS + d, 0, 1) for d in (-1e-4, 1e-4))
    assert inside.feature is feature_
    assert outside.area is Area.GENERAL_AREA
    assert inside.edge_distance == pytest.approx(1e-4, abs=2e-6)
    assert outside.edge_distance == pytest.approx(1e-4, abs=2e-6)


def test_the_radius_is_that_of_the_equipment_rules() -> None:
    """Equipment Rules: a ball's diameter is not less than 1.680 inches, 42.67 mm."""
    assert abs(2 * BALL_RADIUS - 1.680 * 0.0254) < 5e-6


def test_out_of_bounds_only_when_all_of_the_ball_is() -> None:
    """Rule 18.2a: a ball with any part inside the boundary edge is in bounds."""
    assert area_at(LINKS, 300 + RADIUS - 1e-4, 0, 1).area is Area.GENERAL_AREA
    assert area_at(LINKS, 300 + RADIUS + 1e-4, 0, 1).out_of_bounds
    assert area_at(LINKS, 300, 0, 1).edge_distance == pytest.approx(RADIUS, abs=2e-6)


def test_a_tangent_ball_touches() -> None:
    """Within the one named tolerance a ball that just touches an edge touches it."""
    assert area_at(LINKS, BUNKER.geometry.bounds[2] + RADIUS, 0, 1).area is Area.BUNKER
    assert area_at(LINKS, 300 + RADIUS, 0, 1).area is Area.GENERAL_AREA


def test_a_corner_is_decided_by_distance() -> None:
    """Beyond a corner the ball touches within a quarter circle of its radius, not within a square."""
    x, y = BUNKER.geometry.bounds[2:]
    diagonal = RADIUS / math.sqrt(2)
    assert area_at(LINKS, x + diagonal - 1e-4, y + diagonal - 1e-4, 1).area is Area.BUNKER
    assert area_at(LINKS, x + 0.9 * RADIUS, y + 0.9 * RADIUS, 1).area is Area.GENERAL_AREA


def test_an_area_out_of_bounds_inside_the_boundary() -> None:
    """An internal boundary counts only on the holes it is set for (Committee Procedures 2A(2)), and wholly inside only."""
    fence = feature(Kind.OUT_OF_BOUNDS, square(200, 0, 10), "fence", holes=(1,))
    links = course(BOUNDARY, fence, GREEN, OTHER_GREEN, holes=HOLES)
    assert area_at(links, 200, 0, 1).out_of_bounds
    assert area_at(links, 200, 0, 1).feature is fence
    assert area_at(links, 200, 0, 2).area is Area.GENERAL_AREA
    assert area_at(links, 210 - RADIUS + 1e-4, 0, 1).area is Area.GENERAL_AREA
    assert area_at(links, 210 - RADIUS - 1e-4, 0, 1).out_of_bounds


def test_without_a_boundary_out_of_bounds_is_not_told() -> None:
    """A map without a boundary says on every answer that it cannot tell out of bounds, save inside a mapped area."""
    links = course(BUNKER, feature(Kind.OUT_OF_BOUNDS, square(200, 0, 10)))
    assert DoubtKind.NO_BOUNDARY in kinds(area_at(links, 60, 0, 1))
    assert area_at(links, 200, 0, 1).out_of_bounds
    assert area_at(links, 5000, 0, 1).area is Area.GENERAL_AREA
    assert list(areas_of(links, np.array([[200.0, 0.0], [5000.0, 0.0], [60.0, 0.0]]), 1)) == [
        Ground.OUT_OF_BOUNDS,
        Ground.GENERAL_AREA,
        Ground.BUNKER,
    ]


def test_conditions_touched_are_listed() -> None:
    """Every condition that any part of the ball touches is named, whatever the area."""
    path = feature(Kind.PATH, square(30, 0, 2), "path", tags={"surface": "asphalt"})
    repair = feature(Kind.GROUND_UNDER_REPAIR, square(33, 0, 2), "repair")
    links = course(BOUNDARY, path, repair)
    reading = area_at(links, 31.5, 0, 1)
    assert reading.conditions == (path, repair)
    assert reading.touches(Kind.GROUND_UNDER_REPAIR)
    assert not reading.touches(Kind.NO_PLAY_ZONE)
    assert area_at(links, 32 + RADIUS - 1e-4, 0, 1).touches(Kind.PATH)
    assert not area_at(links, 32 + RADIUS + 1e-4, 0, 1).touches(Kind.PATH)


def test_a_bunker_inside_a_penalty_area_changes_nothing() -> None:
    """Rule 2.2c decides by the first area in the order: only edges before it can change the answer."""
    pit = feature(Kind.BUNKER, square(80, 0, 1), "pit")
    links = course(BOUNDARY, RED, pit)
    assert area_at(links, 81, 0, 1).edge_distance == pytest.approx(4 + RADIUS, abs=2e-6)


def test_an_island_in_a_penalty_area_is_not_in_it() -> None:
    """A hole in a mapped area is outside it, by distance to the inner edge."""
    moat = feature(Kind.YELLOW_PENALTY_AREA, square(100, 0, 20).difference(square(100, 0, 5)), "moat")
    links = course(BOUNDARY, moat)
    assert area_at(links, 100, 0, 1).area is Area.GENERAL_AREA
    assert area_at(links, 100, 0, 1).edge_distance == pytest.approx(5 - RADIUS, abs=2e-6)
    assert area_at(links, 105 - RADIUS + 1e-4, 0, 1).area is Area.PENALTY_AREA


def test_the_ball_in_two_colours_is_left_to_the_referee() -> None:
    """Part in a red and part in a yellow penalty area: a penalty area, its colour open."""
    red = feature(Kind.RED_PENALTY_AREA, box(70, -5, 80, 5), "red")
    yellow = feature(Kind.YELLOW_PENALTY_AREA, box(80, -5, 90, 5), "yellow")
    links = course(BOUNDARY, red, yellow)
    reading = area_at(links, 80, 0, 1)
    assert (reading.area, reading.colour) == (Area.PENALTY_AREA, None)
    assert DoubtKind.TWO_COLOURS in kinds(reading)
    assert area_at(links, 80 - 2 * RADIUS, 0, 1).colour is PenaltyColour.RED
    assert area_at(links, 80 + 2 * RADIUS, 0, 1).colour is PenaltyColour.YELLOW
    assert area_at(links, 80 + 2 * RADIUS, 0, 1).edge_distance == pytest.approx(RADIUS, abs=2e-6)


def test_unmarked_water_is_a_red_penalty_area_of_unknown_edge() -> None:
    """Definition of penalty area: water on the course, marked or not; red where no colour is shown."""
    pond = feature(Kind.WATER, square(80, 0, 5), "pond")
    ditch = feature(Kind.WATER, LineString([(100, -50), (100, 50)]), "ditch")
    links = course(BOUNDARY, pond, ditch)
    wet = area_at(links, 80, 0, 1)
    assert (wet.area, wet.colour, wet.feature) == (Area.PENALTY_AREA, PenaltyColour.RED, pond)
    assert DoubtKind.UNMARKED_WATER in kinds(wet)
    for x in (86, 98):
        beside = area_at(links, x, 0, 1)
        assert beside.area is Area.GENERAL_AREA
        assert DoubtKind.UNMARKED_WATER in kinds(beside)
    assert DoubtKind.UNMARKED_WATER not in kinds(area_at(links, 92.5, 0, 1))


def test_the_nearest_water_is_named_and_a_mapped_stream_is_no_unmarked_water() -> None:
    """Of two waters the nearer is named; a stream tagged as a penalty area is one, though its edge is not mapped."""
    far = feature(Kind.WATER, LineString([(104, -50), (104, 50)]), "far")
    stream = feature(Kind.WATER, LineString([(97, -50), (97, 50)]), "stream", tags={"golf": "water_hazard"})
    (doubt,) = area_at(course(BOUNDARY, GREEN, far, stream), 100, 0, 1).doubts
    assert doubt.feature is stream
    assert doubt.words == "a penalty area of which the map knows only the middle is 3.0 m away"
    (doubt,) = area_at(course(BOUNDARY, GREEN, far, stream), 102, 0, 1).doubts
    assert doubt.words == "unmarked water is 2.0 m away: a red penalty area, whose edge the map does not know"


def test_a_mown_tee_is_not_the_teeing_area_for_certain() -> None:
    """Definition of teeing area: it depends on the tee-markers; a mapped teeing area of the day decides alone."""
    assert kinds(area_at(LINKS, 0, 0, 1)) == {DoubtKind.TEE_MARKERS}
    today = feature(Kind.TEEING_AREA, box(-2, -3, 0, 3), "today", holes=(1,), tags={"marram": "teeing_area"})
    links = course(BOUNDARY, TEE, today, GREEN, holes=[hole(green=GREEN, tees=[TEE, today])])
    assert area_at(links, -1, 0, 1).certain
    assert area_at(links, -1, 0, 1).area is Area.TEEING_AREA
    assert area_at(links, 3, 0, 1).area is Area.GENERAL_AREA


def test_a_tee_of_no_hole_and_a_green_not_mapped_are_doubts() -> None:
    """Where the map is known to lack something that could decide, the answer says so."""
    idle = feature(Kind.TEEING_AREA, square(20, 0, 3), "idle")
    links = course(BOUNDARY, idle, holes=[hole()])
    assert kinds(area_at(links, 20, 0, 1)) == {DoubtKind.IDLE_TEE, DoubtKind.NO_GREEN}


def test_an_outline_serving_as_boundary_is_a_doubt_near_it() -> None:
    """Out of bounds, or within 10 m of an outline that is no mapped boundary, the boundary is to be looked for."""
    outline = feature(Kind.BOUNDARY, box(-100, -100, 300, 100), tags={"leisure": "golf_course"})
    links = course(outline, GREEN)
    assert DoubtKind.OUTLINE_AS_BOUNDARY in kinds(area_at(links, 310, 0, 1))
    assert DoubtKind.OUTLINE_AS_BOUNDARY in kinds(area_at(links, 291, 0, 1))
    assert area_at(links, 280, 0, 1).certain


def test_a_path_of_unknown_width_is_a_doubt_beside_it() -> None:
    """Near the middle line of a path whose width is not mapped, the eye decides."""
    path = feature(Kind.PATH, LineString([(30, -50), (30, 50)]), "path")
    links = course(BOUNDARY, GREEN, path)
    assert kinds(area_at(links, 32, 0, 1)) == {DoubtKind.PATH_WITHOUT_WIDTH}
    assert area_at(links, 34, 0, 1).certain


def test_a_path_of_unknown_surface_is_a_doubt_on_it() -> None:
    """Definition of obstruction: an artificially surfaced path; on one of unknown surface the eye decides."""
    bare = feature(Kind.PATH, square(30, 0, 2), "bare")
    links = course(BOUNDARY, GREEN, bare)
    assert kinds(area_at(links, 30, 0, 1)) == {DoubtKind.PATH_WITHOUT_SURFACE}
    assert area_at(links, 33, 0, 1).certain


def test_a_place_beyond_the_rectangle_the_map_was_cut_to_is_a_doubt() -> None:
    """Where the file was cut, things may be missing."""
    from dataclasses import replace

    links = replace(LINKS, covered=box(-100, -100, 200, 100))
    assert DoubtKind.NOT_COVERED in kinds(area_at(links, 250, 0, 1))
    assert area_at(links, 190, 0, 1).certain


def test_accuracy_that_could_flip_the_answer_says_so() -> None:
    """An answer that could change within the stated accuracy says how near the edge is; otherwise it is certain."""
    reading = area_at(LINKS, 65 + RADIUS + 0.4, 0, 1, accuracy=0.5)
    assert kinds(reading) == {DoubtKind.WITHIN_ACCURACY}
    assert reading.doubts[0].words == "within 0.40 m of the edge of the bunker: measure on the ground"
    assert reading.edge is BUNKER
    assert area_at(LINKS, 65 + RADIUS + 0.4, 0, 1, accuracy=0.3).certain


def test_accuracy_counts_for_conditions_and_wrong_greens_too() -> None:
    """Whether the ball touches a condition or a wrong green can flip as well."""
    repair = feature(Kind.GROUND_UNDER_REPAIR, square(30, 0, 2), "repair")
    links = course(BOUNDARY, GREEN, OTHER_GREEN, repair, holes=HOLES)
    for x, y, near in ((32.4, 0, repair), (31.7, 0, repair), (139.7, 60, OTHER_GREEN)):
        found = [
            d.feature
            for d in area_at(links, x, y, 1, accuracy=0.5).doubts
            if d.kind is DoubtKind.WITHIN_ACCURACY
        ]
        assert found == [near]
    assert area_at(links, 30, 0, 1, accuracy=0.5).certain


@pytest.mark.parametrize("accuracy", [-1.0, math.inf, math.nan])
def test_an_accuracy_that_is_none_is_refused(accuracy) -> None:
    """Accuracy is a finite number of metres, 0 or more."""
    with pytest.raises(BadPlace, match="accuracy"):
        area_at(LINKS, 0, 0, 1, accuracy=accuracy)


@pytest.mark.parametrize("place", [(math.nan, 0), (1e6, 0), (0, -math.inf)])
def test_a_place_far_from_the_course_is_refused(place) -> None:
    """A place that is not on or near the course is an error, never an answer."""
    with pytest.raises(BadPlace, match="middle of the course"):
        area_at(LINKS, *place, 1)
    with pytest.raises(BadPlace, match="middle of the course"):
        areas_of(LINKS, np.array([place], dtype=float), 1)


def test_a_hole_that_is_not_in_the_map_is_refused() -> None:
    """The error names the holes there are."""
    with pytest.raises(BadPlace, match="has no hole 7; it has: 1, 2"):
        area_at(LINKS, 0, 0, 7)
    with pytest.raises(BadPlace, match="no hole 7"):
        areas_of(LINKS, np.zeros((1, 2)), 7)


def test_degrees_read_as_metres_do() -> None:
    """A place in degrees is the same place in metres; degrees out of range are refused."""
    longitude, latitude = LINKS.plane.to_degrees(60, 0)
    assert area_at_degrees(LINKS, longitude, latitude, 1).area is Area.BUNKER
    with pytest.raises(BadPlace, match="no latitude and longitude"):
        area_at_degrees(LINKS, 3.0, 95.0, 1)


def test_places_of_another_shape_are_refused() -> None:
    """Many places come as an array of two columns; none is an empty answer."""
    with pytest.raises(BadPlace, match=r"\(n, 2\)"):
        areas_of(LINKS, np.zeros(4), 1)
    assert len(areas_of(LINKS, np.zeros((0, 2)), 1)) == 0


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
    st.booleans(),
)
RING = feature(Kind.BOUNDARY, Point(0, 0).buffer(45), tags={"marram": "boundary"})


def drawn_map(parts):
    red, yellow, bunkers, greens, tees, fences, bounded = parts
    only = hole(green=greens[0] if greens else None, tees=tees)
    return course(
        *([RING] if bounded else []), *red, *yellow, *bunkers, *greens, *tees, *fences, holes=[only]
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
    red, yellow = touches(Kind.RED_PENALTY_AREA), touches(Kind.YELLOW_PENALTY_AREA)
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


@settings(max_examples=60, deadline=None)
@given(parts=maps, seed=st.integers(0, 2**32 - 1))
def test_many_balls_agree_with_an_independent_calculation(parts, seed) -> None:
    """Grid and distances give what ray casting and segment distances in numpy give, at random and at the edges."""
    links = drawn_map(parts)
    random = np.random.default_rng(seed)
    places = random.uniform(-60, 60, (300, 2))
    corners = [np.asarray(f.geometry.exterior.coords) for f in links.features]
    if corners:
        near = np.vstack(corners)
        places = np.vstack([places, near + random.normal(0, 0.03, near.shape)])
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
