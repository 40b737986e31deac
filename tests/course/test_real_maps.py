"""Three real maps, © OpenStreetMap contributors, ODbL 1.0: what an importer must survive."""

import json
import math
from collections import Counter

import pytest
import shapely

from marram.course import area_at, check, load
from marram.course.fault import Severity
from marram.course.lies.areas import Area
from marram.course.lies.doubts import DoubtKind
from marram.course.model import Kind
from marram.errors import BadCourse, BadPlace
from tests.course.real_maps import real_map


def counted(name):
    return Counter((fault.severity, fault.check) for fault in check(real_map(name)))


def test_the_links_is_read_whole() -> None:
    """18 holes in order with pars and greens; 24 greens, 71 tees, 119 bunkers, 25 fairways, 3 red penalty areas."""
    course = load(real_map("links-18.geojson"))
    assert list(course.holes) == list(range(1, 19))
    assert sum(hole.par for hole in course.holes.values()) == 70
    assert all(hole.green is not None and hole.tees for hole in course.holes.values())
    kinds = Counter(feature.kind for feature in course.features)
    assert {
        Kind.PUTTING_GREEN: 24,
        Kind.TEEING_AREA: 71,
        Kind.BUNKER: 119,
        Kind.FAIRWAY: 25,
        Kind.RED_PENALTY_AREA: 3,
        Kind.BOUNDARY: 1,
    }.items() <= kinds.items()
    assert "OpenStreetMap" in course.credit


def test_the_faults_of_the_links() -> None:
    """What is known to be wrong with it is found, and nothing makes it unusable.

    Stroke index 4 stands on two holes and none on hole 3; six greens belong to no hole; of 21 ditches and streams
    four run in tunnels, and one pond is not marked either.
    """
    found = counted("links-18.geojson")
    assert not any(severity is Severity.ERROR for severity, _ in found)
    assert found[Severity.WARNING, "repeated_stroke_index"] == 1
    assert found[Severity.WARNING, "no_stroke_index"] == 1
    assert found[Severity.NOTE, "green_of_no_hole"] == 6
    assert found[Severity.WARNING, "water_without_status"] == 21 - 4 + 1


def test_every_hole_of_the_links_lies_on_its_green_and_starts_on_its_tee() -> None:
    """At each pin a ball is on the putting green, at each start in the teeing area, and on no other hole."""
    course = load(real_map("links-18.geojson"))
    for number, hole in course.holes.items():
        other = number % 18 + 1
        assert area_at(course, hole.location.x, hole.location.y, number).area is Area.PUTTING_GREEN
        assert area_at(course, hole.location.x, hole.location.y, other).wrong_green is hole.green
        start = hole.line.coords[0]
        assert area_at(course, *start, number).area is Area.TEEING_AREA


def test_bare_lines_are_refused_with_all_they_lack() -> None:
    """Nineteen lines without number or par, one of them ending on a green: each is named, with what to add."""
    path = real_map("bare-19-lines.osm")
    with pytest.raises(BadCourse) as refused:
        load(path)
    assert len(refused.value.faults) == 19
    assert all("no hole number (ref)" in fault for fault in refused.value.faults)
    assert sum("it ends on no green" in fault for fault in refused.value.faults) == 18
    assert all("Add ref=<number>" in fault for fault in refused.value.faults)


def test_the_clipped_map_serves_for_the_holes_it_has() -> None:
    """13 holes are read; the missing five are named, asking for one is an error, and no fact is made up."""
    path = real_map("clipped-13.osm")
    course = load(path)
    assert list(course.holes) == [1, 2, 3, *range(9, 19)]
    assert [number for number, hole in course.holes.items() if hole.green is None] == [9, 10, 16, 18]
    faults = {fault.check: fault for fault in check(path)}
    assert "missing: 4, 5, 6, 7, 8" in faults["holes_missing"].what
    assert counted("clipped-13.osm")[Severity.WARNING, "hole_without_green"] == 4
    assert any(
        f.hole == 3 and "par 6 is unusual for 27" in f.what for f in check(path) if f.check == "unusual_par"
    )
    with pytest.raises(BadPlace, match="has no hole 4"):
        area_at(course, 0, 0, 4)


def test_the_clipped_map_says_where_it_cannot_know() -> None:
    """On a hole without a mapped green, and beyond the rectangle the file was cut to, every answer says so."""
    course = load(real_map("clipped-13.osm"))
    ninth = course.hole(9).location
    assert DoubtKind.NO_GREEN in {doubt.kind for doubt in area_at(course, ninth.x, ninth.y, 9).doubts}
    (boundary,) = course.of(Kind.BOUNDARY)
    beyond = boundary.geometry.difference(course.covered).representative_point()
    assert DoubtKind.NOT_COVERED in {doubt.kind for doubt in area_at(course, beyond.x, beyond.y, 1).doubts}


def test_stakes_around_a_real_outline(tmp_path) -> None:
    """Staked at every corner and every 20 m the outline of the links has no stake fault but trees in the way and
    tight corners; each of three stakes pulled, and one moved a metre, is found at its place."""
    document = json.loads(real_map("links-18.geojson").read_text(encoding="utf-8"))
    course = load(real_map("links-18.geojson"))
    (boundary,) = course.of(Kind.BOUNDARY)
    ring = shapely.segmentize(boundary.geometry.exterior, 20)
    places = list(dict.fromkeys(ring.coords))

    def checked(stakes):
        drawn = [
            {
                "type": "Feature",
                "id": f"stake {number}",
                "properties": {"marram": "stake", "colour": "white"},
                "geometry": {"type": "Point", "coordinates": list(course.plane.to_degrees(*place))},
            }
            for number, place in stakes
        ]
        path = tmp_path / "staked.geojson"
        path.write_text(
            json.dumps({**document, "features": [*document["features"], *drawn]}), encoding="utf-8"
        )
        return [fault for fault in check(path) if "stake" in fault.check or "string" in fault.check]

    whole = list(enumerate(places))
    usual = {fault.check for fault in checked(whole)}
    assert usual <= {"string_blocked", "two_next_stakes"}
    straight = [
        number
        for number, here in whole[1:-1]
        if abs(
            math.dist(places[number - 1], here)
            + math.dist(here, places[number + 1])
            - math.dist(places[number - 1], places[number + 1])
        )
        < 1e-6
        and math.dist(places[number - 1], places[number + 1]) > 30
    ]
    pulled = straight[3::20][:3]
    moved = straight[10]
    (x, y), (ahead_x, ahead_y) = places[moved], places[moved + 1]
    length = math.dist((x, y), (ahead_x, ahead_y))
    aside = (x - (ahead_y - y) / length, y + (ahead_x - x) / length)
    found = checked([(n, aside if n == moved else place) for n, place in whole if n not in pulled])
    gaps = [fault for fault in found if fault.check == "stake_gap"]
    assert len(gaps) == 3
    for number, fault in zip(
        pulled,
        sorted(gaps, key=lambda one: min(pulled, key=lambda n: _from(course, one, places[n]))),
        strict=True,
    ):
        assert _from(course, fault, places[number]) < 5
    (off,) = [fault for fault in found if fault.check == "stake_off_edge"]
    assert (off.feature, "1.00 m" in off.what) == (f"stake {moved}", True)


def _from(course, fault, place):
    return math.dist(course.plane.to_metres(fault.longitude, fault.latitude), place)
