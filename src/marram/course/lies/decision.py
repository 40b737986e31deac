"""Deciding where a ball lies from its distances to the edges, in the order of Rule 2.2c.

Areas reach up and down: a ball on a bridge over a penalty area is in it (Definition of penalty area).
"""

import math
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry import Point

from marram.course.lies.regions import Ground, HoleGround, Region
from marram.course.lies.tolerance import TOUCH
from marram.course.model import Feature, Kind

Grounds = NDArray[np.int8]
"""Members of :class:`Ground`, one for each ball."""


class Decider:
    """Decides by distance which ground each of many balls touches first in the order of Rule 2.2c."""

    def __init__(self, ground: HoleGround) -> None:
        self._ground = ground
        areas = [(region.ground, area.geometry) for region in ground.specific for area in region.areas]
        # Large areas come in their separate polygons, so that a place is looked up in the near ones only.
        parts = [(which, part) for which, shape in areas for part in shapely.get_parts(shape)]
        self._grounds = np.array([int(which) for which, _ in parts], dtype=np.int8)
        self._shapes = np.array([shape for _, shape in parts], dtype=object)
        shapely.prepare(self._shapes)
        west, south, east, north = shapely.bounds(self._shapes).reshape(-1, 4).T
        self._boxes = STRtree(shapely.box(west - TOUCH, south - TOUCH, east + TOUCH, north + TOUCH))
        out = ground.fences if ground.in_bounds is None else None
        self._fence = None if out is None else (out.shape, shapely.boundary(out.shape))

    def decide(self, points: NDArray[np.object_], reach: float = TOUCH) -> Grounds:
        """Return what balls lie in.

        Args:
            points: the centres of the balls, as shapely points.
            reach: how far from its centre a ball touches an area, metres, at most :data:`TOUCH`; a place is a ball of
                hardly any size.
        """
        answers = np.full(len(points), Ground.GENERAL_AREA, dtype=np.int8)
        ball, area = self._boxes.query(points)
        # Whether the centre is inside is cheap to tell; the distance is needed only where it is not.
        touches = np.asarray(shapely.intersects(self._shapes[area], points[ball]))
        outside = np.flatnonzero(~touches)
        touches[outside] = shapely.dwithin(self._shapes[area[outside]], points[ball[outside]], reach)
        ball, area = ball[touches], area[touches]
        touched = self._grounds[area]
        np.minimum.at(answers, ball, touched)
        yellow = ball[touched == Ground.YELLOW_PENALTY_AREA]
        answers[yellow[answers[yellow] == Ground.RED_PENALTY_AREA]] = Ground.PENALTY_AREA_OF_TWO_COLOURS
        answers[self._out(points, reach)] = Ground.OUT_OF_BOUNDS
        return answers

    def _out(self, points: NDArray[np.object_], reach: float) -> NDArray[np.bool_]:
        """Whether all of each ball is out of bounds: whether it touches nothing that is in bounds (Rule 18.2a)."""
        if self._ground.in_bounds is not None:
            return ~shapely.dwithin(self._ground.in_bounds.shape, points, reach)
        if self._fence is not None:
            shape, edge = self._fence
            return shapely.intersects(shape, points) & ~shapely.dwithin(edge, points, reach)
        return np.zeros(len(points), dtype=np.bool_)


def points_at(places: NDArray[np.float64]) -> NDArray[np.object_]:
    """Return places, of shape (n, 2), as shapely points."""
    return np.asarray(shapely.points(places), dtype=object)


def decider(ground: HoleGround) -> Decider:
    """Return what decides where many balls lie on a hole; it is made once."""
    if "decider" not in ground.kept:
        ground.kept["decider"] = Decider(ground)
    found: Decider = ground.kept["decider"]
    return found


@dataclass(slots=True)
class Answer:
    """What was decided, and the nearest edge behind which it would be decided otherwise.

    Attributes:
        ground: what the ball lies in.
        feature: the area that decided it, or ``None`` in the general area.
        edge_distance: how far the ball must move for another answer, metres; infinite where it never changes.
        edge: the feature whose edge that is, or ``None``.
    """

    ground: Ground
    feature: Feature | None = None
    edge_distance: float = math.inf
    edge: Feature | None = None


def decide(ground: HoleGround, place: Point) -> Answer:
    """Return what a ball lies in whose centre is at a place.

    Only edges that come before the answer in the order of Rule 2.2c, and the edge of the answer itself, can
    change it: a bunker's edge inside a penalty area does not count.
    """
    answer = Answer(Ground(int(decider(ground).decide(np.array([place]))[0])))
    # In a red penalty area a yellow one can still make it one of two colours.
    red = answer.ground is Ground.RED_PENALTY_AREA
    last = Ground.YELLOW_PENALTY_AREA if red else answer.ground
    nearest: Region | None = None
    for region in (*_bounds(ground), *(one for one in ground.specific if one.ground <= last)):
        distance = region.signed_distance(place)
        if region is ground.fences:
            distance = -distance
        if abs(distance - TOUCH) < answer.edge_distance:
            answer.edge_distance, nearest = abs(distance - TOUCH), region
        decides = distance <= TOUCH and region.ground is not Ground.OUT_OF_BOUNDS
        if decides and answer.feature is None:
            answer.feature = region.holding(place)
    if nearest is not None:
        answer.edge = nearest.edge_near(place)
    if answer.ground is Ground.OUT_OF_BOUNDS:
        answer.feature = _fence(ground, place) or answer.edge
    return answer


def _bounds(ground: HoleGround) -> tuple[Region, ...]:
    bounds = ground.in_bounds or ground.fences
    return () if bounds is None else (bounds,)


def _fence(ground: HoleGround, place: Point) -> Feature | None:
    """Return the area out of bounds that a place lies in, if it lies in one."""
    if ground.fences is None or not shapely.intersects(ground.fences.shape, place):
        return None
    found = ground.fences.holding(place)
    return found if found.kind is Kind.OUT_OF_BOUNDS else None
