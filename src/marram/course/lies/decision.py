"""Deciding where a ball lies from its distances to the edges, in the order of Rule 2.2c."""

import math
from dataclasses import dataclass

from shapely.geometry import Point

from marram.course.lies.regions import TOUCH, Ground, HoleGround, Region
from marram.course.model import Feature, Kind


@dataclass(slots=True)
class Answer:
    """What was decided, and the nearest edge behind which it would be decided otherwise.

    Attributes:
        ground: what the ball lies in.
        feature: the area that decided it, or ``None`` in the general area.
        edge_distance: how far the ball must move for another answer, metres; infinite where it never changes.
        edge: the feature whose edge that is, or ``None``.
    """

    ground: Ground = Ground.GENERAL_AREA
    feature: Feature | None = None
    edge_distance: float = math.inf
    edge: Feature | None = None

    def consider(self, region: Region, distance: float, place: Point) -> None:
        """Take in an edge at which the ball begins or ceases to touch a region."""
        if distance < self.edge_distance:
            self.edge_distance, self.edge = distance, region.edge_near(place)


def decide(ground: HoleGround, place: Point) -> Answer:
    """Return what a ball lies in whose centre is at a place.

    Only edges that come before the answer in the order of Rule 2.2c, and the edge of the answer itself, can
    change it: a bunker's edge inside a penalty area does not count.
    """
    answer = Answer()
    if _is_out(ground, place, answer):
        return answer
    for region in ground.specific:
        in_penalty_area = answer.ground is Ground.RED_PENALTY_AREA
        if in_penalty_area and region.ground is not Ground.YELLOW_PENALTY_AREA:
            break
        distance = region.signed_distance(place)
        answer.consider(region, abs(distance - TOUCH), place)
        if distance <= TOUCH:
            answer.ground = Ground.PENALTY_AREA_OF_TWO_COLOURS if in_penalty_area else region.ground
            answer.feature = answer.feature or region.holding(place)
            if region.ground is not Ground.RED_PENALTY_AREA:
                break
    return answer


def _is_out(ground: HoleGround, place: Point, answer: Answer) -> bool:
    """Whether all of the ball is out of bounds: whether it touches nothing that is in bounds (Rule 18.2a)."""
    if ground.in_bounds is not None:
        region, distance = ground.in_bounds, ground.in_bounds.signed_distance(place)
    elif ground.out_of_bounds is not None:
        region, distance = ground.out_of_bounds, -ground.out_of_bounds.signed_distance(place)
    else:
        return False
    answer.consider(region, abs(distance - TOUCH), place)
    if distance <= TOUCH:
        return False
    fences = [f for f in region.features if f.kind is Kind.OUT_OF_BOUNDS and f.geometry.distance(place) == 0]
    answer.ground, answer.feature = Ground.OUT_OF_BOUNDS, fences[0] if fences else region.edge_near(place)
    return True
