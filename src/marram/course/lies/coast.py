"""The sea beside a coastline: by OpenStreetMap's convention the water lies to the right of the line.

OpenStreetMap's wiki (page "Tag:natural=coastline"): the line follows the mean high-water springs line, and its direction
has the land on the left and the water on the right. Its pieces meet end to end.
"""

from collections.abc import Iterable, Sequence
from math import hypot

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.lies.extents import Extent
from marram.course.model import Course, Feature

SEA = 2000.0
"""Metres: how far beyond the rest of the map the sea is read (own choice; no ball lies farther out)."""

HEADING = 100.0
"""Metres: a coast that ends where the map was cut is taken to go on as it ran so far before its end (own choice)."""

BESIDE = 1e-3
"""Metres to the right of a coastline where its water is looked for."""


def is_coastline(feature: Feature) -> bool:
    """Whether a feature is a coastline."""
    return feature.tags.get("natural") == "coastline"


def seas(course: Course, coast: Sequence[Feature]) -> tuple[Extent, ...]:
    """Return the sea to the right of some coastlines, each part of it with the first coastline along it."""
    if not coast:
        return ()
    parts = shapely.get_parts([_line(one.geometry) for one in coast])
    merged = shapely.line_merge(shapely.multilinestrings(parts), directed=True)
    pieces = [one for one in shapely.get_parts(merged) if isinstance(one, LineString)]
    frame = around(course, SEA)
    ends = [end for line in pieces if not line.is_closed for end in _goes_on(line, frame)]
    faces = shapely.get_parts(
        shapely.polygonize([shapely.union_all([*pieces, *ends, frame.exterior]).intersection(frame)])
    )
    wet = [face for face in faces if _is_sea(face, pieces)]
    waters = shapely.get_parts(shapely.union_all(wet)) if wet else ()
    return tuple(Extent(_first_along(water, coast), water) for water in waters)


def around(course: Course, margin: float) -> Polygon:
    """Return the rectangle so many metres around all that is mapped but the coast."""
    others = [one.geometry for one in course.features if not is_coastline(one)]
    bounds = shapely.total_bounds(others or [one.geometry for one in course.features])
    west, south, east, north = (float(one) for one in bounds)
    return shapely.box(west - margin, south - margin, east + margin, north + margin)


def _line(geometry: BaseGeometry) -> BaseGeometry:
    """Return a coastline as a line; one that was closed to an area is the edge of that area."""
    return geometry if "Line" in geometry.geom_type else shapely.boundary(geometry)


def _goes_on(line: LineString, frame: Polygon) -> Iterable[LineString]:
    """Yield how an open coastline goes on beyond its ends to the frame around the map."""
    far = hypot(frame.bounds[2] - frame.bounds[0], frame.bounds[3] - frame.bounds[1])
    for from_start in (True, False):
        along = 0.0 if from_start else line.length
        end = line.interpolate(along)
        if not frame.contains(end):
            continue
        back = line.interpolate(min(HEADING, line.length) if from_start else max(0.0, line.length - HEADING))
        x, y = end.x - back.x, end.y - back.y
        length = hypot(x, y) or 1.0
        yield LineString([(end.x, end.y), (end.x + far * x / length, end.y + far * y / length)])


def _is_sea(face: Polygon, pieces: Sequence[LineString]) -> bool:
    """Whether more of the coastline along a face has it on its right than on its left."""
    right = left = 0.0
    shapely.prepare(face)
    for starts, ends in (_segments(piece) for piece in pieces):
        along = ends - starts
        length = np.hypot(*along.T)
        aside = BESIDE * np.column_stack([along[:, 1], -along[:, 0]]) / length[:, None]
        middle = (starts + ends) / 2
        right += float(length[shapely.contains_xy(face, *(middle + aside).T)].sum())
        left += float(length[shapely.contains_xy(face, *(middle - aside).T)].sum())
    return right > left


def _segments(line: LineString) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    places = shapely.get_coordinates(line)
    moves = (places[1:] != places[:-1]).any(axis=1)
    return places[:-1][moves], places[1:][moves]


def _first_along(water: BaseGeometry, coast: Sequence[Feature]) -> Feature:
    near = STRtree([one.geometry for one in coast]).query(water, "dwithin", distance=BESIDE)
    return coast[int(near.min())] if len(near) else coast[0]
