"""Reading a map: GeoJSON and OpenStreetMap XML mean the same, and tags mean what docs/course-map.md says."""

import json
import re
from pathlib import Path

import pytest
from shapely.geometry import LineString, Point, box

from marram.course import check, load
from marram.course.lies.areas import Area, area_at
from marram.course.model import Kind
from marram.course.scheme import GOLF, OWN, Role, meaning
from marram.errors import BadCourse, BadPlace
from tests.course.drawing import PLANE, drawn, nine_holes, one_hole, square, write

DOCUMENT = Path(__file__).parents[2] / "docs" / "course-map.md"


def test_a_faultless_map_has_no_faults(tmp_path) -> None:
    """Nine whole holes inside their boundary give nothing to mend."""
    assert check(write(tmp_path / "nine.geojson", nine_holes())) == []


def test_what_a_map_holds(tmp_path) -> None:
    """Holes by number with par, stroke index, green, tees and pin, in metres; the boundary first."""
    course = load(write(tmp_path / "nine.geojson", nine_holes(), copyright="invented"))
    assert list(course.holes) == list(range(1, 10))
    seventh = course.hole(7)
    assert (seventh.par, seventh.stroke_index) == (3, 7)
    assert (seventh.green.ident, [tee.ident for tee in seventh.tees]) == ("green 7", ["tee 7"])
    assert seventh.line.length == pytest.approx(150, abs=0.001)
    end = Point(seventh.line.coords[-1])
    assert (seventh.location.x - end.x, seventh.location.y - end.y) == pytest.approx((2, 1), abs=0.001)
    assert course.features[0].kind is Kind.BOUNDARY
    assert course.credit == "invented"
    with pytest.raises(BadPlace, match="no hole 10"):
        course.hole(10)


def test_the_plane_touches_the_middle_of_the_map(tmp_path) -> None:
    """The plane's centre is the middle of what is drawn, to a ten-thousandth of a degree."""
    course = load(write(tmp_path / "nine.geojson", nine_holes()))
    middle = PLANE.to_degrees(100, 300)
    assert (course.plane.longitude, course.plane.latitude) == pytest.approx(middle, abs=1e-4)


def test_errors_come_first(tmp_path) -> None:
    """Faults are listed errors first, then warnings, then notes."""
    broken = [
        drawn(square(150, 40, 8), "practice", golf="green"),
        drawn(square(60, 20, 5), "sand", golf="sandpit"),
        drawn(Point(60, 20), "bunker", golf="bunker"),
    ]
    severities = [
        fault.severity.value for fault in check(write(tmp_path / "map.geojson", [*one_hole(), *broken]))
    ]
    assert severities == sorted(severities, key=["error", "warning", "note"].index)
    assert set(severities) == {"error", "warning", "note"}


def test_geometry_is_in_metres_of_the_plane(tmp_path) -> None:
    """Areas keep their size: a square of 20 m has 400 m²."""
    course = load(write(tmp_path / "nine.geojson", nine_holes()))
    assert course.hole(1).green.geometry.area == pytest.approx(400, rel=1e-6)


@pytest.mark.parametrize(
    ("tags", "kind"),
    [
        ({"golf": "lateral_water_hazard"}, Kind.RED_PENALTY_AREA),
        ({"golf": "water_hazard", "natural": "water"}, Kind.YELLOW_PENALTY_AREA),
        ({"golf": "bunker", "natural": "sand"}, Kind.BUNKER),
        ({"natural": "water"}, Kind.WATER),
        ({"waterway": "ditch"}, Kind.WATER),
        ({"waterway": "ditch", "tunnel": "culvert"}, None),
        ({"golf": "cartpath"}, Kind.PATH),
        ({"golf": "path", "surface": "grass"}, None),
        ({"highway": "service", "surface": "asphalt"}, Kind.PATH),
        ({"highway": "footway", "surface": "ground"}, None),
        ({"building": "yes"}, Kind.OBSTRUCTION),
        ({"natural": "wood"}, Kind.TREES),
        ({"golf": "driving_range"}, None),
        ({"leisure": "golf_course"}, Role.COURSE),
        ({"marram": "ground_under_repair", "golf": "fairway"}, Kind.GROUND_UNDER_REPAIR),
        ({"power": "tower"}, None),
    ],
)
def test_tags_mean_what_the_scheme_says(tags, kind) -> None:
    """Tags of the OpenStreetMap wiki, pages Key:golf and Tag:golf=water_hazard (red lateral, yellow not), and own."""
    assert meaning(tags) is kind


