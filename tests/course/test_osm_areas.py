"""Areas of relations whose rings touch, share an edge or lie in one another (OpenStreetMap's wiki, Relation:multipolygon)."""

import pytest
from shapely.geometry import Polygon, box

from marram.course.reading.osm_areas import area_of, joined

SQUARE = box(0, 0, 20, 20)
BESIDE = box(20, 0, 40, 20)
INSIDE = box(5, 5, 10, 10)


def ring(shape):
    return [tuple(place) for place in shape.exterior.coords]


def read(*members):
    """Return the area of rings given by role; nodes are named by their places."""
    ways = [(role, [str(place) for place in places]) for role, places in members]
    return area_of(ways, {str(place): place for _, places in members for place in places})


ISLAND = SQUARE.difference(INSIDE).union(box(6, 6, 8, 8))
WAY_BETWEEN = [(20.0, 0.0), (20.0, 20.0)]


@pytest.mark.parametrize(
    ("members", "whole"),
    [
        ([("outer", ring(SQUARE)), ("outer", ring(BESIDE))], box(0, 0, 40, 20)),
        (
            [
                ("outer", WAY_BETWEEN),
                ("outer", [(20.0, 20.0), (0.0, 20.0), (0.0, 0.0), (20.0, 0.0)]),
                ("outer", [(20.0, 0.0), (40.0, 0.0), (40.0, 20.0), (20.0, 20.0)]),
                ("outer", WAY_BETWEEN[::-1]),
            ],
            box(0, 0, 40, 20),
        ),
        (
            [("outer", ring(SQUARE)), ("inner", ring(INSIDE)), ("inner", ring(box(10, 5, 15, 10)))],
            SQUARE.difference(box(5, 5, 15, 10)),
        ),
        ([("outer", ring(SQUARE)), ("inner", ring(INSIDE)), ("outer", ring(box(6, 6, 8, 8)))], ISLAND),
        ([("", ring(SQUARE)), ("", ring(INSIDE))], SQUARE.difference(INSIDE)),
        ([("outer", ring(SQUARE)), ("outer", ring(SQUARE)[::-1])], SQUARE),
        (
            [("outer", [(0.0, 0.0), (5.0, 5.0), (10.0, 0.0), (10.0, 10.0), (5.0, 5.0), (0.0, 10.0), (0.0, 0.0)])],
            Polygon([(0, 0), (5, 5), (0, 10)]).union(Polygon([(10, 0), (10, 10), (5, 5)])),
        ),
    ],
    ids=["side by side", "a way between, twice", "two inner rings side by side", "an island", "no roles", "twice", "touching itself"],
)  # fmt: skip
def test_rings_that_touch_or_lie_in_one_another_are_read(members, whole) -> None:
    """What two rings share is no edge; what lies in an inner ring is area again; a ring given twice counts once."""
    assert read(*members).equals(whole)


@pytest.mark.parametrize(
    "members",
    [
        [("outer", ring(SQUARE)), ("outer", ring(box(10, 10, 30, 30)))],
        [("outer", ring(SQUARE)), ("inner", ring(box(15, 5, 25, 10)))],
        [("inner", ring(SQUARE)), ("outer", ring(INSIDE))],
        [("outer", ring(SQUARE)), ("inner", ring(box(50, 50, 60, 60)))],
        [("outer", ring(SQUARE)), ("outer", ring(INSIDE))],
        [("outer", [(0.0, 0.0), (10.0, 10.0), (10.0, 0.0), (0.0, 10.0), (0.0, 0.0)])],
        [("outer", ring(SQUARE)[:-1])],
    ],
    ids=["outer over outer", "inner over the edge", "roles the other way round", "inner outside", "outer in outer", "crossing", "open"],
)  # fmt: skip
def test_what_may_be_meant_otherwise_is_not_read(members) -> None:
    """Edges that cross or are open, and roles that say otherwise than the nesting, stay to be mended."""
    assert read(*members) is None


def joined_of(*members):
    """Return what rings given by role make; nodes are named by their places."""
    ways = [(role, [str(place) for place in places]) for role, places in members]
    return joined(ways, {str(place): place for _, places in members for place in places})


CROSSED = [(0.0, 0.0), (20.0, 20.0), (20.0, 0.0), (0.0, 20.0), (0.0, 0.0)]


@pytest.mark.parametrize("other", [box(50, 50, 60, 60), BESIDE], ids=["far away", "touching from outside"])
def test_an_inner_ring_outside_every_outer_one_is_told(other) -> None:
    """It cuts nothing out, and a place of it is given; the inner ring that lies inside is cut out."""
    made = joined_of(("outer", ring(SQUARE)), ("inner", ring(INSIDE)), ("inner", ring(other)))
    (told,) = made.ignored
    assert told in ring(other)
    assert made.area.equals(SQUARE.difference(INSIDE))


def test_an_inner_ring_outside_an_edge_that_crosses_itself_is_told() -> None:
    """Beside what is wrong with the edge."""
    made = joined_of(("outer", CROSSED), ("inner", ring(box(50, 50, 60, 60))))
    assert len(made.ignored) == 1
    assert not made.area.is_valid


def test_an_inner_ring_over_the_edge_is_no_area_and_not_passed_over() -> None:
    """However little of it lies inside: it is used, and the area is then not valid, which is told as such."""
    made = joined_of(("outer", ring(SQUARE)), ("inner", ring(box(19, 5, 60, 10))))
    assert made.ignored == ()
    assert not made.area.is_valid
