"""The ground that lie, stance and swing usually take up, where an answer does not draw it.

Common practice, not Rule, and more than enough: a place clear for this is clear for less. The ball is played
straight at the hole with a middle iron; the whole swing counts.
"""

import numpy as np
import shapely

MIDDLE_IRON = 0.94
"""Metres."""


def usual_stance(ball, hole, *, right_handed, tall):
    """Return lie, stance and swing about a ball at (0, 0), turned towards the hole."""
    side = 1.0 if right_handed else -1.0
    toes = 0.6 * MIDDLE_IRON
    feet = shapely.box(
        -0.26,
        *sorted((side * toes, side * (toes + 0.31)))[:1],
        0.26,
        sorted((side * toes, side * (toes + 0.31)))[1],
    )
    angles = np.linspace(0, 2 * np.pi, 33)[:-1]
    reach = 1.95 * MIDDLE_IRON if tall else 0.46
    across = 1.25 * MIDDLE_IRON if tall else 0.065
    middle = side * toes / 2 if tall else 0.0
    swing = shapely.Polygon(np.column_stack([reach * np.cos(angles), middle + across * np.sin(angles)]))
    if not tall:
        swing = shapely.box(-reach, -across, reach, across)
    whole = shapely.union_all([feet, swing])
    towards = np.arctan2(*(hole - ball)[::-1])
    turn = np.array([[np.cos(towards), np.sin(towards)], [-np.sin(towards), np.cos(towards)]])
    return shapely.transform(whole, lambda points: points @ turn)
