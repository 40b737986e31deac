"""The ground of one hole as outlines: a view of what :mod:`marram.course.lies` reads, and the limits that follow."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np
import shapely
from shapely import Point

from marram.course.lies.areas import AREAS
from marram.course.lies.decision import decider
from marram.course.lies.regions import Ground as Lies
from marram.course.lies.regions import HoleGround
from marram.course.lies.regions import ground_of as read_ground
from marram.course.lies.tolerance import EDGE_TOLERANCE
from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Feature, Hole
from marram.relief.geometry.areal import areal
from marram.relief.geometry.limits import Bound, Bounding, Inside, Outside
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.outlines import Outlines
from marram.rules.facts.ball import Area
from marram.rules.relief_option import Limit

EDGE_REACH = 1.0
"""Metres: how far from an edge an estimated crossing point may be given; it is then moved onto the edge.
A tap on a map is no better than that. (A number of our own.)"""

_GROUNDS: dict[Area, tuple[Lies, ...]] = {
    area: tuple(ground for ground, read in AREAS.items() if read is not None and read.value == area.value)
    for area in Area
    if area is not Area.GENERAL_AREA
}
"""The kinds of ground that make each specific area of the course, in the order of Rule 2.2c."""


class Areas(tuple[tuple[UnitedArea, Outline], ...]):  # noqa: SLOT001  (the outlines are kept on it)
    """Areas on the ground, each with its outline."""

    @cached_property
    def outlines(self) -> Outlines:
        """Their outlines, in the same order."""
        return Outlines(outline for _, outline in self)


@dataclass(frozen=True, eq=False)
class Ground:
    """The areas of a course as they are when one hole is played.

    Attributes:
        hole: the hole being played.
        lies: which areas count on it, united as they are joined on the ground.
    """

    hole: Hole
    lies: HoleGround

    @cached_property
    def location(self) -> XY:
        """Where the hole is cut."""
        return float(self.hole.location.x), float(self.hole.location.y)

    @cached_property
    def penalty_areas(self) -> Areas:
        """Every penalty area, marked or not."""
        return self._specific(Area.PENALTY_AREA)

    @cached_property
    def bunkers(self) -> Areas:
        """Every bunker."""
        return self._specific(Area.BUNKER)

    @cached_property
    def green(self) -> Areas:
        """The putting green of this hole, if mapped."""
        return self._specific(Area.PUTTING_GREEN)

    @cached_property
    def tees(self) -> Areas:
        """The teeing area of the day where the map has it, else the mapped ground of this hole's tees."""
        return self._specific(Area.TEEING_AREA)

    @cached_property
    def wrong_greens(self) -> Areas:
        """The greens that are not this hole's."""
        return _outlined(self.lies.wrong_greens)

    @cached_property
    def boundary(self) -> Areas:
        """The outline of the course, if mapped."""
        return _outlined(() if self.lies.boundary is None else self.lies.boundary.areas)

    @cached_property
    def out_of_bounds(self) -> Areas:
        """Areas inside the outline that are out of bounds on this hole."""
        return _outlined(() if self.lies.fences is None else self.lies.fences.areas)

    @cached_property
    def fairways(self) -> Areas:
        """The fairways of this hole: those mapped as its own, else those its line of play runs over."""
        return _outlined(self.lies.fairways)

    @cached_property
    def short_grass(self) -> Outline | None:
        """The fairways of this hole where they are general area on the course; ``None`` where there is none.

        "Fairway" in Model Local Rule E-5 is grass in the general area cut to fairway height: a bunker, water or
        green that is mapped over by a fairway is none of it, nor is a wrong green, which is no fairway of this hole.
        """
        greens = Outside(Outlines(self.wrong_greens.outlines))
        limits = (*self.in_area(Area.GENERAL_AREA), greens)
        return self._cut_to([outline for _, outline in self.fairways], limits)

    @cached_property
    def short_tees(self) -> Outline | None:
        """The mapped ground of this hole's tees, without penalty areas, bunkers, greens and out of bounds."""
        others = Outside(self.outlines_of(bunkers=True, green=True, tees=False))
        return self._cut_to([outline for _, outline in self.tees], (others,))

    def _cut_to(self, outlines: Sequence[Outline], limits: Sequence[Bounding]) -> Outline | None:
        shape = shapely.union_all([one.geometry for one in outlines])
        for limit in (*limits, *self.on_course):
            shape = areal(limit.cut(shape))
        return None if shape.is_empty else Outline(shape)

    def _specific(self, area: Area) -> Areas:
        regions = (self.lies.region(ground) for ground in _GROUNDS[area])
        return _outlined(one for region in regions if region is not None for one in region.areas)

    def outline(self, feature: Feature) -> Outline:
        """Return the outline of a feature, or of the condition, wrong green or wall that it is a piece of."""
        united = self._pieces.get(id(feature))
        return Outline(feature.geometry) if united is None else _outline(united)

    @cached_property
    def _pieces(self) -> dict[int, UnitedArea]:
        # The ground keeps the features alive, so their ids stay theirs.
        areas = (*self.lies.conditions, *self.lies.wrong_greens, *self.lies.unsettled)
        return {id(feature): area for area in areas for feature in area.features}

    def area_at(self, place: XY, ball: float = 0.0) -> Area | None:
        """Return the area of the course a place (or a ball of this radius) lies in; ``None`` out of bounds."""
        (ground,) = decider(self.lies).decide(np.array([Point(place)]), ball + EDGE_TOLERANCE)
        area = AREAS[Lies(int(ground))]
        return None if area is None else Area(area.value)

    @cached_property
    def on_course(self) -> tuple[Bounding, ...]:
        """The limits that keep a ball on the course; a ball is out of bounds only when all of it is."""
        if self.lies.in_bounds is not None:
            return (Inside(Outlines((Outline(self.lies.in_bounds.shape),)), Bound.ON_COURSE),)
        if self.out_of_bounds:
            return (_NotAllInside(self.out_of_bounds.outlines, Bound.ON_COURSE),)
        return ()

    def in_area(self, area: Area, limit: Limit | None = None) -> tuple[Bounding, ...]:
        """Return the limits of lying in an area of the course (Rule 2.2c's order)."""
        itself, before = self._areas_before[area]
        limits: list[Bounding] = [] if itself is None else [Inside(itself, limit=limit)]
        if before:
            limits.append(Outside(before, limit=limit))
        return tuple(limits)

    def outside_bunker(self, bunker: Outline, limit: Limit | None = None) -> tuple[Bounding, ...]:
        """Return the limits of not lying in a bunker: what a penalty area covers of it is none (Rule 2.2c)."""
        wet = Outlines(one for one in self.penalty_areas.outlines if one.geometry.intersects(bunker.geometry))
        if not wet:
            return (Outside(Outlines((bunker,)), limit=limit),)
        dry = areal(shapely.difference(bunker.geometry, shapely.union_all([one.geometry for one in wet])))
        if dry.is_empty:
            return ()
        return (_NotInBunker(Outlines((Outline(dry),)), limit=limit, penalty_areas=wet),)

    @cached_property
    def _areas_before(self) -> dict[Area, tuple[Outlines | None, Outlines]]:
        """For each area of the course its own outlines, and those of the areas that come before it."""
        found: dict[Area, tuple[Outlines | None, Outlines]] = {}
        before = Outlines()
        for area in sorted(_GROUNDS, key=lambda one: _GROUNDS[one]):
            own = self._specific_outlines[area]
            found[area] = own, before
            before = Outlines((*before, *own))
        found[Area.GENERAL_AREA] = None, before
        return found

    @cached_property
    def _specific_outlines(self) -> dict[Area, Outlines]:
        return {
            Area.PENALTY_AREA: self.penalty_areas.outlines,
            Area.BUNKER: self.bunkers.outlines,
            Area.PUTTING_GREEN: self.green.outlines,
            Area.TEEING_AREA: self.tees.outlines,
        }

    def outlines_of(self, *, bunkers: bool, green: bool, tees: bool) -> Outlines:
        """Return the outlines of the penalty areas, and of other specific areas as asked."""
        return self._unions[bunkers, green, tees]

    @cached_property
    def _unions(self) -> dict[tuple[bool, bool, bool], Outlines]:
        wanted = (False, True)
        return {
            (bunkers, green, tees): Outlines(
                (
                    *self.penalty_areas.outlines,
                    *(self.bunkers.outlines if bunkers else ()),
                    *(self.green.outlines if green else ()),
                    *(self.tees.outlines if tees else ()),
                )
            )
            for bunkers in wanted
            for green in wanted
            for tees in wanted
        }


