"""``marram course order`` and ``survey``: distances and measured points, with what accuracy leaves open."""

import json
from pathlib import Path

import pytest
from shapely import Point

from marram.course import load
from marram.demo import COURSE
from tests.cli.running import marram

HOLE = load(COURSE).holes[1]


def at(metres: float) -> str:
    """A place on the line of play, so far before the hole."""
    plane = load(COURSE).plane
    before = HOLE.line.coords[-2]
    away = HOLE.location.distance(Point(before))
    x = HOLE.location.x + (before[0] - HOLE.location.x) / away * metres
    y = HOLE.location.y + (before[1] - HOLE.location.y) / away * metres
    return ",".join(f"{value:.9f}" for value in plane.to_degrees(x, y))


def test_the_farthest_ball_is_named() -> None:
    """Rule 6.4: the ball farther from the hole is played first; distances are those laid out."""
    found = marram(
        "course", "order", str(COURSE), "--hole", "1", "--ball", at(20), "--ball", at(21), "--json"
    )
    order = json.loads(found.out)
    assert order["farthest"] == 1
    assert [round(one, 3) for one in order["distances"]] == [20.0, 21.0]


def test_two_balls_too_close_to_call_are_left_open() -> None:
    """Within the stated accuracy nobody is named."""
    found = marram(
        "course", "order", str(COURSE), "--hole", "1", "--ball", at(20), "--ball", at(21), "--accuracy", "1"
    )
    assert "Too close to call" in found.out


@pytest.mark.parametrize("accuracy", ["-1", "nan"])
def test_an_accuracy_that_is_no_distance_is_refused(accuracy: str) -> None:
    """Nobody is named farthest, and nothing called close, on such a figure."""
    found = marram(
        "course",
        "order",
        str(COURSE),
        "--hole",
        "1",
        "--ball",
        at(20),
        "--ball",
        at(21),
        "--accuracy",
        accuracy,
    )
    assert (found.code, found.out) == (2, "")
    assert "give metres, 0 or more" in found.err


def test_one_ball_is_no_order() -> None:
    """The message says what to give."""
    found = marram("course", "order", str(COURSE), "--hole", "1", "--ball", at(20))
    assert found.code == 2
    assert "at least two balls" in found.err


def test_surveyed_points_are_read_on_the_map(tmp_path: Path) -> None:
    """A point on the green is on the green; without an accuracy the answer is refused."""
    points = tmp_path / "points.csv"
    points.write_text(f"longitude,latitude,name\n{at(0)},hole\n", encoding="utf-8")
    found = marram("course", "survey", str(COURSE), str(points), "--hole", "1", "--accuracy", "0.3", "--json")
    assert json.loads(found.out)["points"][0]["area"] == "putting_green"
    refused = marram("course", "survey", str(COURSE), str(points), "--hole", "1")
    assert refused.code == 2
    assert "give its accuracy" in refused.err


@pytest.mark.parametrize(
    "held",
    ['{"locations": []}', "[" * 100_000, '{"locations": [{"hole": Infinity, "longitude": 4, "latitude": 55}]}',
     '{"locations": [{"hole": 7}]}', '{"places": 1}', '{"locations": [{"hole": 7, "longitude": "4", "latitude": 55}]}'],
    ids=["empty", "nested", "infinite", "incomplete", "other", "text"],
)  # fmt: skip
def test_a_file_of_no_hole_locations_is_refused_in_a_sentence(tmp_path: Path, held: str) -> None:
    """Whatever is in it: exit code 2, no name of an error of Python, and what to do."""
    path = tmp_path / "holes.json"
    path.write_text(held)
    refused = marram("course", "holes", str(COURSE), "--locations", str(path))

    assert refused.code == 2
    assert "Error" not in refused.err
    assert "holes.json" in refused.err
