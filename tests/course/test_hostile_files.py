"""Odd and hostile files: each ends in the project's own words, naming what, where and what to do."""

import json
import os
from pathlib import Path

import pytest

from marram.course import check, load
from marram.course.lies.doubts import drawn_to
from marram.course.loading import examine
from marram.course.mending.draft import read_draft
from marram.course.reading.shapes import accuracy_of
from marram.course.reading.survey import read_points
from marram.errors import BadCourse, BadPlace, InputError
from marram.visible import escaped, visible
from tests.course.drawing import nine_holes, write

BAD = Path(__file__).parents[1] / "bad" / "course"


def test_a_quotation_mark_never_closed_is_named_with_its_line(tmp_path) -> None:
    """The rest of the file is not swallowed as one cell."""
    path = tmp_path / "points.csv"
    path.write_text('longitude,latitude,name\n3.0,51.0,a\n3.0,51.0,"b\n3.0,51.0,c\n')
    with pytest.raises(
        BadPlace, match=r"points\.csv, line 3: a quotation mark is opened here and never closed"
    ):
        read_points(path)


def test_a_column_named_twice_is_refused(tmp_path) -> None:
    """Which of two longitudes is meant is not guessed."""
    path = tmp_path / "points.csv"
    path.write_text("longitude,latitude,longitude\n3.0,51.0,4.0\n")
    with pytest.raises(BadPlace, match=r"names longitude twice\. Leave one column"):
        read_points(path)


def test_a_cell_beyond_all_measure_is_named_with_its_line(tmp_path) -> None:
    """The remedy is not that of an open quotation mark."""
    path = tmp_path / "points.csv"
    path.write_text("longitude,latitude,name\n3.0,51.0," + "x" * 200_000 + "\n")
    with pytest.raises(InputError, match=r"points\.csv, line 2: this is no CSV .* Export it again\."):
        read_points(path)


def test_a_map_that_opens_is_read_alike_when_it_is_mended(tmp_path) -> None:
    """Opening a map and opening it to mend it name the same fault of a file that is none."""
    for name, contents in {
        "empty": b" \n",
        "digits": b'{"a": ' + b"9" * 5000 + b"}",
        "text": b"\xff\x00\x01",
    }.items():
        path = tmp_path / f"{name}.geojson"
        path.write_bytes(contents)
        (fault,) = check(path)
        assert read_draft(path).faults == (fault,)
        assert "set_int_max_str_digits" not in str(fault)


def test_a_survey_with_a_header_alone_is_said_to_hold_no_point(tmp_path) -> None:
    """Nothing is not printed in silence."""
    path = tmp_path / "points.csv"
    path.write_text("longitude,latitude,name\n")
    with pytest.raises(BadPlace, match="holds no point"):
        read_points(path)


def test_what_is_no_plain_file_is_refused_at_once(tmp_path) -> None:
    """A folder and a pipe are named as what they are; the pipe is never waited for."""
    os.mkfifo(tmp_path / "pipe")
    with pytest.raises(BadCourse, match="it is a folder"):
        load(tmp_path)
    with pytest.raises(BadCourse, match="a pipe or a device"):
        load(tmp_path / "pipe")


def test_a_file_beyond_all_measure_is_refused_unread(tmp_path) -> None:
    """Its size is named beside the most that is read."""
    path = tmp_path / "map.geojson"
    with path.open("wb") as stream:
        stream.truncate(200_000_000)
    with pytest.raises(BadCourse, match="it has 200 MB, and at most 100 are read"):
        load(path)


def test_json_nested_without_end_is_refused(tmp_path) -> None:
    """Neither the parser nor the reading of coordinates runs out of stack."""
    path = tmp_path / "map.geojson"
    path.write_text("[" * 200_000 + "]" * 200_000)
    with pytest.raises(BadCourse, match="is not JSON"):
        load(path)


def test_names_give_no_orders_to_a_terminal(tmp_path) -> None:
    """Escape codes and marks of direction in a name are symbols by the time anybody reads it."""
    features = nine_holes()
    features[1]["properties"]["ref"] = "\x1b[2J\u202e9"
    said = "\n".join(map(str, check(write(tmp_path / "map.geojson", features))))
    assert "␛[2J[U+202E]9" in said
    assert "\x1b" not in said
    assert "\u202e" not in said


