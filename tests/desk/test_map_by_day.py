"""The map of a day at the desk: prepared maps, a changed course file, who saved, new doubts, dropping zones."""

import json
from datetime import date
from pathlib import Path

import pytest

from marram.course.versions.map_edits import Edit
from marram.demo import COURSE
from marram.desk.app import create_app
from marram.words.texts import text as said
from tests.desk.asking import TestClient
from tests.desk.test_map_editor import DAY, SQUARE, area, filled, maps_of, saving

NEXT_DAY = "2025-06-22"
PLACE = "hole=1&ball=55.00405,4.00005"


@pytest.fixture
def desk(tmp_path: Path) -> TestClient:
    course = tmp_path / "course.geojson"
    course.write_bytes(COURSE.read_bytes())
    return TestClient(create_app(course, maps=tmp_path / "maps"), follow_redirects=False)


def add(desk: TestClient, ident: str, base: int, day: str, **how: str) -> dict:
    answer = desk.post("/api/map", json=saving(base, ("add", ident, area(ident, name=ident)), day=day, **how))
    assert answer.status_code == 201, answer.text
    return answer.json()


def test_the_map_of_a_day_comes_with_what_is_prepared(desk: TestClient) -> None:
    """Today's map is version 1 while tomorrow's is prepared; both answers name what a save builds on."""
    add(desk, "prepared", 1, NEXT_DAY)
    today, tomorrow = (desk.get(f"/api/map?on={day}").json() for day in (DAY, NEXT_DAY))

    assert (today["version"], today["base"], today["in_force_from"]) == (1, 2, None)
    assert today["prepared"] == [{"in_force_from": NEXT_DAY, "version": 2, "who": "Ada"}]
    assert (tomorrow["version"], tomorrow["base"], tomorrow["in_force_from"]) == (2, 2, NEXT_DAY)
    assert "prepared" in {one["id"] for one in tomorrow["map"]["features"]}
    assert "from 22 June 2025 (version 2, Ada)" in desk.get(f"/map?on={DAY}").text


def test_a_save_for_today_rules_today_and_tomorrow(desk: TestClient) -> None:
    """With a map prepared for tomorrow, ground marked today is ruled on today and tomorrow, each on its own map."""
    add(desk, "prepared", 1, NEXT_DAY)
    told = add(desk, "marked", 2, DAY, who="Bo")

    assert told["version"]["carried_into"] == [NEXT_DAY]
    for day, things in ((DAY, {"marked"}), (NEXT_DAY, {"marked", "prepared"})):
        answer = desk.get(f"/api/area?{PLACE}&on={day}").json()
        assert {name for name in ("marked", "prepared") if name in str(answer["things"])} == things
        assert (answer["map_version"], answer["map_in_force_from"], answer["map_saved_by"]) == (3, day, "Bo")
    assert said("editor.version.carried", days="22 June 2025") in desk.get("/map").text


def test_what_is_prepared_otherwise_is_shown_before_anything_is_saved(desk: TestClient) -> None:
    """409 names the day and both sides; the answer given with the next save is kept to."""
    add(desk, "a", 1, DAY)
    later = ("change", "a", area("a", name="Pond"))
    assert desk.post("/api/map", json=saving(2, later, day=NEXT_DAY)).status_code == 201
    mine = saving(3, ("change", "a", area("a", name="Mire")), who="Bo")
    refused = desk.post("/api/map", json=mine)

    assert refused.status_code == 409
    told = refused.json()
    assert (told["error"]["code"], told["since"]) == ("prepared_conflict", NEXT_DAY)
    assert [one["changes"] for one in told["their_versions"]] == [["Changed ground under repair “Pond”"]]
    assert maps_of(desk).latest().number == 3
    assert desk.post("/api/map", json=mine | {"prepared": "keep"}).status_code == 201
    assert "Mire" in desk.get(f"/api/course?on={DAY}").text
    assert "Pond" in desk.get(f"/api/course?on={NEXT_DAY}").text


