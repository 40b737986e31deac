"""Distances on the course: to the hole, between balls, in club-lengths.

Distances are taken in the local plane. Against the geodesic on the WGS 84 ellipsoid they are off by no more
than 1 mm in 2 km anywhere within 2 km of the middle of a course (tested against geographiclib).
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from shapely.geometry import Point

from marram.course.lies.tolerance import EDGE_TOLERANCE
from marram.course.model import Course
from marram.errors import BadPlace
from marram.said import said

Place = Point | tuple[float, float]
"""A place in local metres."""


def distance_to_hole(course: Course, place: Place, hole: int) -> float:
    """Return the distance in metres from a place to where the hole is cut.

    Raises:
        BadPlace: the map has no such hole.
    """
    return course.hole(hole).location.distance(_point(place))


@dataclass(frozen=True, slots=True)
class Order:
    """Which of two or more balls is farthest from the hole.

    Attributes:
        distances: of each ball, metres, in the order given.
        farthest: the index of the ball farthest away, or ``None`` when the accuracy leaves it open.
        margin: by how much it is farther than the next, metres.
    """

    distances: tuple[float, ...]
    farthest: int | None
    margin: float


def farthest_from_hole(course: Course, places: Sequence[Place], hole: int, *, accuracy: float = 0.0) -> Order:
    """Return which ball is farthest from the hole (order of play, Rule 6.4b(1)).

    Args:
        course: the map.
        places: of the balls, in local metres; at least two.
        hole: the hole being played.
        accuracy: how far off each place may be, metres. Two balls whose distances differ by no more than twice
            this are left open: measure on the ground, or as Rule 6.4 says for balls at the same distance.

    Raises:
        BadPlace: the map has no such hole, or fewer than two places are given.
    """
    if len(places) < 2:
        raise BadPlace(said("Give at least two balls to tell which is farther from the hole."))
    distances = tuple(distance_to_hole(course, place, hole) for place in places)
    first, second = sorted(range(len(distances)), key=lambda i: -distances[i])[:2]
    margin = distances[first] - distances[second]
    return Order(distances, first if margin > max(2 * accuracy, EDGE_TOLERANCE) else None, margin)


def is_nearer_hole(course: Course, place: Place, than: Place, hole: int) -> bool:
    """Whether a place is nearer the hole than another; a place as near, within the tolerance, is not."""
    return distance_to_hole(course, place, hole) < distance_to_hole(course, than, hole) - EDGE_TOLERANCE


def within_club_lengths(place: Place, reference: Place, club_lengths: float, club: float) -> bool:
    """Whether a place is within so many club-lengths of a reference point; on the limit counts as within.

    Args:
        place: in local metres.
        reference: in local metres.
        club_lengths: how many.
        club: the length of the player's longest club other than the putter, metres (Definition of club-length).

    Raises:
        BadPlace: the number or the length is not positive.
    """
    if not (club_lengths > 0 and club > 0 and math.isfinite(club_lengths * club)):
        raise BadPlace(
            said(
                "{club_lengths:g} club-lengths of {club:g} m are no distance; give positive numbers.",
                club_lengths=club_lengths,
                club=club,
            )
        )
    return _point(place).distance(_point(reference)) <= club_lengths * club + EDGE_TOLERANCE


def in_club_lengths(distance: float, club: float) -> float:
    """Return a distance in metres as a number of club-lengths.

    Args:
        distance: in metres.
        club: the length of the player's longest club other than the putter, metres.

    Raises:
        BadPlace: the length is not positive.
    """
    if not club > 0:
        raise BadPlace(said("A club of {club:g} m has no length; give a positive number.", club=club))
    return distance / club


def _point(place: Place) -> Point:
    point = place if isinstance(place, Point) else Point(place)
    if not (math.isfinite(point.x) and math.isfinite(point.y)):
        raise BadPlace(said("A place has two finite coordinates in metres."))
    return point
