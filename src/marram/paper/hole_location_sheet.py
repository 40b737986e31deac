"""The hole location sheet: every green with its hole, and the numbers a player paces."""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from html import escape

from shapely.geometry import Point

from marram.course.greens.green_frame import PACE, GreenFrame
from marram.course.greens.hole_warnings import Against, hole_warnings
from marram.course.greens.slope import GreenSlopes, in_percent
from marram.course.model import Course
from marram.paper.green_drawing import FONT, SIZE, green_svg
from marram.paper.paper_size import PaperSize
from marram.paper.typeset import typeset
from marram.words.language import language
from marram.words.spoken import spoken
from marram.words.texts import count_text, long_day_words, text

_SHORT = (Against.NEAR_EDGE, Against.STEEP, Against.TOO_STEEP, Against.NEAR_SEVERE_SLOPE)
"""What the sheet warns of."""
COLUMNS = 3

LEVEL = 0.05
"""Percent: ground that falls less is called level, since it would read 0.0 %."""


@dataclass(frozen=True, slots=True)
class GreenRow:
    """One green of the sheet, in words and in its drawing.

    Attributes:
        hole: its number.
        par: its par in words; empty where the map has none.
        depth: whole paces from the front of the green to the hole.
        side: whole paces from the nearest side, and which, such as "5 L".
        green: how deep the green is, in words.
        slope: how the ground falls around the hole; empty where it is not known or not for the reader.
        against: what speaks against the place, in short.
        drawing: the green with its hole, as SVG.
        alt: what the drawing shows, in words.
    """

    hole: int
    par: str
    depth: int
    side: str
    green: str
    slope: str
    against: tuple[str, ...]
    drawing: str
    alt: str


def sheet_rows(
    course: Course,
    places: Mapping[int, Point],
    slopes: GreenSlopes | None = None,
    *,
    for_players: bool = False,
) -> list[GreenRow]:
    """Return the greens of the sheet by hole, for paper and for a page.

    Args:
        course: the map.
        places: where each hole is cut, in local metres, by hole.
        slopes: the ground of the greens, or ``None`` where nothing is known of it.
        for_players: leave out slopes and what speaks against a place: they are the Committee's.

    Raises:
        BadPlace: a hole's green is not mapped, or a place is not on it.
    """
    shown = None if for_players else slopes
    rows = []
    for number, place in sorted(places.items()):
        hole = course.holes[number]
        frame = GreenFrame.of(hole)
        numbers = frame.numbers(place)
        depth, across = numbers.in_paces()
        side = text("holes.paper.side", paces=across, side=text(f"holes.letter.{numbers.side.value}"))
        against = () if for_players else hole_warnings(hole, place, slopes=slopes)
        rows.append(
            GreenRow(
                number,
                text("shell.par", par=hole.par) if hole.par else "",
                depth,
                side,
                text("holes.paper.green", paces=round(numbers.green_depth / PACE)),
                slope_words(frame, number, place, shown),
                tuple(text(f"holes.against.{one.kind.value}") for one in against if one.kind in _SHORT),
                _drawn(frame, number, place, shown),
                text("holes.paper.alt", hole=number, depth=depth, side=side),
            )
        )
    return rows


def sheet_pdf(
    course: Course,
    places: Mapping[int, Point],
    *,
    title: str,
    day: date,
    slopes: GreenSlopes | None = None,
    for_players: bool = False,
    paper: PaperSize = PaperSize.A4,
) -> bytes:
    """Return the sheet as PDF: eighteen greens on a page.

    Args:
        course: the map.
        places: where each hole is cut, in local metres, by hole.
        title: the name of the competition or round.
        day: the day of play.
        slopes: the ground of the greens, or ``None`` where nothing is known of it.
        for_players: as for :func:`sheet_rows`.
        paper: the size of the page.

    Raises:
        BadPlace: a hole's green is not mapped, or a place is not on it.
    """
    rows = sheet_rows(course, places, slopes, for_players=for_players)
    data = {
        "course": course.name,
        "title": title,
        "day": long_day_words(day),
        "paper": paper.in_typst,
        "rows": [
            {key: getattr(row, key) for key in ("hole", "par", "depth", "side", "green", "slope", "against")}
            for row in rows
        ],
        "slope": "" if for_players else slope_note(slopes),
        "credit": course.credit,
        "words": {
            "language": language().code,
            "title": text("holes.title"),
            "version": text("holes.paper.players" if for_players else "holes.paper.committee"),
            "depth": text("holes.paper.depth"),
            "decides": text("holes.decides"),
            "credit": text("holes.paper.credit"),
            "alt": {str(row.hole): row.alt for row in rows},
        },
    }
    return typeset("hole_location_sheet", data, {f"green-{row.hole}": row.drawing for row in rows})


def sheet_svg(
    course: Course,
    places: Mapping[int, Point],
    slopes: GreenSlopes | None = None,
    *,
    for_players: bool = False,
) -> str:
    """Return every green with its hole in one SVG, three in a row.

    Raises:
        BadPlace: as for :func:`sheet_pdf`.
    """
    parts = []
    rows = sheet_rows(course, places, slopes, for_players=for_players)
    for index, row in enumerate(rows):
        x, y = (index % COLUMNS) * SIZE, (index // COLUMNS) * (SIZE + 28) + 28
        parts.append(
            f'<text x="{x + 12:g}" y="{y:g}" font-size="20" font-weight="bold">{row.hole}</text>'
            + (
                f'<text x="{x + SIZE - 12:g}" y="{y:g}" font-size="13" text-anchor="end">{escape(row.slope)}</text>'
                if row.slope
                else ""
            )
            + row.drawing.replace("<svg ", f'<svg x="{x:g}" y="{y:g}" ', 1)
        )
    height = math.ceil(len(rows) / COLUMNS) * (SIZE + 28) + 44
    if not for_players:
        parts.append(f'<text x="12" y="{height - 12:g}" font-size="11">{escape(slope_note(slopes))}</text>')
    shown = count_text("holes.paper.shown", len(rows))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {COLUMNS * SIZE:g} {height:g}" width="100%" role="img" '
        f'font-family="{FONT}" aria-label="{escape(shown)}">{"".join(parts)}</svg>\n'
    )


def slope_words(frame: GreenFrame, hole: int, place: Point, slopes: GreenSlopes | None) -> str:
    """Return how the ground around a hole falls, such as "falls 1.8 % to the front left", or nothing where unknown."""
    ground = slopes.surfaces.get(hole) if slopes else None
    found = ground.at(place) if ground else None
    if found is None:
        return ""
    if found.percent < LEVEL:
        return text("holes.slope.level")
    return text("holes.slope.falls", percent=found.percent, way=spoken(frame.way(found.fall)))


def slope_note(slopes: GreenSlopes | None) -> str:
    """Return what the sheet says about slope as a whole."""
    if slopes is None:
        return text("holes.slope.not_considered")
    limits = slopes.limits
    speed = (
        text("holes.slope.speed", feet=limits.green_speed)
        if limits.green_speed
        else text("holes.slope.no_speed")
    )
    return text(
        "holes.slope.arrows",
        critical=in_percent(limits.critical),
        speed=speed,
        recommended=in_percent(limits.recommended),
    )


def _drawn(frame: GreenFrame, hole: int, place: Point, slopes: GreenSlopes | None) -> str:
    ground = slopes.surfaces.get(hole) if slopes else None
    return green_svg(frame, place, ground, slopes.limits if slopes else None)