def test_the_document_names_every_tag() -> None:
    """docs/course-map.md lists every value of golf and of marram that is read."""
    text = DOCUMENT.read_text(encoding="utf-8")
    assert {f"golf={value}" for value in GOLF} <= set(re.findall(r"golf=\w+", text))
    assert {f"marram={value}" for value in OWN} <= set(re.findall(r"marram=\w+", text))


def test_a_line_with_a_width_is_a_strip(tmp_path) -> None:
    """A path 3 m wide along 100 m is an area of 300 m² whose edges are 1.5 m from the middle."""
    path = drawn(LineString([(10, 30), (110, 30)]), "path", golf="cartpath", width="3 m")
    course = load(write(tmp_path / "map.geojson", [*one_hole(), path]))
    (strip,) = course.of(Kind.PATH)
    assert strip.geometry.area == pytest.approx(300, rel=1e-6)


def test_a_wall_drawn_as_a_line_is_as_wide_as_it_says(tmp_path) -> None:
    """A wall 0.4 m wide along 50 m covers 20 m²."""
    wall = drawn(LineString([(10, 30), (60, 30)]), "wall", marram="obstruction", barrier="wall", width="0.4")
    (strip,) = load(write(tmp_path / "map.geojson", [*one_hole(), wall])).of(Kind.OBSTRUCTION)
    assert strip.geometry.area == pytest.approx(20, rel=1e-6)


def test_par_and_stroke_index_for_men_and_women(tmp_path) -> None:
    """Where par and stroke index are given for men and women they are read if they agree."""
    tags = {"par:men": "3", "par:women": "3", "handicap:women": "5"}
    line = drawn(LineString([(0, 0), (150, 0)]), "line 1", golf="hole", ref="1", **tags)
    first = load(write(tmp_path / "map.geojson", [line, *one_hole()[1:]])).hole(1)
    assert (first.par, first.stroke_index) == (3, 5)


def test_a_tee_beside_the_green_end_of_a_hole_is_not_its_tee(tmp_path) -> None:
    """Tees stand beside the first two fifths of a line of play: one by the green may be the next hole's."""
    tees = [drawn(square(x, 20, 3), f"tee at {x}", golf="tee") for x in (50, 70)]
    course = load(write(tmp_path / "map.geojson", [*one_hole(), *tees]))
    assert [tee.ident for tee in course.hole(1).tees] == ["tee 1", "tee at 50"]


def test_a_stream_tagged_as_a_penalty_area_has_one_fault(tmp_path) -> None:
    """Its missing width is a fault; its status is mapped."""
    stream = drawn(LineString([(80, -50), (80, 50)]), "stream", golf="water_hazard", waterway="stream")
    found = [fault.check for fault in check(write(tmp_path / "map.geojson", [*nine_holes(), stream]))]
    assert found == ["penalty_area_line"]


def test_boundary_lines_that_meet_make_an_area(tmp_path) -> None:
    """Two lines that meet end to end are one boundary."""
    lines = [
        drawn(LineString([(-60, -60), (260, -60), (260, 160)]), "fence", marram="boundary"),
        drawn(LineString([(-60, -60), (-60, 160), (260, 160)]), "wall", marram="boundary"),
    ]
    course = load(write(tmp_path / "map.geojson", [*lines, *one_hole()]))
    (boundary,) = course.of(Kind.BOUNDARY)
    assert boundary.geometry.area == pytest.approx(320 * 220, rel=1e-5)


@pytest.mark.parametrize("which", ["Lower Links", "lower links", "way/2", "2"])
def test_one_of_two_courses_by_name_or_identifier(tmp_path, which) -> None:
    """With a name or an identifier only that course's holes are read; the other's equal numbers do no harm."""
    upper = drawn(box(-60, -60, 260, 55), "way/1", leisure="golf_course", name="Upper Links")
    lower = drawn(box(-60, 60, 260, 160), "way/2", leisure="golf_course", name="Lower Links")
    file = write(tmp_path / "two.geojson", [upper, *one_hole(), lower, *one_hole(1, y=100, par="4")])
    course = load(file, which)
    assert (course.name, course.hole(1).par) == ("Lower Links", 4)


def test_a_course_without_golf_features_is_refused(tmp_path) -> None:
    """Of two outlines the one asked for holds nothing of a course."""
    upper = drawn(box(-60, -60, 260, 55), "way/1", leisure="golf_course", name="Upper Links")
    empty = drawn(box(-60, 60, 260, 160), "way/2", leisure="golf_course", name="Empty Links")
    with pytest.raises(BadCourse, match="nothing in the file is tagged as part of the golf course"):
        load(write(tmp_path / "two.geojson", [upper, *one_hole(), empty]), "Empty Links")


