"""What speaks against cutting a hole at a place, in the words of the published guidance, each with its figure."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import Enum

import numpy as np
from shapely.geometry import Point

from marram.course.greens.green_frame import PACE, GreenFrame
from marram.course.greens.hole_locations import FROM_EDGE, FROM_RECENT, FROM_SEVERE_SLOPE
from marram.course.greens.slope import GreenSlopes, in_percent
from marram.course.model import Hole
from marram.said import said


class Against(Enum):
    """What speaks against a hole location."""

    OFF_GREEN = "off_green"
    NEAR_EDGE = "near_edge"
    NEAR_RECENT = "near_recent"
    STEEP = "steep"
    """Steeper than recommended: marginal."""
    TOO_STEEP = "too_steep"
    NEAR_SEVERE_SLOPE = "near_severe_slope"


@dataclass(frozen=True, slots=True)
class RecentHole:
    """A hole location used before.

    Attributes:
        place: where it was, in local metres.
        day: when, or ``None`` when that is not known.
    """

    place: Point
    day: date | None = None


@dataclass(frozen=True, slots=True)
class HoleWarning:
    """One thing against a hole location.

    Attributes:
        kind: what it is.
        words: the same for people, with its measure and the figure it is held against.
    """

    kind: Against
    words: str


def hole_warnings(
    hole: Hole, place: Point, *, recent: Sequence[RecentHole] = (), slopes: GreenSlopes | None = None
) -> list[HoleWarning]:
    """Return what speaks against cutting the hole at a place; nothing where all is well.

    Args:
        hole: the hole.
        place: where it would be cut, in local metres.
        recent: where it was cut before.
        slopes: the ground of the greens, or ``None`` where nothing is known of it.

    Raises:
        BadPlace: the green of the hole is not mapped.
    """
    frame = GreenFrame.of(hole)
    here = np.array([[place.x, place.y]])
    from_edge = float(frame.from_edge(here)[0])
    if from_edge < 0:
        return [
            HoleWarning(Against.OFF_GREEN, said("It is {metres:.1f} m off the green.", metres=-from_edge))
        ]
    found: list[HoleWarning] = []
    if from_edge < FROM_EDGE:
        words = said(
            "It is {paces} paces from the edge of the green; at least four are recommended.",
            paces=_under(from_edge / PACE),
        )
        found.append(HoleWarning(Against.NEAR_EDGE, words))
    for used in recent:
        apart = used.place.distance(place)
        if apart < FROM_RECENT:
            when = said(" of {day}", day=used.day.isoformat()) if used.day else ""
            words = said(
                "It is {paces} paces from the hole{when}; at least three are recommended.",
                paces=_under(apart / PACE),
                when=when,
            )
            found.append(HoleWarning(Against.NEAR_RECENT, words))
    if slopes is not None and hole.number in slopes.surfaces:
        found += _of_slope(hole.number, place, slopes)
    return found


def _of_slope(hole: int, place: Point, slopes: GreenSlopes) -> list[HoleWarning]:
    limits = slopes.limits
    speed = (
        said("at a green speed of {feet:g} feet", feet=limits.green_speed)
        if limits.green_speed
        else said("on the fastest greens")
    )
    slope = slopes.surfaces[hole].at(place)
    if slope is not None and slope.percent > limits.critical:
        words = said(
            "The ground around it falls {percent} %; more than {limit} % is too steep {speed}.",
            percent=_over(slope.percent, limits.critical),
            limit=in_percent(limits.critical),
            speed=speed,
        )
        return [HoleWarning(Against.TOO_STEEP, words)]
    found: list[HoleWarning] = []
    if slope is not None and slope.percent > limits.recommended:
        words = said(
            "The ground around it falls {percent} %; at most {limit} % is recommended {speed}.",
            percent=_over(slope.percent, limits.recommended),
            limit=in_percent(limits.recommended),
            speed=speed,
        )
        found.append(HoleWarning(Against.STEEP, words))
    apart = float(slopes.from_severe(hole, np.array([[place.x, place.y]]))[0])
    if apart < FROM_SEVERE_SLOPE:
        words = said(
            "It is {paces} paces from ground steeper than {limit} %; at least three are recommended.",
            paces=_under(apart / PACE),
            limit=in_percent(limits.critical),
        )
        found.append(HoleWarning(Against.NEAR_SEVERE_SLOPE, words))
    return found


def _under(paces: float) -> str:
    """Return a distance that is too small, rounded down, so that 3.98 paces do not read as four."""
    return f"{math.floor(paces * 10 + 1e-6) / 10:.1f}"


def _over(percent: float, limit: float) -> str:
    """Return a slope beyond a limit, rounded up where rounding would bring it down to the limit."""
    near = round(percent, 1)
    return f"{near if near > limit else math.ceil(percent * 100) / 100:g}"
