"""Several drawings on one page, a grid of figures, each under its title and to a scale of its own."""

from collections.abc import Sequence

from marram.course.model import Course
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.pictures.drawing import figure, title
from marram.relief.pictures.lettering import WIDTH
from marram.relief.pictures.markup import Ids, add, root, written
from marram.relief.pictures.styles import PAPER

GAP = 12.0
"""Picture units between two drawings."""
SIDE_BY_SIDE = 2
"""Drawings in a row: as many as stay legible at arm's length on a sheet of paper or a screen (a choice of ours)."""
TYPE = {"font-family": "Atkinson Hyperlegible Next, system-ui, sans-serif", "fill": "none"}
"""The type of a page that stands by itself: that of the desk and of the printed sheets."""


def sheet_svg(drawings: Sequence[Sequence[ReliefArea]], course: Course | None = None) -> str:
    """Return one drawing that holds several, one for each relief option.

    Args:
        drawings: for each option its areas (several where the player has the choice between them).
        course: the course; its areas are drawn below.

    Raises:
        BadPlace: if an option has no area to draw.
    """
    figures = [
        figure(areas, course, Ids(f"option-{number}"), f"{number}. {title(areas)}" if areas else "")
        for number, areas in enumerate(drawings, start=1)
    ]
    columns = max(1, min(SIDE_BY_SIDE, len(figures)))
    rows = [figures[start : start + columns] for start in range(0, len(figures), columns)]
    heights = [max(float(one.get("height", "0")) for one in row) for row in rows]
    width = columns * WIDTH + (columns - 1) * GAP
    height = max(sum(heights) + GAP * (len(rows) - 1), 0.0)
    page = root(width, height, TYPE)
    add(page, "rect", width=width, height=height, fill=PAPER)
    top = 0.0
    for row, tall in zip(rows, heights, strict=True):
        for column, one in enumerate(row):
            one.set("x", f"{column * (WIDTH + GAP):g}")
            one.set("y", f"{top:g}")
            page.append(one)
        top += tall + GAP
    return written(page)
