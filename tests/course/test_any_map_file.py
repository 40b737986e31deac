"""Whatever a map file holds, the answer is its faults: never a traceback, never a guess."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.course import check, load
from marram.course.scheme import GOLF, OWN
from marram.errors import BadCourse
from tests.course.drawing import one_hole, write

numbers = st.sampled_from(["51.0", "3.0", "nan", "inf", "1e400", "", "x", "-200", "9" * 5000])
xml_tags = st.sampled_from(["golf", "ref", "par", "width", "holes", "type", "natural", "leisure", "handicap"])
xml_values = st.sampled_from(
    ["hole", "green", "bunker", "pin", "1", "9" * 5000, "multipolygon", "water", "golf_course"]
)
refs = st.lists(st.integers(1, 6), max_size=6)


@settings(max_examples=100, deadline=None)
@given(
    places=st.lists(st.tuples(numbers, numbers), max_size=5),
    ways=st.lists(st.tuples(refs, st.dictionaries(xml_tags, xml_values, max_size=3)), max_size=4),
    members=st.tuples(refs, st.dictionaries(xml_tags, xml_values, max_size=3)),
    bounds=st.none() | st.tuples(numbers, numbers, numbers, numbers),
)
def test_whatever_openstreetmap_xml_holds_the_answer_is_faults(
    tmp_path_factory, places, ways, members, bounds
) -> None:
    """No numbers, references or tags lead to anything but a list of faults."""

    def tagged(found):
        return "".join(f'<tag k="{key}" v="{value}"/>' for key, value in found.items())

    parts = [
        f'<node id="{n}" lat="{lat}" lon="{lon}"><tag k="golf" v="pin"/></node>'
        for n, (lat, lon) in enumerate(places, 1)
    ]
    if bounds:
        parts.insert(0, '<bounds minlat="{}" minlon="{}" maxlat="{}" maxlon="{}"/>'.format(*bounds))
    for number, (nodes, found) in enumerate(ways, 1):
        parts.append(
            f'<way id="{number}">' + "".join(f'<nd ref="{n}"/>' for n in nodes) + tagged(found) + "</way>"
        )
    ways_in = "".join(f'<member type="way" ref="{n}" role="outer"/>' for n in members[0])
    parts.append(f'<relation id="1">{ways_in}{tagged(members[1])}</relation>')
    path = tmp_path_factory.getbasetemp() / "any.osm"
    path.write_text(f'<osm version="0.6">{"".join(parts)}</osm>')
    for fault in check(path):
        assert str(fault)


def test_entities_are_refused_before_they_are_expanded(tmp_path) -> None:
    """A file that defines entities within entities is refused at its document type, not expanded."""
    path = tmp_path / "bomb.osm"
    inner = "".join(f'<!ENTITY e{n} "{f"&e{n - 1};" * 10}">' for n in range(1, 12))
    path.write_text(f'<!DOCTYPE osm [<!ENTITY e0 "golf">{inner}]><osm>&e11;</osm>')
    with pytest.raises(BadCourse, match="declares a document type"):
        load(path)


json_values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=5),
    lambda inner: (
        st.lists(inner, max_size=4) | st.dictionaries(st.sampled_from(["type", "coordinates", "id"]), inner)
    ),
    max_leaves=12,
)
geometries = st.fixed_dictionaries(
    {
        "type": st.sampled_from(
            ["Point", "LineString", "Polygon", "MultiPolygon", "MultiLineString", "MultiPoint"]
        ),
        "coordinates": st.recursive(
            st.floats(-200, 200) | st.none() | st.just("x"),
            lambda inner: st.lists(inner, max_size=4),
            max_leaves=30,
        ),
    }
)
tags = st.dictionaries(
    st.sampled_from(["golf", "marram", "ref", "natural", "par", "holes", "width", "leisure"]),
    st.sampled_from([*GOLF, *OWN, "1", "2;3", "water", "golf_course", "0", "-1", "1e9", "9" * 5000])
    | json_values,
)
features = st.fixed_dictionaries({"properties": tags | json_values, "geometry": geometries | json_values})


@settings(max_examples=60, deadline=None)
@given(found=st.lists(features | json_values, max_size=4))
def test_whatever_the_file_holds_the_answer_is_faults(tmp_path_factory, found) -> None:
    """No content of a FeatureCollection leads to anything but a list of faults."""
    path = tmp_path_factory.getbasetemp() / "any.geojson"
    for fault in check(write(path, [*one_hole(), *found])):
        assert str(fault)


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"[" * 100_000,
        b"\xff\xfe\x00",
        b"null",
        b"<",
        b"\x00" * 99,
        b"<osm>&a;</osm>",
        b"[" + b"9" * 5000 + b"]",
    ],
)
def test_whatever_the_bytes_are_the_answer_is_faults(tmp_path, content) -> None:
    """No bytes lead to anything but a refusal in words."""
    path = tmp_path / "any.file"
    path.write_bytes(content)
    with pytest.raises(BadCourse, match=r"any\.file|document type"):
        load(path)
