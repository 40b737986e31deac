"""The desk rules on the version of the map in force on the day of play, and says which."""

from datetime import date
from pathlib import Path

import pytest

from marram.course.versions.map_edits import Edit
from marram.course.versions.map_versions import MapVersions
from marram.demo import COURSE
from marram.desk.app import create_app
from marram.words.texts import text as said
from tests.course.test_versions import square
from tests.desk.asking import TestClient

BALL = "ball=55.0041,4.0001&hole=1"
CASE = f"{BALL}&what=abnormal_course_condition"
AFTER, BEFORE = "on=2025-06-21", "on=2025-06-20"


@pytest.fixture
def maps(tmp_path: Path) -> MapVersions:
    return MapVersions(COURSE, tmp_path / "maps")


@pytest.fixture
def desk(maps: MapVersions) -> TestClient:
    """A desk on whose map ground was marked on 21 June 2025."""
    marked = Edit("add", "new/1", square("new/1", size=0.0002))
    maps.save([marked], base=1, who="A referee", in_force_from=date(2025, 6, 21))
    app = create_app(maps=maps.place)
    return TestClient(app, follow_redirects=False, raise_server_exceptions=False)


def test_ground_marked_on_the_day_is_there_from_that_day(desk: TestClient) -> None:
    """The same ball touches the ground under repair on the day, and not the day before."""
    assert (
        said("ground.ground_under_repair")
        in str(desk.get(f"/api/area?{BALL}&{AFTER}").json()["things"]).lower()
    )
    assert (
        said("ground.ground_under_repair")
        not in str(desk.get(f"/api/area?{BALL}&{BEFORE}").json()["things"]).lower()
    )


@pytest.mark.parametrize("path", ["/api/area", "/api/rule", "/api/relief", "/api/situation"])
def test_every_answer_names_its_map_version(desk: TestClient, path: str) -> None:
    """Number and first day; the map as its file holds it has no first day."""
    case = CASE if path != "/api/situation" else f"{BALL}&1.what=abnormal_course_condition"
    after, before = (desk.get(f"{path}?{case}&{day}").json() for day in (AFTER, BEFORE))
    assert (after["map_version"], after["map_in_force_from"]) == (2, "2025-06-21")
    assert (before["map_version"], before["map_in_force_from"]) == (1, None)


def test_a_damaged_version_has_a_page_that_names_it(desk: TestClient, maps: MapVersions) -> None:
    """No ruling is given on a guess: page and JSON say which file, and what to do."""
    (maps.place / "000002.json").write_text("{}", encoding="utf-8")
    for path in ("/", f"/case?{CASE}", "/api/course"):
        answer = desk.get(path)
        assert answer.status_code == 400
        assert "000002.json is not a version" in answer.text
        assert "put back a copy" in answer.text
