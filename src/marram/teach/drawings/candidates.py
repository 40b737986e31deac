"""Places where the ball of a situation may lie, drawn by lot; each is then held against what the map says of it."""

from collections.abc import Iterator
from math import atan2, cos, hypot, pi, sin
from random import Random

import shapely
from shapely import Point
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Feature, Hole, Kind
from marram.relief.geometry.outline import XY
from marram.teach.drawings.grounds import Grounds

BESIDE = 70.0
"""Metres: a feature farther than this from the line of play belongs to another hole (own choice)."""
_AROUND = 1.8
"""Metres: how far from a condition that interferes with stance or swing a ball is tried."""
_WITHIN = 6.0
"""Metres: how far inside an edge a ball is tried, so that the edge stands in the drawing."""
_OFF_LINE = 24.0
"""Metres: how far beside the line of play a ball in the general area is tried."""
_LOST = (18.0, 45.0)
"""Metres: how far off the line of play a ball is tried that is lost (own choice)."""
_HOLE_RADIUS = 0.054
"""Metres: the hole is 108 mm wide (Definition of hole)."""


def candidates(course: Course, grounds: Grounds, first: int | None, lot: Random) -> Iterator[tuple[Hole, XY]]:
    """Yield places without end, those on the hole told first; none where the map holds nothing of the kind.

    Args:
        course: the map.
        grounds: what is told of the ground.
        first: the number of the hole told; ``None``: none is.
        lot: draws the places.
    """
    holes = [hole for hole in course.holes.values() if hole.line.length > 0]
    lot.shuffle(holes)
    holes.sort(key=lambda hole: hole.number != first)
    pairs = [(hole, feature) for hole in holes for feature in _features(course, hole, grounds)]
    if not holes or (grounds.kinds and not pairs):
        return
    told = [pair for pair in pairs if pair[0].number == first]
    while True:
        early = lot.random() < 0.5
        if not grounds.kinds:
            hole = holes[0] if early else lot.choice(holes)
            yield hole, _on_hole(hole, lot, lost=not grounds.seen)
            continue
        hole, feature = lot.choice(told if told and early else pairs)
        yield hole, _at(hole, feature, grounds, lot)


def _features(course: Course, hole: Hole, grounds: Grounds) -> list[Feature]:
    found = []
    for feature in course.of(*grounds.kinds):
        own = hole.number in feature.holes or feature is hole.green
        if feature.kind in {Kind.PUTTING_GREEN, Kind.TEEING_AREA}:
            wrong = "wrong_green_interference" in grounds.facts
            if own is wrong:
                continue
        elif feature.holes and not own:
            continue
        if feature.geometry.distance(hole.line) <= BESIDE:
            found.append(feature)
    return found


def _at(hole: Hole, feature: Feature, grounds: Grounds, lot: Random) -> XY:
    """Return a place in a feature or near its edge."""
    if grounds.at_the_hole:
        turn = lot.uniform(0, 2 * pi)
        return hole.location.x + _HOLE_RADIUS * cos(turn), hole.location.y + _HOLE_RADIUS * sin(turn)
    shape = feature.geometry
    if grounds.at_boundary or any("interfer" in name for name in grounds.facts):
        return _near_edge(_towards(_edge(shape), hole), _AROUND, lot)
    if lot.random() < 0.7:
        return _near_edge(_towards(_edge(shape), hole), _WITHIN, lot)
    left, bottom, right, top = shape.bounds
    return lot.uniform(left, right), lot.uniform(bottom, top)


def _edge(shape: BaseGeometry) -> BaseGeometry:
    """Return the edge of an area; of what is mapped as a line or a point, which has ends or none, the thing itself."""
    return shape.boundary if shapely.get_dimensions(shape) == 2 else shape


def _towards(edge: BaseGeometry, hole: Hole) -> BaseGeometry:
    """Return the part of an edge that is beside the line of play; all of it where none is."""
    near = shapely.intersection(edge, hole.line.buffer(BESIDE))
    return edge if near.is_empty else near


def _near_edge(edge: BaseGeometry, reach: float, lot: Random) -> XY:
    parts = list(shapely.get_parts(edge))
    part = lot.choices(parts, [max(one.length, 0.01) for one in parts])[0]
    at = part.interpolate(lot.random(), normalized=True) if part.length > 0 else part.representative_point()
    turn, far = lot.uniform(0, 2 * pi), lot.uniform(0.0, reach)
    return at.x + far * cos(turn), at.y + far * sin(turn)


def _on_hole(hole: Hole, lot: Random, *, lost: bool) -> XY:
    """Return a place beside the line of play, between the tee and the green; of a ball that is lost farther off."""
    along = lot.uniform(0.3, 0.92) * hole.line.length
    at = hole.line.interpolate(along)
    if lost:
        ahead = hole.line.interpolate(along + 1)
        turn = atan2(ahead.y - at.y, ahead.x - at.x) + lot.choice((pi / 2, -pi / 2))
        far = lot.uniform(*_LOST)
        return at.x + far * cos(turn), at.y + far * sin(turn)
    return at.x + lot.uniform(-_OFF_LINE, _OFF_LINE), at.y + lot.uniform(-_OFF_LINE, _OFF_LINE)


def behind(hole: Hole, ball: XY, metres: float) -> XY:
    """Return the place on the line of play so far before the place abreast of the ball; the tee at the least."""
    abreast = hole.line.project(Point(ball))
    at = hole.line.interpolate(max(0.0, abreast - metres))
    return at.x, at.y


def towards(start: XY, end: XY, metres: float) -> XY:
    """Return the place so many metres from one place on the way to another."""
    far = hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    return start[0] + (end[0] - start[0]) * metres / far, start[1] + (end[1] - start[1]) * metres / far
