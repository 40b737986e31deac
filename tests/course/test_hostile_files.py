"""Odd and hostile files: each ends in the project's own words, naming what, where and what to do."""

import json
import os

import pytest

from marram.course import check, load
from marram.course.mending.draft import read_draft
from marram.course.reading.survey import read_points
from marram.errors import BadCourse, BadPlace, InputError
from marram.visible import escaped, visible
from tests.course.drawing import nine_holes, write


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
