"""What stands below the map of a drawing: the key, the distances to check, what was taken for granted."""

import re
from collections.abc import Sequence
from html import escape

from marram.course.model import Course, Feature
from marram.relief.constructions.construction import PointMark
from marram.relief.geometry.area import ReliefArea
from marram.relief.pictures.labels import PLAIN, SIZE, text_width
from marram.relief.pictures.picture_words import (
    assumed_words,
    ground_words,
    kind_words,
    mark_words,
    measure_words,
)
from marram.relief.pictures.styles import AREA, EDGES, FILLS, INK, LINES, PAPER

WIDTH = 390.0
"""Picture units across: a usual phone."""
SMALL = 14.0
"""Picture units: the height of letters below the map."""
_ROW = 21.0
_UNIT = re.compile(r"(?<=\d) (?=(m|yd)\b)")
"""The space between a number and its unit, which the end of a line never parts."""


def write(text: str, x: float, y: float, size: float, anchor: str = "start", *, bold: bool = False) -> str:
    """Return a line of text with a light edge around the letters, legible on any pattern."""
    weight = ' font-weight="700"' if bold else ""
    return (
        f'<text x="{x:.1f}" y="{y:.1f}" font-size="{size:g}" text-anchor="{anchor}"{weight} fill="{INK}" '
        f'stroke="{PAPER}" stroke-width="4" stroke-linejoin="round" paint-order="stroke">{escape(text)}</text>'
    )


def key(features: Sequence[Feature], areas: Sequence[ReliefArea], top: float) -> tuple[list[str], float]:
    """Draw the key: what each pattern and line means, in two columns."""
    entries = [(f'fill="url(#area)" stroke="{AREA}" stroke-width="2"', kind_words(areas[0].kind), True)]
    for kind in dict.fromkeys(one.kind for one in features):
        fill = FILLS.get(kind, "none")
        edge = EDGES.get(kind, f'stroke="{INK}" stroke-width="1"')
        entries.append((f'fill="{fill}" {edge}', ground_words(kind), True))
    roles = dict.fromkeys(
        mark.role for area in areas for mark in area.construction if not isinstance(mark, PointMark)
    )
    entries += [(LINES[role], mark_words(role), False) for role in roles if role in LINES]
    drawn = []
    columns, x, y = WIDTH / 2, 10.0, top + 8
    for style, words, is_area in entries:
        wide = 36 + text_width(words) * PLAIN * SMALL / SIZE > columns - 10
        if wide and x > 10.0:
            x, y = 10.0, y + _ROW
        shape = f"M{x:g} {y + 2:g}h24v13h-24z" if is_area else f"M{x:g} {y + 9:g}h24"
        drawn.append(f'<path d="{shape}" {style}/>' + write(words, x + 32, y + 14, SMALL))
        if x > 10.0 or wide:
            x, y = 10.0, y + _ROW
        else:
            x += columns
    return drawn, (y if x == 10.0 else y + _ROW) - top + 4


def notes(areas: Sequence[ReliefArea], course: Course | None, top: float) -> tuple[list[str], float]:
    """Write the distances to check, what was taken for granted, and the map's credit line."""
    lines = []
    for number, area in enumerate(areas, 1):
        which = f"{number}: " if len(areas) > 1 else ""
        lines += [which + measure_words(one) for one in area.measures]
    if not areas[0].is_spot:
        lines.append(f"{sum(area.area_m2 for area in areas):.1f} m²")
    lines += [assumed_words(one) for one in dict.fromkeys(key for area in areas for key in area.remarks)]
    if course is not None and course.credit:
        lines.append(course.credit)
    rows = [row for line in dict.fromkeys(lines) for row in _wrapped(line)]
    return [write(row, 10, top + 14 + i * _ROW, SMALL) for i, row in enumerate(rows)], len(rows) * _ROW + 8


def _wrapped(line: str) -> list[str]:
    rows = [""]
    for word in _UNIT.sub("\u00a0", line).split(" "):
        longer = f"{rows[-1]} {word}".strip()
        if text_width(longer) * PLAIN * SMALL / SIZE > WIDTH - 20 and rows[-1]:
            rows.append(word)
        else:
            rows[-1] = longer
    return rows
