"""What stands up meets the whole swing; what lies on the ground meets only the low part of it."""

import pytest
from shapely.geometry import LineString, box

from marram.course.model import Feature, Kind
from marram.relief import Drawn, Situation, Stroke, relief_areas
from marram.relief.interference.tallness import stands_up
from marram.relief.interference.usual_footprint import (
    LOW_SWING,
    SWING_ALONG_PER_CLUB_LENGTH,
    USUAL_STROKE_CLUB,
    facing,
    footprint,
)
from tests.relief.ground_for_tests import FREE_GENERAL, IN_2023, PLAYER, course_at

HOLE = (200.0, 0.0)


def thing(kind=Kind.OBSTRUCTION, shape=None, **tags):
    return Feature(kind, "thing", shape or box(-30, -1.0, 0, 30), tags=tags)


def answer(*conditions, ball=(-0.5, -0.5), **stroke):
    where = course_at(HOLE, *conditions)
    situation = Situation(
        where,
        1,
        ball=ball,
        played_on=IN_2023,
        player=PLAYER,
        condition=conditions,
        stroke=Stroke(**stroke),
    )
    return relief_areas(situation, [FREE_GENERAL])[0]


@pytest.mark.parametrize(
    ("tags", "stands"),
    [
        ({"building": "yes"}, True),
        ({"building": "no"}, None),
        ({"barrier": "wall"}, True),
        ({"barrier": "fence"}, True),
        ({"barrier": "kerb"}, False),
        ({"man_made": "utility_pole"}, True),
        ({"man_made": "manhole"}, False),
        ({"golf": "clubhouse"}, True),
        ({"barrier": "wall", "height": "0.2"}, False),
        ({"height": "1.8 m"}, True),
        ({"height": "tall"}, None),
        ({}, None),
    ],
)
def test_the_tags_of_the_map_tell_whether_a_thing_stands_up(tags, stands):
    """By height, else by what it is; what the tags do not say is not known."""
    assert stands_up(thing(**tags)) is stands


@pytest.mark.parametrize(
    "kind", [Kind.PATH, Kind.GROUND_UNDER_REPAIR, Kind.TEMPORARY_WATER, Kind.PUTTING_GREEN]
)
def test_ground_lies_low(kind):
    """A path, repair, water or a green never meets the swing above the ground."""
    assert stands_up(thing(kind)) is False


def away_from_a_wall_ahead(**stroke):
    """How far behind a wall that runs across the line of play the nearest point lies."""
    wall = thing(shape=box(0.0, -40, 0.4, 40), barrier="wall")
    found = answer(wall, ball=(-0.3, 0.0), **stroke)
    return -found.areas[0].reference[0]


def test_a_wall_keeps_the_whole_swing_away():
    """Behind a wall across the line the ball lies as far off as the swing reaches, not only its low part."""
    whole = SWING_ALONG_PER_CLUB_LENGTH * USUAL_STROKE_CLUB

    assert away_from_a_wall_ahead() == pytest.approx(whole, abs=0.01)
    assert away_from_a_wall_ahead(tall=False) == pytest.approx(LOW_SWING, abs=1e-6)


def test_what_the_map_tells_is_said():
    """The official sees that the whole swing was counted, or that the height is not known."""
    wall = thing(shape=box(0.0, -40, 0.4, 40), barrier="wall")
    plain = thing(shape=box(0.0, -40, 0.4, 40))

    assert "relief.stands_up" in answer(wall, ball=(-0.3, 0.0)).areas[0].remarks
    assert "relief.height_not_known" in answer(plain, ball=(-0.3, 0.0)).areas[0].remarks
    said = answer(plain, ball=(-0.3, 0.0), tall=True).areas[0].remarks
    assert not {"relief.stands_up", "relief.height_not_known"} & set(said)


def test_beside_a_path_and_a_wall_each_is_judged_by_its_own_height():
    """A path under the ball and a wall 1.5 m behind: low for the path, whole for the wall.

    Off the path by the low swing alone the ball would lie where the backswing meets the wall, so it goes farther.
    """
    path = Feature(Kind.PATH, "path", box(-1.2, -40, 0.5, 40))
    wall = thing(shape=box(-3.0, -40, -2.6, 40), barrier="wall")
    low = answer(path, ball=(-0.7, 0.0)).areas[0].reference
    both = answer(path, wall, ball=(-0.7, 0.0))

    assert low[0] == pytest.approx(-1.2 - LOW_SWING, abs=1e-6)
    assert isinstance(both, Drawn)
    for area in both.areas:
        swing = SWING_ALONG_PER_CLUB_LENGTH * USUAL_STROKE_CLUB
        assert not -2.6 - swing < area.reference[0] < -2.6
        assert area.contains(*area.reference).inside


def test_no_place_of_the_area_lets_the_swing_meet_a_building():
    """Everywhere in the relief area the whole swing is clear of the building."""
    house = thing(building="yes")
    (area,) = answer(house, ball=(-0.5, -1.5)).areas[:1]

    swing = footprint(right_handed=True, direction=facing((-0.5, -1.5), HOLE), tall=True)
    x_least, y_least, x_most, y_most = area.polygon.bounds
    for i in range(8):
        for j in range(8):
            place = x_least + (x_most - x_least) * i / 7, y_least + (y_most - y_least) * j / 7
            if area.contains(*place).inside:
                assert swing.at(place).intersection(house.geometry).area < 1e-6


@pytest.mark.parametrize(("width", "half"), [(None, 0.15), (0.6, 0.3)])
def test_a_wall_drawn_as_a_line_has_a_width(width, half):
    """Its own, else 0.3 m: behind a wall across the line the swing ends that much before the middle of it."""
    line = LineString([(0.0, -40), (0.0, 40)])
    shape = line if width is None else line.buffer(width / 2, cap_style="flat")
    wall = thing(shape=shape, barrier="wall")

    swing = SWING_ALONG_PER_CLUB_LENGTH * USUAL_STROKE_CLUB
    (area,) = answer(wall, ball=(-0.4, 0.0)).areas
    assert -area.reference[0] == pytest.approx(swing + half, abs=0.01)
