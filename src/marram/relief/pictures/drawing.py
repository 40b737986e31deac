"""A relief area drawn to scale as an SVG, for a phone in sunlight and for readers who see no colours.

North is up. Below the map stand the distances to check with a tape, and what was taken for granted. Patterns
and line styles differ as well as colours; a title and a description tell a screen reader what is shown. A drawing
is written in the type of the page it stands in.
"""

from collections.abc import Sequence
from math import hypot

from shapely.geometry.base import BaseGeometry

from marram.course.model import Course
from marram.errors import BadPlace
from marram.relief.areas.construction import PointMark, Role, distance
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.outline import XY
from marram.relief.pictures.ground_shown import GroundShown, ground_shown
from marram.relief.pictures.labels import SIZE, Box, place_labels
from marram.relief.pictures.legend import add_key, add_notes
from marram.relief.pictures.lettering import ROW, WIDTH, wrapped, write
from marram.relief.pictures.marks import (
    add_area,
    add_arrow_head,
    add_features,
    add_line,
    add_point,
    line_in_picture,
)
from marram.relief.pictures.markup import Ids, Node, add, root, say, written
from marram.relief.pictures.north_and_scale import add_north, add_scale, north_place, scale_place
from marram.relief.pictures.overview import SIDE as OVERVIEW
from marram.relief.pictures.overview import add_overview, needs_overview
from marram.relief.pictures.picture_words import (
    away_words,
    kind_words,
    mark_words,
    measures_told,
    shown_words,
)
from marram.relief.pictures.styles import GROUND, INK, PAPER, add_patterns, stroke
from marram.relief.pictures.view import LESSER, View, edge_towards, view_of
from marram.relief.pictures.wanted import point_labels, size_labels
from marram.relief.pictures.where_not import not_nearer_arcs, where_not
from marram.said import said
from marram.words.texts import text

_ONE_MARK = 4.0
"""Picture units: marks nearer each other than this share a label."""


def svg(
    areas: ReliefArea | Sequence[ReliefArea], course: Course | None = None, *, prefix: str = "relief"
) -> str:
    """Return the drawing of a relief area, or of several that the player may choose between.

    Args:
        areas: what to draw.
        course: the course; its areas are drawn below. Without it only the construction is.
        prefix: starts every id in the drawing, so that several can stand in one page.

    Raises:
        BadPlace: if there is nothing to draw.
    """
    return written(figure([areas] if isinstance(areas, ReliefArea) else list(areas), course, Ids(prefix)))


def figure(areas: Sequence[ReliefArea], course: Course | None, ids: Ids, heading: str = "") -> Node:
    """Return the drawing of one option as an element, with its size in ``width`` and ``height``.

    Args:
        areas: its relief areas (several where the player has the choice between them).
        course: the course, or ``None``.
        ids: the ids of the drawing.
        heading: what to write above the map.

    Raises:
        BadPlace: if there is nothing to draw.
    """
    if not areas:
        raise BadPlace(said("There is no relief area to draw."))
    view = view_of(areas, WIDTH)
    shown = _features(course, view)
    over = OVERVIEW if needs_overview(areas, view) else 0.0
    content = root(WIDTH, 0)
    bottom = _add_heading(content, heading)
    frame = add(content, "g", transform=f"translate(0 {bottom:g})") if bottom else add(content, "g")
    _add_map(frame, areas, shown, view, ids)
    top = bottom + view.pixels
    if over:
        add_overview(content, areas, lambda frame: _features(course, frame), view, (10, top + 10), ids)
    bottom = add_key(content, shown, areas, top, ids, over)
    cut = not all(view.holds(area.picture) for area in areas)
    height = add_notes(content, areas, course, bottom, (text("relief.picture.cut"),) if cut else ())
    return _page(areas, list(content), height, ids)


def _page(areas: Sequence[ReliefArea], content: Sequence[Node], height: float, ids: Ids) -> Node:
    names = {"role": "img", "aria-labelledby": f"{ids('title')} {ids('desc')}", "fill": "none"}
    page = root(WIDTH, height, names)
    say(page, "title", title(areas), id=ids("title"))
    say(page, "desc", describe(areas), id=ids("desc"))
    defs = add(page, "defs")
    add_patterns(defs, ids)
    for name, side in (("frame", WIDTH), ("over", OVERVIEW)):
        add(add(defs, "clipPath", id=ids(name)), "rect", width=side, height=side)
    add(page, "rect", width=WIDTH, height=height, fill=PAPER)
    page.extend(content)
    return page


def title(areas: Sequence[ReliefArea]) -> str:
    """Return what a drawing is of, with the provision."""
    return text("relief.picture.title", kind=kind_words(areas[0].kind), citation=areas[0].option.citation)


def describe(areas: Sequence[ReliefArea]) -> str:
    """Return in sentences what a drawing shows, for readers who do not see it."""
    parts = []
    for area in areas:
        said = {
            "kind": kind_words(area.kind),
            "measures": "; ".join(measures_told(area)),
        }
        spot = area.is_spot
        parts.append(text("relief.picture.shown", **said) if spot else shown_words(said, area.area_m2))
    return " ".join(parts)


