"""The marking sheet: what to mend in the map and on the ground before play, hole by hole."""

from collections.abc import Sequence
from dataclasses import dataclass

from shapely.geometry import Point

from marram.course.fault import Fault, Severity
from marram.course.model import Course

NEAR_HOLE = 100.0
"""A place further than this from every line of play belongs to no hole's sheet, metres (own choice)."""


@dataclass(frozen=True, slots=True)
class HoleSheet:
    """What to mend on one hole.

    Attributes:
        hole: its number; ``None`` for the course as a whole.
        tasks: the faults, the weightiest first.
    """

    hole: int | None
    tasks: tuple[Fault, ...]


def marking_sheet(course: Course, faults: Sequence[Fault]) -> tuple[HoleSheet, ...]:
    """Return the faults of a map by hole, the course as a whole first; holes without faults are left out.

    A fault that names no hole goes to the hole whose line of play is nearest to its place.

    Args:
        course: the map.
        faults: what was found, for instance by :func:`marram.course.check`.
    """
    by_hole: dict[int | None, list[Fault]] = {}
    for fault in faults:
        by_hole.setdefault(_hole_of(course, fault), []).append(fault)
    order = list(Severity)
    return tuple(
        HoleSheet(hole, tuple(sorted(by_hole[hole], key=lambda fault: order.index(fault.severity))))
        for hole in (None, *course.holes)
        if hole in by_hole
    )


def _hole_of(course: Course, fault: Fault) -> int | None:
    if fault.hole is not None:
        return fault.hole if fault.hole in course.holes else None
    if fault.longitude is None or fault.latitude is None or not course.holes:
        return None
    place = Point(course.plane.to_metres(fault.longitude, fault.latitude))
    nearest = min(course.holes.values(), key=lambda hole: hole.line.distance(place))
    return nearest.number if nearest.line.distance(place) <= NEAR_HOLE else None
