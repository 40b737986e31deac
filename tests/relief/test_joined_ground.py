"""Relief from ground that is mapped in pieces: no seam is an edge, for penalty areas, bunkers and paths."""

import math
import random
from datetime import date

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, box

from marram.course.model import Feature, Kind
from marram.relief import Drawn, NoRelief, Situation, relief_areas
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.interference.usual_footprint import facing, footprint
from marram.relief.place.abnormal_course_conditions import conditions_near
from marram.relief.place.dropping_zones import zones_serving
from tests.course import every_kind
from tests.relief.ground_for_tests import (
    EMBEDDED,
    FREE_GENERAL,
    LATERAL_IN_BUNKER,
    LATERAL_PENALTY_AREA,
    LINE_2023,
    PLAYER,
    course_at,
)

IN_2023 = date(2023, 6, 1)
HOLE = (0.0, 0.0)


def draw(option, *features, condition=None, **places):
    links = course_at(HOLE, *features)
    (answer,) = relief_areas(
        Situation(links, 1, played_on=IN_2023, player=PLAYER, condition=condition, **places), [option]
    )
    return answer


def inside(area, count=150):
    """Places that the area says are inside."""
    x0, y0, x1, y1 = area.polygon.bounds
    rng = random.Random(5)
    places = ((rng.uniform(x0, x1), rng.uniform(y0, y1)) for _ in range(count))
    return [place for place in places if area.contains(*place).inside]


lengths = st.lists(st.integers(3, 12), min_size=2, max_size=5)


def strip_of(kind, lengths, width, off=0.0):
    """A straight strip along y = 40 in so many pieces, so far apart."""
    features, x = [], -20.0
    for i, length in enumerate(lengths):
        features.append(Feature(kind, f"piece {i}", box(x + off, 40, x + length, 40 + width)))
        x += length
    return features, box(-20, 40, x, 40 + width)


@settings(max_examples=40, deadline=None)
@given(lengths=lengths, width=st.integers(2, 6), part=st.integers(0, 100), off=st.sampled_from([0.0, 0.006]))
def test_penalty_relief_never_lies_in_the_same_water(lengths, width, part, off):
    """Rule 17.1d: lateral relief and back on the line from a burn in pieces lie outside all of it."""
    burn, whole = strip_of(Kind.RED_PENALTY_AREA, lengths, width, off)
    far_side = LineString([(-20, 40 + width), (whole.bounds[2], 40 + width)])
    x, y = far_side.interpolate(part / 100, normalized=True).coords[0]
    water = whole.buffer(-0.005)
    lateral = draw(LATERAL_PENALTY_AREA, *burn, entry=(x, y))
    assert isinstance(lateral, Drawn)
    assert not any(water.contains(Point(place)) for area in lateral.areas for place in inside(area))
    line = draw(LINE_2023, *burn, entry=(x, y))
    assert isinstance(line, Drawn)
    drop_line = line.areas[0].drop_line
    for start, end in drop_line.stretches:
        assert LineString([drop_line.at(start), drop_line.at(end)]).intersection(water).length < 0.01


@settings(max_examples=40, deadline=None)
@given(lengths=lengths, width=st.integers(4, 8), off=st.sampled_from([0.0, 0.006]), which=st.integers(0, 3))
def test_relief_in_a_bunker_goes_on_over_its_seams(lengths, width, off, which):
    """Rule 19.3a: within two club-lengths the whole bunker is in, whichever piece the ball lies in."""
    bunker, whole = strip_of(Kind.BUNKER, lengths, width, off)
    seam = -20.0 + sum(lengths[: 1 + which % (len(lengths) - 1)])
    ball = (seam - 0.5, 40 + width / 2)
    answer = draw(LATERAL_IN_BUNKER, *bunker, ball=ball)
    assert isinstance(answer, Drawn)
    (area,) = answer.areas
    least = math.hypot(*ball)
    for x in (-1.5, -0.5, 0.5, 1.2):
        for y in (0.2, 0.9, 1.4):
            place = (ball[0] + x, ball[1] + y)
            if math.hypot(*place) > least + 0.01 and whole.buffer(-0.01).contains(Point(place)):
                assert area.contains(*place).inside, place


