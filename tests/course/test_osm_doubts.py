"""Relations whose tags stand at their edge (OpenStreetMap's wiki, "Old style multipolygons"): said, read as drawn."""

import pytest

from marram.course import check, load
from marram.course.model import Kind
from tests.course.drawing import PLANE

BUNKER = {"golf": "bunker"}
EDGE = [(60, 20), (80, 20), (80, 40), (60, 40), (60, 20)]
CUT = [(65, 25), (70, 25), (70, 30), (65, 30), (65, 25)]
BASE = [
    ([(-60, -60), (260, -60), (260, 160), (-60, 160), (-60, -60)], {"marram": "boundary"}),
    ([(0, 0), (150, 0)], {"golf": "hole", "ref": "1", "par": "3"}),
]


def written(tmp_path, tags, *members):
    """Write a map with one relation: its tags, and of each member the role, the line and the tags; ways count from 12."""
    lines = [*BASE, *((line, own) for _, line, own in members)]
    places = {
        place: number for number, place in enumerate(dict.fromkeys(p for line, _ in lines for p in line), 1)
    }
    text = ['<osm version="0.6">']
    for place, number in places.items():
        longitude, latitude = PLANE.to_degrees(*place)
        text.append(f'<node id="{number}" lat="{latitude!r}" lon="{longitude!r}"/>')
    for number, (line, own) in enumerate(lines, 10):
        nodes = "".join(f'<nd ref="{places[place]}"/>' for place in line)
        text.append(f'<way id="{number}">{nodes}{as_tags(own)}</way>')
    ways = "".join(
        f'<member type="way" ref="{number}" role="{role}"/>'
        for number, (role, _, _) in enumerate(members, 12)
    )
    text.append(f'<relation id="9">{ways}{as_tags({"type": "multipolygon", **tags})}</relation></osm>')
    path = tmp_path / "map.osm"
    path.write_text("".join(text))
    return path


def as_tags(tags):
    return "".join(f'<tag k="{key}" v="{value}"/>' for key, value in tags.items())


def doubts(path):
    return [(fault.severity.value, fault.feature) for fault in check(path) if fault.check == "tags_at_edge"]


def test_tags_at_the_edge_alone_leave_the_area_whole_and_it_is_said(tmp_path) -> None:
    """The way is an area of its own, 400 m², and the doubt names it; at the relation the same tags cut 25 m² out."""
    old = written(tmp_path, {"name": "Far bunker"}, ("outer", EDGE, BUNKER), ("inner", CUT, {}))
    assert doubts(old) == [("warning", "way/12")]
    assert load(old).of(Kind.BUNKER)[0].geometry.area == pytest.approx(400, rel=1e-6)
    new = written(tmp_path, BUNKER, ("outer", EDGE, {}), ("inner", CUT, {}))
    assert doubts(new) == []
    assert load(new).of(Kind.BUNKER)[0].geometry.area == pytest.approx(375, rel=1e-6)


def test_tags_at_both_fill_what_was_cut_out_and_it_is_said(tmp_path) -> None:
    """The way with the relation's own tags is named; one that is another thing is nothing to wonder at."""
    both = written(tmp_path, BUNKER, ("outer", EDGE, BUNKER), ("inner", CUT, {}))
    assert doubts(both) == [("warning", "way/12")]
    other = written(tmp_path, {"natural": "wood"}, ("outer", EDGE, {"golf": "rough"}), ("inner", CUT, BUNKER))
    assert doubts(other) == []


def test_pieces_of_an_edge_with_tags_of_their_own_are_each_named(tmp_path) -> None:
    """An edge in two pieces, each with the tags that the relation lacks; scenery is a note."""
    pieces = [("outer", EDGE[:3], {"natural": "wood"}), ("", EDGE[2:], {"natural": "wood"})]
    assert doubts(written(tmp_path, {}, *pieces)) == [("note", "way/12"), ("note", "way/13")]


def test_an_untagged_relation_that_cuts_nothing_out_is_no_doubt(tmp_path) -> None:
    """One closed way alone is the same area with the relation or without it."""
    assert doubts(written(tmp_path, {}, ("outer", EDGE, BUNKER))) == []
