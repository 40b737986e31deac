"""A relief area drawn to scale as an SVG, for a phone in sunlight and for readers who see no colours.

North is up. Below the map stand the distances to check with a tape, and what was taken for granted. Patterns
and line styles differ as well as colours; a title and a description tell a screen reader what is shown.
"""

from collections.abc import Sequence
from html import escape
from math import cos, pi, sin

import shapely

from marram.course.model import Course, Feature, Kind
from marram.errors import BadPlace
from marram.relief.constructions.construction import ArcMark, LineMark, Mark, PointMark, Role, ShapeMark
from marram.relief.geometry.area import ReliefArea
from marram.relief.geometry.outline import XY
from marram.relief.pictures.labels import SIZE, Box, place_labels
from marram.relief.pictures.legend import SMALL, WIDTH, key, notes, write
from marram.relief.pictures.picture_words import (
    kind_words,
    mark_words,
    measure_words,
    size_words,
)
from marram.relief.pictures.styles import AREA, EDGES, FILLS, GROUND, INK, LINES, PAPER, PATTERNS
from marram.relief.pictures.view import View, edge_towards, view_of
from marram.words.texts import text


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
    every = [areas] if isinstance(areas, ReliefArea) else list(areas)
    if not every:
        raise BadPlace("There is no relief area to draw.")
    view = view_of(every, WIDTH)
    shown = _features(course, view)
    ground = [_feature(feature, view) for feature in shown]
    marks = [mark for area in every for mark in area.construction]
    shapes = [_area(area, view) for area in every]
    lines = [_line(mark, view) for mark in marks if not isinstance(mark, PointMark)]
    points = [_point(mark, view) for mark in marks if isinstance(mark, PointMark) and view.shows(mark.at)]
    arrow, arrow_label = _arrow_to_hole(every[0], view)
    labels = _labels(every, view, arrow_label)
    legend, legend_height = key(shown, every, view.pixels)
    rows, rows_height = notes(every, course, view.pixels + legend_height)
    height = view.pixels + legend_height + rows_height
    body = "\n".join(
        [
            f'<rect width="{WIDTH:g}" height="{height:g}" fill="{PAPER}"/>',
            f'<g clip-path="url(#frame)"><rect width="{WIDTH:g}" height="{WIDTH:g}" fill="{GROUND}"/>',
            *ground,
            *shapes,
            *lines,
            arrow,
            *points,
            "</g>",
            *labels,
            _north(),
            _scale(view),
            f'<rect x=".5" y=".5" width="{WIDTH - 1:g}" height="{WIDTH - 1:g}" fill="none" stroke="{INK}"/>',
            *legend,
            *rows,
        ]
    )
    defs = (
        f'<defs>{PATTERNS}<clipPath id="frame"><rect width="{WIDTH:g}" height="{WIDTH:g}"/></clipPath></defs>'
    )
    drawn = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH:g} {height:g}" width="100%" role="img" '
        f'aria-labelledby="title desc" font-family="system-ui, sans-serif" fill="none">\n'
        f'<title id="title">{escape(_title(every))}</title>\n<desc id="desc">{escape(describe(every))}</desc>\n'
        f"{defs}\n{body}\n</svg>\n"
    )
    return (
        drawn.replace('id="', f'id="{prefix}-')
        .replace("url(#", f"url(#{prefix}-")
        .replace('aria-labelledby="title desc"', f'aria-labelledby="{prefix}-title {prefix}-desc"')
    )


def describe(areas: Sequence[ReliefArea]) -> str:
    """Return in sentences what a drawing shows, for readers who do not see it."""
    parts = []
    for area in areas:
        key = "relief.picture.shown" if area.is_spot else "relief.picture.shown_area"
        measures = "; ".join(measure_words(one) for one in area.measures)
        parts.append(text(key, kind=kind_words(area.kind), area=area.area_m2, measures=measures))
    return " ".join(parts)


def _title(areas: Sequence[ReliefArea]) -> str:
    return text("relief.picture.title", kind=kind_words(areas[0].kind), citation=areas[0].option.citation)


