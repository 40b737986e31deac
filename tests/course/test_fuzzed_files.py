"""Whatever a file holds, only the project's own errors come out: a sentence, never a traceback.

Good files are spoilt at random (a value replaced, left out or repeated; bytes cut, doubled or exchanged), read in every
way there is, and what is found shrinks to the smallest spoiling.
"""

import copy
import json
from contextlib import suppress
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point

from marram.course import check, load, read_draft
from marram.course.greens.elevation import read_elevations
from marram.course.reading.survey import read_points
from marram.errors import MarramError
from tests.course.drawing import PLANE, drawn, nine_holes, square, write
from tests.course.test_slope import GRID, LINKS

MAPS = settings(max_examples=25, deadline=None)
OTHERS = settings(max_examples=120, deadline=None)
"""A map is read, checked and drafted, which takes longer than a table."""

LEAVES = st.one_of(
    st.none(),
    st.booleans(),
    st.sampled_from([0, -0.0, -1, 181, 91, 1e300, -1e300, 10**40, float("nan"), float("inf"), 1e-320]),
    st.sampled_from(
        ["", "nan", "1e999", "x" * 500, "\x1b[2J", "\u202e7", "\ud800", "yes", "7;7", "٣", "1;2;3"]
    ),
    st.sampled_from(
        [[], {}, [[]], [[[]]], [1, 2, 3, 4], {"type": "Point"}, [[0, 0], [0, 0], [0, 0], [0, 0]]]
    ),
)
"""What is put in the place of a value."""


def good_map(folder: Path) -> dict[str, Any]:
    """Return a map with nine holes and one area of several kinds, as JSON holds it."""
    features = [
        *nine_holes(),
        drawn(square(60, 0, 5), "bunker", golf="bunker"),
        drawn(square(80, 30, 5), "pond", natural="water"),
        drawn(square(100, 30, 5), "red", golf="lateral_water_hazard"),
        drawn(Point(75, 30), "stake", marram="stake"),
    ]
    document: dict[str, Any] = json.loads(write(folder / "good.geojson", features).read_text())
    return document


