"""The desk on a map that cannot be used yet: every page leads to its mending, and goes on once it is mended."""

import json
import re
from pathlib import Path

import pytest
from fastapi import FastAPI

from marram.course.versions.map_versions import MapVersions
from marram.desk.app import create_app
from marram.errors import BadCourse
from marram.words.texts import text as said
from tests.course.mending.broken import BREAKS, document, features
from tests.desk.conftest import TestClient

BAD = Path(__file__).parents[1] / "bad" / "course"


@pytest.fixture
def course_file(tmp_path: Path) -> Path:
    """Nine holes, one line of play the wrong way and one green that crosses itself."""
    found = features()
    BREAKS["hole_backwards"](found, 2)
    BREAKS["invalid_geometry"](found, 4)
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document(found)), encoding="utf-8")
    return path


@pytest.fixture
def broken(course_file: Path) -> FastAPI:
    return create_app(course_file, maps=course_file.parent / "maps")


@pytest.fixture
def desk(broken: FastAPI) -> TestClient:
    return TestClient(broken, follow_redirects=False)


def marks(page: str) -> list[str]:
    """Return the marks of the choices that a page offers, in order."""
    return re.findall(r'name="mark" value="([0-9a-f]{10})"', page)


def accept(desk, **more):
    page = desk.get("/map/mend").text
    form = {"mark": marks(page)[0], "who": "R. Marker", "in_force_from": "2026-05-01", "base": "0", **more}
    return desk.post("/map/mend", data=form)


def test_the_desk_opens_on_the_mending(desk) -> None:
    """The first page leads there; every other page says so with a link, and programs get an error of its own."""
    assert desk.get("/").headers["location"] == "/map/mend"
    for address in ("/what", "/ball?hole=2", "/marking", "/case?what=unplayable_ball"):
        answer = desk.get(address)
        assert answer.status_code == 503, address
        assert 'href="/map/mend"' in answer.text
    told = desk.get("/api/course")
    assert told.status_code == 503
    assert told.json()["error"]["code"] == "map_being_mended"


def test_the_list_holds_every_fault_with_its_proposal(desk) -> None:
    """Without JavaScript: what is wrong, why, what would be done, a button for each choice, and one to leave it."""
    page = desk.get("/map/mend")
    assert page.status_code == 200
    for words in (
        "2 things must be mended",
        "Turn the line round",
        "Keep both parts",
        "Keep only the part of 100 m²",
        said("mending.leave"),
    ):
        assert words in page.text


def test_each_acceptance_is_a_version_and_the_desk_goes_on_once_nothing_is_left(desk, course_file) -> None:
    """Two accepted one after the other: two versions with who and why, the file untouched, and no restart."""
    before = course_file.read_bytes()
    first = accept(desk, why="walked it")
    assert first.status_code == 303
    assert desk.get("/what").status_code == 503
    assert accept(desk).status_code == 303
    assert desk.get("/").status_code == 200
    assert desk.get("/api/course").status_code == 200
    assert "can be used" in desk.get("/map/mend").text
    assert course_file.read_bytes() == before
    versions = MapVersions(course_file, course_file.parent / "maps").versions()
    assert [one.who for one in versions[1:]] == ["R. Marker"] * 2
    assert versions[1].note.endswith("walked it")


def test_a_desk_started_again_goes_on_with_what_was_mended(desk, course_file) -> None:
    """What was accepted is kept: a new desk needs nothing mended twice."""
    accept(desk)
    accept(desk)
    again = TestClient(create_app(course_file, maps=course_file.parent / "maps"), follow_redirects=False)
    assert again.get("/").status_code == 200


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({"who": " "}, said("mending.say_who")),
        ({"in_force_from": "soon"}, "is no day"),
        ({"mark": "0123456789"}, "no longer fits the map"),
        ({"mark": ""}, said("mending.choose_first")),
    ],
)
def test_what_cannot_be_saved_is_said(desk, course_file, given, said) -> None:
    """Nobody named, no day, a proposal of another map: the page says so and nothing is saved."""
    answer = accept(desk, **given)
    assert answer.status_code == 422
    assert said in answer.text
    assert not (course_file.parent / "maps").exists()


