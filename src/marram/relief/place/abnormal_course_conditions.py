"""The conditions at and near a place that relief may be taken from: each once, in however many pieces it is mapped.

Pieces of one kind that are joined on the ground are one condition. Conditions of different kinds, or apart from each
other, are several, and relief is taken from one after the other; only where a Committee says so are ground under
repair and the obstruction it adjoins one (Model Local Rule F-3).
"""

from collections.abc import Sequence

from shapely import Point

from marram.course.lies.regions import ground_of
from marram.course.lies.tolerance import SEAM, TOUCH
from marram.course.model import ABNORMAL_COURSE_CONDITIONS, Course, Feature, Kind
from marram.relief.geometry.outline import XY

_OBSTRUCTIONS = (Kind.PATH, Kind.OBSTRUCTION)


def conditions_near(
    course: Course,
    hole_number: int,
    place: XY,
    reach: float,
    kinds: Sequence[Kind] = ABNORMAL_COURSE_CONDITIONS,
) -> tuple[Feature, ...]:
    """Return the conditions near a place, the nearest first, each by its piece nearest to the place.

    Relief from one of these features is relief from all that is joined with it.

    Args:
        course: the map.
        hole_number: the hole being played.
        place: in local metres.
        reach: how far away a condition may be, metres.
        kinds: the kinds of condition looked for.
    """
    at = Point(place)
    areas = [
        one for one in ground_of(course, hole_number).within(at, reach, "conditions") if one.kind in kinds
    ]
    areas.sort(key=lambda one: float(one.geometry.distance(at)))
    return tuple(area.holding(at) for area in areas)


def conditions_at(
    course: Course, hole_number: int, ball: XY, kinds: Sequence[Kind] = ABNORMAL_COURSE_CONDITIONS
) -> tuple[Feature, ...]:
    """Return the conditions that a ball lies in or touches, each by the piece it lies in."""
    return conditions_near(course, hole_number, ball, TOUCH, kinds)


def joined_across_kinds(course: Course, hole_number: int, condition: Feature) -> tuple[Feature, ...]:
    """Return a condition and what adjoins it where ground under repair and obstructions are one (Model Local Rule F-3).

    Ground under repair that adjoins a path or other obstruction is one condition with it; each comes by one piece.
    """
    ground = ground_of(course, hole_number)
    own = next((area for area in ground.conditions if condition in area.features), None)
    if own is None or condition.kind not in (*_OBSTRUCTIONS, Kind.GROUND_UNDER_REPAIR):
        return (condition,)
    wanted = _OBSTRUCTIONS if condition.kind is Kind.GROUND_UNDER_REPAIR else (Kind.GROUND_UNDER_REPAIR,)
    others = (area for area in ground.conditions if area.kind in wanted)
    return (condition, *(one.features[0] for one in others if one.geometry.dwithin(own.geometry, SEAM)))
