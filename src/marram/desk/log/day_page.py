"""The rulings of a day: by the hour, and each at its place on the course; every one leads to its entry."""

from dataclasses import dataclass
from datetime import date, datetime

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse
from markupsafe import Markup, escape
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Kind
from marram.desk.log.kept import kept_here
from marram.desk.log.shown import Shown, title_of
from marram.desk.shell.workplace import show, workplace
from marram.records.entry import Kept
from marram.services.log import RULING
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
    entries: list[Shown]


@router.get("/day")
def day_page(request: Request) -> HTMLResponse:
    """Show the rulings of a day."""
    kept = kept_here(request)
    desk = workplace(request)
    day = desk.read(request).conditions.on
    entries = [
        Shown(one, title_of(one), "", "")
        for one in kept.log.entries(kept.event_id, kind=RULING)
        if _played_on(one) == day
    ]
    return show(
        request,
        "day.html",
        None,
        title=text("log.day.title"),
        day=day_words(day),
        hours=by_hour(entries),
        drawing=drawing(desk.course, entries),
        entries=entries,
        without_place=[one for one in entries if "place" not in one.entry.told],
    )


def by_hour(entries: list[Shown]) -> list[Hour]:
    """Return the rulings by the hour they were given in, from the first to the last hour, the empty ones too."""
    hours = [one.given_at.hour for one in entries]
    if not hours:
        return []
    found = {hour: Hour(hour, []) for hour in range(min(hours), max(hours) + 1)}
    for one, at in zip(entries, hours, strict=True):
        found[at].entries.append(one)
    return list(found.values())


def drawing(course: Course, entries: list[Shown]) -> Markup:
    """Return the course with a pin for each ruling whose place is known, as SVG; empty where no place is known."""
    placed = [one for one in entries if "place" in one.entry.told]
    if not placed:
        return Markup()
    shapes = [(kind, feature.geometry) for kind in DRAWN for feature in course.of(kind)]
    lines = [hole.line for hole in course.holes.values()]
    west, south, east, north = _frame([shape for _, shape in shapes] + list(lines))
    scale = WIDTH / (east - west)

    def at(x: float, y: float) -> str:
        return f"{(x - west) * scale:.0f},{(north - y) * scale:.0f}"

    parts: list[str] = [
        Markup('<svg class="day-map" viewBox="0 0 {:.0f} {:.0f}" role="img" aria-label="{}">').format(
            WIDTH, (north - south) * scale, text("log.day.map")
        )
    ]
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
    for one in placed:
        place = one.entry.told["place"]
        x, y = at(*course.plane.to_metres(place["longitude"], place["latitude"])).split(",")
        number = (
            one.entry.number
        )  # only the title is anybody's words: escaping each figure takes longest of all
        parts.append(
            f'<a href="/log/{number}"><title>{number}. {escape(one.title)}</title>'
            f'<circle class="pin" cx="{x}" cy="{y}" r="{PIN:.0f}"/>'
            f'<text class="pin-number" x="{x}" y="{y}">{number}</text></a>'
        )
    return Markup("".join([*parts, "</svg>"]))  # noqa: S704 - each part is escaped above


def _frame(shapes: list[BaseGeometry]) -> tuple[float, float, float, float]:
    bounds = [one.bounds for one in shapes if not one.is_empty]
    west, south = (min(one[axis] for one in bounds) for axis in (0, 1))
    east, north = (max(one[axis] for one in bounds) for axis in (2, 3))
    edge = 0.02 * (east - west)
    return west - edge, south - edge, east + edge, north + edge


def _polygons(shape: BaseGeometry) -> list[Polygon]:
    parts = list(getattr(shape, "geoms", [shape]))
    return [one for one in parts if isinstance(one, Polygon) and not one.is_empty]


def _played_on(entry: Kept) -> date | None:
    case = entry.content.get("case")
    try:
        return datetime.fromisoformat(case["played_on"]).date() if isinstance(case, dict) else None
    except (KeyError, ValueError):
        return None
