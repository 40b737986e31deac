"""The drawing of the course in parts, so that a phone draws what it shows first and fetches the rest afterwards.

Every part is the whole course in drawing order; parts differ in how finely each feature is drawn. They are only looked
at: where a ball lies and what is near it is decided by the map itself, never by these.
"""

import json
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from shapely import simplify
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course
from marram.desk.shell.map_drawing import area_drawn, areas_drawn, collection, in_degrees

FAR = 1.0
"""Metres an outline may be about off where the whole course is shown: a third of what a phone's point then covers."""
FAR_PLACES = 6
"""Decimal places of degrees: 0.11 m."""
HOLE = 0.1
"""Metres an outline may be off where a hole is shown first: less than a phone's point around a ball (0.18 m)."""
NEAR = 0.01
"""Metres an outline of the whole may be off: less than a phone's point at the closest view of an option."""
NEAR_PLACES = 7
"""Decimal places of degrees: 11 mm."""
BESIDE = 80.0
"""Metres beside a line of play that are drawn finely with the hole (own choice: more than a phone first shows)."""
OVERVIEW, WHOLE = "overview", "whole"


@dataclass(frozen=True)
class MapParts:
    """The parts of a course's drawing, each made when first asked for."""

    course: Course

    def part(self, name: str) -> bytes | None:
        """Return ``overview``, ``whole`` or ``hole-N`` as GeoJSON; ``None`` where there is no such part."""
        if name not in self._made:
            features = self._features(name)
            if features is None:
                return None
            drawn = collection(self.course, features)
            self._made[name] = json.dumps(drawn, separators=(",", ":")).encode()
        return self._made[name]

    @cached_property
    def _made(self) -> dict[str, bytes]:
        return {}

    def _features(self, name: str) -> list[dict[str, Any]] | None:
        if name == OVERVIEW:
            return self._far
        if name == WHOLE:
            return self._near
        hole = self.course.holes.get(int(number)) if (number := _number(name)) else None
        if hole is None:
            return None
        around = hole.line.buffer(BESIDE)
        close = [area.geometry.intersects(around) for area in areas_drawn(self.course)]
        return [fine if one else far for fine, far, one in zip(self._fine, self._far, close, strict=True)]

    @cached_property
    def _far(self) -> list[dict[str, Any]]:
        return self._drawn(FAR, FAR_PLACES)

    @cached_property
    def _fine(self) -> list[dict[str, Any]]:
        return self._drawn(HOLE, FAR_PLACES)

    @cached_property
    def _near(self) -> list[dict[str, Any]]:
        return self._drawn(NEAR, NEAR_PLACES)

    def _drawn(self, off: float, places: int) -> list[dict[str, Any]]:
        def plainer(ground: BaseGeometry) -> BaseGeometry:
            found = simplify(ground, off)
            return ground if found.is_empty else found

        return [
            area_drawn(area, in_degrees(self.course, plainer(area.geometry), places))
            for area in areas_drawn(self.course)
        ]


def _number(name: str) -> str:
    """Return the number in ``hole-N``; empty for any other name."""
    number = name.removeprefix("hole-")
    return number if number != name and number.isascii() and number.isdecimal() and len(number) <= 4 else ""


def part_of(hole: int | None) -> str:
    """Return the name of the part that shows a hole, or the whole course, first."""
    return OVERVIEW if hole is None else f"hole-{hole}"


__all__ = ["OVERVIEW", "WHOLE", "MapParts", "part_of"]
