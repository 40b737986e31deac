"""A hole, or the whole course, drawn flat with numbered places: where on the ground each task of the marking sheet is."""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.affinity import rotate
from shapely.geometry import LineString, Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from marram.course.checks.stakes import stakes_of
from marram.course.lies.as_read import pieces_as_read
from marram.course.lies.joined_as_read import joined
from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Kind
from marram.paper.green_drawing import FONT

WIDTH = 660.0
"""Picture units from left to right."""

TALLEST = 460.0
"""Picture units from top to bottom, at most."""

AROUND = 30.0
"""Metres shown around the line of play and the places (own choice)."""

INK = "#16211d"
FILLS = {
    Kind.BOUNDARY: ("#f2ecd8", "#8a8264"),
    Kind.ROUGH: ("#dfe3bf", "none"),
    Kind.TREES: ("#a9b78b", "none"),
    Kind.FAIRWAY: ("#c6d9ab", "none"),
    Kind.WATER: ("#bcd7e2", "none"),
    Kind.WETLAND: ("#dbe3d3", "#5d7a86"),
    Kind.RED_PENALTY_AREA: ("#e9c9c4", "#b4232a"),
    Kind.YELLOW_PENALTY_AREA: ("#efe3ae", "#7a5f00"),
    Kind.TEEING_AREA: ("#8fb579", "none"),
    Kind.PUTTING_GREEN: ("#6ea871", "none"),
    Kind.BUNKER: ("#fdf8e6", "#a98f4b"),
    Kind.PATH: ("#b5b2ab", "#b5b2ab"),
    Kind.OBSTRUCTION: ("#6a6661", "none"),
    Kind.BARRIER: ("#6a6661", "#6a6661"),
    Kind.INTEGRAL_OBJECT: ("#6a6661", "none"),
    Kind.OUT_OF_BOUNDS: ("#e3e1da", "#6a6661"),
    Kind.GROUND_UNDER_REPAIR: ("#c9d9ec", "#174f86"),
    Kind.TEMPORARY_WATER: ("#cfe0e8", "#1f5673"),
    Kind.NO_PLAY_ZONE: ("#e0d3e6", "#5a2a66"),
    Kind.DROPPING_ZONE: ("#ffffff", INK),
}
"""Fill and edge of what is drawn, lowest first."""

_STAKES = {"white": "#ffffff", "red": "#b4232a", "yellow": "#e7c000"}


def marking_svg(course: Course, places: Mapping[int, Point], line: LineString | None = None) -> str:
    """Return a drawing with numbered places.

    Args:
        course: the map.
        places: in local metres, by the number that is drawn.
        line: the line of play of the hole, drawn from left to right; ``None`` draws the whole course, north up.
    """
    shown: list[BaseGeometry] = [line] if line is not None else [hole.line for hole in course.holes.values()]
    if line is None:
        shown += [feature.geometry for feature in course.of(Kind.BOUNDARY)]
    frame = _Frame.around([*shown, *places.values()], 0.0 if line is None else _bearing(line))
    seen = frame.ground()
    parts = [_area(frame, one.geometry & seen, *FILLS[one.kind]) for one in _ground(course)]
    for hole in course.holes.values() if line is None else ():
        parts.append(_path(frame, hole.line, INK, "stroke-dasharray='5 4' stroke-width='1'"))
        x, y = frame.at(Point(hole.line.coords[0]))
        parts.append(
            f'<text x="{x:.1f}" y="{y:.1f}" font-size="13" font-weight="bold" fill="{INK}">{hole.number}</text>'
        )
    if line is not None:
        parts.append(_path(frame, line, INK, "stroke-dasharray='5 4' stroke-width='1'"))
    for stake in stakes_of(course):
        if seen.intersects(stake.place):
            x, y = frame.at(stake.place)
            fill = _STAKES.get(stake.colour, "#9a9a9a")
            parts.append(
                f'<circle cx="{x:.1f}" cy="{y:.1f}" r="2.4" fill="{fill}" stroke="{INK}" stroke-width=".8"/>'
            )
    parts += [_number(frame, number, place) for number, place in places.items()]
    parts.append(frame.scale_bar())
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH:g} {frame.height:.0f}" width="{WIDTH:g}" '
        f'height="{frame.height:.0f}" font-family="{FONT}"><rect width="{WIDTH:g}" height="{frame.height:.0f}" '
        f'fill="#ffffff" stroke="{INK}" stroke-width=".6"/>{"".join(parts)}</svg>'
    )


