"""The rulings of a day: by the hour, and each at its place on the course; every one leads to its entry."""

from dataclasses import dataclass

import numpy as np
from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse
from markupsafe import Markup, escape
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Kind
from marram.desk.log.day_rulings import DayRuling
from marram.desk.log.kept import kept_here
from marram.desk.shell.workplace import show, workplace
from marram.words.texts import day_words, text

router = APIRouter()

DRAWN = (
    Kind.BOUNDARY,
    Kind.WATER,
    Kind.YELLOW_PENALTY_AREA,
    Kind.RED_PENALTY_AREA,
    Kind.FAIRWAY,
    Kind.BUNKER,
    Kind.PUTTING_GREEN,
)
"""What of the map is drawn, from below upwards."""
FINE = 1.5
"""Metres to which outlines are simplified (own choice): less than a line's width at this scale."""
WIDTH = 1000.0
"""Units of the drawing across."""
PIN = 26.0
"""Units: the radius of a pin."""


@dataclass(frozen=True)
class Hour:
    """The rulings of one hour.

    Attributes:
        start: the hour, 0 to 23.
        entries: the rulings given in it, the first first.
    """

    start: int
    entries: list[DayRuling]

    @property
    def links(self) -> Markup:
        """The rulings as links; a day can have thousands, and of each only the title is anybody's words."""
        every = (
            f'<a href="/log/{one.number}" title="{escape(one.title)}">{one.number}</a>'
            for one in self.entries
        )
        return Markup("".join(every))  # noqa: S704 - each part is escaped above


@router.get("/day")
def day_page(request: Request) -> HTMLResponse:
    """Show the rulings of a day."""
    kept = kept_here(request)
    desk = workplace(request)
    day = desk.read(request).conditions.on
    entries = kept.day_rulings.on(day)
    return show(
        request,
        "day.html",
        None,
        title=text("log.day.title"),
        day=day_words(day),
        hours=by_hour(entries),
        drawing=drawing(desk.course, entries),
        entries=entries,
        without_place=[one for one in entries if one.place is None],
    )


def by_hour(entries: list[DayRuling]) -> list[Hour]:
    """Return the rulings by the hour they were given in, from the first to the last hour, the empty ones too."""
    hours = [one.hour for one in entries]
    if not hours:
        return []
    found = {hour: Hour(hour, []) for hour in range(min(hours), max(hours) + 1)}
    for one, at in zip(entries, hours, strict=True):
        found[at].entries.append(one)
    return list(found.values())


def drawing(course: Course, entries: list[DayRuling]) -> Markup:
    """Return the course with a pin for each ruling whose place is known, as SVG; empty where no place is known."""
    placed = [(one, one.place) for one in entries if one.place is not None]
    if not placed:
        return Markup()
    below = _below(course)
    pins = (course.plane.to_metres_all(np.array([place for _, place in placed])) - below.corner) * below.scale
    drawn = [
        f'<a href="/log/{one.number}"><title>{one.number}. {escape(one.title)}</title>'
        f'<circle class="pin" cx="{x:.0f}" cy="{-y:.0f}" r="{PIN:.0f}"/>'
        f'<text class="pin-number" x="{x:.0f}" y="{-y:.0f}">{one.number}</text></a>'
        for (one, _), (x, y) in zip(placed, pins.tolist(), strict=True)
    ]
    return Markup("".join([below.start(), below.ground, *drawn, "</svg>"]))  # noqa: S704 - each part is escaped above


@dataclass(frozen=True)
class _Below:
    """The course under the pins.

    Attributes:
        corner: the upper left corner of the drawing, in metres.
        scale: units of the drawing for a metre.
        height: of the drawing, in its units.
        ground: the areas and the numbers of the holes, as SVG.
    """

    corner: tuple[float, float]
    scale: float
    height: float
    ground: str

    def start(self) -> str:
        """Return how the drawing begins."""
        return Markup('<svg class="day-map" viewBox="0 0 {:.0f} {:.0f}" role="img" aria-label="{}">').format(
            WIDTH, self.height, text("log.day.map")
        )


def _below(course: Course) -> _Below:
    """Return the course under the pins; it is drawn once for a map."""
    if _below not in course.kept:
        course.kept[_below] = _drawn(course)
    found: _Below = course.kept[_below]
    return found


def _drawn(course: Course) -> _Below:
    shapes = [(kind, feature.geometry) for kind in DRAWN for feature in course.of(kind)]
    lines = [hole.line for hole in course.holes.values()]
    west, south, east, north = _frame([shape for _, shape in shapes] + list(lines))
    scale = WIDTH / (east - west)

    def at(x: float, y: float) -> str:
        return f"{(x - west) * scale:.0f},{(north - y) * scale:.0f}"

    parts: list[str] = []
    for kind, shape in shapes:
        path = "".join(
            f"M{' '.join(at(x, y) for x, y in ring.coords)}Z"
            for polygon in _polygons(shape.simplify(FINE))
            for ring in (polygon.exterior, *polygon.interiors)
        )
        parts.append(Markup('<path class="{}" d="{}"/>').format(kind.value.replace("_", "-"), path))
    for hole in course.holes.values():
        x, y = at(*hole.line.coords[0]).split(",")
        parts.append(Markup('<text class="hole-number" x="{}" y="{}">{}</text>').format(x, y, hole.number))
    return _Below((west, north), scale, (north - south) * scale, "".join(parts))


def _frame(shapes: list[BaseGeometry]) -> tuple[float, float, float, float]:
    bounds = [one.bounds for one in shapes if not one.is_empty]
    west, south = (min(one[axis] for one in bounds) for axis in (0, 1))
    east, north = (max(one[axis] for one in bounds) for axis in (2, 3))
    edge = 0.02 * (east - west)
    return west - edge, south - edge, east + edge, north + edge


def _polygons(shape: BaseGeometry) -> list[Polygon]:
    parts = list(getattr(shape, "geoms", [shape]))
    return [one for one in parts if isinstance(one, Polygon) and not one.is_empty]
