"""The footprint of a stroke: the ground around the ball that lie, stance and swing take up.

Its dimensions are common practice, not Rule: the area of intended stance and swing is what the player would
really use for that stroke (Definitions of conditions affecting the stroke and of nearest point of complete
relief). On the ground the player takes the stance and swings; the referee sets the figures to match.
"""

from functools import lru_cache
from math import atan2, cos, pi

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.interference.shape import Footprint, Shape

USUAL_STROKE_CLUB = 0.94
"""Metres: the length of a middle iron, about 37 inches (common practice)."""
TOES_PER_CLUB_LENGTH = 0.6
"""The distance from the ball to the line of the toes, in lengths of the club used (common practice)."""
FOOT_LENGTH = 0.30
"""Metres from toe to heel of a shoe (common practice)."""
STANCE_WIDTH = 0.50
"""Metres from the outside of one shoe to the outside of the other (common practice)."""
LOW_SWING = 0.45
"""Metres behind and past the ball in which a club head is near the ground (common practice)."""
LOW_SWING_WIDTH = 0.12
"""Metres: the width of a club head, about the most allowed (5 inches, Equipment Rules, Part 2)."""
SWING_ALONG_PER_CLUB_LENGTH = 1.9
"""How far a full swing reaches along the line of play from the middle of the body, in lengths of the club
(arms and club together, seen from above; common practice)."""
SWING_ACROSS_PER_CLUB_LENGTH = 1.2
"""The same across the line of play: the plane of the swing is inclined (common practice)."""


def footprint(
    *,
    right_handed: bool,
    direction: float,
    club: float = USUAL_STROKE_CLUB,
    stance: bool = True,
    swing: bool = True,
    tall: bool = False,
) -> Footprint:
    """Return the footprint of a stroke.

    Args:
        right_handed: whether the stroke is right-handed: the player stands to the left of the ball, seen
            in the direction of play.
        direction: of play, radians anticlockwise from east.
        club: metres, the length of the club that would be used.
        stance: whether the stance counts.
        swing: whether the swing counts.
        tall: whether the condition stands up (a wall, a hut): then the whole swing counts; a path or
            ground under repair meets only the part of the swing near the ground.
    """
    shape, parts = _usual(1.0 if right_handed else -1.0, club, stance, swing, tall)
    return Footprint(shape, parts, direction)


@lru_cache(maxsize=64)
def _usual(
    side: float, club: float, stance: bool, swing: bool, tall: bool
) -> tuple[Shape, tuple[tuple[str, BaseGeometry], ...]]:
    """Return the usual footprint for play along +x; a right-handed player stands on the +y side (``side`` 1)."""
    toes = TOES_PER_CLUB_LENGTH * club
    parts: list[tuple[str, shapely.Polygon]] = [("lie", _disc(BALL_RADIUS))]
    if stance:
        heels = toes + FOOT_LENGTH
        near, far = sorted((side * toes, side * heels))
        parts.append(("stance", shapely.box(-STANCE_WIDTH / 2, near, STANCE_WIDTH / 2, far)))
    if swing:
        parts.append(("swing", _full_swing(club, side * toes) if tall else _low_swing()))
    return Shape(shapely.union_all([shape for _, shape in parts])), tuple(parts)


def facing(ball: XY, target: XY) -> float:
    """Return the direction of play from a ball to a target, radians anticlockwise from east."""
    return atan2(target[1] - ball[1], target[0] - ball[0])


def _disc(radius: float, corners: int = 16) -> shapely.Polygon:
    """Return a polygon around a circle, so that no part of a ball is left out."""
    angles = np.arange(corners) * 2 * pi / corners
    outer = radius / cos(pi / corners)
    return shapely.Polygon(np.column_stack([outer * np.cos(angles), outer * np.sin(angles)]))


def _low_swing() -> shapely.Polygon:
    half = LOW_SWING_WIDTH / 2
    return shapely.box(-LOW_SWING, -half, LOW_SWING, half)


def _full_swing(club: float, toes: float, corners: int = 24) -> shapely.Polygon:
    angles = np.arange(corners) * 2 * pi / corners
    middle = toes / 2
    oval = np.column_stack(
        [
            SWING_ALONG_PER_CLUB_LENGTH * club * np.cos(angles),
            middle + SWING_ACROSS_PER_CLUB_LENGTH * club * np.sin(angles),
        ]
    )
    return shapely.Polygon(oval)
