"""Free relief at many kinds of place, crossing points, and what is said when something is missing or wrong."""

from datetime import date
from math import hypot, pi

import pytest
import shapely
from shapely.geometry import LineString, box

from marram.course.model import Feature, Kind
from marram.errors import BadPlace, DateNotCovered
from marram.relief import (
    Bound,
    Drawn,
    NeedsPlace,
    NoRelief,
    Place,
    Player,
    Situation,
    Stroke,
    Why,
    danger,
    last_crossing,
    relief_areas,
)
from marram.relief.geometry.outline import Outline
from marram.rules.relief_option import Limit, Reference, ReliefKind
from tests.relief.ground_for_tests import (
    BUNKER,
    FREE_BUNKER,
    FREE_GENERAL,
    FREE_GREEN,
    HOLE,
    IN_2023,
    LATERAL_UNPLAYABLE,
    MAXIMUM_BUNKER,
    PATH,
    PLAYER,
    course,
    option,
)

COURSE = course()
PATH_FEATURE = next(one for one in COURSE.features if one.ident == "path")


def draw(wanted, ball, condition=None, player=PLAYER, **more):
    (answer,) = relief_areas(
        Situation(COURSE, 1, ball=ball, played_on=IN_2023, player=player, condition=condition, **more),
        [wanted],
    )
    return answer


def from_hole(place):
    return hypot(place[0] - HOLE[0], place[1] - HOLE[1])


def test_free_relief_at_a_path_is_clear_of_it_everywhere():
    """No place in the relief area leaves lie, stance or swing on the path (Rule 16.1b)."""
    area = draw(FREE_GENERAL, (-28.5, 90.0), PATH_FEATURE).areas[0]

    assert from_hole(area.reference) >= from_hole((-28.5, 90.0)) - 1e-9
    assert area.contains(area.reference[0] - 0.3, area.reference[1] - 0.3).inside
    failures = area.contains(area.reference[0] + 0.1, area.reference[1] - 0.5).failures
    assert [one.bound for one in failures] == [Bound.COMPLETE_RELIEF]


def test_interference_margin_is_the_way_to_the_nearest_clear_place():
    """A place 5 cm into the interference of a straight path is 5 cm outside."""
    area = draw(FREE_GENERAL, (-28.5, 90.0), PATH_FEATURE).areas[0]
    x, y = area.reference

    assert area.contains(x + 0.05, y - 0.5).failures[0].outside_by == pytest.approx(0.05, abs=1e-6)


def test_a_left_handed_player_may_go_the_other_way():
    """On the middle of a path the side on which the feet stand decides the nearest point."""
    ball = (-28.4, 90.0)
    right = draw(FREE_GENERAL, ball, PATH_FEATURE, stroke=Stroke(direction=pi / 2)).areas[0]
    left = draw(
        FREE_GENERAL, ball, PATH_FEATURE, Player(right_handed=False), stroke=Stroke(direction=pi / 2)
    ).areas[0]

    assert right.reference[0] < PATH.bounds[0]
    assert left.reference[0] > PATH.bounds[2]


def test_handedness_and_condition_are_asked_for():
    """Neither the side the player stands on nor the condition is guessed."""
    assert draw(FREE_GENERAL, (-28.5, 90.0), player=Player()) == NeedsPlace(
        FREE_GENERAL, (Place.CONDITION, Place.HANDEDNESS)
    )


def test_without_interference_there_is_no_free_relief():
    """A ball two metres off the path has nothing to take relief from."""
    assert draw(FREE_GENERAL, (-20.0, 90.0), PATH_FEATURE) == NoRelief(FREE_GENERAL, Why.NO_INTERFERENCE)


def test_the_nearest_point_stays_in_the_general_area():
    """With a penalty area along the path, the nearest point lies on the other side of the path."""
    stream = Feature(Kind.RED_PENALTY_AREA, "stream", box(-36, 20, -30, 180))
    (answer,) = relief_areas(
        Situation(
            course(stream), 1, ball=(-29.0, 90.0), played_on=IN_2023, player=PLAYER, condition=PATH_FEATURE
        ),
        [FREE_GENERAL],
    )

    assert answer.areas[0].reference[0] > PATH.bounds[2]


def test_in_a_bunker_relief_stays_in_the_bunker():
    """The nearest point and the area lie in the bunker (Rule 16.1c(1))."""
    puddle = Outline(box(-9.5, 154.0, -8.0, 155.5))
    area = draw(FREE_BUNKER, (-8.5, 154.6), puddle).areas[0]

    assert BUNKER.covers(shapely.Point(area.reference))
    assert BUNKER.buffer(1e-6).covers(area.polygon)


def test_a_flooded_bunker_has_no_nearest_point_but_a_point_of_maximum_relief():
    """Where no complete relief exists in the bunker, least interference is proposed inside it, and said."""
    flood = Outline(box(-20, 140, -4.9, 170))
    ball = (-8.0, 155.0)
    none = draw(FREE_BUNKER, ball, flood)
    best = draw(MAXIMUM_BUNKER, ball, flood).areas[0]

    assert none == NoRelief(FREE_BUNKER, Why.NO_NEAREST_POINT)
    assert BUNKER.buffer(1e-9).covers(shapely.Point(best.reference))
    assert from_hole(best.reference) >= from_hole(ball) - 0.001
    assert best.reference[0] > -4.9  # the ball on the dry strip, the feet still in the water
    assert "relief.maximum_compared_by_area" in best.assumed


