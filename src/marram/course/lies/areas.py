"""Which area of the course a ball lies in (Rules 2.2 and 18.2a). Distances decide; polygons only draw.

A ball is a disc, seen from above. It lies in a specific area as soon as any part of the disc is inside the
edge, and it is out of bounds only when all of it is. For bunkers and greens the Definitions look at what
the ball touches; on sloping or long ground that can be a little less than the disc, which only the eye can
tell: such a ball lies within the ball's radius of the edge, and the reading says how near that is.
"""

import math
from dataclasses import dataclass
from enum import Enum

from shapely.geometry import Point

from marram.course.lies.decision import decide
from marram.course.lies.doubts import Doubt, Reading
from marram.course.lies.regions import Ground, HoleGround, ground_of
from marram.course.lies.tolerance import TOUCH
from marram.course.model import Course, Feature, Kind
from marram.errors import BadPlace
from marram.said import Said, said

FURTHEST = 20_000.0
"""A place further than this from the middle of the course is no place on it, metres (own choice)."""


class Area(Enum):
    """The areas of the course (Rule 2.2); the values are the answers to the fact ``area_of_ball``."""

    TEEING_AREA = "teeing_area"
    GENERAL_AREA = "general_area"
    PENALTY_AREA = "penalty_area"
    BUNKER = "bunker"
    PUTTING_GREEN = "putting_green"


class PenaltyColour(Enum):
    """The colour of a penalty area."""

    RED = "red"
    YELLOW = "yellow"


@dataclass(frozen=True, slots=True)
class AreaReading:
    """Where a ball lies, as far as the map can tell.

    Attributes:
        area: the area of the course; ``None`` when the ball is out of bounds.
        colour: of the penalty area; ``None`` elsewhere, and where part of the ball is in either colour.
        feature: the area that decided it; ``None`` in the general area.
        conditions: the paths, obstructions, ground under repair, temporary water and no play zones it touches.
        wrong_green: the wrong green it touches while lying in the general area, or ``None``.
        edge_distance: how far the ball would have to move, at least, for the area or colour to change, metres;
            infinite where nothing could change it.
        edge: what lies behind that nearest edge, or ``None``.
        doubts: why to look on the ground, if at all.
    """

    area: Area | None
    colour: PenaltyColour | None
    feature: Feature | None
    conditions: tuple[Feature, ...]
    wrong_green: Feature | None
    edge_distance: float
    edge: Feature | None
    doubts: tuple[Doubt, ...]

    @property
    def out_of_bounds(self) -> bool:
        """Whether the ball is out of bounds."""
        return self.area is None

    @property
    def certain(self) -> bool:
        """Whether the map alone decides."""
        return not self.doubts

    def touches(self, kind: Kind) -> bool:
        """Whether the ball touches a condition of this kind."""
        return any(condition.kind is kind for condition in self.conditions)


AREAS: dict[Ground, Area | None] = {
    Ground.OUT_OF_BOUNDS: None,
    Ground.RED_PENALTY_AREA: Area.PENALTY_AREA,
    Ground.YELLOW_PENALTY_AREA: Area.PENALTY_AREA,
    Ground.PENALTY_AREA_OF_TWO_COLOURS: Area.PENALTY_AREA,
    Ground.BUNKER: Area.BUNKER,
    Ground.PUTTING_GREEN: Area.PUTTING_GREEN,
    Ground.TEEING_AREA: Area.TEEING_AREA,
    Ground.GENERAL_AREA: Area.GENERAL_AREA,
}
"""The area of the course of each ground; out of bounds is none."""

_COLOURS = {
    Ground.RED_PENALTY_AREA: PenaltyColour.RED,
    Ground.YELLOW_PENALTY_AREA: PenaltyColour.YELLOW,
}


def area_at(course: Course, x: float, y: float, hole: int, *, accuracy: float = 0.0) -> AreaReading:
    """Return where a ball lies whose centre is at a place in local metres.

    Args:
        course: the map.
        x: metres east of the middle of the course.
        y: metres north of it.
        hole: the hole being played; other holes' greens and tees are general area.
        accuracy: how far off the place may be, metres; an answer that could change within it says so.

    Raises:
        BadPlace: the map has no such hole, or the place is not on or near the course.
    """
    if not (math.hypot(x, y) <= FURTHEST):
        raise BadPlace(_too_far(course, x, y))
    if not 0 <= accuracy < math.inf:
        raise BadPlace(
            said("An accuracy of {accuracy:g} m is none; give metres, 0 or more.", accuracy=accuracy)
        )
    ground = ground_of(course, hole)
    place = Point(x, y)
    answer = decide(ground, place)
    on_wrong_green = (
        ground.within(place, TOUCH, "wrong_greens") if answer.ground is Ground.GENERAL_AREA else ()
    )
    return AreaReading(
        area=AREAS[answer.ground],
        colour=_COLOURS.get(answer.ground),
        feature=answer.feature,
        conditions=_conditions(ground, place),
        wrong_green=on_wrong_green[0].holding(place) if on_wrong_green else None,
        edge_distance=answer.edge_distance,
        edge=answer.edge,
        doubts=Reading(course, hole, ground, place, accuracy, answer).doubts(),
    )


def _too_far(course: Course, x: float, y: float) -> Said:
    """Say where a place that is not near the course lies, as it can be compared with what was given."""
    middle_longitude, middle_latitude = course.plane.to_degrees(0.0, 0.0)
    if not math.isfinite(math.hypot(x, y)):
        return said("A place has no number for its latitude or longitude; give both in degrees.")
    longitude, latitude = course.plane.to_degrees(x, y)
    return said(
        "The place at latitude {latitude:.4f}, longitude {longitude:.4f} is not within {furthest:.0f} km of the middle "
        "of the course (latitude {middle_latitude:.4f}, longitude {middle_longitude:.4f}). Look whether the two were "
        "exchanged.",
        latitude=latitude,
        longitude=longitude,
        furthest=FURTHEST / 1000,
        middle_latitude=middle_latitude,
        middle_longitude=middle_longitude,
    )


def _conditions(ground: HoleGround, place: Point) -> tuple[Feature, ...]:
    areas = ground.within(place, TOUCH, "conditions")
    return tuple(feature for area in areas for feature in area.touching(place, TOUCH))


def area_at_degrees(
    course: Course, longitude: float, latitude: float, hole: int, *, accuracy: float = 0.0
) -> AreaReading:
    """Return where a ball lies whose centre is at a place in degrees; see :func:`area_at`."""
    if not (abs(longitude) <= 180 and abs(latitude) <= 90):
        raise BadPlace(
            said(
                "{latitude:g}, {longitude:g} is no latitude and longitude in degrees.",
                latitude=latitude,
                longitude=longitude,
            )
        )
    x, y = course.plane.to_metres(longitude, latitude)
    return area_at(course, x, y, hole, accuracy=accuracy)
