"""The alternative to stroke and distance between two reference points (Model Local Rule E-5).

The ball reference point is where the ball is estimated to lie or to have last crossed the boundary. The
fairway reference point is the point of the fairway of the hole being played that is nearest to it but not
nearer the hole than it; "fairway" is grass in the general area cut to fairway height or less, so a bunker,
a penalty area or a green that a map draws over by a fairway is none. The relief area lies anywhere between the lines from the hole through the two
points, and up to two club-lengths to the outside of each; in the general area, and not nearer the hole
than the ball reference point. The text is the same in the 2019 and 2023 editions.
"""

from dataclasses import replace
from math import hypot

import numpy as np
import shapely

from marram.errors import BadPlace
from marram.relief.areas.construction import LineMark, Mark, PointMark, Role, distance, measure
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.constructions.around import limits_of
from marram.relief.constructions.reach import GOES_ON, reach_from
from marram.relief.geometry.limits import HalfPlane
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.tolerance import BALL_RADIUS, ROUNDING, TOLERANCE
from marram.relief.place.answer import Answer, Drawn, NeedsPlace, NoRelief, Place, Why
from marram.relief.place.situation import Situation
from marram.rules.relief_option import ReliefOption
from marram.said import said

SAID_FROM = 0.01
"""Metres: a place moved by less counts as not moved."""
OFF_THE_EDGE = 25.0
"""Metres: how far from the boundary the place where a ball crossed it may be given; it is then moved onto the
boundary and said (a choice of ours)."""


def two_points(situation: Situation, option: ReliefOption) -> Answer:
    """Draw the area between the two lines from the hole."""
    ground, hole = situation.ground, situation.hole
    found = _ball_reference(situation)
    missing = [
        *((found,) if isinstance(found, Place) else ()),
        *(() if ground.fairways else (Place.FAIRWAY,)),
    ]
    if isinstance(found, Place) or missing:
        return NeedsPlace(option, tuple(missing))
    role, ball, told = found
    assumed = (*situation.assumed, *told)
    fairway = _nearest_on(ground.short_grass, ball, hole)
    if fairway is None:
        # Short of the fairway a teeing area of the hole will do, if cut to fairway height or less.
        fairway = _nearest_on(ground.short_tees, ball, hole)
        assumed = (*assumed, "relief.teeing_area_used_as_fairway")
    if fairway is None:
        return NoRelief(option, Why.NO_FAIRWAY_POINT)
    width = (option.club_lengths or 2) * situation.player.club_length
    edges = corridor(hole, ball, fairway, width)
    limits = (*edges, *limits_of(situation, option, ball), *ground.on_course)
    start = distance(hole, ball)
    reach = reach_from(hole, situation, limits, start)
    lines = (
        _edge_line(edges[0], _unit(hole, ball), start, reach.metres),
        _edge_line(edges[1], _unit(hole, fairway), start, reach.metres),
    )
    marks: tuple[Mark, ...] = (
        PointMark(Role.HOLE, hole),
        LineMark(Role.LINE_TO_HOLE, ball, hole),
        LineMark(Role.LINE_TO_HOLE, fairway, hole),
        *lines,
        PointMark(role, ball),
        PointMark(Role.FAIRWAY_POINT, fairway),
    )
    area = ReliefArea(
        option=option,
        reference=ball,
        radius=None,
        club_length=situation.player.club_length,
        limits=limits,
        construction=marks,
        measures=(
            measure(role, ball, Role.FAIRWAY_POINT, fairway),
            measure(role, ball, Role.HOLE, hole),
            measure(Role.FAIRWAY_POINT, fairway, Role.HOLE, hole),
        ),
        hole=hole,
        start=_box_about(hole, reach.metres),
        area_of=ground.area_at,
        assumed=assumed,
    )
    if reach.goes_on and area.polygon.intersects(_box_about(hole, reach.metres).exterior):
        area = replace(area, assumed=(*assumed, GOES_ON))
    return Drawn(option, (area,))


def _ball_reference(situation: Situation) -> tuple[Role, XY, tuple[str, ...]] | Place:
    """Return the ball reference point with what was moved, or the place that has to be given first.

    For a ball out of bounds it is where the ball last crossed the edge of the course, not where it lies.
    """
    ground, ball, crossed = situation.ground, situation.ball, situation.boundary_point
    if crossed is not None and (ball is None or ground.area_at(ball, BALL_RADIUS) is None):
        edges = [outline for _, outline in (*ground.boundary, *ground.out_of_bounds)]
        points = [one.nearest_on_edge(*crossed) for one in edges]
        on_edge = min(points, key=lambda one: distance(one, crossed), default=crossed)
        moved = distance(on_edge, crossed)
        if moved > OFF_THE_EDGE:
            raise BadPlace(
                said(
                    "The place ({x:.2f}, {y:.2f}) where the ball crossed the boundary lies "
                    "{moved:.0f} m from every boundary on the map. Mark where it crossed.",
                    x=crossed[0],
                    y=crossed[1],
                    moved=moved,
                )
            )
        told = ("relief.boundary_point_moved_onto_edge",) if moved >= SAID_FROM else ()
        return Role.BOUNDARY_POINT, on_edge, told
    if ball is None:
        return Place.BALL
    if ground.area_at(ball, BALL_RADIUS) is None:
        return Place.BOUNDARY_POINT
    return Role.BALL, ball, ()


