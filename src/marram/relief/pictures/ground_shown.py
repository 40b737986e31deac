"""What of the map a drawing shows: the ground as it is read, and what is joined on the ground as one area."""

from dataclasses import dataclass

import shapely
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from marram.course.lies.as_read import pieces_as_read
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
    every, tree = _all_of(course)
    order = list(FILLS)
    areas = [every[i] for i in sorted(tree.query(frame, predicate="intersects").tolist())]
    edges = [
        GroundShown(one.kind, one.geometry)
        for one in course.of(Kind.BOUNDARY)
        if shapely.intersects(shapely.boundary(one.geometry), frame)
    ]
    return [*sorted(areas, key=lambda one: order.index(one.kind)), *edges]


def _all_of(course: Course) -> tuple[list[GroundShown], STRtree]:
    """Return all that drawings of a course can show, with a tree of it; it is read and joined once."""
    if ground_shown not in course.kept:
        areas = [GroundShown(one.kind, one.geometry) for one in joined(pieces_as_read(course, *FILLS))]
        course.kept[ground_shown] = areas, STRtree([one.geometry for one in areas])
    found: tuple[list[GroundShown], STRtree] = course.kept[ground_shown]
    return found