def _add_heading(parent: Node, heading: str) -> float:
    """Write a heading at the top and return where it ends; 0 without one."""
    if not heading:
        return 0.0
    rows = wrapped(heading, SIZE, bold=True)
    for number, row in enumerate(rows):
        write(parent, row, (10, 19 + number * ROW), SIZE, bold=True)
    return len(rows) * ROW + 8


def _add_map(
    parent: Node, areas: Sequence[ReliefArea], shown: Sequence[GroundShown], view: View, ids: Ids
) -> None:
    marks = [mark for area in areas for mark in area.construction]
    clipped = add(parent, "g", clip_path=ids.url("frame"))
    add(clipped, "rect", width=WIDTH, height=WIDTH, fill=GROUND)
    add_features(clipped, shown, view, ids)
    for area in areas:
        add_area(clipped, area, view, ids)
        if path := view.path(view.clip(where_not(area))):
            add(clipped, "path", d=path, fill=ids.url("not"))
    for mark in (*marks, *(arc for area in areas for arc in not_nearer_arcs(area) if arc not in marks)):
        add_line(clipped, mark, view)
    away = _away(areas, view)
    for start, tip, _ in away:
        add_arrow_head(clipped, start, tip)
    for mark in marks:
        if isinstance(mark, PointMark) and view.shows(mark.at):
            add_point(clipped, mark, view)
    points = [*(tip for _, tip, _ in away), *(view.at(one.at) for one in marks if isinstance(one, PointMark))]
    lines = _lines(areas, view)
    north, scale = north_place(points, lines), scale_place(view, points, lines)
    _add_labels(parent, areas, view, [(words, tip) for _, tip, words in away], [north, scale])
    add_north(parent, north)
    add_scale(parent, view, scale)
    add(parent, "rect", {"fill": "none", **stroke(INK, 1)}, x=0.5, y=0.5, width=WIDTH - 1, height=WIDTH - 1)


def _features(course: Course | None, view: View) -> list[GroundShown]:
    return [] if course is None else ground_shown(course, view.frame)


def _away(areas: Sequence[ReliefArea], view: View) -> list[tuple[XY, XY, str]]:
    """Return the arrows to what lies outside the frame: the hole, and a ball or point that is far off.

    Each is where it starts and ends in the picture, and how far it is in words.
    """
    arrows = []
    for mark in dict.fromkeys(mark for area in areas for mark in area.construction):
        if not isinstance(mark, PointMark) or mark.role not in {Role.HOLE, *LESSER}:
            continue
        tip = edge_towards(view, areas[0].reference, mark.at, 10.0)
        if tip is not None:
            metres = distance(areas[0].reference, mark.at)
            words = away_words(mark_words(mark.role), metres)
            arrows.append((view.at(areas[0].reference), tip, words))
    return arrows


def _add_labels(
    parent: Node,
    areas: Sequence[ReliefArea],
    view: View,
    away: Sequence[tuple[str, XY]],
    taken: Sequence[Box],
) -> None:
    wanted = [*_wanted(areas, view), *away]
    covered = [
        view.drawn(shape)
        for area in areas
        if not area.is_spot
        for shape in (area.polygon, where_not(area))
        if not shape.is_empty
    ]
    for label in place_labels(wanted, view.pixels, taken, covered, _lines(areas, view)):
        if label.leader:
            (x1, y1), (x2, y2) = label.anchor, label.box.nearest(label.anchor)
            add(parent, "path", stroke(INK, 0.8), d=f"M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}")
        middle = ((label.box.left + label.box.right) / 2, (label.box.top + label.box.bottom) / 2)
        write(parent, label.text, (middle[0], middle[1] + SIZE * 0.34), SIZE, anchor="middle", bold=True)


def _lines(areas: Sequence[ReliefArea], view: View) -> list[BaseGeometry]:
    """Return the lines of the construction as they run in the picture."""
    lines = (line_in_picture(mark, view) for area in areas for mark in area.construction)
    return [one for one in lines if one is not None]


def _wanted(areas: Sequence[ReliefArea], view: View) -> list[tuple[str, XY]]:
    """Return the labels of the points shown, each with its place; marks at one place share a label."""
    wanted: list[tuple[str, XY]] = []
    for words, place in point_labels(areas):
        if not view.shows(place):
            continue
        at = view.at(place)
        same = next((i for i, (_, other) in enumerate(wanted) if _apart(other, at) < _ONE_MARK), None)
        if same is None:
            wanted.append((words, at))
        elif words not in wanted[same][0]:
            both = text("relief.label.both", first=wanted[same][0], second=words)
            wanted[same] = (both, wanted[same][1])
    return wanted + [(words, view.at(place)) for words, place in size_labels(areas) if view.shows(place)]


def _apart(one: XY, other: XY) -> float:
    return hypot(one[0] - other[0], one[1] - other[1])
