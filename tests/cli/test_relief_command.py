"""``marram relief``: the options at a place on the demo course, drawn to scale; nothing is guessed."""

import json
from datetime import date
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from shapely import Point

from marram.course import load
from marram.course.model import Course, Kind
from marram.course.versions.hole_days import HoleDays
from marram.demo import COURSE
from marram.relief.place.place_words import PICKED
from marram.rules.engine.export import facts_of
from marram.rules.engine.request import fact_named
from marram.services.cases.rulings import PREMISES
from tests.cli.running import marram


@pytest.fixture(scope="module")
def course() -> Course:
    return load(COURSE)


@pytest.fixture(scope="module")
def in_water(course: Course) -> list[str]:
    """A ball where a line of play crosses a red penalty area, with crossing point and tee."""
    for hole in course.holes.values():
        for feature in course.of(Kind.RED_PENALTY_AREA):
            crossing = hole.line.intersection(feature.geometry.boundary)
            if not crossing.is_empty:
                edge = Point(crossing.geoms[0] if hasattr(crossing, "geoms") else crossing)
                inside = hole.line.intersection(feature.geometry).centroid
                return [
                    "--hole", str(hole.number),
                    "--ball", degrees(course, inside),
                    "--entry", degrees(course, edge),
                    "--previous", degrees(course, Point(hole.line.coords[0])),
                ]  # fmt: skip
    raise AssertionError("the demo course has no hole across a red penalty area")


def degrees(course: Course, point: Point) -> str:
    return ",".join(f"{value:.8f}" for value in course.plane.to_degrees(point.x, point.y))


@pytest.mark.parametrize("edition", ["2019", "2023"])
def test_three_options_of_a_red_penalty_area_are_drawn(
    in_water: list[str], edition: str, tmp_path: Path
) -> None:
    """Rule 17.1d: stroke and distance, back on the line and lateral; each is an area in a well-formed SVG."""
    target = tmp_path / "relief.svg"
    found = marram("relief", str(COURSE), *in_water, "--edition", edition, "--svg", str(target), "--json")
    document = json.loads(found.out)
    assert found.code == 0, found.err
    assert document["area"] == "penalty_area"
    assert [one["option"]["kind"] for one in document["options"]] == [
        "stroke_and_distance", "back_on_the_line", "lateral",
    ]  # fmt: skip
    assert all(one["state"] == "Drawn" for one in document["options"])
    root = ET.fromstring(target.read_text(encoding="utf-8"))
    assert len(root.findall("{http://www.w3.org/2000/svg}svg")) == 3


def test_a_dropping_zone_of_the_map_is_drawn_where_it_is_adopted(course: Course) -> None:
    """Model Local Rule E-1: the zone that the map says serves the penalty area is one more option, for one stroke."""
    (zone,) = (one for one in course.of(Kind.DROPPING_ZONE) if "cauldron" in one.serves)
    (served,) = (one for one in course.features if one.ref == "cauldron")
    ball = degrees(course, served.geometry.representative_point())
    arguments = (
        "relief",
        str(COURSE),
        "--hole",
        str(zone.holes[0]),
        "--ball",
        ball,
        "--edition",
        "2023",
        "--json",
    )

    plain = json.loads(marram(*arguments).out)
    adopted = json.loads(marram(*arguments, "--local-rule", "E-1").out)

    assert "dropping_zone" not in [one["option"]["kind"] for one in plain["options"]]
    (option,) = (one for one in adopted["options"] if one["option"]["kind"] == "dropping_zone")
    assert option["state"] == "Drawn"
    assert option["option"]["penalty"] == 1
    assert option["area_m2"] == [pytest.approx(zone.geometry.area, abs=0.01)]


def test_every_place_that_can_be_missing_has_an_option() -> None:
    """What an answer asks for can be given."""
    words = marram("relief", "--help").out
    assert all(f"--{name} " in words for name in PICKED.values())


