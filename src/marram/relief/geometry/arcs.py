"""Circles and straight cuts as polygons, for pictures; the error of an arc is stated and on the safe side."""

from math import acos, atan2, ceil, cos, hypot, pi, sin

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import ARC_ERROR


def disc(centre: XY, radius: float, arc_error: float = ARC_ERROR) -> shapely.Polygon:
    """Return a polygon inside the circle, nowhere more than ``arc_error`` metres from it.

    A chord of angle 2a lies r(1 - cos a) inside its arc (the sagitta).
    """
    angles = np.linspace(0.0, 2 * pi, _chords(radius, 2 * pi, arc_error), endpoint=False)
    return shapely.Polygon(
        np.column_stack([centre[0] + radius * np.cos(angles), centre[1] + radius * np.sin(angles)])
    )


def farther_than(
    hole: XY, radius: float, centre: XY, reach: float, arc_error: float = ARC_ERROR
) -> BaseGeometry:
    """Return what lies at least ``radius`` from the hole, within a box of ``reach`` about a centre.

    The polygon's arc lies outside the true circle by at most ``arc_error``: it never shows a place
    nearer the hole. Where the whole circle is small, all of it is cut out; else only the arc near the
    centre is built.
    """
    box = shapely.box(centre[0] - reach, centre[1] - reach, centre[0] + reach, centre[1] + reach)
    apart = hypot(centre[0] - hole[0], centre[1] - hole[1])
    wide = 2 * reach  # more than the half-diagonal of the box
    if radius <= 0 or apart > radius + wide:
        return box
    if apart <= wide:
        count = _chords(radius, 2 * pi, arc_error)
        angles = np.linspace(0.0, 2 * pi, count, endpoint=False)
        outer = radius / cos(pi / count)
        ring = np.column_stack([hole[0] + outer * np.cos(angles), hole[1] + outer * np.sin(angles)])
        return box.difference(shapely.Polygon(ring))
    towards = atan2(centre[1] - hole[1], centre[0] - hole[0])
    spread = min(pi / 2, wide / (apart - wide) if apart > 2 * wide else pi / 2)
    count = _chords(radius, 2 * spread, arc_error)
    angles = np.linspace(towards - spread, towards + spread, count + 1)
    outer = radius / cos(spread / count)
    ring = np.column_stack([hole[0] + outer * np.cos(angles), hole[1] + outer * np.sin(angles)])
    sector = shapely.Polygon(np.vstack([[hole], ring]))
    return box.difference(sector)


def half_plane(at: XY, normal: XY, centre: XY, reach: float) -> BaseGeometry:
    """Return the part of a box of ``reach`` about a centre where (p - at) · normal is at most 0."""
    along = (-normal[1], normal[0])
    offset = (centre[0] - at[0]) * along[0] + (centre[1] - at[1]) * along[1]
    foot = (at[0] + offset * along[0], at[1] + offset * along[1])
    far = 4 * reach + hypot(centre[0] - foot[0], centre[1] - foot[1])
    corners = [
        (
            foot[0] + s * far * along[0] - d * far * normal[0],
            foot[1] + s * far * along[1] - d * far * normal[1],
        )
        for s, d in ((-1, 0), (-1, 1), (1, 1), (1, 0))
    ]
    box = shapely.box(centre[0] - reach, centre[1] - reach, centre[0] + reach, centre[1] + reach)
    return box.intersection(shapely.Polygon(corners))


def arc_points(centre: XY, radius: float, start: float, end: float, arc_error: float) -> list[XY]:
    """Return points of an arc from angle ``start`` to ``end`` (radians, anticlockwise)."""
    count = _chords(radius, max(end - start, 1e-9), arc_error)
    return [
        (
            centre[0] + radius * cos(start + (end - start) * i / count),
            centre[1] + radius * sin(start + (end - start) * i / count),
        )
        for i in range(count + 1)
    ]


def _chords(radius: float, angle: float, arc_error: float) -> int:
    if radius <= arc_error:
        return 8
    return max(8, ceil(angle / (2 * acos(1.0 - arc_error / radius))))
