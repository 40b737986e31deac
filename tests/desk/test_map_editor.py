"""The map editor without a browser: saving, conflicts, refusals, the form without JavaScript, going back."""

from datetime import date
from pathlib import Path

import pytest

from marram.course.model import Kind
from marram.course.versions.map_versions import MapVersions
from marram.desk.app import create_app
from tests.desk.asking import TestClient

DAY = "2025-06-21"
SQUARE = [[4.0, 55.004], [4.0001, 55.004], [4.0001, 55.0041], [4.0, 55.0041], [4.0, 55.004]]
BOW_TIE = [[4.0, 55.004], [4.0001, 55.0041], [4.0001, 55.004], [4.0, 55.0041], [4.0, 55.004]]


@pytest.fixture
def desk(tmp_path: Path) -> TestClient:
    return TestClient(create_app(maps=tmp_path / "maps"), follow_redirects=False)


def maps_of(desk: TestClient) -> MapVersions:
    return desk.app.state.maps


def area(ident: str, ring: list[list[float]] = SQUARE, name: str = "Flooded") -> dict:
    return {
        "type": "Feature",
        "id": ident,
        "properties": {"marram": "ground_under_repair", "name": name},
        "geometry": {"type": "Polygon", "coordinates": [ring]},
    }


def saving(base: int, *edits: tuple[str, str, dict | None], who: str = "Ada", day: str = DAY) -> dict:
    told = [{"action": action, "ident": ident, "feature": feature} for action, ident, feature in edits]
    return {"base": base, "who": who, "in_force_from": day, "note": "after rain", "edits": told}


def repaired(desk: TestClient) -> set[str]:
    maps = maps_of(desk)
    return {one.name for one in maps.course(maps.latest().number).of(Kind.GROUND_UNDER_REPAIR)}


def test_the_map_comes_as_geojson_with_its_versions(desk: TestClient) -> None:
    """Before any edit there is version 1, and each area is told by its kind."""
    told = desk.get("/api/map").json()

    assert [one["number"] for one in told["versions"]] == [1]
    assert told["map"]["type"] == "FeatureCollection"
    assert "bunker" in told["kinds"].values()
    assert desk.get("/api/map?version=7").status_code == 400


def test_an_edit_saved_is_a_version_in_force_from_its_day(desk: TestClient) -> None:
    """201 tells the version; the list says who, why and what changed; rulings of that day use it."""
    answer = desk.post("/api/map", json=saving(1, ("add", "drawn/1", area("drawn/1"))))

    assert answer.status_code == 201
    assert answer.json()["version"]["changes"] == ["Added ground under repair “Flooded”"]
    page = desk.get("/map").text
    assert "Version 2" in page
    assert "From 21 June 2025 · Ada" in page
    assert "after rain" in page
    assert "Flooded" in desk.get(f"/api/course?on={DAY}").text
    assert "Flooded" not in desk.get("/api/course?on=2025-06-20").text


def test_two_who_change_the_same_see_both_sides(desk: TestClient) -> None:
    """409 names who changed what meanwhile, and nothing is saved; put on the newest version it is."""
    desk.post("/api/map", json=saving(1, ("add", "drawn/1", area("drawn/1"))))
    theirs = ("change", "drawn/1", area("drawn/1", name="Pond"))
    desk.post("/api/map", json=saving(2, theirs, who="Bo"))
    mine = ("change", "drawn/1", area("drawn/1", name="Mire"))
    answer = desk.post("/api/map", json=saving(2, mine))

    assert answer.status_code == 409
    told = answer.json()
    assert told["latest"] == 3
    assert [one["feature"]["properties"]["name"] for one in (*told["theirs"], *told["yours"])] == [
        "Pond",
        "Mire",
    ]
    assert [(one["who"], one["changes"]) for one in told["their_versions"]] == [
        ("Bo", ["Changed ground under repair “Pond”"])
    ]
    assert maps_of(desk).latest().number == 3
    assert desk.post("/api/map", json=saving(3, mine)).status_code == 201
    assert "Mire" in repaired(desk)


