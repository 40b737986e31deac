"""Reading a course map from GeoJSON (RFC 7946): a FeatureCollection with OpenStreetMap tags as properties."""

import json
from pathlib import Path
from typing import Any

import numpy as np
from shapely.geometry import LineString, MultiLineString, MultiPoint, MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.reading.source import Position, Source, SourceFeature, out_of_range
from marram.course.scheme import meaning, unknown_tags

WGS84_NAMES = ("CRS84", "EPSG::4326", "EPSG:4326")


class _Unreadable(Exception):
    """A geometry that cannot be read: what is wrong, what to do, where."""

    def __init__(self, check: str, what: str, remedy: str, place: Position | None = None) -> None:
        self.fault = (check, what, remedy)
        self.place = place
        super().__init__(what)


def read_geojson(path: Path) -> Source:
    """Read a GeoJSON file; what cannot be read becomes a fault of the source, nothing is raised."""
    source = Source()
    try:
        document = json.loads(path.read_bytes())
    except (ValueError, RecursionError) as error:
        return source.give_up(
            "not_json", f"{path.name} is not JSON: {error}", "Export the map as GeoJSON again."
        )
    if not isinstance(document, dict) or document.get("type") != "FeatureCollection":
        return source.give_up(
            "not_a_collection",
            f"{path.name} is not a GeoJSON FeatureCollection",
            "Export the whole map, with a 'features' list.",
        )
    name = _crs_name(document)
    if name and not name.endswith(WGS84_NAMES):
        return source.give_up(
            "not_wgs84",
            f"its 'crs' says {name}, but marram reads WGS 84 longitude and latitude",
            "Export in WGS 84 (EPSG:4326), as RFC 7946 asks.",
        )
    source.credit = str(document.get("copyright") or document.get("attribution") or "")
    features = document.get("features")
    for index, item in enumerate(features if isinstance(features, list) else []):
        _read_feature(source, item, index)
    return source


def _crs_name(document: dict[str, Any]) -> str:
    crs = document.get("crs")
    properties = crs.get("properties") if isinstance(crs, dict) else None
    return str(properties.get("name", "")) if isinstance(properties, dict) else ""


def _read_feature(source: Source, item: Any, index: int) -> None:
    if not isinstance(item, dict) or not isinstance(item.get("properties") or {}, dict):
        source.refuse("not_a_feature", f"entry {index} of 'features' is not a GeoJSON Feature", "Remove it.")
        return
    properties = item.get("properties") or {}
    ident = str(item.get("id") or properties.get("@id") or f"feature {index}")
    tags = {
        str(key): _text(value) for key, value in properties.items() if value is not None and key[:1] != "@"
    }
    if fault := unknown_tags(ident, tags):
        source.faults.append(fault)
    if meaning(tags) is None:
        return
    try:
        geometry = _geometry(item.get("geometry"))
        if geometry.is_empty:
            raise _Unreadable("no_geometry", "its geometry is empty", "Draw it, or remove it.")
    except _Unreadable as error:
        source.refuse(*error.fault, ident=ident, place=error.place)
        return
    source.features.append(SourceFeature(ident, tags, geometry))


def _text(value: Any) -> str:
    """Return a property as a tag's text; some tools write 4 as 4.0."""
    return str(int(value)) if isinstance(value, float) and value.is_integer() else str(value)


def _geometry(value: Any) -> BaseGeometry:
    kind, coordinates = (
        (value.get("type"), value.get("coordinates")) if isinstance(value, dict) else (None, None)
    )
    if not isinstance(coordinates, list):
        raise _Unreadable(
            "no_geometry", f"it has no usable geometry ({kind or 'none'})", "Draw it, or remove it."
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
            raise _Unreadable(
                "no_geometry", f"its geometry type {kind!r} is not used here", "Draw it as an area."
            )


def _position(value: Any) -> Position:
    if (
        not isinstance(value, list)
        or len(value) < 2
        or not all(isinstance(number, int | float) and abs(number) < 1e9 for number in value[:2])
    ):
        raise _Unreadable(
            "bad_position", f"{value!r} is no position", "Give longitude, then latitude, in degrees."
        )
    position = (float(value[0]), float(value[1]))
    if reason := out_of_range([position]):
        raise _Unreadable("out_of_range", reason, "Give WGS 84 longitude, then latitude, in degrees.")
    return position


def _positions(value: Any) -> list[Position]:
    """Read many positions at once where all are sound; else one by one, to name the faulty one."""
    if not isinstance(value, list):
        return []
    try:
        table = np.array(value)
    except ValueError:  # positions of unequal length, or no positions at all
        table = np.empty(0)
    sound = table.ndim == 2 and table.shape[1] >= 2 and table.dtype.kind in "if"
    if sound and (np.abs(table[:, 0]) <= 180).all() and (np.abs(table[:, 1]) <= 90).all():
        return list(map(tuple, table[:, :2].astype(float).tolist()))
    return [_position(position) for position in value]


def _line(value: Any) -> list[Position]:
    positions = _positions(value)
    if len(set(positions)) < 2:
        raise _Unreadable(
            "too_short", "its line has fewer than two different positions", "Draw the whole line."
        )
    return positions


def _polygon(rings: Any) -> Polygon:
    read = [_ring(ring) for ring in rings] if isinstance(rings, list) else []
    if not read:
        raise _Unreadable("no_geometry", "its area has no ring", "Draw its edge.")
    return Polygon(read[0], read[1:])


def _ring(value: Any) -> list[Position]:
    positions = _line(value)
    if positions[0] != positions[-1]:
        raise _Unreadable(
            "open_ring",
            "its ring is not closed: the last position differs from the first",
            "Draw the missing part of the edge and end at the first position.",
            positions[-1],
        )
    if len(set(positions)) < 3:
        raise _Unreadable(
            "too_short",
            "its ring has fewer than three different positions",
            "Draw the whole edge.",
            positions[0],
        )
    return positions