def test_visible_text_keeps_letters_and_json_its_meaning() -> None:
    """Letters of any script stay; escaped JSON reads back as what it was."""
    assert visible("Grün — 芝") == "Grün — 芝"
    document = {"name": "a\x9b1m\u202eb\ud800", "é": 1}
    assert json.loads(escaped(json.dumps(document, ensure_ascii=False, indent=2))) == document
    assert "\x9b" not in escaped(json.dumps(document, ensure_ascii=False))


def test_a_course_across_the_antimeridian_is_one_course(tmp_path) -> None:
    """Its holes are as long there as anywhere, and its faults have places on the ground."""

    def moved(value):
        if isinstance(value[0], list):
            return [moved(one) for one in value]
        east = value[0] + 176.999
        return [east - 360 if east > 180 else east, value[1]]

    features = nine_holes()
    there = [
        {**one, "geometry": {**one["geometry"], "coordinates": moved(one["geometry"]["coordinates"])}}
        for one in features
    ]
    here = load(write(tmp_path / "here.geojson", features))
    across = load(write(tmp_path / "across.geojson", there))
    longitudes = [
        place[0]
        for one in there
        if one["geometry"]["type"] == "LineString"
        for place in one["geometry"]["coordinates"]
    ]
    assert min(longitudes) < 0 < max(longitudes)
    for number, hole in here.holes.items():
        assert abs(across.holes[number].line.length - hole.line.length) < 0.001


def test_an_accuracy_that_says_nothing_puts_no_edge_in_doubt() -> None:
    """An edge of unbounded accuracy would be in doubt everywhere; what cannot be read is left out, and said."""
    read = {
        text: accuracy_of({"accuracy": text}) for text in ("6", "2.5 m", "inf", "-3", "nan", "1e3", "1001")
    }
    assert read == {"6": 6.0, "2.5 m": 2.5, **dict.fromkeys(("inf", "-3", "nan", "1e3", "1001"))}
    course, faults = examine(BAD / "accuracy_without_sense.geojson")
    assert course is not None
    assert {drawn_to(feature) for feature in course.features} == {0.0}
    left_out = [fault.what for fault in faults if fault.check == "not_a_number"]
    assert [one.split("'")[1] for one in left_out] == ["inf", "-3", "about a club"]


def test_ways_without_positions_stay_to_be_mended() -> None:
    """Each is listed with what to do, in the check and in the draft; nobody is told that nothing is tagged."""
    told = check(BAD / "ways_without_nodes.osm")
    assert {(fault.check, fault.feature) for fault in told} == {
        ("incomplete", f"way/{n}") for n in (1, 2, 3, 4)
    }
    draft = read_draft(BAD / "ways_without_nodes.osm")
    assert [str(fault) for fault in draft.faults] == [str(fault) for fault in told]


def test_positions_within_the_ways_are_read(tmp_path) -> None:
    """An extract with the positions in its ways, without the nodes themselves, is the map with its nodes."""
    whole = (BAD / "incomplete_way.osm").read_text().splitlines()
    whole = [line for line in whole if '<way id="9"' not in line]
    places = {line.split('"')[1]: line.split("lat=")[1].rstrip("/>") for line in whole if "<node" in line}
    within = [line for line in whole if "<node" not in line]
    for number, place in places.items():
        within = [line.replace(f'<nd ref="{number}"', f'<nd ref="{number}" lat={place}') for line in within]
    for name, lines in {"nodes": whole, "ways": within}.items():
        (tmp_path / f"{name}.osm").write_text("\n".join(lines))
    nodes, ways = (load(tmp_path / f"{name}.osm") for name in ("nodes", "ways"))
    assert [(one.ident, one.geometry.wkt) for one in ways.features] == [
        (one.ident, one.geometry.wkt) for one in nodes.features
    ]


@pytest.mark.parametrize("name", ["zipped.geojson", "gzipped.osm"])
def test_a_packed_file_is_told_as_such_wherever_it_is_opened(name) -> None:
    """To be checked, to be mended, and as a survey of points."""
    (fault,) = check(BAD / name)
    assert read_draft(BAD / name).faults == (fault,)
    with pytest.raises(InputError, match=r"it is packed \(g?zip\)\. Unpack it first\."):
        read_points(BAD / name)