def test_a_bow_tie_is_refused_with_its_place_and_remedy(desk: TestClient) -> None:
    """An edge that crosses itself is no area: 422 says where and what to do, and nothing is written."""
    answer = desk.post("/api/map", json=saving(1, ("add", "drawn/1", area("drawn/1", BOW_TIE))))

    assert answer.status_code == 422
    (fault,) = answer.json()["error"]["faults"]
    assert fault.startswith("drawn/1, at 55.00")
    assert "Draw" in fault.rpartition(". ")[2] or "draw" in fault
    assert maps_of(desk).latest().number == 1
    assert not list(maps_of(desk).place.glob("*.json"))


@pytest.mark.parametrize(
    ("wrong", "words"),
    [
        ({"who": " "}, "Say who"),
        ({"day": "tomorrow"}, "write year-month-day"),
    ],
)
def test_a_save_without_who_or_when_is_refused(desk: TestClient, wrong: dict, words: str) -> None:
    """Who and from which day are never guessed."""
    answer = desk.post("/api/map", json=saving(1, ("add", "drawn/1", area("drawn/1")), **wrong))

    assert answer.status_code == 422
    assert words in answer.json()["error"]["message"]
    assert maps_of(desk).latest().number == 1


def filled(**other: str) -> dict[str, str]:
    places = "\n".join(f"{latitude},{longitude}" for longitude, latitude in SQUARE[:-1])
    form = {"kind": "no_play_zone", "name": "Orchids", "places": places, "base": "1", "who": "Ada"}
    return {**form, "in_force_from": DAY, **other}


def test_the_form_saves_without_javascript(desk: TestClient) -> None:
    """Kind, name and corners as text are enough for a version."""
    answer = desk.post("/map", data=filled())

    assert answer.status_code == 303
    assert answer.headers["location"] == f"/map?saved=2&on={DAY}"
    course = maps_of(desk).course(2)
    (zone,) = [one for one in course.of(Kind.NO_PLAY_ZONE) if one.name == "Orchids"]
    # 0.0001° of longitude at 55.004° N by 0.0001° of latitude, on the GRS 80 ellipsoid: 6.40 m by 11.13 m.
    assert zone.geometry.area == pytest.approx(6.40 * 11.13, rel=0.01)
    assert "Version 2 is saved" in desk.get("/map?saved=2").text


def test_the_form_lists_every_fault_and_keeps_what_was_typed(desk: TestClient) -> None:
    """A wrong line is named with its number; nothing is saved and nothing has to be typed again."""
    answer = desk.post("/map", data=filled(places="55.004,4.0\nnorth\n95,4", who=""))

    assert answer.status_code == 422
    for words in ("line 2", "line 3", "Say who", "north", "Orchids"):
        assert words in answer.text
    assert maps_of(desk).latest().number == 1


def test_going_back_is_a_new_version(desk: TestClient) -> None:
    """The earlier map is in force again, and the version gone back from stays in the list."""
    desk.post("/map", data=filled(kind="ground_under_repair"))
    assert "Orchids" in repaired(desk)
    answer = desk.post("/map/restore", data={"number": "1", "base": "2", "who": "Bo", "in_force_from": DAY})

    assert answer.status_code == 303
    assert "Orchids" not in repaired(desk)
    page = desk.get("/map").text
    assert "back to version 1" in page
    assert "Removed ground under repair “Orchids”" in page
    assert maps_of(desk).version_on(date(2025, 6, 21)).number == 3


def test_a_desk_without_versions_says_how_to_start_with_them(client: TestClient) -> None:
    """Where nothing is kept, the page says so, and a save is refused."""
    assert "marram serve course.geojson" in client.get("/map").text
    assert client.get("/api/map").status_code == 404
    assert client.post("/api/map", json=saving(1, ("remove", "x", None))).status_code == 404
