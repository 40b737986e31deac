"""What relief refuses, asks for or does at its corners: reference points out of bounds, a way all inside, no room."""

from math import hypot

import pytest
from shapely.geometry import Point, box

from marram.course.model import Feature, Kind
from marram.errors import BadPlace
from marram.relief import (
    Drawn,
    NeedsPlace,
    NoRelief,
    Place,
    Situation,
    Why,
    last_crossing,
    relief_areas,
)
from marram.relief.constructions.stroke_and_distance import teeing_area
from marram.relief.place.place_facts import place_facts
from marram.rules.relief_option import Limit, Reference, ReliefKind, Setting
from tests.relief.ground_for_tests import (
    EMBEDDED,
    GREEN,
    HOLE,
    IN_2023,
    LINE_2023,
    PLAYER,
    STROKE_AND_DISTANCE,
    course,
    option,
)

COURSE = course()
IN_GENERAL_AREA_NEAREST = option(
    ReliefKind.FREE,
    Reference.NEAREST_SPOT_IN_GENERAL_AREA,
    1,
    Limit.NOT_NEARER,
    Limit.GENERAL_AREA,
)


def draw(wanted, ball=None, where=COURSE, **more):
    (answer,) = relief_areas(
        Situation(where, 1, ball=ball, played_on=IN_2023, player=PLAYER, **more), [wanted]
    )
    return answer


def test_a_reference_point_out_of_bounds_is_refused_by_its_place():
    """The area a drop must stay in is that of the reference point, and out of bounds there is none."""
    with pytest.raises(BadPlace, match=r"reference point \(100\.00, 50\.00\) is out of bounds"):
        draw(STROKE_AND_DISTANCE, (0.0, 60.0), previous=(100.0, 50.0))


def test_a_stroke_from_the_green_is_replayed_on_its_spot():
    """Rule 14.6d: the ball is replaced where the stroke was made, nothing is measured."""
    spot = (3.0, 195.0)
    area = draw(STROKE_AND_DISTANCE, (0.0, 60.0), previous=spot).areas[0]

    assert area.reference == spot
    assert area.radius == 0


def test_tee_markers_on_one_spot_are_refused():
    """Two markers less than a hand apart give no front of a teeing area."""
    with pytest.raises(BadPlace, match="stand on one spot"):
        teeing_area(((0.0, 0.0), (0.05, 0.0)), HOLE, 1.15)


@pytest.mark.parametrize(
    ("way", "words"),
    [
        ([(0.0, 132.0)], "at least where the ball was played from"),
        ([(-10.0, 131.0), (0.0, 132.0)], "The whole way lies in ditch"),
    ],
)
def test_a_way_that_crosses_no_edge_is_refused(way, words):
    """A way needs a beginning outside the penalty area to cross its edge."""
    with pytest.raises(BadPlace, match=words):
        last_crossing(COURSE, 1, way)


def test_a_spot_before_the_point_on_the_line_is_refused():
    """Dropped on the line but nearer the hole than the crossing point: how much nearer is told."""
    entry = (10.0, 134.0)
    x, y = entry[0] - HOLE[0], entry[1] - HOLE[1]
    step = 2.0 / hypot(x, y)

    with pytest.raises(BadPlace, match=r"2\.00 m nearer the hole than the point on the line"):
        draw(LINE_2023, (0.0, 132.0), entry=entry, dropped_at=(entry[0] - x * step, entry[1] - y * step))


def test_a_ball_embedded_is_asked_for_and_moved_to_the_general_area():
    """Rule 16.3b since 2023: where right behind the ball is no general area, the nearest spot of it counts.

    With the ball 10 cm inside the green, right behind it is still green: the spot lies on the green's edge.
    """
    assert draw(IN_GENERAL_AREA_NEAREST) == NeedsPlace(IN_GENERAL_AREA_NEAREST, (Place.BALL,))
    ball = (0.0, HOLE[1] - 11.9)
    answer = draw(IN_GENERAL_AREA_NEAREST, ball)
    assert isinstance(answer, Drawn)
    reference = answer.areas[0].reference
    assert GREEN.exterior.distance(Point(reference)) < 0.05
    assert hypot(reference[0] - HOLE[0], reference[1] - HOLE[1]) >= 11.9


def test_without_any_general_area_there_is_no_spot_for_an_embedded_ball():
    """On a course that is all penalty area nothing is drawn, and why is said."""
    flooded = course(Feature(Kind.RED_PENALTY_AREA, "flood", box(-100, -100, 100, 300)))

    assert draw(IN_GENERAL_AREA_NEAREST, (0.0, 60.0), flooded) == NoRelief(
        IN_GENERAL_AREA_NEAREST, Why.NO_NEAREST_POINT
    )
    assert isinstance(draw(EMBEDDED, (0.0, 60.0)), Drawn)


def test_a_dropping_zone_that_nobody_gave_is_asked_for():
    """Neither the map's zone nor one that serves something else is taken for it."""
    zone = option(
        ReliefKind.DROPPING_ZONE, Reference.DROPPING_ZONE, 0, Limit.WITHIN_DROPPING_ZONE, setting=Setting.DROP
    )

    answer = draw(zone, (0.0, 60.0))
    assert isinstance(answer, NeedsPlace)


def test_a_place_far_away_hands_over_no_area_and_says_how_far():
    """Twelve kilometres off is a slip of the finger: nothing follows from it, and the distance is told."""
    hole = COURSE.hole(1)
    found = place_facts(COURSE, hole, (12_000.0, 0.0))

    assert "area_of_ball" not in found.facts
    assert "all_of_ball_out_of_bounds" not in found.facts
    assert any("12" in one and "km" in one for one in found.doubts)


def test_a_ball_in_a_no_play_zone_is_told_by_the_map():
    """The zone interferes because the ball lies in it; that is no free relief of another kind."""
    zone = Feature(Kind.NO_PLAY_ZONE, "young trees", box(-60, 60, -40, 80))
    where = course(zone)
    found = place_facts(where, where.hole(1), (-50.0, 70.0))

    assert found.facts["no_play_zone_interference"] == "ball_inside"
    assert "interference" not in found.facts
