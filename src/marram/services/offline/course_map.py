"""The course map for a phone without a network: what is drawn of it, and the ground by which a lie is read there.

What :mod:`marram.course.lies` reads of a map is written down as it counts on each hole, united and closed up; the phone
only measures distances in it (``desk/offline/static/lie_here.js``), by the same rules in the same order. Relief is not in
it: its areas need the whole of :mod:`marram.relief`.
"""

import json
from collections.abc import Iterable, Mapping
from dataclasses import asdict
from typing import Any

import shapely

from marram.course.lies.areas import FURTHEST
from marram.course.lies.as_read import pieces_as_read
from marram.course.lies.doubts import GREEN_REACH, NEAR_OUTLINE, NEAR_PATH, UNMAPPED_EDGE, drawn_to
from marram.course.lies.extents import assumed_width
from marram.course.lies.joined_as_read import joined
from marram.course.lies.regions import TEEING_AREA_OF_THE_DAY, HoleGround, Region, ground_of
from marram.course.lies.tolerance import EDGE_TOLERANCE, TOUCH
from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Feature, Hole, Kind
from marram.course.reading.assembly import boundary_is_outline
from marram.relief.place.dropping_zones import SERVABLE
from marram.relief.place.place_facts import FAR_AWAY, SPEAKING, TAP_ACCURACY
from marram.rules.facts.ball import Area
from marram.services.cases.likely import BY_KIND
from marram.services.offline.ground_written import MILLIMETRES, GroundPool
from marram.services.offline.plane_fit import fit
from marram.words.ground import in_area, named_ground
from marram.words.texts import text

FORMAT_VERSION = 1
"""Version of the document; it grows when a reader of the old one would misread the new one."""

DRAWN: tuple[Kind, ...] = (
    Kind.BOUNDARY,
    Kind.TREES,
    Kind.ROUGH,
    Kind.FAIRWAY,
    Kind.WATER,
    Kind.WETLAND,
    Kind.RED_PENALTY_AREA,
    Kind.YELLOW_PENALTY_AREA,
    Kind.TEEING_AREA,
    Kind.PUTTING_GREEN,
    Kind.BUNKER,
    Kind.PATH,
    Kind.OBSTRUCTION,
    Kind.INTEGRAL_OBJECT,
    Kind.BARRIER,
    Kind.OUT_OF_BOUNDS,
    Kind.GROUND_UNDER_REPAIR,
    Kind.TEMPORARY_WATER,
    Kind.NO_PLAY_ZONE,
    Kind.DROPPING_ZONE,
    Kind.EVACUATION_POINT,
)
"""What is drawn on the phone, lowest first."""

DISTANCES = {
    "touch": TOUCH,
    "rounding": EDGE_TOLERANCE,
    "furthest": FURTHEST,
    "far_away": FAR_AWAY,
    "tap": TAP_ACCURACY,
    "unmapped_edge": UNMAPPED_EDGE,
    "near_outline": NEAR_OUTLINE,
    "near_path": NEAR_PATH,
    "green_reach": GREEN_REACH,
}
"""Metres by which a lie is read, as the desk reads it."""


def offline_map(course: Course) -> dict[str, Any]:
    """Return a course map as plain data for JSON.

    Keys: ``polygons`` and ``lines`` in steps of millimetres; ``features`` (kind, words, the ground as mapped);
    ``areas`` (the polygons of one area on the ground, its pieces ``[feature, polygons]``, and the holes of the dropping
    zones that serve it); ``shared`` and ``holes`` (which areas count where); ``telling`` (the features that make an incident
    likely nearby) and ``boundary`` (its edges); ``drawn``; ``plane``, between degrees and metres.
    """
    return _Writer(course).document()


def map_bytes(course: Course, told: Mapping[str, Any]) -> bytes:
    """Return a course map as JSON, without a space too many; ``told`` says which version of the map it is."""
    return json.dumps({**offline_map(course), **told}, ensure_ascii=False, separators=(",", ":")).encode()


