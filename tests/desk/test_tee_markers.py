"""The tee-markers shown on the map: the teeing area is drawn as it is that day.

Source: Rules of Golf, Definition of teeing area: two club-lengths deep, its front the line between the foremost
points of the two tee-markers, its sides the outside of them.
"""

from math import hypot

import pytest
from shapely.geometry import Point, shape

from marram.course.model import Course
from tests.desk.asking import TestClient
from tests.desk.places import Ground

CASE = {
    "hole": "9",
    "what": "ball_in_penalty_area",
    "found_in_penalty_area": "yes",
    "last_stroke_from_penalty_area": "no",
    "club": "1.1",
}


@pytest.fixture
def markers(course: Course) -> tuple[tuple[float, float], tuple[float, float], tuple[float, float]]:
    """Two markers 6 m apart across the line of play at the tee, and a place half a metre behind their middle."""
    (x0, y0), (x1, y1) = (point[:2] for point in course.hole(9).line.coords[:2])
    length = hypot(x1 - x0, y1 - y0)
    ahead = ((x1 - x0) / length, (y1 - y0) / length)
    left = (x0 - 3 * ahead[1], y0 + 3 * ahead[0])
    right = (x0 + 3 * ahead[1], y0 - 3 * ahead[0])
    return left, right, (x0 - 0.5 * ahead[0], y0 - 0.5 * ahead[1])


def stroke_and_distance(client: TestClient, **places: str) -> dict:
    options = client.get("/api/relief", params={**CASE, **places}).json()["options"]
    return next(one for one in options if one["kind"] == "stroke_and_distance")


def test_the_real_teeing_area_is_drawn(client: TestClient, course: Course, ground: Ground, markers) -> None:
    """6 m between the markers and clubs of 1.1 m make a rectangle of 6 m by 2.2 m, behind the markers."""
    left, right, previous = markers
    option = stroke_and_distance(
        client,
        ball=ground.in_the_burn(),
        previous=ground.at(previous),
        left_marker=ground.at(left),
        right_marker=ground.at(right),
    )
    area = next(one for one in option["features"] if one["properties"]["role"] == "area")
    drawn = course.plane.inward(shape(area["geometry"]))

    assert option["needs"] == []
    assert drawn.area == pytest.approx(6 * 2.2, rel=0.005)
    assert drawn.distance(Point(left)) < 0.02
    assert drawn.distance(Point(right)) < 0.02
    assert drawn.contains(Point(previous))


def test_without_them_they_can_be_shown(client: TestClient, ground: Ground, markers) -> None:
    """The mapped tee is drawn and said to be a stand-in; the card offers to show both markers, then the other."""
    places = {"ball": ground.in_the_burn(), "previous": ground.at(markers[2])}
    option = stroke_and_distance(client, **places)
    assert option["drawn"]
    assert option["needs"] == ["left_marker", "right_marker"]
    assert any("mapped tee is shown" in one for one in option["messages"])

    assert stroke_and_distance(client, **places, left_marker=ground.at(markers[0]))["needs"] == [
        "right_marker"
    ]


def test_markers_on_one_spot_are_refused_and_can_be_shown_anew(
    client: TestClient, ground: Ground, markers
) -> None:
    """Two taps on one place make no teeing area: the card says so, and the page lets each be shown again."""
    spot = ground.at(markers[0])
    places = {
        "ball": ground.in_the_burn(),
        "previous": ground.at(markers[2]),
        "left_marker": spot,
        "right_marker": spot,
    }
    assert "stand on one spot" in stroke_and_distance(client, **places)["messages"][0]

    page = client.get("/case", params={**CASE, **places})
    assert 'data-pick="left_marker"' in page.text
    assert "left_marker={at}" in page.context["map_state"]["picks"]["left_marker"]["url"]


def test_a_stroke_played_elsewhere_asks_for_no_tee_markers(client: TestClient, ground: Ground) -> None:
    """From the fairway the relief area is one club-length; tee-markers do not matter and are not asked."""
    option = stroke_and_distance(client, ball=ground.in_the_burn(), previous=ground.fairway(along=230))

    assert option["drawn"]
    assert option["needs"] == []
