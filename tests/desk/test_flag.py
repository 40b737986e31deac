"""A hole that the map has no line of play for: where its flagstick stands is asked once, and everything rests on it."""

import json
import re
from html import unescape
from pathlib import Path

import pytest

from marram.course import load
from marram.course.model import Course
from marram.demo import COURSE
from marram.desk.app import create_app
from marram.services.cases.address import Address
from marram.services.cases.address_case import address_of
from marram.services.cases.case_file import read_case
from tests.desk.asking import TestClient

BALL = "55.0078000,3.9961000"
CASE = f"what=unplayable_ball&ball={BALL}&spot_of_ball_known=yes&last_stroke_from_penalty_area=no&form=stroke_play&local=none"


def without(tmp_path: Path, keep: int | None = None) -> TestClient:
    """Return a desk on the demonstration course without lines of play and pins, but for those of one hole."""
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    document["features"] = [
        one
        for one in document["features"]
        if one["properties"].get("golf") not in {"hole", "pin"}
        or (keep is not None and one["properties"].get("ref") == str(keep))
    ]
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document), encoding="utf-8")
    return TestClient(create_app(path, maps=tmp_path / "maps"), follow_redirects=False)


@pytest.fixture
def course() -> Course:
    return load(COURSE)


@pytest.fixture
def flag(course: Course) -> str:
    at = course.hole(7).location
    longitude, latitude = course.plane.to_degrees(at.x, at.y)
    return f"{latitude:.7f},{longitude:.7f}"


def test_a_map_without_lines_of_play_asks_for_hole_and_flagstick(tmp_path: Path, flag: str) -> None:
    """The number first, then the flagstick, then the ball; the address holds all three, and nothing is guessed."""
    desk = without(tmp_path)
    start = desk.get("/")
    assert start.status_code == 200
    assert 'action="/flag"' in start.text
    assert start.context["map_state"]["pick"] is None  # a ball alone tells no hole
    assert desk.get(f"/ball?ball={BALL}").headers["location"].startswith("/flag?")
    asked = desk.get("/ball?hole=7").headers["location"]
    page = desk.get(asked)
    assert page.context["map_state"]["pick"] == "flag"
    tapped = page.context["map_state"]["picks"]["flag"]["url"].replace("{at}", flag)
    ball = desk.get(tapped)
    assert "Where does the ball lie?" in ball.text
    assert f"flag={flag}" in unescape(ball.text)


def test_the_next_case_on_that_hole_and_day_is_offered_the_same_flagstick(tmp_path: Path, flag: str) -> None:
    """It is offered, marked and not taken unasked; on another hole, another day or another device nothing is known of it."""
    desk = without(tmp_path)
    day = "on=2025-06-21"
    desk.get(f"/ball?hole=7&flag={flag}&{day}")
    again = desk.get(f"/flag?hole=7&{day}")

    assert f"flag={flag}" in again.context["as_before"]
    (marked,) = [one for one in again.context["map_state"]["marks"] if one["role"] == "flag"]
    assert marked["at"] == pytest.approx([float(one) for one in flag.split(",")])
    assert desk.get(f"/ball?hole=7&{day}").headers["location"].startswith("/flag?")
    assert desk.get(again.context["as_before"]).status_code == 200
    for other in (f"/flag?hole=8&{day}", "/flag?hole=7&on=2025-06-22"):
        assert desk.get(other).context["as_before"] is None
    desk.cookies.clear()
    assert desk.get(f"/flag?hole=7&{day}").context["as_before"] is None


@pytest.mark.parametrize(
    "kept",
    [
        "",
        "!!",
        "2025-06-21~7~nan~3.9",
        "2025-06-21~7~1e9~3",
        "2025-06-21~7~99.0~3.0",
        "2025-06-21~7~12.0000000~3.0000000",
    ],
)
def test_what_a_device_may_not_have_kept_is_not_offered(tmp_path: Path, kept: str) -> None:
    """What is no place, or a place of another course, is passed over."""
    desk = without(tmp_path)
    desk.cookies.set("marram_flags", kept)
    assert desk.get("/flag?hole=7&on=2025-06-21").context["as_before"] is None


