"""Relief from a temporary immovable obstruction in the line of sight (Model Local Rule F-23)."""

from math import asin, atan2, cos, dist, sin

import numpy as np
import pytest
from shapely.geometry import LineString, box

from marram.course.model import Feature, Kind
from marram.relief import Drawn, NoRelief, Situation, Why, relief_areas
from marram.rules.book.local_rules.area_f_stands import OUTSIDE, clear_of_line_of_sight
from marram.rules.relief_option import Limit
from tests.relief.ground_for_tests import HOLE, IN_2023, PLAYER, course

STAND = box(-2, 140, 2, 144)
BALL = (0.0, 110.0)
CLUB = PLAYER.club_length
IN_GENERAL_AREA = clear_of_line_of_sight(Limit.GENERAL_AREA)


def draw(option, ball, stand=STAND):
    made = Feature(Kind.OBSTRUCTION, "stand", stand)
    (answer,) = relief_areas(
        Situation(course(made), 1, ball=ball, played_on=IN_2023, player=PLAYER, condition=made), [option]
    )
    return answer


def moved(answer, ball):
    (first, *_) = answer.areas
    return dist(first.reference, ball)


def equally_far(place, within):
    """Places as far from the hole as this one, up to ``within`` metres away."""
    radius, angle = dist(place, HOLE), atan2(place[1] - HOLE[1], place[0] - HOLE[0])
    for part in np.linspace(-1, 1, 9):
        turned = angle + 2 * asin(part * within / (2 * radius))
        yield HOLE[0] + radius * cos(turned), HOLE[1] + radius * sin(turned)


def test_the_nearest_point_lies_one_club_length_beside_the_shadow():
    """Closed form: on the arc as far from the hole as the ball, past the stand's corner and a club-length on."""
    answer = draw(IN_GENERAL_AREA, BALL)

    assert isinstance(answer, Drawn)
    radius = dist(BALL, HOLE)
    turned = atan2(2, HOLE[1] - 144) + 2 * asin(CLUB / (2 * radius))
    assert moved(answer, BALL) == pytest.approx(2 * radius * sin(turned / 2), abs=0.002)


def test_a_stand_on_the_line_has_a_way_out_on_either_side():
    """Left and right of a stand that stands squarely on the line are equally near: the player chooses."""
    answer = draw(IN_GENERAL_AREA, BALL)

    assert sorted(round(area.reference[0], 2) for area in answer.areas) == pytest.approx(
        [-4.36, 4.36], abs=0.1
    )


def test_nothing_in_the_relief_area_is_behind_the_stand():
    """From no place within a club-length on the arc as far from the hole does the stand hide the hole."""
    for area in draw(IN_GENERAL_AREA, BALL).areas:
        least_x, least_y, greatest_x, greatest_y = area.polygon.bounds
        inside = 0
        for x in np.linspace(least_x, greatest_x, 15):
            for y in np.linspace(least_y, greatest_y, 15):
                if area.contains(x, y).inside:
                    for spot in equally_far((x, y), CLUB - 0.003):
                        assert not LineString([spot, HOLE]).intersects(STAND)
                    inside += 1
        assert inside > 10


def test_within_one_club_length_of_the_shadow_it_still_interferes():
    """The shadow of the stand ends 3.21 m beside the ball's line; a club-length is added to it."""
    edge = 2 * (HOLE[1] - BALL[1]) / (HOLE[1] - 144)

    assert isinstance(draw(IN_GENERAL_AREA, (edge + CLUB - 0.05, BALL[1])), Drawn)
    clear = draw(IN_GENERAL_AREA, (edge + CLUB + 0.05, BALL[1]))
    assert clear == NoRelief(IN_GENERAL_AREA, Why.NO_INTERFERENCE)


def test_a_stand_behind_the_ball_is_not_in_the_line_of_sight():
    """What is farther from the hole than the ball hides nothing."""
    assert draw(IN_GENERAL_AREA, (0.0, 147.0)) == NoRelief(IN_GENERAL_AREA, Why.NO_INTERFERENCE)


def test_out_of_the_bunker_the_point_is_in_the_general_area():
    """For one stroke: the nearest point without interference outside the bunker, not nearer the hole."""
    ball = (-8.0, 155.0)
    answer = draw(OUTSIDE, ball, box(-7, 170, -3, 173))

    assert isinstance(answer, Drawn)
    for area in answer.areas:
        assert dist(area.reference, HOLE) >= dist(ball, HOLE) - 1e-6
        assert moved(answer, ball) > 2
