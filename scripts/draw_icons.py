"""Draws the pictures of the web app from the desk's own mark: ``python scripts/draw_icons.py`` writes them where they ship.

The mark is three blades of marram on a dune, as in ``desk/shell/static/mark.svg``; on a ground of paper with room
around it, so that a system may cut it to any shape (W3C Web Application Manifest, "maskable": inner 80 %).
"""

import re
from pathlib import Path

from PIL import Image, ImageDraw

SHELL = Path(__file__).parents[1] / "src" / "marram" / "desk"
SIDES = (192, 512)
PAPER = "#fbf8ef"
ROOM = 0.2
"""The part of the side that stays free at each edge."""
FINE = 4
"""Times finer it is drawn than it is kept, for smooth edges."""


def curve(points: list[complex], steps: int = 60) -> list[complex]:
    """Return places along a cubic Bézier curve."""
    a, b, c, d = points
    return [
        a * (1 - t) ** 3 + 3 * b * t * (1 - t) ** 2 + 3 * c * t**2 * (1 - t) + d * t**3
        for t in (step / steps for step in range(steps + 1))
    ]


def outline(path: str) -> list[complex]:
    """Return the places of a path of the mark: M, C and c, as they stand in the file."""
    places: list[complex] = []
    for letter, numbers in re.findall(r"([MCcz])([^MCcz]*)", path):
        given = [float(one) for one in re.findall(r"-?\d+(?:\.\d+)?", numbers)]
        read = [complex(x, y) for x, y in zip(given[::2], given[1::2], strict=True)]
        if letter == "M":
            places.append(read[0])
        for start in range(0, len(read) - 2, 3) if letter in "Cc" else ():
            here = places[-1]
            along = [one + here if letter == "c" else one for one in read[start : start + 3]]
            places += curve([here, *along])[1:]
    return places


def main() -> None:
    """Write each picture."""
    mark = (SHELL / "shell" / "static" / "mark.svg").read_text(encoding="utf-8")
    for side in SIDES:
        picture = Image.new("RGB", (side * FINE, side * FINE), PAPER)
        pen, scale = ImageDraw.Draw(picture), side * FINE * (1 - 2 * ROOM) / 40
        for path, fill, line in re.findall(r'<path d="([^"]+)" fill="([^"]+)"(?: stroke="([^"]+)")?', mark):
            placed = [
                (side * FINE * ROOM + one.real * scale, side * FINE * ROOM + one.imag * scale)
                for one in outline(path)
            ]
            if fill == "none":
                pen.line(placed, fill=line, width=round(3 * scale), joint="curve")
            else:
                pen.polygon(placed, fill=fill)
        file = SHELL / "offline" / "static" / f"icon-{side}.png"
        picture.resize((side, side), Image.Resampling.LANCZOS).save(file, optimize=True)


if __name__ == "__main__":
    main()
