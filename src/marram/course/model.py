"""What a course map holds once it is read: areas in local metres, holes, and the plane they lie in."""

from collections.abc import Hashable, Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import Any

from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from marram.course.plane import LocalPlane
from marram.errors import BadPlace
from marram.said import said


class Kind(Enum):
    """What a mapped feature is, in the terms of the Rules."""

    TEEING_AREA = "teeing_area"
    FAIRWAY = "fairway"
    PUTTING_GREEN = "putting_green"
    BUNKER = "bunker"
    RED_PENALTY_AREA = "red_penalty_area"
    YELLOW_PENALTY_AREA = "yellow_penalty_area"
    BOUNDARY = "boundary"
    """The outline of the course; everything outside it is out of bounds."""
    OUT_OF_BOUNDS = "out_of_bounds"
    """An area inside the outline that is out of bounds."""
    PATH = "path"
    """An artificially surfaced path or road: an immovable obstruction."""
    OBSTRUCTION = "obstruction"
    """Any other immovable obstruction."""
    BARRIER = "barrier"
    """A wall, fence or the like of which nobody has said what it is for the Rules."""
    INTEGRAL_OBJECT = "integral_object"
    """Something artificial that the Committee has defined as part of the challenge: no free relief from it."""
    GROUND_UNDER_REPAIR = "ground_under_repair"
    TEMPORARY_WATER = "temporary_water"
    NO_PLAY_ZONE = "no_play_zone"
    DROPPING_ZONE = "dropping_zone"
    WATER = "water"
    """Water that is mapped without saying what it is for the Rules."""
    WETLAND = "wetland"
    """A marsh, swamp or the like of which nobody has said what it is for the Rules."""
    ROUGH = "rough"
    TREES = "trees"
    STAKE = "stake"
    """A stake that marks an edge, at the point that defines it; or several, as the positions of a line."""
    MARKING = "marking"
    """A stretch of an edge that something else than stakes marks: a painted line, a fence, a wall."""
    EVACUATION_POINT = "evacuation_point"
    """Where people go when play is stopped for danger. It is for people alone: no ball lies otherwise for it."""


ABNORMAL_COURSE_CONDITIONS = (Kind.GROUND_UNDER_REPAIR, Kind.TEMPORARY_WATER, Kind.PATH, Kind.OBSTRUCTION)
"""The abnormal course conditions that a map holds (Definition; animal holes are too small and too short-lived for one)."""


THINGS = (Kind.OBSTRUCTION, Kind.BARRIER, Kind.INTEGRAL_OBJECT)
"""Artificial things that stand on the ground, which a map may draw as lines or points."""


@dataclass(frozen=True, slots=True)
class Feature:
    """One mapped feature.

    Attributes:
        kind: what it is.
        ident: its identifier in the source, for messages.
        geometry: polygon(s), line or point in local metres.
        ref: its ``ref`` tag, or an empty string.
        name: its name, or an empty string.
        holes: the holes it belongs to, where known.
        tags: its tags as they stand in the source.
        serves: the penalty areas or other features that a dropping zone serves, by ``ref`` or identifier.
        middle: the line it is drawn as, where its geometry was made of a line and its width; else ``None``.
    """

    kind: Kind
    ident: str
    geometry: BaseGeometry
    ref: str = ""
    name: str = ""
    holes: tuple[int, ...] = ()
    tags: Mapping[str, str] = field(default_factory=dict)
    serves: tuple[str, ...] = ()
    middle: BaseGeometry | None = None


@dataclass(frozen=True, slots=True)
class Hole:
    """One hole.

    Attributes:
        number: its number.
        line: the line of play from tee to green, in local metres; of no length where nobody has told it.
        location: where the hole is cut: the mapped pin, else the end of the line of play.
        par: its par, or ``None`` when not mapped.
        stroke_index: its stroke index, or ``None``.
        green: its putting green, or ``None`` when not mapped.
        tees: its teeing areas.
    """

    number: int
    line: LineString
    location: Point
    par: int | None = None
    stroke_index: int | None = None
    green: Feature | None = None
    tees: tuple[Feature, ...] = ()


@dataclass(frozen=True, slots=True, eq=False, weakref_slot=True)
class Course:
    """A course map. Two maps are the same only if they are one object, so that indexes can be kept per map.

    Attributes:
        name: the course's name.
        plane: the local plane all geometry lies in.
        holes: holes by number, in order.
        features: every feature.
        credit: the credit line that must be shown with the map, or an empty string.
        covered: the rectangle the map was cut to, in local metres; what lies beyond may be missing. ``None``
            where the source does not say.
        as_written: whether the map says that its positions are right as they stand, however unlikely the holes look.
        kept: what was once worked out from the map (unions, indexes), by what it is; it lives as long as the map.
    """

    name: str
    plane: LocalPlane
    holes: Mapping[int, Hole]
    features: tuple[Feature, ...]
    credit: str = ""
    covered: BaseGeometry | None = None
    as_written: bool = False
    kept: dict[Hashable, Any] = field(default_factory=dict, init=False, repr=False)

    def of(self, *kinds: Kind) -> tuple[Feature, ...]:
        """Return the features of these kinds, in the order of the source."""
        if kinds not in self.kept:
            self.kept[kinds] = tuple(feature for feature in self.features if feature.kind in kinds)
        found: tuple[Feature, ...] = self.kept[kinds]
        return found

    def hole(self, number: int) -> Hole:
        """Return a hole by its number.

        Raises:
            BadPlace: the map has no such hole.
        """
        try:
            return self.holes[number]
        except KeyError:
            known = ", ".join(map(str, self.holes)) or said("none")
            of = said("The map of {name!r}", name=self.name) if self.name else said("The map")
            raise BadPlace(
                said("{of} has no hole {number}; it has: {known}.", of=of, number=number, known=known)
            ) from None
