"""One broken map for each fault: what is found, how much it matters, where, and the words."""

import re
from pathlib import Path

import pytest

from marram.course import check, load
from marram.course.checks.marking import marking_sheet
from marram.course.fault import Severity
from marram.errors import BadCourse

FOLDER = Path(__file__).parents[1] / "bad" / "course"
ERROR, WARNING, NOTE = Severity

FAULTS = {
    # The file as a whole.
    "not_json.geojson": (ERROR, "not_json", "is not JSON"),
    "empty.geojson": (ERROR, "not_json", "it is empty"),
    "key_twice.geojson": (
        ERROR,
        "not_json",
        "the key 'golf' stands twice in one object. Leave one of the two.",
    ),
    "thousands_of_digits.geojson": (ERROR, "not_json", "a number in it has thousands of digits"),
    "features_no_list.geojson": (ERROR, "not_a_collection", "not a GeoJSON FeatureCollection"),
    "hole_outside_shell.geojson": (ERROR, "invalid_geometry", "hole lies outside shell"),
    "huge_whole_number.geojson": (ERROR, "bad_position", "[…, 51.0003] is no position"),
    "path_too_wide.geojson": (WARNING, "not_a_number", "its width '999' cannot be read"),
    "not_a_collection.geojson": (ERROR, "not_a_collection", "not a GeoJSON FeatureCollection"),
    "not_a_feature.geojson": (ERROR, "not_a_feature", "entry 5 of 'features'"),
    "not_wgs84.geojson": (ERROR, "not_wgs84", "EPSG::27700"),
    "crs_as_text.geojson": (ERROR, "not_wgs84", "says EPSG:27700"),
    "crs_as_link.geojson": (ERROR, "not_wgs84", "is a link (https://example.org/crs), which is not followed"),
    "crs_as_number.geojson": (ERROR, "not_wgs84", "names no coordinate system"),
    "not_xml.osm": (ERROR, "not_xml", "line 2"),
    "not_osm.osm": (ERROR, "not_osm", "its root is <gpx>"),
    "no_coordinates.osm": (ERROR, "not_osm", "lon"),
    "document_type.osm": (ERROR, "document_type", "declares a document type"),
    "no_golf.geojson": (ERROR, "no_golf", "golf=* tags"),
    "two_courses.geojson": (ERROR, "which_course", "Name one of: Upper Links (way/1); Lower Links (way/2)."),
    "cut.osm": (WARNING, "cut", "ha of the course lie beyond it"),
    "zipped.geojson": (ERROR, "unreadable", "it is packed (zip). Unpack it first."),
    "gzipped.osm": (ERROR, "unreadable", "it is packed (gzip). Unpack it first."),
    "underscore_in_a_position.osm": (ERROR, "not_osm", "5_1.0000000 is no number"),
    # One feature's tags and geometry.
    "accuracy_without_sense.geojson": (WARNING, "not_a_number", "its accuracy 'inf' cannot be read"),
    "repeated_id.geojson": (WARNING, "repeated_id", "tee 1, at 51.000000, 3.000000: 2 features have this"),
    "true_as_coordinate.geojson": (ERROR, "bad_position", "[True, 51.0] is no position"),
    "false_in_a_ring.geojson": (ERROR, "bad_position", "[3.0022793, False] is no position"),
    "nan_in_a_ring.geojson": (ERROR, "not_json", "NaN is no number"),
    "orders_in_a_tag.geojson": (WARNING, "unknown_tag", "golf=<script>alert(1)</script>␛[31m is not known"),
    "half_a_character.geojson": (WARNING, "unknown_tag", "golf=path [U+D800] is not known"),
    "ways_without_nodes.osm": (ERROR, "incomplete", "export it again with the nodes of its ways"),
    "way_of_one_place.osm": (ERROR, "too_short", "fewer than two different positions"),
    "relation_of_itself.osm": (ERROR, "no_geometry", "its area has no ring"),
    "unknown_tag.geojson": (ERROR, "unknown_tag", "Did you mean 'ground_under_repair'? Use one of"),
    "unknown_golf_tag.geojson": (WARNING, "unknown_tag", "Did you mean 'bunker' or 'boundary'?"),
    "no_geometry.geojson": (ERROR, "no_geometry", "no usable geometry"),
    "empty_geometry.geojson": (ERROR, "no_geometry", "is empty"),
    "geometry_collection.geojson": (ERROR, "no_geometry", "'GeometryCollection' is not used here"),
    "bad_position.geojson": (ERROR, "bad_position", "['3.0'] is no position"),
    "metres.geojson": (ERROR, "out_of_range", "look like metres of some other projection"),
    "swapped_beyond_90.geojson": (ERROR, "out_of_range", "longitude and latitude look swapped"),
    "out_of_range.osm": (ERROR, "out_of_range", "longitude and latitude look swapped"),
    "swapped.geojson": (ERROR, "misplaced", "its longitude and latitude are swapped"),
    "far_away.geojson": (ERROR, "misplaced", "it is in another coordinate system"),
    "too_short_ring.geojson": (ERROR, "too_short", "fewer than two different positions"),
    "two_corners.geojson": (ERROR, "too_short", "fewer than three different positions"),
    "open_ring.geojson": (ERROR, "open_ring", "the last position differs from the first"),
    "green_as_line.geojson": (ERROR, "open_ring", "open line (20.0 m apart)"),
    "penalty_area_open.geojson": (ERROR, "open_ring", "this yellow penalty area is an open line"),
    "open_relation.osm": (ERROR, "open_ring", "a part ends where no other begins"),
    "inner_outside.osm": (WARNING, "inner_outside", "lies outside its edge: nothing was cut out"),
    "tags_at_edge.osm": (WARNING, "tags_at_edge", "relation/9 cuts a part out of it and has no tags itself"),
    "tags_at_edge_too.osm": (WARNING, "tags_at_edge", "relation/9 has the same tags and cuts a part out"),
    "incomplete_way.osm": (ERROR, "incomplete", "1 of its parts is not in the file"),
    "incomplete_relation.osm": (ERROR, "incomplete", "1 of its parts is not in the file"),
    "bow_tie.geojson": (ERROR, "invalid_geometry", "not valid (self-intersection)"),
    "bow_tie_rough.geojson": (WARNING, "invalid_geometry", "it was left out"),
    "bunker_as_point.geojson": (ERROR, "point_for_area", "this bunker is only a point"),
    "tee_as_point.geojson": (WARNING, "point_for_area", "this teeing area is only a point"),
    "width_in_words.geojson": (WARNING, "not_a_number", "its width 'wide' cannot be read"),
    "holes_with_comma.geojson": (
        WARNING,
        "not_a_number",
        "its holes '2,16' cannot be read: it was left out. Write holes=2;16.",
    ),
    # Holes.
    "no_holes.geojson": (ERROR, "no_holes", "golf=hole, ref=<number> and par=<par>"),
    "hole_as_area.geojson": (ERROR, "hole_not_a_line", "drawn as a Polygon"),
    "no_numbers.geojson": (ERROR, "hole_without_number", "no hole number (ref), it has no par"),
    "two_numbers.geojson": (WARNING, "hole_without_number", "'1 - #2' is no single hole number"),
    "repeated_hole.geojson": (ERROR, "repeated_hole", "both have ref=1"),
    "hole_backwards.geojson": (ERROR, "hole_backwards", "Reverse the line."),
    "hole_backwards_without_refs.geojson": (ERROR, "hole_backwards", "Reverse the line."),
    "holes_missing.geojson": (WARNING, "holes_missing", "1 of 9 holes are in the map; missing: 2, 3"),
    "hole_without_green.geojson": (WARNING, "hole_without_green", "its line of play ends on no green:"),
    "green_missed.geojson": (WARNING, "hole_without_green", "green 1, is 3.0 m away"),
    "hole_without_tee.geojson": (WARNING, "hole_without_tee", "it has no teeing area"),
    "pin_off_green.geojson": (WARNING, "hole_off_green", "10.0 m outside its green"),
    "no_par.geojson": (WARNING, "no_par", "Add par=<par>"),
    "par_in_words.geojson": (WARNING, "not_a_number", "its par is 'three'"),
    "par_by_sex.geojson": (
        WARNING,
        "two_values",
        "its par for men and for women differ (3 and 4): none was chosen",
    ),
    "unusual_par.geojson": (WARNING, "unusual_par", "par 6 is unusual for 150.0 m"),
    "no_stroke_index.geojson": (WARNING, "no_stroke_index", "Add handicap=<stroke index>"),
    "bad_stroke_index.geojson": (WARNING, "bad_stroke_index", "stroke index 19"),
    "repeated_stroke_index.geojson": (
        WARNING,
        "repeated_stroke_index",
        "stroke index 1 is also that of hole 1",
    ),
    "two_greens.geojson": (
        WARNING,
        "two_greens",
        "green 1, green b): the one its line of play ends on is used",
    ),
    "green_of_no_hole.geojson": (NOTE, "green_of_no_hole", "read as a wrong green"),
    "double_green.geojson": (NOTE, "double_green", "holes 1 and 2 share this green"),
    "double_green_pins.geojson": (WARNING, "pin_of_double_green", "do not say which is whose"),
    "two_pins.geojson": (WARNING, "two_pins", "2 pins are mapped on its green"),
    "tee_of_no_hole.geojson": (WARNING, "tee_of_no_hole", "belongs to no hole"),
    "tee_of_two_holes.geojson": (WARNING, "tee_of_two_holes", "beside holes 1 and 2"),
    # Marking.
    "no_boundary.geojson": (WARNING, "no_boundary", "out of bounds cannot be told"),
    "outline_as_boundary.geojson": (WARNING, "outline_as_boundary", "property is not always boundary"),
    "boundary_gap.geojson": (ERROR, "boundary_gap", "20.0 m from where the next begins"),
    "line_leaves_course.geojson": (WARNING, "line_leaves_course", "for 55 m"),
    "area_outside.geojson": (ERROR, "area_outside", "50 m² of this bunker"),
    "area_outside_outline.geojson": (WARNING, "area_outside", "50 m² of this bunker"),
    "stream_line.geojson": (WARNING, "penalty_area_line", "without a width"),
    "water_without_status.geojson": (WARNING, "water_without_status", "not marked as a penalty area"),
    "barrier_without_status.geojson": (WARNING, "barrier_without_status", "what this wall is for the Rules"),
    "wetland_without_status.geojson": (
        WARNING,
        "wetland_without_status",
        "what this wetland is for the Rules",
    ),
    "perhaps_swapped.geojson": (ERROR, "perhaps_swapped", "with longitude and latitude swapped they have"),
    "coast_backwards.geojson": (WARNING, "coast_backwards", "drawn the wrong way round"),
    "overlap.geojson": (WARNING, "overlap", "Rule 2.2c puts first"),
    "all_out_of_bounds.geojson": (ERROR, "all_out_of_bounds", "holds every hole"),
    "overlap_out_of_bounds.geojson": (WARNING, "overlap", "a ball there is out of bounds"),
    "two_colours.geojson": (
        WARNING,
        "two_colours",
        "red penalty area red and yellow penalty area yellow overlap",
    ),
    "dropping_zone_for_nothing.geojson": (
        WARNING,
        "dropping_zone_for_nothing",
        "serves R7, which is not in the map",
    ),
    "dropping_zone_of_no_hole.geojson": (WARNING, "dropping_zone_of_no_hole", "Add holes=<hole number>."),
    "dropping_zone_nearer.geojson": (
        WARNING,
        "dropping_zone_nearer",
        "begins 10.7 m nearer the hole than red",
    ),
    "dropping_zone_overlap.geojson": (
        WARNING,
        "dropping_zone_overlap",
        "16 m² of this dropping zone lie in red",
    ),
    "evacuation_point_unsaid.geojson": (
        WARNING,
        "evacuation_point_unsaid",
        "does not say what waits there",
    ),
    "evacuation_point_in_the_way.geojson": (
        WARNING,
        "evacuation_point_in_the_way",
        "lies in red penalty area red",
    ),
    "repair_without_relief.geojson": (WARNING, "repair_without_relief", "Rule 16.1a(2) gives no relief"),
    "penalty_area_colour.geojson": (WARNING, "penalty_area_colour", "is not mapped: it was read as red"),
    # Stakes.
    "stake_colour.geojson": (WARNING, "stake_colour", "its colour is 'blue'"),
    "stake_of_no_edge.geojson": (WARNING, "stake_of_no_edge", "stands by no edge that red stakes mark"),
    "stake_alone.geojson": (WARNING, "stake_alone", "one stake alone marks no line of this boundary"),
    "stake_gap.geojson": (WARNING, "stake_gap", "between stake 40 and stake 80"),
    "stake_off_edge.geojson": (WARNING, "stake_off_edge", "stands 1.50 m inside the mapped edge"),
    "corner_without_stake.geojson": (WARNING, "corner_without_stake", "runs 7.07 m inside the mapped edge"),
    "string_off_edge.geojson": (WARNING, "string_off_edge", "runs 0.08 m inside the mapped edge"),
    "string_blocked.geojson": (WARNING, "string_blocked", "an obstruction (Pump house)"),
    "two_next_stakes.geojson": (WARNING, "two_next_stakes", "6.0 m away"),
    "hole_unknown.geojson": (WARNING, "hole_unknown", "belongs to hole 7, which the map does not have"),
    "path_without_surface.geojson": (
        NOTE,
        "path_without_surface",
        "of 1 path (path) the surface is not mapped",
    ),
    "path_without_width.geojson": (NOTE, "path_without_width", "1 path is a line without a width (path)"),
}


