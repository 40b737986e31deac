"""Drawings: well formed, to scale, labelled, not by colour alone; and GeoJSON against geodesics."""

import json
import re
from itertools import combinations
from xml.etree import ElementTree as ET

import pytest
from geographiclib.geodesic import Geodesic
from shapely.geometry import shape

from marram.errors import BadPlace
from marram.relief import Situation, feature_collection, relief_areas, svg
from marram.relief.areas.construction import Role
from marram.relief.pictures.labels import Box, place_labels
from marram.relief.pictures.picture_words import assumed_words, mark_words
from tests.relief.ground_for_tests import (
    FREE_GENERAL,
    IN_2023,
    LATERAL_PENALTY_AREA,
    LATERAL_UNPLAYABLE,
    LINE_2019,
    LINE_2023,
    PLAYER,
    STROKE_AND_DISTANCE,
    TWO_POINTS,
    course,
)

SVG = "{http://www.w3.org/2000/svg}"
COURSE = course()
PATH = next(one for one in COURSE.features if one.ident == "path")
CASES = {
    "lateral": (LATERAL_PENALTY_AREA, None, {"entry": (20.0, 80.0)}),
    "unplayable": (LATERAL_UNPLAYABLE, (3.0, 60.0), {}),
    "line in 2019": (LINE_2019, None, {"entry": (-10.0, 134.0)}),
    "line since 2023": (LINE_2023, None, {"entry": (-10.0, 134.0)}),
    "tee": (STROKE_AND_DISTANCE, None, {"previous": (0.0, 1.0), "tee_markers": ((-3.0, 2.0), (3.0, 2.0))}),
    "green": (STROKE_AND_DISTANCE, None, {"previous": (2.0, 191.0)}),
    "path": (FREE_GENERAL, (-28.5, 90.0), {"condition": PATH}),
    "two points": (TWO_POINTS, (40.0, 110.0), {}),
}


def areas(name):
    option, ball, places = CASES[name]
    (answer,) = relief_areas(
        Situation(COURSE, 1, ball=ball, played_on=IN_2023, player=PLAYER, **places), [option]
    )
    return answer.areas


@pytest.mark.parametrize("name", CASES)
def test_a_drawing_is_well_formed_and_says_what_it_shows(name):
    """It parses as XML, has a title with the provision and a description with every distance."""
    root = ET.fromstring(svg(areas(name), COURSE))
    description = root.find(f"{SVG}desc").text

    assert "(test)" in root.find(f"{SVG}title").text
    assert all(f"{one.metres:.1f}"[:-2] in description for one in areas(name)[0].measures)
    assert root.get("role") == "img"


@pytest.mark.parametrize("name", CASES)
def test_ids_carry_the_prefix_and_are_used(name):
    """Two drawings with different prefixes can stand in one page; no reference points nowhere."""
    drawn = svg(areas(name), COURSE, prefix="one")
    ids = set(re.findall(r'\bid="([^"]+)"', drawn))
    used = set(re.findall(r"url\(#([^)]+)\)", drawn)) | set(
        re.search(r'aria-labelledby="([^"]+)"', drawn).group(1).split()
    )

    assert all(one.startswith("one-") for one in ids)
    assert used <= ids


def test_a_circle_is_drawn_to_the_scale_of_the_bar():
    """The drawn radius over the drawn scale bar equals two club-lengths over the bar's metres."""
    root = ET.fromstring(svg(areas("unplayable"), COURSE))
    radius = float(next(one for one in root.iter(f"{SVG}circle") if float(one.get("r")) > 20).get("r"))
    bar = next(one.get("d") for one in root.iter(f"{SVG}path") if re.match(r"M12 \d+V\d+H", one.get("d")))
    length = float(re.search(r"H([\d.]+)", bar).group(1)) - 12
    said = next(one.text for one in root.iter(f"{SVG}text") if re.fullmatch(r"[\d.]+ m", one.text))
    metres = float(said.removesuffix(" m"))

    assert radius / length == pytest.approx(2.3 / metres, rel=0.002)


def test_no_pattern_is_told_by_colour_alone():
    """Stripped of colours, the fills of areas that decide rulings still differ."""
    drawn = svg(areas("lateral"), COURSE)
    patterns = re.findall(r'<pattern id="relief-(\w+)"(.*?)</pattern>', drawn, re.DOTALL)
    bare = {name: re.sub(r"#[0-9a-f]{6}", "", body) for name, body in patterns}

    assert len(set(bare.values())) == len(bare) >= 9


def test_labels_never_overlap_nor_leave_the_picture():
    """Ten anchors in one corner: whatever is placed stands free and inside."""
    wanted = [(f"label number {i}", (330.0 + 4 * i, 20.0 + 3 * i)) for i in range(10)]
    taken = [Box(346, 0, 390, 62)]
    labels = place_labels(wanted, 390, taken)

    assert len(labels) >= 6
    for one, other in combinations([label.box for label in labels] + taken, 2):
        assert not one.overlaps(other)
    assert all(one.box.left >= 0 and one.box.right <= 390 and one.box.top >= 0 for one in labels)


def test_every_mark_and_assumption_has_words():
    """No code shows where words should."""
    assert all(mark_words(role) for role in Role)
    for name in CASES:
        assert all(assumed_words(one) for one in areas(name)[0].assumed)


def test_nothing_to_draw_is_refused():
    """An empty list is an error that says so."""
    with pytest.raises(BadPlace, match="no relief area"):
        svg([])


@pytest.mark.parametrize("name", CASES)
def test_geojson_is_json_and_keeps_the_area(name):
    """It survives JSON; brought back into the plane the area has the same size."""
    collection = json.loads(json.dumps(feature_collection(areas(name), COURSE.plane)))
    back = COURSE.plane.inward(shape(collection["features"][0]["geometry"]))

    assert collection["type"] == "FeatureCollection"
    assert back.area == pytest.approx(areas(name)[0].area_m2, rel=1e-5, abs=1e-4)


def test_geojson_distances_agree_with_geodesics():
    """From the reference point to the edge of the circle it is two club-lengths on the ellipsoid too."""
    collection = feature_collection(areas("unplayable"), COURSE.plane)
    arc = next(
        one["geometry"]["coordinates"]
        for one in collection["features"]
        if one["properties"].get("role") == "club_lengths"
    )
    longitude, latitude = COURSE.plane.to_degrees(3.0, 60.0)
    for lon, lat in arc[::20]:
        geodesic = Geodesic.WGS84.Inverse(latitude, longitude, lat, lon)["s12"]

        assert geodesic == pytest.approx(2.3, abs=0.001)
