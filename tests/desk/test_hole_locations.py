"""Hole locations at the desk, without a browser: seen, moved, saved, in conflict, printed, refused.

Guidance: The R&A, Guidance on Running a Competition, hole positions (four paces from the edge, three from a recent hole).
"""

import json
import math
import re
from datetime import date
from pathlib import Path

import pytest

from marram.course import load
from marram.course.greens.green_frame import PACE, GreenFrame
from marram.course.versions.map_edits import Edit
from marram.demo import COURSE, EVENT
from marram.desk.app import create_app
from marram.words.texts import text as said
from tests.course.drawing import nine_holes, write
from tests.desk.asking import TestClient

DAY = "2025-06-21"
YARD = 0.9144


@pytest.fixture
def desk(tmp_path: Path) -> TestClient:
    return TestClient(create_app(maps=tmp_path / "maps"), follow_redirects=False)


@pytest.fixture
def flat_desk(tmp_path: Path) -> TestClient:
    """A desk whose course has no elevations."""
    return TestClient(create_app(COURSE, EVENT, tmp_path / "maps"), follow_redirects=False)


def look(desk: TestClient, hole: int = 4, day: str = DAY, **at: object) -> dict:
    answer = desk.get(f"/api/holes/{day}/look", params={"hole": hole, **at})
    assert answer.status_code == 200, answer.text
    return answer.json()


def saving(*looks: dict, base: int = 0, who: str = "Ada") -> dict:
    return {
        "base": base,
        "who": who,
        "moved": {one["hole"]: [one["longitude"], one["latitude"]] for one in looks},
    }


def test_a_new_day_shows_a_proposal_for_every_green(desk: TestClient) -> None:
    """18 greens, each with a place that nothing speaks against; another seed proposes others."""
    told = desk.get(f"/api/holes/{DAY}").json()
    assert (told["base"], told["saved"], len(told["proposed"]), len(told["greens"])) == (0, {}, 18, 18)
    assert all(one["on_green"] and one["warnings"] == [] for one in told["proposed"].values())
    other = desk.get(f"/api/holes/{DAY}?seed=3").json()
    assert other["proposed"] != told["proposed"]


def test_paces_typed_are_the_place_they_name(desk: TestClient) -> None:
    """Ten yards from the front and six from the left of the fourth: measured again on the map, to a centimetre."""
    found = look(desk, front=10, side=6, which="left")
    course = load(COURSE)
    frame = GreenFrame.of(course.hole(4))
    x, y = course.plane.to_metres(found["longitude"], found["latitude"])
    green = course.hole(4).green
    assert green is not None
    along = x * frame.along[0] + y * frame.along[1]
    front = min(px * frame.along[0] + py * frame.along[1] for px, py in green.geometry.exterior.coords)
    assert along - front == pytest.approx(10 * YARD, abs=0.01)
    assert (found["paces_from_front"], found["paces_from_side"], found["side"]) == (10, 6, "left")
    assert found["from_side"] == pytest.approx(6 * YARD, abs=0.01)


def test_the_picture_and_the_ground_agree(desk: TestClient) -> None:
    """A point of the picture and the degrees it is told for are the same place; a step of the picture is one of the ground."""
    here, there = look(desk, x=100, y=120), look(desk, x=110, y=120)
    again = look(desk, longitude=here["longitude"], latitude=here["latitude"])
    assert (again["x"], again["y"]) == pytest.approx((100, 120), abs=0.05)
    plane = load(COURSE).plane
    apart = math.dist(
        plane.to_metres(here["longitude"], here["latitude"]),
        plane.to_metres(there["longitude"], there["latitude"]),
    )
    (green,) = [one for one in desk.get(f"/api/holes/{DAY}").json()["greens"] if one["hole"] == 4]
    assert apart == pytest.approx(10 * PACE / green["pace"], abs=0.01)


def test_what_speaks_against_a_place_is_said_at_once(desk: TestClient) -> None:
    """Two paces from the left edge: near the edge; off the green: nothing else."""
    near = look(desk, front=12, side=2, which="left")
    assert "near_edge" in [one["kind"] for one in near["warnings"]]
    off = look(desk, x=2, y=2)
    assert (off["on_green"], [one["kind"] for one in off["warnings"]]) == (False, ["off_green"])


