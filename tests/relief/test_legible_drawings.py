"""Drawings read at arm's length: labels at their own marks, off the areas; one page for several options."""

import re
from dataclasses import replace
from itertools import combinations
from math import hypot
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, box

from marram.course.model import Course, Feature, Kind
from marram.desk.shell.assets import DESK
from marram.relief import Situation, relief_areas, svg
from marram.relief.geometry.outline import Outline
from marram.relief.pictures.labels import Box, place_labels
from marram.relief.pictures.north_and_scale import freest
from marram.relief.pictures.sheet import sheet_svg
from marram.relief.pictures.styles import EDGES, FILLS, GROUND, PATTERNS
from marram.relief.pictures.view import view_of
from tests.desk.styles import contrast
from tests.relief.ground_for_tests import (
    FREE_GREEN,
    IN_2023,
    LATERAL_PENALTY_AREA,
    LINE_IN_BUNKER_2023,
    PLAYER,
    STROKE_AND_DISTANCE,
    TWO_POINTS,
    course_at,
)
from tests.relief.test_drawing import CASES, COURSE, SVG, areas
from tests.relief.test_two_points_on_any_map import fairway, hole_with

SIDE = 390.0
NAMES = ("ball", "fairway point", "hole 98 m", "spot", "edge")
places = st.tuples(st.floats(40, 350), st.floats(40, 350)).map(lambda at: (round(at[0], 1), round(at[1], 1)))


def texts(drawn):
    return [one.text for one in ET.fromstring(drawn).iter(f"{SVG}text")]


@settings(deadline=None)
@given(st.lists(places, min_size=2, max_size=5, unique=True), st.tuples(places, st.floats(5, 120)))
def test_no_label_covers_an_area_or_another_label_or_stands_at_another_mark(anchors, disc):
    """Wherever marks and the area lie: labels are apart, off the area, and read as belonging to their own mark."""
    area = Point(disc[0]).buffer(disc[1])
    wanted = [(name, at) for name, at in zip(NAMES, anchors, strict=False)]
    labels = place_labels(wanted, SIDE, [], [area])

    for one, other in combinations(labels, 2):
        assert not one.box.overlaps(other.box)
    for label in labels:
        shape = box(label.box.left, label.box.top, label.box.right, label.box.bottom)
        assert not shape.intersects(area)
        others = [at for name, at in wanted if name != label.text]
        if not label.leader:
            assert all(label.box.away(label.anchor) < label.box.away(at) for at in others)


@pytest.mark.parametrize("away", [60.0, 150.0, 500.0, 900.0])
def test_the_points_of_the_alternative_are_told_apart_at_any_distance(away):
    """On a map without a boundary the two points stay well apart in the picture, which says that it is cut."""
    where = hole_with(fairway())
    (answer,) = relief_areas(
        Situation(where, 1, ball=(50.0, 200.0 - away), played_on=IN_2023, player=PLAYER), [TWO_POINTS]
    )
    (area,) = answer.areas
    view = view_of(answer.areas, SIDE)
    points = {mark.role.value: view.at(mark.at) for mark in area.construction if hasattr(mark, "at")}
    drawn = texts(svg(answer.areas, where))

    assert hypot(*(a - b for a, b in zip(points["ball"], points["fairway_point"], strict=True))) > 30
    assert {"ball", "fairway point"} <= set(drawn)
    assert "The area goes on beyond this picture." in drawn


def test_where_a_tee_is_used_the_point_is_named_by_it():
    """A ball nearer the tee than any fairway: the drawing and its distances say "point on the tee", not "fairway point"."""
    tee = Feature(Kind.TEEING_AREA, "tee", box(-5, -5, 5, 5), holes=(1,))
    made = hole_with(tee, fairway(box(-10, 40, 10, 150)))
    where = replace(made, holes={1: replace(made.holes[1], tees=(tee,))})
    (answer,) = relief_areas(
        Situation(where, 1, ball=(30.0, 5.0), played_on=IN_2023, player=PLAYER), [TWO_POINTS]
    )
    drawn = texts(svg(answer.areas, where))

    assert "relief.teeing_area_used_as_fairway" in answer.areas[0].assumed
    assert "point on the tee" in drawn
    assert not any("fairway point" in one for one in drawn)


