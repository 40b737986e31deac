"""What is wrong with a course map: where, what, and what to do about it."""

from dataclasses import dataclass, field
from enum import Enum
from typing import TypedDict, Unpack

from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from marram.course.plane import LocalPlane


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
    def where(self) -> str:
        """The place in words: hole, feature, latitude and longitude, as far as known."""
        place = [f"hole {self.hole}"] if self.hole is not None else []
        if self.feature:
            place.append(self.feature)
        if self.latitude is not None and self.longitude is not None:
            place.append(f"at {self.latitude:.6f}, {self.longitude:.6f}")
        return ", ".join(place)

    def __str__(self) -> str:
        """Return the fault as one line: place, what is wrong, what to do."""
        return f"{self.where + ': ' if self.where else ''}{self.what}. {self.remedy}"


class Where(TypedDict, total=False):
    """Where a fault lies: the feature's identifier, the hole's number, a geometry in metres."""

    feature: str
    hole: int
    at: BaseGeometry


@dataclass(slots=True)
class FaultList:
    """Collects faults while a map is put together; places are given in metres of its plane."""

    plane: LocalPlane
    found: list[Fault] = field(default_factory=list)

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
        place = where.get("at")
        longitude, latitude = self.plane.to_degrees(*_point(place)) if place is not None else (None, None)
        self.found.append(
            Fault(
                severity,
                check,
                what,
                remedy,
                where.get("feature", ""),
                where.get("hole"),
                longitude,
                latitude,
            )
        )


def _point(place: BaseGeometry) -> tuple[float, float]:
    point = place if isinstance(place, Point) else place.representative_point()
    return point.x, point.y
