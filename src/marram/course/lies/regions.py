"""The ground of a course as it counts on one hole: what is in bounds, and the specific areas in their order.

This is the one reading of Rule 2.2c: which mapped features count on a hole, united as they are joined on the ground,
and in which order they decide. Everything else asks it.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field
from enum import IntEnum
from functools import cached_property
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry

from marram.course.lies.extents import extents
from marram.course.lies.tolerance import TOUCH
from marram.course.lies.united import UnitedArea, closed_up, one_by_one, unite
from marram.course.lies.unsettled import unsettled
from marram.course.lies.water import colour_of, unmarked_water
from marram.course.model import ABNORMAL_COURSE_CONDITIONS, Course, Feature, Hole, Kind


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
        areas: the areas; each is one on the ground, however many features it is mapped as.
        shape: all of them, in metres.
    """

    ground: Ground
    areas: tuple[UnitedArea, ...]
    shape: BaseGeometry

    @cached_property
    def _edges(self) -> tuple[STRtree, NDArray[np.object_]]:
        rings = shapely.get_parts(shapely.boundary(self.shape))
        return STRtree(rings), rings

    @cached_property
    def tree(self) -> STRtree:
        """The areas, to find those near a place."""
        return STRtree([area.geometry for area in self.areas])

    def signed_distance(self, place: Point) -> float:
        """Return the distance from a place to the region's edge in metres, negative inside."""
        tree, _ = self._edges
        _, distance = tree.query_nearest(place, return_distance=True, all_matches=False)
        return -float(distance[0]) if shapely.intersects(self.shape, place) else float(distance[0])

    def area_near(self, place: Point) -> UnitedArea:
        """Return the area that a place lies in or is nearest to."""
        return self.areas[int(self.tree.query_nearest(place, all_matches=False)[0])]

    def holding(self, place: Point) -> Feature:
        """Return the feature of the region that a place is nearest to or deepest in."""
        return self.area_near(place).holding(place)

    def edge_near(self, place: Point) -> Feature:
        """Return the feature of the region whose edge is nearest to a place."""
        tree, rings = self._edges
        ring = rings[int(tree.query_nearest(place, all_matches=False)[0])]
        at = ring.interpolate(ring.project(place))
        # Of areas that overlap, such as ground out of bounds inside the boundary, the one whose edge this is.
        near = self.tree.query(at, predicate="dwithin", distance=TOUCH)
        edges = shapely.boundary([self.areas[i].geometry for i in near])
        return self.areas[int(near[np.argmin(shapely.distance(edges, at))])].edge_near(place)


@dataclass(frozen=True, eq=False)
class HoleGround:
    """The ground of a course as it counts on one hole.

    Attributes:
        boundary: the ground inside the boundary, or ``None`` where the map has none.
        fences: areas out of bounds inside the boundary that count on the hole, or ``None``.
        in_bounds: everything in bounds, or ``None`` where the map has no boundary.
        specific: the specific areas, in the order of Rule 2.2c.
        wrong_greens: the greens that are not the hole's.
        fairways: the fairways of the hole: those mapped as its own, else those its line of play runs over.
        conditions: paths, obstructions, ground under repair, temporary water and no play zones.
        water: water that is not marked.
        unsettled: walls, fences and wetlands of which nobody has said what they are for the Rules.
        idle_tees: tees that belong to no hole.
        kept: indexes of these areas, made when first asked for.
    """

    boundary: Region | None
    fences: Region | None
    in_bounds: Region | None
    specific: tuple[Region, ...]
    wrong_greens: tuple[UnitedArea, ...]
    fairways: tuple[UnitedArea, ...]
    conditions: tuple[UnitedArea, ...]
    water: tuple[UnitedArea, ...]
    unsettled: tuple[UnitedArea, ...]
    idle_tees: tuple[UnitedArea, ...]
    kept: dict[str, Any] = field(default_factory=dict)

    def within(self, place: Point, distance: float, what: str) -> tuple[UnitedArea, ...]:
        """Return the areas of an attribute (such as ``"conditions"``) no further away than a distance."""
        areas: tuple[UnitedArea, ...] = getattr(self, what)
        if what not in self.kept:
            self.kept[what] = STRtree([area.geometry for area in areas])
        tree: STRtree = self.kept[what]
        return tuple(areas[i] for i in sorted(tree.query(place, predicate="dwithin", distance=distance)))

    @cached_property
    def every(self) -> tuple[UnitedArea, ...]:
        """Every area that a ball can lie in or touch on the hole, but for fairways and what is out of bounds."""
        specific = (area for region in self.specific for area in region.areas)
        return (*specific, *self.wrong_greens, *self.conditions, *self.unsettled)

    def joined_with(self, feature: Feature) -> tuple[Feature, ...]:
        """Return the features that are one area on the ground with a feature, itself among them."""
        areas = (area.features for area in self.every)
        return next((pieces for pieces in areas if any(one is feature for one in pieces)), (feature,))

    def region(self, ground: Ground) -> Region | None:
        """Return the specific areas of one kind, or ``None`` where the hole has none."""
        return next((region for region in self.specific if region.ground is ground), None)


TOUCHABLE = (*ABNORMAL_COURSE_CONDITIONS, Kind.NO_PLAY_ZONE)
"""Kinds of condition that a ball can touch; they lie on an area of the course and never decide which one it is."""

TEEING_AREA_OF_THE_DAY = ("marram", "teeing_area")
"""The tag of a teeing area drawn between the tee-markers of the day: where a hole has one, it alone counts."""

DIVIDED = ("double_green", "divided")
"""The tag of a green that the Committee has divided from the one it adjoins (Definition of putting green)."""


