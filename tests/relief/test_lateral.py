"""Lateral relief (Rules 17.1d(3), 19.2c), against closed forms."""

from math import acos, hypot, pi, sqrt

import pytest
from shapely.geometry import Polygon, box

from marram.course.model import Feature, Kind
from marram.errors import BadPlace
from marram.relief import Bound, Drawn, NeedsPlace, Place, Player, Situation, relief_areas
from marram.relief.constructions.opposite_side import opposite_point
from marram.rules.relief_option import Limit, Reference, ReliefKind
from tests.relief.ground_for_tests import (
    HOLE,
    IN_2023,
    LATERAL_IN_BUNKER,
    LATERAL_PENALTY_AREA,
    LATERAL_UNPLAYABLE,
    PLAYER,
    POND,
    course,
    course_at,
    option,
)


def draw(option, ball=None, **places):
    (answer,) = relief_areas(
        Situation(course(), 1, ball=ball, played_on=IN_2023, player=PLAYER, **places), [option]
    )
    return answer


def lens(r, big_r, d):
    """Area common to two circles of radii r and R whose centres are d apart (elementary geometry)."""
    first = r**2 * acos((d * d + r * r - big_r**2) / (2 * d * r))
    second = big_r**2 * acos((d * d + big_r**2 - r * r) / (2 * d * big_r))
    triangle = 0.5 * sqrt((-d + r + big_r) * (d + r - big_r) * (d - r + big_r) * (d + r + big_r))
    return first + second - triangle


def test_unplayable_ball_in_the_open_gets_the_circle_less_the_lens_about_the_hole():
    """The area is πr² less what the circle about the hole through the ball cuts from it."""
    ball = (3.0, 60.0)
    area = draw(LATERAL_UNPLAYABLE, ball).areas[0]
    apart = hypot(ball[0] - HOLE[0], ball[1] - HOLE[1])
    r = 2 * PLAYER.club_length

    expected = pi * r * r - lens(r, apart, apart)

    assert area.radius == pytest.approx(2.3)
    assert area.area_m2 == pytest.approx(expected, abs=2 * pi * r * area.arc_error)
    assert area.area_m2 <= expected


def test_penalty_area_edge_straight_through_the_reference_point_leaves_one_side():
    """On a straight edge running at the hole, less than a quarter of the circle on the dry side is left.

    Edge x = 20, play north, reference (20, 80), hole (0, 200): the picture must equal a sum over thin strips
    of the exact chord lengths west of the edge and not nearer the hole.
    """
    area = draw(LATERAL_PENALTY_AREA, entry=(20.0, 80.0)).areas[0]
    r, apart = 2.3, hypot(20, 120)
    strips, width = 0.0, r / 20000
    for i in range(20000):
        x = 20 - (i + 0.5) * width
        low = 80 - sqrt(r * r - (x - 20) ** 2)
        high = min(80 + sqrt(r * r - (x - 20) ** 2), 200 - sqrt(apart**2 - x * x))
        strips += max(0.0, high - low) * width

    assert area.area_m2 == pytest.approx(strips, abs=0.002)


def test_a_place_is_in_by_distance_where_the_picture_falls_short():
    """A point on the true circle is inside although a chord of the picture leaves it out."""
    area = draw(LATERAL_UNPLAYABLE, (3.0, 60.0)).areas[0]

    assert area.contains(3.0, 60.0 - 2.3).inside
    assert not area.contains(3.0, 60.0 - 2.302).inside


def test_failures_name_the_limit_and_by_how_much():
    """A place 3 m straight towards the hole fails the size by 0.7 m and is 3 m nearer the hole."""
    area = draw(LATERAL_UNPLAYABLE, (0.0, 60.0)).areas[0]
    verdict = area.contains(0.0, 63.0)

    assert not verdict.inside
    assert {one.bound: round(one.outside_by, 6) for one in verdict.failures} == {
        Bound.SIZE: 0.7,
        Bound.NOT_NEARER: 3.0,
    }
    assert verdict.margin == pytest.approx(-3.0)


def test_the_same_penalty_area_is_not_part_of_it():
    """A place in the penalty area that relief is taken from is outside, however near."""
    area = draw(LATERAL_PENALTY_AREA, entry=(20.0, 80.0)).areas[0]

    assert area.contains(19.0, 79.0).inside
    assert [one.bound for one in area.contains(21.0, 79.0).failures] == [Bound.AREA]


