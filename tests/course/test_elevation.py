"""Elevations read from each format: a known plane written and read back, and what is refused.

Sources: Esri's page "Esri ASCII raster format" (header, north row first, corner or centre, NODATA); RFC 7946 (third
coordinate); EPSG:32631 is UTM zone 31 north, in which the ground of the tests lies.
"""

import json
import math

import pytest
from pyproj import Transformer
from shapely.geometry import Point

from marram.course.greens.elevation import read_elevations
from marram.course.greens.slope import GreenSlopes, slope_limits
from marram.errors import InputError
from tests.course.drawing import PLANE
from tests.course.test_slope import GRID, LINKS


def degrees(x, y):
    return PLANE.to_degrees(x, y)


def plane(x, y):
    return 0.03 * (x - 150) + 0.01 * y + 12


def slope_of(path, **more):
    elevations = read_elevations(LINKS, [path], **more)
    return GreenSlopes(LINKS, elevations, slope_limits()).surfaces[1].at(Point(151, 2))


EXPECTED = 100 * math.hypot(0.03, 0.01)


def test_csv_in_degrees(tmp_path) -> None:
    """longitude,latitude,elevation with eight decimals gives back the plane it was taken from."""
    rows = [f"{degrees(x, y)[0]:.8f},{degrees(x, y)[1]:.8f},{plane(x, y):.4f}" for x, y in GRID]
    path = tmp_path / "greens.csv"
    path.write_text("longitude,latitude,elevation\n" + "\n".join(rows), encoding="utf-8")
    assert slope_of(path).percent == pytest.approx(EXPECTED, abs=0.03)


def test_csv_in_eastings_and_northings(tmp_path) -> None:
    """x,y,z in UTM zone 31 (EPSG:32631) needs its coordinate system named, and then agrees within its scale error."""
    utm = Transformer.from_crs("EPSG:4326", "EPSG:32631", always_xy=True)
    rows = [
        ",".join(f"{number:.4f}" for number in (*utm.transform(*degrees(x, y)), plane(x, y))) for x, y in GRID
    ]
    path = tmp_path / "greens.csv"
    path.write_text("x,y,z\n" + "\n".join(rows), encoding="utf-8")
    with pytest.raises(InputError, match="without saying in which coordinate system"):
        slope_of(path)
    assert slope_of(path, crs="EPSG:32631").percent == pytest.approx(EXPECTED, abs=0.03)


def grid_text(x0, y0, cell, size, height, *, corner="corner"):
    """Return an Esri ASCII grid of a function of easting and northing."""
    half, (columns, rows) = cell / 2 if corner == "corner" else 0, size
    lines = [
        f"ncols {columns}",
        f"nrows {rows}",
        f"xll{corner} {x0:.9f}",
        f"yll{corner} {y0:.9f}",
        f"cellsize {cell}",
        "NODATA_value -9999",
    ]
    for row in range(rows):
        y = y0 + half + (rows - 1 - row) * cell
        lines.append(" ".join(f"{height(x0 + half + column * cell, y):.4f}" for column in range(columns)))
    return "\n".join(lines) + "\n"


@pytest.mark.parametrize("corner", ["corner", "center"])
def test_an_ascii_grid_with_its_projection_beside_it(tmp_path, corner) -> None:
    """A half-metre grid in UTM with a .prj file is read north row first, as Esri describes the format."""
    utm = Transformer.from_crs("EPSG:4326", "EPSG:32631", always_xy=True)
    back = Transformer.from_crs("EPSG:32631", "EPSG:4326", always_xy=True)

    def height(east, north):
        return plane(*PLANE.to_metres(*back.transform(east, north)))

    x0, y0 = utm.transform(*degrees(130, -20))
    path = tmp_path / "dtm.asc"
    path.write_text(grid_text(x0, y0, 0.5, (80, 80), height, corner=corner), encoding="utf-8")
    (tmp_path / "dtm.prj").write_text("EPSG:32631", encoding="utf-8")
    found = slope_of(path)
    assert found.percent == pytest.approx(EXPECTED, abs=0.03)
    assert found.fall == pytest.approx(
        (-0.03 / math.hypot(0.03, 0.01), -0.01 / math.hypot(0.03, 0.01)), abs=0.02
    )


def test_cells_without_data_stay_unknown(tmp_path) -> None:
    """NODATA cells are no elevation of -9999 m."""
    west, south = degrees(130, -20)
    step = degrees(131, -20)[0] - west
    text = grid_text(
        west, south, step, (40, 60), lambda x, _y: -9999 if x > degrees(150, 0)[0] else 12.0, corner="center"
    )
    path = tmp_path / "dtm.asc"
    path.write_text(text, encoding="utf-8")
    ground = GreenSlopes(LINKS, read_elevations(LINKS, [path]), slope_limits()).surfaces[1]
    assert ground.at(Point(145, 0)).percent == pytest.approx(0, abs=1e-9)
    assert ground.at(Point(155, 0)) is None