def _features(course: Course | None, view: View) -> list[Feature]:
    if course is None:
        return []
    order = list(FILLS)
    box = shapely.box(view.left, view.bottom, view.left + view.size, view.bottom + view.size)
    shown = [
        one for one in course.features if one.kind in FILLS and shapely.intersects(one.geometry, box)
    ] + [one for one in course.of(Kind.BOUNDARY) if shapely.intersects(shapely.boundary(one.geometry), box)]
    return sorted(shown, key=lambda one: order.index(one.kind) if one.kind in FILLS else len(order))


def _feature(feature: Feature, view: View) -> str:
    if feature.kind is Kind.BOUNDARY:
        path = view.path(feature.geometry)
        return (
            f'<path d="{path}" stroke="{INK}" stroke-width="5"/>'
            f'<path d="{path}" stroke="#ffffff" stroke-width="3" stroke-dasharray="8 8"/>'
        )
    path = view.path(view.clip(feature.geometry))
    return f'<path d="{path}" fill="{FILLS[feature.kind]}" {EDGES.get(feature.kind, "")}/>'


def _area(area: ReliefArea, view: View) -> str:
    path = view.path(view.clip(area.polygon))
    return f'<path d="{path}" fill="url(#area)" stroke="{AREA}" stroke-width="3.2" stroke-linejoin="round"/>'


def _line(mark: Mark, view: View) -> str:
    style = LINES.get(mark.role, "")
    if isinstance(mark, LineMark):
        (x1, y1), (x2, y2) = view.at(mark.start), view.at(mark.end)
        return f'<path d="M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}" {style}/>'
    if isinstance(mark, ArcMark):
        return _arc(mark, view, style)
    if isinstance(mark, ShapeMark) and mark.role is not Role.CONDITION:
        points = " ".join(f"{x:.1f},{y:.1f}" for x, y in map(view.at, mark.points))
        return f'<polygon points="{points}" {style}/>'
    return ""


def _arc(mark: ArcMark, view: View, style: str) -> str:
    radius = mark.radius * view.scale
    if mark.end - mark.start >= 2 * pi - 1e-9:
        x, y = view.at(mark.centre)
        return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius:.2f}" {style}/>'
    ends = [
        view.at((mark.centre[0] + mark.radius * cos(angle), mark.centre[1] + mark.radius * sin(angle)))
        for angle in (mark.start, mark.end)
    ]
    large = 1 if mark.end - mark.start > pi else 0
    return (
        f'<path d="M{ends[0][0]:.1f} {ends[0][1]:.1f}A{radius:.2f} {radius:.2f} 0 {large} 0 '
        f'{ends[1][0]:.1f} {ends[1][1]:.1f}" {style}/>'
    )


def _point(mark: PointMark, view: View) -> str:
    x, y = view.at(mark.at)
    match mark.role:
        case Role.HOLE:
            return (
                f'<path d="M{x:.1f} {y:.1f}V{y - 24:.1f}l14 5l-14 5" stroke="{INK}" stroke-width="2" fill="{INK}"/>'
                f'<circle cx="{x:.1f}" cy="{y:.1f}" r="3" fill="{INK}"/>'
            )
        case Role.BALL:
            return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="5" fill="#ffffff" stroke="{INK}" stroke-width="2"/>'
        case Role.REFERENCE | Role.EXAMPLE_SPOT | Role.FIRST_TOUCHED:
            return (
                f'<path d="M{x - 7:.1f} {y:.1f}H{x + 7:.1f}M{x:.1f} {y - 7:.1f}V{y + 7:.1f}" stroke="#ffffff" stroke-width="6"/>'
                f'<path d="M{x - 7:.1f} {y:.1f}H{x + 7:.1f}M{x:.1f} {y - 7:.1f}V{y + 7:.1f}" stroke="{INK}" stroke-width="2.6"/>'
            )
        case _:
            return (
                f'<path d="M{x - 6:.1f} {y - 6:.1f}L{x + 6:.1f} {y + 6:.1f}M{x + 6:.1f} {y - 6:.1f}L{x - 6:.1f} {y + 6:.1f}" '
                f'stroke="#ffffff" stroke-width="6"/>'
                f'<path d="M{x - 6:.1f} {y - 6:.1f}L{x + 6:.1f} {y + 6:.1f}M{x + 6:.1f} {y - 6:.1f}L{x - 6:.1f} {y + 6:.1f}" '
                f'stroke="{INK}" stroke-width="2.6"/>'
            )


