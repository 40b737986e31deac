"""The point across a penalty area that is as far from the hole as where the ball last crossed its edge (Model Local Rule B-2).

From the crossing point the circle about the hole is followed into the penalty area: the opposite edge is where it first comes
out again. Where it does so on both sides, the farther way is across, the nearer one a bay of the same edge (own choice).
"""

from itertools import pairwise
from math import atan2, cos, hypot, pi, sin, sqrt

import shapely
from shapely.geometry.base import BaseGeometry

from marram.relief.areas.construction import distance
from marram.relief.geometry.outline import XY
from marram.relief.place.situation import Situation

_LEAST = 0.5
"""Metres: a penalty area narrower than this has no other side to drop on (own choice)."""


def opposite_point(situation: Situation) -> XY | None:
    """Return the point; ``None`` where no crossing point is known or the circle does not cross the penalty area.

    Args:
        situation: with its crossing point on the edge.
    """
    entry, hole = situation.entry, situation.hole
    crossed = None if entry is None else situation.crossed(entry)
    if entry is None or crossed is None:
        return None
    shape, radius = crossed[1][1].geometry, distance(entry, hole)
    if radius < _LEAST:
        return None
    start = atan2(entry[1] - hole[1], entry[0] - hole[0])
    turns = sorted(
        turn
        for x, y in _on_circle(shape, hole, radius)
        if (turn := (atan2(y - hole[1], x - hole[0]) - start) % (2 * pi)) * radius > _LEAST
        and (2 * pi - turn) * radius > _LEAST
    )
    if not turns:
        return None
    ways = [turn for turn in (turns[0], turns[-1] - 2 * pi) if _inside(shape, hole, radius, start + turn / 2)]
    if not ways:
        return None
    angle = start + max(ways, key=abs)
    return hole[0] + radius * cos(angle), hole[1] + radius * sin(angle)


def _inside(shape: BaseGeometry, hole: XY, radius: float, angle: float) -> bool:
    x, y = hole[0] + radius * cos(angle), hole[1] + radius * sin(angle)
    return bool(shapely.intersects_xy(shape, x, y))


def _on_circle(shape: BaseGeometry, hole: XY, radius: float) -> list[XY]:
    """Return where the edge of an area meets the circle about the hole."""
    found = []
    for line in shapely.get_parts(shape.boundary):
        for (x1, y1), (x2, y2) in pairwise(line.coords):
            dx, dy = x2 - x1, y2 - y1
            x, y, length = x1 - hole[0], y1 - hole[1], hypot(dx, dy)
            if not length:
                continue
            along = -(x * dx + y * dy) / length
            half = radius**2 - (x**2 + y**2 - along**2)
            for way in (-sqrt(half), sqrt(half)) if half >= 0 else ():
                at = (along + way) / length
                found += [(x1 + at * dx, y1 + at * dy)] if 0 <= at <= 1 else []
    return found
