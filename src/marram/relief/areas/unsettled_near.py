"""Walls, fences and wetlands in or near a relief area of which the map does not say what they are: what is said of them.

A relief area is drawn as if they were nothing. That is told beside it, since free relief may be due from a wall, and no
ball may be dropped in a wetland that is a penalty area.
"""

from collections.abc import Sequence
from dataclasses import replace

import shapely
from shapely import Point

from marram.course.lies.regions import HoleGround
from marram.course.model import Kind
from marram.relief.areas.relief_area import ReliefArea

BARRIER_NEAR = 3.0
"""Metres: a wall this near a relief area can meet stance and swing of a ball in it (own choice: a full swing with a driver
reaches about 2.2 m)."""


def with_unsettled_told(
    areas: Sequence[ReliefArea], lies: HoleGround, taken: Sequence[object] = ()
) -> tuple[ReliefArea, ...]:
    """Return relief areas, each with the message keys of what nobody knows about the ground in and near it.

    Args:
        areas: the areas.
        lies: the ground of the hole.
        taken: what relief is taken from: of that somebody has said what it is.
    """
    if not lies.unsettled:
        return tuple(areas)
    return tuple(
        replace(area, assumed=tuple(dict.fromkeys((*area.assumed, *_keys(area, lies, taken)))))
        for area in areas
    )


def _keys(area: ReliefArea, lies: HoleGround, taken: Sequence[object]) -> list[str]:
    if area.radius is not None and not area.drop_line:
        reach = area.radius + BARRIER_NEAR
        if not lies.within(Point(area.reference), reach, "unsettled"):
            return []
    shape = shapely.union(area.picture, Point(area.reference))
    barriers = (
        one
        for one in lies.unsettled
        if one.kind is Kind.BARRIER and not any(piece is told for piece in one.features for told in taken)
    )
    wetlands = (one for one in lies.unsettled if one.kind is Kind.WETLAND)
    found = []
    if any(shapely.dwithin(one.geometry, shape, BARRIER_NEAR) for one in barriers):
        found.append("relief.barrier_near")
    if any(shapely.intersects(one.geometry, shape) for one in wetlands):
        found.append("relief.wetland_in_area")
    return found
