"""What is wrong with a course map: where, what, and what to do about it."""

from dataclasses import dataclass, replace
from enum import Enum
from typing import TypedDict, Unpack

import numpy as np
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from marram.course.plane import LocalPlane
from marram.said import Said, joined, said


class Severity(Enum):
    """How much a fault matters."""

    ERROR = "error"
    """The map would give wrong answers: it is refused until this is mended."""
    WARNING = "warning"
    """The map can be used, but not for everything: an answer this touches says so."""
    NOTE = "note"
    """Nothing is wrong; the Committee may want to look."""


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong with a course map.

    Attributes:
        severity: how much it matters.
        check: the short name of the check that found it.
        what: what is wrong, without the place.
        remedy: what to do about it.
        feature: the identifier of the feature, or an empty string.
        hole: the number of the hole, or ``None``.
        longitude: where on the ground, degrees east, or ``None``.
        latitude: where on the ground, degrees north, or ``None``.
    """

    severity: Severity
    check: str
    what: str
    remedy: str
    feature: str = ""
    hole: int | None = None
    longitude: float | None = None
    latitude: float | None = None

    @property
    def where(self) -> Said:
        """The place in words: hole, feature, latitude and longitude, as far as known."""
        hole = said("hole {hole}", hole=self.hole) if self.hole is not None else ""
        at = ""
        if self.latitude is not None and self.longitude is not None:
            at = said("at {latitude:.6f}, {longitude:.6f}", latitude=self.latitude, longitude=self.longitude)
        return joined(", ", *(part for part in (hole, self.feature, at) if part))

    @property
    def sentence(self) -> Said:
        """The fault as one line: place, what is wrong, what to do."""
        if not self.where:
            return said("{what}. {remedy}", what=self.what, remedy=self.remedy)
        return said("{where}: {what}. {remedy}", where=self.where, what=self.what, remedy=self.remedy)

    def __str__(self) -> str:
        """Return the fault as one line, in English."""
        return str(self.sentence)


class Where(TypedDict, total=False):
    """Where a fault lies: the feature's identifier, the hole's number, a geometry in metres."""

    feature: str
    hole: int
    at: BaseGeometry


class FaultList:
    """Collects faults while a map is put together; places are given in metres of its plane."""

    def __init__(self, plane: LocalPlane) -> None:
        self.plane = plane
        self._found: list[Fault] = []
        self._places: list[BaseGeometry | None] = []
        """Of the last faults noted, whose places are not yet in degrees."""

    @property
    def found(self) -> list[Fault]:
        """Every fault noted so far, with its place in degrees; many places are turned into degrees at once."""
        known = [place for place in self._places if place is not None]
        if known:
            degrees = iter(self.plane.to_degrees_all(np.array([_point(place) for place in known])).tolist())
            first = len(self._found) - len(self._places)
            for number, place in enumerate(self._places, first):
                if place is not None:
                    longitude, latitude = next(degrees)
                    self._found[number] = replace(self._found[number], longitude=longitude, latitude=latitude)
        self._places.clear()
        return self._found

    def error(self, check: str, what: str, remedy: str, **where: Unpack[Where]) -> None:
        """Note something that makes the map give wrong answers."""
        self._add(Severity.ERROR, check, what, remedy, where)

    def warn(self, check: str, what: str, remedy: str, **where: Unpack[Where]) -> None:
        """Note something that the map cannot be used for."""
        self._add(Severity.WARNING, check, what, remedy, where)

    def note(self, check: str, what: str, remedy: str, **where: Unpack[Where]) -> None:
        """Note something to look at."""
        self._add(Severity.NOTE, check, what, remedy, where)

    def _add(self, severity: Severity, check: str, what: str, remedy: str, where: Where) -> None:
        fault = Fault(severity, check, what, remedy, where.get("feature", ""), where.get("hole"))
        self._found.append(fault)
        self._places.append(where.get("at"))


def _point(place: BaseGeometry) -> tuple[float, float]:
    point = place if isinstance(place, Point) else place.representative_point()
    return point.x, point.y
