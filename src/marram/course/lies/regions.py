"""The ground of a course as it counts on one hole: what is in bounds, and the specific areas in their order."""

from dataclasses import dataclass, field, replace
from enum import IntEnum
from functools import cached_property
from weakref import WeakKeyDictionary

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Feature, Kind

BALL_RADIUS = 0.04267 / 2
"""Half the least diameter of a ball, metres (Equipment Rules, Part 3: not less than 42.67 mm)."""

EDGE_TOLERANCE = 1e-6
"""A ball this near an edge touches it, metres: far below what can be seen, far above rounding."""

TOUCH = BALL_RADIUS + EDGE_TOLERANCE
"""A ball touches an area when its centre is no further from the area than this, metres."""


class Ground(IntEnum):
    """What a ball lies in, in the order in which Rule 2.2c decides, out of bounds first."""

    OUT_OF_BOUNDS = 0
    RED_PENALTY_AREA = 1
    YELLOW_PENALTY_AREA = 2
    PENALTY_AREA_OF_TWO_COLOURS = 3
    """Part of the ball is in a red and part in a yellow penalty area."""
    BUNKER = 4
    PUTTING_GREEN = 5
    TEEING_AREA = 6
    GENERAL_AREA = 7


@dataclass(frozen=True, eq=False)
class Region:
    """All the areas of one kind that count on a hole, together.

    Attributes:
        ground: what a ball that touches one of them lies in.
        features: the areas.
        shape: their union, in metres.
    """

    ground: Ground
    features: tuple[Feature, ...]
    shape: BaseGeometry

    @cached_property
    def _edge(self) -> BaseGeometry:
        edge = shapely.boundary(self.shape)
        shapely.prepare(edge)
        return edge

    def signed_distance(self, place: Point) -> float:
        """Return the distance from a place to the region's edge in metres, negative inside."""
        outside = float(shapely.distance(self.shape, place))
        return outside if outside > 0 else -float(shapely.distance(self._edge, place))

    @cached_property
    def _edges(self) -> NDArray[np.object_]:
        edges = shapely.boundary(np.array([feature.geometry for feature in self.features], dtype=object))
        shapely.prepare(edges)
        return np.asarray(edges, dtype=object)

    @cached_property
    def _areas(self) -> NDArray[np.object_]:
        areas = np.array([feature.geometry for feature in self.features], dtype=object)
        shapely.prepare(areas)
        return areas

    def holding(self, place: Point) -> Feature:
        """Return the feature of the region that a place is nearest to or deepest in."""
        outside = shapely.distance(self._areas, place)
        nearest = np.flatnonzero(outside == outside.min())
        depths = shapely.distance(self._edges[nearest], place)
        return self.features[int(nearest[np.argmax(depths)])]

    def edge_near(self, place: Point) -> Feature:
        """Return the feature of the region whose edge is nearest to a place."""
        return self.features[int(np.argmin(shapely.distance(self._edges, place)))]


@dataclass(frozen=True, eq=False)
class HoleGround:
    """The ground of a course as it counts on one hole.

    Attributes:
        in_bounds: everything in bounds, or ``None`` where the map has no boundary.
        out_of_bounds: areas out of bounds inside the boundary that count on the hole, or ``None``.
        specific: the specific areas, in the order of Rule 2.2c.
        wrong_greens: the greens that are not the hole's.
        conditions: paths, obstructions, ground under repair, temporary water and no play zones.
        water: unmarked water, for what the map cannot tell about it.
        idle_tees: tees that belong to no hole.
    """

    in_bounds: Region | None
    out_of_bounds: Region | None
    specific: tuple[Region, ...]
    wrong_greens: tuple[Feature, ...]
    conditions: tuple[Feature, ...]
    water: tuple[Feature, ...]
    idle_tees: tuple[Feature, ...]
    _trees: dict[str, tuple[STRtree, tuple[Feature, ...]]] = field(default_factory=dict)

    def within(self, place: Point, distance: float, what: str) -> tuple[Feature, ...]:
        """Return the features of an attribute (such as ``"conditions"``) no further away than a distance."""
        if what not in self._trees:
            features: tuple[Feature, ...] = getattr(self, what)
            self._trees[what] = STRtree([feature.geometry for feature in features]), features
        tree, features = self._trees[what]
        return tuple(features[i] for i in sorted(tree.query(place, predicate="dwithin", distance=distance)))


CONDITIONS = (
    Kind.PATH,
    Kind.OBSTRUCTION,
    Kind.GROUND_UNDER_REPAIR,
    Kind.TEMPORARY_WATER,
    Kind.NO_PLAY_ZONE,
)
"""Kinds of condition that a ball can touch."""

_kept: WeakKeyDictionary[Course, dict[int, HoleGround]] = WeakKeyDictionary()


def ground_of(course: Course, number: int) -> HoleGround:
    """Return the ground of a course as it counts on a hole; it is kept for as long as the course is.

    Raises:
        BadPlace: the map has no such hole.
    """
    kept = _kept.setdefault(course, {})
    if number not in kept:
        kept[number] = _build(course, number)
    return kept[number]


def _build(course: Course, number: int) -> HoleGround:
    hole = course.hole(number)
    fences = tuple(f for f in course.of(Kind.OUT_OF_BOUNDS) if not f.holes or number in f.holes)
    boundaries = course.of(Kind.BOUNDARY)
    out = _region(Ground.OUT_OF_BOUNDS, fences)
    inside = None
    if boundaries:
        shape = shapely.union_all([boundary.geometry for boundary in boundaries])
        if out is not None:
            shape = shape.difference(out.shape)
        shapely.prepare(shape)
        inside = Region(Ground.OUT_OF_BOUNDS, (*boundaries, *fences), shape)
    of_the_day = tuple(tee for tee in hole.tees if tee.tags.get("marram") == "teeing_area")
    # Water on the course is a penalty area whether or not it is marked, red where no colour is shown
    # (Definition of penalty area).
    water = _unmarked_water(course)
    red = (*course.of(Kind.RED_PENALTY_AREA), *(f for f in water if f.geometry.area > 0))
    regions = (
        _region(Ground.RED_PENALTY_AREA, red),
        _region(Ground.YELLOW_PENALTY_AREA, course.of(Kind.YELLOW_PENALTY_AREA)),
        _region(Ground.BUNKER, course.of(Kind.BUNKER)),
        _region(Ground.PUTTING_GREEN, (hole.green,) if hole.green else ()),
        _region(Ground.TEEING_AREA, of_the_day or hole.tees),
    )
    return HoleGround(
        in_bounds=inside,
        out_of_bounds=None if boundaries else out,
        specific=tuple(region for region in regions if region is not None),
        wrong_greens=tuple(f for f in course.of(Kind.PUTTING_GREEN) if f is not hole.green),
        conditions=course.of(*CONDITIONS),
        water=water,
        idle_tees=tuple(f for f in course.of(Kind.TEEING_AREA) if not f.holes),
    )


def _unmarked_water(course: Course) -> tuple[Feature, ...]:
    """Return the water, or the part of it, that lies in no mapped penalty area."""
    marked = shapely.union_all(
        [f.geometry for f in course.of(Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)]
    )
    return tuple(
        replace(f, geometry=f.geometry.difference(marked)) if marked.intersects(f.geometry) else f
        for f in course.of(Kind.WATER)
        if not marked.covers(f.geometry)
    )


def _region(ground: Ground, features: tuple[Feature, ...]) -> Region | None:
    if not features:
        return None
    shape = shapely.union_all([feature.geometry for feature in features])
    shapely.prepare(shape)
    return Region(ground, features, shape)