def _nearest_on(grass: Outline | None, ball: XY, hole: XY) -> XY | None:
    return None if grass is None else nearest_not_nearer([grass], ball, hole)


def corridor(hole: XY, ball: XY, fairway: XY, width: float) -> tuple[HalfPlane, HalfPlane, HalfPlane]:
    """Return the two outer edges, each ``width`` to the outside of its line, and the side away from the hole.

    Where both points lie on one line from the hole, the area is as wide on either side of it.
    """
    to_ball, to_fairway = _unit(hole, ball), _unit(hole, fairway)
    turn = to_ball[0] * to_fairway[1] - to_ball[1] * to_fairway[0]
    side = 1.0 if turn >= 0 else -1.0
    # The fairway line lies to the left of the ball line when side is 1: outside is then to the right of the ball's.
    beyond_ball = (side * to_ball[1], -side * to_ball[0])
    beyond_fairway = (-side * to_fairway[1], side * to_fairway[0])
    middle = (to_ball[0] + to_fairway[0], to_ball[1] + to_fairway[1])
    length = hypot(*middle) or 1.0
    return (
        HalfPlane((hole[0] + width * beyond_ball[0], hole[1] + width * beyond_ball[1]), beyond_ball),
        HalfPlane((hole[0] + width * beyond_fairway[0], hole[1] + width * beyond_fairway[1]), beyond_fairway),
        HalfPlane(hole, (-middle[0] / length, -middle[1] / length)),
    )


def nearest_not_nearer(areas: list[Outline], ball: XY, hole: XY) -> XY | None:
    """Return the point of some areas nearest to a ball, of those not nearer the hole than it.

    It is the ball itself, or the foot of a perpendicular on an edge, or where an edge meets the circle
    about the hole through the ball: the distance has no other minimum there.
    """
    least = distance(ball, hole)
    best: tuple[float, XY] | None = None
    for area in areas:
        if area.depth(*ball) >= 0:
            return ball
        for point in _candidates(area, ball, hole, least):
            away = distance(ball, point)
            if best is None or away < best[0]:
                best = (away, point)
    return best[1] if best else None


def _candidates(area: Outline, ball: XY, hole: XY, least: float) -> list[XY]:
    from_x, from_y, to_x, to_y = area.edges.T
    along_x, along_y = to_x - from_x, to_y - from_y
    length = along_x**2 + along_y**2
    part = np.clip(((ball[0] - from_x) * along_x + (ball[1] - from_y) * along_y) / length, 0.0, 1.0)
    parts = [part]
    half = ((from_x - hole[0]) * along_x + (from_y - hole[1]) * along_y) / length
    rest = ((from_x - hole[0]) ** 2 + (from_y - hole[1]) ** 2 - least**2) / length
    root = np.sqrt(np.maximum(half**2 - rest, 0.0))
    parts += [np.where(half**2 >= rest, -half + sign * root, -1.0) for sign in (-1.0, 1.0)]
    found = []
    for one in parts:
        x, y = from_x + one * along_x, from_y + one * along_y
        allowed = (one >= 0) & (one <= 1) & (np.hypot(x - hole[0], y - hole[1]) >= least - ROUNDING)
        if allowed.any():
            index = int(np.argmin(np.where(allowed, np.hypot(x - ball[0], y - ball[1]), np.inf)))
            found.append((float(x[index]), float(y[index])))
    return found


def _unit(start: XY, end: XY) -> XY:
    x, y = end[0] - start[0], end[1] - start[1]
    length = max(hypot(x, y), TOLERANCE)
    return x / length, y / length


def _edge_line(edge: HalfPlane, towards: XY, start: float, end: float) -> LineMark:
    """Draw an edge of the corridor, from and to so many metres from the hole along it."""
    return LineMark(
        Role.CORRIDOR_EDGE,
        (edge.at[0] + start * towards[0], edge.at[1] + start * towards[1]),
        (edge.at[0] + end * towards[0], edge.at[1] + end * towards[1]),
    )


def _box_about(hole: XY, reach: float) -> shapely.Polygon:
    return shapely.box(hole[0] - reach, hole[1] - reach, hole[0] + reach, hole[1] + reach)