ISSUES = {
    "a gap in the boundary": "boundary_gap.geojson",
    "stakes too far apart": "stake_gap.geojson",
    "a corner without a stake": "corner_without_stake.geojson",
    "a stake off the mapped line": "stake_off_edge.geojson",
    "a string that leaves the mapped edge": "string_off_edge.geojson",
    "a string that something stands in": "string_blocked.geojson",
    "two stakes that could be the next": "two_next_stakes.geojson",
    "a penalty area not closed": "penalty_area_open.geojson",
    "a penalty area of unknown colour": "penalty_area_colour.geojson",
    "water without status": "water_without_status.geojson",
    "a wall without status": "barrier_without_status.geojson",
    "a wetland without status": "wetland_without_status.geojson",
    "a hole without a green": "hole_without_green.geojson",
    "a hole without a tee": "hole_without_tee.geojson",
    "a hole without a par": "no_par.geojson",
    "a stroke index given twice": "repeated_stroke_index.geojson",
    "a hole without a stroke index": "no_stroke_index.geojson",
    "areas that overlap": "overlap.geojson",
    "a dropping zone nearer the hole than what it serves": "dropping_zone_nearer.geojson",
    "ground under repair without relief": "repair_without_relief.geojson",
}
"""What a Committee looks for before play (Committee Procedures, sections 2 and 5B), and a map made bad for it."""


