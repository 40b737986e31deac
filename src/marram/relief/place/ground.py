"""The ground of one hole: which area of the course a place lies in, and the limits that follow."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

import shapely

from marram.course.model import Course, Feature, Hole, Kind
from marram.errors import BadPlace
from marram.relief.geometry.areal import areal
from marram.relief.geometry.limits import Bound, Bounding, Inside, Outside
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.outlines import Outlines
from marram.rules.facts.ball import Area
from marram.rules.relief_option import Limit

EDGE_REACH = 1.0
"""Metres: how far from an edge an estimated crossing point may be given; it is then moved onto the edge.
A tap on a map is no better than that. (A number of our own.)"""


class Areas(tuple[tuple[Feature, Outline], ...]):  # noqa: SLOT001  (the outlines are kept on it)
    """Features of the map that have an area, each with its outline."""

    @cached_property
    def outlines(self) -> Outlines:
        """Their outlines, in the same order."""
        return Outlines(outline for _, outline in self)


@dataclass(frozen=True, eq=False)
class Ground:
    """The areas of a course as they are when one hole is played.

    The green and the teeing areas of other holes lie in the general area (Rule 2.2).

    Attributes:
        course: the course.
        hole: the hole being played.
    """

    course: Course
    hole: Hole

    @cached_property
    def location(self) -> XY:
        """Where the hole is cut."""
        return float(self.hole.location.x), float(self.hole.location.y)

    @cached_property
    def penalty_areas(self) -> Areas:
        """Every penalty area."""
        return self._areal(self.course.of(Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA))

    @cached_property
    def bunkers(self) -> Areas:
        """Every bunker."""
        return self._areal(self.course.of(Kind.BUNKER))

    @cached_property
    def green(self) -> Areas:
        """The putting green of this hole, if mapped."""
        return self._areal((self.hole.green,) if self.hole.green else ())

    @cached_property
    def tees(self) -> Areas:
        """The mapped ground of this hole's teeing areas."""
        return self._areal(self.hole.tees)

    @cached_property
    def boundary(self) -> Areas:
        """The outline of the course, if mapped."""
        return self._areal(self.course.of(Kind.BOUNDARY))

    @cached_property
    def out_of_bounds(self) -> Areas:
        """Areas inside the outline that are out of bounds."""
        return self._areal(self.course.of(Kind.OUT_OF_BOUNDS))

    @cached_property
    def fairways(self) -> Areas:
        """The fairways of this hole: those mapped as its own, else those its line of play runs over."""
        every = self.course.of(Kind.FAIRWAY)
        own = [one for one in every if self.hole.number in one.holes]
        own = own or [one for one in every if not one.holes and one.geometry.intersects(self.hole.line)]
        return self._areal(own)

    @cached_property
    def short_grass(self) -> Outline | None:
        """The fairways of this hole where they are general area on the course; ``None`` where there is none.

        "Fairway" in Model Local Rule E-5 is grass in the general area cut to fairway height: a bunker, water or
        green that is mapped over by a fairway is none of it.
        """
        return self._cut_to([outline for _, outline in self.fairways], self.in_area(Area.GENERAL_AREA))

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

    def _areal(self, features: Iterable[Feature]) -> Areas:
        """Pair features with their outlines; what is mapped as a line or a point has no area and is left out."""
        return Areas(
            (one, self.outline(one))
            for one in features
            if one.geometry.geom_type in {"Polygon", "MultiPolygon"}
        )

    def outline(self, feature: Feature) -> Outline:
        """Return the outline of a feature; for one of the course it is made once."""
        if id(feature) not in self._own:
            return Outline(feature.geometry)
        return self._outlines.setdefault(id(feature), Outline(feature.geometry))

    @cached_property
    def _own(self) -> frozenset[int]:
        # The course keeps its features alive, so their ids stay theirs.
        return frozenset(map(id, self.course.features)) | frozenset(
            map(id, (*self.hole.tees, self.hole.green))
        )

    @cached_property
    def _outlines(self) -> dict[int, Outline]:
        return {}

    def area_at(self, place: XY, ball: float = 0.0) -> Area | None:
        """Return the area of the course a place (or a ball of this radius) lies in; ``None`` out of bounds.

        A ball that touches two areas lies in the first of penalty area, bunker, putting green (Rule 2.2c).
        """
        if any(limit.margin(*place, ball) < 0 for limit in self.on_course):
            return None
        for area, members in self._order:
            if feature_at(members, place, ball):
                return area
        return Area.GENERAL_AREA

    @cached_property
    def on_course(self) -> tuple[Bounding, ...]:
        """The limits that keep a ball on the course; a ball is out of bounds only when all of it is."""
        limits: list[Bounding] = []
        if self.boundary:
            limits.append(Inside(self.boundary.outlines, Bound.ON_COURSE))
        if self.out_of_bounds:
            limits.append(_NotAllInside(self.out_of_bounds.outlines, Bound.ON_COURSE))
        return tuple(limits)

    def in_area(self, area: Area, limit: Limit | None = None) -> tuple[Bounding, ...]:
        """Return the limits of lying in an area of the course (Rule 2.2c's order)."""
        itself, before = self._areas_before[area]
        limits: list[Bounding] = [] if itself is None else [Inside(itself, limit=limit)]
        if before:
            limits.append(Outside(before, limit=limit))
        return tuple(limits)

    @cached_property
    def _areas_before(self) -> dict[Area, tuple[Outlines | None, Outlines]]:
        """For each area of the course its own outlines, and those of the areas that come before it."""
        found: dict[Area, tuple[Outlines | None, Outlines]] = {}
        before = Outlines()
        for area, members in self._order:
            found[area] = members.outlines, before
            before = Outlines((*before, *members.outlines))
        found[Area.GENERAL_AREA] = None, before
        return found

    @cached_property
    def _order(self) -> tuple[tuple[Area, Areas], ...]:
        """The specific areas, in the order that decides where a ball in two of them lies (Rule 2.2c)."""
        return (
            (Area.PENALTY_AREA, self.penalty_areas),
            (Area.BUNKER, self.bunkers),
            (Area.PUTTING_GREEN, self.green),
            (Area.TEEING_AREA, self.tees),
        )

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


