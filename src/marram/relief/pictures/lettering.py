"""Lines of text in a drawing: their sizes, written legible on any pattern, and wrapped to the picture."""

import re

from marram.relief.geometry.outline import XY
from marram.relief.pictures.markup import Attributes, Node, say
from marram.relief.pictures.styles import INK, PAPER, stroke
from marram.relief.pictures.type_width import text_width

WIDTH = 390.0
"""Picture units across: a usual phone."""
SMALL = 16.0
"""Picture units: the height of letters below the map."""
ROW = 23.0
"""Picture units from one line of text to the next."""
MARGIN = 10.0
"""Picture units between the text and the edge of the drawing."""
_UNIT = re.compile(r"(?<=\d) (?=(m|yd)\b)|(?<=\),) (?=\d+°)")
"""The space between a number and its unit, or a distance and its bearing, which the end of a line never parts."""


def write(parent: Node, text: str, at: XY, size: float, *, anchor: str = "start", bold: bool = False) -> None:
    """Write a line of text with a light edge around the letters, legible on any pattern."""
    halo = {**stroke(PAPER, 4), "stroke-linejoin": "round", "paint-order": "stroke"}
    weight = {"font-weight": "700"} if bold else {}
    place: Attributes = {"text-anchor": anchor, **weight, **halo}
    say(parent, "text", text, place, x=at[0], y=at[1], font_size=size, fill=INK)


def wrapped(line: str, size: float, *, bold: bool = False, width: float = WIDTH - 2 * MARGIN) -> list[str]:
    """Return a line of text as rows no wider than the picture, or than a width of it."""
    rows = [""]
    for word in _UNIT.sub("\u00a0", line).split(" "):
        longer = f"{rows[-1]} {word}".strip()
        if text_width(longer, size, bold=bold) > width and rows[-1]:
            rows.append(word)
        else:
            rows[-1] = longer
    return rows