@pytest.mark.parametrize("issue", ISSUES)
def test_what_a_committee_looks_for_has_its_place(issue) -> None:
    """On a map made bad for it each issue stands on the marking sheet, under its hole or the course, where it has one."""
    name = ISSUES[issue]
    kind = FAULTS[name][1]
    faults = [fault for fault in check(FOLDER / name) if fault.check == kind]
    assert faults, issue
    if FAULTS[name][0] is not ERROR:
        tasks = [task for sheet in marking_sheet(load(FOLDER / name), faults) for task in sheet.tasks]
        assert sorted(map(str, tasks)) == sorted(map(str, faults))
    assert all(fault.hole is not None or fault.latitude is not None for fault in faults), issue


@pytest.mark.parametrize("name", sorted(FAULTS))
def test_the_fault_is_found(name) -> None:
    """The fault has its severity and says what is wrong and what to do; it is not reported as anything worse."""
    severity, kind, words = FAULTS[name]
    found = [fault for fault in check(FOLDER / name) if fault.check == kind]
    assert found
    assert {fault.severity for fault in found} == {severity}
    assert words in str(found[0])
    assert found[0].remedy.endswith(".")


@pytest.mark.parametrize("name", sorted(FAULTS))
def test_errors_refuse_the_map_and_nothing_else_does(name) -> None:
    """A map with an error is refused with every error; one with warnings and notes only is opened."""
    errors = [str(fault) for fault in check(FOLDER / name) if fault.severity is ERROR]
    if FAULTS[name][0] is ERROR:
        with pytest.raises(BadCourse) as refused:
            load(FOLDER / name)
        assert list(refused.value.faults) == errors
    else:
        assert errors == []
        assert load(FOLDER / name).holes


