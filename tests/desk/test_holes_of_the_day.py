"""Holes set for a day move the hole for every ruling of that day: distances, the map, "nearer the hole"."""

from datetime import date
from pathlib import Path

import pytest

from marram.course import load
from marram.course.versions.hole_days import HoleDays
from marram.demo import COURSE
from marram.desk.app import create_app
from tests.desk.asking import TestClient

DAY = date(2025, 6, 21)
NEXT_DAY = date(2025, 6, 22)
MOVED = 9.0
"""Metres north of where hole 7 is mapped."""


@pytest.fixture
def kept(tmp_path: Path) -> HoleDays:
    return HoleDays(tmp_path / "hole-locations")


@pytest.fixture
def desk(tmp_path: Path) -> TestClient:
    return TestClient(create_app(maps=tmp_path), follow_redirects=False)


def places() -> tuple[str, tuple[float, float]]:
    """Return a ball 100 m south of hole 7 as an address has it, and where the hole is cut on the day."""
    course = load(COURSE)
    hole = course.holes[7].location
    longitude, latitude = course.plane.to_degrees(hole.x, hole.y - 100)
    return f"hole=7&ball={latitude},{longitude}", course.plane.to_degrees(hole.x, hole.y + MOVED)


def test_the_distance_to_the_hole_is_that_of_the_day(desk: TestClient, kept: HoleDays) -> None:
    """On the day the hole is 109 m away; on another day as mapped, and a later save counts at once."""
    ball, cut = places()
    kept.save(DAY, {7: cut}, base=0, who="Ada")
    of_day, of_next = (desk.get(f"/api/area?{ball}&on={on}").json() for on in (DAY, NEXT_DAY))

    assert of_day["metres_to_hole"] == pytest.approx(100 + MOVED, abs=0.1)
    assert (of_day["holes_version"], of_day["holes_saved_by"]) == (1, "Ada")
    assert of_next["metres_to_hole"] == pytest.approx(100, abs=0.1)
    assert of_next["holes_version"] is None

    course = load(COURSE)
    kept.save(DAY, {7: course.plane.to_degrees(*course.holes[7].location.coords[0])}, base=1, who="Bo")
    later = desk.get(f"/api/area?{ball}&on={DAY}").json()
    assert (later["holes_version"], later["holes_saved_by"]) == (2, "Bo")
    assert later["metres_to_hole"] == pytest.approx(100, abs=0.1)


def test_the_map_shows_the_hole_where_it_is_cut(desk: TestClient, kept: HoleDays) -> None:
    """The drawing of the day has its pin there, under another tag, so that a phone fetches it anew."""
    _, cut = places()
    kept.save(DAY, {7: cut}, base=0, who="Ada")
    of_day, of_next = (desk.get(f"/api/course?on={on}") for on in (DAY, NEXT_DAY))
    pins = [
        {
            one["properties"]["number"]: one["geometry"]["coordinates"]
            for one in answer.json()["features"]
            if one["properties"]["kind"] == "hole"
        }
        for answer in (of_day, of_next)
    ]

    assert pins[0][7] == pytest.approx(cut, abs=1e-6)
    assert pins[1][7] != pytest.approx(cut, abs=1e-6)
    assert of_day.headers["etag"] != of_next.headers["etag"]


def test_a_ruling_says_on_which_holes_it_stands(desk: TestClient, kept: HoleDays) -> None:
    """The page of a ruling names the version of the holes and who saved it."""
    ball, cut = places()
    kept.save(DAY, {7: cut}, base=0, who="Ada")
    case = f"{ball}&what=unplayable_ball&area_of_ball=general_area&spot_of_ball_known=yes&last_stroke_from_penalty_area=no"

    assert "version 1, saved by Ada" in desk.get(f"/case?{case}&on={DAY}").text
    assert "saved by Ada" not in desk.get(f"/case?{case}&on={NEXT_DAY}").text