class _Writer:
    """What has been written so far of one map."""

    def __init__(self, course: Course) -> None:
        self.course = course
        self.ground = GroundPool()
        self.features: list[dict[str, Any]] = []
        self.areas: list[dict[str, Any]] = []
        self._features: dict[int, int] = {}
        self._united: dict[int, int] = {}

    def document(self) -> dict[str, Any]:
        course = self.course
        spoken = [one for one in course.of(*SPEAKING) if one.geometry.geom_type != "Point"]
        body = {
            "spoken": [self._feature(one) for one in spoken],
            "rough": [self._rough(one) for one in course.features if drawn_to(one)],
            "covered": None if course.covered is None else self.ground.areas(course.covered),
            "outline_as_boundary": boundary_is_outline(course),
            "telling": [self._feature(one) for one in course.of(*BY_KIND)],
            "boundary": [
                line
                for one in course.of(Kind.BOUNDARY)
                for line in self.ground.whole(shapely.boundary(one.geometry))[1]
            ],
            "shared": self._shared(),
            "holes": [self._hole(one) for one in course.holes.values()],
            "drawn": [
                [area.kind.value, *self.ground.whole(area.geometry)]
                for area in joined(pieces_as_read(course, *DRAWN))
            ],
        }
        return {
            "marram": FORMAT_VERSION,
            "kind": "offline_map",
            "name": course.name,
            "credit": course.credit,
            "distances": DISTANCES,
            "plane": asdict(fit(course.plane)),
            "lies": {area.value if area else "none": in_area(area) for area in (*Area, None)}
            | {"wrong_green": text("ground.area.wrong_green")},
            "perhaps": text("ground.perhaps"),
            **body,
            "features": self.features,
            "areas": self.areas,
            "polygons": self.ground.polygons.rows,
            "lines": self.ground.lines.rows,
        }

    def _shared(self) -> dict[str, list[int]]:
        """Return the areas that count alike on every hole."""
        some = next(iter(self.course.holes), None)
        if some is None:
            return {}
        ground = ground_of(self.course, some)
        names = ("conditions", "water", "unsettled", "idle_tees")
        return {name: self._areas(getattr(ground, name)) for name in names}

    def _hole(self, hole: Hole) -> dict[str, Any]:
        ground = ground_of(self.course, hole.number)
        return {
            "number": hole.number,
            "par": hole.par,
            "line": self.ground.whole(hole.line)[1],
            "at": [round(hole.location.x * MILLIMETRES), round(hole.location.y * MILLIMETRES)],
            "green": hole.green is not None,
            "bounds": self._bounds(ground),
            "regions": [self._region(one) for one in ground.specific],
            "wrong_greens": self._areas(ground.wrong_greens),
        }

    def _bounds(self, ground: HoleGround) -> dict[str, Any]:
        """Return what is in bounds, or, where the map has no boundary, what is out of bounds."""
        inside, out = ground.in_bounds, ground.fences if ground.in_bounds is None else None
        return {
            "in": None if inside is None else self.ground.areas(inside.shape),
            "out": None if out is None else self.ground.areas(out.shape),
        }

    def _region(self, region: Region) -> list[Any]:
        return [int(region.ground), self.ground.areas(region.shape), self._areas(region.areas)]

    def _areas(self, areas: Iterable[UnitedArea]) -> list[int]:
        return [self._area(one) for one in areas]

    def _area(self, area: UnitedArea) -> int:
        if id(area) not in self._united:
            self._united[id(area)] = len(self.areas)
            self.areas.append(
                {
                    "kind": area.kind.value,
                    "at": self.ground.areas(area.geometry),
                    "pieces": [
                        [self._feature(piece.feature), self.ground.areas(piece.shape)]
                        for piece in area.pieces
                    ],
                    "zones": self._zones(area.features),
                }
            )
        return self._united[id(area)]

    def _zones(self, features: Iterable[Feature]) -> list[list[int]]:
        """Return the holes of each dropping zone that serves an area; an empty list stands for every hole."""
        served = (one for one in features if one.kind in SERVABLE)
        names = {name for one in served for name in (one.ref, one.ident) if name}
        return [list(zone.holes) for zone in self.course.of(Kind.DROPPING_ZONE) if names & set(zone.serves)]

    def _feature(self, feature: Feature) -> int:
        if id(feature) not in self._features:
            self._features[id(feature)] = len(self.features)
            told = {
                "kind": feature.kind.value,
                "words": named_ground(feature.kind, feature.name, "underfoot")
                if feature.kind in SPEAKING
                else "",
                "at": self.ground.whole(feature.geometry),
                "width": assumed_width(feature),
                "surface": "surface" in feature.tags,
                "of_the_day": TEEING_AREA_OF_THE_DAY in feature.tags.items(),
            }
            self.features.append(
                {key: value for key, value in told.items() if value not in (None, "", False)}
            )
        return self._features[id(feature)]

    def _rough(self, feature: Feature) -> list[Any]:
        """Return the edge of a feature that is drawn only roughly, and how far off it may be, metres."""
        return [
            self._feature(feature),
            self.ground.whole(shapely.boundary(feature.geometry))[1],
            drawn_to(feature),
        ]


__all__ = ["FORMAT_VERSION", "map_bytes", "offline_map"]
