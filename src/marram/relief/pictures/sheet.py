"""Several drawings on one sheet, each to a scale of its own, one below the other."""

import re
from collections.abc import Sequence

from marram.course.model import Course
from marram.relief.geometry.area import ReliefArea
from marram.relief.pictures.drawing import svg
from marram.relief.pictures.legend import WIDTH

GAP = 12.0
"""Picture units between two drawings."""

_VIEW_BOX = re.compile(r'viewBox="0 0 ([\d.]+) ([\d.]+)" width="100%"')


def sheet_svg(drawings: Sequence[Sequence[ReliefArea]], course: Course | None = None) -> str:
    """Return one drawing that holds several, one for each relief option.

    Args:
        drawings: for each option its areas (several where the player has the choice between them).
        course: the course; its areas are drawn below.

    Raises:
        BadPlace: if an option has no area to draw.
    """
    parts, top = [], 0.0
    for number, areas in enumerate(drawings, start=1):
        drawn = svg(areas, course, prefix=f"option-{number}")
        found = _VIEW_BOX.search(drawn)
        assert found is not None
        width, height = float(found[1]), float(found[2])
        placed = f'viewBox="0 0 {width:g} {height:g}" x="0" y="{top:g}" width="{width:g}" height="{height:g}"'
        parts.append(drawn.replace(found[0], placed))
        top += height + GAP
    height = max(top - GAP, 0.0)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH:g} {height:g}" width="100%">\n'
        + "".join(parts)
        + "</svg>\n"
    )
