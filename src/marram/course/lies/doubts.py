"""Why the map alone cannot be relied on for an answer, and what to look at on the ground."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum

from shapely.geometry import Point

from marram.course.lies.decision import Answer
from marram.course.lies.extents import assumed_width
from marram.course.lies.regions import TEEING_AREA_OF_THE_DAY, Ground, HoleGround
from marram.course.lies.tolerance import EDGE_TOLERANCE, TOUCH
from marram.course.lies.unsettled import barrier_name, what_barrier, what_wetland
from marram.course.lies.water import colour_of
from marram.course.model import Course, Feature, Kind
from marram.course.reading.assembly import boundary_is_outline
from marram.course.reading.shapes import accuracy_of
from marram.course.scheme import is_about_golf
from marram.said import said

UNMAPPED_EDGE = 5.0
"""Within this distance of unmarked water the map cannot tell where its edge is, metres (own choice)."""

NEAR_OUTLINE = 10.0
"""Within this distance of an outline that serves as boundary, the true boundary must be looked for, metres (own
choice)."""

NEAR_PATH = 3.0
"""Within this distance of a path of unknown width, whether a ball is on it must be looked at, metres (own choice)."""

GREEN_REACH = 100.0
"""Further than this from where the hole is cut, metres, no ball lies on the green of the hole, mapped or not (own choice:
the largest double greens are about so long)."""


class DoubtKind(Enum):
    """Why the map alone cannot be relied on."""

    WITHIN_ACCURACY = "within_accuracy"
    """The place is not known well enough: the ball may lie on the other side of an edge."""
    TEE_MARKERS = "tee_markers"
    """The teeing area depends on where the tee-markers are today."""
    IDLE_TEE = "idle_tee"
    """The ball is on a tee of which the map does not know the hole."""
    UNMARKED_WATER = "unmarked_water"
    """Water on the course is a penalty area, but the map does not know its edge."""
    TWO_COLOURS = "two_colours"
    """Part of the ball is in a red and part in a yellow penalty area."""
    NO_BOUNDARY = "no_boundary"
    """The map has no boundary."""
    OUTLINE_AS_BOUNDARY = "outline_as_boundary"
    """The map has only the outline of the course, which need not be its boundary."""
    NO_GREEN = "no_green"
    """The green of the hole is not mapped."""
    NOT_COVERED = "not_covered"
    """The map was cut at a rectangle, and the place lies beyond."""
    PATH_WITHOUT_SURFACE = "path_without_surface"
    """The ball is on a path that may have no artificial surface and so be no obstruction."""
    PATH_WITHOUT_WIDTH = "path_without_width"
    """A path is near of which the map knows only the middle; a ball well within the width it is taken to have is on it."""
    OBSTRUCTION_WITHOUT_SIZE = "obstruction_without_size"
    """The same of an obstruction."""
    BARRIER_WITHOUT_STATUS = "barrier_without_status"
    """A wall or fence is near of which the map does not say what it is for the Rules."""
    WETLAND_WITHOUT_STATUS = "wetland_without_status"
    """The same of a wetland: the ball may be in a penalty area."""


@dataclass(frozen=True, slots=True)
class Doubt:
    """One reason to look on the ground, in words, with the feature it is about.

    Attributes:
        kind: why the map alone cannot be relied on.
        words: what to look at.
        feature: what it is about, if it is about one feature.
        stands: whether the answer counts until somebody says otherwise; it is said, and nothing is asked.
    """

    kind: DoubtKind
    words: str
    feature: Feature | None = None
    stands: bool = False


@dataclass(frozen=True, slots=True)
class Reading:
    """A place on a hole, how well it is known, and what was decided there."""

    course: Course
    hole: int
    ground: HoleGround
    place: Point
    accuracy: float
    answer: Answer

    def doubts(self) -> tuple[Doubt, ...]:
        """Return every reason to look on the ground."""
        return (
            *self._accuracy(),
            *self._cover(),
            *self._tees_and_green(),
            *self._water(),
            *self._bounds(),
            *self._paths(),
            *self._obstructions(),
            *self._unsettled(),
        )

    def _accuracy(self) -> Iterator[Doubt]:
        reach = max(self.accuracy, EDGE_TOLERANCE)
        if self.answer.edge_distance <= reach:
            yield _measure(self.answer.edge_distance, self.answer.edge)
        for rough in roughly_drawn(self.course):
            edge = rough.geometry.boundary if rough.geometry.area else rough.geometry
            away = edge.distance(self.place)
            if reach < away <= drawn_to(rough) + TOUCH:
                yield _measure(away, rough)
        near = self.ground.within(self.place, TOUCH + reach, "conditions")
        if self.answer.ground is Ground.GENERAL_AREA:
            near += self.ground.within(self.place, TOUCH + reach, "wrong_greens")
        for area in near:
            outside = area.geometry.distance(self.place)
            inside = area.geometry.boundary.distance(self.place)
            distance = abs((outside if outside > 0 else -inside) - TOUCH)
            feature = area.edge_near(self.place)
            if distance <= reach and assumed_width(feature) is None:
                yield _measure(distance, feature)

    def _cover(self) -> Iterator[Doubt]:
        if self.course.covered is not None and not self.course.covered.covers(self.place):
            yield Doubt(
                DoubtKind.NOT_COVERED,
                said("the map was cut here: what lies at this place may be missing from it"),
            )

    def _tees_and_green(self) -> Iterator[Doubt]:
        ground, feature = self.answer.ground, self.answer.feature
        if ground is Ground.TEEING_AREA and feature and TEEING_AREA_OF_THE_DAY not in feature.tags.items():
            yield Doubt(
                DoubtKind.TEE_MARKERS,
                said(
                    "the teeing area is two club-lengths deep behind the tee-markers, which the map does not know"
                ),
                feature,
            )
        if ground is not Ground.GENERAL_AREA:
            return
        for tee in self.ground.within(self.place, TOUCH, "idle_tees")[:1]:
            yield Doubt(
                DoubtKind.IDLE_TEE,
                said("the ball is on a tee of which the map does not know the hole"),
                tee.holding(self.place),
            )
        hole = self.course.holes[self.hole]
        if hole.green is None and hole.location.distance(self.place) <= GREEN_REACH:
            yield Doubt(DoubtKind.NO_GREEN, said("the green of hole {hole} is not mapped", hole=self.hole))

    def _water(self) -> Iterator[Doubt]:
        ground, feature = self.answer.ground, self.answer.feature
        if ground is Ground.PENALTY_AREA_OF_TWO_COLOURS:
            yield Doubt(
                DoubtKind.TWO_COLOURS,
                said("part of the ball is in a red and part in a yellow penalty area"),
                feature,
            )
        elif ground < Ground.PENALTY_AREA_OF_TWO_COLOURS and feature and feature.kind is Kind.WATER:
            yield unmarked(feature)
        elif ground > Ground.PENALTY_AREA_OF_TWO_COLOURS:
            near = [
                feature
                for area in self.ground.within(self.place, UNMAPPED_EDGE, "water")
                for feature in area.touching(self.place, UNMAPPED_EDGE)
            ]
            for water in sorted(near, key=lambda water: water.geometry.distance(self.place))[:1]:
                yield Doubt(DoubtKind.UNMARKED_WATER, self._water_near(water), water)

    def _water_near(self, water: Feature) -> str:
        away = water.geometry.distance(self.place)
        if is_about_golf(water.tags):
            return said(
                "a penalty area of which the map knows only the middle is {away:.1f} m away", away=away
            )
        return said(
            "unmarked water is {away:.1f} m away: a {ground}, whose edge the map does not know",
            away=away,
            ground=colour_of(water),
        )

    def _bounds(self) -> Iterator[Doubt]:
        inside = self.ground.in_bounds
        if inside is None:
            yield Doubt(DoubtKind.NO_BOUNDARY, said("the map has no boundary: out of bounds cannot be told"))
        elif boundary_is_outline(self.course) and (
            self.answer.ground is Ground.OUT_OF_BOUNDS or inside.signed_distance(self.place) > -NEAR_OUTLINE
        ):
            yield Doubt(
                DoubtKind.OUTLINE_AS_BOUNDARY,
                said(
                    "the outline of the course serves as boundary in the map: look where the boundary is marked"
                ),
                inside.edge_near(self.place),
            )

    def _paths(self) -> Iterator[Doubt]:
        near = [
            path
            for area in self.ground.within(self.place, NEAR_PATH, "conditions")
            if area.kind is Kind.PATH
            for path in area.touching(self.place, NEAR_PATH)
        ]
        for path in near:
            away, width = path.geometry.distance(self.place), assumed_width(path)
            is_on = away <= TOUCH + (width or 0.0) / 2
            if is_on and "surface" not in path.tags:
                yield Doubt(
                    DoubtKind.PATH_WITHOUT_SURFACE,
                    said(
                        "the ball is on a path of unknown surface: only an artificially surfaced one is an obstruction"
                    ),
                    path,
                )
            if width is not None and (is_on or away <= NEAR_PATH):
                yield Doubt(
                    DoubtKind.PATH_WITHOUT_WIDTH,
                    said(
                        "the middle of a path of unknown width is {away:.1f} m away: it is taken as {width:g} m wide",
                        away=away,
                        width=width,
                    ),
                    path,
                    stands=away + self.accuracy <= width / 2,
                )

    def _obstructions(self) -> Iterator[Doubt]:
        near = (
            thing
            for area in self.ground.within(self.place, NEAR_PATH, "conditions")
            if area.kind is Kind.OBSTRUCTION
            for thing in area.touching(self.place, NEAR_PATH)
        )
        for thing in near:
            if (width := assumed_width(thing)) is not None:
                yield Doubt(
                    DoubtKind.OBSTRUCTION_WITHOUT_SIZE,
                    said(
                        "the middle of an obstruction of unknown size is {away:.1f} m away: it is taken as {width:g} m across",
                        away=thing.geometry.distance(self.place),
                        width=width,
                    ),
                    thing,
                )

    def _unsettled(self) -> Iterator[Doubt]:
        for area in self.ground.within(self.place, NEAR_PATH, "unsettled"):
            if area.kind is Kind.BARRIER:
                one = area.holding(self.place)
                yield Doubt(
                    DoubtKind.BARRIER_WITHOUT_STATUS,
                    said(
                        "a {barrier} is {away:.1f} m away: {what}",
                        barrier=barrier_name(one),
                        away=area.geometry.distance(self.place),
                        what=what_barrier(one),
                    ),
                    one,
                )
        if self.answer.ground <= Ground.PENALTY_AREA_OF_TWO_COLOURS:
            return
        for area in self.ground.within(self.place, UNMAPPED_EDGE, "unsettled"):
            if area.kind is Kind.WETLAND:
                away = area.geometry.distance(self.place)
                where = (
                    said("a wetland is {away:.1f} m away", away=away)
                    if away > TOUCH
                    else said("the ball is in a wetland")
                )
                yield Doubt(
                    DoubtKind.WETLAND_WITHOUT_STATUS,
                    said("{where}: {what}", where=where, what=what_wetland()),
                    area.holding(self.place),
                )


def unmarked(water: Feature) -> Doubt:
    """Return what is said, once, of water that the map does not mark."""
    width = assumed_width(water)
    wide = "" if width is None else said(", taken as {width:g} m wide", width=width)
    return Doubt(
        DoubtKind.UNMARKED_WATER,
        said(
            "this water is not marked: it counts as a {ground}{wide}, whose edge is where the ground slopes down to it; mark it, or say on the map why it is none",
            ground=colour_of(water),
            wide=wide,
        ),
        water,
        stands=True,
    )


def roughly_drawn(course: Course) -> tuple[Feature, ...]:
    """Return the features whose edges are known to be drawn only roughly; they are looked for once."""
    if roughly_drawn not in course.kept:
        course.kept[roughly_drawn] = tuple(one for one in course.features if drawn_to(one))
    found: tuple[Feature, ...] = course.kept[roughly_drawn]
    return found


def drawn_to(feature: Feature) -> float:
    """Return how far off the edge of a feature may be drawn, metres: what a phone that marked it said, else 0."""
    return accuracy_of(feature.tags) or 0.0


def _measure(distance: float, feature: Feature | None) -> Doubt:
    of = said(" of the {kind}", kind=feature.kind) if feature else ""
    return Doubt(
        DoubtKind.WITHIN_ACCURACY,
        said("within {distance:.2f} m of the edge{of}: measure on the ground", distance=distance, of=of),
        feature,
    )