def test_an_option_without_its_place_says_what_it_needs(in_water: list[str], tmp_path: Path) -> None:
    """Without the crossing point the lateral area is not drawn; the option to give is named."""
    target = tmp_path / "relief.svg"
    found = marram("relief", str(COURSE), *in_water[:4], "--edition", "2023", "--svg", str(target))
    assert found.code == 3
    assert "give --entry LON,LAT" in found.out
    assert not target.exists()


def test_premises_are_said(in_water: list[str]) -> None:
    """What is taken for granted from a place alone stands in the answer."""
    found = marram("relief", str(COURSE), *in_water, "--edition", "2023")
    assert "Taken for granted: found_in_penalty_area=yes" in found.out


@pytest.mark.parametrize(
    ("change", "message"),
    [
        (["--ball", "here"], "is not a place"),
        (["--ball", "55.0,300"], "longitude first"),
        (["--ball", "10,10"], "km from the middle of the course"),
        (["--hole", "40"], "40"),
        (["--club-length", "11"], "club-length"),
        (["--hand", "up"], "give right or left"),
    ],
)
def test_bad_places_are_named(in_water: list[str], change: list[str], message: str) -> None:
    """A slip is answered with what is wrong, exit code 2, and nothing else."""
    arguments = list(in_water)
    if change[0] in arguments:
        arguments[arguments.index(change[0]) + 1] = change[1]
    else:
        arguments += change
    found = marram("relief", str(COURSE), *arguments, "--edition", "2023")
    assert found.code == 2, found
    assert message in found.err
    assert "Traceback" not in found.err


def test_a_missing_file_is_named() -> None:
    """No traceback for a file that is not there."""
    found = marram("relief", "nowhere.geojson", "--hole", "1", "--ball", "0,0")
    assert found.code == 2
    assert "nowhere.geojson" in found.err


def test_course_check_tells_usable_from_not(tmp_path: Path) -> None:
    """Exit code 0 for a map that can be used, 2 for one that cannot; faults as text and as data."""
    good = marram("course", "check", str(COURSE), "--json")
    assert good.code == 0, good.out
    assert json.loads(good.out)["usable"] is True
    broken = tmp_path / "broken.geojson"
    broken.write_text('{"type": "FeatureCollection", "features": []}', encoding="utf-8")
    bad = marram("course", "check", str(broken), "--json")
    assert bad.code == 2
    assert json.loads(bad.out)["faults"]


def test_a_drop_is_checked_against_each_area(course: Course, in_water: list[str]) -> None:
    """Rule 14.3c: rests inside → play; the first drop rolls out → again; the second → place where it touched."""
    document = json.loads(marram("relief", str(COURSE), *in_water, "--edition", "2023", "--json").out)
    lines = {one["option"]["kind"]: one for one in document["options"]}
    assert lines["lateral"]["drop"] is None
    hole = course.holes[int(in_water[1])]
    entry = Point(course.plane.to_metres(*(float(part) for part in in_water[5].split(","))))
    back = Point(
        entry.x + (entry.x - hole.location.x) / entry.distance(hole.location) * 30,
        entry.y + (entry.y - hole.location.y) / entry.distance(hole.location) * 30,
    )
    rolled = Point(back.x + 3, back.y)
    for rest, drop, wanted in (
        (back, "1", "play_as_it_lies"),
        (rolled, "1", "drop_again"),
        (rolled, "2", "place"),
    ):
        found = marram(
            "relief", str(COURSE), *in_water, "--edition", "2023", "--json",
            "--dropped", degrees(course, back), "--at-rest", degrees(course, rest), "--drop", drop,
        )  # fmt: skip
        options = {one["option"]["kind"]: one for one in json.loads(found.out)["options"]}
        assert options["back_on_the_line"]["drop"]["next"] == wanted


