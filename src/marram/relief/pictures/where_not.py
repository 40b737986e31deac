"""Where a ball may not be dropped, and how near the hole: what a drawing shows beside the relief area itself."""

from math import atan2, pi, tau

import shapely
from shapely.geometry.base import BaseGeometry

from marram.relief.areas.construction import ArcMark, PointMark, Role
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.areal import areal
from marram.relief.geometry.limits import NotNearer, WithinDistance
from marram.relief.geometry.outline import XY

_ON = 6.0
"""Metres: how far beyond the outermost points the arc about the hole is drawn."""


_SEEN = 0.01
"""Square metres: a smaller rest is a sliver along a line, not a place (a number of our own: 10 cm by 10 cm)."""
_GRID = 1e-6
"""Metres: the corners of what is left are placed to this, far finer than is drawn; outlines that run along each other
take a fraction of the time."""


def where_not(area: ReliefArea) -> BaseGeometry:
    """Return the part within the club-lengths that the other limits take away; empty where there is none."""
    if "where_not" not in area.kept:
        area.kept["where_not"] = _taken_away(area)
    return area.kept["where_not"]


def _taken_away(area: ReliefArea) -> BaseGeometry:
    size = next((one for one in area.limits if isinstance(one, WithinDistance)), None)
    if size is None or area.is_spot:
        return shapely.Polygon()
    (x, y), r = size.centre, size.radius
    whole = size.cut(shapely.box(x - r, y - r, x + r, y + r))
    if (
        whole.area - area.polygon.area <= _SEEN
    ):  # the area is part of the whole: no more than this can be left
        return shapely.Polygon()
    rest = areal(shapely.difference(whole, area.polygon, grid_size=_GRID))
    return rest if rest.area > _SEEN else shapely.Polygon()


def not_nearer_arcs(area: ReliefArea) -> tuple[ArcMark, ...]:
    """Return the arcs about the hole that must not be crossed: those of the construction, else those of the limits."""
    drawn = tuple(
        mark for mark in area.construction if isinstance(mark, ArcMark) and mark.role is Role.NOT_NEARER
    )
    return drawn or tuple(
        _arc(one, area) for one in area.limits if isinstance(one, NotNearer) and area.radius is None
    )


def _arc(limit: NotNearer, area: ReliefArea) -> ArcMark:
    """Return the arc of a limit past every point of the construction, by the shorter way round."""
    towards = _angle(limit.hole, area.reference)
    points = (mark.at for mark in area.construction if isinstance(mark, PointMark) and mark.at != limit.hole)
    turns = [((_angle(limit.hole, one) - towards + pi) % tau) - pi for one in points] or [0.0]
    more = _ON / max(limit.radius, _ON)
    return ArcMark(
        Role.NOT_NEARER, limit.hole, limit.radius, towards + min(turns) - more, towards + max(turns) + more
    )


def _angle(start: XY, end: XY) -> float:
    return atan2(end[1] - start[1], end[0] - start[0])