def test_a_save_whose_answer_was_lost_is_not_saved_twice(desk: TestClient) -> None:
    """Sent again, the same edits answer with the version that holds them."""
    first = add(desk, "a", 1, DAY)
    again = add(desk, "a", 1, DAY)

    assert first["version"]["number"] == again["version"]["number"] == 2
    assert maps_of(desk).latest().number == 2


def test_who_saved_is_kept_for_the_next_save_and_named_in_the_ruling(desk: TestClient) -> None:
    """Initials of any script come back in every form of the page; the ruling names them with the version."""
    add(desk, "a", 1, DAY, who="Å. Ö.")
    page = desk.get("/map").text

    assert 'id="save-who" type="text" value="Å. Ö."' in page
    assert 'id="back-1-who" name="who" type="text" value="Å. Ö."' in page
    case = f"/case?{PLACE}&what=abnormal_course_condition&interference=ball&in_the_way=ground_under_repair"
    case += "&stroke_unreasonable_anyway=no&only_by_unreasonable_choice=no&form=stroke_play&local=none"
    ruling = desk.get(f"{case}&on={DAY}").text
    assert said("shell.map_version", number="2", since="21 June 2025", who="Å. Ö") in ruling
    before = desk.get(f"{case}&on=2025-06-20").text
    assert said("shell.map_version.file", number="1") in before


def test_new_doubts_are_shown_after_a_save(desk: TestClient) -> None:
    """A dropping zone that serves nothing is saved, and what the checks say of it is shown once, with its place."""
    aside = [[longitude + 0.001, latitude] for longitude, latitude in SQUARE]
    zone = area("z", aside)
    zone["properties"] = {"marram": "dropping_zone", "holes": "1"}
    answer = desk.post("/api/map", json=saving(1, ("add", "z", zone))).json()

    (fault,) = answer["new_faults"]
    assert "does not say what it serves" in fault
    assert "55.00" in fault
    assert "does not say what it serves" in desk.get("/map?saved=2").text
    add(desk, "a", 2, DAY)
    assert "find nothing new" in desk.get("/map?saved=3").text


def test_a_dropping_zone_serves_what_was_chosen(desk: TestClient) -> None:
    """Chosen from the map's things, it is drawn as the relief of a ball in just that ground, and checks as served."""
    add(desk, "mud", 1, DAY)
    value = next(one["value"] for one in desk.get("/api/map").json()["servable"] if one["ident"] == "mud")
    places = "55.004,4.0003\n55.004,4.0004\n55.0041,4.0004"
    form = filled(kind="dropping_zone", name="Zone", hole="1", places=places, serves=value, base="2")
    assert desk.post("/map", data=form).status_code == 303

    assert maps_of(desk).new_faults(3) == []
    case = (
        f"{PLACE}&what=abnormal_course_condition&on={DAY}&form=stroke_play&local=E-1&handed=right"
        "&interference=ball&stroke_unreasonable_anyway=no&only_by_unreasonable_choice=no"
        "&dropping_zone_provided=yes&dropping_zone_is_only_option=no"
    )
    options = desk.get(f"/api/relief?{case}").json()["options"]
    (zone,) = [one for one in options if one["kind"] == "dropping_zone"]
    assert zone["drawn"]
    elsewhere = desk.get(f"/api/relief?{case.replace('hole=1', 'hole=2')}").json()["options"]
    assert not any(one["drawn"] for one in elsewhere if one["kind"] == "dropping_zone")


def test_only_a_dropping_zone_serves_something(desk: TestClient) -> None:
    """The form refuses what it cannot mean."""
    answer = desk.post("/map", data=filled(serves="cauldron"))
    assert answer.status_code == 422
    assert "Only a dropping zone serves" in answer.text


def changed_file(desk: TestClient) -> None:
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    document["features"].append(area("file/1", name="From the file"))
    maps_of(desk).course_file.write_text(json.dumps(document), encoding="utf-8")


