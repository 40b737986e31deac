"""Interference with the line of sight: a temporary immovable obstruction before the hole (Model Local Rule F-23).

It interferes where it stands on the straight line from the ball to the hole, and within one club-length of
such a place, measured across that line. The Local Rule measures on the arc as far from the hole as the ball;
the two differ by less than 2 mm from 10 m on.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot, inf

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from marram.relief.geometry.corners import Floats
from marram.relief.geometry.limits import Bound
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.tolerance import ROUNDING
from marram.relief.interference.interference import Booleans
from marram.rules.relief_option import Limit

_BEHIND = 4.0
"""How far a shadow is drawn on, in reaches: beyond all that a search looks at."""
_TOUCH = 1e-6
"""Metres by which the triangle towards the hole gives way, so that a place on the boundary is clear."""


@dataclass(frozen=True, eq=False)
class LineOfSightOn:
    """No condition stands between the ball and the hole, nor within a club-length beside that line.

    Attributes:
        conditions: the outlines of the conditions.
        hole: where the hole is.
        club: metres, the length of the player's longest club other than a putter.
    """

    conditions: tuple[Outline, ...]
    hole: XY
    club: float

    def prepare(self, ball: XY, reach: float) -> "PreparedSight":
        """Return what matters within ``reach`` metres of the ball."""
        return PreparedSight(self, ball, reach)

    def blocked(self, places: Floats) -> Booleans:
        """Return for each place, in local metres, whether a condition stands in the triangle towards the hole."""
        found = np.zeros(len(places), dtype=bool)
        triangles = self._triangles(places)
        for one in self.conditions:
            found |= shapely.intersects(triangles, one.geometry)
        return found

    def _triangles(self, places: Floats) -> NDArray[np.object_]:
        """The hole and, at the place, a base so wide that both sides pass it at one club-length."""
        hole = np.array(self.hole)
        away = places - hole
        length = np.maximum(np.hypot(away[:, 0], away[:, 1]), ROUNDING)
        half = (self.club - _TOUCH) * length / np.sqrt(np.maximum(length**2 - self.club**2, ROUNDING))
        across = np.column_stack((-away[:, 1], away[:, 0])) / length[:, None] * half[:, None]
        corners = np.stack((np.broadcast_to(hole, places.shape), places + across, places - across), axis=1)
        return np.atleast_1d(np.asarray(shapely.polygons(corners), dtype=object))


class PreparedSight:
    """The shadows of the conditions seen from the hole, a club-length wider on both sides."""

    def __init__(self, whole: LineOfSightOn, ball: XY, reach: float) -> None:
        self._whole = whole
        self._ball = np.array(ball)
        self.segments: Floats = np.vstack([self._sides(one, reach) for one in whole.conditions])

    def _sides(self, condition: Outline, reach: float) -> Floats:
        corners = condition.edges[:, :2] - self._ball
        ray = corners - (np.array(self._whole.hole) - self._ball)
        length = np.hypot(ray[:, 0], ray[:, 1])[:, None]
        kept = length[:, 0] > ROUNDING
        corners, along = corners[kept], ray[kept] / length[kept]
        across = np.column_stack((-along[:, 1], along[:, 0])) * self._whole.club
        far = along * (_BEHIND * (reach + float(length.max()) + float(np.hypot(*self._ball))))
        starts = corners - along * self._whole.club
        return np.vstack([np.hstack([starts + side, starts + side + far]) for side in (across, -across)])

    def clear(self, places: Floats) -> Booleans:
        """Return for each place whether no condition stands towards the hole."""
        free: Booleans = ~self._whole.blocked(places + self._ball)
        return free

    def outside(self, place: XY) -> bool:  # noqa: ARG002  (a place inside a condition is not clear of it)
        """Return true: a place wholly inside a condition is not clear already."""
        return True


@dataclass(frozen=True, slots=True)
class ClearOfSight:
    """No condition is left in the line of sight."""

    sight: LineOfSightOn
    bound: Bound = Bound.COMPLETE_RELIEF
    limit: Limit | None = Limit.COMPLETE_RELIEF

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:  # noqa: ARG002  (the ball's middle is what sees)
        """Return how far the place is from the shadow, or minus the way out of it."""
        shadow = shapely.union_all(list(self._shadows(hypot(x - self.sight.hole[0], y - self.sight.hole[1]))))
        here = shapely.Point(x, y)
        if shadow.is_empty:
            return inf
        if self.sight.blocked(np.array(((x, y),)))[0]:
            return -float(shapely.distance(here, shapely.boundary(shadow)))
        return float(shapely.distance(here, shadow))

    def cut(self, polygon: BaseGeometry) -> BaseGeometry:
        """Return the part of a polygon that no condition hides from the hole."""
        x, y = self.sight.hole
        least_x, least_y, greatest_x, greatest_y = polygon.bounds
        far = max(hypot(cx - x, cy - y) for cx in (least_x, greatest_x) for cy in (least_y, greatest_y))
        return shapely.difference(polygon, shapely.union_all(list(self._shadows(far))))

    def _shadows(self, far: float) -> Iterator[BaseGeometry]:
        """Yield what each edge hides, a club-length wider on both sides, out to ``far`` from the hole."""
        hole, club = np.array(self.sight.hole), self.sight.club
        for edge in np.vstack([one.edges for one in self.sight.conditions]).reshape(-1, 2, 2):
            ray = edge - hole
            length = np.hypot(ray[:, 0], ray[:, 1])[:, None]
            if length.min() <= ROUNDING:
                continue
            along = ray / length
            across = np.column_stack((-along[:, 1], along[:, 0])) * club
            beyond = edge + along * np.maximum(far + club - length, club)
            ends = np.vstack([edge + across, edge - across, beyond + across, beyond - across])
            yield shapely.MultiPoint(ends).convex_hull
