"""Geometries of GeoJSON (RFC 7946): positions, lines and rings, or what is wrong with them and where."""

from typing import Any

import numpy as np
from numpy.typing import NDArray
from shapely.geometry import LineString, MultiLineString, MultiPoint, MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.reading.source import TOO_SHORT, WITHOUT_RING, Position, out_of_range
from marram.said import said
from marram.visible import short

_Table = NDArray[np.float64]
"""Positions, one in each row: longitude and latitude in degrees."""
_NONE: _Table = np.empty((0, 2))
_FURTHEST = np.array([180.0, 90.0])
"""Degrees: no longitude and no latitude is larger."""


class Unreadable(Exception):
    """A geometry that cannot be read: what is wrong, what to do, where."""

    def __init__(self, check: str, what: str, remedy: str, place: Position | None = None) -> None:
        self.fault = (check, what, remedy)
        self.place = place
        super().__init__(what)


def first_position(geometry: Any) -> Position | None:
    """Return the first place of a GeoJSON geometry that is one, or ``None``."""
    value = geometry.get("coordinates") if isinstance(geometry, dict) else None
    while isinstance(value, list) and value and isinstance(value[0], list):
        value = value[0]
    try:
        return None if out_of_range([found := _position(value)]) else found
    except Unreadable:
        return None


def geometry_of(value: Any) -> BaseGeometry:
    """Return a GeoJSON geometry in degrees, not yet checked for validity.

    One of several parts that has a single part is that part: many programs write every geometry as one of several.

    Raises:
        Unreadable: it cannot be read.
    """
    geometry = _geometry(value)
    if isinstance(geometry, MultiPoint | MultiLineString | MultiPolygon) and len(geometry.geoms) == 1:
        geometry = geometry.geoms[0]
    if geometry.is_empty:
        raise Unreadable("no_geometry", said("its geometry is empty"), said("Draw it, or remove it."))
    return geometry


def _geometry(value: Any) -> BaseGeometry:
    kind, coordinates = (
        (value.get("type"), value.get("coordinates")) if isinstance(value, dict) else (None, None)
    )
    if not isinstance(coordinates, list):
        raise Unreadable(
            "no_geometry",
            said("it has no usable geometry ({kind})", kind=short(kind) if kind else said("none")),
            said("Draw it, or remove it."),
        )
    match kind:
        case "Point":
            return Point(_position(coordinates))
        case "MultiPoint":
            return MultiPoint([_position(position) for position in coordinates])
        case "LineString":
            return LineString(_line(coordinates))
        case "MultiLineString":
            return MultiLineString([_line(line) for line in coordinates])
        case "Polygon":
            return _polygon(coordinates)
        case "MultiPolygon":
            return MultiPolygon([_polygon(rings) for rings in coordinates])
        case _:
            raise Unreadable(
                "no_geometry",
                said("its geometry type {kind!r} is not used here", kind=short(kind)),
                said("Draw it as an area."),
            )


def _position(value: Any) -> Position:
    if (
        not isinstance(value, list)
        or len(value) < 2
        or not all(type(number) in (int, float) and abs(number) < 1e9 for number in value[:2])
    ):
        raise Unreadable(
            "bad_position",
            said("{value} is no position", value=short(value)),
            said("Give longitude, then latitude, in degrees."),
        )
    position = (float(value[0]), float(value[1]))
    if reason := out_of_range([position]):
        raise Unreadable("out_of_range", reason, said("Give WGS 84 longitude, then latitude, in degrees."))
    return position


def _positions(value: Any) -> _Table:
    """Read many positions at once where all are sound; else one by one, to name the faulty one."""
    if not isinstance(value, list):
        return _NONE
    try:
        table = np.array(value)
    except ValueError:  # positions of unequal length, or no positions at all
        table = _NONE
    sound = table.ndim == 2 and table.shape[1] >= 2 and table.dtype.kind in "if"
    if sound and len(table) and (np.abs(table[:, :2]) <= _FURTHEST).all() and not _perhaps_true(table):
        return table[:, :2].astype(float)
    return np.array([_position(position) for position in value], dtype=float).reshape(-1, 2)


def _perhaps_true(table: _Table) -> bool:
    """Whether ``true`` or ``false`` may stand among numbers: a table of numbers holds them as 1 and 0."""
    return bool(((table[:, :2] == 0) | (table[:, :2] == 1)).any())


def _different(table: _Table) -> int:
    """Return how many different positions there are; three stands for any more."""
    others = table[(table != table[:1]).any(axis=1)]
    if not len(others):
        return min(len(table), 1)
    return 3 if (others != others[:1]).any() else 2


def _line(value: Any) -> _Table:
    table = _positions(value)
    if _different(table) < 2:
        raise Unreadable(*TOO_SHORT)
    return table


def _polygon(rings: Any) -> Polygon:
    read = [_ring(ring) for ring in rings] if isinstance(rings, list) else []
    if not read:
        raise Unreadable(*WITHOUT_RING)
    return Polygon(read[0], read[1:])


def _ring(value: Any) -> _Table:
    table = _line(value)
    if (table[0] != table[-1]).any():
        raise Unreadable(
            "open_ring",
            said("its ring is not closed: the last position differs from the first"),
            said("Draw the missing part of the edge and end at the first position."),
            _place(table[-1]),
        )
    if _different(table) < 3:
        raise Unreadable(
            "too_short",
            said("its ring has fewer than three different positions"),
            said("Draw the whole edge."),
            _place(table[0]),
        )
    return table


def _place(row: _Table) -> Position:
    longitude, latitude = row.tolist()
    return longitude, latitude
