"""The nearest point of complete relief, exactly.

Permitted places are those where nothing interferes, not nearer the hole, in the required area of the course.
The nearest of them to the ball is the ball's own spot; or the foot of a perpendicular on a boundary segment;
or a crossing of two boundary segments or of one with the circle about the hole: the distance has no other
minimum. All these candidates are taken in order of their distance, and each is tested on the original shapes;
the first permitted one is the answer. No union of polygons is built: rounding in a union can leave a hole of
10⁻¹⁵ m² deep inside the forbidden set, where a nearest-point search then "finds" relief.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, inf

import numpy as np
from numpy.typing import NDArray

from marram.relief.geometry.corners import Floats
from marram.relief.geometry.limits import Bounding
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import ROUNDING, TOLERANCE
from marram.relief.interference.interference import Interference, Prepared
from marram.relief.interference.required_area import RequiredArea

FIRST_REACH = 4.0
"""Metres: how far around the ball is looked at first; farther only where no answer is found."""
FARTHEST = 256.0
"""Metres: how far around the ball is looked at last."""
MOST_TIES = 8
"""How many equally near points are said; more than two come only from round shapes."""
_ON = 1e-9
_BATCH, _MORE = 16, 4
"""So many candidates are tested at once at first, and so many times as many each time: a call costs more than a few places."""


@dataclass(frozen=True, slots=True)
class Nearest:
    """The nearest permitted point, or points where several are equally near (to a millimetre).

    Attributes:
        points: the points; the first is the nearest.
        metres: the distance from the ball; 0 where the ball already lies on a permitted place.
    """

    points: tuple[XY, ...]
    metres: float


def nearest_point(
    ball: XY,
    interferences: Sequence[Interference],
    hole: XY,
    domain: Sequence[Bounding] = (),
    *,
    farthest: float = FARTHEST,
) -> Nearest | None:
    """Return the nearest permitted point to a ball, or ``None`` when there is none within ``farthest`` metres.

    Args:
        ball: the spot of the ball.
        interferences: what must not interfere.
        hole: where the hole is; the answer is not nearer to it than the ball.
        domain: the area of the course the point must be in.
        farthest: metres, the end of the search.
    """
    reach = min(FIRST_REACH, farthest)
    while True:
        search = _Search(ball, [one.prepare(ball, reach) for one in interferences], hole, domain, reach)
        found = search.run()
        if found is not None and found.metres <= reach:
            return found
        if found is None and reach >= farthest:
            return None
        # An answer beyond what was looked at is only a bound: look again as far as it reaches.
        reach = (
            min(farthest, 4 * reach)
            if found is None or found.metres > 4 * reach
            else found.metres + TOLERANCE
        )


class _Search:
    """One search, in coordinates relative to the ball (small numbers keep the rounding small)."""

    def __init__(
        self, ball: XY, prepared: Sequence[Prepared], hole: XY, domain: Sequence[Bounding], reach: float
    ) -> None:
        self.ball = ball
        self.prepared = prepared
        self.domain = RequiredArea(domain, ball, reach)
        self.hole = (hole[0] - ball[0], hole[1] - ball[1])
        self.least = hypot(*self.hole)
        shift = np.array((*ball, *ball))
        edges = [one - shift for one in self.domain.edges]
        self.segments = np.concatenate([*(one.segments for one in prepared), *edges] or [np.empty((0, 4))])

    def run(self) -> Nearest | None:
        """Return the nearest permitted points."""
        feet, segments = self._feet()
        first = self._first(feet)
        if first == 0:
            return Nearest((self.ball,), 0.0)
        best = None if first is None else feet[first]
        bound = inf if best is None else hypot(*best)
        crossings = self._crossings(segments, bound)
        first = self._first(crossings)
        if first is not None and hypot(*crossings[first]) < bound:
            best = crossings[first]
        return None if best is None else self._with_ties(best, feet, crossings)

    def _with_ties(self, best: Floats, feet: Floats, crossings: Floats) -> Nearest:
        """Add other permitted points that are equally far and lie somewhere else."""
        metres = hypot(*best)
        # Along a straight edge the distance grows by a millimetre only this far from its foot.
        same = 2 * (2 * max(metres, TOLERANCE) * TOLERANCE) ** 0.5 + 10 * TOLERANCE
        points = [(float(best[0]), float(best[1]))]
        for candidates in (feet, crossings):
            away = np.hypot(candidates[:, 0], candidates[:, 1])
            for x, y in candidates[np.abs(away - metres) <= TOLERANCE].tolist():
                elsewhere = all(hypot(x - other[0], y - other[1]) > same for other in points)
                if len(points) < MOST_TIES and elsewhere and self._first(np.array(((x, y),))) is not None:
                    points.append((x, y))
        return Nearest(tuple((x + self.ball[0], y + self.ball[1]) for x, y in points), metres)

    def _first(self, places: Floats) -> int | None:
        """Return the index of the first permitted place."""
        start, size = 0, _BATCH
        while start < len(places):
            some = places[start : start + size]
            free = np.arange(len(some))
            for one in self.prepared:
                if len(free):
                    free = free[one.clear(some[free])]
            for index in free:
                place = (float(some[index, 0]), float(some[index, 1]))
                if self.domain.admits(place) and all(one.outside(place) for one in self.prepared):
                    return start + int(index)
            start, size = start + size, _MORE * size
        return None

    def _not_nearer(self, x: Floats, y: Floats, squared: Floats) -> NDArray[np.bool_]:
        """Return whether places are not nearer the hole: |p - h|² - |h|², without the large squares."""
        result: NDArray[np.bool_] = (
            squared - 2 * (x * self.hole[0] + y * self.hole[1]) >= -2 * self.least * ROUNDING
        )
        return result

    def _feet(self) -> tuple[Floats, Floats]:
        """Return the ball and the feet of perpendiculars that are not nearer the hole, and all segments, by distance.

        The segments get a fifth column: the squared distance.
        """
        x, y, to_x, to_y = self.segments.T
        along_x, along_y = to_x - x, to_y - y
        part = -(x * along_x + y * along_y) / (along_x * along_x + along_y * along_y)
        np.minimum(np.maximum(part, 0.0, out=part), 1.0, out=part)
        foot_x, foot_y = x + part * along_x, y + part * along_y
        squared = foot_x * foot_x + foot_y * foot_y
        order = squared.argsort()
        kept = order[self._not_nearer(foot_x, foot_y, squared)[order]]
        feet = np.zeros((len(kept) + 1, 2))
        feet[1:, 0], feet[1:, 1] = foot_x[kept], foot_y[kept]
        return feet, np.stack((x, y, along_x, along_y, squared))[:, order]

    def _crossings(self, segments: Floats, bound: float) -> Floats:
        """Return crossings of segments with each other and with the circle, within a bound, nearest first."""
        most = (bound + TOLERANCE) ** 2
        x, y, along_x, along_y = segments[:4, : segments[4].searchsorted(most)]
        turn = np.multiply.outer(along_x, along_y)
        turn -= turn.T
        apart_x, apart_y = np.subtract.outer(x, x), np.subtract.outer(y, y)
        # Row: the segment the part is measured on. Column: the segment it crosses.
        with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
            part = (apart_y * along_x - apart_x * along_y) / turn
            met = (part >= -_ON) & (part <= 1 + _ON)
        met &= met.T
        row, column = np.nonzero(met)
        once = row < column
        row, column = row[once], column[once]
        share = part[row, column]
        places = [(x[row] + share * along_x[row], y[row] + share * along_y[row])]
        length = along_x * along_x + along_y * along_y
        half = ((x - self.hole[0]) * along_x + (y - self.hole[1]) * along_y) / length
        rest = (x * x + y * y - 2 * (x * self.hole[0] + y * self.hole[1])) / length
        under = half * half - rest
        root = np.sqrt(np.maximum(under, 0.0))
        for share in (-half - root, -half + root):
            on = (under >= 0) & (share >= -_ON) & (share <= 1 + _ON)
            places.append((x[on] + share[on] * along_x[on], y[on] + share[on] * along_y[on]))
        found_x, found_y = np.concatenate(places, axis=1)
        squared = found_x * found_x + found_y * found_y
        kept = np.flatnonzero((squared <= most) & self._not_nearer(found_x, found_y, squared))
        kept = kept[squared[kept].argsort()]
        return np.stack((found_x[kept], found_y[kept]), axis=1)