def test_where_colours_meet_it_is_the_area_the_ball_lies_in_that_is_no_part_of_it():
    """A yellow area borders the red pond: a ball in the pond that crossed their common edge gets no relief in the pond."""
    beyond = Feature(Kind.YELLOW_PENALTY_AREA, "beyond", box(20, 40, 60, 60))
    for more in ((beyond,), (Feature(Kind.RED_PENALTY_AREA, "other", box(80, 0, 90, 9)), beyond)):
        situation = Situation(
            course(*more), 1, played_on=IN_2023, player=PLAYER, ball=(40.0, 62.0), entry=(40.0, 60.0)
        )
        (drawn,) = relief_areas(situation, [LATERAL_PENALTY_AREA])

        assert isinstance(drawn, Drawn)
        assert not drawn.areas[0].contains(40.0, 60.5).inside
        assert drawn.areas[0].contains(40.0, 59.5).inside


def test_in_a_bunker_it_ends_at_the_edge():
    """Lateral relief in a bunker stays in the bunker (Rule 19.3a)."""
    area = draw(LATERAL_IN_BUNKER, (-7.0, 150.0)).areas[0]

    assert area.contains(-7.5, 149.0).inside
    assert [one.bound for one in area.contains(-5.5, 149.5).failures] == [Bound.AREA]


def test_without_a_crossing_point_it_is_asked_for():
    """The crossing point is never guessed from the spot of the ball."""
    answer = draw(LATERAL_PENALTY_AREA, (25.0, 80.0))

    assert answer == NeedsPlace(LATERAL_PENALTY_AREA, (Place.CROSSING_POINT,))


def test_a_crossing_point_near_the_edge_is_moved_onto_it_and_said():
    """A point tapped 0.4 m beside the edge becomes the nearest point of the edge."""
    area = draw(LATERAL_PENALTY_AREA, entry=(20.4, 80.0)).areas[0]

    assert area.reference == (20.0, 80.0)
    assert "relief.crossing_point_moved_onto_edge" in area.assumed


def test_a_crossing_point_far_from_any_edge_is_refused():
    """A point 10 m from every penalty area cannot be where a ball crossed an edge."""
    with pytest.raises(BadPlace, match=r"not on the edge of a penalty area"):
        draw(LATERAL_PENALTY_AREA, entry=(10.0, 80.0))


def test_the_number_of_club_lengths_is_the_options():
    """With another club the area grows with it."""
    (answer,) = relief_areas(
        Situation(course(), 1, ball=(3.0, 60.0), played_on=IN_2023, player=Player(club_length=1.0)),
        [LATERAL_UNPLAYABLE],
    )

    assert isinstance(answer, Drawn)
    assert answer.areas[0].radius == pytest.approx(2.0)


@pytest.mark.parametrize("length", [0.0, 0.3, 1.4, float("nan")])
def test_a_club_length_that_cannot_be_is_refused(length):
    """Clubs other than putters measure 18 to 48 inches (Equipment Rules)."""
    with pytest.raises(BadPlace, match="club-length"):
        Player(club_length=length)


OPPOSITE = option(
    ReliefKind.LATERAL, Reference.OPPOSITE_EDGE, 2, Limit.NOT_NEARER, Limit.OUTSIDE_PENALTY_AREA
)


def test_the_opposite_side_is_found_on_the_map_as_far_from_the_hole():
    """Model Local Rule B-2: the reference point lies on the other edge, at the same distance; that the map found it is said."""
    area = draw(OPPOSITE, (30.0, 82.0), entry=(20.0, 80.0)).areas[0]

    x, y = area.reference
    assert x == pytest.approx(POND.bounds[2])
    assert hypot(x - HOLE[0], y - HOLE[1]) == pytest.approx(hypot(20.0 - HOLE[0], 80.0 - HOLE[1]))
    assert "relief.opposite_as_mapped" in area.assumed
    assert area.contains(x + 0.5, y - 0.6).inside
    assert not area.contains(x - 0.5, y - 0.6).inside


def test_where_both_ways_lead_across_the_farther_edge_is_the_opposite_one():
    """From the tip of a spit there is water on both sides: a bay 10 m wide on one, the pond on the other."""
    shore = Polygon([(20, 40), (20, 100), (60, 100), (60, 40), (32, 40), (30, 80), (28, 40)])
    pond = Feature(Kind.RED_PENALTY_AREA, "shore", shore)
    place = Situation(course_at((0.0, 200.0), pond), 1, played_on=IN_2023, player=PLAYER, entry=(30.0, 80.0))
    found = opposite_point(place)

    assert found is not None
    assert found[0] == pytest.approx(60.0)


def test_where_the_circle_does_not_cross_the_penalty_area_the_point_is_asked_for():
    """An edge straight across the line of play has no opposite side as far from the hole: nothing is made up."""
    pond = Feature(Kind.RED_PENALTY_AREA, "across", box(-40, 100, 40, 120))
    place = Situation(course_at((0.0, 200.0), pond), 1, played_on=IN_2023, player=PLAYER, entry=(0.0, 120.0))

    assert relief_areas(place, [OPPOSITE]) == [NeedsPlace(OPPOSITE, (Place.OPPOSITE_EDGE,))]
