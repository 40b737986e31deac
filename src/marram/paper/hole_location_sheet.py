"""The hole location sheet: every green with its hole, and the numbers a player paces."""

import math
from collections.abc import Mapping
from datetime import date

from shapely.geometry import Point

from marram.course.greens.green_frame import PACE, GreenFrame, Side
from marram.course.greens.hole_warnings import Against, hole_warnings
from marram.course.greens.slope import GreenSlopes, in_percent
from marram.course.model import Course
from marram.paper.green_drawing import SIZE, green_svg
from marram.paper.typeset import typeset

_LETTER = {Side.LEFT: "L", Side.CENTRE: "C", Side.RIGHT: "R"}
_SHORT = {
    Against.NEAR_EDGE: "less than 4 paces from an edge",
    Against.STEEP: "steep",
    Against.TOO_STEEP: "too steep",
    Against.NEAR_SEVERE_SLOPE: "less than 3 paces from a severe slope",
}
COLUMNS = 3


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
                "side": f"{across} {_LETTER[numbers.side]}",
                "green": round(numbers.green_depth / PACE),
                "slope": slope_words(frames[number], number, place, slopes),
                "against": [_SHORT[one.kind] for one in against if one.kind in _SHORT],
            }
        )
    drawings = {
        f"green-{number}": _drawn(frames[number], number, place, slopes) for number, place in places.items()
    }
    data = {
        "course": course.name,
        "title": title,
        "day": f"{day:%d %B %Y}",
        "rows": rows,
        "slope": slope_note(slopes),
        "credit": course.credit,
    }
    return typeset("hole_location_sheet", data, drawings)


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
                f'<text x="{x + SIZE - 12:g}" y="{y:g}" font-size="13" text-anchor="end" font-family="sans-serif">{slope}</text>'
                if slope
                else ""
            )
            + _drawn(frame, number, place, slopes).replace("<svg ", f'<svg x="{x:g}" y="{y:g}" ', 1)
        )
    height = math.ceil(len(places) / COLUMNS) * (SIZE + 28) + 44
    parts.append(
        f'<text x="12" y="{height - 12:g}" font-size="11" font-family="sans-serif">{slope_note(slopes)}</text>'
    )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {COLUMNS * SIZE:g} {height:g}" width="100%" role="img" '
        f'aria-label="Hole locations: {len(places)} greens">{"".join(parts)}</svg>\n'
    )


def slope_words(frame: GreenFrame, hole: int, place: Point, slopes: GreenSlopes | None) -> str:
    """Return how the ground around a hole falls, such as "falls 1.8 % to the front left", or nothing where unknown."""
    ground = slopes.surfaces.get(hole) if slopes else None
    found = ground.at(place) if ground else None
    if found is None:
        return ""
    return "level" if found.percent < 0.05 else f"falls {found.percent:.1f} % to the {frame.way(found.fall)}"


def slope_note(slopes: GreenSlopes | None) -> str:
    """Return what the sheet says about slope as a whole."""
    if slopes is None:
        return "Slope was not considered."
    limits = slopes.limits
    speed = (
        f"a green speed of {limits.green_speed:g} feet"
        if limits.green_speed
        else "the fastest greens, the speed not being known"
    )
    return (
        f"Arrows point down the slope, heavy where it is steeper than {in_percent(limits.critical)} % "
        f"(for {speed}; at most {in_percent(limits.recommended)} % is recommended)."
    )


def _drawn(frame: GreenFrame, hole: int, place: Point, slopes: GreenSlopes | None) -> str:
    ground = slopes.surfaces.get(hole) if slopes else None
    return green_svg(frame, place, ground, slopes.limits if slopes else None)
