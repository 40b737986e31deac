"""Where the previous stroke was made (Rule 14.6), and spots."""

from math import hypot

import pytest

from marram.relief import Bound, NeedsPlace, Place, Situation, relief_areas
from marram.relief.constructions.stroke_and_distance import teeing_area
from tests.relief.ground_for_tests import (
    EMBEDDED,
    HOLE,
    IN_2023,
    IN_ZONE,
    PLAYER,
    PROVISIONAL,
    STROKE_AND_DISTANCE,
    ZONE,
    course,
)


def draw(option, ball=None, **places):
    (answer,) = relief_areas(
        Situation(course(), 1, ball=ball, played_on=IN_2023, player=PLAYER, **places), [option]
    )
    return answer


def test_from_the_tee_markers_the_area_is_two_club_lengths_deep():
    """Markers 6 m apart give a rectangle of 6 m by 2.30 m behind their line (Definition of teeing area)."""
    area = draw(STROKE_AND_DISTANCE, previous=(0.0, 1.0), tee_markers=((-3.0, 2.0), (3.0, 2.0))).areas[0]

    assert area.area_m2 == pytest.approx(6 * 2.3)
    assert area.contains(0.0, 1.0).inside
    assert not area.contains(0.0, 2.1).inside
    assert not area.contains(0.0, -0.4).inside


def test_markers_that_aim_aside_still_make_a_rectangle():
    """The depth is measured square to the line of the markers, away from the play."""
    outline = teeing_area(((0.0, 0.0), (4.0, 3.0)), (0.0, 200.0), 1.0)

    assert outline.geometry.area == pytest.approx(5.0 * 2.0)
    assert outline.depth(3.2, 0.4) > 0


def test_from_a_mapped_tee_without_markers_the_mapped_ground_is_shown_and_said():
    """A map seldom knows where the markers stand today."""
    area = draw(STROKE_AND_DISTANCE, previous=(0.0, 1.0)).areas[0]

    assert area.area_m2 == pytest.approx(100.0)
    assert "relief.mapped_tee_shown" in area.assumed


def test_from_the_green_the_ball_is_placed_on_the_spot():
    """A stroke from the putting green is played again from the spot itself (Rule 14.6c)."""
    area = draw(STROKE_AND_DISTANCE, previous=(2.0, 191.0)).areas[0]

    assert area.is_spot
    assert area.reference == (2.0, 191.0)


def test_from_the_general_area_it_is_one_club_length_in_the_same_area():
    """Beside the pond, no part of the area lies in the pond (Rule 14.6b)."""
    area = draw(STROKE_AND_DISTANCE, previous=(19.5, 80.0)).areas[0]

    assert area.radius == pytest.approx(1.15)
    assert area.contains(19.0, 79.5).inside
    assert [one.bound for one in area.contains(20.2, 79.8).failures] == [Bound.AREA]


def test_from_a_bunker_it_stays_in_the_bunker():
    """The same area of the course as where the stroke was made."""
    area = draw(STROKE_AND_DISTANCE, previous=(-6.2, 150.0)).areas[0]

    assert area.contains(-6.7, 149.5).inside
    assert [one.bound for one in area.contains(-5.4, 149.7).failures] == [Bound.AREA]


def test_the_previous_spot_is_needed():
    """It is asked for, never taken to be the tee."""
    assert draw(STROKE_AND_DISTANCE) == NeedsPlace(STROKE_AND_DISTANCE, (Place.PREVIOUS_SPOT,))


def test_an_embedded_balls_reference_point_is_right_behind_it():
    """The reference point lies one ball's radius farther from the hole, on the line from the hole."""
    area = draw(EMBEDDED, (3.0, 60.0)).areas[0]
    ball = hypot(3.0 - HOLE[0], 60.0 - HOLE[1])

    assert hypot(area.reference[0] - HOLE[0], area.reference[1] - HOLE[1]) == pytest.approx(ball + 0.021335)
    assert not area.contains(3.0, 60.0).inside


def test_a_dropping_zone_may_be_nearer_the_hole_but_holds_the_ball():
    """The relief area is the zone itself (Model Local Rule E-1)."""
    from marram.relief.geometry.outline import Outline

    area = draw(IN_ZONE, (40.0, 80.0), zone=Outline(ZONE)).areas[0]

    assert area.area_m2 == pytest.approx(9.0)
    assert area.contains(26.0, 142.9).inside
    assert not area.contains(24.9, 142.0).inside


def test_a_dropping_zone_must_be_named():
    """Which zone to use is the Committee's to say, not the map's to guess."""
    assert draw(IN_ZONE, (40.0, 80.0)) == NeedsPlace(IN_ZONE, (Place.DROPPING_ZONE,))


def test_the_provisional_ball_is_played_from_where_it_lies():
    """Going on with the provisional ball needs its spot."""
    assert draw(PROVISIONAL) == NeedsPlace(PROVISIONAL, (Place.PROVISIONAL_BALL,))
    assert draw(PROVISIONAL, provisional=(5.0, 90.0)).areas[0].reference == (5.0, 90.0)
