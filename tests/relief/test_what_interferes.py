"""What a condition interferes with: the ball, the stance, the swing, the line of play (Rules 16.1a, 13.1f, 16.1f)."""

import pytest
from shapely.geometry import Point, box

from marram.course.model import Feature, Kind
from marram.relief import Player, Situation, relief_areas
from marram.relief.what_interferes import interference_facts, what_is_met
from marram.rules.relief_option import Limit, Reference, ReliefKind
from tests.relief.ground_for_tests import BUNKER, IN_2019, IN_2023, course, option

RIGHT, LEFT = Player(1.15, right_handed=True), Player(1.15, right_handed=False)
WRONG_GREEN = option(
    ReliefKind.FREE,
    Reference.NEAREST_POINT,
    1,
    Limit.NOT_NEARER,
    Limit.SAME_AREA_AS_REFERENCE,
    Limit.COMPLETE_RELIEF,
    citation="13.1f(2)",
)
# Play goes north; a right-handed player stands to the west of the ball, from 0.56 m to 0.86 m away.
OTHER_GREEN = Feature(Kind.PUTTING_GREEN, "other", box(-60, 20, -40, 40), holes=(2,))


def situation(condition, ball, player=RIGHT, played_on=IN_2023):
    where = course(condition)
    return Situation(where, 1, ball=ball, played_on=played_on, player=player, condition=condition)


@pytest.mark.parametrize("played_on", [IN_2019, IN_2023])
@pytest.mark.parametrize(
    ("ball", "player", "expected"),
    [
        ((-50.0, 30.0), None, "ball_on_it"),
        ((-39.98, 30.0), None, "ball_on_it"),
        ((-39.3, 30.0), RIGHT, "stance_only"),
        ((-39.3, 30.0), LEFT, "none"),
        ((-50.0, 19.7), RIGHT, "swing"),
        ((-39.0, 30.0), RIGHT, "none"),
    ],
)
def test_how_a_wrong_green_interferes(ball, player, expected, played_on):
    """Ball on it, stance only, swing or not at all, in both editions (Rule 13.1f(1))."""
    here = situation(OTHER_GREEN, ball, player or Player(), played_on)

    assert interference_facts(here) == {"wrong_green_interference": expected}


def test_without_a_hand_nothing_is_said_of_a_green_beside_the_ball():
    """Whether the feet stand on it is not known, and not guessed."""
    assert what_is_met(situation(OTHER_GREEN, (-39.3, 30.0), Player())) is None
    assert interference_facts(situation(OTHER_GREEN, (-39.3, 30.0), Player())) == {}


@pytest.mark.parametrize("played_on", [IN_2019, IN_2023])
@pytest.mark.parametrize("ball", [(-50.0, 30.0), (-39.3, 30.0)])
def test_relief_from_a_wrong_green_is_clear_of_it_for_feet_and_club(ball, played_on):
    """With the ball on it or the stance only, the whole relief area leaves no interference, not nearer the hole."""
    here = situation(OTHER_GREEN, ball, played_on=played_on)
    (answer,) = relief_areas(here, [WRONG_GREEN])

    for area in answer.areas:
        assert Point(area.reference).distance(Point(0, 200)) >= Point(ball).distance(Point(0, 200)) - 0.001
        x0, y0, x1, y1 = area.polygon.bounds
        for i in range(9):
            place = x0 + (x1 - x0) * i / 8, y0 + (y1 - y0) * (i * 5 % 9) / 8
            if area.contains(*place).inside:
                there = what_is_met(situation(OTHER_GREEN, place))
                # Turned to the hole from there, as the Rules ask for the same stroke from the original spot.
                assert not there.ball


def test_a_path_under_the_feet_alone_interferes():
    """Ball off the path, feet on it: stance or swing (Rule 16.1a(1))."""
    path = Feature(Kind.PATH, "track", box(10, -20, 12.0, 20))

    path_is = {"in_the_way": "immovable_obstruction"}

    assert interference_facts(situation(path, (12.7, 10.0))) == path_is | {"interference": "stance_or_swing"}
    assert interference_facts(situation(path, (13.0, 10.0))) == path_is | {"interference": "none"}
    assert interference_facts(situation(path, (12.01, 10.0), Player())) == path_is | {"interference": "ball"}


def test_a_no_play_zone_is_asked_about_by_its_own_fact():
    """Stance in a zone the ball lies outside of (Rule 16.1f)."""
    zone = Feature(Kind.NO_PLAY_ZONE, "heath", box(10, -20, 12.0, 20))

    assert interference_facts(situation(zone, (12.7, 10.0))) == {
        "no_play_zone_interference": "stance_or_swing"
    }


def test_on_the_green_water_on_the_line_interferes():
    """Only on the putting green does the line of play count."""
    puddle = Feature(Kind.TEMPORARY_WATER, "puddle", box(-0.5, 193.0, 0.5, 194.0))
    facts = interference_facts(situation(puddle, (0.0, 190.0)))

    assert facts == {
        "in_the_way": "temporary_water",
        "interference": "line_of_play",
        "nearest_point_exists": "yes",
    }


def test_in_a_bunker_the_map_tells_whether_complete_relief_exists():
    """A flooded bunker has none; with a puddle there is some (Rule 16.1c)."""
    flood = Feature(Kind.TEMPORARY_WATER, "flood", BUNKER.buffer(1))
    puddle = Feature(Kind.TEMPORARY_WATER, "puddle", box(-9.5, 154.0, -8.0, 155.5))

    assert interference_facts(situation(flood, (-8.0, 155.0)))["nearest_point_exists"] == "no"
    assert interference_facts(situation(puddle, (-8.5, 154.6)))["nearest_point_exists"] == "yes"


def test_in_a_bunker_the_map_tells_whether_there_is_relief_from_a_no_play_zone():
    """A zone over the whole bunker leaves none, a small one some (Rule 16.1f); nothing is said where none interferes."""
    whole = Feature(Kind.NO_PLAY_ZONE, "heath", BUNKER.buffer(1))
    small = Feature(Kind.NO_PLAY_ZONE, "nest", box(-9.5, 154.0, -8.0, 155.5))

    assert interference_facts(situation(whole, (-8.0, 155.0)))["nearest_point_exists"] == "no"
    assert interference_facts(situation(small, (-8.5, 154.6)))["nearest_point_exists"] == "yes"
    assert "nearest_point_exists" not in interference_facts(situation(small, (-14.0, 155.0)))