def test_a_wrong_name_names_the_courses_there_are(tmp_path) -> None:
    """A course that is not in the file is refused with those that are."""
    outline = drawn(box(-60, -60, 260, 160), "way/1", leisure="golf_course", name="Upper Links")
    file = write(tmp_path / "one.geojson", [outline, *one_hole()])
    with pytest.raises(
        BadCourse, match=r"no golf course in the file is called 'Uper Links'.*Name one of: Upper Links"
    ):
        load(file, "Uper Links")
    with pytest.raises(BadCourse, match=r"the file has no outline"):
        load(write(tmp_path / "none.geojson", one_hole()), "Upper Links")


def test_all_errors_come_at_once(tmp_path) -> None:
    """Three broken features give three errors in one refusal."""
    bow_tie = {
        "type": "Polygon",
        "coordinates": [[[3.0, 51.0], [3.001, 51.001], [3.001, 51.0], [3.0, 51.001], [3.0, 51.0]]],
    }
    broken = [
        drawn(square(60, 20, 5), "a", marram="sand"),
        drawn(Point(60, 20), "b", golf="bunker"),
        {"type": "Feature", "id": "c", "properties": {"golf": "green"}, "geometry": bow_tie},
    ]
    with pytest.raises(BadCourse) as refused:
        load(write(tmp_path / "map.geojson", [*one_hole(), *broken]))
    assert [fault.partition(":")[0].partition(",")[0] for fault in refused.value.faults] == ["a", "b", "c"]


def test_scenery_away_from_the_course_is_ignored(tmp_path) -> None:
    """A lake and a house that do not touch the course are not part of the map, however broken."""
    lake = drawn(square(2000, 0, 50), "lake", natural="water")
    house = drawn(square(150, 40, 3), "house", building="yes")
    course = load(write(tmp_path / "map.geojson", [*nine_holes(), lake, house]))
    assert [feature.ident for feature in course.of(Kind.WATER, Kind.OBSTRUCTION)] == ["house"]


def test_a_double_green_with_pins_that_say_whose(tmp_path) -> None:
    """Two holes share a green named by holes=1;2; each pin belongs to the hole in its ref."""
    parts = [
        drawn(LineString([(0, 0), (145, 5)]), "line 1", golf="hole", ref="1", par="3", handicap="1"),
        drawn(LineString([(0, 40), (145, 30)]), "line 2", golf="hole", ref="2", par="3", handicap="2"),
        drawn(box(140, -5, 160, 35), "double", golf="green", holes="1;2"),
        drawn(Point(150, 2), "pin 1", golf="pin", ref="1"),
        drawn(Point(150, 33), "pin 2", golf="pin", ref="2"),
    ]
    course = load(write(tmp_path / "map.geojson", parts))
    first, second = course.hole(1), course.hole(2)
    assert first.green is second.green
    assert second.location.y - first.location.y == pytest.approx(31, abs=0.001)


def test_a_green_drawn_twice_is_one_green(tmp_path):
    """Two greens over each other, the line of play ending on both: a ball on either is on the hole's green."""
    twice = drawn(square(152, 0, 10), "green again", golf="green")
    links = load(write(tmp_path / "map.geojson", [*one_hole(), twice]))
    assert links.holes[1].green is not None
    for x in (141.0, 150.0, 161.0):
        place = links.plane.to_metres(*PLANE.to_degrees(x, 0.0))
        assert area_at(links, *place, 1).area is Area.PUTTING_GREEN


def test_a_geometry_of_several_parts_with_one_part_is_that_part(tmp_path: Path) -> None:
    """Programs that write every line as a MultiLineString and every area as a MultiPolygon lose no hole, tee or pin by it."""
    plain, multi = [*nine_holes()], json.loads(json.dumps(nine_holes()))
    for one in multi:
        geometry = one["geometry"]
        one["geometry"] = {
            "type": f"Multi{geometry['type']}",
            "coordinates": [geometry["coordinates"]],
        }
    same, other = (
        load(write(tmp_path / "plain.geojson", plain)),
        load(write(tmp_path / "multi.geojson", multi)),
    )
    assert list(other.holes) == list(range(1, 10))
    assert [one.geometry for one in other.features] == [one.geometry for one in same.features]
    assert [one.location for one in other.holes.values()] == [one.location for one in same.holes.values()]
