"""The command line, the desk and Python are answered by the same services: the same place, the same drawing."""

import json
import re
from pathlib import Path

import pytest
from shapely.geometry import Point

from marram.course import load
from marram.course.model import Course, Kind
from marram.demo import COURSE
from marram.desk.app import create_app
from tests.cli.running import marram
from tests.desk.asking import TestClient

README = Path(__file__).parents[2] / "README.md"


@pytest.fixture(scope="module")
def course() -> Course:
    return load(COURSE)


@pytest.fixture(scope="module")
def client() -> TestClient:
    return TestClient(create_app())


def degrees(course: Course, point: Point) -> tuple[str, str]:
    """A place as the command line takes it, and as an address holds it."""
    longitude, latitude = course.plane.to_degrees(point.x, point.y)
    return f"{longitude:.7f},{latitude:.7f}", f"{latitude:.7f},{longitude:.7f}"


def crossing(course: Course) -> tuple[int, Point, Point]:
    """A hole across a red penalty area, a place in it on the line of play, and where that line meets its edge."""
    for hole in course.holes.values():
        for feature in course.of(Kind.RED_PENALTY_AREA):
            met = hole.line.intersection(feature.geometry.boundary)
            if not met.is_empty:
                edge = Point(met.geoms[0] if hasattr(met, "geoms") else met)
                return hole.number, hole.line.intersection(feature.geometry).centroid, edge
    raise AssertionError("the demo course has no hole across a red penalty area")


@pytest.mark.parametrize("off", [0.0, 0.4, 3.0, 400.0])
def test_a_crossing_point_is_read_alike(client: TestClient, course: Course, off: float) -> None:
    """On the edge, near it or far from it: command and desk draw the same options, and give the same notes."""
    hole, ball, edge = crossing(course)
    typed, held = degrees(course, ball)
    entry_typed, entry_held = degrees(course, Point(edge.x + off, edge.y))

    printed = json.loads(
        marram(
            "relief", str(COURSE), "--hole", str(hole), "--ball", typed, "--entry", entry_typed, "--json",
            "--played-on", "2025-06-21", "--local-rule", "none",
        ).out
    )  # fmt: skip
    facts = "&".join(f"{name}={answer}" for name, answer in printed["facts"].items())
    shown = client.get(
        f"/api/relief?hole={hole}&ball={held}&entry={entry_held}&what={printed['incident']}&{facts}"
        "&on=2025-06-21&local=none"
    ).json()["options"]

    assert [one["kind"] for one in shown] == [one["option"]["kind"] for one in printed["options"]]
    for page, command in zip(shown, printed["options"], strict=True):
        assert page["drawn"] == (command["state"] == "Drawn"), page["kind"]
        if command["state"] == "NotDrawn":
            assert page["messages"][0].replace("entry", f"--entry {entry_typed}", 1) == command["lines"][0]
        if page["drawn"]:
            lines = {line.strip() for line in command["lines"]}
            assert {*page["messages"], *page["measures"]} <= lines


def test_the_example_for_python_runs(capsys: pytest.CaptureFixture[str]) -> None:
    """What the README shows can be typed as it stands."""
    blocks = re.findall(r"```python\n(.*?)```", README.read_text(encoding="utf-8"), flags=re.DOTALL)
    shown = "\n".join(blocks).replace('"course.geojson"', f"{str(COURSE)!r}")

    exec(compile(shown, str(README), "exec"), {})  # noqa: S102 - our own example

    printed = capsys.readouterr().out
    assert "STROKE_AND_DISTANCE []" in printed
    assert re.search(r"LATERAL \[\d", printed)
