"""Interference with the line of play, which counts only for a ball on the putting green (Rule 16.1a(1)).

The line of play is taken as the straight line to the hole. A putt that breaks, and the reasonable distance on
either side of the line, are for the player and the referee to judge (Definition of line of play).
"""

from dataclasses import dataclass

import numpy as np

from marram.relief.geometry.corners import Floats
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.tolerance import ROUNDING
from marram.relief.interference.interference import Booleans

_BEHIND = 4.0
"""How far the shadow of a corner is drawn on, in reaches: beyond all that a search looks at."""

_LEFT = np.array((-1.0, 1.0))
"""Turns (y, x) of a direction to the left of it."""

_TOUCHED = 10 * ROUNDING
"""Metres: a corner no further from the line is taken as touched by it."""


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
        self._starts, self._ends = np.ascontiguousarray(edges[:, :2].T), np.ascontiguousarray(edges[:, 2:].T)
        near = [one.corners.near(*ball, reach).edges - shift for one in whole.conditions]
        self.segments: Floats = np.vstack([*near, self._shadows(edges[:, :2], reach)])

    def _shadows(self, corners: Floats, reach: float) -> Floats:
        ray = corners - self._hole
        length = np.sqrt((ray * ray).sum(axis=1))[:, None]
        far = _BEHIND * (reach + length + np.hypot(*self._hole))
        rays: Floats = np.hstack([corners, corners + ray / np.maximum(length, ROUNDING) * far])
        kept: Floats = rays[length[:, 0] > ROUNDING]
        return kept

    def clear(self, places: Floats) -> Booleans:
        """Return for each place whether no edge cuts the line to the hole (touching does not count)."""
        way = self._hole - places
        length = np.sqrt((way * way).sum(axis=1))
        along = way / np.maximum(length, ROUNDING)[:, None]
        beside = along[:, ::-1] * _LEFT
        # A row for each place, a column for each edge: how far to the left of the line to the hole both its ends lie.
        here = (beside * places).sum(axis=1)[:, None]
        side_start, side_end = beside @ self._starts - here, beside @ self._ends - here
        across = np.minimum(side_start, side_end) < -ROUNDING
        across &= np.maximum(side_start, side_end) > ROUNDING
        place, edge = np.nonzero(across)
        free: Booleans = np.ones(len(places), dtype=bool)
        if len(place):
            # Where the few edges that cross the line do so, as far along it as each end lies.
            left, right = side_start[place, edge], side_end[place, edge]
            start = ((self._starts.T[edge] - places[place]) * along[place]).sum(axis=1)
            end = ((self._ends.T[edge] - places[place]) * along[place]).sum(axis=1)
            met = start + left / (left - right) * (end - start)
            free[place[(met > ROUNDING) & (met < length[place] - ROUNDING)]] = False
        return free

    def outside(self, place: XY) -> bool:
        """Return whether neither the place nor its line to the hole is inside a condition anywhere.

        A line that cuts no edge may still run through a condition, entering exactly at corners: between two corners
        that it touches it is all inside or all outside, so one place of each stretch tells.
        """
        at = np.array(place)
        way = self._hole - at
        length = float(np.hypot(*way))
        along = way / max(length, ROUNDING)
        corners = self._edges[:, :2] - at
        ahead = corners @ along
        touched = (np.abs(corners @ (-along[1], along[0])) <= _TOUCHED) & (ahead > 0) & (ahead < length)
        stops = np.sort(np.concatenate(([0.0, length], ahead[touched])))
        middles = np.concatenate(([0.0], (stops[1:] + stops[:-1]) / 2))
        x, y = (at + self._ball + middles[:, None] * along).T.tolist()
        return not any(
            one.holds(*on_line) and one.depth(*on_line) > ROUNDING
            for one in self._whole.conditions
            for on_line in zip(x, y, strict=True)
        )
