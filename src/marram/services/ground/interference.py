"""Which condition of the map interferes with a ball, and how: by the incident, the place and the player's hand.

A ball on another hole's green, feet on a path, a stand before the hole: what the map can see is found without being
asked for. What rests on a usual stance and swing is a premise; the official may say otherwise.
"""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from shapely import Point

from marram.course.model import ABNORMAL_COURSE_CONDITIONS, Course, Feature, Kind
from marram.relief.geometry.outline import XY
from marram.relief.interference.line_of_sight import LineOfSightOn
from marram.relief.place.abnormal_course_conditions import conditions_near
from marram.relief.place.ground import ground_of
from marram.relief.place.situation import Situation, Stroke
from marram.relief.what_interferes import Met, interference_facts, what_is_met
from marram.services.cases.conditions import Conditions

WRONG_GREEN = "wrong_green"
NO_PLAY_ZONE = "no_play_zone"
CONDITION = "abnormal_course_condition"
STAND = "temporary_immovable_obstruction"

WALL = "wall"
"""Asked instead of an incident: walls and fences of which nobody has said what they are."""

REACH = 3.0
"""Metres: no usual stance or swing reaches farther from the ball (a full swing with a driver reaches about 2.2 m)."""


@dataclass(frozen=True)
class Interfering:
    """A condition that interferes.

    Attributes:
        feature: the condition.
        met: what it interferes with.
        facts: the same as facts for the Rules, with whether complete relief exists where that is asked.
    """

    feature: Feature
    met: Met
    facts: Mapping[str, str]


def near_conditions(
    course: Course, hole_number: int, ball: XY, what: str | None, reach: float
) -> tuple[Feature, ...]:
    """Return what is asked about near a ball, the nearest first: wrong greens, no play zones, walls, or conditions.

    Each stands for all that is joined with it, by its piece nearest to the ball.
    """
    if what == WRONG_GREEN:
        at = Point(ball)
        greens = list(ground_of(course, hole_number).lies.within(at, reach, "wrong_greens"))
        greens.sort(key=lambda one: float(one.geometry.distance(at)))
        return tuple(green.holding(at) for green in greens)
    if what == WALL:
        at = Point(ball)
        walls = [
            one
            for one in ground_of(course, hole_number).lies.within(at, reach, "unsettled")
            if one.kind is Kind.BARRIER
        ]
        return tuple(
            wall.holding(at) for wall in sorted(walls, key=lambda one: float(one.geometry.distance(at)))
        )
    kinds = (Kind.NO_PLAY_ZONE,) if what == NO_PLAY_ZONE else ABNORMAL_COURSE_CONDITIONS
    return conditions_near(course, hole_number, ball, reach, kinds)


def interfering(
    course: Course,
    hole_number: int,
    ball: XY,
    what: str | None,
    *,
    conditions: Conditions,
    tall: bool | None = None,
) -> tuple[Interfering, ...]:
    """Return the conditions that interfere with a ball, the nearest first.

    Without the player's hand only those that the ball touches are known.
    """
    if conditions.former:
        return ()
    stroke = stroke_of(what, conditions, tall)
    found = []
    for feature in near_conditions(course, hole_number, ball, what, REACH):
        situation = Situation(
            course,
            hole_number,
            played_on=conditions.on,
            player=conditions.player(),
            ball=ball,
            condition=feature,
            stroke=stroke,
        )
        met = what_is_met(situation)
        if met is not None and met.anything:
            found.append(Interfering(feature, met, interference_facts(situation)))
    return tuple(found)


def stroke_of(what: str | None, conditions: Conditions, tall: bool | None = None) -> Stroke:
    """Return what counts of the stroke: where Model Local Rule D-3 is in force, at a wrong green not the stance."""
    without_stance = what == WRONG_GREEN and "D-3" in (conditions.local or ())
    return Stroke(stance_counts=not without_stance, tall=tall)


def in_line_of_sight(
    course: Course, hole_number: int, ball: XY, conditions: Conditions
) -> tuple[Feature, ...]:
    """Return the obstructions of the map between a ball and the hole, or within a club-length beside that line (F-23)."""
    ground = ground_of(course, hole_number)
    player = conditions.player()
    hidden = []
    for one in course.of(Kind.OBSTRUCTION):
        if one.geometry.geom_type in {"Polygon", "MultiPolygon"}:
            sight = LineOfSightOn((ground.outline(one),), ground.location, player.club_length)
            if sight.blocked(np.array([ball]))[0]:
                hidden.append(one)
    hidden.sort(key=lambda one: one.geometry.distance(Point(ball)))
    return tuple(hidden)
