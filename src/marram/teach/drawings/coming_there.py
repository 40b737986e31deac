"""How a ball came to its place: where it was played from, where it crossed an edge, where another lies."""

from random import Random

import shapely
from shapely import Point

from marram.course.model import Course, Hole, Kind
from marram.relief.geometry.outline import XY
from marram.relief.place.ground import Ground, ground_of
from marram.rules.facts.ball import Area
from marram.teach.drawings.candidates import behind, towards
from marram.teach.drawings.grounds import Grounds

_STROKE = (110.0, 190.0)
"""Metres: how long the stroke before is taken to have been (own choice)."""
_STEP = 0.25
"""Metres: how closely the way of a ball is looked at for the edges it crosses."""
_COLOURS = {"red": Kind.RED_PENALTY_AREA, "yellow": Kind.YELLOW_PENALTY_AREA}


def places_of(
    course: Course,
    hole: Hole,
    ball: XY,
    grounds: Grounds,
    lot: Random,
    *,
    needs_provisional: bool,
    needs_previous: bool,
) -> dict[str, XY] | None:
    """Return where the ball was played from and how it came there; ``None`` where the ground does not allow what is told."""
    ground = ground_of(course, hole.number)
    if not grounds.previous and ground.area_at(ball) is Area.TEEING_AREA and not needs_previous:
        return {}  # on the tee nothing was played before
    away = lot.uniform(*_STROKE)
    before = behind(hole, ball, away)
    found: dict[str, XY] = {}
    if grounds.previous == Area.PUTTING_GREEN.value:
        before = (hole.location.x, hole.location.y)
    elif grounds.previous == Area.TEEING_AREA.value:
        before = behind(hole, ball, float("inf"))
    elif grounds.previous == Area.PENALTY_AREA.value:
        inside = _in_penalty_area_behind(course, hole, ball, grounds.previous_colour)
        if inside is None:
            return None
        before = inside
        found["outside"] = behind(hole, before, away)
        crossed = _crossing(ground, found["outside"], before)
        if crossed is None:
            return None
        found["entry"] = crossed
    wanted = {
        Area.PUTTING_GREEN.value: {Area.PUTTING_GREEN},
        Area.TEEING_AREA.value: {Area.TEEING_AREA},
        Area.PENALTY_AREA.value: {Area.PENALTY_AREA},
        "elsewhere": {Area.GENERAL_AREA, Area.BUNKER},
    }.get(grounds.previous, {Area.GENERAL_AREA, Area.BUNKER, Area.TEEING_AREA})
    if ground.area_at(before) not in wanted:
        return None
    found["previous"] = before
    crossed = _crossing(ground, before, ball)
    if grounds.out_of_bounds:
        if crossed is None:
            return None
        found["boundary"] = crossed
    elif ground.area_at(ball) is Area.PENALTY_AREA and "entry" not in found:
        if crossed is None:
            return None
        found["entry"] = crossed
    if needs_provisional:
        provisional = _beside(ground, hole, ball, lot)
        if provisional is None:
            return None
        found["provisional"] = provisional
    return found


def _beside(ground: Ground, hole: Hole, ball: XY, lot: Random) -> XY | None:
    """Return a place in the general area about as far as the ball: where a provisional ball came to rest."""
    for _ in range(12):
        middle = behind(hole, ball, lot.uniform(5.0, 30.0))
        place = (middle[0] + lot.uniform(-8.0, 8.0), middle[1] + lot.uniform(-8.0, 8.0))
        if ground.area_at(place) is Area.GENERAL_AREA:
            return place
    return None


def _in_penalty_area_behind(course: Course, hole: Hole, ball: XY, colour: str) -> XY | None:
    """Return a place in a penalty area of the hole, no nearer the hole than the ball."""
    ground = ground_of(course, hole.number)
    far = hole.location.distance(Point(ball))
    for area, outline in ground.penalty_areas:
        if colour and area.kind is not _COLOURS[colour]:
            continue
        near = shapely.shortest_line(outline.geometry, Point(ball))
        edge = near.coords[0]
        inside = outline.geometry.representative_point()
        for metres in (1.0, 2.0, 4.0):
            place = towards((edge[0], edge[1]), (inside.x, inside.y), metres)
            apart = hole.location.distance(Point(place))
            if ground.area_at(place) is Area.PENALTY_AREA and apart >= far and near.length < _STROKE[1]:
                return place
    return None


def _crossing(ground: Ground, start: XY, end: XY) -> XY | None:
    """Return where the straight way from one place to another last comes into the area that its end lies in."""
    area_at = ground.area_at
    here = area_at(end)
    far = Point(start).distance(Point(end))
    inside, outside = 0.0, None
    for number in range(1, int(far / _STEP) + 1):
        if area_at(towards(end, start, number * _STEP)) is not here:
            outside = number * _STEP
            break
        inside = number * _STEP
    if outside is None:
        return None
    for _ in range(20):
        middle = (inside + outside) / 2
        if area_at(towards(end, start, middle)) is here:
            inside = middle
        else:
            outside = middle
    return towards(end, start, (inside + outside) / 2)
