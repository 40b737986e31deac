"""Reading a course map from GeoJSON (RFC 7946): a FeatureCollection with OpenStreetMap tags as properties."""

import json
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from shapely.geometry import LineString, MultiLineString, MultiPoint, MultiPolygon, Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from marram.course.reading.source import Position, Source, SourceFeature, out_of_range
from marram.course.scheme import is_about_golf, meaning, unknown_tags
from marram.said import Said, counted, said
from marram.visible import short, visible

_Table = NDArray[np.float64]
"""Positions, one in each row: longitude and latitude in degrees."""
_NONE: _Table = np.empty((0, 2))
_FURTHEST = np.array([180.0, 90.0])
"""Degrees: no longitude and no latitude is larger."""

WGS84_NAMES = ("CRS84", "EPSG::4326", "EPSG:4326")

WGS84 = "urn:ogc:def:crs:OGC:1.3:CRS84"
"""WGS 84 longitude and latitude in degrees, as the GeoJSON specification of 2008 names it."""

INCOMPLETE = "@incomplete"
"""The property that says how many parts of a feature were missing in the file it came from."""

UNREADABLE = "unreadable"
"""The member that holds what stood among the features and was none."""


class Unreadable(Exception):
    """A geometry that cannot be read: what is wrong, what to do, where."""

    def __init__(self, check: str, what: str, remedy: str, place: Position | None = None) -> None:
        self.fault = (check, what, remedy)
        self.place = place
        super().__init__(what)


def read_geojson(name: str, data: bytes) -> Source:
    """Read the bytes of a GeoJSON file; what cannot be read becomes a fault of the source, nothing is raised."""
    source = Source()
    try:
        document = json.loads(data)
    except UnicodeDecodeError:
        return source.give_up(
            "not_json",
            said("{name} is not JSON: it is no text in UTF-8", name=name),
            said("Save it as UTF-8."),
        )
    except (ValueError, RecursionError) as error:
        why = said("it is nested without end") if isinstance(error, RecursionError) else visible(str(error))
        return source.give_up(
            "not_json",
            said("{name} is not JSON: {why}", name=name, why=why),
            said("Export the map as GeoJSON again."),
        )
    if not isinstance(document, dict) or document.get("type") != "FeatureCollection":
        return source.give_up(
            "not_a_collection",
            said("{name} is not a GeoJSON FeatureCollection", name=name),
            said("Export the whole map, with a 'features' list."),
        )
    return source_of(document)


def source_of(document: dict[str, Any]) -> Source:
    """Return what a GeoJSON FeatureCollection holds; what cannot be read becomes a fault, nothing is raised."""
    source = Source()
    features = document.get("features")
    items = features if isinstance(features, list) else []
    system = crs_of(document)
    own = all(isinstance(item, dict) and crs_of(item) == Crs(given=True, name=WGS84) for item in items)
    if system.given and not system.wgs84 and not (items and own):
        return source.give_up(
            "not_wgs84",
            said("its 'crs' {words}, but marram reads WGS 84 longitude and latitude", words=system.words),
            said("Export in WGS 84 (EPSG:4326), as RFC 7946 asks."),
        )
    source.credit = visible(str(document.get("copyright") or document.get("attribution") or ""))
    source.bounds = _covered(document)
    for index, item in enumerate(items):
        _read_feature(source, item, index)
    return source


@dataclass(frozen=True, slots=True)
class Crs:
    """The coordinate system that a GeoJSON object of the former kind (before RFC 7946) names.

    Attributes:
        given: whether it has a ``crs`` at all.
        name: the name; empty where there is none that could be read.
        link: the address it points to instead.
    """

    given: bool = False
    name: str = ""
    link: str = ""

    @property
    def wgs84(self) -> bool:
        """Whether it is WGS 84 in degrees."""
        return self.name.endswith(WGS84_NAMES)

    @property
    def words(self) -> Said:
        """What it says, for messages."""
        if self.name:
            return said("says {name}", name=self.name)
        return (
            said("is a link ({link}), which is not followed", link=self.link)
            if self.link
            else said("names no coordinate system")
        )


