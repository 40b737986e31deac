"""``marram relief`` where the map lacks something, or the place is beyond it: it goes on and says what it rests on."""

import json
from pathlib import Path

import pytest
from shapely import Point, box

from marram.course import load
from marram.course.model import Course, Kind
from marram.demo import COURSE
from tests.cli.running import Finished, marram
from tests.course.drawing import PLANE, drawn, nine_holes, write


@pytest.fixture(scope="module")
def course() -> Course:
    return load(COURSE)


@pytest.fixture(scope="module")
def without_boundary(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demonstration course without its boundary and without ground out of bounds."""
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    document["features"] = [
        one
        for one in document["features"]
        if one["properties"].get("leisure") != "golf_course"
        and one["properties"].get("marram") not in {"boundary", "out_of_bounds"}
    ]
    path = tmp_path_factory.mktemp("map") / "open.geojson"
    path.write_text(json.dumps(document), encoding="utf-8")
    return path


def degrees(course: Course, point: Point) -> str:
    return ",".join(f"{value:.8f}" for value in course.plane.to_degrees(point.x, point.y))


def draw(path: Path, *arguments: str) -> tuple[Finished, dict]:
    found = marram("relief", str(path), *arguments, "--edition", "2023", "--json")
    return found, json.loads(found.out) if found.out else {}


def test_a_map_without_boundary_serves(course: Course, without_boundary: Path) -> None:
    """Each option that needs no further place is drawn; that nothing is known to be out of bounds is said."""
    assert not load(without_boundary).of(Kind.BOUNDARY, Kind.OUT_OF_BOUNDS)
    hole = course.hole(7)
    ball = degrees(course, Point(hole.line.interpolate(0.45, normalized=True)))

    _, document = draw(without_boundary, "--hole", "7", "--ball", ball)
    text = marram("relief", str(without_boundary), "--hole", "7", "--ball", ball, "--edition", "2023").out

    assert document["assumed"]["all_of_ball_out_of_bounds"] == "no"
    assert [one["state"] for one in document["options"]] == ["NeedsPlace", "Drawn", "Drawn"]
    assert "all_of_ball_out_of_bounds=no (change it with --fact)" in text


def test_what_the_map_lacks_can_be_said_otherwise(course: Course, without_boundary: Path) -> None:
    """An official who sees the ball out of bounds is not overruled by the premise."""
    ball = degrees(course, Point(course.hole(7).line.interpolate(0.45, normalized=True)))

    _, document = draw(
        without_boundary, "--hole", "7", "--ball", ball, "--incident", "ball_near_boundary",
        "--fact", "all_of_ball_out_of_bounds=yes", "--fact", "provisional_state=not_played",
        "--fact", "last_stroke_from_penalty_area=no", "--local-rule", "none",
    )  # fmt: skip

    assert document["assumed"] == {}
    assert [one["option"]["kind"] for one in document["options"]] == ["stroke_and_distance"]


def test_a_ball_out_of_bounds_is_ruled_on(course: Course) -> None:
    """Out of bounds the incident follows from the place too: stroke and distance, drawn where it was played from."""
    practice = next(one for one in course.features if one.name == "Practice ground").geometry
    tee = Point(course.hole(1).line.coords[0])
    place = ["--hole", "1", "--ball", degrees(course, practice.representative_point())]

    asked, open_document = draw(COURSE, *place)
    found, document = draw(COURSE, *place, "--previous", degrees(course, tee))

    assert (asked.code, found.code) == (3, 0), found.err
    assert document["area"] == "out_of_bounds"
    assert document["incident"] == "ball_near_boundary"
    assert open_document["options"][0]["state"] == "NeedsPlace"
    assert [(one["option"]["kind"], one["state"]) for one in document["options"]] == [
        ("stroke_and_distance", "Drawn")
    ]


@pytest.fixture(scope="module")
def crossing(course: Course) -> tuple[list[str], Point]:
    """A ball in a red penalty area that a line of play crosses, and a point of the edge on that line."""
    for hole in course.holes.values():
        for feature in course.of(Kind.RED_PENALTY_AREA):
            met = hole.line.intersection(feature.geometry.boundary)
            if not met.is_empty:
                edge = Point(met.geoms[0] if hasattr(met, "geoms") else met)
                inside = hole.line.intersection(feature.geometry).centroid
                return ["--hole", str(hole.number), "--ball", degrees(course, inside)], edge
    raise AssertionError("the demo course has no hole across a red penalty area")


def test_a_crossing_point_off_the_edge_is_moved_and_said(
    course: Course, crossing: tuple[list[str], Point]
) -> None:
    """A tap some metres off stands for the edge: the options are drawn from there, and the move is told."""
    place, edge = crossing
    beside = Point(edge.x + 3, edge.y + 3)

    _, document = draw(COURSE, *place, "--entry", degrees(course, beside))
    lateral = next(one for one in document["options"] if one["option"]["kind"] == "lateral")

    assert lateral["state"] == "Drawn"
    assert any("onto the nearest edge" in line for line in lateral["lines"])


def test_a_crossing_point_far_from_any_edge_is_named_as_it_was_given(
    course: Course, crossing: tuple[list[str], Point]
) -> None:
    """No local metres in messages: the official reads the degrees that were typed, and how far off they are."""
    place, edge = crossing
    typed = degrees(course, Point(edge.x + 4000, edge.y))

    found, document = draw(COURSE, *place, "--entry", typed)
    lateral = next(one for one in document["options"] if one["option"]["kind"] == "lateral")

    assert found.code == 3
    assert lateral["state"] == "NotDrawn"
    assert f"--entry {typed}" in lateral["lines"][0]
    assert " m from the nearest edge" in lateral["lines"][0]


def test_every_place_that_cannot_be_read_is_told() -> None:
    """Two slips, two sentences."""
    found = marram("relief", str(COURSE), "--hole", "1", "--ball", "here", "--entry", "there")

    assert found.code == 2
    assert "--ball 'here'" in found.err
    assert "--entry 'there'" in found.err


def test_a_third_drop_is_refused(crossing: tuple[list[str], Point]) -> None:
    """Only two drops count (Rule 14.3c): another number is never passed over in silence."""
    found, _ = draw(COURSE, *crossing[0], "--drop", "7")

    assert found.code == 2
    assert "Drop number 7" in found.err


def test_where_a_wetland_decides_the_area_does_not_stand_firm(tmp_path: Path) -> None:
    """A ball in a wetland lies perhaps in the general area; beside it, in the general area."""
    here = load(COURSE)
    middle = here.hole(7).line.interpolate(0.45, normalized=True)
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    ring = [
        [float(value) for value in degrees(here, Point(middle.x + x, middle.y + y)).split(",")]
        for x, y in ((-5, -5), (5, -5), (5, 5), (-5, 5), (-5, -5))
    ]
    wet = {"natural": "wetland"}
    shape = {"type": "Polygon", "coordinates": [ring]}
    document["features"].append({"type": "Feature", "id": "wet", "properties": wet, "geometry": shape})
    path = tmp_path / "wet.geojson"
    path.write_text(json.dumps(document), encoding="utf-8")

    def told(place: Point) -> str:
        return marram("relief", str(path), "--hole", "7", "--ball", degrees(here, place)).out

    assert told(middle).startswith("The ball lies perhaps in the general area, ")
    assert told(Point(middle.x + 20, middle.y)).startswith("The ball lies in the general area, ")
    _, document = draw(path, "--hole", "7", "--ball", degrees(here, middle))
    assert document["area_open"] is True


def test_a_spot_is_no_area_of_nothing(course: Course) -> None:
    """A previous stroke from the green is made again from its spot, not from a relief area of 0.0 m²."""
    hole = course.hole(7)
    assert hole.green is not None
    on_green = degrees(course, hole.green.geometry.representative_point())
    ball = degrees(course, Point(hole.line.interpolate(0.45, normalized=True)))
    places = ("--hole", "7", "--ball", ball, "--previous", on_green)
    out = marram("relief", str(COURSE), *places).out
    assert "One spot, no area around it." in out
    assert "0.0 m²" not in out


def test_a_sliver_is_no_area_of_nothing(tmp_path: Path) -> None:
    """Red water 110 m before the hole, its edge across the line: only the curve of "not nearer" leaves room, some 0.04 m²."""
    red = drawn(box(20, 40, 40, 80), "red", golf="lateral_water_hazard")
    path = write(tmp_path / "map.geojson", [*nine_holes(), red])
    ball, crossed = (",".join(map(str, PLANE.to_degrees(x, 60.0))) for x in (35.0, 40.0))
    facts = ("--fact", "last_stroke_from_penalty_area=no", "--local-rule", "none")
    out = marram("relief", str(path), "--hole", "1", "--ball", ball, "--entry", crossed, *facts).out
    assert "less than 0.05 m²" in out
    assert "There is hardly any room" in out
    assert "of 0.0 m²" not in out


def without_lines(folder: Path, *, numbers_only: bool) -> Path:
    """The demonstration course without its lines of play, or with lines of play that have no number."""
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    lines = [one for one in document["features"] if one["properties"].get("golf") == "hole"]
    for one in lines:
        del one["properties"]["ref"]
    if not numbers_only:
        document["features"] = [one for one in document["features"] if one not in lines]
    path = folder / "no_lines.geojson"
    path.write_text(json.dumps(document), encoding="utf-8")
    return path


@pytest.mark.parametrize("numbers_only", [False, True], ids=["no lines", "lines without numbers"])
@pytest.mark.parametrize("kind", [Kind.BUNKER, Kind.PATH, Kind.RED_PENALTY_AREA])
def test_relief_needs_no_line_of_play(course: Course, tmp_path: Path, kind: Kind, numbers_only: bool) -> None:
    """With the place of the hole every option is drawn as on the whole map; without it that is asked for."""
    path = without_lines(tmp_path, numbers_only=numbers_only)
    hole = course.hole(7)
    near = min(course.of(kind), key=lambda one: one.geometry.distance(hole.location)).geometry
    edge = Point(near.exterior.interpolate(0.1, normalized=True))
    asked = ("--hole", "7", "--ball", degrees(course, near.representative_point()), "--hand", "right")
    asked += ("--entry", degrees(course, edge), "--previous", degrees(course, hole.line.interpolate(60.0)))
    flag = degrees(course, hole.location)

    refused = marram("relief", str(path), *asked)
    _, whole = draw(COURSE, *asked)
    found, lacking = draw(path, *asked, "--flag", flag)

    assert "--flag" in refused.err
    assert found.code == 0
    assert [one["state"] for one in lacking["options"]] == [one["state"] for one in whole["options"]]
    assert "Drawn" in [one["state"] for one in lacking["options"]]
    for one, other in zip(lacking["options"], whole["options"], strict=True):
        assert one["area_m2"] == pytest.approx(other["area_m2"], abs=0.01)
    assert (whole["hole_at"], lacking["hole_at"]["on_map"]) == (None, False)
    assert "no line of play" in marram("relief", str(path), *asked, "--flag", flag).out


def test_no_fairway_is_guessed_where_no_line_of_play_tells_it(course: Course, tmp_path: Path) -> None:
    """The alternative to stroke and distance asks for the fairway point; the same option is drawn where a line of play is mapped."""
    document = json.loads(without_lines(tmp_path, numbers_only=False).read_text(encoding="utf-8"))
    for one in document["features"]:
        if one["properties"].get("golf") == "fairway":
            one["properties"].pop("holes", None)
            one["properties"].pop("ref", None)
    path = tmp_path / "no_fairways.geojson"
    path.write_text(json.dumps(document), encoding="utf-8")
    hole = course.hole(7)
    ball = degrees(course, Point(hole.line.interpolate(0.5, normalized=True)))
    asked = ("--hole", "7", "--ball", ball, "--incident", "ball_not_found", "--local-rule", "E-5")
    asked += ("--fact", "whereabouts=not_known", "--fact", "provisional_state=not_played")
    asked += ("--fact", "last_stroke_from_penalty_area=no")
    states = {
        source: [one["state"] for one in document["options"] if one["option"]["kind"] == "extended"]
        for source, document in (
            ("lines", draw(COURSE, *asked)[1]),
            ("flag", draw(path, *asked, "--flag", degrees(course, hole.location))[1]),
        )
    }
    assert states == {"lines": ["Drawn"], "flag": ["NeedsPlace"]}


def test_the_flag_says_where_a_mapped_hole_is_cut_today(course: Course) -> None:
    """Distances are from the flag, and a hole number below 1 is refused."""
    hole = course.hole(7)
    ball = Point(hole.line.interpolate(0.5, normalized=True))
    at = Point(hole.location.x + 6.0, hole.location.y)
    asked = ("--ball", degrees(course, ball), "--flag", degrees(course, at))
    _, document = draw(COURSE, "--hole", "7", *asked)
    assert document["metres_to_hole"] == pytest.approx(ball.distance(at), abs=0.01)
    assert document["hole_at"]["on_map"]
    assert "holes are numbered from 1" in marram("relief", str(COURSE), "--hole", "0", *asked).err


def test_a_map_that_cannot_be_used_yet_says_how_it_can() -> None:
    """Each fault, then the commands that mend it; a file that is no map is not sent there."""
    bad = Path(__file__).parents[1] / "bad" / "course"
    asked = ("--hole", "1", "--ball", "3,51")
    assert "marram course mend" in marram("relief", str(bad / "bow_tie.geojson"), *asked).err
    assert "marram course mend" in marram("course", "check", str(bad / "bow_tie.geojson")).out
    assert "marram course mend" not in marram("relief", str(bad / "not_json.geojson"), *asked).err