def test_geojson_points_and_contour_lines(tmp_path) -> None:
    """Points with a third coordinate or ele, and contour lines with ele, 1 m apart on a slope of 3 %."""
    lines = [
        {
            "type": "Feature",
            "properties": {"ele": 12 + 0.03 * k},
            "geometry": {"type": "LineString", "coordinates": [degrees(150 + k, -15), degrees(150 + k, 15)]},
        }
        for k in range(-15, 16)
    ]
    path = tmp_path / "contours.geojson"
    path.write_text(json.dumps({"type": "FeatureCollection", "features": lines}), encoding="utf-8")
    assert slope_of(path).percent == pytest.approx(3, abs=0.02)
    points = [
        {
            "type": "Feature",
            "properties": {},
            "geometry": {"type": "Point", "coordinates": [*degrees(x, y), plane(x, y)]},
        }
        for x, y in GRID
    ]
    path.write_text(json.dumps({"type": "FeatureCollection", "features": points}), encoding="utf-8")
    assert slope_of(path).percent == pytest.approx(EXPECTED, abs=0.02)


@pytest.mark.parametrize(
    ("name", "text", "words"),
    [
        ("a.csv", "east,north,up\n1,2,3\n", "the first line must name the columns"),
        ("a.csv", "longitude,latitude,elevation\n3.0,51.0,high\n3.0,51.0\n", "line 2"),
        ("a.csv", "longitude,latitude,elevation\n3.0,51.0,nan\n", "not a finite number"),
        (
            "a.csv",
            "longitude,latitude,elevation\n9.0,51.0,12\n9.0,51.1,12\n9.1,51.0,12\n",
            "lie on any green",
        ),
        ("a.geojson", "{", "no GeoJSON FeatureCollection"),
        ("a.geojson", '{"features": [{"geometry": {"type": "Point", "coordinates": [3, 51]}}]}', "feature 0"),
        (
            "a.asc",
            "ncols 2\nnrows 2\ncellsize 1\n1 2 3 4\n",
            "its header lacks xllcorner or xllcenter, yllcorner or yllcenter",
        ),
        (
            "a.asc",
            "ncols 2\nnrows 2\nxllcorner 3\nyllcorner 51\ncellsize 0.0001\n1 2 3\n",
            "need 4 elevations; it has 3",
        ),
        (
            "a.asc",
            "ncols 2\nnrows 2\nxllcorner 3\nyllcorner 51\ncellsize wide\n1 2 3 4\n",
            "'wide', which is no number",
        ),
        (
            "a.asc",
            "ncols 2\nnrows 2\nxllcorner 400000\nyllcorner 5600000\ncellsize 1\n1 2 3 4\n",
            "coordinate system",
        ),
    ],
)
def test_a_file_that_cannot_be_used_says_why(tmp_path, name, text, words) -> None:
    """What is wrong, where, and what to do."""
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    with pytest.raises(InputError, match=words) as refused:
        read_elevations(LINKS, [path])
    assert all(str(tmp_path) in fault or "is no coordinate" in fault for fault in refused.value.faults)


def test_a_missing_file_and_a_nonsense_system_are_named(tmp_path) -> None:
    """Both are refused with the path or the name."""
    with pytest.raises(InputError, match=r"none\.csv cannot be read"):
        read_elevations(LINKS, [tmp_path / "none.csv"])
    path = tmp_path / "a.csv"
    path.write_text("x,y,z\n1,2,3\n", encoding="utf-8")
    with pytest.raises(InputError, match="'EPSG:nonsense' is no coordinate system"):
        read_elevations(LINKS, [path], crs="EPSG:nonsense")


def csv_of(tmp_path, name, rows):
    path = tmp_path / name
    path.write_text("longitude,latitude,elevation\n" + "\n".join(rows))
    return path


def row(x, y, z):
    return "{:.8f},{:.8f},{}".format(*degrees(x, y), z)


def test_files_of_two_height_datums_are_refused(tmp_path) -> None:
    """Two surveys of one green that lie 895 m apart are no level ground: the green and both files are named."""
    low = csv_of(tmp_path, "low.csv", [row(x, y, f"{plane(x, y):.4f}") for x, y in GRID])
    high = csv_of(tmp_path, "high.csv", [row(x, y, f"{plane(x, y) + 895:.4f}") for x, y in GRID])
    with pytest.raises(InputError, match="green 1 lie 89") as refused:
        read_elevations(LINKS, [low, high])

    assert "low.csv" in str(refused.value)
    assert "high.csv" in str(refused.value)


@pytest.mark.parametrize("height", ["1e300", "-4000", "99999"])
def test_an_elevation_that_no_land_has_is_refused(tmp_path, height) -> None:
    """The value is named, with what could be one."""
    path = csv_of(tmp_path, "odd.csv", [row(x, y, height) for x, y in GRID])
    with pytest.raises(InputError, match="is none on land"):
        read_elevations(LINKS, [path])


def test_a_quotation_mark_never_closed_is_named_by_its_line(tmp_path) -> None:
    """It would swallow the rest of the file."""
    path = csv_of(tmp_path, "open.csv", [row(150, 1, "12"), '"' + row(151, 1, "12"), row(152, 1, "12")])
    with pytest.raises(InputError, match="line 3"):
        read_elevations(LINKS, [path])


def test_endless_nesting_is_no_geojson(tmp_path) -> None:
    """A file made to exhaust the reader is refused in a sentence."""
    path = tmp_path / "deep.geojson"
    path.write_text('{"features":' + "[" * 100_000)
    with pytest.raises(InputError, match="no GeoJSON"):
        read_elevations(LINKS, [path])
