"""The point of maximum available relief (Rules 16.1c(1) and 16.1d(2)).

Where no point of complete relief exists in the bunker (or on the green and in the general area), the
reference point is the nearest place, not nearer the hole, where the condition interferes least. The Rules
leave the comparison of lie, stance and swing to judgement: shallow water under the ball may be less
interference than deep water under the feet, and a map knows no depth. What is drawn here is a proposal: the
least sum of the shares of lie, stance and swing that lie on the condition, found on a grid to a centimetre.
"""

from dataclasses import replace
from math import hypot

import numpy as np
import shapely
from numpy.typing import NDArray

from marram.relief.constructions.free import at_point, complete_relief, domain, missing_places
from marram.relief.geometry.corners import Floats
from marram.relief.geometry.limits import Bounding, Inside, Outside
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import TOLERANCE
from marram.relief.place.answer import Answer, Drawn, NeedsPlace, NoRelief, Why
from marram.relief.place.situation import Situation
from marram.rules.relief_option import ReliefOption

GRID_STEPS = (0.25, 0.05, 0.01)
"""Metres: the grids searched one after the other, each around the best places of the one before."""
WITHIN = 15.0
"""Metres around the ball that are searched."""
EQUAL_SHARE = 0.01
"""Sums of shares that differ by less than this count as the same interference; then the nearest decides."""


def maximum_available(situation: Situation, option: ReliefOption) -> Answer:
    """Draw the relief area at a proposed point of maximum available relief."""
    missing = missing_places(situation)
    if missing:
        return NeedsPlace(option, missing)
    ball = situation.ball
    assert ball is not None
    limits = domain(situation, option)
    complete = complete_relief(situation, option)
    if complete is not None:
        return NoRelief(option, Why.COMPLETE_RELIEF_AVAILABLE if complete.metres else Why.NO_INTERFERENCE)
    point = _least_interference(situation, ball, limits)
    said = replace(situation, assumed=(*situation.assumed, "relief.maximum_compared_by_area"))
    return Drawn(option, (at_point(said, option, ball, point, complete=False),))


def _least_interference(situation: Situation, ball: XY, limits: tuple[Bounding, ...]) -> XY:
    # Where the ball lies interference may be least already; a ball that only touches the sand is in the bunker.
    places = np.vstack([ball, _allowed(_grid(ball, WITHIN, GRID_STEPS[0]), ball, situation.hole, limits)])
    best = np.array(ball)
    for step, finer in zip(GRID_STEPS, (*GRID_STEPS[1:], None), strict=True):
        best = _best(places, _shares(situation, places), ball)
        if finer is not None:
            around = _grid((float(best[0]), float(best[1])), 1.5 * step, finer)
            places = np.vstack([best[None], _allowed(around, ball, situation.hole, limits)])
    return float(best[0]), float(best[1])


def _best(places: Floats, shares: Floats, ball: XY) -> Floats:
    alike = places[shares <= shares.min() + EQUAL_SHARE]
    away = np.hypot(alike[:, 0] - ball[0], alike[:, 1] - ball[1])
    nearest: Floats = alike[int(np.argmin(away))]
    return nearest


def _shares(situation: Situation, places: Floats) -> Floats:
    """Return for each place the sum of the shares of lie, stance and swing that lie on the condition."""
    total = np.zeros(len(places))
    for footprint, outlines in situation.footprints:
        conditions = shapely.union_all([one.geometry for one in outlines])
        shapely.prepare(conditions)
        for _, drawn in footprint.parts or (("all", footprint.shape.area),):
            part = footprint.turned(drawn)
            points = shapely.get_coordinates(part)
            placed = np.asarray(shapely.polygons(places[:, None, :] + points[None, :, :]), dtype=object)
            covered = shapely.contains(conditions, placed)
            partly = np.flatnonzero(shapely.intersects(conditions, placed) & ~covered)
            total += covered
            total[partly] += shapely.area(shapely.intersection(placed[partly], conditions)) / part.area
    return total


def _grid(middle: XY, half: float, step: float) -> Floats:
    count = round(half / step)
    along = np.arange(-count, count + 1) * step
    x, y = np.meshgrid(middle[0] + along, middle[1] + along)
    return np.column_stack([x.ravel(), y.ravel()])


def _allowed(places: Floats, ball: XY, hole: XY, limits: tuple[Bounding, ...]) -> Floats:
    least = hypot(ball[0] - hole[0], ball[1] - hole[1])
    x, y = places.T
    kept: NDArray[np.bool_] = np.hypot(x - hole[0], y - hole[1]) >= least - TOLERANCE
    for limit in limits:
        if isinstance(limit, Inside | Outside):
            near = [one.geometry for one in limit.outlines.near(*ball, 2 * WITHIN)]
            held = np.zeros(len(places), dtype=bool)
            for shape in near:
                held |= shapely.contains_xy(shape, x, y)
            kept &= held if isinstance(limit, Inside) else ~held
    chosen: Floats = places[kept]
    return chosen
