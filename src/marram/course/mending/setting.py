"""The map a mending looks at: its features by identifier, their shapes in metres, and edits of them."""

import json
from collections.abc import Iterator, Mapping
from copy import deepcopy
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import make_valid
from shapely.geometry import LineString, MultiLineString, Point, Polygon, mapping
from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault
from marram.course.mending.hole_writing import HoleWriting, read_writing
from marram.course.model import Course, Kind
from marram.course.plane import LocalPlane
from marram.course.reading.geojson import tags_of
from marram.course.reading.geojson_geometry import Unreadable, geometry_of
from marram.course.reading.source import Source, SourceFeature
from marram.course.scheme import Role, is_about_golf, is_area, meaning
from marram.course.versions.map_edits import Document, Edit, Feature, by_ident


@dataclass(frozen=True, slots=True)
class Thing:
    """A feature of the map as mending sees it.

    Attributes:
        ident: its identifier.
        tags: its tags.
        shape: its geometry in metres.
        writing: what its ``ref`` says of holes, however it is written.
    """

    ident: str
    tags: Mapping[str, str]
    shape: BaseGeometry
    writing: HoleWriting

    @property
    def number(self) -> int | None:
        """The one hole that its ``ref`` names, or ``None``."""
        return self.writing.numbers[0] if len(self.writing.numbers) == 1 else None

    @property
    def plain(self) -> bool:
        """Whether its ``ref`` is written as the map wants it: the number alone."""
        return self.tags.get("ref", "").strip() == str(self.number)


@dataclass(frozen=True, slots=True)
class LineThing(Thing):
    """A line of play that is one line."""

    @property
    def path(self) -> LineString:
        """The line itself, in metres."""
        return LineString(self.shape.coords)

    @property
    def start(self) -> Point:
        """Where it begins, in metres."""
        return Point(self.shape.coords[0])

    @property
    def end(self) -> Point:
        """Where it ends, in metres."""
        return Point(self.shape.coords[-1])