def places_in(node: Any, path: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """Return the way to every value below a node."""
    inside = node.items() if isinstance(node, dict) else enumerate(node) if isinstance(node, list) else ()
    return [found for key, value in inside for found in ((*path, key), *places_in(value, (*path, key)))]


def spoilt(document: Any, data: st.DataObject) -> Any:
    """Return a document with one to three of its values replaced, left out or repeated."""
    document = copy.deepcopy(document)
    for _ in range(data.draw(st.integers(1, 3))):
        *way, last = data.draw(st.sampled_from(places_in(document)))
        node = document
        for key in way:
            node = node[key]
        what = data.draw(st.sampled_from(["replace", "leave out", "repeat"]))
        if what == "replace":
            node[last] = copy.deepcopy(data.draw(LEAVES))
        elif what == "leave out":
            del node[last]
        elif isinstance(node, list):
            node.insert(last, copy.deepcopy(node[last]))
        if not places_in(document):
            break
    return document


def cut(text: bytes, data: st.DataObject) -> bytes:
    """Return bytes with a stretch left out, doubled or exchanged for others."""
    start = data.draw(st.integers(0, len(text)))
    end = data.draw(st.integers(start, min(len(text), start + 60)))
    inside = data.draw(
        st.one_of(
            st.just(b""),
            st.just(text[start:end] * 2),
            st.sampled_from(
                [b"\x00", b'"', b"\xff\xfe", b"\xe4", b"1e300", b"nan", b"-", b"<!DOCTYPE x>", b"&#0;"]
            ),
            st.binary(max_size=12),
        )
    )
    return text[:start] + inside + text[end:]


def only_sentences(*readings: Any) -> None:
    """Read in every way; a refusal must be the project's own."""
    for reading in readings:
        with suppress(MarramError):
            reading()


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("fuzzed")


@pytest.fixture(scope="module")
def document(folder: Path) -> dict[str, Any]:
    return good_map(folder)


@MAPS
@given(data=st.data())
def test_a_spoilt_geojson_map(folder: Path, document: dict[str, Any], data: st.DataObject) -> None:
    """A value of any type in any place of a map, read, checked and drafted for mending."""
    path = folder / "map.geojson"
    path.write_text(json.dumps(spoilt(document, data)), encoding="utf-8")

    only_sentences(lambda: load(path), lambda: check(path), lambda: read_draft(path))


@MAPS
@given(data=st.data())
def test_a_cut_geojson_map(folder: Path, document: dict[str, Any], data: st.DataObject) -> None:
    """Bytes cut, doubled or exchanged anywhere."""
    path = folder / "cut.geojson"
    path.write_bytes(cut(json.dumps(document).encode(), data))

    only_sentences(lambda: load(path), lambda: check(path), lambda: read_draft(path))


def osm_text() -> bytes:
    """Return a small OpenStreetMap extract: a hole with its tee, green and bunker."""
    lines, ways, ident = [], [], 0
    for tags, points in (
        ({"golf": "hole", "ref": "1", "par": "3"}, [(0, 0), (150, 0)]),
        ({"golf": "tee"}, list(square(0, 0, 5).exterior.coords)),
        ({"golf": "green"}, list(square(150, 0, 10).exterior.coords)),
        ({"golf": "bunker"}, list(square(130, 20, 5).exterior.coords)),
    ):
        refs = []
        for x, y in points:
            ident += 1
            longitude, latitude = PLANE.to_degrees(x, y)
            lines.append(f'<node id="{ident}" lon="{longitude:.8f}" lat="{latitude:.8f}"/>')
            refs.append(f'<nd ref="{ident}"/>')
        told = "".join(f'<tag k="{key}" v="{value}"/>' for key, value in tags.items())
        ways.append(f'<way id="{900 + len(ways)}">{"".join(refs)}{told}</way>')
    return f'<?xml version="1.0"?><osm version="0.6">{"".join(lines + ways)}</osm>'.encode()


@MAPS
@given(data=st.data())
def test_a_cut_openstreetmap_file(folder: Path, data: st.DataObject) -> None:
    """XML with anything in it, a document type included."""
    path = folder / "map.osm"
    path.write_bytes(cut(cut(osm_text(), data), data))

    only_sentences(lambda: load(path), lambda: check(path), lambda: read_draft(path))


@OTHERS
@given(data=st.data())
def test_a_cut_survey(folder: Path, data: st.DataObject) -> None:
    """Measured points with anything in them."""
    path = folder / "points.csv"
    rows = "".join("{:.7f},{:.7f},a,0.02\n".format(*PLANE.to_degrees(x, 3 * x)) for x in range(5))
    path.write_bytes(cut(b"longitude,latitude,name,accuracy\n" + rows.encode(), data))

    only_sentences(lambda: read_points(path))


def heights() -> list[tuple[float, float, float]]:
    return [(*PLANE.to_degrees(x, y), 12 + 0.03 * x) for x, y in GRID]


@OTHERS
@given(data=st.data())
def test_cut_elevations(folder: Path, data: st.DataObject) -> None:
    """Elevations as CSV and as a grid with anything in them."""
    rows = "\n".join(f"{x:.8f},{y:.8f},{z:.3f}" for x, y, z in heights())
    grid = "ncols 3\nnrows 2\nxllcorner 4.0\nyllcorner 55.0\ncellsize 0.0001\n1 2 3\n4 5 6\n"
    table, raster = folder / "heights.csv", folder / "heights.asc"
    table.write_bytes(cut(f"longitude,latitude,elevation\n{rows}\n".encode(), data))
    raster.write_bytes(cut(grid.encode(), data))

    only_sentences(lambda: read_elevations(LINKS, [table]), lambda: read_elevations(LINKS, [raster]))


@OTHERS
@given(data=st.data())
def test_spoilt_elevations(folder: Path, data: st.DataObject) -> None:
    """Elevations as GeoJSON with a value of any type in any place."""
    points = [
        {"type": "Feature", "properties": {}, "geometry": {"type": "Point", "coordinates": list(one)}}
        for one in heights()[:6]
    ]
    line = {"type": "LineString", "coordinates": [list(one[:2]) for one in heights()[:4]]}
    contour = {"type": "Feature", "properties": {"ele": 12}, "geometry": line}
    path = folder / "heights.geojson"
    whole = {"type": "FeatureCollection", "features": [*points, contour]}
    path.write_text(json.dumps(spoilt(whole, data)), encoding="utf-8")

    only_sentences(lambda: read_elevations(LINKS, [path]))
