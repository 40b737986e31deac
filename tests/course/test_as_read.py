"""What drawings show of the ground is what answers rest on."""

import math

from shapely.geometry import Point

from marram.course.lies.as_read import as_read
from marram.course.model import Kind
from marram.desk.shell.map_drawing import course_drawing
from tests.course.every_kind import COURSE


def shown(kind):
    return {feature.ident: ground for feature, ground in as_read(COURSE, kind)}


def test_water_is_shown_as_wide_as_it_is_read_and_the_sea_as_an_area() -> None:
    """A stream without a width is 2 m wide in the drawing too; a ball at sea lies in what is drawn; a basin stays itself."""
    water = shown(Kind.WATER)
    assert math.isclose(water["stream out of it"].boundary.distance(Point(125, 42.5)), 1.0, abs_tol=0.1)
    assert water["coast west"].contains(Point(0, -55))
    assert not water["coast west"].contains(Point(0, -40))
    assert max(map(abs, water["coast west"].bounds)) < 600
    assert water["basin"].area == 36


def test_a_path_without_a_width_is_shown_as_wide_as_it_is_read() -> None:
    """A track without a width is 2.5 m wide."""
    assert math.isclose(shown(Kind.PATH)["track"].area, 2.5 * math.hypot(30, 10))


def test_the_map_on_the_screen_draws_water_as_it_is_read() -> None:
    """No line of water is left on the map of the desk where it counts as an area; pond and stream out of it are one."""
    drawn = [
        one["geometry"]["type"]
        for one in course_drawing(COURSE)["features"]
        if one["properties"]["kind"] == "water"
    ]
    assert set(drawn) <= {"Polygon", "MultiPolygon"}
    assert len(drawn) == len(shown(Kind.WATER)) - 1