class Setting:
    """A map to be mended.

    Args:
        document: the map as GeoJSON, each feature with an identifier of its own.
        source: what was read from it.
        course: the course as far as it could be put together, or ``None``.
        faults: what is wrong with it.
    """

    def __init__(
        self, document: Document, source: Source, course: Course | None, faults: tuple[Fault, ...]
    ) -> None:
        self.document = document
        self.source = source
        self.course = course
        self.faults = faults
        self.features: dict[str, Feature] = by_ident(document)

    @cached_property
    def plane(self) -> LocalPlane:
        """The plane that shapes are measured in: the course's, else one in the middle of what was read."""
        if self.course is not None:
            return self.course.plane
        golf = [one.geometry for one in self.source.features if is_about_golf(one.tags)]
        if not golf:
            return LocalPlane(0.0, 0.0)
        west, south, east, north = shapely.total_bounds(golf)
        return LocalPlane(float(west + east) / 2, float(south + north) / 2)

    @cached_property
    def read(self) -> dict[str, SourceFeature]:
        """What could be read, by identifier."""
        return {one.ident: one for one in self.source.features}

    def things(self, what: Kind | Role) -> Iterator[Thing]:
        """Return the features of a kind or role, in the order of the file."""
        for ident, one in self.read.items():
            if meaning(one.tags) is what:
                shape = self.plane.inward(one.geometry)
                if isinstance(shape, LineString) and is_area(one.tags) and shape.is_ring:
                    shape = Polygon(shape)
                if not shape.is_valid:
                    shape = _valid(shape)
                kind = LineThing if isinstance(shape, LineString) else Thing
                yield kind(ident, one.tags, shape, read_writing(one.tags.get("ref", "")))

    @cached_property
    def lines(self) -> tuple[LineThing, ...]:
        """The lines of play that are one line each."""
        return tuple(one for one in self.things(Role.HOLE) if isinstance(one, LineThing))

    @cached_property
    def greens(self) -> tuple[Thing, ...]:
        """The putting greens."""
        return tuple(one for one in self.things(Kind.PUTTING_GREEN) if one.shape.area > 0)

    @cached_property
    def tees(self) -> tuple[Thing, ...]:
        """The teeing areas and tees, those drawn as points too."""
        return tuple(self.things(Kind.TEEING_AREA))

    @cached_property
    def pins(self) -> tuple[Thing, ...]:
        """The pins."""
        return tuple(one for one in self.things(Role.PIN) if isinstance(one.shape, Point))

    @cached_property
    def belonging(self) -> dict[str, Thing]:
        """What belongs to a hole, by identifier: pins, tees and greens."""
        return {one.ident: one for one in (*self.pins, *self.tees, *self.greens)}

    @cached_property
    def without_green(self) -> frozenset[int | None]:
        """The holes whose line of play ends on no green."""
        return frozenset(one.hole for one in self.faults if one.check == "hole_without_green")

    @cached_property
    def used(self) -> dict[str, bool]:
        """The features that mean something for the game, with whether their geometry can be read."""
        return {
            ident: self.shape(ident) is not None
            for ident in self.features
            if meaning(self.tags(ident)) is not None
        }

    @cached_property
    def holes(self) -> frozenset[str]:
        """The identifiers of the lines of play, readable or not."""
        return frozenset(ident for ident in self.used if meaning(self.tags(ident)) is Role.HOLE)

    def is_hole(self, line: LineThing) -> bool:
        """Whether a line of play is a hole as it stands: one number, written alone."""
        return line.number is not None and line.plain

    @cached_property
    def golf_middles(self) -> NDArray[np.float64]:
        """The middles of all golf features that can be read, in degrees, in the order of :attr:`golf`."""
        bounds = shapely.bounds([self.read[ident].geometry for ident in self.golf]).reshape(-1, 4)
        middles: NDArray[np.float64] = (bounds[:, :2] + bounds[:, 2:]) / 2
        return middles

    @cached_property
    def golf(self) -> tuple[str, ...]:
        """The golf features that can be read."""
        return tuple(ident for ident, one in self.read.items() if is_about_golf(one.tags))

    def line(self, fault: Fault) -> LineThing | None:
        """Return the line of play that a fault is about: by its identifier, else by the number of its hole."""
        same = [one for one in self.lines if one.ident == fault.feature]
        same = same or [one for one in self.lines if fault.hole is not None and one.number == fault.hole]
        return same[0] if len(same) == 1 else None

    def tags(self, ident: str) -> dict[str, str]:
        """Return the tags of a feature."""
        return tags_of(self.features[ident].get("properties") or {})

    def shape(self, ident: str) -> BaseGeometry | None:
        """Return a feature's geometry in degrees, or ``None`` where it cannot be read."""
        try:
            return geometry_of(self.features[ident].get("geometry"))
        except Unreadable:
            return None

    # Edits

    def retag(self, ident: str, **tags: str | None) -> Edit:
        """Return the edit that sets tags (``None`` takes one away); ``__`` in a name stands for a colon."""
        feature = deepcopy(self.features[ident])
        properties = feature["properties"] = dict(feature.get("properties") or {})
        for name, value in tags.items():
            key = name.replace("__", ":")
            if value is None:
                properties.pop(key, None)
            else:
                properties[key] = value
        return Edit("change", ident, feature)

    def redraw(self, ident: str, geometry: BaseGeometry | dict[str, Any]) -> Edit:
        """Return the edit that gives a feature another geometry, in degrees."""
        given = geometry if isinstance(geometry, dict) else plain(geometry)
        return Edit("change", ident, {**deepcopy(self.features[ident]), "geometry": given})

    def is_change(self, edit: Edit) -> bool:
        """Return whether an edit leaves the map other than it is."""
        return edit.feature != self.features.get(edit.ident)

    def remove(self, *idents: str) -> tuple[Edit, ...]:
        """Return the edits that take features off the map."""
        return tuple(Edit("remove", ident) for ident in idents)

    def add(self, ident: str, geometry: BaseGeometry, **tags: str) -> Edit:
        """Return the edit that adds a feature, its geometry in degrees."""
        feature = {"type": "Feature", "id": ident, "properties": tags, "geometry": plain(geometry)}
        return Edit("add", ident, feature)


def _valid(shape: BaseGeometry) -> BaseGeometry:
    """Return a shape made valid; of an area the areas alone, without the edges in it that enclose nothing."""
    made = make_valid(shape)
    areas = [part for part in shapely.get_parts(made) if part.area > 0]
    return shapely.union_all(areas) if areas else made


def plain(geometry: BaseGeometry) -> dict[str, Any]:
    """Return a geometry as GeoJSON with lists, as a file holds it."""
    found: dict[str, Any] = json.loads(json.dumps(mapping(geometry)))
    return found


def drawn(geometry: BaseGeometry) -> BaseGeometry:
    """Return a geometry in degrees with 8 decimals, about a millimetre on the ground, as positions are kept."""
    return shapely.transform(geometry, lambda places: places.round(8))


def lines_in(geometry: BaseGeometry) -> list[LineString]:
    """Return the lines of a geometry."""
    if isinstance(geometry, LineString):
        return [geometry]
    return list(geometry.geoms) if isinstance(geometry, MultiLineString) else []