def _arrow_to_hole(area: ReliefArea, view: View) -> tuple[str, tuple[str, XY] | None]:
    """Draw an arrow head where the line to the hole leaves the frame."""
    tip = edge_towards(view, area.reference, area.hole, 10.0)
    if tip is None:
        return "", None
    start = view.at(area.reference)
    length = ((tip[0] - start[0]) ** 2 + (tip[1] - start[1]) ** 2) ** 0.5 or 1.0
    along = ((tip[0] - start[0]) / length, (tip[1] - start[1]) / length)
    wings = [
        (tip[0] - 13 * along[0] + side * 7 * along[1], tip[1] - 13 * along[1] - side * 7 * along[0])
        for side in (1, -1)
    ]
    points = " ".join(f"{x:.1f},{y:.1f}" for x, y in (tip, *wings))
    apart = next((one.metres for one in area.measures if one.end is Role.HOLE), None)
    text = mark_words(Role.HOLE) + (f" {apart:.0f} m" if apart is not None else "")
    return f'<polygon points="{points}" fill="{INK}"/>', (text, tip)


def _labels(areas: Sequence[ReliefArea], view: View, arrow: tuple[str, XY] | None) -> list[str]:
    wanted: list[tuple[str, XY]] = []
    for number, area in enumerate(areas, 1):
        for mark in reversed(area.construction):
            if isinstance(mark, PointMark) and view.shows(mark.at):
                text = mark_words(mark.role)
                if mark.role is Role.REFERENCE and len(areas) > 1:
                    text = f"{text} {number}"
                if (text, view.at(mark.at)) not in wanted:
                    wanted.append((text, view.at(mark.at)))
    first = areas[0]
    if first.radius:
        x, y = view.at(first.reference)
        size = size_words(first.option.club_lengths or 0, first.club_length)
        wanted.append((size, (x, y + first.radius * view.scale)))
    if arrow is not None:
        wanted.append(arrow)
    taken = [
        Box(WIDTH - 44, 0, WIDTH, 62),
        Box(0, WIDTH - 34, 12 + view.scale_bar() * view.scale + 12, WIDTH),
    ]
    drawn = []
    avoid = [_box(area, view) for area in areas if not area.polygon.is_empty]
    for label in place_labels(wanted, view.pixels, taken, avoid):
        middle = ((label.box.left + label.box.right) / 2, (label.box.top + label.box.bottom) / 2)
        if label.leader:
            drawn.append(
                f'<path d="M{label.anchor[0]:.1f} {label.anchor[1]:.1f}L{middle[0]:.1f} {middle[1]:.1f}" '
                f'stroke="{INK}" stroke-width=".8"/>'
            )
        drawn.append(write(label.text, middle[0], middle[1] + SIZE * 0.34, SIZE, "middle", bold=True))
    return drawn


def _box(area: ReliefArea, view: View) -> Box:
    left, bottom, right, top = area.polygon.bounds
    return Box(*view.at((left, top)), *view.at((right, bottom)))


def _north() -> str:
    x = WIDTH - 22
    return (
        f'<path d="M{x:g} 8L{x + 9:g} 34L{x:g} 28L{x - 9:g} 34Z" fill="{INK}" stroke="{PAPER}" stroke-width="1.5"/>'
        + write(text("relief.north"), x, 52, SIZE, "middle", bold=True)
    )


def _scale(view: View) -> str:
    length = view.scale_bar()
    right = 12 + length * view.scale
    y = WIDTH - 10
    return (
        f'<path d="M12 {y - 6:g}V{y:g}H{right:.1f}V{y - 6:g}" stroke="{PAPER}" stroke-width="6"/>'
        f'<path d="M12 {y - 6:g}V{y:g}H{right:.1f}V{y - 6:g}" stroke="{INK}" stroke-width="2.2"/>'
        + write(f"{length:g} m", (12 + right) / 2, y - 7, SMALL, "middle", bold=True)
    )