def test_slope_is_held_against_the_green_speed(desk: TestClient, flat_desk: TestClient) -> None:
    """On the face of the stepped fourth: too steep, whatever the speed; without elevations slope is not considered."""
    steep = look(desk, hole=4, x=120, y=85)
    assert "too_steep" in [one["kind"] for one in steep["warnings"]]
    assert steep["slope"].startswith("falls ")
    slow = look(desk, hole=4, x=120, y=85, speed=9)
    assert "5.95 % is too steep" in str(slow["warnings"])
    flat = look(flat_desk, hole=4, x=120, y=85)
    assert (flat["slope"], flat["warnings"]) == ("", [])
    assert said("holes.slope.not_considered") in flat_desk.get(f"/holes/{DAY}").text


def test_a_day_saved_is_there_again_and_keeps_its_versions(desk: TestClient) -> None:
    """201 tells the version; the page lists who saved it; the places come back to half a centimetre."""
    place = look(desk, front=10, side=6, which="left")
    answer = desk.post(f"/api/holes/{DAY}", json=saving(place))
    assert (answer.status_code, answer.json()["version"]["number"]) == (201, 1)
    told = desk.get(f"/api/holes/{DAY}").json()
    assert (told["base"], told["saved"]["4"]["longitude"]) == (1, place["longitude"])
    moved = look(desk, front=12, side=6, which="left")
    desk.post(f"/api/holes/{DAY}", json=saving(moved, base=1, who="Bo"))
    page = desk.get(f"/holes/{DAY}").text
    assert "Version 1</strong> · Ada" in page
    assert "Version 2</strong> · Bo" in page


def test_recent_days_are_shown_and_kept_away_from(desk: TestClient) -> None:
    """Where the fourth was cut the day before is on the picture, with its day; three paces are asked for."""
    place = look(desk, front=10, side=8, which="left")
    desk.post("/api/holes/2025-06-20", json=saving(place))
    told = desk.get(f"/api/holes/{DAY}").json()
    (green,) = [one for one in told["greens"] if one["hole"] == 4]
    assert [one["day"] for one in green["recent"]] == ["2025-06-20"]
    again = look(desk, front=11, side=8, which="left")
    assert "of 2025-06-20; at least three are recommended." in str(again["warnings"])
    proposed = told["proposed"]["4"]
    plane = load(COURSE).plane
    apart = math.dist(
        plane.to_metres(place["longitude"], place["latitude"]),
        plane.to_metres(proposed["longitude"], proposed["latitude"]),
    )
    assert apart >= 3 * YARD


def test_two_who_move_the_same_hole_see_both_sides(desk: TestClient) -> None:
    """409 tells theirs and yours in paces and who saved; put on the newest version it is saved."""
    desk.post(f"/api/holes/{DAY}", json=saving(look(desk, front=10, side=6, which="left")))
    desk.post(f"/api/holes/{DAY}", json=saving(look(desk, front=14, side=6, which="left"), base=1, who="Bo"))
    mine = look(desk, front=8, side=6, which="left")
    answer = desk.post(f"/api/holes/{DAY}", json=saving(mine, base=1))
    told = answer.json()
    assert answer.status_code == 409
    assert (told["theirs"]["4"]["paces_from_front"], told["yours"]["4"]["paces_from_front"]) == (14, 8)
    assert (told["latest"]["number"], told["latest"]["who"]) == (2, "Bo")
    assert desk.get(f"/api/holes/{DAY}").json()["base"] == 2
    assert desk.post(f"/api/holes/{DAY}", json=saving(mine, base=2)).status_code == 201


@pytest.mark.parametrize(
    ("moved", "words"),
    [
        ({"4": [4.0, 55.2]}, "Hole 4 is off its green"),
        ({"77": [4.0, 55.0]}, "has no hole 77"),
        ({}, "no hole was moved"),
    ],
)
def test_a_save_that_cannot_be_is_refused(desk: TestClient, moved: dict, words: str) -> None:
    """422 with the reason; nothing is kept."""
    answer = desk.post(f"/api/holes/{DAY}", json={"base": 0, "who": "Ada", "moved": moved})
    assert answer.status_code == 422
    assert words in answer.json()["error"]["message"]
    assert desk.get(f"/api/holes/{DAY}").json()["base"] == 0


