"""Shape the greens of the demonstration course and write their elevations: ``python -m marram.demo.draw_greens``.

The result is committed as ``greens.csv``; running this again gives the same file. The shapes are invented: each
green falls gently from back to front, with a few broad mounds and hollows, and some have a step between two levels.
"""

from collections.abc import Iterator
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from shapely import contains_xy

from marram.course import load
from marram.course.greens.green_frame import GreenFrame
from marram.course.model import Course
from marram.demo import COURSE

SEED = 20230621
APART = 2.5
"""Metres between elevations."""

MARGIN = 3.0
STEPPED = (4, 9, 13, 17)
"""Holes whose green has two levels."""


def rows(course: Course) -> Iterator[str]:
    """Yield the lines of the file: longitude, latitude and elevation in metres."""
    yield "longitude,latitude,elevation"
    for number, hole in course.holes.items():
        if hole.green is None:
            continue
        around = hole.green.geometry.buffer(MARGIN)
        west, south, east, north = around.bounds
        x, y = np.meshgrid(np.arange(west, east, APART), np.arange(south, north, APART))
        inside = contains_xy(around, x, y)
        places = np.column_stack([x[inside], y[inside]])
        heights = shape(GreenFrame.of(hole), places, np.random.default_rng(SEED + number), number in STEPPED)
        for (east_, north_), height in zip(places.tolist(), heights.tolist(), strict=True):
            longitude, latitude = course.plane.to_degrees(east_, north_)
            yield f"{longitude:.7f},{latitude:.7f},{height:.3f}"


def shape(
    frame: GreenFrame, places: NDArray[np.float64], random: np.random.Generator, stepped: bool
) -> NDArray[np.float64]:
    """Return the elevation of places of one green, metres."""
    middle = np.array(frame.green.centroid.coords[0])
    along, left = (places - middle) @ frame.along, (places - middle) @ frame.left
    heights = 6 + 0.018 * along + random.uniform(-0.008, 0.008) * left
    for _ in range(4):
        at = random.uniform(-9, 9, 2)
        away = (along - at[0]) ** 2 + (left - at[1]) ** 2
        heights += random.uniform(-0.12, 0.14) * np.exp(-away / (2 * random.uniform(4.5, 7) ** 2))
    if stepped:
        heights += 0.45 / (1 + np.exp(-(along - random.uniform(1, 4) - 0.2 * left) / 0.8))
    return np.asarray(heights)


if __name__ == "__main__":
    path = Path(__file__).with_name("greens.csv")
    path.write_text("\n".join(rows(load(COURSE))) + "\n", encoding="utf-8")
