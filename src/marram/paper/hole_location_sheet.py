"""The hole location sheet: every green with its hole, and the numbers a player paces."""

import math
from collections.abc import Mapping, Sequence
from datetime import date
from html import escape
from typing import Any

from shapely.geometry import Point

from marram.course.greens.green_frame import PACE, GreenFrame
from marram.course.greens.hole_warnings import Against, hole_warnings
from marram.course.greens.slope import GreenSlopes, in_percent
from marram.course.model import Course
from marram.paper.green_drawing import SIZE, green_svg
from marram.paper.typeset import typeset
from marram.words.language import language
from marram.words.spoken import spoken
from marram.words.texts import count_text, day_words, text

_SHORT = (Against.NEAR_EDGE, Against.STEEP, Against.TOO_STEEP, Against.NEAR_SEVERE_SLOPE)
"""What the sheet warns of."""
COLUMNS = 3

LEVEL = 0.05
"""Percent: ground that falls less is called level, since it would read 0.0 %."""


def sheet_pdf(
    course: Course,
    places: Mapping[int, Point],
    *,
    title: str,
    day: date,
    slopes: GreenSlopes | None = None,
) -> bytes:
    """Return the sheet as PDF.

    Args:
        course: the map.
        places: where each hole is cut, in local metres, by hole.
        title: the name of the competition or round.
        day: the day of play.
        slopes: the ground of the greens, or ``None`` where nothing is known of it.

    Raises:
        BadPlace: a hole's green is not mapped, or a place is not on it.
    """
    frames = {number: GreenFrame.of(course.holes[number]) for number in places}
    rows = []
    for number, place in sorted(places.items()):
        numbers = frames[number].numbers(place)
        depth, across = numbers.in_paces()
        against = hole_warnings(course.holes[number], place, slopes=slopes)
        rows.append(
            {
                "hole": number,
                "depth": depth,
                "side": text(
                    "holes.paper.side", paces=across, side=text(f"holes.letter.{numbers.side.value}")
                ),
                "green": round(numbers.green_depth / PACE),
                "slope": slope_words(frames[number], number, place, slopes),
                "against": [text(f"holes.against.{one.kind.value}") for one in against if one.kind in _SHORT],
            }
        )
    drawings = {
        f"green-{number}": _drawn(frames[number], number, place, slopes) for number, place in places.items()
    }
    data = {
        "course": course.name,
        "title": title,
        "day": day_words(day),
        "rows": rows,
        "slope": slope_note(slopes),
        "credit": course.credit,
        "words": _words(rows),
    }
    return typeset("hole_location_sheet", data, drawings)


def _words(rows: Sequence[Mapping[str, Any]]) -> dict[str, Any]:
    """Return the words of the sheet; those of each row by the number of its hole."""
    return {
        "language": language().code,
        "title": text("holes.title"),
        "depth": text("holes.paper.depth"),
        "decides": text("holes.decides"),
        "credit": text("holes.paper.credit"),
        "green": {str(row["hole"]): text("holes.paper.green", paces=row["green"]) for row in rows},
        "alt": {
            str(row["hole"]): text("holes.paper.alt", hole=row["hole"], depth=row["depth"], side=row["side"])
            for row in rows
        },
    }


def sheet_svg(course: Course, places: Mapping[int, Point], slopes: GreenSlopes | None = None) -> str:
    """Return every green with its hole in one SVG, three in a row.

    Raises:
        BadPlace: as for :func:`sheet_pdf`.
    """
    parts = []
    for index, (number, place) in enumerate(sorted(places.items())):
        x, y = (index % COLUMNS) * SIZE, (index // COLUMNS) * (SIZE + 28) + 28
        frame = GreenFrame.of(course.holes[number])
        slope = slope_words(frame, number, place, slopes)
        parts.append(
            f'<text x="{x + 12:g}" y="{y:g}" font-size="20" font-weight="bold" font-family="sans-serif">{number}</text>'
            + (
                f'<text x="{x + SIZE - 12:g}" y="{y:g}" font-size="13" text-anchor="end" font-family="sans-serif">{escape(slope)}</text>'
                if slope
                else ""
            )
            + _drawn(frame, number, place, slopes).replace("<svg ", f'<svg x="{x:g}" y="{y:g}" ', 1)
        )
    height = math.ceil(len(places) / COLUMNS) * (SIZE + 28) + 44
    parts.append(
        f'<text x="12" y="{height - 12:g}" font-size="11" font-family="sans-serif">{escape(slope_note(slopes))}</text>'
    )
    shown = count_text("holes.paper.shown", len(places))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {COLUMNS * SIZE:g} {height:g}" width="100%" role="img" '
        f'aria-label="{escape(shown)}">{"".join(parts)}</svg>\n'
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
