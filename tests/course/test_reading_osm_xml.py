"""Reading OpenStreetMap XML: relations, what is not in the file, and the credit."""

import pytest

from marram.course import check, load
from marram.course.model import Kind
from marram.course.reading.osm_xml import CREDIT
from tests.course.drawing import PLANE

OSM = """<osm version="0.6"{credit}>
{nodes}
<way id="10">{ring}<tag k="marram" v="boundary"/></way>
<way id="11"><nd ref="5"/><nd ref="6"/><tag k="golf" v="hole"/><tag k="ref" v="1"/><tag k="par" v="3"/></way>
<way id="12"><nd ref="7"/><nd ref="8"/><nd ref="9"/></way>
<way id="13"><nd ref="7"/><nd ref="10"/><nd ref="9"/></way>
<way id="14"><nd ref="11"/><nd ref="12"/><nd ref="13"/><nd ref="11"/></way>
<relation id="20">
  <member type="way" ref="12" role="outer"/><member type="way" ref="13" role="outer"/>
  <member type="way" ref="14" role="inner"/>
  <tag k="type" v="multipolygon"/><tag k="golf" v="lateral_water_hazard"/>
</relation>
<relation id="21"><member type="way" ref="999" role="outer"/><tag k="type" v="multipolygon"/><tag k="natural" v="wood"/></relation>
<node id="98" visible="false"><tag k="golf" v="pin"/></node>
</osm>"""
PLACES = [
    (-60, -60), (260, -60), (260, 160), (-60, 160), (0, 0), (150, 0),
    (60, 20), (80, 20), (80, 40), (60, 40), (65, 25), (70, 25), (70, 30),
]  # fmt: skip


def osm(tmp_path, credit=""):
    nodes = []
    for number, place in enumerate(PLACES, 1):
        longitude, latitude = PLANE.to_degrees(*place)
        nodes.append(f'<node id="{number}" lat="{latitude!r}" lon="{longitude!r}"/>')
    ring = "".join(f'<nd ref="{n}"/>' for n in (1, 2, 3, 4, 1))
    path = tmp_path / "map.osm"
    path.write_text(OSM.format(credit=credit, nodes="\n".join(nodes), ring=ring))
    return path


def test_a_multipolygon_relation_is_joined_from_its_ways(tmp_path) -> None:
    """Two half rings, one drawn the other way round, and an inner ring make one area with a hole in it."""
    course = load(osm(tmp_path))
    (red,) = course.of(Kind.RED_PENALTY_AREA)
    assert red.ident == "relation/20"
    assert red.geometry.area == pytest.approx(20 * 20 - 5 * 5 / 2, rel=1e-6)


def test_a_relation_of_scenery_with_members_elsewhere_is_a_note(tmp_path) -> None:
    """A wood whose ways are not in the file is left out and noted; deleted elements are not read."""
    notes = [fault for fault in check(osm(tmp_path)) if fault.check == "incomplete"]
    assert [(fault.severity.value, fault.feature) for fault in notes] == [("note", "relation/21")]


def test_the_credit_of_open_data_is_kept(tmp_path) -> None:
    """The credit a file names is kept; OpenStreetMap XML without one gets OpenStreetMap's (ODbL 1.0, section 4.3)."""
    assert load(osm(tmp_path)).credit == CREDIT
    named = osm(tmp_path, ' copyright="OpenStreetMap and contributors" attribution="ODbL 1.0"')
    assert load(named).credit == "OpenStreetMap and contributors, ODbL 1.0"


def test_a_position_that_is_no_number_is_refused_with_its_line(tmp_path) -> None:
    """A "nan", which reads as a number and is none, is told as any other word there is."""
    path = osm(tmp_path)
    lines = path.read_text().split("\n")
    lines[3] = lines[3].replace('lon="', 'lon="nan" was="')
    path.write_text("\n".join(lines))
    (fault,) = check(path)
    assert fault.check == "not_osm"
    assert "line 4" in fault.what
    assert "nan is no number" in fault.what
