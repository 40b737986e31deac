"""The course as the map on the screen draws it: what is joined on the ground has no seam."""

from dataclasses import replace
from datetime import date

from marram.course.mending.draft import draft_of
from marram.course.model import Kind
from marram.desk.holes.hole_setting import HoleSetting
from marram.desk.shell.map_drawing import course_drawing
from marram.desk.shell.map_parts import WHOLE, MapParts
from marram.paper.marking_drawing import FILLS, marking_svg
from marram.services.offline.course_map import offline_map
from tests.course.drawing import drawn, nine_holes, one_hole, square
from tests.course.mending.broken import around


def drawn_with(*more):
    course = draft_of({"type": "FeatureCollection", "features": [*one_hole(1), around(), *more]}).course
    return course, course_drawing(course)["features"]


def of_kind(features, kind):
    return [one for one in features if one["properties"]["kind"] == kind]


def test_two_areas_that_share_a_side_are_drawn_as_one() -> None:
    """Penalty areas, bunkers, fairways in two squares: one outline each of five places, with name and holes of both."""
    kinds = {"red_penalty_area": "lateral_water_hazard", "bunker": "bunker", "fairway": "fairway"}
    for row, (kind, golf) in enumerate(kinds.items()):
        west, east = square(60, 60 + 30 * row, 5), square(70, 60 + 30 * row, 5)
        _, features = drawn_with(
            drawn(west, "west", golf=golf, holes="2"), drawn(east, "east", golf=golf, name="Both", holes="1")
        )
        (only,) = of_kind(features, kind)
        assert only["geometry"]["type"] == "Polygon"
        (ring,) = only["geometry"]["coordinates"]
        assert ring[0] == ring[-1]
        assert (only["properties"]["name"], only["properties"]["holes"]) == ("Both", [1, 2])


def test_greens_of_different_holes_stay_two() -> None:
    """Two greens side by side of two holes: which is the wrong green matters, so each keeps its edge."""
    beside = [drawn(square(60 + 10 * n, 30, 5), f"beside {n}", golf="green", ref=f"{n}") for n in (1, 2)]
    course = draft_of({"type": "FeatureCollection", "features": [*nine_holes(), *beside]}).course
    assert len(of_kind(course_drawing(course)["features"], "putting_green")) == 9 + 2


def test_the_parts_of_the_drawing_hold_the_same_areas() -> None:
    """The part a phone shows first and the whole drawn finely have no seam either."""
    course, features = drawn_with(
        drawn(square(60, 60, 5), "west", golf="bunker"), drawn(square(70, 60, 5), "east", golf="bunker")
    )
    parts = MapParts(course)
    for name in ("overview", "hole-1", WHOLE):
        assert parts.part(name).count(b'"kind":"bunker"') == 1
    assert len(of_kind(features, "bunker")) == 1


def test_marking_sheet_hole_pictures_and_phone_have_no_seam_either() -> None:
    """Two bunkers that share a side are one outline on every drawing made from the map."""
    course, _ = drawn_with(
        drawn(square(60, 60, 5), "west", golf="bunker"), drawn(square(70, 60, 5), "east", golf="bunker")
    )
    assert marking_svg(course, {}).count(f'fill="{FILLS[Kind.BUNKER][0]}"') == 1
    assert [kind for kind, *_ in offline_map(course)["drawn"]].count("bunker") == 1
    hole = course.holes[1]
    green = replace(hole.green, geometry=course.of(Kind.BUNKER)[0].geometry.buffer(4))
    setting = HoleSetting(
        replace(course, holes={1: replace(hole, green=green)}), date(2025, 6, 21), None, None
    )
    assert [one["kind"] for one in setting.drawn(1)["around"]].count("bunker") == 1
