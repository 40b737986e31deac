"""Setting the holes of a day: where each is cut, what that means in paces, and what speaks against it."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from typing import Any

import numpy as np
import shapely
from shapely.geometry import Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from marram.course.greens.green_frame import PACE, GreenFrame, Side
from marram.course.greens.hole_locations import Proposal
from marram.course.greens.hole_warnings import RecentHole
from marram.course.greens.slope import GreenSlopes
from marram.course.lies.as_read import pieces_as_read
from marram.course.lies.joined_as_read import joined
from marram.course.model import Course, Kind
from marram.course.versions.hole_days import HoleDays, HoleVersion
from marram.errors import BadPlace, InputError
from marram.paper.green_drawing import SIZE, Turned, slope_arrows
from marram.paper.hole_location_sheet import slope_words
from marram.services.ground.holes import look_at_hole, propose_holes
from marram.words.spoken import spoken
from marram.words.texts import text

AROUND = (Kind.BUNKER, Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA, Kind.WATER)
"""What is drawn around a green."""


@dataclass(frozen=True)
class HoleSetting:
    """The holes of one day on one map.

    Attributes:
        course: the map in force on the day.
        day: the day of play.
        kept: what is kept by day, or ``None`` where nothing is.
        slopes: the ground of the greens, or ``None`` where nothing is known of it.
    """

    course: Course
    day: date
    kept: HoleDays | None
    slopes: GreenSlopes | None

    @cached_property
    def versions(self) -> list[HoleVersion]:
        """The versions of the day, the first first."""
        return self.kept.versions(self.day) if self.kept else []

    @cached_property
    def recent(self) -> Mapping[int, list[RecentHole]]:
        """Where each hole was cut on the last days, the latest first."""
        found: dict[int, list[RecentHole]] = {}
        for version in self.kept.recent(self.day) if self.kept else []:
            for hole, place in version.places.items():
                found.setdefault(hole, []).append(RecentHole(self._metres(place), version.day))
        return found

    @cached_property
    def greens(self) -> Mapping[int, Turned]:
        """The picture of each mapped green, by hole."""
        return {
            number: Turned(GreenFrame.of(hole))
            for number, hole in self.course.holes.items()
            if hole.green is not None
        }

    def proposed(self, seed: int = 0) -> Proposal:
        """Return balanced locations that keep away from recent ones and from steep ground."""
        return propose_holes(self.course, self.recent, seed, self.slopes)

    def saved(self) -> dict[int, Point]:
        """Return where the holes are cut in the newest version, as far as they lie on a green of this map."""
        newest = self.versions[-1].places if self.versions else {}
        found = {hole: self._metres(place) for hole, place in newest.items() if hole in self.greens}
        return {
            hole: place
            for hole, place in found.items()
            if self.greens[hole].frame.from_edge(np.array([[place.x, place.y]]))[0] >= 0
        }

    def lost(self) -> list[int]:
        """Return the holes whose saved place lies on no green of this map: the map has changed since."""
        newest = self.versions[-1].places if self.versions else {}
        return sorted(newest.keys() - self.saved().keys())

    def drawn(self, hole: int) -> dict[str, Any]:
        """Return the picture of a green: its edge, what lies around, arrows of slope, recent holes."""
        turned = self._green(hole)
        ground = self.slopes.surfaces.get(hole) if self.slopes else None
        found = self.course.hole(hole)
        return {
            "hole": hole,
            "par": found.par,
            "depth": round((turned.frame.back - turned.frame.front) / PACE),
            "pace": round(PACE * turned.scale, 3),
            "outline": turned.outline,
            "around": list(self._around(turned)),
            "slope": slope_arrows(turned, ground, self.slopes.limits) if ground and self.slopes else "",
            "recent": [
                {"day": one.day.isoformat() if one.day else "", **_xy(turned, one.place)}
                for one in self.recent.get(hole, [])
            ],
        }

    def look(self, hole: int, place: Point) -> dict[str, Any]:
        """Return what a hole cut at a place is: in the picture, on the ground, in paces, and what speaks against it."""
        turned = self._green(hole)
        found = look_at_hole(self.course, hole, place, recent=self.recent.get(hole, []), slopes=self.slopes)
        numbers = found.numbers
        told: dict[str, Any] = {
            "hole": hole,
            **_xy(turned, place),
            "longitude": found.longitude,
            "latitude": found.latitude,
            "warnings": [{"kind": one.kind.value, "words": spoken(one.words)} for one in found.warnings],
            "on_green": numbers is not None,
        }
        if numbers is None:
            return told
        front, side = numbers.in_paces()
        measured = {
            "from_front": round(numbers.from_front, 3),
            "from_side": round(numbers.from_side, 3),
            "from_edge": round(numbers.from_edge, 3),
        }
        return {
            **told,
            **measured,
            "paces_from_front": front,
            "paces_from_side": side,
            "side": numbers.side.value,
            "slope": slope_words(turned.frame, hole, place, self.slopes),
        }

    def at_picture(self, hole: int, x: float, y: float) -> Point:
        """Return the place in metres of a point of the picture of a green."""
        return Point(self._green(hole).back(np.array([[x, y]]))[0])

    def at_paces(self, hole: int, front: float, side: float, which: str) -> Point:
        """Return the place with these distances in paces, as a sheet gives them.

        Raises:
            BadPlace: the green has no such place.
            InputError: there is no such side.
        """
        try:
            chosen = Side(which)
        except ValueError:
            raise InputError(text("holes.fault.side", side=which)) from None
        return self._green(hole).frame.place(front * PACE, side * PACE, chosen)

    def at_degrees(self, longitude: float, latitude: float) -> Point:
        """Return the place in metres of a place in degrees."""
        return self._metres((longitude, latitude))

    def _metres(self, place: tuple[float, float]) -> Point:
        return Point(self.course.plane.to_metres(*place))

    def _green(self, hole: int) -> Turned:
        self.course.hole(hole)
        if hole not in self.greens:
            raise BadPlace(text("holes.fault.no_green", hole=hole))
        return self.greens[hole]

    def _around(self, turned: Turned) -> list[dict[str, str]]:
        seen = box(*turned.frame.green.buffer(SIZE / turned.scale).bounds)
        near = [one for one in pieces_as_read(self.course, *AROUND) if one.shape.intersects(seen)]
        return [
            {
                "kind": area.kind.value,
                "path": "".join(map(turned.path_of, _polygons(area.geometry & seen))),
            }
            for area in joined(near)
            if area.geometry.area > 0
        ]


def _polygons(geometry: BaseGeometry) -> list[Polygon]:
    return [part for part in shapely.get_parts(geometry) if isinstance(part, Polygon)]


def _xy(turned: Turned, place: Point) -> dict[str, float]:
    x, y = turned.at(place.x, place.y)
    return {"x": round(x, 2), "y": round(y, 2)}