def test_the_sheet_prints_what_is_saved(desk: TestClient) -> None:
    """PDF and SVG as files named after the day; before anything is saved it says so."""
    early = desk.get(f"/holes/{DAY}/sheet.pdf")
    assert early.status_code == 400
    assert "Save them, then print the sheet" in early.text
    desk.post(f"/api/holes/{DAY}", json=saving(look(desk, front=10, side=6, which="left")))
    pdf = desk.get(f"/holes/{DAY}/sheet.pdf")
    assert pdf.content.startswith(b"%PDF")
    assert f'filename="hole-locations-{DAY}.pdf"' in pdf.headers["content-disposition"]
    svg = desk.get(f"/holes/{DAY}/sheet.svg?speed=10").text
    assert ">10</text>" in svg
    assert "a green speed of 10 feet" in svg
    assert desk.get(f"/holes/{DAY}/sheet.doc").status_code == 404


def test_the_sheet_for_players_tells_nothing_of_slopes(desk: TestClient) -> None:
    """As a page, a document and a drawing; the Committee's holds the slopes, and both the figures."""
    desk.post(f"/api/holes/{DAY}", json=saving(look(desk, hole=4, x=120, y=85)))
    shown, steep = said("holes.against.too_steep"), said("holes.paper.players")
    players, committee = (
        desk.get(f"/holes/{DAY}/sheet?reader={one}").text for one in ("players", "committee")
    )
    assert (shown in players, 'class="slope"' in players, steep in players) == (False, False, True)
    assert (shown in committee, 'class="slope"' in committee, steep in committee) == (True, True, False)
    pdf = desk.get(f"/holes/{DAY}/sheet.pdf?reader=players&paper=letter")
    assert f'filename="hole-locations-{DAY}-players.pdf"' in pdf.headers["content-disposition"]
    assert 'class="slope"' not in desk.get(f"/holes/{DAY}/sheet.svg?reader=players").text


def test_the_sheet_names_the_round_of_its_day(desk: TestClient) -> None:
    """The first round on Saturday, the second on Sunday, none on a day that no round is played on."""
    named = {}
    for day in (DAY, "2025-06-22", "2025-06-24"):
        desk.post(f"/api/holes/{day}", json=saving(look(desk, day=day, front=10, side=6, which="left")))
        page = desk.get(f"/holes/{day}/sheet").text
        named[day] = [one for one in ("First round", "Second round") if one in page]
    assert list(named.values()) == [["First round"], ["Second round"], []]


def test_tomorrow_is_offered_first(desk: TestClient) -> None:
    """Before today and the day of play, which is another here; each leads to the greens of its day."""
    page = desk.get(f"/holes/{DAY}").text
    links = re.findall(r'data-near="(\w+)" href="/holes/([\d-]+)"', page)
    assert [name for name, _ in links] == ["tomorrow", "today", "play"]
    tomorrow, today, play = (date.fromisoformat(on) for _, on in links)
    assert (tomorrow - today).days == 1
    assert play.isoformat() == DAY


def typed(desk: TestClient, **other: str) -> dict[str, str]:
    """Return the form as the page fills it, changed by ``other``."""
    told = desk.get(f"/api/holes/{DAY}").json()
    form = {"base": str(told["base"]), "who": "Ada"}
    for one in (told["saved"] or told["proposed"]).values():
        numbers = {"front": one["paces_from_front"], "side": one["paces_from_side"], "which": one["side"]}
        for key, value in numbers.items():
            form[f"{key}-{one['hole']}"] = form[f"was-{key}-{one['hole']}"] = str(value)
    return {**form, **{key.replace("_", "-"): value for key, value in other.items()}}


def test_the_form_saves_without_javascript(desk: TestClient) -> None:
    """The first save keeps all that is proposed and what was typed; the second moves one hole and no other."""
    first = desk.get(f"/api/holes/{DAY}").json()["proposed"]
    answer = desk.post(f"/holes/{DAY}", data=typed(desk, front_4="9", side_4="7", which_4="right"))
    assert (answer.status_code, answer.headers["location"]) == (303, f"/holes/{DAY}?saved=1")
    saved = desk.get(f"/api/holes/{DAY}").json()["saved"]
    assert len(saved) == 18
    assert (saved["4"]["paces_from_front"], saved["4"]["paces_from_side"], saved["4"]["side"]) == (
        9,
        7,
        "right",
    )
    assert saved["5"]["longitude"] == pytest.approx(first["5"]["longitude"], abs=1e-8)
    desk.post(f"/holes/{DAY}", data=typed(desk, front_7="8"))
    again = desk.get(f"/api/holes/{DAY}").json()["saved"]
    assert again["7"]["paces_from_front"] == 8
    assert {hole: one for hole, one in again.items() if hole != "7"} == {
        hole: one for hole, one in saved.items() if hole != "7"
    }
    assert "Version 1 is saved" in desk.get(f"/holes/{DAY}?saved=1").text


