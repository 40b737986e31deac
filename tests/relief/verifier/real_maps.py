"""The three open maps as GeoJSON that both sides read: OpenStreetMap XML turned over, and lines of play numbered.

© OpenStreetMap contributors, Open Database License 1.0. One of the maps has no hole numbers and cannot be used as it
is; here its lines get numbers in the order of the file, and boundary, greens and all else stay as mapped.
"""

import json
import xml.etree.ElementTree as ET
from itertools import count
from pathlib import Path

import shapely
from shapely.geometry import mapping

LINEAR = {"hole", "cartpath", "path"}


def as_geojson(file: Path, folder: Path, *, number=False) -> Path:
    """Return a map as GeoJSON, written to a folder where it is OpenStreetMap XML."""
    if file.suffix == ".osm":
        features = _features(ET.parse(file).getroot())
    else:
        features = json.loads(file.read_text(encoding="utf-8"))["features"]
    if number:
        numbers = count(1)
        for one in features:
            if one["properties"].get("golf") == "hole" and "ref" not in one["properties"]:
                one["properties"]["ref"] = str(next(numbers))
    target = folder / f"{file.stem}.geojson"
    target.write_text(json.dumps({"type": "FeatureCollection", "features": features}), encoding="utf-8")
    return target


def _features(root):
    nodes = {one.get("id"): (float(one.get("lon")), float(one.get("lat"))) for one in root.iter("node")}
    ways = {}
    for way in root.iter("way"):
        refs = [one.get("ref") for one in way.iter("nd")]
        if all(ref in nodes for ref in refs) and len(refs) > 1:
            ways[way.get("id")] = [nodes[ref] for ref in refs]
    found = [
        _feature(f"node/{one.get('id')}", tags, {"type": "Point", "coordinates": nodes[one.get("id")]})
        for one in root.iter("node")
        if (tags := _tags(one))
    ]
    for way in root.iter("way"):
        tags, points = _tags(way), ways.get(way.get("id"))
        if tags and points:
            found.append(_feature(f"way/{way.get('id')}", tags, _line_or_area(tags, points)))
    for relation in root.iter("relation"):
        tags = _tags(relation)
        members = [one for one in relation.iter("member") if one.get("type") == "way"]
        if tags.pop("type", None) != "multipolygon" or not all(one.get("ref") in ways for one in members):
            continue
        outer, inner = (
            shapely.union_all(
                _rings(ways[one.get("ref")] for one in members if (one.get("role") == "inner") is which)
            )
            for which in (False, True)
        )
        area = outer.difference(inner)
        if not area.is_empty:
            found.append(_feature(f"relation/{relation.get('id')}", tags, mapping(area)))
    return found


def _rings(lines):
    merged = shapely.line_merge(shapely.MultiLineString(list(lines)))
    return [shapely.Polygon(one) for one in shapely.get_parts(merged) if one.is_closed]


def _tags(one):
    return {tag.get("k"): tag.get("v") for tag in one.findall("tag")}


def _feature(ident, tags, geometry):
    return {"type": "Feature", "id": ident, "properties": tags, "geometry": geometry}


def _line_or_area(tags, points):
    closed = len(points) > 3 and points[0] == points[-1]
    linear = (
        tags.get("golf") in LINEAR
        or "highway" in tags
        or ("waterway" in tags and tags["waterway"] != "riverbank")
    )
    if closed and (not linear or tags.get("area") == "yes"):
        return {"type": "Polygon", "coordinates": [points]}
    return {"type": "LineString", "coordinates": points}
