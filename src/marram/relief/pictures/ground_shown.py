"""What of the map a drawing shows: the ground as it is read, and what is joined on the ground as one area."""

from dataclasses import dataclass

import shapely
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from marram.course.lies.as_read import pieces_as_read
from marram.course.lies.extents import Extent
from marram.course.lies.joined_as_read import joined
from marram.course.model import Course, Kind
from marram.relief.pictures.styles import FILLS


@dataclass(frozen=True, slots=True)
class GroundShown:
    """One area of the map in a drawing: its kind, and its geometry in metres."""

    kind: Kind
    geometry: BaseGeometry


def ground_shown(course: Course, frame: BaseGeometry) -> list[GroundShown]:
    """Return what lies in a frame, in the order it is drawn.

    Args:
        course: the map.
        frame: the ground that the drawing shows, in metres.
    """
    pieces, tree = _all_of(course)
    order = list(FILLS)
    found = [pieces[i] for i in sorted(tree.query(frame, predicate="intersects").tolist())]
    areas = [GroundShown(one.kind, one.geometry) for one in joined(found)]
    edges = [
        GroundShown(one.kind, one.geometry)
        for one in course.of(Kind.BOUNDARY)
        if shapely.intersects(shapely.boundary(one.geometry), frame)
    ]
    return [*sorted(areas, key=lambda one: order.index(one.kind)), *edges]


def _all_of(course: Course) -> tuple[list[Extent], STRtree]:
    """Return all that drawings of a course can show, with a tree of it; it is read once."""
    if ground_shown not in course.kept:
        pieces = list(pieces_as_read(course, *FILLS))
        course.kept[ground_shown] = pieces, STRtree([one.shape for one in pieces])
    found: tuple[list[Extent], STRtree] = course.kept[ground_shown]
    return found
