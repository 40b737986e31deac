"""No relief area, wherever it is drawn, is written with an empty or invalid ring, in GeoJSON or in SVG (RFC 7946)."""

import re
from datetime import date
from xml.etree import ElementTree as ET

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import shape

from marram.course.loading import load
from marram.course.model import Course, Kind
from marram.demo import COURSE
from marram.errors import BadPlace
from marram.relief import Drawn, Player, Situation, feature_collection, relief_areas, svg
from marram.relief.geometry.outline import Outline
from marram.relief.pictures.view import View
from tests.relief import ground_for_tests as made

OPTIONS = [one for one in vars(made).values() if isinstance(one, made.ReliefOption)]
DEMO = load(COURSE)
WITHOUT_BOUNDARY = Course(
    DEMO.name,
    DEMO.plane,
    DEMO.holes,
    tuple(one for one in DEMO.features if one.kind not in {Kind.BOUNDARY, Kind.OUT_OF_BOUNDS}),
)
MAPS = {"demo": DEMO, "demo without boundary": WITHOUT_BOUNDARY, "made": made.course()}


off = st.floats(-80, 80)
"""Metres beside the line of play; the least numbers a computer knows are among them."""


def faults(answer: Drawn, course: Course) -> list[str]:
    """Return what is wrong with how an answer is written."""
    found = []
    for one in feature_collection(answer.areas, course.plane)["features"]:
        geometry = one["geometry"]
        if one["properties"]["what"] != "relief_area" or geometry["type"] == "Point":
            continue
        written = shape(geometry)
        if geometry["type"] not in {"Polygon", "MultiPolygon"}:
            found.append(geometry["type"])
        elif not written.is_valid or written.area <= 0:
            found.append(shapely.is_valid_reason(written))
        elif not all(ring.is_ccw for ring in shapely.get_exterior_ring(shapely.get_parts(written))):
            found.append("clockwise")
    shapes = {"Polygon", "MultiPolygon", "Point"}
    polygons = [area.polygon for area in answer.areas]
    found += [one.geom_type for one in polygons if not one.is_valid or one.geom_type not in shapes]
    drawn = ET.fromstring(svg(answer.areas, course))
    if any(
        re.search(r"nan|inf|M[^L]*Z", one.get("d", ""))
        for one in drawn.iter()
        if one.get("fill") == "url(#relief-area)"
    ):
        found.append("svg")
    return found


@pytest.mark.parametrize("name", MAPS)
@settings(deadline=None, max_examples=20)
@given(data=st.data())
def test_every_ring_is_valid(name, data):
    """A ball anywhere around a hole, any option, both editions: what is drawn can be read by any program."""
    course = MAPS[name]
    hole = data.draw(st.sampled_from(sorted(course.holes)))
    line = course.holes[hole].line
    along = line.interpolate(data.draw(st.floats(-0.1, 1.1)), normalized=True)
    ball = along.x + data.draw(off), along.y + data.draw(off)
    edges = [one.geometry.boundary for one in course.of(Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)]
    edge = min(edges, key=lambda one: one.distance(along))
    entry = edge.interpolate(data.draw(st.floats(0, 1)), normalized=True)
    puddle = shapely.Point(ball[0], ball[1] + 0.2).buffer(data.draw(st.floats(0.3, 4)), quad_segs=4)
    situation = Situation(
        course,
        hole,
        played_on=date(data.draw(st.sampled_from([2019, 2023])), 6, 1),
        player=Player(1.15, right_handed=data.draw(st.booleans())),
        ball=ball,
        entry=(entry.x, entry.y),
        previous=ball,
        condition=Outline(puddle),
    )
    for option in OPTIONS:
        try:
            (answer,) = relief_areas(situation, [option])
        except BadPlace:
            continue
        if isinstance(answer, Drawn):
            assert faults(answer, course) == [], option


def test_a_speck_is_drawn_with_corners():
    """What is too small to be seen at the scale of a picture is still drawn as an area, not as a point without extent."""
    view = View(0.0, 0.0, 100.0, 400.0)
    speck = shapely.box(50.0, 50.0, 50.01, 50.02)
    assert view.path(speck).count("L") >= 2