def test_the_point_of_maximum_relief_is_the_one_a_hand_calculation_gives():
    """Water over all but a strip at the bunker's right edge: the ball goes where most of it is dry.

    With the whole bunker in equal water every place is alike, so the nearest, the ball's own, is taken.
    """
    flood = Outline(box(-60, 100, 60, 190))
    best = draw(MAXIMUM_BUNKER, (-8.0, 155.0), flood).areas[0]

    assert best.reference == (pytest.approx(-8.0, abs=0.011), pytest.approx(155.0, abs=0.011))


def test_maximum_relief_is_not_for_where_complete_relief_exists():
    """With a dry place in the bunker the nearest point of complete relief is the reference."""
    puddle = Outline(box(-9.5, 154.0, -8.0, 155.5))

    assert draw(MAXIMUM_BUNKER, (-8.5, 154.6), puddle) == NoRelief(
        MAXIMUM_BUNKER, Why.COMPLETE_RELIEF_AVAILABLE
    )


def test_on_the_green_the_ball_is_placed_on_the_point():
    """Water on the line of play: a spot off the line, on the green or in the general area (Rule 16.1d)."""
    puddle = Outline(box(-0.5, 193.0, 0.5, 194.0))
    area = draw(FREE_GREEN, (0.0, 190.0), puddle).areas[0]

    assert area.is_spot
    assert from_hole(area.reference) >= 10.0 - 1e-9
    assert not LineString([area.reference, HOLE]).crosses(puddle.geometry.buffer(-1e-6))


def test_two_equally_near_points_are_both_given():
    """A player whose interference is the same on both sides may choose: both areas are drawn."""
    strip = Outline(box(-4.0, 50.0, -2.0, 90.0))
    from marram.relief import Footprint

    ball_only = Footprint.of(box(-0.03, -0.03, 0.03, 0.03))
    answer = draw(FREE_GENERAL, (-3.0, 70.0), strip, stroke=Stroke(footprint=ball_only))

    assert sorted(round(one.reference[0], 3) for one in answer.areas) == [-4.03, -1.97]


def test_a_dangerous_animal_is_a_condition_of_a_given_radius():
    """Every place of complete relief is at least the radius from the animal (Rule 16.2)."""
    nest = (3.0, 60.0)
    area = draw(FREE_GENERAL, (3.5, 60.0), danger(nest, 2.0)).areas[0]

    assert hypot(area.reference[0] - nest[0], area.reference[1] - nest[1]) >= 2.0
    with pytest.raises(BadPlace, match="above 0"):
        danger(nest, 0.0)


def test_in_a_penalty_area_relief_from_a_no_play_zone_stays_in_it():
    """A no play zone in a penalty area is left inside that penalty area (Rule 17.1e(2))."""
    zone = Feature(Kind.NO_PLAY_ZONE, "zone", box(38, 78, 42, 82))
    inside = option(
        ReliefKind.FREE,
        Reference.NEAREST_POINT,
        1,
        Limit.NOT_NEARER,
        Limit.IN_PENALTY_AREA,
        Limit.COMPLETE_RELIEF,
    )
    area = draw(inside, (39.0, 80.0), zone).areas[0]

    assert not zone.geometry.covers(shapely.Point(area.reference))
    assert box(20, 60, 60, 100).covers(area.polygon)


def test_the_last_crossing_is_the_last_of_a_way_in_and_out_and_in():
    """A ball that flew over the ditch and bounced back into it crossed its far edge last."""
    crossing = last_crossing(COURSE, 1, [(0.0, 100.0), (0.0, 137.0), (0.0, 132.0)])

    assert crossing.place == (pytest.approx(0.0), pytest.approx(134.0))
    assert [round(y, 6) for _, y in crossing.others] == [130.0, 134.0]


def test_a_way_that_does_not_end_in_a_penalty_area_is_refused():
    """The message says where it ended and what to do."""
    with pytest.raises(BadPlace, match="no mapped penalty area"):
        last_crossing(COURSE, 1, [(0.0, 0.0), (0.0, 50.0)])


@pytest.mark.parametrize(
    ("change", "error", "words"),
    [
        ({"hole_number": 19}, BadPlace, "no hole 19"),
        ({"ball": (-5.0, 5e6)}, BadPlace, "not in local metres"),
        ({"ball": (float("nan"), 0.0)}, BadPlace, "not in local metres"),
        ({"played_on": date(2018, 12, 31)}, DateNotCovered, "2018-12-31"),
        (
            {"condition": Feature(Kind.PATH, "track", LineString([(0, 0), (1, 1)]))},
            BadPlace,
            "track is mapped",
        ),
        (
            {"condition": Outline(shapely.Polygon([(0, 0), (2, 2), (2, 0), (0, 2)]))},
            BadPlace,
            "not a valid area",
        ),
    ],
)
def test_bad_input_is_refused_with_what_to_do(change, error, words):
    """Each fault names what is wrong and where."""
    given = {"hole_number": 1, "ball": (3.0, 60.0), "played_on": IN_2023} | change
    with pytest.raises(error, match=words):
        relief_areas(Situation(COURSE, player=PLAYER, **given), [LATERAL_UNPLAYABLE, FREE_GENERAL])


def test_options_come_back_in_order():
    """One answer per option, each naming its option."""
    options = [LATERAL_UNPLAYABLE, FREE_GENERAL]
    answers = relief_areas(Situation(COURSE, 1, ball=(3.0, 60.0), played_on=IN_2023, player=PLAYER), options)

    assert [one.option for one in answers] == options
    assert isinstance(answers[0], Drawn)
