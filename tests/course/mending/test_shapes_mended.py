"""Shapes that are broken in more than one place, and collections: every way to mend them, and what each keeps."""

from shapely.geometry import LineString, shape

from marram.course.mending.draft import accept, draft_of
from tests.course.drawing import drawn, square
from tests.course.mending.broken import document, features
from tests.course.mending.proposing import after, proposal

CLEAR = 75.0
"""Metres along a hole where nothing else is drawn."""


def with_thing(geometry, **tags):
    """Return nine faultless holes and one thing more, whose geometry is given as it is written."""
    thing = {"type": "Feature", "id": "thing", "properties": tags or {"golf": "bunker"}, "geometry": geometry}
    return draft_of(document({**features(), "thing": thing}))


def ring(*places):
    """Return positions on the fourth hole as written in a map: metres from its middle."""
    return [
        list(at)
        for at in drawn(LineString([(CLEAR + x, 240.0 + y) for x, y in places]))["geometry"]["coordinates"]
    ]


def kept(draft, choice):
    """Return the geometry of the thing once a choice is accepted."""
    return shape(after(accept(draft, choice), "thing")["geometry"])


ZIGZAG = [(0, 0), (4, 4), (8, 0), (12, 4), (12, 0), (8, 4), (4, 0), (0, 4), (0, 0)]
"""An edge that crosses itself three times: four areas."""


def test_an_edge_that_crosses_itself_often_leaves_the_choice_of_its_parts() -> None:
    """All its parts, or one of the two largest alone: each valid, and what is dropped is said."""
    draft = with_thing({"type": "Polygon", "coordinates": [ring(*ZIGZAG)]})
    found = proposal(draft, "invalid_geometry")
    words = [choice.words for choice in found.choices]

    assert words[0].startswith("Keep all ")
    assert sum(one.startswith("Keep only the part of") for one in words) >= 2
    whole = kept(draft, found.choices[0])
    assert whole.is_valid
    assert len(whole.geoms) > 2
    single = next(choice for choice in found.choices if choice.words.startswith("Keep only"))
    assert kept(draft, single).geom_type == "Polygon"
    assert any("dropped" in one for one in single.said)


def test_an_open_edge_that_crosses_itself_is_closed_and_untangled() -> None:
    """Both steps are one choice, and the width of the gap is told."""
    draft = with_thing({"type": "Polygon", "coordinates": [ring((0, 0), (9, 9), (9, 0), (0, 7))]})
    found = proposal(draft, "open_ring")

    assert "7.0 m apart" in found.why
    assert "crosses itself" in found.why
    assert all(choice.words.startswith("Close it, then ") for choice in found.choices)
    assert all(kept(draft, choice).is_valid for choice in found.choices)


def test_each_open_part_of_several_is_closed() -> None:
    """An area of two parts, one of them left open: both stay, closed."""
    first, second = (
        ring((x, 0), (x + 6, 0), (x + 6, 6), (x, 6), *end) for x, end in ((-20, []), (0, [(0, 0)]))
    )
    draft = with_thing({"type": "MultiPolygon", "coordinates": [[first], [second]]})
    made = kept(draft, proposal(draft, "open_ring").choices[0])

    assert made.is_valid
    assert [len(part.exterior.coords) for part in made.geoms] == [5, 5]


def test_lines_in_pieces_are_led_round_an_area() -> None:
    """Three lines drawn in no order and both directions: the ring goes from each to the nearest end of another."""
    pieces = [ring((0, 0), (8, 0)), ring((0, 8), (0, 1)), ring((9, 8), (9, 1)), ring((1, 9), (8, 9))]
    draft = with_thing({"type": "MultiLineString", "coordinates": pieces})
    found = proposal(draft, "open_ring")
    made = kept(draft, found.choices[0])

    assert made.geom_type == "Polygon"
    assert made.is_valid
    assert len(made.exterior.coords) == 9
    assert "2.2 m apart" not in found.why
    assert "1.4 m apart" in found.why


def test_a_collection_is_drawn_as_its_areas_and_the_rest_is_told() -> None:
    """Two areas, a line, a point and something unreadable: an area keeps the areas, three parts are dropped."""
    members = [
        {"type": "Polygon", "coordinates": [ring((0, 0), (4, 0), (4, 4), (0, 4), (0, 0))]},
        {"type": "Polygon", "coordinates": [ring((9, 0), (12, 0), (12, 3), (9, 3), (9, 0))]},
        {"type": "LineString", "coordinates": ring((0, 9), (5, 9))},
        {"type": "Point", "coordinates": ring((0, 0), (1, 1))[0]},
        {"type": "Blob", "coordinates": []},
    ]
    draft = with_thing({"type": "GeometryCollection", "geometries": members})
    (choice,) = proposal(draft, "no_geometry").choices

    assert choice.words == "Draw it as its 2 areas"
    assert choice.said == ("3 other parts of the collection are dropped",)
    assert len(kept(draft, choice).geoms) == 2