def crs_of(value: dict[str, Any]) -> Crs:
    """Return the coordinate system a GeoJSON object names: as an object, as a plain name, or as a link."""
    crs = value.get("crs")
    if crs is None:
        return Crs()
    if isinstance(crs, str):
        return Crs(given=True, name=crs.strip())
    properties = crs.get("properties") if isinstance(crs, dict) else None
    told = properties if isinstance(properties, dict) else {}
    name, link = told.get("name"), told.get("href")
    return Crs(True, name if isinstance(name, str) else "", link if isinstance(link, str) else "")


def _covered(document: dict[str, Any]) -> BaseGeometry | None:
    """Return the rectangle that a map taken from a larger file was cut to: west, south, east, north in degrees."""
    match document.get("covered"):
        case [
            int() | float() as west,
            int() | float() as south,
            int() | float() as east,
            int() | float() as north,
        ]:
            return None if out_of_range([(west, south), (east, north)]) else box(west, south, east, north)
    return None


def _read_feature(source: Source, item: Any, index: int) -> None:
    if not isinstance(item, dict) or not isinstance(item.get("properties") or {}, dict) or UNREADABLE in item:
        ident = str(item.get("id", "")) if isinstance(item, dict) and UNREADABLE in item else ""
        source.refuse(
            "not_a_feature",
            said("entry {index} of 'features' is not a GeoJSON Feature", index=index),
            said("Remove it."),
            ident,
        )
        return
    properties = item.get("properties") or {}
    if is_about_golf(properties) and (lost := properties.get(INCOMPLETE)):
        source.refuse(
            "incomplete",
            counted(
                "{count} of its parts is not in the file", "{count} of its parts are not in the file", lost
            ),
            said("Export a larger rectangle, or with complete ways and relations."),
            str(item.get("id", "")),
            first_position(item.get("geometry")),
        )
        return
    ident = visible(str(item.get("id") or properties.get("@id") or f"feature {index}"))
    tags = tags_of(properties)
    if fault := unknown_tags(ident, tags):
        source.faults.append(fault)
    if meaning(tags) is None:
        return
    try:
        geometry = geometry_of(item.get("geometry"))
    except Unreadable as error:
        source.refuse(*error.fault, ident=ident, place=error.place)
        return
    source.features.append(SourceFeature(ident, tags, geometry))


def first_position(geometry: Any) -> Position | None:
    """Return the first place of a GeoJSON geometry that is one, or ``None``."""
    value = geometry.get("coordinates") if isinstance(geometry, dict) else None
    while isinstance(value, list) and value and isinstance(value[0], list):
        value = value[0]
    try:
        return None if out_of_range([found := _position(value)]) else found
    except Unreadable:
        return None


def tags_of(properties: dict[str, Any]) -> dict[str, str]:
    """Return the tags that the properties of a GeoJSON feature hold; keys that begin with ``@`` are none."""
    return {
        visible(key): visible(_text(value))
        for key, value in properties.items()
        if value is not None and key[:1] != "@"
    }


def _text(value: Any) -> str:
    """Return a property as a tag's text; some tools write 4 as 4.0."""
    return str(int(value)) if isinstance(value, float) and value.is_integer() else str(value)


def geometry_of(value: Any) -> BaseGeometry:
    """Return a GeoJSON geometry in degrees, not yet checked for validity.

    Raises:
        Unreadable: it cannot be read.
    """
    geometry = _geometry(value)
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
        or not all(isinstance(number, int | float) and abs(number) < 1e9 for number in value[:2])
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
    if sound and len(table) and (np.abs(table[:, :2]) <= _FURTHEST).all():
        return table[:, :2].astype(float)
    return np.array([_position(position) for position in value], dtype=float).reshape(-1, 2)


def _different(table: _Table) -> int:
    """Return how many different positions there are; three stands for any more."""
    others = table[(table != table[:1]).any(axis=1)]
    if not len(others):
        return min(len(table), 1)
    return 3 if (others != others[:1]).any() else 2


def _line(value: Any) -> _Table:
    table = _positions(value)
    if _different(table) < 2:
        raise Unreadable(
            "too_short", said("its line has fewer than two different positions"), said("Draw the whole line.")
        )
    return table


def _polygon(rings: Any) -> Polygon:
    read = [_ring(ring) for ring in rings] if isinstance(rings, list) else []
    if not read:
        raise Unreadable("no_geometry", said("its area has no ring"), said("Draw its edge."))
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
