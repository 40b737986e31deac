"""The required area of the course about a ball: only what comes near it is asked of every candidate.

A search for the nearest point tests many places close to each other. An outline with no edge near the ball holds
either all of them or none, so it is decided once for the whole search.
"""

from collections.abc import Sequence
from dataclasses import replace
from math import hypot

from marram.relief.geometry.corners import Floats
from marram.relief.geometry.limits import Bounding, Inside, Outside
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.outlines import Outlines
from marram.relief.geometry.tolerance import TOLERANCE


class RequiredArea:
    """Limits of the area of the course, prepared for places within some distance of a ball.

    Attributes:
        edges: the edges of the limits near the ball, one array for each outline, as the map has them.
    """

    def __init__(self, limits: Sequence[Bounding], ball: XY, reach: float) -> None:
        self.edges: list[Floats] = []
        self._ball = ball
        self._reach = reach - TOLERANCE
        self._limits = [one for one in limits if isinstance(one, Inside | Outside)]
        near = (self._near(one, reach) for one in self._limits)
        self._undecided = [one for one in near if one is not None]

    def admits(self, place: XY) -> bool:
        """Return whether a place, relative to the ball, is in the area or on its edge; any place, near or far."""
        x, y = place[0] + self._ball[0], place[1] + self._ball[1]
        limits = self._undecided if hypot(*place) < self._reach else self._limits
        return all(one.admits(x, y) for one in limits)

    def _near(self, limit: Inside | Outside, reach: float) -> Inside | Outside | None:
        """Return a limit with the outlines that decide near the ball; ``None`` where every place fulfils it."""
        kept: list[Outline] = []
        for outline in limit.outlines.near(*self._ball, reach):
            edges = outline.corners.near(*self._ball, reach).edges
            if len(edges):
                self.edges.append(edges)
                kept.append(outline)
            elif outline.holds(*self._ball):
                if isinstance(limit, Outside):
                    kept.append(outline)
                else:
                    return None
        return None if isinstance(limit, Outside) and not kept else replace(limit, outlines=Outlines(kept))
