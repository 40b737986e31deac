"""The dropping zones of a map that serve what relief is taken from (Model Local Rule E-1)."""

from shapely import Point

from marram.course.lies.regions import ground_of
from marram.course.lies.tolerance import TOUCH
from marram.course.model import Course, Feature, Kind
from marram.relief.geometry.outline import XY

SERVABLE = (
    Kind.RED_PENALTY_AREA,
    Kind.YELLOW_PENALTY_AREA,
    Kind.GROUND_UNDER_REPAIR,
    Kind.TEMPORARY_WATER,
    Kind.NO_PLAY_ZONE,
    Kind.OBSTRUCTION,
    Kind.PATH,
    Kind.PUTTING_GREEN,
)
"""Kinds that a dropping zone can serve: relief from them may end in one."""


def zones_serving(
    course: Course, hole_number: int, ball: XY, condition: Feature | None = None
) -> tuple[Feature, ...]:
    """Return the dropping zones of a hole that serve what relief is taken from.

    Args:
        course: the map.
        hole_number: the hole being played; a zone that names no hole may be used on all of them.
        ball: the spot of the ball, in local metres.
        condition: what relief is taken from; when not given, all that the ball lies in. A zone that serves one piece
            of an area serves all of it.
    """
    ground = ground_of(course, hole_number)
    inside = ground.within(Point(ball), TOUCH, "every")
    pieces = (piece for area in inside for piece in area.features if piece.kind in SERVABLE)
    served = ground.joined_with(condition) if condition else tuple(pieces)
    names = {name for one in served for name in (one.ref, one.ident) if name}
    return tuple(
        zone
        for zone in course.of(Kind.DROPPING_ZONE)
        if names & set(zone.serves) and (not zone.holes or hole_number in zone.holes)
    )
