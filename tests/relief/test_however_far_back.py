"""Back on the line on maps without a boundary: the line goes on, however far back (Rules 16.1c, 17.1d, 19.2b)."""

from dataclasses import replace

import pytest
from shapely.geometry import LineString, box

from marram.course.model import Feature, Kind
from marram.relief import NoRelief, Situation, check_drop, relief_areas
from marram.relief.place.answer import Why
from marram.rules.relief_option import Limit
from tests.relief.ground_for_tests import (
    IN_2019,
    IN_2023,
    LINE_2019,
    LINE_2023,
    LINE_IN_BUNKER_2023,
    PLAYER,
    course,
    course_at,
)

POND = Feature(Kind.RED_PENALTY_AREA, "pond", box(-10, -20, 10, 0))
FAR_WATER = Feature(Kind.YELLOW_PENALTY_AREA, "sea", box(-10, -1200, 10, -1000))
SAND = Feature(Kind.BUNKER, "sand", box(-10, -20, 10, 0))
ON = "relief.goes_on_beyond_the_drawing"


def line(where, option, played_on=IN_2023, **places):
    situation = Situation(where, 1, ball=(0.0, -5.0), played_on=played_on, player=PLAYER, **places)
    (answer,) = relief_areas(situation, [option])
    return answer.areas[0]


@pytest.mark.parametrize(("option", "played_on"), [(LINE_2023, IN_2023), (LINE_2019, IN_2019)])
def test_without_a_boundary_it_is_said_that_the_line_goes_on(option, played_on):
    """Both editions draw the line at least 300 m and say that only the drawing ends."""
    area = line(course_at((0.0, 200.0), POND), option, played_on, entry=(0.0, -20.0))

    assert ON in area.assumed


def test_a_spot_farther_back_than_the_drawing_may_be_dropped_on():
    """A drop 2 km back on the line of a map without a boundary landed where it must."""
    where = course_at((0.0, 200.0), POND)
    area = line(where, LINE_2023, entry=(0.0, -20.0), dropped_at=(0.0, -2000.0))

    assert area.reference == (0.0, -2000.0)
    assert check_drop(
        line(where, LINE_2023, entry=(0.0, -20.0)), (0.0, -2000.0), (0.0, -2000.5)
    ).landed.inside


def test_water_however_far_back_cuts_the_line():
    """What the map knows a kilometre back still limits where a ball may be dropped."""
    in_general_area = replace(LINE_2023, limits=(*LINE_2023.limits, Limit.GENERAL_AREA))
    area = line(course_at((0.0, 200.0), POND, FAR_WATER), in_general_area, entry=(0.0, -20.0))

    assert area.drop_line.stretches == (pytest.approx((0.0, 980.0)), pytest.approx((1180.0, 1181.4), abs=1.0))
    assert area.drop_line.goes_on


def test_with_a_boundary_nothing_is_said():
    """The boundary ends the line, as the Rules do."""
    area = line(course(), LINE_2023, entry=(20.0, 80.0))

    assert ON not in area.assumed
    assert not area.drop_line.goes_on


def test_a_line_inside_a_bunker_is_not_said_to_go_on():
    """In a bunker the line ends with the sand, and the example says so."""
    area = line(course_at((0.0, 200.0), SAND), LINE_IN_BUNKER_2023)

    assert ON not in area.assumed
    assert "relief.example_spot_in_bunker" in area.assumed
    assert "relief.example_spot" not in area.assumed


def test_the_line_does_not_come_ashore_where_the_sea_is_no_longer_read():
    """A line that runs out to sea on a map without a boundary ends in the sea: beyond what is read nothing is land."""
    coast = Feature(
        Kind.WATER, "coast", LineString([(50, -400), (50, 400)]), tags={"natural": "coastline"}
    )  # drawn north, the sea to the east
    fairway = Feature(Kind.FAIRWAY, "fairway", box(-30, -100, 30, 150))
    in_general_area = replace(LINE_2023, limits=(*LINE_2023.limits, Limit.GENERAL_AREA))
    situation = Situation(
        course_at((0.0, 200.0), coast, fairway),
        1,
        ball=(80.0, 0.0),
        entry=(50.0, 20.0),
        played_on=IN_2023,
        player=PLAYER,
    )

    (answer,) = relief_areas(situation, [in_general_area])

    assert answer == NoRelief(in_general_area, Why.NO_ROOM)