def test_a_collection_that_may_be_a_line_or_a_point_is_asked_about() -> None:
    """A path is a line or an area: each is a choice, and neither is taken unasked."""
    members = [
        {"type": "Polygon", "coordinates": [ring((0, 0), (4, 0), (4, 4), (0, 4), (0, 0))]},
        {"type": "LineString", "coordinates": ring((0, 9), (5, 9))},
    ]
    draft = with_thing({"type": "GeometryCollection", "geometries": members}, highway="path")
    choices = proposal(draft, "no_geometry").choices

    assert {kept(draft, choice).geom_type for choice in choices} >= {"Polygon", "LineString"}


def test_a_tangled_area_in_a_collection_is_untangled() -> None:
    """The one area of a collection crosses itself: its ways apart are offered at once."""
    members = [{"type": "Polygon", "coordinates": [ring((0, 0), (6, 6), (6, 0), (0, 6), (0, 0))]}]
    draft = with_thing({"type": "GeometryCollection", "geometries": members})
    choices = proposal(draft, "no_geometry").choices

    assert len(choices) > 1
    assert all(kept(draft, choice).is_valid for choice in choices)


def test_a_boundary_with_two_gaps_is_closed_at_both() -> None:
    """Four ends of two lines: each is led on to the nearest end of the other line, not back to its own."""
    found = features()
    west = LineString([(100, -60), (-60, -60), (-60, 660), (100, 660)])
    east = LineString([(130, -60), (260, -60), (260, 660), (130, 660)])
    found["boundary"] = drawn(west, "boundary", marram="boundary")
    found["boundary east"] = drawn(east, "boundary east", marram="boundary")
    draft = draft_of(document(found))
    choice = next(one for one in draft.proposals if one.mending == "close_boundary").choices[0]

    assert len(choice.edits) == 2
    assert choice.said == ("a straight line of 30.0 m",) * 2
    assert accept(draft, choice).usable


def test_a_boundary_with_a_wide_gap_is_left_open() -> None:
    """More than a hundred metres are not bridged by a straight line that nobody saw."""
    found = features()
    line = LineString([(-60, -60), (260, -60), (260, 660), (-60, 660), (-60, 60)])
    found["boundary"] = drawn(line, "boundary", marram="boundary")
    draft = draft_of(document(found))

    assert "boundary_gap" in {fault.check for fault in draft.faults}
    assert not [one for one in draft.proposals if one.mending == "close_boundary"]


def test_an_area_across_the_boundary_is_cut_kept_or_taken_away() -> None:
    """Cut at the edge, the edge led round it, or gone: three choices, each leaving a map without that fault."""
    found = features()
    found["outside"] = drawn(square(260, 240, 8), "outside", golf="bunker")
    draft = draft_of(document(found))
    asked = proposal(draft, "area_outside")

    assert len(asked.choices) == 3
    for choice in asked.choices:
        assert "area_outside" not in {fault.check for fault in accept(draft, choice).faults}, choice.words


def test_an_area_wholly_beyond_the_boundary_is_not_cut_to_nothing() -> None:
    """Nothing of it would be left: the boundary is led round it, or it is taken off the map."""
    found = features()
    found["outside"] = drawn(square(300, 240, 8), "outside", golf="bunker")
    asked = proposal(draft_of(document(found)), "area_outside")
    assert [choice.words for choice in asked.choices] == ["Lead the boundary round it", "Take it off the map"]


def test_rings_cut_out_of_themselves_have_each_a_proposal() -> None:
    """Greens whose edge is given twice, as outer and as inner ring: some enclose nothing, to the last digit."""
    found = features()
    greens = [one for one in found.values() if one["properties"].get("golf") == "green"]
    for green in greens:
        green["geometry"]["coordinates"] *= 2
    draft = draft_of(document(found))
    proposed = {one.fault.feature for one in draft.proposals if one.fault.check == "invalid_geometry"}
    assert proposed == {green["id"] for green in greens}
    assert len(proposed) == 9