def test_the_form_lists_every_fault_and_keeps_what_was_typed(desk: TestClient) -> None:
    """Numbers off the green and no numbers at all are named hole by hole; nothing is saved."""
    answer = desk.post(f"/holes/{DAY}", data=typed(desk, front_4="99", front_5="deep", front_6="11"))
    assert answer.status_code == 422
    assert "Hole 4: 99 paces from the front is off the green" in answer.text
    assert "Hole 5:" in answer.text
    assert (
        'name="front-6" aria-label="Hole 6, paces from the front" type="number" min="0" value="11"'
        in answer.text
    )
    assert desk.get(f"/api/holes/{DAY}").json()["base"] == 0


def test_the_day_of_play_is_where_the_page_starts(desk: TestClient) -> None:
    """The demonstration event is played on 21 June 2025; another day and a speed can be asked for."""
    assert desk.get("/holes").headers["location"] == f"/holes/{DAY}"
    assert desk.get("/holes?day=2025-06-22&speed=10").headers["location"] == "/holes/2025-06-22?speed=10"


@pytest.mark.parametrize(
    "path", ["/holes/tomorrow", f"/api/holes/{DAY}/look?hole=4", f"/holes/{DAY}?speed=40"]
)
def test_an_address_that_cannot_be_is_refused_in_words(desk: TestClient, path: str) -> None:
    """No traceback, a reason."""
    answer = desk.get(path)
    assert answer.status_code == 400
    assert "Traceback" not in answer.text


def test_holes_whose_green_is_not_mapped_are_named(tmp_path: Path) -> None:
    """A hole that cannot be set is said, not left out in silence; the others can be set."""
    features = [one for one in nine_holes() if one.get("id") not in {"green 4", "green 7"}]
    desk = TestClient(create_app(write(tmp_path / "links.geojson", features), maps=tmp_path / "maps"))
    assert "holes 4, 7 are not mapped" in desk.get(f"/holes/{DAY}").text
    told = desk.get(f"/api/holes/{DAY}").json()
    assert (len(told["greens"]), told["without"]["4"]) == (7, "its green is not mapped")


def test_a_desk_that_keeps_nothing_says_so(client: TestClient) -> None:
    """The greens can be looked at; saving is refused with the reason."""
    assert "keeps no hole locations" in client.get(f"/holes/{DAY}").text
    answer = client.post(f"/api/holes/{DAY}", json={"moved": {"4": [4.0, 55.0]}, "who": "Ada"})
    assert answer.status_code == 404


def test_a_saved_place_that_a_new_map_leaves_off_the_green_is_told(desk: TestClient) -> None:
    """The green of the fourth is redrawn elsewhere: its hole is not printed in silence, nor left out in silence."""
    desk.post(f"/api/holes/{DAY}", json=saving(look(desk, front=10, side=6, which="left")))
    maps = desk.app.state.maps
    course = load(COURSE)
    green = course.hole(4).green
    assert green is not None
    features = {str(one.get("id")): one for one in maps.document(1)["features"]}
    moved = json.loads(json.dumps(features[green.ident]))
    for ring in moved["geometry"]["coordinates"]:
        for place in ring:
            place[1] -= 0.0003  # 33 m south, more than the green is deep
    maps.save([Edit("change", green.ident, moved)], base=1, who="Bo", in_force_from=date.fromisoformat(DAY))
    told = desk.get(f"/api/holes/{DAY}").json()
    assert told["without"]["4"] == said("holes.without.lost")
    sheet = desk.get(f"/holes/{DAY}/sheet.pdf")
    assert sheet.status_code == 400
    assert "hole 4 lies off its green" in sheet.text
