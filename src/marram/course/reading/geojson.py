"""Reading a course map from GeoJSON (RFC 7946): a FeatureCollection with OpenStreetMap tags as properties."""

from dataclasses import dataclass
from typing import Any

from shapely.geometry import box
from shapely.geometry.base import BaseGeometry

from marram.course.progress import READING, Progress, no_progress, part_of, telling
from marram.course.reading.collection import collection_of
from marram.course.reading.geojson_geometry import Unreadable, first_position, geometry_of
from marram.course.reading.source import Source, SourceFeature, incomplete, out_of_range
from marram.course.scheme import is_about_golf, meaning, unknown_tags
from marram.said import Said, said
from marram.visible import visible

WGS84_NAMES = ("CRS84", "EPSG::4326", "EPSG:4326")

WGS84 = "urn:ogc:def:crs:OGC:1.3:CRS84"
"""WGS 84 longitude and latitude in degrees, as the GeoJSON specification of 2008 names it."""

INCOMPLETE = "@incomplete"
"""The property that says how many parts of a feature were missing in the file it came from."""

UNREADABLE = "unreadable"
"""The member that holds what stood among the features and was none."""

PARSED = 0.3
"""Which part of the reading is done once a file is parsed (as measured, about)."""


def read_geojson(name: str, data: bytes, progress: Progress = no_progress) -> Source:
    """Read the bytes of a GeoJSON file; what cannot be read becomes a fault of the source, nothing is raised."""
    source = Source()
    document = collection_of(name, data, source, part_of(progress, 0.0, PARSED))
    return source if document is None else source_of(document, part_of(progress, PARSED, 1.0))


def source_of(document: dict[str, Any], progress: Progress = no_progress) -> Source:
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
    for index, item in enumerate(telling(items, progress, READING)):
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
        place = first_position(item.get("geometry"))
        source.faults.append(incomplete(visible(str(item.get("id", ""))), lost, place, about_golf=True))
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
