"""Reading a course map from OpenStreetMap XML (API 0.6 and the extracts made from it)."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from math import isnan
from xml.parsers import expat

import shapely
from shapely.geometry import LineString, MultiLineString, Point, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault
from marram.course.progress import READING, Progress, no_progress, part_of, telling
from marram.course.reading.osm_areas import INNER, Member, joined
from marram.course.reading.osm_doubts import inner_outside, open_edge, tags_at_edge
from marram.course.reading.source import (
    TOO_SHORT,
    WITHOUT_RING,
    Position,
    Source,
    SourceFeature,
    incomplete,
    out_of_range,
)
from marram.course.scheme import is_about_golf, is_area, meaning, unknown_tags
from marram.said import Said, said
from marram.visible import short, visible

CREDIT = "Map data © OpenStreetMap contributors, ODbL 1.0"
"""Shown where the file names no credit of its own: the licence asks for it."""

PARSED = 0.5
"""Which part of the reading is done once a file is parsed (as measured, about)."""

PIECE = 100_000
"""Bytes that are parsed before progress is told (own choice)."""


class _NotAllowed(Exception):
    """The file declares a document type, which no map needs and which can hide an attack."""


@dataclass(slots=True)
class _Element:
    """A node, way or relation with its tags and parts."""

    kind: str
    number: str
    tags: dict[str, str] = field(default_factory=dict)
    nodes: list[str] = field(default_factory=list)
    members: list[tuple[str, str, str]] = field(default_factory=list)

    @property
    def ident(self) -> str:
        return f"{self.kind}/{self.number}"


@dataclass(slots=True)
class _File:
    """The elements of a file, by kind and number."""

    places: dict[str, Position] = field(default_factory=dict)
    ways: dict[str, _Element] = field(default_factory=dict)
    tagged: list[_Element] = field(default_factory=list)
    bounds: BaseGeometry | None = None
    credit: str = ""
    root: str = ""
    current: _Element | None = None
    line: int = 1

    def start(self, name: str, attributes: Mapping[str, str]) -> None:
        """Take in the start of an element."""
        self.root = self.root or name
        current = self.current
        if name in {"node", "way", "relation"}:
            gone = attributes.get("visible") == "false" or attributes.get("action") == "delete"
            self.current = None if gone else _Element(name, attributes["id"])
            if name == "node" and not gone:
                self.places[attributes["id"]] = (_number(attributes["lon"]), _number(attributes["lat"]))
        elif name == "tag" and current is not None:
            current.tags[visible(attributes["k"])] = visible(attributes["v"])
        elif name == "nd" and current is not None and current.kind == "way":
            current.nodes.append(attributes["ref"])
            if "lat" in attributes:  # an extract with the positions in its ways, and without the nodes
                place = (_number(attributes["lon"]), _number(attributes["lat"]))
                self.places.setdefault(attributes["ref"], place)
        elif name == "member" and current is not None:
            current.members.append((attributes["type"], attributes["ref"], attributes.get("role", "")))
        elif name == "bounds":
            west, south, east, north = (
                _number(attributes[key]) for key in ("minlon", "minlat", "maxlon", "maxlat")
            )
            if reason := out_of_range([(west, south), (east, north)]):
                raise ValueError(said("its bounds: {reason}", reason=reason))
            self.bounds = shapely.box(west, south, east, north)
        elif name == "osm":
            given = (attributes.get("copyright"), attributes.get("attribution") or attributes.get("license"))
            self.credit = visible(", ".join(part for part in given if part)) or CREDIT

    def end(self, name: str) -> None:
        """Take in the end of an element."""
        element = self.current
        if element is None or name != element.kind:
            return
        if name == "way":
            self.ways[element.number] = element
        if element.tags:
            self.tagged.append(element)
        self.current = None


def read_osm_xml(name: str, data: bytes, progress: Progress = no_progress) -> Source:
    """Read the bytes of an OpenStreetMap XML file; what cannot be read becomes a fault of the source, nothing is raised."""
    source = Source()
    file = _File()
    try:
        _parse(data, file, part_of(progress, 0.0, PARSED))
    except expat.ExpatError as error:
        return source.give_up(
            "not_xml",
            said("{name} is not well-formed XML: {error}", name=name, error=error),
            said("Export the map again."),
        )
    except _NotAllowed:
        return source.give_up(
            "document_type",
            said("{name} declares a document type", name=name),
            said("Export the map again: no map needs one."),
        )
    except KeyError as error:
        return source.give_up(
            "not_osm",
            said(
                "{name}, line {line}: an element lacks its {attribute}, so this is not OpenStreetMap data",
                name=name,
                line=file.line,
                attribute=error.args[0],
            ),
            said("Export the map again."),
        )
    except ValueError as error:
        (told, *_) = error.args
        why = told if isinstance(told, Said) else visible(str(error))
        return source.give_up(
            "not_osm",
            said(
                "{name}, line {line}: this is not OpenStreetMap data ({why})",
                name=name,
                line=file.line,
                why=why,
            ),
            said("Export the map again."),
        )
    if file.root != "osm":
        return source.give_up(
            "not_osm",
            said("its root is <{root}>, not <osm>", root=short(file.root)),
            said("Export the map as OpenStreetMap XML."),
        )
    source.credit = file.credit
    source.bounds = file.bounds
    for element in telling(file.tagged, part_of(progress, PARSED, 1.0), READING):
        if fault := unknown_tags(element.ident, element.tags):
            source.faults.append(fault)
        if _makes_area(element):
            source.faults.extend(_doubts(element, file))
        if meaning(element.tags) is not None:
            _read_element(element, file, source)
    return source


def _parse(data: bytes, file: _File, progress: Progress) -> None:
    parser = expat.ParserCreate()
    parser.StartElementHandler = file.start
    parser.EndElementHandler = file.end
    parser.StartDoctypeDeclHandler = _refuse_document_type
    try:
        for start in range(0, len(data), PIECE):
            progress(READING, start / len(data))
            parser.Parse(data[start : start + PIECE])
        parser.Parse(b"", True)
    finally:
        file.line = parser.CurrentLineNumber


def _number(written: str) -> float:
    """Return a number; what reads as one but is none ("nan", "5_1") is refused as any other word is."""
    if isnan(found := float(written)) or "_" in written:
        raise ValueError(said("{written} is no number", written=short(written)))
    return found


def _refuse_document_type(*_: object) -> None:
    raise _NotAllowed


def _read_element(element: _Element, file: _File, source: Source) -> None:
    if element.kind == "node":
        place = file.places[element.number]
        if reason := out_of_range([place]):
            source.refuse("out_of_range", reason, said("Give WGS 84 degrees."), element.ident)
            source.partial.append((SourceFeature(element.ident, element.tags, Point(place)), 0))
        else:
            source.features.append(SourceFeature(element.ident, element.tags, Point(place)))
        return
    if element.kind == "relation" and not _makes_area(element):
        return
    ways = [element] if element.kind == "way" else _member_ways(element, file)
    lost = sum(role is None for role in ways) + sum(
        number not in file.places for way in ways if way is not None for number in way.nodes
    )
    if lost:
        known = [file.places[n] for way in ways if way is not None for n in way.nodes if n in file.places]
        golf = is_about_golf(element.tags)
        source.faults.append(incomplete(element.ident, lost, known[0] if known else None, about_golf=golf))
        _keep_partial(element, ways, file, source, lost)
        return
    present = [way for way in ways if way is not None]
    if reason := out_of_range([file.places[number] for way in present for number in way.nodes]):
        source.refuse("out_of_range", reason, said("Give WGS 84 degrees."), element.ident)
        _keep_partial(element, ways, file, source)
        return
    geometry = _way(element, file) if element.kind == "way" else _multipolygon(element, file, source)
    if geometry is not None:
        source.features.append(SourceFeature(element.ident, element.tags, geometry))
        return
    if element.kind == "way" and is_about_golf(element.tags):
        source.refuse(*TOO_SHORT, element.ident, file.places[element.nodes[0]] if element.nodes else None)
    elif is_about_golf(element.tags) and not present:
        source.refuse(*WITHOUT_RING, element.ident)
    _keep_partial(element, ways, file, source)


def _makes_area(element: _Element) -> bool:
    return element.kind == "relation" and element.tags.get("type") in {"multipolygon", "boundary"}


def _keep_partial(
    element: _Element, ways: Iterable[_Element | None], file: _File, source: Source, lost: int = 0
) -> None:
    """Keep what is known of something refused, as lines (an empty one of what has no position), so that it can be mended."""
    chains = [
        [file.places[number] for number in way.nodes if number in file.places]
        for way in ways
        if way is not None
    ]
    lines = [chain for chain in chains if len(set(chain)) > 1]
    if is_about_golf(element.tags):
        shape = LineString(*lines) if len(lines) < 2 else MultiLineString(lines)
        source.partial.append((SourceFeature(element.ident, element.tags, shape), lost))


def _member_ways(relation: _Element, file: _File) -> list[_Element | None]:
    return [file.ways.get(ref) for kind, ref, _ in relation.members if kind == "way"]


def _way(way: _Element, file: _File) -> BaseGeometry | None:
    places = [file.places[number] for number in way.nodes]
    if len(set(places)) < 2:
        return None
    closed = way.nodes[0] == way.nodes[-1] and len(set(places)) > 2
    return Polygon(places) if closed and is_area(way.tags) else LineString(places)


def _multipolygon(relation: _Element, file: _File, source: Source) -> BaseGeometry | None:
    """Return the area of a relation, and say where its ways make none or not all of it."""
    golf = is_about_golf(relation.tags)
    found = joined(_roles(relation, file), file.places)
    if found.open_at:
        source.faults.append(open_edge(relation.ident, found.open_at, about_golf=golf))
    source.faults.extend(inner_outside(relation.ident, place, about_golf=golf) for place in found.ignored)
    return found.area


def _roles(relation: _Element, file: _File) -> list[Member]:
    """Return the role and the nodes of each way of a relation that the file holds."""
    return [
        (role, file.ways[ref].nodes)
        for kind, ref, role in relation.members
        if kind == "way" and ref in file.ways
    ]


def _doubts(relation: _Element, file: _File) -> Iterable[Fault]:
    """Yield where the tags of a relation stand at a way of its edge, or there too."""
    roles = _roles(relation, file)
    cut = next((nodes[0] for role, nodes in roles if role == INNER and nodes), None)
    for kind, ref, role in relation.members:
        if kind == "way" and role != INNER and ref in file.ways:
            edge = file.ways[ref]
            in_pieces = edge.nodes[:1] != edge.nodes[-1:]
            shown = cut or (edge.nodes[0] if in_pieces else None)
            if shown in file.places:
                yield from tags_at_edge(
                    relation.ident,
                    relation.tags,
                    edge.ident,
                    edge.tags,
                    file.places[shown],
                    in_pieces=in_pieces,
                )
