"""Water that is not marked, and the sea beside a coast: penalty areas, read alike by every layer."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, box, shape

from marram.course import area_at, areas_of, check, load
from marram.course.lies.areas import Area, PenaltyColour
from marram.course.lies.coast import seas
from marram.course.lies.doubts import DoubtKind
from marram.course.lies.regions import Ground
from marram.course.lies.water import unmarked_water
from marram.course.mending.draft import accept, read_draft
from marram.course.model import Kind
from tests.course.drawing import BOUNDARY, course, drawn, feature, nine_holes, square, to_degrees, write
from tests.course.every_kind import line


def water(geometry, ident="water", **tags):
    return feature(Kind.WATER, geometry, ident, tags={"natural": "water", **tags})


@pytest.mark.parametrize(
    ("waterway", "width"), [("river", 10.0), ("stream", 2.0), ("ditch", 1.5), ("drain", 1.5), ("canal", 8.0)]
)
def test_a_line_without_a_width_is_as_wide_as_such_water_usually_is_and_says_so(waterway, width) -> None:
    """A ball in mid-stream is in a red penalty area, one just beyond the width assumed is not; both are told."""
    links = course(BOUNDARY, line(Kind.WATER, [(50, -50), (50, 50)], "burn", waterway=waterway))
    for aside, area in (
        (0, Area.PENALTY_AREA),
        (width / 2, Area.PENALTY_AREA),
        (width / 2 + 0.1, Area.GENERAL_AREA),
    ):
        reading = area_at(links, 50 + aside, 0, 1)
        assert reading.area is area
        (said,) = (doubt for doubt in reading.doubts if doubt.kind is DoubtKind.UNMARKED_WATER)
        assert said.stands is (area is Area.PENALTY_AREA)
    assert f"{width:g} m wide" in area_at(links, 50, 0, 1).doubts[0].words


def test_the_width_of_the_map_is_taken_where_it_is_known() -> None:
    """A ditch mapped 4 m wide ends 2 m from its middle."""
    links = course(BOUNDARY, line(Kind.WATER, [(50, -50), (50, 50)], "burn", 4, waterway="ditch"))
    assert area_at(links, 51.9, 0, 1).area is Area.PENALTY_AREA
    assert area_at(links, 52.1, 0, 1).area is Area.GENERAL_AREA


def test_water_that_is_none_says_so_on_the_map() -> None:
    """The Committee's word counts: penalty_area=no."""
    links = course(BOUNDARY, water(square(50, 0, 5), penalty_area="no"))
    assert area_at(links, 50, 0, 1).area is Area.GENERAL_AREA
    assert not unmarked_water(links)


@pytest.mark.parametrize(("colour", "read"), [("yellow", PenaltyColour.YELLOW), ("blue", PenaltyColour.RED)])
def test_a_lake_has_the_colour_that_its_tag_gives(colour, read) -> None:
    """Water that is not marked is yellow where the map says so, and red where it names no colour of a penalty area."""
    links = course(BOUNDARY, water(square(50, 0, 5), colour=colour))
    assert area_at(links, 50, 0, 1).colour is read


def test_a_stream_tagged_yellow_without_a_width_is_yellow() -> None:
    """Red only where no colour is given (Definition of penalty area)."""
    links = course(BOUNDARY, line(Kind.WATER, [(50, -50), (50, 50)], "burn", golf="water_hazard"))
    assert area_at(links, 50, 0, 1).colour is PenaltyColour.YELLOW


def test_only_what_no_marking_covers_is_unmarked() -> None:
    """A lake marked on one side: the rest is red; a strip of half a metre along the marking is loose drawing."""
    marked = feature(Kind.YELLOW_PENALTY_AREA, box(40, -20, 60, 20), "marked")
    links = course(BOUNDARY, marked, water(box(39.5, -15, 90, 15)))
    assert area_at(links, 39.7, 0, 1).area is Area.GENERAL_AREA
    assert area_at(links, 50, 0, 1).colour is PenaltyColour.YELLOW
    assert area_at(links, 80, 0, 1).colour is PenaltyColour.RED


COAST = [(-200, -40), (0, -30), (100, -45), (400, -30)]
"""From west to east, so that the sea lies to the south."""


