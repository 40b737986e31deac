"""Back on the line: the line from the hole back through a point (Rules 16.1c(2), 17.1d(2), 19.2b, 19.3).

In 2019 the player chose a reference point on the line, and the ball was dropped within one club-length of
it, not nearer the hole than it. Since 2023 the ball is dropped on the line; the spot it first touches sets
an area of one club-length in any direction, not nearer the hole than the point the line goes through.
"""

from dataclasses import replace
from itertools import pairwise
from math import hypot, inf

from marram.errors import BadPlace
from marram.relief.areas.construction import LineMark, Mark, PointMark, Role, distance, measure
from marram.relief.areas.relief_area import DropLine
from marram.relief.constructions.around import around, limits_of
from marram.relief.constructions.reach import GOES_ON, reach_from
from marram.relief.geometry.limits import Bounding, Inside, NotNearer, Outside
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import BALL_RADIUS, TOLERANCE
from marram.relief.place.answer import Answer, Drawn, NeedsPlace, NoRelief, Place, Why
from marram.relief.place.situation import Situation
from marram.rules.relief_option import Limit, Reference, ReliefOption
from marram.said import said

EXAMPLE_BEHIND = 2.0
"""Club-lengths: how far behind the point the example spot is drawn, where the line allows it."""

ON_THE_LINE = BALL_RADIUS
"""Metres: a ball dropped on the line touches it, so its spot is at most a ball's radius off it."""


def back_on_the_line(situation: Situation, option: ReliefOption) -> Answer:
    """Draw the line, and the relief area at the spot dropped on, or at an example spot."""
    if option.reference is Reference.LINE_THROUGH_CROSSING_POINT:
        if situation.entry is None:
            return NeedsPlace(option, (Place.CROSSING_POINT,))
        situation = situation.on_edge()
        through, role = situation.entry, Role.CROSSING_POINT
    else:
        through, role = situation.ball, Role.BALL
    if through is None:
        return NeedsPlace(option, (Place.BALL,))
    hole = situation.hole
    if hypot(through[0] - hole[0], through[1] - hole[1]) < TOLERANCE:
        raise BadPlace(
            said("The line from the hole needs a point away from the hole; this one is in the hole.")
        )
    line = drop_line(situation, option, through)
    if not line.stretches:
        return NoRelief(option, Why.NO_ROOM)
    spot = situation.dropped_at
    spot_role = Role.FIRST_TOUCHED if option.dropped_on_line else Role.REFERENCE
    if spot is None:
        spot = line.at(_example(line, situation.player.club_length))
        spot_role = Role.EXAMPLE_SPOT
        situation = replace(situation, assumed=(*situation.assumed, _example_words(option)))
    else:
        spot = _checked(line, spot, option)
    if line.goes_on:
        situation = replace(situation, assumed=(*situation.assumed, GOES_ON))
    line_role = Role.DROP_LINE if option.dropped_on_line else Role.REFERENCE_LINE
    marks: tuple[Mark, ...] = (
        PointMark(role, through),
        *(LineMark(line_role, line.at(start), line.at(end)) for start, end in line.stretches),
    )
    measures = (measure(role, through, spot_role, spot), measure(role, through, Role.HOLE, hole))
    area = around(situation, option, spot, spot_role, marks=marks, measures=measures)
    return Drawn(option, (replace(area, drop_line=line if option.dropped_on_line else None),))


def drop_line(situation: Situation, option: ReliefOption, through: XY) -> DropLine:
    """Return the line and the stretches of it where the option's limits allow a ball to be dropped."""
    hole = situation.hole
    bare = DropLine(hole, through, ())
    limits = (*limits_of(situation, option, through), *situation.ground.on_course)
    behind = distance(through, situation.dropped_at) if situation.dropped_at else 0.0
    far = reach_from(through, situation, limits, behind)
    reach = far.metres
    cuts = {0.0, reach}
    for limit in limits:
        if isinstance(limit, Inside | Outside):
            for outline in limit.outlines:
                cuts.update(part * reach for part, _ in outline.crossings(through, bare.at(reach)))
    stretches = _stretches(bare, sorted(cuts), limits)
    goes_on = far.goes_on and bool(stretches) and stretches[-1][1] >= reach - TOLERANCE
    return DropLine(hole, through, stretches, goes_on)


def _stretches(
    line: DropLine, cuts: list[float], limits: tuple[Bounding, ...]
) -> tuple[tuple[float, float], ...]:
    """Return the parts between cuts whose middle fulfils the limits, joined where they meet."""
    kept: list[tuple[float, float]] = []
    for start, end in pairwise(cuts):
        middle = line.at((start + end) / 2)
        if end - start < TOLERANCE or any(
            one.margin(*middle) < 0 for one in limits if not isinstance(one, NotNearer)
        ):
            continue
        if kept and kept[-1][1] == start:
            kept[-1] = (kept[-1][0], end)
        else:
            kept.append((start, end))
    return tuple(kept)


def _example(line: DropLine, club_length: float) -> float:
    """Return how far behind the point to draw the example: two club-lengths, or the nearest allowed."""
    wanted = EXAMPLE_BEHIND * club_length
    best, least = 0.0, inf
    for start, end in line.stretches:
        room = min(club_length, (end - start) / 2)
        behind = min(max(wanted, start + room), end - room)
        if abs(behind - wanted) < least:
            best, least = behind, abs(behind - wanted)
    return best


def chosen_by_dropping(line: DropLine, touched: XY) -> XY:
    """Return the reference point of 2019 where the player dropped without choosing one.

    It is the point on the line as far from the hole as where the dropped ball first touched the ground; for
    a point chosen on the line that is the point itself.
    """
    return line.at(distance(touched, line.hole) - distance(line.through, line.hole))


def _checked(line: DropLine, spot: XY, option: ReliefOption) -> XY:
    if not option.dropped_on_line:
        spot = chosen_by_dropping(line, spot)
    behind, off = line.measured(spot)
    if off > ON_THE_LINE + TOLERANCE:
        raise BadPlace(
            said(
                "That spot is {off:.2f} m off the line from the hole. The ball must be dropped on the line: "
                "choose a spot on it.",
                off=off,
            )
        )
    if behind < -TOLERANCE:
        raise BadPlace(
            said(
                "That spot is {nearer:.2f} m nearer the hole than the point on the line; go farther back.",
                nearer=-behind,
            )
        )
    # In 2019 the chosen point itself had only to be on the course; its relief area has the limits.
    if option.dropped_on_line and line.inside_by(behind) < -TOLERANCE:
        raise BadPlace(
            said(
                "That spot, {behind:.2f} m behind the point on the line, is not where this option allows a ball "
                "to be dropped. Choose a spot on the line drawn.",
                behind=behind,
            )
        )
    return spot


def _example_words(option: ReliefOption) -> str:
    return "relief.example_spot_in_bunker" if Limit.IN_BUNKER in option.limits else "relief.example_spot"
