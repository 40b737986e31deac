"""Free relief from a condition: the nearest point of complete relief and the area around it.

Abnormal course conditions (Rule 16.1), a dangerous animal condition (16.2), a wrong green (13.1f) and a no
play zone (16.1f, 17.1e) all work alike; what differs is the required area of the course, the option's limits.
"""

from marram.relief.areas.complete_relief import CompleteRelief
from marram.relief.areas.construction import (
    LineMark,
    Mark,
    PointMark,
    Role,
    ShapeMark,
    measure,
    shape_marks,
)
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.constructions.around import around, limits_of
from marram.relief.constructions.spots import on_the_spot
from marram.relief.geometry.limits import Bounding, Inside, Outside
from marram.relief.geometry.outline import XY
from marram.relief.interference.interference import FootprintOn, Interference
from marram.relief.interference.line_of_play import LineOfPlayOn
from marram.relief.interference.line_of_sight import ClearOfSight, LineOfSightOn
from marram.relief.interference.nearest_point import Nearest, nearest_point
from marram.relief.place.answer import Answer, Drawn, NeedsPlace, NoRelief, Place, Why
from marram.relief.place.situation import Situation
from marram.rules.relief_option import ReliefOption, Setting


def free(situation: Situation, option: ReliefOption) -> Answer:
    """Draw the relief area at the nearest point of complete relief; at each of them where two are equally near."""
    missing = missing_places(situation)
    if missing:
        return NeedsPlace(option, missing)
    ball = situation.ball
    assert ball is not None
    found = complete_relief(situation, option)
    if found is None:
        return NoRelief(option, Why.NO_NEAREST_POINT)
    if found.metres == 0:
        return NoRelief(option, Why.NO_INTERFERENCE)
    return Drawn(option, tuple(at_point(situation, option, ball, point) for point in found.points))


def complete_relief(situation: Situation, option: ReliefOption) -> Nearest | None:
    """Return the nearest point of complete relief in the option's area of the course; ``None`` where there is none.

    Every option that depends on whether complete relief exists asks here, so that they agree.
    """
    assert situation.ball is not None
    return nearest_point(situation.ball, interferences(situation), situation.hole, domain(situation, option))


def missing_places(situation: Situation) -> tuple[Place, ...]:
    """Return what is missing to look for complete relief."""
    return tuple(
        place
        for place, is_missing in (
            (Place.BALL, situation.ball is None),
            (Place.CONDITION, not situation.conditions),
            (Place.HANDEDNESS, situation.footprint is None and situation.player.right_handed is None),
        )
        if is_missing
    )


def interferences(situation: Situation) -> tuple[Interference, ...]:
    """Return what must not interfere: lie, stance and swing, and on the green the line of play."""
    every: list[Interference] = [*_footprints_on(situation)]
    if situation.line_of_play:
        every.append(LineOfPlayOn(situation.conditions, situation.hole))
    if situation.line_of_sight:
        every.append(line_of_sight(situation))
    return tuple(every)


def _footprints_on(situation: Situation) -> tuple[FootprintOn, ...]:
    return tuple(FootprintOn(conditions, made) for made, conditions in situation.footprints)


def line_of_sight(situation: Situation) -> LineOfSightOn:
    """Return the interference with the line of sight, for the player's club."""
    return LineOfSightOn(situation.conditions, situation.hole, situation.player.club_length)


def domain(situation: Situation, option: ReliefOption) -> tuple[Bounding, ...]:
    """Return the required area of the course for the nearest point: the option's, and on the course."""
    assert situation.ball is not None
    named = limits_of(situation, option, situation.ball, situation.ball_area)
    return (*(one for one in named if isinstance(one, Inside | Outside)), *situation.ground.on_course)


def at_point(
    situation: Situation, option: ReliefOption, ball: XY, point: XY, *, complete: bool = True
) -> ReliefArea:
    """Return the relief area (or the spot) at a reference point found for a ball."""
    more: tuple[Bounding, ...] = ()
    if complete:
        more = tuple(CompleteRelief(one) for one in _footprints_on(situation))
        if situation.line_of_sight:
            more = (*more, ClearOfSight(line_of_sight(situation)))
    marks: tuple[Mark, ...] = (
        PointMark(Role.BALL, ball),
        LineMark(Role.SHIFT, ball, point),
        *shape_marks(Role.CONDITION, situation.conditions),
        *(
            ShapeMark(Role.STANCE, ring)
            for made, _ in situation.footprints[-1:]
            for ring in made.rings_at(point)
        ),
    )
    placed = option.setting is Setting.PLACE or not option.club_lengths
    role = Role.SPOT if placed else Role.REFERENCE
    measures = (measure(Role.BALL, ball, role, point),)
    if placed:
        spot = on_the_spot(situation, option, point, role)
        return spot.with_more(marks, measures)
    return around(
        situation,
        option,
        point,
        more_limits=more,
        marks=marks,
        measures=measures,
        reference_area=situation.ball_area,
    )
