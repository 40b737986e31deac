"""Survey points: GPX 1.1 and CSV onto the map, with their accuracy."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.course.lies.areas import Area
from marram.course.lies.doubts import DoubtKind
from marram.course.lies.survey_on_map import read_on_map
from marram.course.model import Kind
from marram.course.reading.survey import UERE, SurveyPoint, read_points
from marram.errors import BadPlace
from tests.course.drawing import BOUNDARY, RADIUS, course, feature, hole, square

GREEN = feature(Kind.PUTTING_GREEN, square(150, 0, 10), "green", holes=(1,))
LINKS = course(BOUNDARY, GREEN, feature(Kind.BUNKER, square(60, 0, 5), "bunker"), holes=[hole(green=GREEN)])

GPX = """<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1">
  <metadata><name>Not a point</name></metadata>
  <wpt lat="51.0001" lon="3.0001"><time>2026-05-01T09:30:00Z</time><name>stake</name><hdop>0.8</hdop>
    <extensions><name>device</name></extensions></wpt>
  <trk><name>Track</name><trkseg><trkpt lat="51.0002" lon="3.0002"><ele>4.1</ele></trkpt></trkseg></trk>
  <rte><rtept lat="51.0003" lon="3.0003"/></rte>
</gpx>"""


def saved(tmp_path, text):
    path = tmp_path / "points"
    path.write_text(text, encoding="utf-8")
    return path


def test_the_points_of_a_gpx_file(tmp_path) -> None:
    """Waypoints, track points and route points are read; accuracy is HDOP times the range error, else not known."""
    stake, track, route = read_points(saved(tmp_path, GPX))
    assert (stake.name, stake.longitude, stake.latitude) == ("stake", 3.0001, 51.0001)
    assert stake.accuracy == pytest.approx(0.8 * UERE)
    assert (stake.time.hour, stake.time.utcoffset().total_seconds()) == (9, 0)
    assert (track.latitude, track.accuracy, track.name) == (51.0002, None, "")
    assert route.longitude == 3.0003


def test_the_points_of_a_csv_file(tmp_path) -> None:
    """Columns by name in any order; accuracy where given, else the one named for the rest."""
    text = "name,latitude,longitude,accuracy\nball,51.0,3.001,0.03\nedge,51.1,3.002,\n"
    ball, edge = read_points(saved(tmp_path, text), accuracy=2.5)
    assert ball == SurveyPoint("ball", 3.001, 51.0, 0.03)
    assert edge == SurveyPoint("edge", 3.002, 51.1, 2.5)


@pytest.mark.parametrize(
    "text",
    [
        "longitude;latitude;name;accuracy\n3,0001;51,0002;Ball A;0,05\n-3,5;+51;Ball, B;\n",
        "longitude\tlatitude\tname\taccuracy\n3,0001\t51,0002\tBall A\t0,05\n-3.5\t51\tBall, B\t\n",
    ],
)
def test_a_file_separated_by_semicolons_or_tabs_may_have_decimal_commas(tmp_path, text) -> None:
    """As spreadsheets write it where a comma stands in a number; a comma in a name stays one."""
    path = tmp_path / "points.csv"
    path.write_text(text, encoding="utf-8")
    first, second = read_points(path)
    assert (first.longitude, first.latitude, first.name, first.accuracy) == (3.0001, 51.0002, "Ball A", 0.05)
    assert (second.longitude, second.latitude, second.name, second.accuracy) == (-3.5, 51.0, "Ball, B", None)


def test_a_spreadsheet_s_byte_order_mark_is_no_obstacle(tmp_path) -> None:
    """CSV as spreadsheets save it begins with a byte order mark."""
    (point,) = read_points(saved(tmp_path, "\ufefflongitude,latitude\n3,51\n"))
    assert (point.longitude, point.latitude) == (3, 51)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("lon,lat\n3,51\n", "has no column longitude and latitude"),
        ("longitude,latitude\n3,x\n", "line 2: 'x' is not a number"),
        ("longitude,latitude\n3,\n", "line 2: a number is missing"),
        ("longitude,latitude\n3,nan\n", "line 2: 'nan' is not a number"),
        ("longitude,latitude\n3,91\n", "line 2: 91 is not between -90 and 90"),
        ("longitude,latitude,accuracy\n3,51,-1\n", "line 2: an accuracy of -1 m is none"),
        ("<gpx><wpt lat='51' lon='3'>", "not well-formed XML"),
        ("<!DOCTYPE gpx [<!ENTITY a 'b'>]><gpx/>", "declares a document type"),
        ("<osm/>", "begins with <osm>, not <gpx>"),
        ("<gpx><wpt lat='51'/></gpx>", "point 1: a number is missing"),
        ("<gpx><wpt lat='51' lon='3'/><wpt lat='51' lon='3'><time>noon</time></wpt></gpx>", "point 2: "),
    ],
)
def test_a_file_that_holds_no_points_is_refused(tmp_path, text, words) -> None:
    """The error says which file, which line or point, and what is wrong with it."""
    with pytest.raises(BadPlace) as refused:
        read_points(saved(tmp_path, text))
    assert "points" in str(refused.value)
    assert words in str(refused.value)


def test_every_bad_line_is_named_at_once(tmp_path) -> None:
    """Two bad lines give two faults."""
    with pytest.raises(BadPlace) as refused:
        read_points(saved(tmp_path, "longitude,latitude\n3,51\n3,x\n200,51\n"))
    assert [fault.partition(":")[0] for fault in refused.value.faults] == ["points, line 3", "points, line 4"]


def test_a_missing_file_and_bytes_that_are_no_text_are_refused(tmp_path) -> None:
    """Neither ends in anything but words."""
    with pytest.raises(BadPlace, match="cannot be read"):
        read_points(tmp_path / "none.csv")
    path = tmp_path / "picture.png"
    path.write_bytes(b"\x89PNG\xff")
    with pytest.raises(BadPlace, match="neither GPX nor UTF-8"):
        read_points(path)


@settings(deadline=None)
@given(off=st.floats(-3, 3), accuracy=st.floats(0.01, 2))
def test_a_measured_ball_near_an_edge_is_measured_on_the_ground(off, accuracy) -> None:
    """The answer is left to the ground exactly when the ball's reach of the edge is within the accuracy."""
    longitude, latitude = LINKS.plane.to_degrees(65 + RADIUS + off, 0)
    reading = read_on_map(LINKS, SurveyPoint("ball", longitude, latitude, accuracy), 1)
    flips = [doubt for doubt in reading.doubts if doubt.kind is DoubtKind.WITHIN_ACCURACY]
    if abs(abs(off) - accuracy) > 1e-5:
        assert bool(flips) == (abs(off) < accuracy)
    if flips:
        assert (
            flips[0].words
            == f"within {reading.edge_distance:.2f} m of the edge of the bunker: measure on the ground"
        )
    if abs(off) > 1e-5:
        assert reading.area is (Area.BUNKER if off < 0 else Area.GENERAL_AREA)


def test_an_unknown_accuracy_is_asked_for() -> None:
    """A point of which nobody said how accurate it is gives no answer."""
    with pytest.raises(BadPlace, match="how accurate ball is"):
        read_on_map(LINKS, SurveyPoint("ball", 3.0, 51.0), 1)


@pytest.mark.parametrize("written", ["3_0", "nan", "1e999", "3,001.5"])
def test_what_no_official_writes_as_a_number_is_refused(tmp_path, written) -> None:
    """Python reads an underscore within a number, and what is none as one; a survey does not."""
    path = tmp_path / "points.csv"
    path.write_text(f'longitude,latitude\n"{written}",51\n', encoding="utf-8")
    with pytest.raises(BadPlace, match="line 2"):
        read_points(path)