@settings(max_examples=40, deadline=None)
@given(
    turn=st.integers(-70, 70),
    aside=st.tuples(st.integers(-8, 8), st.integers(-8, 8)),
    width=st.sampled_from([2.0, 2.4, 3.0]),
    mapped=st.booleans(),
)
def test_relief_from_a_path_in_several_lines_is_from_all_of_it(turn, aside, width, mapped):
    """Rule 16.1b: at the joint of two lines the reference point, stance and swing are clear of both, with or without a width."""
    joint = (0.0, 60.0)
    end = (12 * math.cos(math.radians(turn)), 60 + 12 * math.sin(math.radians(turn)))
    lines = [[(-12, 60), joint], [joint, end]]
    known = width if mapped else None
    path = [
        every_kind.line(Kind.PATH, places, f"line {i}", known, highway="track", surface="gravel")
        for i, places in enumerate(lines)
    ]
    whole = LineString([*lines[0], end]).buffer((width if mapped else 2.5) / 2 - 0.01, cap_style="flat")
    ball = (joint[0] + aside[0] / 10, joint[1] + aside[1] / 10)
    links = course_at(HOLE, *path)
    near = conditions_near(links, 1, ball, 1.0)
    assert len(near) == 1
    answer = draw(FREE_GENERAL, *path, condition=near[0], ball=ball)
    if isinstance(answer, NoRelief):
        pytest.fail(f"no relief: {answer.why}")
    made = footprint(right_handed=True, direction=facing(ball, HOLE))
    for area in answer.areas:
        assert whole.distance(Point(area.reference)) >= BALL_RADIUS
        assert made.at(area.reference).intersection(whole).area < 1e-3


@pytest.mark.parametrize(
    "water",
    [
        every_kind.line(Kind.WATER, [(-50, 60.5), (50, 60.5)], "stream", waterway="stream"),
        every_kind.line(Kind.WATER, [(-50, 61), (50, 61)], "wide ditch", 3, waterway="ditch"),
        every_kind.line(Kind.WATER, [(50, 60.5), (-50, 60.5)], "coast", natural="coastline"),
        Feature(Kind.WATER, "pond", box(-20, 60.4, 20, 70), tags={"natural": "water"}),
    ],
    ids=lambda water: water.ident,
)
def test_relief_never_runs_into_unmarked_water(water):
    """Rule 16.3b: the relief area of an embedded ball is in the general area, so never in water, marked or not."""
    answer = draw(EMBEDDED, water, ball=(0.0, 59.2))
    assert isinstance(answer, Drawn)
    (area,) = answer.areas
    assert max(y for _, y in inside(area, 600)) < 60.41
    links = course_at(HOLE, water)
    (lateral,) = relief_areas(
        Situation(links, 1, played_on=IN_2023, player=PLAYER, entry=(0.0, area.polygon.bounds[3])),
        [LATERAL_PENALTY_AREA],
    )
    assert isinstance(lateral, Drawn)


def test_a_dropping_zone_serves_all_of_what_is_joined():
    """A zone for one piece of a burn serves a ball in any other piece, though it names only the one."""
    assert [zone.ident for zone in zones_serving(every_kind.COURSE, 1, (64.0, -17.0))] == ["zone"]
    assert not zones_serving(every_kind.COURSE, 1, (36.0, 100.0))


def test_conditions_are_offered_once_each_and_apart_by_kind():
    """A path in four lines is one condition; ground under repair beside it is another (see Model Local Rule F-3)."""
    near = conditions_near(every_kind.COURSE, 1, (60.0, 22.0), 1.0)
    assert [one.kind for one in near] == [Kind.PATH]
    both = [one.ident for one in conditions_near(every_kind.COURSE, 1, (36.0, 63.0), 1.0)]
    assert len(both) == 1
    assert both[0] in {"repair 1", "repair 2"}


def test_nothing_changes_where_nothing_is_joined():
    """The outline that relief is measured on is, bit by bit, that of the map."""
    ground = Situation(every_kind.COURSE, 1, played_on=IN_2023, player=PLAYER).ground
    (pond,) = (outline for area, outline in ground.penalty_areas if area.ident == "pond with an island")
    assert shapely.to_wkb(pond.geometry) == shapely.to_wkb(every_kind.ISLAND)