def decide(desk: TestClient, **how: str) -> object:
    news = maps_of(desk).file_news()
    assert news is not None
    return desk.post("/map/file", data={"mark": news.mark, "who": "Bo", "in_force_from": DAY, **how})


@pytest.mark.parametrize(("take", "there"), [("true", True), ("false", False)])
def test_a_changed_course_file_is_said_and_decided(desk: TestClient, take: str, there: bool) -> None:
    """First page and editor say so; taken over or left out by somebody named, it is no news any more."""
    add(desk, "a", 1, DAY)
    assert "course file has changed" not in desk.get("/").text
    changed_file(desk)

    assert said("rulings.start.file_changed") in desk.get("/").text
    page = desk.get("/map").text
    assert "Added ground under repair “From the file”" in page
    assert "From the file" not in desk.get(f"/api/course?on={DAY}").text
    assert decide(desk, take=take).status_code == 303
    assert ("From the file" in desk.get(f"/api/course?on={DAY}").text) is there
    assert "course file has changed" not in desk.get("/").text
    assert maps_of(desk).latest().who == "Bo"


def test_a_desk_started_again_rules_on_the_versions_not_on_the_changed_file(desk: TestClient) -> None:
    """Version 1 is as it was when edits began, also for days before them."""
    add(desk, "a", 1, DAY)
    changed_file(desk)
    again = TestClient(create_app(maps_of(desk).course_file, maps=maps_of(desk).place))

    assert "From the file" not in again.get("/api/course?on=2025-06-20").text
    assert said("rulings.start.file_changed") in again.get("/").text


def test_a_feature_changed_in_the_file_and_here_is_asked_about(desk: TestClient) -> None:
    """The page shows the choice; with it made, the decision is saved."""
    changed_file(desk)
    assert decide(desk, take="true").status_code == 303
    mine = ("change", "file/1", area("file/1", name="Mine"))
    assert desk.post("/api/map", json=saving(2, mine)).status_code == 201
    document = json.loads(maps_of(desk).course_file.read_text(encoding="utf-8"))
    document["features"][-1] = area("file/1", name="Theirs")
    maps_of(desk).course_file.write_text(json.dumps(document), encoding="utf-8")

    asked = decide(desk, take="true")
    assert asked.status_code == 422
    assert "also edited here" in asked.text
    assert 'name="overlap" value="replace"' in asked.text
    assert decide(desk, take="true", overlap="replace").status_code == 303
    assert "Theirs" in desk.get(f"/api/course?on={DAY}").text


def test_a_broken_course_file_is_said_and_rulings_go_on(desk: TestClient) -> None:
    """The editor names the fault; the map is that of the versions, also after a new start."""
    add(desk, "a", 1, DAY)
    maps_of(desk).course_file.write_text("{", encoding="utf-8")
    again = TestClient(create_app(maps_of(desk).course_file, maps=maps_of(desk).place))

    for one in (desk, again):
        assert "cannot be read any more" in one.get("/map").text
        assert one.get(f"/api/area?{PLACE}&on={DAY}").json()["map_version"] == 2


def test_an_edge_that_a_phone_marked_is_in_doubt_as_far_as_it_may_be_off(desk: TestClient) -> None:
    """The ball lies 3.2 m inside: known to 6 m the ground is no fact of the map, drawn exactly it is."""
    rough = area("a", name="Rough")
    rough["properties"]["accuracy"] = "6.0"
    maps = maps_of(desk)
    for number, feature in enumerate((rough, area("a", name="Exact"))):
        action = "change" if number else "add"
        maps.save([Edit(action, "a", feature)], base=number + 1, who="Ada", in_force_from=date(2025, 6, 21))
        told = desk.get(f"/api/area?{PLACE}&on={DAY}").json()
        assert ("interference" in told["facts"]) is bool(number)
        assert any("edge of the ground under repair" in doubt for doubt in told["doubts"]) is not bool(number)