def test_the_drawing_is_written_as_picture_and_areas(in_water: list[str], tmp_path: Path) -> None:
    """--png writes a picture of three pixels a unit, --geojson the areas in degrees."""
    png, areas = tmp_path / "relief.png", tmp_path / "relief.geojson"
    found = marram(
        "relief", str(COURSE), *in_water, "--edition", "2023", "--png", str(png), "--geojson", str(areas)
    )
    assert found.code == 0, found.err
    header = png.read_bytes()[:24]
    assert header.startswith(b"\x89PNG")
    assert int.from_bytes(header[16:20]) >= 1000
    kinds = [one["properties"].get("kind") for one in json.loads(areas.read_text())["features"]]
    assert {"stroke_and_distance", "back_on_the_line", "lateral"} <= set(kinds)


@pytest.mark.parametrize("incident", PREMISES)
def test_premises_are_answers_the_facts_allow(incident: str) -> None:
    """Each premise is a fact that can matter for its incident, answered as it allows."""
    matter = {fact.name for fact in facts_of(incident)}
    for name, answer in PREMISES[incident].items():
        assert name in matter
        fact_named(name).parse(answer)


def test_free_relief_from_a_path_is_drawn(course: Course) -> None:
    """Rule 16.1b: one club-length from the nearest point of complete relief; it depends on the player's hand."""
    ball = next(
        point
        for path in course.of(Kind.PATH)
        for point in [path.geometry.representative_point()]
        if all(not one.geometry.intersects(point) for one in course.of(Kind.RED_PENALTY_AREA, Kind.BUNKER))
    )
    arguments = ["relief", str(COURSE), "--hole", "1", "--ball", degrees(course, ball), "--edition", "2023"]
    asked = marram(*arguments)
    assert asked.code == 3
    assert "--hand right or --hand left" in asked.out
    drawn = json.loads(marram(*arguments, "--hand", "right", "--json").out)
    assert drawn["incident"] == "abnormal_course_condition"
    free = next(one for one in drawn["options"] if one["option"]["kind"] == "free")
    assert free["state"] == "Drawn"
    assert free["area_m2"][0] > 0


def test_the_hole_is_where_it_was_cut_that_day(course: Course, tmp_path: Path) -> None:
    """Hole locations kept beside the map's versions count for their day; the answer names their version."""
    hole = course.holes[7].location
    kept = HoleDays(tmp_path / "hole-locations")
    kept.save(date(2025, 6, 21), {7: course.plane.to_degrees(hole.x, hole.y + 6)}, base=0, who="Ada")
    ball = degrees(course, Point(hole.x, hole.y - 100))
    asked = ["relief", str(COURSE), "--maps", str(tmp_path), "--hole", "7", "--ball", ball, "--incident"]
    asked += ["unplayable_ball", "--json", "--played-on"]
    that_day, the_next = (json.loads(marram(*asked, day).out) for day in ("2025-06-21", "2025-06-22"))

    assert (that_day["holes_version"], the_next["holes_version"]) == (1, None)
    assert that_day["metres_to_hole"] == pytest.approx(106, abs=0.1)
    assert the_next["metres_to_hole"] == pytest.approx(100, abs=0.1)


def test_an_open_question_lists_its_answers_and_how_to_give_them() -> None:
    """Each answer stands with what it leads to; Local Rules can be given all at once."""
    where = (
        "relief",
        str(COURSE),
        "--hole",
        "1",
        "--ball",
        "3.99805,55.0035",
        "--incident",
        "unplayable_ball",
    )
    first = marram(*where)
    assert first.code == 3
    assert "- yes" in first.out
    assert "Answer with --fact last_stroke_from_penalty_area=yes" in first.out
    adopted = marram(*where, "--fact", "last_stroke_from_penalty_area=no")
    assert adopted.code == 3
    assert "--local-rule E-1.3, or --local-rule none" in adopted.out


def test_a_condition_that_is_not_on_the_map_is_named_before_anything_is_asked() -> None:
    """Also where the ruling never comes to it; a slip of the pen is told."""
    refused = marram(
        "relief", str(COURSE), "--hole", "1", "--ball", "3.99805,55.0035", "--condition", "quilsand/222"
    )
    assert refused.code == 2
    assert "'quilsand/222': nothing on the map has this identifier. Did you mean" in refused.err
