"""Walls, fences and wetlands without a status: read alike everywhere, asked about once, never guessed.

Definitions of obstruction, boundary object, integral object, penalty area and temporary water (Rules of Golf 2019 and 2023):
what stands there artificially is one of three things, which the Committee tells; ground that is merely wet is neither a
body of water nor temporary water.
"""

import pytest
from shapely.geometry import LineString, Point, box

from marram.course import check, load
from marram.course.lies.areas import Area, area_at
from marram.course.lies.as_read import as_read
from marram.course.lies.doubts import DoubtKind
from marram.course.mending.draft import accept, read_draft
from marram.course.model import Kind
from marram.relief.place.place_facts import place_facts
from tests.course.drawing import PLANE, drawn, nine_holes, write

WALL = LineString([(60, 660 - 90), (60, 600)])


def opened(tmp_path, *features):
    return load(write(tmp_path / "map.geojson", [*nine_holes(), *features]))


def place(links, x, y):
    """A place of the drawing in metres of the map that was made of it."""
    return links.plane.to_metres(*PLANE.to_degrees(x, y))


def read(links, x, y):
    return area_at(links, *place(links, x, y), 9)


def checks(tmp_path, *features):
    path = write(tmp_path / "map.geojson", [*nine_holes(), *features])
    return [fault for fault in check(path) if fault.check.endswith("without_status")]


@pytest.mark.parametrize("value", ["wall", "fence", "retaining_wall", "kerb", "gate", "guard_rail", "yes"])
def test_what_stands_there_is_asked_about_and_read_as_nothing_else(tmp_path, value):
    """A barrier that nobody has told about is no obstruction: a doubt beside it asks, and no fact is handed over."""
    shape = Point(60, 590) if value == "gate" else WALL
    links = opened(tmp_path, drawn(shape, "it", barrier=value))
    ball = place(links, 60.0, 590.0)
    reading = area_at(links, *ball, 9)
    assert (reading.area, reading.conditions) == (Area.GENERAL_AREA, ())
    assert [doubt.kind for doubt in reading.doubts] == [DoubtKind.BARRIER_WITHOUT_STATUS]
    told = place_facts(links, links.holes[9], ball)
    assert told.facts["area_of_ball"] == "general_area"
    assert not {"interference", "in_the_way"} & told.facts.keys()
    assert [fault.check for fault in checks(tmp_path, drawn(shape, "it", barrier=value))] == [
        "barrier_without_status"
    ]
    (ground,) = (shape for _, shape in as_read(links, Kind.BARRIER))
    assert ground.area > 0
    assert ground.covers(Point(ball))


@pytest.mark.parametrize(
    ("tags", "kind"),
    [
        ({"marram": "obstruction"}, Kind.OBSTRUCTION),
        ({"marram": "integral_object"}, Kind.INTEGRAL_OBJECT),
        ({"marram": "marking", "marked_by": "wall"}, Kind.MARKING),
    ],
)
def test_a_told_status_settles_it(tmp_path, tags, kind):
    """What the map tells is not asked again: only the obstruction is a condition that relief is taken from."""
    links = opened(tmp_path, drawn(WALL, "it", barrier="wall", **tags))
    assert [one.kind for one in links.features if one.ident == "it"] == [kind]
    reading = read(links, 60.0, 590.0)
    assert [one.kind for one in reading.conditions] == ([kind] if kind is Kind.OBSTRUCTION else [])
    assert DoubtKind.BARRIER_WITHOUT_STATUS not in {doubt.kind for doubt in reading.doubts}
    assert checks(tmp_path, drawn(WALL, "it", barrier="wall", **tags)) == []


def test_what_grows_or_holds_water_is_no_such_thing(tmp_path):
    """A hedge grows and is no obstruction; a ditch is an open watercourse, so a penalty area (Definitions)."""
    hedge, ditch = drawn(WALL, "hedge", barrier="hedge"), drawn(WALL, "ditch", barrier="ditch")
    assert checks(tmp_path, hedge) == []
    assert [one.kind for one in opened(tmp_path, hedge).features if one.ident == "hedge"] == [Kind.TREES]
    assert read(opened(tmp_path, ditch), 60.0, 590.0).area is Area.PENALTY_AREA


