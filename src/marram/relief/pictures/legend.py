"""What stands below the map of a drawing: the key, the distances to check, what was taken for granted."""

import re
from collections.abc import Sequence

from marram.course.model import Course, Feature
from marram.relief.areas.construction import PointMark
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.outline import XY
from marram.relief.pictures.markup import Attributes, Ids, Node, add, say
from marram.relief.pictures.picture_words import (
    assumed_words,
    ground_words,
    kind_words,
    mark_words,
    measure_words,
)
from marram.relief.pictures.styles import AREA, EDGES, INK, LINES, OWN_EDGE, PAPER, fill_of, stroke
from marram.relief.pictures.type_width import text_width

WIDTH = 390.0
"""Picture units across: a usual phone."""
SMALL = 14.0
"""Picture units: the height of letters below the map."""
ROW = 21.0
"""Picture units from one line of text to the next."""
_MARGIN = 10.0
_UNIT = re.compile(r"(?<=\d) (?=(m|yd)\b)")
"""The space between a number and its unit, which the end of a line never parts."""


def write(parent: Node, text: str, at: XY, size: float, *, anchor: str = "start", bold: bool = False) -> None:
    """Write a line of text with a light edge around the letters, legible on any pattern."""
    halo = {**stroke(PAPER, 4), "stroke-linejoin": "round", "paint-order": "stroke"}
    weight = {"font-weight": "700"} if bold else {}
    place: Attributes = {"text-anchor": anchor, **weight, **halo}
    say(parent, "text", text, place, x=at[0], y=at[1], font_size=size, fill=INK)


def add_key(
    parent: Node, features: Sequence[Feature], areas: Sequence[ReliefArea], top: float, ids: Ids
) -> float:
    """Draw the key, what each pattern and line means, in two columns; return where it ends."""
    x, y = _MARGIN, top + 8
    for style, words, is_area in _entries(features, areas, ids):
        wide = 36 + text_width(words, SMALL, bold=False) > WIDTH / 2 - _MARGIN
        if wide and x > _MARGIN:
            x, y = _MARGIN, y + ROW
        swatch = f"M{x:g} {y + 2:g}h24v13h-24z" if is_area else f"M{x:g} {y + 9:g}h24"
        add(parent, "path", style, d=swatch)
        write(parent, words, (x + 32, y + 14), SMALL)
        if x > _MARGIN or wide:
            x, y = _MARGIN, y + ROW
        else:
            x += WIDTH / 2
    return (y if x == _MARGIN else y + ROW) + 4


def _entries(
    features: Sequence[Feature], areas: Sequence[ReliefArea], ids: Ids
) -> list[tuple[Attributes, str, bool]]:
    entries = []
    if not areas[0].is_spot:
        entries.append(({**stroke(AREA, 2), "fill": ids.url("area")}, kind_words(areas[0].kind), True))
    for kind in dict.fromkeys(one.kind for one in features):
        style = fill_of(kind, ids)
        entries.append((style if kind in EDGES else {**style, **OWN_EDGE}, ground_words(kind), True))
    roles = dict.fromkeys(
        mark.role for area in areas for mark in area.construction if not isinstance(mark, PointMark)
    )
    return [*entries, *((LINES[role], mark_words(role), False) for role in roles if role in LINES)]


def add_notes(
    parent: Node, areas: Sequence[ReliefArea], course: Course | None, top: float, more: Sequence[str] = ()
) -> float:
    """Write the distances to check, what was taken for granted, and the map's credit line; return where they end."""
    lines = []
    for number, area in enumerate(areas, 1):
        which = f"{number}: " if len(areas) > 1 else ""
        lines += [which + measure_words(one) for one in area.measures]
    if not areas[0].is_spot:
        lines.append(f"{sum(area.area_m2 for area in areas):.1f} m²")
    lines += [assumed_words(one) for one in dict.fromkeys(key for area in areas for key in area.remarks)]
    lines += more
    if course is not None and course.credit:
        lines.append(course.credit)
    rows = [row for line in dict.fromkeys(lines) for row in wrapped(line, SMALL)]
    for number, row in enumerate(rows):
        write(parent, row, (_MARGIN, top + 14 + number * ROW), SMALL)
    return top + len(rows) * ROW + 8


def wrapped(line: str, size: float, *, bold: bool = False) -> list[str]:
    """Return a line of text as rows no wider than the picture."""
    rows = [""]
    for word in _UNIT.sub("\u00a0", line).split(" "):
        longer = f"{rows[-1]} {word}".strip()
        if text_width(longer, size, bold=bold) > WIDTH - 2 * _MARGIN and rows[-1]:
            rows.append(word)
        else:
            rows[-1] = longer
    return rows
