"""A condition set down on a map for a drawing, where the course has none such: water after rain, ground under repair.

What a Committee marks on Friday or rain leaves on Saturday is on no map of the course. A drawing says that it is invented.
"""

from dataclasses import replace
from math import atan2, cos, pi, sin
from random import Random

import shapely
from shapely import Point
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Feature, Hole, Kind
from marram.relief.geometry.outline import XY
from marram.relief.place.ground import ground_of
from marram.rules.facts.ball import Area
from marram.teach.drawings.grounds import Grounds
from marram.teach.drawings.symbols import stance

INVENTED = "invented"
"""The identifier of a condition that was set down."""
_KINDS = {
    "temporary_water": (Kind.TEMPORARY_WATER, (1.0, 2.4)),
    "ground_under_repair": (Kind.GROUND_UNDER_REPAIR, (1.2, 3.0)),
    "immovable_obstruction": (Kind.OBSTRUCTION, (0.3, 0.5)),
}
"""For each thing in the way its kind on the map, and how far it reaches about its middle, metres (own choice)."""
_WOBBLE = 0.1
"""How uneven its edge is, as a part of how far it reaches."""
_CORNERS = 28


def can_be_set_down(grounds: Grounds) -> bool:
    """Whether what interferes may be set down beside any ball."""
    told = grounds.facts
    if "in_the_way" not in told or "interference" not in told:
        return False
    whole_bunker = told["interference"] == "ball" and grounds.area == Area.BUNKER.value
    floods = whole_bunker and told["in_the_way"] != "immovable_obstruction"
    return floods or told.get("nearest_point_exists") != "no"


def elsewhere(grounds: Grounds) -> Grounds:
    """Return what is told of the ground without the condition: where a ball is looked for to set it down beside."""
    left = {name: answer for name, answer in grounds.facts.items() if name not in _OF_CONDITION}
    return replace(grounds, facts=left)


_OF_CONDITION = frozenset({"in_the_way", "interference", "nearest_point_exists"})


def with_condition(
    course: Course, hole: Hole, ball: XY, grounds: Grounds, lot: Random, *, right_handed: bool
) -> Course:
    """Return the course with a condition of the kind told, so that it should interfere as told; the map itself decides."""
    kind, reach = _KINDS[grounds.facts["in_the_way"]]
    shape = _shape(course, hole, ball, grounds, lot, reach, right_handed=right_handed)
    feature = Feature(kind, INVENTED, shape)
    return Course(
        course.name, course.plane, course.holes, (*course.features, feature), course.credit, course.covered
    )


def _shape(  # noqa: PLR0917 - the place, and what is told of it
    course: Course,
    hole: Hole,
    ball: XY,
    grounds: Grounds,
    lot: Random,
    reach: tuple[float, float],
    *,
    right_handed: bool,
) -> BaseGeometry:
    told, radius = grounds.facts["interference"], lot.uniform(*reach)
    target = (hole.location.x, hole.location.y)
    if grounds.facts.get("nearest_point_exists") == "no" and grounds.area == Area.BUNKER.value:
        for region in ground_of(course, hole.number).lies.specific:
            if region.shape.covers(Point(ball)):
                whole: BaseGeometry = region.shape.buffer(0.5)
                return whole
    if told == "ball":
        turn, far = lot.uniform(0, 2 * pi), lot.uniform(0.0, 0.6) * radius
    elif told == "stance_or_swing":
        feet = stance(ball, target, right_handed=right_handed).centroid
        turn = atan2(feet.y - ball[1], feet.x - ball[0]) + lot.uniform(-0.3, 0.3)
        far = radius * (1 + _WOBBLE) + lot.uniform(0.25, 0.45)
    elif told == "line_of_play":
        turn = atan2(target[1] - ball[1], target[0] - ball[0])
        far = radius * (1 + _WOBBLE) + lot.uniform(1.2, 2.0)
    else:
        turn, far = lot.uniform(0, 2 * pi), radius * (1 + _WOBBLE) + lot.uniform(2.4, 3.2)
    return _blob((ball[0] + far * cos(turn), ball[1] + far * sin(turn)), radius, lot)


def _blob(middle: XY, radius: float, lot: Random) -> BaseGeometry:
    phases = [lot.uniform(0, 2 * pi) for _ in range(3)]
    corners = []
    for number in range(_CORNERS):
        angle = 2 * pi * number / _CORNERS
        uneven = sum(sin((wave + 2) * angle + phase) for wave, phase in enumerate(phases)) / 3
        away = radius * (1 + _WOBBLE * uneven)
        corners.append((middle[0] + away * cos(angle), middle[1] + away * sin(angle)))
    return shapely.Polygon(corners)