def test_relief_is_drawn_as_with_the_line_of_play(tmp_path: Path, flag: str) -> None:
    """Lateral relief and the line back from the flagstick shown are those of the map that has the hole."""
    drawn = []
    for folder, given, keep in (("a", f"&flag={flag}", None), ("b", "", 7)):
        (tmp_path / folder).mkdir()
        page = without(tmp_path / folder, keep).get(f"/case?hole=7&{CASE}{given}")
        assert page.status_code == 200
        drawn.append([(one.words.size, one.drawn) for one in page.context["options"]])
    assert drawn[0] == drawn[1]
    assert sum(found for _, found in drawn[0]) == 2


def test_one_hole_that_the_map_lacks_is_asked_for_and_the_others_are_not(tmp_path: Path, flag: str) -> None:
    """A case on hole 7 needs its flagstick; one on hole 9, which is mapped, is ruled on, and asks for none."""
    desk = without(tmp_path, 9)
    assert desk.get(f"/case?hole=7&{CASE}").headers["location"].startswith("/flag?hole=7&")
    assert desk.get(f"/case?hole=9&{CASE}").status_code == 200
    assert desk.get(f"/flag?hole=9&flag={flag}").headers["location"].startswith("/ball?hole=9&on=")
    assert "the map does not have" in desk.get("/").text


def test_the_json_of_a_case_holds_the_flagstick_and_is_read_back(tmp_path: Path, flag: str) -> None:
    """What a program is given it can give again: the same areas, on the same desk."""
    desk = without(tmp_path)
    first = desk.get(f"/api/rule?hole=7&{CASE}&flag={flag}").json()
    latitude, longitude = map(float, flag.split(","))
    assert first["case"]["flag"] == {"latitude": latitude, "longitude": longitude}
    again = desk.post("/api/rule", json=first["case"]).json()
    assert again["case"] == first["case"]
    assert again["result"] == first["result"]
    assert address_of(Address, read_case(first["case"])).flag == (latitude, longitude)


@pytest.mark.parametrize(
    ("query", "said"),
    [
        ("flag=55,4", "say of which hole the flagstick is"),
        ("hole=7&flag=there", "is not a place"),
        ("hole=0&flag=55.0078,3.9961", "holes are numbered from 1"),
    ],
)
def test_a_flagstick_that_cannot_be_used_is_said(tmp_path: Path, query: str, said: str) -> None:
    """What is wrong with it, and what to give instead."""
    page = without(tmp_path).get(f"/ball?{query}")
    assert page.status_code == 400
    assert said in re.sub(r"\s+", " ", unescape(page.text))


def test_lines_of_play_that_cannot_be_used_are_mended_first_or_done_without(tmp_path: Path) -> None:
    """A map whose holes are numbered in words opens to be mended; ruling before that is offered there, not chosen."""
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    for one in document["features"]:
        if one["properties"].get("golf") == "hole":
            one["properties"]["ref"] = "Hole A"
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document), encoding="utf-8")
    desk = TestClient(create_app(path, maps=tmp_path / "maps"), follow_redirects=False)
    assert desk.get("/").headers["location"] == "/map/mend"
    assert 'href="/flag"' in desk.get("/map/mend").text
    assert desk.get("/flag").status_code == 200


@pytest.mark.parametrize(
    ("query", "idle"),
    [
        ("what=ball_in_penalty_area&found_in_penalty_area=yes", True),
        (f"hole=9&{CASE}", False),
        ("hole=9&what=ball_in_penalty_area", False),
    ],
)
def test_a_case_without_a_place_says_that_its_map_is_idle(tmp_path: Path, query: str, idle: bool) -> None:
    """A phone leaves the map out where nothing of the case is on it and nothing is asked for there."""
    page = without(tmp_path, 9).get(f"/case?{query}")
    assert page.status_code == 200
    assert ("data-no-place" in page.text) is idle


@pytest.mark.parametrize(
    ("address", "idle"),
    [("/what", True), ("/may", True), ("/", False), ("/what?hole=9", False), (f"/what?hole=9&{CASE}", False)],
)
def test_a_phone_shows_no_map_where_a_ruling_is_asked_without_a_place(
    tmp_path: Path, address: str, idle: bool
) -> None:
    """What happened and what one may do are asked without the map as well; the start, and a hole chosen, need it."""
    assert ("data-no-place" in without(tmp_path, 9).get(address).text) is idle