def test_a_strip_too_narrow_for_a_ball_says_so_and_is_not_called_nothing():
    """Between a penalty area and ground out of bounds 15 mm are left: the area is drawn, with "hardly any room"."""
    red = Feature(Kind.RED_PENALTY_AREA, "red", box(0, 90, 20, 110))
    out = Feature(Kind.OUT_OF_BOUNDS, "out", box(-30, 60, -0.015, 140))
    where = hole_with(red, out)
    (answer,) = relief_areas(
        Situation(where, 1, entry=(0.0, 100.0), played_on=IN_2023, player=PLAYER), [LATERAL_PENALTY_AREA]
    )
    (area,) = answer.areas
    drawn = " ".join(texts(svg(answer.areas, where)))

    assert 0 < area.area_m2 < 0.1
    assert "hardly any room" in drawn
    assert "area: 0.0 m²" not in drawn


def test_on_a_green_the_ball_is_placed_not_dropped_from_a_reference_point():
    """Relief on the putting green is placing (Rules 14.2 and 16.1d): "place here", each choice with its side."""
    puddle = Outline(box(-0.5, 193, 0.5, 194))
    situation = Situation(COURSE, 1, ball=(0.0, 190.0), played_on=IN_2023, player=PLAYER, condition=puddle)
    (answer,) = relief_areas(situation, [FREE_GREEN])
    drawn = texts(svg(answer.areas, COURSE))

    assert {"place here 1 (right of the line)", "place here 2 (left of the line)"} <= set(drawn)
    assert not any("reference point" in one for one in drawn)


def test_a_stroke_from_the_green_is_replayed_from_its_spot():
    """Stroke and distance from the green: the ball is placed where the previous stroke was made (Rule 14.6c)."""
    situation = Situation(COURSE, 1, previous=(2.0, 191.0), played_on=IN_2023, player=PLAYER)
    (answer,) = relief_areas(situation, [STROKE_AND_DISTANCE])

    assert "previous stroke: place here" in texts(svg(answer.areas, COURSE))


def test_several_options_make_one_page_with_a_title_each():
    """Eight options stand in a grid of two columns, none over another, each under its own title."""
    drawn = sheet_svg([areas(name) for name in CASES], COURSE)
    page = ET.fromstring(drawn)
    figures = page.findall(f"{SVG}svg")
    boxes = [
        box(x, y, x + float(one.get("width")), y + float(one.get("height")))
        for one in figures
        for x, y in [(float(one.get("x")), float(one.get("y")))]
    ]

    assert len(figures) == len(CASES)
    assert len({one.bounds[0] for one in boxes}) == 2
    assert float(page.get("height")) < 0.6 * sum(one.bounds[3] - one.bounds[1] for one in boxes)
    assert all(one.intersection(other).area == 0 for one, other in combinations(boxes, 2))
    for number, one in enumerate(figures, 1):
        assert next(one.iter(f"{SVG}text")).text.startswith(f"{number}. ")
    ids = [one.get("id") for one in page.iter() if one.get("id")]
    assert len(ids) == len(set(ids))


def test_one_option_is_one_column_wide():
    """A page of one figure is as wide as the figure."""
    assert ET.fromstring(sheet_svg([areas("lateral")], COURSE)).get("width") == "390"


def test_a_figure_takes_the_type_of_its_page_and_a_page_of_its_own_names_one():
    """A figure in a page sets no type; a sheet that stands alone does."""
    assert "font-family" not in svg(areas("lateral"), COURSE)
    assert ET.fromstring(sheet_svg([areas("lateral")], COURSE)).get("font-family")


def test_names_of_the_map_are_words_never_markup():
    """A credit line with angle brackets and quotes comes out as it was written."""
    credit = 'Survey <b>"A&B"</b> ]]>'
    where = Course(COURSE.name, COURSE.plane, COURSE.holes, COURSE.features, credit)

    assert credit in " ".join(texts(svg(areas("lateral"), where)))


def test_a_path_without_a_width_is_drawn_as_wide_as_it_is_read():
    """On the map and in its overview it is ground with two edges, the ground that relief is taken from."""
    track = Feature(Kind.PATH, "track", LineString([(0, 55), (6, 62)]))
    where = Course(COURSE.name, COURSE.plane, COURSE.holes, (*COURSE.features, track))
    before, after = (drawn_as(svg(areas("unplayable"), one), "path") for one in (COURSE, where))
    track_drawn = [one for one in after if one not in before]

    assert len(track_drawn) == 2
    assert all(one.count("Z") == 1 for one in track_drawn)


