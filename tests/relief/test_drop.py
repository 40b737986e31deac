"""A dropped ball checked on the map (Rule 14.3b(3), 14.3c; Clarification Relief Area/1)."""

from math import hypot

import pytest

from marram.errors import BadPlace
from marram.relief import Bound, Situation, check_drop, relief_areas
from marram.rules.ruling import Action
from tests.relief.ground_for_tests import (
    HOLE,
    IN_2019,
    IN_2023,
    IN_ZONE,
    LATERAL_PENALTY_AREA,
    LATERAL_UNPLAYABLE,
    LINE_2019,
    LINE_2023,
    PLAYER,
    STROKE_AND_DISTANCE,
    ZONE,
    course,
)

BALL = (0.0, 60.0)
ENTRY = (0.0, 134.0)


def draw(option, ball=None, played_on=IN_2023, **places):
    (answer,) = relief_areas(
        Situation(course(), 1, ball=ball, played_on=played_on, player=PLAYER, **places), [option]
    )
    return answer.areas[0]


def test_landing_and_resting_inside_completes_the_drop():
    """The ball is in play and must be played as it lies (Rule 14.3c(1))."""
    check = check_drop(draw(LATERAL_UNPLAYABLE, BALL), (0.5, 59.0), (0.7, 58.6))

    assert (check.next, check.counts, check.citation) == (Action.PLAY_AS_IT_LIES, True, "14.3c(1)")


def test_landing_outside_is_a_wrong_way_and_does_not_count():
    """A ball that first touches the ground outside is dropped again, however often (Rule 14.3b)."""
    check = check_drop(draw(LATERAL_UNPLAYABLE, BALL), (2.5, 59.0), None, drop=2)

    assert (check.next, check.counts) == (Action.DROP_AGAIN, False)
    assert [one.bound for one in check.landed.failures] == [Bound.SIZE]


def test_rolling_out_is_dropped_a_second_time_then_placed_where_it_first_touched():
    """After a second drop that rolls out, the ball is placed where that drop first touched (Rule 14.3c(2))."""
    area = draw(LATERAL_UNPLAYABLE, BALL)
    first = check_drop(area, (0.5, 59.0), (0.7, 57.0), drop=1)
    second = check_drop(area, (0.6, 59.1), (0.7, 57.0), drop=2)

    assert (first.next, first.counts, first.place_at) == (Action.DROP_AGAIN, True, None)
    assert (second.next, second.place_at) == (Action.PLACE, (0.6, 59.1))


def test_nearer_the_hole_is_told():
    """A ball resting nearer the hole than the reference point is outside and said to be nearer."""
    check = check_drop(draw(LATERAL_UNPLAYABLE, BALL), (0.5, 59.9), (0.5, 60.4))

    assert check.nearer_hole
    assert check.next is Action.DROP_AGAIN


def test_a_ball_with_a_part_within_the_club_lengths_is_in():
    """A ball whose middle lies 1 cm beyond two club-lengths touches the area, so it is in it."""
    area = draw(LATERAL_UNPLAYABLE, BALL)

    assert check_drop(area, (0.0, 58.0), (0.0, 60 - 2.31)).next is Action.PLAY_AS_IT_LIES
    assert check_drop(area, (0.0, 58.0), (0.0, 60 - 2.33)).next is Action.DROP_AGAIN


def test_a_ball_with_a_part_nearer_the_hole_is_out():
    """A ball whose middle lies 1 cm behind the arc reaches over it, so it is not in the area."""
    area = draw(LATERAL_UNPLAYABLE, BALL)

    assert check_drop(area, (0.0, 59.0), (0.0, 60 - 0.01)).nearer_hole
    assert not check_drop(area, (0.0, 59.0), (0.0, 60 - 0.03)).nearer_hole


def test_a_ball_that_touches_the_penalty_area_it_left_is_out():
    """A ball touching the edge of the penalty area lies in it (Rule 17.1a), so relief was not taken."""
    area = draw(LATERAL_PENALTY_AREA, entry=(20.0, 80.0))

    assert check_drop(area, (19.0, 79.0), (20 - 0.01, 79.0)).next is Action.DROP_AGAIN
    assert check_drop(area, (19.0, 79.0), (20 - 0.03, 79.0)).next is Action.PLAY_AS_IT_LIES


def test_it_must_rest_in_the_area_of_the_course_it_first_touched():
    """Dropped in the general area, a ball rolling into a bunker is not at rest where it must (19.2c)."""
    area = draw(LATERAL_UNPLAYABLE, (-3.5, 152.0))
    check = check_drop(area, (-4.6, 151.0), (-5.6, 151.2))

    assert [one.bound for one in check.rests.failures] == [Bound.SAME_AREA]
    assert check.next is Action.DROP_AGAIN


def along(behind):
    return 0.0, ENTRY[1] - behind


def test_back_on_the_line_since_2023_the_spot_touched_makes_the_area():
    """A ball rolling up to a club-length from where it touched, even nearer the hole, is in (2023)."""
    area = draw(LINE_2023, entry=ENTRY)

    assert check_drop(area, along(20.0), (0.0, ENTRY[1] - 19.0)).next is Action.PLAY_AS_IT_LIES
    assert check_drop(area, along(20.0), (0.0, ENTRY[1] - 18.7)).next is Action.DROP_AGAIN


def test_back_on_the_line_in_2019_rolling_nearer_than_the_point_is_out():
    """The published case of both editions: half a club-length nearer is dropped again in 2019 only."""
    area = draw(LINE_2019, played_on=IN_2019, entry=ENTRY, dropped_at=along(20.0))

    assert check_drop(area, (0.0, ENTRY[1] - 20.3), (0.0, ENTRY[1] - 19.5)).next is Action.DROP_AGAIN


def test_a_ball_not_dropped_on_the_line_is_dropped_again():
    """Half a metre beside the line is not on it (Rule 14.3b(3), 2023)."""
    check = check_drop(draw(LINE_2023, entry=ENTRY), (0.5, ENTRY[1] - 20.0), None)

    assert [one.bound for one in check.landed.failures] == [Bound.ON_LINE]
    assert (check.next, check.counts) == (Action.DROP_AGAIN, False)


def test_in_a_dropping_zone_the_ball_must_come_to_rest_inside():
    """Rolling out of the zone is dropped again, rolling nearer the hole inside it is not."""
    from marram.relief.geometry.outline import Outline

    area = draw(IN_ZONE, (40.0, 80.0), zone=Outline(ZONE))

    assert check_drop(area, (26.0, 141.0), (26.0, 142.5)).next is Action.PLAY_AS_IT_LIES
    assert check_drop(area, (26.0, 141.0), (26.0, 143.5)).next is Action.DROP_AGAIN
    assert hypot(26 - HOLE[0], 142.5 - HOLE[1]) < hypot(26 - HOLE[0], 141 - HOLE[1])


def test_bad_calls_are_refused():
    """A third drop, a missing resting place and a spot are refused with what to do."""
    area = draw(LATERAL_UNPLAYABLE, BALL)
    spot = draw(STROKE_AND_DISTANCE, previous=(2.0, 191.0))

    with pytest.raises(BadPlace, match="first and a second"):
        check_drop(area, (0.5, 59.0), (0.5, 59.0), drop=3)
    with pytest.raises(BadPlace, match="came to rest"):
        check_drop(area, (0.5, 59.0), None)
    with pytest.raises(BadPlace, match="nothing is dropped"):
        check_drop(spot, (2.0, 191.0), None)