def test_of_many_choices_none_is_made_beforehand(course_file) -> None:
    """A line without number: a list that begins with nothing chosen; accepted so, it is asked for and nothing is saved."""
    found = json.loads(course_file.read_text())
    del next(one for one in found["features"] if one["id"] == "line 3")["properties"]["ref"]
    for one in found["features"]:
        if one["id"] in {"line 1", "line 5", "line 6", "line 7", "line 8", "line 9"}:
            one["properties"].pop("ref")
    course_file.write_text(json.dumps(found))
    desk = TestClient(create_app(course_file, maps=course_file.parent / "maps"), follow_redirects=False)
    page = desk.get("/map/mend").text
    key = re.search(r'name="choose" value="([0-9a-f]{10})"', page)[1]
    form = {"choose": key, "who": "R", "in_force_from": "2026-05-01"}
    asked = desk.post("/map/mend", data={**form, f"mark-{key}": ""})
    assert "Choose one from the list first." in asked.text
    mark = re.search(
        rf'name="mark-{key}".*?<option value="">.*?<option value="([0-9a-f]{{10}})"', page, re.DOTALL
    )[1]
    assert desk.post("/map/mend", data={**form, f"mark-{key}": mark}).status_code == 303


def test_what_is_left_stays_left_until_it_is_asked_for_again(desk) -> None:
    """Leaving moves a proposal to the end for this session and changes nothing else."""
    page = desk.get("/map/mend").text
    key = re.search(r'name="leave" value="([0-9a-f]{10})"', page)[1]
    left = desk.post("/map/mend", data={"leave": key, "in_force_from": "2026-05-01"})
    assert "Max-Age" not in left.headers["set-cookie"]
    after = desk.get("/map/mend").text
    assert said("mending.left", count="1") in after
    assert f'name="leave" value="{key}"' not in after
    desk.post("/map/mend", data={"again": "yes", "in_force_from": "2026-05-01"})
    assert "Left for now" not in desk.get("/map/mend").text


def test_programs_are_told_before_and_after(desk) -> None:
    """The JSON holds each place with its choices and the shapes they change, and the ground that could be read."""
    told = desk.get("/api/map/draft").json()
    assert (told["usable"], told["base"]) == (False, 1)
    turn = next(one for one in told["places"] if one["mending"] == "turn_line")
    (choice,) = turn["choices"]
    assert choice["before"][0]["coordinates"] == choice["after"][0]["coordinates"][::-1]
    assert {one["kind"] for one in told["ground"]} >= {"boundary", "putting_green", "line_of_play"}


def test_the_editor_draws_on_a_broken_map(desk) -> None:
    """The editor opens too, says that the map cannot be used, and what is drawn is kept while errors are left."""
    page = desk.get("/map")
    assert page.status_code == 200
    assert said("mending.unusable") in page.text
    told = desk.get("/api/map").json()
    area = {
        "type": "Feature",
        "properties": {"marram": "ground_under_repair"},
        "geometry": {
            "type": "Polygon",
            "coordinates": [[[3.0008, 51.0006], [3.0009, 51.0006], [3.0009, 51.0007], [3.0008, 51.0006]]],
        },
    }
    edits = [{"action": "add", "ident": "drawn/1", "feature": area}]
    saved = desk.post(
        "/api/map", json={"base": told["base"], "who": "R", "in_force_from": "2026-05-01", "edits": edits}
    )
    assert saved.status_code == 201, saved.text


def test_a_usable_map_is_not_saved_with_errors(desk) -> None:
    """Once the map can be used, an edit with an error is refused as ever."""
    accept(desk)
    accept(desk)
    told = desk.get("/api/map?on=2026-05-01").json()
    line = next(one for one in told["map"]["features"] if one["id"] == "line 3")
    line["geometry"]["coordinates"].reverse()
    edits = [{"action": "change", "ident": "line 3", "feature": line}]
    refused = desk.post(
        "/api/map", json={"base": told["base"], "who": "R", "in_force_from": "2026-05-01", "edits": edits}
    )
    assert refused.status_code == 422
    assert "from the green to the tee" in refused.text


def test_a_map_that_cannot_be_kept_is_refused_as_before(course_file) -> None:
    """Without a folder for versions there is nowhere to mend it: refused with every fault."""
    with pytest.raises(BadCourse, match="Reverse the line"):
        create_app(course_file)


