"""The hole location sheet: every green with its hole, and the numbers a player paces."""

import math
from collections.abc import Mapping
from datetime import date

from shapely.geometry import Point

from marram.course.green_frame import GreenFrame, Side
from marram.course.hole_locations import FROM_EDGE
from marram.course.model import Course
from marram.paper.green_drawing import SIZE, green_svg
from marram.paper.typeset import typeset

_LETTER = {Side.LEFT: "L", Side.CENTRE: "C", Side.RIGHT: "R"}
COLUMNS = 3


def sheet_pdf(course: Course, places: Mapping[int, Point], *, title: str, day: date) -> bytes:
    """Return the sheet as PDF.

    Args:
        course: the map.
        places: where each hole is cut, in local metres, by hole.
        title: the name of the competition or round.
        day: the day of play.

    Raises:
        BadPlace: a hole's green is not mapped, or a place is not on it.
    """
    frames = {number: GreenFrame.of(course.holes[number]) for number in places}
    rows = []
    for number, place in sorted(places.items()):
        numbers = frames[number].numbers(place)
        depth, across = numbers.in_paces()
        rows.append(
            {
                "hole": number,
                "depth": depth,
                "side": f"{across} {_LETTER[numbers.side]}",
                "green": round(numbers.green_depth / 0.9144),
                "close": numbers.from_edge < FROM_EDGE,
            }
        )
    drawings = {f"green-{number}": green_svg(frames[number], place) for number, place in places.items()}
    data = {
        "course": course.name,
        "title": title,
        "day": f"{day:%d %B %Y}",
        "rows": rows,
        "credit": course.credit,
    }
    return typeset("hole_location_sheet", data, drawings)


def sheet_svg(course: Course, places: Mapping[int, Point]) -> str:
    """Return every green with its hole in one SVG, three in a row.

    Raises:
        BadPlace: as for :func:`sheet_pdf`.
    """
    parts = []
    for index, (number, place) in enumerate(sorted(places.items())):
        x, y = (index % COLUMNS) * SIZE, (index // COLUMNS) * (SIZE + 28) + 28
        drawn = green_svg(GreenFrame.of(course.holes[number]), place)
        parts.append(
            f'<text x="{x + 12:g}" y="{y:g}" font-size="20" font-weight="bold" font-family="sans-serif">{number}</text>'
            + drawn.replace("<svg ", f'<svg x="{x:g}" y="{y:g}" ', 1)
        )
    height = math.ceil(len(places) / COLUMNS) * (SIZE + 28) + 28
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {COLUMNS * SIZE:g} {height:g}" width="100%" role="img" '
        f'aria-label="Hole locations: {len(places)} greens">{"".join(parts)}</svg>\n'
    )