def test_the_sea_lies_on_the_right_of_the_coastline() -> None:
    """OpenStreetMap's wiki, Tag:natural=coastline: land on the left, water on the right; turned round, it is the land."""
    for places, wet, dry in ((COAST, -70, 0), (COAST[::-1], 0, -70)):
        links = course(line(Kind.WATER, places, "coast", natural="coastline"))
        at_sea = area_at(links, 50, wet, 1)
        assert (at_sea.area, at_sea.colour) == (Area.PENALTY_AREA, PenaltyColour.RED)
        assert [doubt.stands for doubt in at_sea.doubts if doubt.kind is DoubtKind.UNMARKED_WATER] == [True]
        assert area_at(links, 50, dry, 1).area is Area.GENERAL_AREA


def test_a_coast_in_pieces_with_an_island_and_a_lagoon() -> None:
    """Pieces meet end to end in any order; an island runs anticlockwise around land, and no piece is lost."""
    island = [(40, -120), (60, -120), (60, -100), (40, -100), (40, -120)]
    links = course(
        line(Kind.WATER, COAST[2:], "east", natural="coastline"),
        line(Kind.WATER, COAST[:3], "west", natural="coastline"),
        line(Kind.WATER, island, "island", natural="coastline"),
    )
    for place, area in (
        ((50, -70), Area.PENALTY_AREA),
        ((50, -110), Area.GENERAL_AREA),
        ((50, -130), Area.PENALTY_AREA),
        ((50, 0), Area.GENERAL_AREA),
    ):
        assert area_at(links, *place, 1).area is area, place


@settings(max_examples=60, deadline=None)
@given(
    north=st.lists(st.integers(-10, 10), min_size=4, max_size=9),
    places=st.lists(st.tuples(st.integers(-75, 75), st.integers(-75, 75)), min_size=1, max_size=30),
)
def test_a_ball_is_at_sea_exactly_where_it_lies_below_the_coast(north, places) -> None:
    """A coast that is a function of x, from west to east: south of it is sea, by plain interpolation.

    Bunkers in two corners hold the frame within which cells are laid out.
    """
    x = np.linspace(-100, 100, len(north))
    links = course(
        line(Kind.WATER, list(zip(x, north, strict=True)), "coast", natural="coastline"),
        *(feature(Kind.BUNKER, box(at, at, at + 2, at + 2), f"corner {at}") for at in (-78, 76)),
    )
    balls = np.array(places, dtype=float)
    read = areas_of(links, balls, 1)
    shore = LineString(list(zip(x, north, strict=True)))
    for ball, ground in zip(balls, read, strict=True):
        if shore.distance(Point(ball)) > 0.1:
            below = ball[1] < np.interp(ball[0], x, north)
            assert (ground == Ground.RED_PENALTY_AREA) == below
            assert (area_at(links, *ball, 1).area is Area.PENALTY_AREA) == below


def test_a_coast_just_off_the_course_is_read_from_a_file_and_told_once(tmp_path) -> None:
    """A coastline 30 m beyond everything mapped still says where the sea is, and the check says it is not marked."""
    path = write(
        tmp_path / "links.geojson",
        [*nine_holes(), drawn(LineString([(-500, -90), (800, -90)]), "coast", natural="coastline")],
    )
    links = load(path)
    (sea,) = unmarked_water(links)
    assert sea.feature.ident == "coast"
    told = [fault for fault in check(path) if fault.check == "water_without_status"]
    assert [fault.feature for fault in told] == ["coast"]
    east, north = links.plane.to_metres(told[0].longitude, told[0].latitude)
    assert sea.feature.geometry.distance(Point(east, north)) < 1, "at the shore, not out in the sea"


@pytest.mark.parametrize(
    ("tags", "is_water"),
    [
        ({"waterway": "stream"}, True),
        ({"waterway": "ditch", "tunnel": "no"}, True),
        ({"waterway": "stream", "tunnel": "culvert"}, False),
        ({"waterway": "weir"}, False),
        ({"waterway": "dam"}, False),
        ({"natural": "coastline"}, True),
        ({"landuse": "reservoir"}, True),
    ],
)
def test_what_is_open_water(tmp_path, tags, is_water) -> None:
    """Open watercourses and standing water count; what is under the ground, or holds water back, does not."""
    path = write(
        tmp_path / "links.geojson", [*nine_holes(), drawn(LineString([(0, 30), (200, 30)]), "w", **tags)]
    )
    assert bool(load(path).of(Kind.WATER)) is is_water


