"""Evacuation points: the nearest one by straight line, the Committee's plan before it, no small shelter from lightning."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Point, box

from marram.course import check, load
from marram.course.evacuation import Offers, way_out, ways_out_of_hole
from marram.course.lies.areas import Area, area_at
from marram.course.model import Kind
from tests.course.drawing import BOUNDARY, course, drawn, feature, hole, one_hole, square, write

HOLES = [hole(1, tee=(0, 0), cup=(150, 0)), hole(2, tee=(150, 40), cup=(0, 40))]


def point(x, y, name, offers=None, holes=()):
    tags = {"evacuation": offers} if offers else {}
    return feature(Kind.EVACUATION_POINT, square(x, y, 1), name, name=name, holes=holes, tags=tags)


HUT, HOUSE, GATE = (
    point(10, 10, "hut", "shelter"),
    point(-60, 0, "house", "building"),
    point(200, 0, "gate", "vehicle"),
)


def test_each_end_of_a_hole_has_its_nearest_point() -> None:
    """Without lightning the hut counts; with it the nearest that protects; distances are to its edge, in metres."""
    here = course(BOUNDARY, HUT, HOUSE, GATE, holes=HOLES)
    told = {
        lightning: [
            (end, one.point.name, one.metres) for end, one in ways_out_of_hole(here, 1, lightning=lightning)
        ]
        for lightning in (False, True)
    }

    assert told[True] == [("tee", "house", 59.0), ("green", "gate", 49.0)]
    assert told[False] == [("tee", "hut", pytest.approx(9 * 2**0.5)), ("green", "gate", 49.0)]


def test_the_plan_of_the_committee_comes_before_the_distance() -> None:
    """A point that names the hole is named, though another is nearer; on other holes the nearest is."""
    planned = point(250, 0, "yard", "vehicle", holes=(1,))
    here = course(BOUNDARY, HOUSE, GATE, planned, holes=HOLES)

    assert [(one.point.name, one.planned) for _, one in ways_out_of_hole(here, 1, lightning=True)] == [
        ("yard", True),
        ("yard", True),
    ]
    assert {one.point.name for _, one in ways_out_of_hole(here, 2, lightning=True)} == {"house", "gate"}


def test_a_planned_shelter_does_not_keep_anybody_from_a_building() -> None:
    """Where the plan names a small shelter alone, lightning sends people to what protects."""
    here = course(BOUNDARY, point(0, 10, "hut", "shelter", holes=(1,)), HOUSE, holes=HOLES)
    found = way_out(here, Point(0, 0), 1, lightning=True)

    assert found is not None
    assert (found.point.name, found.offers) == ("house", Offers.BUILDING)
    assert way_out(course(BOUNDARY, HUT), Point(0, 0), 1, lightning=True) is None


def test_what_lies_across_the_straight_way_is_told() -> None:
    """A penalty area between is named; one beside the way is not."""
    burn = feature(Kind.RED_PENALTY_AREA, box(-30, -20, -20, 20))
    pond = feature(Kind.YELLOW_PENALTY_AREA, box(-30, 40, -20, 60))
    found = way_out(course(BOUNDARY, HOUSE, burn, pond), Point(0, 0), 1, lightning=True)

    assert found is not None
    assert found.crosses == (Kind.RED_PENALTY_AREA,)


@given(
    st.lists(st.tuples(st.integers(-90, 290), st.integers(-90, 90)), min_size=1, max_size=6),
    st.tuples(st.integers(-90, 290), st.integers(-90, 90)),
)
def test_no_other_point_is_nearer(places: list[tuple[int, int]], stood: tuple[int, int]) -> None:
    """Among points of no plan the one named has the least distance of all."""
    points = [point(x, y, str(number), "building") for number, (x, y) in enumerate(places)]
    found = way_out(course(BOUNDARY, *points), Point(stood), 1, lightning=True)

    assert found is not None
    assert found.metres == min(one.geometry.distance(Point(stood)) for one in points)
    assert found.crosses == ()


def test_a_point_is_read_as_ground_for_people_and_no_ball_lies_otherwise(tmp_path) -> None:
    """A mapped point becomes 3 m of ground around it; on it lies the general area; what it does not say is asked for."""
    features = [
        *one_hole(),
        drawn(box(-100, -100, 300, 100), "edge", marram="boundary"),
        drawn(Point(40, 30), "e1", marram="evacuation_point", evacuation="tent"),
        drawn(square(80, 30, 4), "e2", marram="evacuation_point"),
        drawn(square(80, -30, 4), "e3", marram="evacuation_point", evacuation="building"),
        drawn(square(80, -30, 8), "pond", marram="red_penalty_area"),
    ]
    file = write(tmp_path / "course.geojson", features)
    here = load(file)
    first = here.of(Kind.EVACUATION_POINT)[0]

    assert first.geometry.area == pytest.approx(9 * 3.1, rel=0.02)
    found = {(one.check, one.feature) for one in check(file) if one.check.startswith("evacuation")}
    assert found == {
        ("evacuation_point_unsaid", "e1"),
        ("evacuation_point_unsaid", "e2"),
        ("evacuation_point_in_the_way", "e3"),
    }
    reading = area_at(here, first.geometry.centroid.x, first.geometry.centroid.y, 1)
    assert reading.area is Area.GENERAL_AREA
