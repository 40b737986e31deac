"""Interference with the line of play, which counts only for a ball on the putting green (Rule 16.1a(1)).

The line of play is taken as the straight line to the hole. A putt that breaks, and the reasonable distance on
either side of the line, are for the player and the referee to judge (Definition of line of play).
"""

from dataclasses import dataclass
from itertools import pairwise

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
        self._hole = np.array((whole.hole[0] - ball[0], whole.hole[1] - ball[1]))
        shift = np.array((*ball, *ball))
        edges = np.vstack([one.edges for one in whole.conditions]) - shift
        # Seen from the hole: the starts of all edges, then their ends, in the same order.
        self._corners = (
            np.ascontiguousarray(np.concatenate((edges[:, :2], edges[:, 2:])).T) - self._hole[:, None]
        )
        self._count = len(edges)
        near = [one.corners.near(*ball, reach).edges - shift for one in whole.conditions]
        before = np.vstack([one.edges[one.previous, :2] for one in whole.conditions]) - shift[:2]
        self.segments: Floats = np.vstack([*near, self._shadows(before, edges[:, :2], edges[:, 2:], reach)])

    def _shadows(self, before: Floats, corners: Floats, after: Floats, reach: float) -> Floats:
        """Return the rays from the hole past the corners where the outline turns back, as seen from there.

        Past any other corner its two edges hide the places on both sides of the ray.
        """
        ray = corners - self._hole
        length = np.sqrt((ray * ray).sum(axis=1))[:, None]
        along = ray / np.maximum(length, ROUNDING)
        beside = along[:, ::-1] * _LEFT
        here = (beside * corners).sum(axis=1)
        side_before, side_after = (beside * before).sum(axis=1) - here, (beside * after).sum(axis=1) - here
        through = np.minimum(side_before, side_after) < -_TOUCHED
        through &= np.maximum(side_before, side_after) > _TOUCHED
        far = _BEHIND * (reach + length + np.hypot(*self._hole))
        rays: Floats = np.hstack([corners, corners + along * far])
        kept: Floats = rays[(length[:, 0] > ROUNDING) & ~through]
        return kept

    def clear(self, places: Floats) -> Booleans:
        """Return for each place whether no edge cuts the line to the hole (touching does not count)."""
        way = places - self._hole
        length = np.sqrt((way * way).sum(axis=1))
        along = way / np.maximum(length, ROUNDING)[:, None]
        # A row for each place, a column for each end of an edge: how far to the left of the line from the hole it lies.
        left = (along[:, ::-1] * _LEFT) @ self._corners
        start, end = left[:, : self._count], left[:, self._count :]
        across = np.minimum(start, end) < -ROUNDING
        across &= np.maximum(start, end) > ROUNDING
        place, edge = across.nonzero()
        free: Booleans = np.ones(len(places), dtype=bool)
        if len(place):
            # Where the few edges that cross the line do so, as far along it as each end lies.
            ahead = along @ self._corners
            share = start[place, edge] / (start[place, edge] - end[place, edge])
            begins, ends = ahead[place, edge], ahead[place, edge + self._count]
            met = begins + share * (ends - begins)
            free[place[(met > ROUNDING) & (met < length[place] - ROUNDING)]] = False
        return free

    def outside(self, place: XY) -> bool:
        """Return whether neither the place nor its line to the hole is inside a condition anywhere.

        A line that cuts no edge may still run through a condition, entering exactly at corners: between two corners
        that it touches it is all inside or all outside, so one place of each stretch tells.
        """
        way = np.array(place) - self._hole
        length = float(np.hypot(*way))
        along = way / max(length, ROUNDING)
        corners = self._corners[:, : self._count]
        ahead = along @ corners
        touched = (np.abs((along[::-1] * _LEFT) @ corners) <= _TOUCHED) & (ahead > 0) & (ahead < length)
        stops = [0.0, *sorted(ahead[touched].tolist()), length]
        middles = [length, *((one + other) / 2 for one, other in pairwise(stops))]
        (from_x, from_y), (along_x, along_y) = self._whole.hole, along.tolist()
        return not any(
            one.holds(x, y) and one.depth(x, y) > ROUNDING
            for x, y in ((from_x + far * along_x, from_y + far * along_y) for far in middles)
            for one in self._whole.conditions
        )