def ground_of(course: Course, number: int) -> HoleGround:
    """Return the ground of a course as it counts on a hole; it is kept for as long as the course is.

    Raises:
        BadPlace: the map has no such hole.
    """
    key = (ground_of, number)
    if key not in course.kept:
        course.kept[key] = _build(course, course.hole(number))
    found: HoleGround = course.kept[key]
    return found


@dataclass(frozen=True, eq=False)
class _Shared:
    """What is the same on every hole, united once for a course."""

    boundary: Region | None
    red: Region | None
    yellow: Region | None
    bunkers: Region | None
    greens: tuple[UnitedArea, ...]
    fairways: tuple[UnitedArea, ...]
    conditions: tuple[UnitedArea, ...]
    water: tuple[UnitedArea, ...]
    idle_tees: tuple[UnitedArea, ...]


def _shared(course: Course) -> _Shared:
    if _shared not in course.kept:
        course.kept[_shared] = _read(course)
    found: _Shared = course.kept[_shared]
    return found


def _read(course: Course) -> _Shared:
    water = unmarked_water(course)

    def penalty_areas(kind: Kind) -> tuple[UnitedArea, ...]:
        unmarked = tuple(piece for piece in water if colour_of(piece.feature) is kind)
        return unite((*extents(course.of(kind)), *unmarked))

    holes = (hole.green for hole in course.holes.values() if hole.green is not None)
    greens = {id(green): green for green in (*course.of(Kind.PUTTING_GREEN), *holes)}.values()
    red, yellow = penalty_areas(Kind.RED_PENALTY_AREA), penalty_areas(Kind.YELLOW_PENALTY_AREA)
    bunkers = unite(extents(course.of(Kind.BUNKER)))
    every_green = unite(extents(greens), apart=lambda green: DIVIDED in green.tags.items())
    return _Shared(
        boundary=_region(Ground.OUT_OF_BOUNDS, unite(extents(course.of(Kind.BOUNDARY)))),
        red=_region(Ground.RED_PENALTY_AREA, closed_up(red, yellow, bunkers, every_green)),
        yellow=_region(Ground.YELLOW_PENALTY_AREA, closed_up(yellow, bunkers, every_green)),
        bunkers=_region(Ground.BUNKER, closed_up(bunkers, every_green)),
        greens=every_green,
        fairways=unite(extents(course.of(Kind.FAIRWAY))),
        conditions=_conditions(course),
        water=unite(water),
        idle_tees=one_by_one(extents(f for f in course.of(Kind.TEEING_AREA) if not f.holes)),
    )


def _conditions(course: Course) -> tuple[UnitedArea, ...]:
    """Return the conditions in the order of the map; those of different kinds are never one (see Model Local Rule F-3)."""
    place = {id(feature): i for i, feature in enumerate(course.features)}
    every = (area for kind in TOUCHABLE for area in unite(extents(course.of(kind))))
    return tuple(sorted(every, key=lambda area: place[id(area.pieces[0].feature)]))


def _build(course: Course, hole: Hole) -> HoleGround:
    shared = _shared(course)
    fences = _fences(course, hole.number)
    own = [green for green in shared.greens if any(one is hole.green for one in green.features)]
    of_the_day = [tee for tee in hole.tees if TEEING_AREA_OF_THE_DAY in tee.tags.items()]
    tees = one_by_one(extents(of_the_day or hole.tees))
    regions = (
        shared.red,
        shared.yellow,
        shared.bunkers,
        _region(Ground.PUTTING_GREEN, own),
        _region(Ground.TEEING_AREA, tees),
    )
    return HoleGround(
        boundary=shared.boundary,
        fences=fences,
        in_bounds=_in_bounds(course, shared.boundary, fences),
        specific=tuple(sorted((one for one in regions if one is not None), key=lambda one: one.ground)),
        wrong_greens=tuple(green for green in shared.greens if green not in own),
        fairways=_fairways(shared.fairways, hole),
        conditions=shared.conditions,
        water=shared.water,
        unsettled=unsettled(course),
        idle_tees=shared.idle_tees,
    )


def _fences(course: Course, number: int) -> Region | None:
    """Return what is out of bounds inside the boundary on a hole, united once for the holes on which the same is."""
    its = tuple(f for f in course.of(Kind.OUT_OF_BOUNDS) if not f.holes or number in f.holes)
    key = (_fences, *map(id, its))
    if key not in course.kept:
        course.kept[key] = _region(Ground.OUT_OF_BOUNDS, unite(extents(its)))
    found: Region | None = course.kept[key]
    return found


def _in_bounds(course: Course, boundary: Region | None, fences: Region | None) -> Region | None:
    """Return what is in bounds, cut out once for the holes on which the same is out of bounds."""
    if boundary is None or fences is None:
        return boundary
    key = (_in_bounds, id(fences))
    if key not in course.kept:
        shape = shapely.difference(boundary.shape, fences.shape)
        shapely.prepare(shape)
        course.kept[key] = Region(Ground.OUT_OF_BOUNDS, (*boundary.areas, *fences.areas), shape)
    found: Region = course.kept[key]
    return found


def _fairways(every: Iterable[UnitedArea], hole: Hole) -> tuple[UnitedArea, ...]:
    own = [one for one in every if any(hole.number in piece.holes for piece in one.features)]
    if not hole.line.length:
        return tuple(own)
    return tuple(
        own
        or (
            one
            for one in every
            if not any(piece.holes for piece in one.features) and one.geometry.intersects(hole.line)
        )
    )


def _region(ground: Ground, areas: Iterable[UnitedArea]) -> Region | None:
    found = tuple(areas)
    if not found:
        return None
    shapes = [area.geometry for area in found]
    shape = shapely.disjoint_subset_union_all(shapes) if len(found) > 1 else shapes[0]
    shapely.prepare(shape)
    return Region(ground, found, shape)