@pytest.mark.parametrize("told", [{}, {"marram": "obstruction"}])
def test_ground_inside_a_fence_is_not_the_fence(tmp_path, told):
    """A fence drawn as the field it encloses stands around it, told what it is or not; a thick wall is itself."""
    links = opened(tmp_path, drawn(box(40, 570, 80, 600), "field", barrier="fence", **told))
    assert read(links, 60.0, 585.0).certain
    on_it = read(links, 40.0, 585.0)
    assert bool(on_it.conditions) is bool(told)
    assert on_it.certain is False
    thick = opened(tmp_path, drawn(box(40, 570, 42, 600), "thick", barrier="wall", **told))
    (one,) = (one for one in thick.features if one.ident == "thick")
    assert one.geometry.geom_type == "Polygon"


def test_a_wall_in_pieces_is_asked_about_once(tmp_path):
    """Pieces that meet end to end are one wall, and one question."""
    pieces = [LineString([(x, 590), (x + 10, 590)]) for x in (40, 50, 60)]
    found = checks(tmp_path, *(drawn(one, f"piece {i}", barrier="wall") for i, one in enumerate(pieces)))
    assert [fault.feature for fault in found] == ["piece 0"]


def test_a_wetland_leaves_open_which_area_a_ball_lies_in(tmp_path):
    """In a wetland and within 5 m of it the area is asked; told to be only wet, or a penalty area, it is known."""
    marsh = box(40, 570, 80, 600)
    links = opened(tmp_path, drawn(marsh, "marsh", natural="wetland"))
    hole = links.holes[9]
    for y, asked in ((590.0, True), (603.0, True), (610.0, False)):
        told = place_facts(links, hole, place(links, 60.0, y))
        assert ("area_of_ball" not in told.facts) is asked
        assert any("wetland" in doubt for doubt in told.doubts) is asked
    wet = opened(tmp_path, drawn(marsh, "marsh", natural="wetland", penalty_area="no"))
    assert place_facts(wet, wet.holes[9], place(wet, 60.0, 590.0)).facts["area_of_ball"] == "general_area"
    red = opened(tmp_path, drawn(marsh, "marsh", natural="wetland", golf="lateral_water_hazard"))
    assert place_facts(red, red.holes[9], place(red, 60.0, 590.0)).facts["area_of_ball"] == "penalty_area"
    assert [one.check for one in checks(tmp_path, drawn(marsh, "m", natural="wetland"))] == [
        "wetland_without_status"
    ]
    assert checks(tmp_path, drawn(marsh, "m", natural="wetland", penalty_area="no")) == []


def test_a_wetland_inside_a_penalty_area_is_that_penalty_area(tmp_path):
    """Reeds inside the marked edge are not asked about; what reaches beyond it is."""
    reeds, edge = box(50, 575, 70, 595), box(40, 570, 80, 600)
    marked = drawn(edge, "edge", golf="lateral_water_hazard")
    assert checks(tmp_path, marked, drawn(reeds, "reeds", natural="wetland")) == []
    wide = drawn(box(50, 575, 120, 595), "reeds", natural="wetland")
    assert [one.check for one in checks(tmp_path, marked, wide)] == ["wetland_without_status"]


def test_one_answer_settles_all_walls_of_a_sort(tmp_path):
    """Mending asks once for every wall on the map, and apart from it for the fence; accepted, nothing is left to ask."""
    walls = [drawn(LineString([(x, 590), (x, 600)]), f"wall {x}", barrier="wall") for x in (30, 60, 90)]
    fence = drawn(LineString([(120, 590), (120, 600)]), "fence", barrier="fence")
    path = write(tmp_path / "map.geojson", [*nine_holes(), *walls, fence])
    draft = read_draft(path)
    asked = [one for one in draft.proposals if one.mending == "settle_barrier"]
    assert [(one.fault.feature, len(one.choices), len(one.also)) for one in asked] == [
        ("wall 30", 6, 2),
        ("fence", 3, 0),
    ]
    draft = accept(draft, asked[0].choices[0])
    (left,) = (one for one in draft.proposals if one.mending == "settle_barrier")
    draft = accept(draft, left.choices[2])
    kinds = {one.ident: one.kind for one in draft.course.features}
    assert [kinds[f"wall {x}"] for x in (30, 60, 90)] == [Kind.OBSTRUCTION] * 3
    assert kinds["fence"] is Kind.INTEGRAL_OBJECT
    assert not any(fault.check == "barrier_without_status" for fault in draft.faults)