def test_a_map_without_coast_has_no_sea() -> None:
    """No coastline, no sea."""
    assert seas(course(BOUNDARY), []) == ()


@pytest.mark.parametrize(
    "tags",
    [
        {"natural": "bay"},
        {"natural": "strait"},
        {"landuse": "basin"},
        {"landuse": "reservoir"},
        {"water": "pond"},
        {"waterway": "dock"},
    ],
    ids=str,
)
def test_every_body_of_water_that_is_mapped_counts(tags, tmp_path) -> None:
    """OpenStreetMap's wiki, page "Water": whatever tag says that there is open water, a ball in it is in a penalty area."""
    links = load(
        write(tmp_path / "links.geojson", [*nine_holes(), drawn(square(75, 30, 5), "water", **tags)])
    )
    assert area_at(links, *links.plane.inward(middle_of(75, 30)).coords[0], 1).area is Area.PENALTY_AREA


@pytest.mark.parametrize(
    "tags", [{"waterway": "weir"}, {"waterway": "dam"}, {"leisure": "swimming_pool"}], ids=str
)
def test_what_is_no_open_water_does_not(tags, tmp_path) -> None:
    """A dam, a weir and a pool are no body of water that the Definition of penalty area names."""
    links = load(
        write(tmp_path / "links.geojson", [*nine_holes(), drawn(square(75, 30, 5), "water", **tags)])
    )
    assert area_at(links, *links.plane.inward(middle_of(75, 30)).coords[0], 1).area is Area.GENERAL_AREA


def test_where_nothing_says_how_far_the_course_reaches_water_beside_it_counts(tmp_path) -> None:
    """Without outline and boundary a lake 60 m beyond all that is mapped for golf is read; with a boundary it is out of bounds."""
    lake = drawn(square(-120, 300, 20), "lake", natural="water")
    golf = [one for one in nine_holes() if one["id"] != "boundary"]
    open_links = load(write(tmp_path / "links.geojson", [*golf, lake]))
    in_lake = open_links.plane.inward(middle_of(-120, 300)).coords[0]
    assert area_at(open_links, *in_lake, 1).area is Area.PENALTY_AREA
    bounded = load(write(tmp_path / "links.geojson", [*nine_holes(), lake]))
    assert area_at(bounded, *bounded.plane.inward(middle_of(-120, 300)).coords[0], 1).area is None


def test_water_inside_the_boundary_but_outside_the_outline_counts(tmp_path) -> None:
    """The outline of the property may be drawn tighter than the boundary: what lies inside the boundary is on the course."""
    outline = drawn(box(-30, 30, 200, 600), "outline", leisure="golf_course", name="Links")
    lake = drawn(square(-45, 300, 8), "lake", natural="water")
    links = load(write(tmp_path / "links.geojson", [*nine_holes(), outline, lake]))
    assert area_at(links, *links.plane.inward(middle_of(-45, 300)).coords[0], 1).area is Area.PENALTY_AREA


def middle_of(x, y):
    return shape(to_degrees(Point(x, y)))


def test_the_sea_has_no_width() -> None:
    """A coastline is an edge: nothing is said of how wide it is taken."""
    links = course(line(Kind.WATER, COAST, "coast", natural="coastline"))
    (said,) = (one for one in area_at(links, 50, -70, 1).doubts if one.kind is DoubtKind.UNMARKED_WATER)
    assert "wide" not in said.words


def test_a_coast_that_puts_the_holes_into_the_sea_is_told_and_turned(tmp_path) -> None:
    """Drawn in two pieces the wrong way round: one fault, one proposal, and the holes lie on the land."""
    shore = [(x, -100) for x in range(-500, 900, 100)]
    west, east = (
        drawn(LineString(part[::-1]), ident, natural="coastline")
        for part, ident in ((shore[:8], "west"), (shore[7:], "east"))
    )
    golf = [one for one in nine_holes() if one["id"] != "boundary"]
    draft = read_draft(write(tmp_path / "links.geojson", [*golf, west, east]))
    (proposal,) = (one for one in draft.proposals if one.fault.check == "coast_backwards")
    assert {edit.ident for edit in proposal.choices[0].edits} == {"west", "east"}
    turned = accept(draft, proposal.choices[0])
    assert "coast_backwards" not in {fault.check for fault in turned.faults}
    hole = turned.course.hole(5)
    assert area_at(turned.course, hole.location.x, hole.location.y, 5).area is Area.PUTTING_GREEN