def test_the_seam_between_joined_bunkers_is_no_edge():
    """A bunker in three pieces, the ball in the middle one, is drawn as one outline; two bunkers apart are two."""
    option = LINE_IN_BUNKER_2023
    ball = (0.0, -5.0)

    def outlines(*boxes):
        sand = [Feature(Kind.BUNKER, f"sand {i}", box(*one)) for i, one in enumerate(boxes)]
        where = course_at((0.0, 200.0), *sand)
        situation = Situation(where, 1, ball=ball, played_on=IN_2023, player=PLAYER)
        (answer,) = relief_areas(situation, [option])
        shown = drawn_as(svg(answer.areas, where), "bunker")
        return [one.count("Z") for one in shown]

    assert outlines((-3, -8, 0, 0), (0, -8, 3, 0), (-3, -9, 3, -8)) == [1, 1]
    assert outlines((-3, -8, 3, 0), (-3, -15, 3, -8.5)) == [1, 1, 1, 1]


def drawn_as(figure, pattern):
    """Return the paths of a figure that are filled with a pattern and no swatch of the key."""
    found = [
        one.get("d")
        for one in ET.fromstring(figure).iter(f"{SVG}path")
        if one.get("fill") == f"url(#relief-{pattern})"
    ]
    return [one for one in found if "h24v13h-24z" not in one]


def drawn_kinds():
    """The kinds of mapped areas that a drawing outlines."""
    return [one for one in EDGES if one in FILLS]


@pytest.mark.parametrize("kind", drawn_kinds())
def test_the_edge_of_a_mapped_area_stands_out(kind):
    """3 to 1 at least against its own ground and the ground beside it (WCAG 2.2, criterion 1.4.11)."""
    edge = EDGES[kind]["stroke"]
    fill = FILLS[kind]
    own = PATTERNS[fill].ground["fill"] if fill in PATTERNS else GROUND if fill == "none" else fill
    found = {ground: contrast(edge, ground) for ground in (own, GROUND, FILLS[Kind.FAIRWAY])}

    assert min(found.values()) >= 3, found


def test_every_mapped_area_has_an_edge():
    """No area of a drawing is told by its fill alone."""
    assert set(FILLS) <= set(EDGES)


def test_scale_and_north_leave_the_marks_free() -> None:
    """Each stands in its usual corner unless a mark or more lines are there; then in the other one."""
    plain = (Box(0, 0, 10, 10), Box(90, 0, 100, 10))
    line = LineString([(0, 5), (20, 5)])
    assert freest(plain, [], []) is plain[0]
    assert freest(plain, [(5, 5)], []) is plain[1]
    assert freest(plain, [], [line]) is plain[1]
    assert freest(plain, [(95, 5)], [line]) is plain[0]
    assert freest(plain, [(5, 5), (95, 5)], [line]) is plain[1]


def grey(colour: str) -> float:
    """Return how light a colour is, 0 to 255 (ITU-R BT.601, as a printer without colours takes it)."""
    red, green, blue = (int(colour[at : at + 2], 16) for at in (1, 3, 5))
    return 0.299 * red + 0.587 * green + 0.114 * blue


@pytest.mark.parametrize("name", sorted(PATTERNS))
def test_what_is_ground_and_what_is_pattern_differs_in_black_and_white(name) -> None:
    """Copied in pure black and white, cut in the middle, the ground is white and the lines or dots on it stay black."""
    pattern = PATTERNS[name]
    line = pattern.line or {}
    if pattern.ground.get("fill-opacity") is None:
        assert grey(str(pattern.ground["fill"])) > 200
    assert grey(str(line.get("stroke") or line["fill"])) < 128


def drawn_lines(lines, turn):
    """What is left of a pattern when neither its colour, nor how dense or heavy it is, can be told apart."""
    return re.sub(r"[0-9.]+", "", lines), float(turn)


def test_not_here_is_hatched_like_no_ground() -> None:
    """Small and without colours "not here" over a penalty area, or over ground under repair, still shows what it is."""
    figures = {name: drawn_lines(one.lines, one.turn) for name, one in PATTERNS.items()}
    page = (DESK / "shell" / "templates" / "_patterns.svg").read_text()
    desk = {
        name: drawn_lines(lines, turn or 0)
        for name, turn, lines in re.findall(
            r'id="hatch-([a-z-]+)"[^>]*?(?:rotate\(([0-9-]+)\)[^>]*)?>\s*(?:<rect[^>]*>)?<path d="([^"]+)"',
            page,
        )
    }
    for patterns in (figures, desk):
        assert len(patterns) > 5
        assert [name for name, one in patterns.items() if one == patterns["not"]] == ["not"]