def test_the_document_lists_every_check_with_its_severities() -> None:
    """docs/course-map.md has a row for each check, and names each severity it can have."""
    text = (Path(__file__).parents[2] / "docs" / "course-map.md").read_text(encoding="utf-8")
    rows = [row.split("|")[1:3] for row in text.splitlines() if row.startswith("| `")]
    for severity, kind, _ in FAULTS.values():
        (matters,) = [matters for names, matters in rows if f"`{kind}`" in names]
        assert severity.value in matters, kind
    listed = {name for names, _ in rows for name in re.findall(r"`(\w+)`", names) if "_" in name}
    assert listed <= {kind for _, kind, _ in FAULTS.values()}


def test_every_bad_file_is_used() -> None:
    """The folder holds one file for each row, and no other."""
    assert {path.name for path in FOLDER.iterdir()} == set(FAULTS)


def test_a_file_that_is_not_there_is_a_fault(tmp_path) -> None:
    """A missing file is refused with its path and what to do."""
    with pytest.raises(
        BadCourse, match=r"none\.geojson cannot be read: No such file or directory\. Check the path\."
    ):
        load(tmp_path / "none.geojson")


def test_every_place_is_on_the_ground_of_the_map() -> None:
    """Faults with coordinates give them where the maps are: near 51° N 3° E, save those misplaced on purpose."""
    for name, (_, kind, _) in FAULTS.items():
        for fault in check(FOLDER / name):
            if fault.latitude is not None and kind not in {"misplaced", "perhaps_swapped"}:
                assert (round(fault.latitude), round(fault.longitude)) == (51, 3), (name, fault)


@pytest.mark.parametrize(
    "name",
    [
        name
        for name, (_, kind, _) in FAULTS.items()
        if kind in {"invalid_geometry", "boundary_gap", "overlap"}
    ],
)
def test_a_fault_of_shape_says_where(name) -> None:
    """Where a shape is at fault, its place is given in degrees."""
    (fault,) = [fault for fault in check(FOLDER / name) if fault.check == FAULTS[name][1]]
    assert f"{fault.latitude:.6f}, {fault.longitude:.6f}" in str(fault)