def feature_at(areas: Areas, place: XY, ball: float = 0.0) -> tuple[Feature, Outline] | None:
    """Return the feature that a place (or any part of a ball of this radius) lies in."""
    for index in areas.outlines.indices_near(*place, ball):
        if areas[index][1].depth(*place) >= -ball:
            return areas[index]
    return None


def nearest_edge(areas: Areas, place: XY) -> tuple[float, tuple[Feature, Outline]] | None:
    """Return the feature whose edge is nearest to a place, and how far away that edge is."""
    near = areas.outlines.indices_near(*place, EDGE_REACH)
    measured = [(abs(areas[index][1].depth(*place)), areas[index]) for index in near]
    return min(measured, key=lambda pair: pair[0], default=None)


_grounds: dict[tuple[int, int], Ground] = {}
_KEPT = 64


def ground_of(course: Course, hole_number: int) -> Ground:
    """Return the ground of one hole, made once for each course and hole.

    Raises:
        BadPlace: if the course has no such hole.
    """
    key = (id(course), hole_number)
    known = _grounds.get(key)
    # The ground keeps its course alive, so an id met again here is the same course.
    if known is not None and known.course is course:
        return known
    hole = course.holes.get(hole_number)
    if hole is None:
        numbers = ", ".join(str(number) for number in course.holes)
        raise BadPlace(f"{course.name} has no hole {hole_number}; its holes are {numbers}.")
    if len(_grounds) >= _KEPT:
        _grounds.pop(next(iter(_grounds)))
    return _grounds.setdefault(key, Ground(course, hole))
