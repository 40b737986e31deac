"""Whether the ground at a place is as it is told: asked of the map as a case is, and of what lies near."""

import shapely
from shapely import Point

from marram.course.lies.tolerance import TOUCH
from marram.course.model import Course, Feature, Hole, Kind
from marram.relief.geometry.outline import XY
from marram.relief.place.abnormal_course_conditions import conditions_near
from marram.relief.place.ground import ground_of
from marram.rules.facts.ball import Area
from marram.services.cases.conditions import Conditions
from marram.services.ground.interference import CONDITION, NO_PLAY_ZONE, WRONG_GREEN, Interfering, interfering
from marram.services.ground.lies import Lie
from marram.services.ground.relief import NEAR
from marram.teach.drawings.candidates import BESIDE, towards
from marram.teach.drawings.grounds import KINDS_IN_THE_WAY, Grounds

_CLEAR = 0.15
"""Metres: the ball is drawn at least this far from an edge that would change the area it lies in."""
_PAST_THE_TEE = 40.0
"""Metres: a ball off the tee is drawn no nearer to the start of the hole (own choice)."""


def may_be(area: Area | None, grounds: Grounds) -> bool:
    """Whether a place lies where the ball is told to lie, before anything else is looked at."""
    if area is None or grounds.out_of_bounds:
        return (area is None) is grounds.out_of_bounds
    if grounds.area:
        return area.value == grounds.area
    return bool(grounds.kinds) or area is Area.GENERAL_AREA


def _asked_about(grounds: Grounds) -> str:
    if "wrong_green_interference" in grounds.facts:
        return WRONG_GREEN
    return NO_PLAY_ZONE if "no_play_zone_interference" in grounds.facts else CONDITION


def met_at(
    course: Course, hole: Hole, ball: XY, conditions: Conditions, grounds: Grounds
) -> tuple[Interfering, ...]:
    """Return what of the kind told of interferes with a ball at a place."""
    return interfering(course, hole.number, ball, _asked_about(grounds), conditions=conditions)


def agrees(  # noqa: PLR0917 - a place, and all that is known of it
    course: Course, hole: Hole, ball: XY, grounds: Grounds, lie: Lie, met: tuple[Interfering, ...]
) -> bool:
    """Whether the map says of a place all that is told of the ground, without a doubt, and nothing beside it that matters."""
    place = lie.place
    if place is None or not may_be(place.area, grounds) or len(met) > 1:
        return False
    on_tee = place.area is Area.TEEING_AREA  # where the markers stand, the map never knows
    if (place.doubts or place.area_open) and not on_tee:
        return False
    facts = {**place.facts, **(met[0].facts if met else {})}
    if met and not any("interfer" in name for name in grounds.facts):
        return False  # something would interfere that nobody told of
    told = dict(grounds.facts)
    if told.get("interference") == "line_of_play" and not met and _on_line(course, hole, ball):
        told.pop("interference")
        told.pop("in_the_way", None)
    if on_tee:
        told.pop("area_of_ball", None)
    for name in ("interference", "wrong_green_interference", "no_play_zone_interference"):
        if told.get(name) == "none" and not met:
            del told[name]
    if told.get("dropping_zone_provided") == "no" and "dropping_zone_provided" not in facts:
        del told["dropping_zone_provided"]
    if "in_the_way" in told and not met and _near_kind(course, hole, ball, told["in_the_way"]):
        del told["in_the_way"]
    if "nearest_point_exists" in told and "nearest_point_exists" not in facts:
        del told["nearest_point_exists"]  # then tried by drawing the relief
    if any(facts.get(name) != answer for name, answer in told.items()):
        return False
    if grounds.fairway is not None and grounds.fairway is not _on_fairway(course, ball):
        return False
    clear = grounds.at_the_hole or _away_from_edges(course, hole, ball) >= _CLEAR
    return clear and lie.place is not None and _on_its_way(hole, ball, lie.place.area)


def _near_kind(course: Course, hole: Hole, ball: XY, what: str) -> bool:
    return bool(conditions_near(course, hole.number, ball, NEAR, KINDS_IN_THE_WAY[what]))


def _on_line(course: Course, hole: Hole, ball: XY) -> Feature | None:
    """Return the condition that lies on the line of play near the ball, where there is one."""
    line = shapely.LineString([ball, towards(ball, (hole.location.x, hole.location.y), NEAR)])
    near = conditions_near(course, hole.number, ball, NEAR)
    return next((one for one in near if one.geometry.intersects(line)), None)


def _on_fairway(course: Course, ball: XY) -> bool:
    return any(one.geometry.dwithin(Point(ball), TOUCH) for one in course.of(Kind.FAIRWAY))


def _away_from_edges(course: Course, hole: Hole, ball: XY) -> float:
    lies = ground_of(course, hole.number).lies
    at = Point(ball)
    edges = [region.shape.boundary.distance(at) for region in lies.specific if not region.shape.is_empty]
    return min(edges, default=float("inf"))


def _on_its_way(hole: Hole, ball: XY, area: Area | None) -> bool:
    """Whether a ball lies where one comes to lie on this hole: past the tee, not beyond the green, not by another hole."""
    if area in {Area.TEEING_AREA, Area.PUTTING_GREEN}:
        return True
    if hole.line.distance(Point(ball)) > BESIDE:
        return False
    past = hole.line.project(Point(ball))
    return past > _PAST_THE_TEE and hole.location.distance(Point(ball)) < hole.line.length