@pytest.mark.parametrize(
    "path",
    sorted(
        one
        for one in BAD.iterdir()
        if one.name
        not in {
            "not_json.geojson",
            "not_a_collection.geojson",
            "not_xml.osm",
            "not_osm.osm",
            "no_coordinates.osm",
            "document_type.osm",
            "empty.geojson",
            "features_no_list.geojson",
            "key_twice.geojson",
            "thousands_of_digits.geojson",
            "nan_in_a_ring.geojson",
            "underscore_in_a_position.osm",
            "zipped.geojson",
            "gzipped.osm",
        }
    ),
    ids=lambda path: path.name,
)
def test_every_bad_map_can_be_looked_at(path, tmp_path) -> None:
    """Whatever is wrong with a map, as long as it is one: its page and its JSON are made, usable or not."""
    desk = TestClient(create_app(path, maps=tmp_path), follow_redirects=False)
    assert desk.get("/map/mend").status_code == 200
    assert desk.get("/map").status_code == 200
    assert desk.get("/api/map/draft").status_code == 200
    assert desk.get("/api/map").status_code == 200


def numbered(tmp_path: Path) -> TestClient:
    """A desk on nine holes whose numbers all name a course: "4 - #2"."""
    found = features()
    for hole in range(1, 10):
        BREAKS["hole_without_number"](found, hole)
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document(found)), encoding="utf-8")
    return TestClient(create_app(path, maps=tmp_path / "maps"), follow_redirects=False)


def test_what_is_mended_alike_is_accepted_together(tmp_path) -> None:
    """Nine numbers written alike: each can be accepted alone, or all nine as one version that counts them."""
    desk = numbered(tmp_path)
    page = desk.get("/map/mend").text
    assert len(marks(page)) == 9
    (together,) = re.findall(r'name="mark" value="([0-9a-f+]{20,})"', page)
    assert together.split("+") == marks(page)
    assert said("mending.accept_all", count=9) in page
    form = {"mark": together, "who": "R. Marker", "in_force_from": "2026-05-01", "base": "0"}
    assert desk.post("/map/mend", data=form).status_code == 303
    assert desk.get("/").status_code == 200
    (_, version) = MapVersions(tmp_path / "links.geojson", tmp_path / "maps").versions()
    assert (version.who, len(version.edits)) == ("R. Marker", 9)


def test_one_mark_that_no_longer_fits_keeps_all_from_being_saved(tmp_path) -> None:
    """Of several accepted together one is stale: nothing is saved, and the page says why."""
    desk = numbered(tmp_path)
    mark = marks(desk.get("/map/mend").text)[0]
    form = {"mark": f"{mark}+0123456789", "who": "R. Marker", "in_force_from": "2026-05-01", "base": "0"}
    answer = desk.post("/map/mend", data=form)
    assert answer.status_code == 422
    assert "no longer fits the map" in answer.text
    assert not (tmp_path / "maps").exists()


def test_what_goes_off_the_map_is_told_apart_from_what_changes(course_file, tmp_path) -> None:
    """One hole drawn twice: the line that goes is told as gone, not as something that is drawn anew."""
    found = features()
    found["line 4 again"] = {**found["line 4"], "id": "line 4 again"}
    course_file.write_text(json.dumps(document(found)), encoding="utf-8")
    desk = TestClient(create_app(course_file, maps=tmp_path / "maps"))
    (choice, _) = desk.get("/api/map/draft").json()["places"][0]["choices"]
    assert (choice["before"], choice["after"]) == ([], [])
    assert [one["type"] for one in choice["gone"]] == ["LineString"]


def test_a_fault_of_a_whole_hole_shows_its_line(course_file, tmp_path) -> None:
    """A hole without a tee has no feature at fault; its line of play is drawn, so that one sees which it is."""
    found = features()
    del found["tee 3"]
    course_file.write_text(json.dumps(document(found)), encoding="utf-8")
    desk = TestClient(create_app(course_file, maps=tmp_path / "maps"))
    (place,) = desk.get("/api/map/draft").json()["places"]
    assert (place["check"], place["feature"][0]["type"]) == ("hole_without_tee", "LineString")