@dataclass(frozen=True, slots=True)
class _NotAllInside(Outside):
    """Not out of bounds: some part of the ball is outside the areas that are out of bounds (Rule 18.2a)."""

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:
        return Outside.margin(self, x, y, -ball)


@dataclass(frozen=True, slots=True)
class _NotInBunker(Outside):
    """Not in a bunker: a ball that touches a penalty area too lies in that (Rule 2.2c)."""

    penalty_areas: Outlines = field(default_factory=Outlines)

    def margin(self, x: float, y: float, ball: float = 0.0) -> float:
        dry = Outside.margin(self, x, y, ball)
        return dry if dry >= 0 else max(dry, Inside(self.penalty_areas).margin(x, y, ball))


def _outlined(areas: Iterable[UnitedArea]) -> Areas:
    return Areas((area, _outline(area)) for area in areas)


def _outline(area: UnitedArea) -> Outline:
    """Return the outline of an area; it is made once, for all holes."""
    found: Outline = area.kept.setdefault(Outline, Outline(area.geometry))
    return found


def feature_at(areas: Areas, place: XY, ball: float = 0.0) -> tuple[UnitedArea, Outline] | None:
    """Return the area that a place (or any part of a ball of this radius) lies in."""
    reach = ball + EDGE_TOLERANCE
    for index in areas.outlines.indices_near(*place, reach):
        if areas[index][1].depth(*place) >= -reach:
            return areas[index]
    return None


def nearest_edge(areas: Areas, place: XY) -> tuple[float, tuple[UnitedArea, Outline]] | None:
    """Return the area whose edge is nearest to a place, and how far away that edge is."""
    near = areas.outlines.indices_near(*place, EDGE_REACH)
    measured = [(abs(areas[index][1].depth(*place)), areas[index]) for index in near]
    return min(measured, key=lambda pair: pair[0], default=None)


def ground_of(course: Course, hole_number: int) -> Ground:
    """Return the ground of one hole; it is kept for as long as the course is.

    Raises:
        BadPlace: if the course has no such hole.
    """
    key = (ground_of, hole_number)
    if key not in course.kept:
        course.kept[key] = Ground(course.hole(hole_number), read_ground(course, hole_number))
    found: Ground = course.kept[key]
    return found
