"""A map file as a GeoJSON document that can be edited feature by feature, whatever it was written as."""

import json
from pathlib import Path
from typing import Any

from shapely.geometry import mapping

from marram.course.fault import Fault
from marram.course.progress import whoever_listens
from marram.course.reading.collection import collection_of
from marram.course.reading.files import CannotOpen, bytes_of, is_xml
from marram.course.reading.geojson import INCOMPLETE, UNREADABLE
from marram.course.reading.osm_xml import read_osm_xml
from marram.course.reading.source import Source, unreadable
from marram.visible import visible

Document = dict[str, Any]
"""A GeoJSON FeatureCollection (RFC 7946)."""


def document_of(path: Path) -> tuple[Document | None, list[Fault]]:
    """Return a map file as GeoJSON whose features all have different identifiers; the file is left as it is.

    Of OpenStreetMap XML the document holds what means something for the game. What the reading of a feature refuses
    stays in it, so that it can be looked at and mended.

    Args:
        path: the file: GeoJSON or OpenStreetMap XML, told apart by what it begins with.

    Returns:
        The document, or ``None`` when the file is no map that can be read at all; and the faults that say why.
    """
    source = Source()
    try:
        contents = bytes_of(path)
    except CannotOpen as error:
        return None, unreadable(error).faults
    if is_xml(contents):
        source = read_osm_xml(path.name, contents, whoever_listens)
        return (_from_source(source), []) if source.readable else (None, source.faults)
    document = collection_of(path.name, contents, source, whoever_listens)
    if document is None:
        return None, source.faults
    return named(document), []


def named(document: Document) -> Document:
    """Return a document each of whose entries is a feature with an identifier of its own."""
    features: list[dict[str, Any]] = []
    taken: set[str] = set()
    for index, item in enumerate(document["features"]):
        sound = isinstance(item, dict) and isinstance(item.get("properties") or {}, dict)
        none = {"type": "Feature", "properties": {}, "geometry": None, UNREADABLE: item}
        feature: dict[str, Any] = item if sound else none
        properties = feature.get("properties") or {}
        ident = wanted = visible(str(feature.get("id") or properties.get("@id") or f"feature {index}"))
        again = 1
        while ident in taken:
            again += 1
            ident = f"{wanted} ({again})"
        taken.add(ident)
        # A feature that has its identifier stays as it is, so that it compares equal with itself elsewhere.
        features.append(feature if str(feature.get("id")) == ident else {**feature, "id": ident})
    return {**document, "features": features}


def _from_source(source: Source) -> Document:
    features = [
        {
            "type": "Feature",
            "id": one.ident,
            "properties": {**one.tags, **({INCOMPLETE: lost} if lost else {})},
            "geometry": _plain(mapping(one.geometry)),
        }
        for one, lost in [*((feature, 0) for feature in source.features), *source.partial]
    ]
    document: Document = {"type": "FeatureCollection", "features": features}
    if source.credit:
        document["attribution"] = source.credit
    if source.bounds is not None:
        document["covered"] = list(source.bounds.bounds)
    return document


def _plain(geometry: dict[str, Any]) -> dict[str, Any]:
    """Return a geometry whose coordinates are lists, as JSON reads them."""
    plain: dict[str, Any] = json.loads(json.dumps(geometry))
    return plain
