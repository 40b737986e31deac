"""Interference with the line of play, which counts only for a ball on the putting green (Rule 16.1a(1)).

The line of play is taken as the straight line to the hole. A putt that breaks, and the reasonable distance on
either side of the line, are for the player and the referee to judge (Definition of line of play).
"""

from dataclasses import dataclass

import numpy as np

from marram.relief.corners import Corners, Floats
from marram.relief.interference import Booleans
from marram.relief.outline import XY, Outline
from marram.relief.tolerance import ROUNDING

_BEHIND = 4.0
"""How far the shadow of a corner is drawn on, in reaches: beyond all that a search looks at."""


@dataclass(frozen=True, eq=False)
class LineOfPlayOn:
    """The straight line from the ball to the hole must not run over any of the conditions.

    Attributes:
        conditions: the outlines of the conditions.
        hole: where the hole is.
    """

    conditions: tuple[Outline, ...]
    hole: XY

    def prepare(self, ball: XY, reach: float) -> "PreparedLine":
        """Return what matters within ``reach`` metres of the ball."""
        return PreparedLine(self, ball, reach)


class PreparedLine:
    """The conditions seen from the hole: a place is free when nothing hides the hole from it.

    The hidden places end at edges of the conditions and at the rays from the hole past their corners.
    """

    def __init__(self, whole: LineOfPlayOn, ball: XY, reach: float) -> None:
        self._whole = whole
        self._ball = ball
        self._hole = np.array((whole.hole[0] - ball[0], whole.hole[1] - ball[1]))
        shift = np.array((*ball, *ball))
        edges = np.vstack([one.edges for one in whole.conditions]) - shift
        self._edges = edges
        near: Corners = Corners(edges, np.arange(len(edges))).near(0.0, 0.0, reach)
        self.segments: Floats = np.vstack([near.edges, self._shadows(edges[:, :2], reach)])

    def _shadows(self, corners: Floats, reach: float) -> Floats:
        ray = corners - self._hole
        length = np.sqrt((ray * ray).sum(axis=1))[:, None]
        far = _BEHIND * (reach + length + np.hypot(*self._hole))
        rays: Floats = np.hstack([corners, corners + ray / np.maximum(length, ROUNDING) * far])
        kept: Floats = rays[length[:, 0] > ROUNDING]
        return kept

    def clear(self, places: Floats) -> Booleans:
        """Return for each place whether no edge cuts the line to the hole (touching does not count)."""
        free = np.ones(len(places), dtype=bool)
        for index, place in enumerate(places):
            free[index] = not self._cut(place)
        return free

    def _cut(self, place: Floats) -> bool:
        way = self._hole - place
        length = float(np.hypot(*way))
        if length <= ROUNDING:
            return False
        along = way / length
        start, end = self._edges[:, :2] - place, self._edges[:, 2:] - place
        side_start = along[0] * start[:, 1] - along[1] * start[:, 0]
        side_end = along[0] * end[:, 1] - along[1] * end[:, 0]
        across = np.minimum(side_start, side_end) < -ROUNDING
        across &= np.maximum(side_start, side_end) > ROUNDING
        if not across.any():
            return self._middle_inside(place)
        part = side_start[across] / (side_start[across] - side_end[across])
        at = start[across] + part[:, None] * (end[across] - start[across])
        distance = at @ along
        return bool(((distance > ROUNDING) & (distance < length - ROUNDING)).any()) or self._middle_inside(
            place
        )

    def _middle_inside(self, place: Floats) -> bool:
        """Return whether the middle of the line lies in a condition (the line may enter exactly at corners)."""
        x, y = (place + self._hole) / 2 + np.asarray(self._ball)
        return any(one.depth(x, y) > ROUNDING for one in self._whole.conditions)

    def outside(self, place: XY) -> bool:
        """Return whether the place itself is not inside a condition."""
        x, y = place[0] + self._ball[0], place[1] + self._ball[1]
        return not any(one.depth(x, y) > ROUNDING for one in self._whole.conditions)
