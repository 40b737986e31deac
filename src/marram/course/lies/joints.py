"""Where lines with a width meet end to end: the ground at the outside of the bend, which flat ends leave out."""

from collections.abc import Sequence
from math import cos, hypot, pi

import numpy as np
import shapely
from shapely import STRtree
from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from marram.course.lies.tolerance import SEAM
from marram.course.reading.shapes import strip

ROUND = 32
"""Corners in a quarter of a round joint."""

XY = tuple[float, float]


def joints(lines: Sequence[tuple[LineString, float]]) -> list[BaseGeometry]:
    """Return the ground at each joint of lines, as wide there as the narrower of the two.

    Lines that go on or turn by a right angle at most are joined as the bends of one line are, with a mitre; at a
    sharper angle the joint is round.

    Args:
        lines: each line with half its width, metres.
    """
    ends = [(*end, half) for line, half in lines for end in _ends(line)]
    if len(ends) < 2:
        return []
    points = shapely.points([end[0] for end in ends])
    first, second = STRtree(points).query(points, predicate="dwithin", distance=SEAM)
    pairs = np.flatnonzero(first < second)
    return [_joint(ends[first[i]], ends[second[i]]) for i in pairs]


def _ends(line: LineString) -> list[tuple[XY, XY]]:
    """Return both ends of a line, each with the first place along the line that is not the end itself."""
    places: list[XY] = list(dict.fromkeys((float(x), float(y)) for x, y in shapely.get_coordinates(line)))
    if len(places) < 2:
        return []
    closed = line.is_closed
    return [
        (places[0], places[1]),
        (places[0] if closed else places[-1], places[-1] if closed else places[-2]),
    ]


def _joint(one: tuple[XY, XY, float], other: tuple[XY, XY, float]) -> BaseGeometry:
    end, towards, half = one
    _, other_towards, other_half = other
    half = min(half, other_half)
    before, after = _step(end, towards, 2 * half), _step(end, other_towards, 2 * half)
    ahead = (before[0] - end[0]) * (after[0] - end[0]) + (before[1] - end[1]) * (after[1] - end[1])
    if ahead > 0:
        # A polygon around the circle, not inside it: no part of the path is left out.
        return shapely.buffer(Point(end), half / cos(pi / (4 * ROUND)), quad_segs=ROUND)
    return strip(LineString([before, end, after]), half)


def _step(start: XY, towards: XY, most: float) -> XY:
    """Return the place some way from a start towards another, no further than it."""
    x, y = towards[0] - start[0], towards[1] - start[1]
    length = hypot(x, y)
    part = min(1.0, most / length) if length > 0 else 0.0
    return start[0] + part * x, start[1] + part * y
