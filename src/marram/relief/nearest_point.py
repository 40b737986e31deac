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

from marram.relief.corners import Floats
from marram.relief.interference import Interference, Prepared
from marram.relief.limits import Bounding, Inside, Outside
from marram.relief.outline import XY
from marram.relief.tolerance import ROUNDING, TOLERANCE

FIRST_REACH = 4.0
"""Metres: how far around the ball is looked at first; farther only where no answer is found."""
FARTHEST = 256.0
"""Metres: how far around the ball is looked at last."""
MOST_TIES = 8
"""How many equally near points are said; more than two come only from round shapes."""
_ON = 1e-9
_BATCH = 6


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
        self.domain = [one for one in domain if isinstance(one, Inside | Outside)]
        self.hole = (hole[0] - ball[0], hole[1] - ball[1])
        self.least = hypot(*self.hole)
        self.segments = np.vstack([*(one.segments for one in prepared), *self._edges_of_domain(reach)])

    def run(self) -> Nearest | None:
        """Return the nearest permitted points."""
        if self._first(np.zeros((1, 2))) is not None:
            return Nearest((self.ball,), 0.0)
        if not len(self.segments):
            return None
        feet = self._feet()
        squared = (feet * feet).sum(axis=1)
        order = np.argsort(squared)
        feet_sorted = feet[order]
        allowed = self._not_nearer(feet_sorted)
        first = self._first(feet_sorted[allowed])
        best = feet_sorted[allowed][first] if first is not None else None
        bound = hypot(*best) if best is not None else inf
        near = self.segments[order[: np.searchsorted(squared[order], bound * bound)]]
        crossings = self._crossings(near, bound + TOLERANCE)
        first = self._first(crossings)
        if first is not None and hypot(*crossings[first]) < bound:
            best = crossings[first]
        if best is None:
            return None
        return self._with_ties(best, np.vstack([feet_sorted[allowed], crossings]))

    def _with_ties(self, best: Floats, candidates: Floats) -> Nearest:
        """Add other permitted points that are equally far and lie somewhere else."""
        metres = hypot(*best)
        away = np.sqrt((candidates * candidates).sum(axis=1))
        # Along a straight edge the distance grows by a millimetre only this far from its foot.
        same = 2 * (2 * max(metres, TOLERANCE) * TOLERANCE) ** 0.5 + 10 * TOLERANCE
        points = [best]
        for one in candidates[np.abs(away - metres) <= TOLERANCE]:
            elsewhere = all(hypot(*(one - other)) > same for other in points)
            if len(points) < MOST_TIES and elsewhere and self._first(one[None]) is not None:
                points.append(one)
        return Nearest(tuple((float(x) + self.ball[0], float(y) + self.ball[1]) for x, y in points), metres)

    def _first(self, places: Floats) -> int | None:
        """Return the index of the first permitted place."""
        start, size = 0, _BATCH
        while start < len(places):
            some = places[start : start + size]
            free = self.prepared[0].clear(some) if self.prepared else np.ones(len(some), dtype=bool)
            for one in self.prepared[1:]:
                free &= one.clear(some)
            for index in np.flatnonzero(free):
                place = (float(some[index, 0]), float(some[index, 1]))
                if self._in_domain(place) and all(one.outside(place) for one in self.prepared):
                    return start + int(index)
            start, size = start + size, 2 * size
        return None

    def _in_domain(self, place: XY) -> bool:
        x, y = place[0] + self.ball[0], place[1] + self.ball[1]
        return all(one.margin(x, y) >= -_ON for one in self.domain)

    def _not_nearer(self, places: Floats) -> np.ndarray[tuple[int, ...], np.dtype[np.bool_]]:
        x, y = places[:, 0] - self.hole[0], places[:, 1] - self.hole[1]
        return x * x + y * y >= self.least * self.least - 2 * self.least * ROUNDING

    def _feet(self) -> Floats:
        start = self.segments[:, :2]
        along = self.segments[:, 2:] - start
        part = -(start * along).sum(axis=1) / (along * along).sum(axis=1)
        feet: Floats = start + np.clip(part, 0.0, 1.0)[:, None] * along
        return feet

    def _crossings(self, near: Floats, bound: float) -> Floats:
        """Return crossings of segments with each other and with the circle, within a bound, nearest first."""
        x, y = near[:, 0], near[:, 1]
        along_x, along_y = near[:, 2] - x, near[:, 3] - y
        first, second = np.triu_indices(len(near), 1)
        turn = along_x[first] * along_y[second] - along_y[first] * along_x[second]
        apart_x, apart_y = x[second] - x[first], y[second] - y[first]
        with np.errstate(divide="ignore", invalid="ignore"):
            on_first = (apart_x * along_y[second] - apart_y * along_x[second]) / turn
            on_second = (apart_x * along_y[first] - apart_y * along_x[first]) / turn
            met = (np.abs(on_first - 0.5) <= 0.5 + _ON) & (np.abs(on_second - 0.5) <= 0.5 + _ON)
        chosen, part = first[met], on_first[met]
        found = [np.column_stack([x[chosen] + part * along_x[chosen], y[chosen] + part * along_y[chosen]])]
        from_x, from_y = x - self.hole[0], y - self.hole[1]
        length = along_x * along_x + along_y * along_y
        half = (from_x * along_x + from_y * along_y) / length
        rest = (from_x * from_x + from_y * from_y - self.least * self.least) / length
        under = half * half - rest
        meets = under >= 0
        root = np.sqrt(under[meets])
        for sign in (-1.0, 1.0):
            part = -half[meets] + sign * root
            on = (part >= -_ON) & (part <= 1 + _ON)
            found.append(
                np.column_stack(
                    [
                        x[meets][on] + part[on] * along_x[meets][on],
                        y[meets][on] + part[on] * along_y[meets][on],
                    ]
                )
            )
        points = np.vstack(found)
        squared = (points * points).sum(axis=1)
        kept = (squared <= bound * bound) & self._not_nearer(points)
        points, squared = points[kept], squared[kept]
        ordered: Floats = points[np.argsort(squared)]
        return ordered

    def _edges_of_domain(self, reach: float) -> list[Floats]:
        shift = np.array((*self.ball, *self.ball))
        return [
            outline.corners.near(*self.ball, reach).edges - shift
            for limit in self.domain
            for outline in limit.outlines
            if outline.apart(*self.ball) <= reach
        ]
