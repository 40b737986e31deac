"""The marks of a construction and the features of the map, as elements of a drawing."""

from collections.abc import Sequence
from math import cos, hypot, pi, sin

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from marram.course.model import Kind
from marram.relief.areas.construction import ArcMark, LineMark, Mark, PointMark, Role, ShapeMark
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.arcs import arc_points
from marram.relief.geometry.outline import XY
from marram.relief.pictures.ground_shown import GroundShown
from marram.relief.pictures.markup import Ids, Node, add
from marram.relief.pictures.styles import AREA, INK, LINES, ON_LINES, fill_of, stroke
from marram.relief.pictures.view import View

_CROSSES = frozenset({Role.REFERENCE, Role.SPOT, Role.EXAMPLE_SPOT, Role.FIRST_TOUCHED})
"""Points drawn as an upright cross."""


def add_features(parent: Node, features: Sequence[GroundShown], view: View, ids: Ids) -> None:
    """Draw what of the map is shown: areas with their patterns, lines as lines, the boundary as a striped line.

    An overview holds the best part of a course: all of it is cut and made plain at once.
    """
    geometries = [one.geometry for one in features]
    around = [
        one.kind is Kind.BOUNDARY for one in features
    ]  # drawn uncut: its cut edges would be no boundary
    shown = np.where(around, np.array(geometries, dtype=object), view.clip_all(geometries))
    for feature, area, line in zip(features, view.paths(shown), view.lines(shown), strict=True):
        if feature.kind is Kind.BOUNDARY:
            add(parent, "path", stroke(INK, 5), d=area)
            add(parent, "path", stroke("#ffffff", 3, "8 8"), d=area)
            continue
        if area:
            add(parent, "path", fill_of(feature.kind, ids), d=area)
        if line and feature.kind in ON_LINES:
            add(parent, "path", ON_LINES[feature.kind], d=line)


def add_area(parent: Node, area: ReliefArea, view: View, ids: Ids) -> None:
    """Draw a relief area."""
    path = view.path(view.clip(area.polygon))
    if path:
        add(
            parent,
            "path",
            {**stroke(AREA, 3.2), "stroke-linejoin": "round"},
            d=path,
            fill=ids.url("area"),
        )


def add_line(parent: Node, mark: Mark, view: View) -> None:
    """Draw a line, an arc or an outline of the construction; points are not drawn here."""
    style = LINES.get(mark.role, {})
    if isinstance(mark, LineMark):
        (x1, y1), (x2, y2) = view.at(mark.start), view.at(mark.end)
        add(parent, "path", style, d=f"M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}")
    elif isinstance(mark, ArcMark):
        _add_arc(parent, mark, view)
    elif isinstance(mark, ShapeMark) and mark.role is not Role.CONDITION:
        add(parent, "polygon", style, points=_points(*map(view.at, mark.points)))


def _add_arc(parent: Node, mark: ArcMark, view: View) -> None:
    radius, style = mark.radius * view.scale, LINES.get(mark.role, {})
    if mark.end - mark.start >= 2 * pi - 1e-9:
        x, y = view.at(mark.centre)
        add(parent, "circle", style, cx=x, cy=y, r=radius)
        return
    (x1, y1), (x2, y2) = (
        view.at((mark.centre[0] + mark.radius * cos(angle), mark.centre[1] + mark.radius * sin(angle)))
        for angle in (mark.start, mark.end)
    )
    large = 1 if mark.end - mark.start > pi else 0
    add(
        parent,
        "path",
        style,
        d=f"M{x1:.1f} {y1:.1f}A{radius:.2f} {radius:.2f} 0 {large} 0 {x2:.1f} {y2:.1f}",
    )


def add_point(parent: Node, mark: PointMark, view: View) -> None:
    """Draw a point of the construction: a flag, a ball, an upright or a slanting cross."""
    x, y = view.at(mark.at)
    if mark.role is Role.HOLE:
        flag = f"M{x:.1f} {y:.1f}V{y - 24:.1f}l14 5l-14 5"
        add(parent, "path", stroke(INK, 2), d=flag, fill=INK)
        add(parent, "circle", cx=x, cy=y, r=3, fill=INK)
    elif mark.role is Role.BALL:
        add(parent, "circle", stroke(INK, 2), cx=x, cy=y, r=5, fill="#ffffff")
    else:
        upright = f"M{x - 7:.1f} {y:.1f}h14M{x:.1f} {y - 7:.1f}v14"
        slanting = f"M{x - 6:.1f} {y - 6:.1f}l12 12M{x + 6:.1f} {y - 6:.1f}l-12 12"
        cross = upright if mark.role in _CROSSES else slanting
        add(parent, "path", stroke("#ffffff", 6), d=cross)
        add(parent, "path", stroke(INK, 2.6), d=cross)


def add_arrow_head(parent: Node, start: XY, tip: XY) -> None:
    """Draw an arrow head at ``tip``, seen from ``start``, both in the picture."""
    length = hypot(tip[0] - start[0], tip[1] - start[1]) or 1.0
    along = ((tip[0] - start[0]) / length, (tip[1] - start[1]) / length)
    wings = [
        (tip[0] - 13 * along[0] + side * 7 * along[1], tip[1] - 13 * along[1] - side * 7 * along[0])
        for side in (1, -1)
    ]
    add(parent, "polygon", points=_points(tip, *wings), fill=INK)


def _points(*places: XY) -> str:
    return " ".join(f"{x:.1f},{y:.1f}" for x, y in places)


def line_in_picture(mark: Mark, view: View) -> BaseGeometry | None:
    """Return a line or an arc of the construction in the picture's own units; ``None`` for any other mark."""
    if isinstance(mark, LineMark):
        return view.drawn(shapely.LineString([mark.start, mark.end]))
    if isinstance(mark, ArcMark):
        points = arc_points(mark.centre, mark.radius, mark.start, mark.end, 2.0 / view.scale)
        return view.drawn(shapely.LineString(points))
    return None
