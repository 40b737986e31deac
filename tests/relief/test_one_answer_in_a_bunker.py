"""In a bunker there is one answer: complete relief where a point of it exists, else maximum available relief.

Rule 16.1c(1): the reference point is the nearest point of complete relief in the bunker; only where there is none
is it the point of maximum available relief.
"""

from math import cos, hypot, pi, sin

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.geometry import Point, Polygon

from marram.course.model import Feature, Kind
from marram.relief import Drawn, NoRelief, Situation, Why, feature_collection, relief_areas, svg
from marram.relief.geometry.outline import Outline
from marram.relief.geometry.tolerance import TOLERANCE
from marram.relief.interference.shape import Footprint
from marram.relief.place.situation import Stroke
from tests.relief.ground_for_tests import FREE_BUNKER, IN_2023, MAXIMUM_BUNKER, PLAYER, course_at

HOLE = (0.0, 150.0)


def star(radii, at=(0.0, 0.0)):
    """A polygon around a place with these distances to its corners."""
    turn = 2 * pi / len(radii)
    return Polygon([(at[0] + r * cos(i * turn), at[1] + r * sin(i * turn)) for i, r in enumerate(radii)])


lengths = st.floats(2.0, 9.0).map(lambda one: round(one, 2))
small = st.floats(0.3, 3.0).map(lambda one: round(one, 2))
offset = st.floats(-4.0, 4.0).map(lambda one: round(one, 2))


@st.composite
def wet_bunkers(draw):
    """A bunker, water over part of it, nearly all or all of it, and a ball lying in both."""
    sand = star(draw(st.lists(lengths, min_size=5, max_size=9)))
    how = draw(st.sampled_from(["part", "nearly all", "all"]))
    if how == "part":
        water = star(draw(st.lists(small, min_size=4, max_size=7)), (draw(offset), draw(offset)))
    else:
        water = sand.buffer(draw(small) * (-0.7 if how == "nearly all" else 0.5), join_style="mitre")
    both = water.intersection(sand)
    assume(not both.is_empty and both.area > 0.01)
    ball = both.representative_point()
    return how, sand, water, (ball.x, ball.y)


def both_answers(sand, water, ball):
    where = course_at(HOLE, Feature(Kind.BUNKER, "sand", sand))
    situation = Situation(where, 1, ball=ball, played_on=IN_2023, player=PLAYER, condition=Outline(water))
    return where, *relief_areas(situation, [FREE_BUNKER, MAXIMUM_BUNKER])


@settings(max_examples=40, deadline=None)
@given(wet_bunkers())
def test_exactly_one_of_complete_and_maximum_relief_is_drawn(wet):
    """Never neither, never both; what is drawn lies in the bunker, not nearer the hole, and can be written."""
    how, sand, water, ball = wet
    where, complete, maximum = both_answers(sand, water, ball)

    if isinstance(complete, Drawn):
        assert maximum == NoRelief(MAXIMUM_BUNKER, Why.COMPLETE_RELIEF_AVAILABLE)
        assert how != "all"
        drawn = complete
    else:
        assert complete == NoRelief(FREE_BUNKER, Why.NO_NEAREST_POINT)
        assert isinstance(maximum, Drawn)
        drawn = maximum
    for area in drawn.areas:
        assert sand.distance(Point(area.reference)) < TOLERANCE
        assert hypot(area.reference[0], area.reference[1] - 150) >= hypot(ball[0], ball[1] - 150) - TOLERANCE
    written = feature_collection(drawn.areas, where.plane)
    for one in written["features"]:
        if one["geometry"]["type"] == "Polygon":
            assert len(one["geometry"]["coordinates"][0]) >= 4
    assert svg(drawn.areas, where)


def test_complete_relief_with_hardly_any_room_around_it_is_drawn_and_said():
    """A dry tongue whose tip lies just behind the ball: complete relief exists, on less than 0.05 m²."""
    sand = Polygon([(-6, 0), (6, 0), (6, 4), (-6, 4)])
    dry = Polygon([(3.0, 1.0), (2.0, 4.0), (4.0, 4.0)])
    where = course_at(HOLE, Feature(Kind.BUNKER, "sand", sand))
    situation = Situation(
        where,
        1,
        ball=(4.5, 1.3),
        played_on=IN_2023,
        player=PLAYER,
        condition=Outline(sand.buffer(1).difference(dry)),
        stroke=Stroke(footprint=Footprint.of(Point(0, 0).buffer(0.05))),
    )
    complete, maximum = relief_areas(situation, [FREE_BUNKER, MAXIMUM_BUNKER])

    (area,) = complete.areas
    assert 0 < area.area_m2 < 0.05
    assert "relief.hardly_any_room" in area.remarks
    assert maximum == NoRelief(MAXIMUM_BUNKER, Why.COMPLETE_RELIEF_AVAILABLE)
    assert "hardly any room" in svg(complete.areas, where)


def test_an_area_that_is_only_its_point_is_written_as_a_point():
    """A notch in dry sand that just holds the lie: no ring without an area is ever written."""
    sand = Polygon([(-6, 0), (6, 0), (6, 4), (-6, 4)])
    dry = Polygon([(3.0, 1.0), (2.9, 1.1), (3.0, 1.2), (3.1, 1.1)])
    where = course_at(HOLE, Feature(Kind.BUNKER, "sand", sand))
    situation = Situation(
        where,
        1,
        ball=(4.5, 1.2),
        played_on=IN_2023,
        player=PLAYER,
        condition=Outline(sand.buffer(1).difference(dry)),
        stroke=Stroke(footprint=Footprint.of(Polygon([(0.1, 0), (0, 0.1), (-0.1, 0), (0, -0.1)]))),
    )
    (answer,) = relief_areas(situation, [FREE_BUNKER])

    (area,) = answer.areas
    assert area.reference == pytest.approx((3.0, 1.1))
    written = feature_collection(answer.areas, where.plane)["features"][0]
    assert written["geometry"]["type"] == "Point"
    assert written["properties"]["area_m2"] == 0