def _ground(course: Course) -> list[UnitedArea]:
    """Return what is drawn of a course, lowest first: the ground as it is read, without seams in what is joined."""
    if marking_svg not in course.kept:
        course.kept[marking_svg] = joined(pieces_as_read(course, *FILLS))
    found: list[UnitedArea] = course.kept[marking_svg]
    return found


@dataclass(frozen=True, slots=True)
class _Frame:
    """Local metres to picture units: turned about the origin, then scaled to fit."""

    turn: float
    west: float
    north: float
    scale: float
    height: float

    @classmethod
    def around(cls, shapes: Sequence[BaseGeometry], bearing: float) -> "_Frame":
        turned = [rotate(shape, -bearing, origin=(0, 0), use_radians=True) for shape in shapes]
        west, south, east, north = (float(one) for one in shapely.total_bounds(turned))
        wide, tall = east - west + 2 * AROUND, north - south + 2 * AROUND
        scale = min(WIDTH / wide, TALLEST / tall)
        spare = (WIDTH / scale - wide) / 2
        return cls(bearing, west - AROUND - spare, north + AROUND, scale, tall * scale)

    def at(self, place: Point) -> tuple[float, float]:
        (found,) = self.all(np.array([[place.x, place.y]]))
        return float(found[0]), float(found[1])

    def all(self, places: NDArray[np.float64]) -> NDArray[np.float64]:
        cos, sin = math.cos(self.turn), math.sin(self.turn)
        x, y = places[:, 0] * cos + places[:, 1] * sin, places[:, 1] * cos - places[:, 0] * sin
        return np.column_stack([(x - self.west) * self.scale, (self.north - y) * self.scale])

    def ground(self) -> BaseGeometry:
        """Return the ground in the picture."""
        seen = box(
            self.west, self.north - self.height / self.scale, self.west + WIDTH / self.scale, self.north
        )
        return rotate(seen, self.turn, origin=(0, 0), use_radians=True)

    def scale_bar(self) -> str:
        metres = next(one for one in (200, 100, 50, 20, 10) if one * self.scale < WIDTH / 4 or one == 10)
        x, y = 10.0, self.height - 10
        return (
            f'<path d="M{x:g} {y - 5:.1f}v5h{metres * self.scale:.1f}v-5" fill="none" stroke="{INK}"/>'
            f'<text x="{x + 4:g}" y="{y - 4:.1f}" font-size="12" fill="{INK}">{metres} m</text>'
        )


def _bearing(line: LineString) -> float:
    (x0, y0), (x1, y1) = line.coords[0][:2], line.coords[-1][:2]
    return math.atan2(y1 - y0, x1 - x0)


def _area(frame: _Frame, shape: BaseGeometry, fill: str, edge: str) -> str:
    parts = []
    for part in shapely.get_parts(shape):
        if isinstance(part, Polygon) and not part.is_empty:
            rings = "".join(_drawn(frame, ring) + "Z" for ring in (part.exterior, *part.interiors))
            parts.append(
                f'<path d="{rings}" fill="{fill}" fill-rule="evenodd" stroke="{edge}" stroke-width="1"/>'
            )
        elif isinstance(part, LineString) and not part.is_empty:
            parts.append(_path(frame, part, fill, "stroke-width='2'"))
    return "".join(parts)


def _path(frame: _Frame, line: LineString, ink: str, style: str) -> str:
    return f'<path d="{_drawn(frame, line)}" fill="none" stroke="{ink}" {style}/>'


def _drawn(frame: _Frame, line: BaseGeometry) -> str:
    return "M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in frame.all(shapely.get_coordinates(line)))


def _number(frame: _Frame, number: int, place: Point) -> str:
    x, y = frame.at(place)
    half = 5.5 + 3.5 * len(str(number))
    return (
        f'<rect x="{x - half:.1f}" y="{y - 9:.1f}" width="{2 * half:.1f}" height="18" rx="9" fill="{INK}" stroke="#ffffff"/>'
        f'<text x="{x:.1f}" y="{y + 4.8:.1f}" font-size="14" font-weight="bold" text-anchor="middle" fill="#ffffff">{number}</text>'
    )
