"""Outlines that cross, spikes and coordinates written another way: what is proposed for them, and the map afterwards."""

import json
from pathlib import Path

import pytest
from shapely.geometry import shape

from marram.course import load
from marram.course.mending.draft import accept, draft_of
from marram.demo import COURSE
from marram.errors import BadCourse
from tests.course.drawing import drawn, square
from tests.course.mending.broken import BREAKS, document, features
from tests.course.mending.proposing import after, broken, opened, proposal

BAD = Path(__file__).parents[2] / "bad" / "course"


def test_a_bow_tie_is_to_be_chosen_and_what_is_dropped_is_said() -> None:
    """Both parts, or one of them: three choices with their sizes, the part dropped named."""
    found = proposal(broken(("invalid_geometry", 4)), "invalid_geometry")
    assert [choice.words for choice in found.choices] == [
        "Keep both parts",
        "Keep only the part of 100 m²",
        "Keep only the part of 100 m²",
    ]
    assert found.choices[1].said == ("100 m² are dropped",)


def test_a_spike_is_dropped_and_said() -> None:
    """An edge that runs out and back encloses nothing there: one choice, the length of the spike said."""
    draft = broken(("invalid_geometry spike", 4))
    (choice,) = proposal(draft, "invalid_geometry").choices
    assert choice.said[0].endswith("encloses nothing are dropped")
    green = accept(draft, choice).course.hole(4).green
    assert green.geometry.area == pytest.approx(400, rel=0.001)


def test_what_is_proposed_holds_the_positions_that_were_drawn() -> None:
    """Closing a ring moves no position: the drawn ones stay as they are, to the last decimal."""
    draft = broken(("open_ring", 4))
    before = next(one for one in draft.document["features"] if one["id"] == "green 4")["geometry"][
        "coordinates"
    ][0]
    (choice,) = proposal(draft, "open_ring").choices
    assert after(accept(draft, choice), "green 4")["geometry"]["coordinates"][0] == [*before, before[0]]


def test_an_edge_closed_into_a_crossing_is_untangled_at_once() -> None:
    """A ring that crosses itself once it is closed is proposed closed and untangled."""
    found = features()
    BREAKS["invalid_geometry"](found, 4)
    BREAKS["open_ring"](found, 4)
    draft = draft_of(document(found))
    choice = proposal(draft, "open_ring").choices[0]
    assert choice.words == "Close it, then keep both parts"
    assert accept(draft, choice).usable


def test_a_map_written_latitude_first_is_proposed_to_be_swapped() -> None:
    """Longitude and latitude swapped throughout: told, and swapped back by one proposal."""
    found = features()
    for number in range(1, 10):
        # 300 m to the east: a par 4; read as latitude it would be 477 m and no par 3 or 4.
        found[f"line {number}"]["geometry"]["coordinates"][1][0] = 3.0 + 300 / 70_197
        found[f"line {number}"]["properties"]["par"] = "4"
        del found[f"green {number}"], found[f"pin {number}"]
    right = draft_of(document(found))
    assert not [fault for fault in right.faults if fault.check == "perhaps_swapped"]

    def swapped(value):
        return value[::-1] if isinstance(value[0], float) else [swapped(one) for one in value]

    for one in found.values():
        one["geometry"]["coordinates"] = swapped(one["geometry"]["coordinates"])
    draft = draft_of(document(found))
    found_again = accept(draft, proposal(draft, "perhaps_swapped").choices[0])
    assert found_again.course.plane.latitude == pytest.approx(51, abs=0.01)


def test_the_demo_course_written_latitude_first_is_told_and_swapped_back() -> None:
    """Four holes of eighteen have no longer the length of their par, and every green is longer from north to south."""
    found = json.loads(COURSE.read_text(encoding="utf-8"))
    assert "perhaps_swapped" not in {fault.check for fault in draft_of(found).faults}

    def swapped(value):
        return value[::-1] if isinstance(value[0], float) else [swapped(one) for one in value]

    for one in found["features"]:
        one["geometry"]["coordinates"] = swapped(one["geometry"]["coordinates"])
        one["properties"].pop("par", None)
    draft = draft_of(found)
    right = accept(draft, proposal(draft, "perhaps_swapped").choices[0])
    assert right.course.plane.latitude == pytest.approx(55, abs=0.1)
    assert "perhaps_swapped" not in {fault.check for fault in right.faults}


def test_whoever_has_looked_can_say_that_a_map_is_right_as_it_stands(tmp_path) -> None:
    """A course that only looks swapped is refused until it is said that it lies there; then it opens, where it is."""
    path = tmp_path / "map.geojson"
    path.write_bytes((BAD / "perhaps_swapped.geojson").read_bytes())
    with pytest.raises(BadCourse, match=r"positions=longitude_latitude"):
        load(path)
    draft = draft_of(json.loads(path.read_text(encoding="utf-8")))
    there = proposal(draft, "perhaps_swapped").choices[1]
    assert len(there.edits) == 1
    path.write_text(json.dumps(accept(draft, there).document), encoding="utf-8")
    assert load(path).plane == draft.course.plane


@pytest.mark.parametrize(
    "crs", ["EPSG:25831", {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25831"}}]
)
def test_another_coordinate_system_is_computed(crs, tmp_path) -> None:
    """UTM zone 31 named as text or as an object: computed to WGS 84, within 2 cm of the map it was made from."""
    from pyproj import Transformer

    to_utm = Transformer.from_crs("EPSG:4326", "EPSG:25831", always_xy=True)

    def each(value):
        return list(to_utm.transform(*value)) if isinstance(value[0], float) else [each(one) for one in value]

    found = features()
    places = {ident: shape(one["geometry"]) for ident, one in found.items()}
    for one in found.values():
        one["geometry"]["coordinates"] = each(one["geometry"]["coordinates"])
    draft = draft_of(document(found, crs=crs))
    assert [fault.check for fault in draft.errors] == ["not_wgs84"]
    mended_map = accept(draft, proposal(draft, "not_wgs84").choices[0])
    opened(mended_map, tmp_path)
    for one in mended_map.document["features"]:
        assert shape(one["geometry"]).equals_exact(places[one["id"]], 2e-7)


def test_a_crs_that_is_a_link_is_refused_with_its_reason() -> None:
    """A link is not followed; positions that are degrees already can be taken as such, when asked."""
    draft = draft_of(
        document(features(), crs={"type": "link", "properties": {"href": "https://example.org/crs"}})
    )
    assert "(https://example.org/crs), which is not followed" in str(draft.errors[0])
    found = proposal(draft, "not_wgs84")
    assert [choice.words for choice in found.choices] == ["Take its positions as WGS 84 degrees"]
    assert accept(draft, found.choices[0]).usable


def test_a_practice_green_stays_one() -> None:
    """A green of no hole is asked for; told to be a practice green, it is not asked for again."""
    found = features(drawn(square(200, 300, 8), "spare", golf="green"))
    draft = draft_of(document(found))
    choice = next(one for one in proposal(draft, "green_of_no_hole").choices if "practice" in one.words)
    assert accept(draft, choice).faults == ()
