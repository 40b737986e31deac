"""What lies here? The hole being played, the area of the course, and what the map cannot know."""

from collections.abc import Mapping
from dataclasses import dataclass

from shapely import Point

from marram.course.lies.doubts import DoubtKind
from marram.course.lies.regions import TOUCHABLE
from marram.course.model import Course, Hole
from marram.relief.geometry.outline import XY
from marram.relief.place.abnormal_course_conditions import conditions_at
from marram.relief.place.place_facts import TAP_ACCURACY, PlaceFacts, place_facts
from marram.rules.facts.lost import all_of_ball_out_of_bounds
from marram.services.cases.places import Degrees, Places


@dataclass(frozen=True)
class Lie:
    """Where a ball lies.

    Attributes:
        hole: the hole being played, if known.
        place: what the map knows of the place of the ball; ``None`` where it was not shown.
    """

    hole: Hole | None
    place: PlaceFacts | None

    @property
    def premises(self) -> Mapping[str, str]:
        """Facts that hold unless the map lacks something, as written in an address; the official may say otherwise."""
        if self.place is None or DoubtKind.NO_BOUNDARY not in self.place.lacks:
            return {}
        return {all_of_ball_out_of_bounds.name: "no"}


def what_lies_here(course: Course, hole_number: int | None, places: Places) -> Lie:
    """Return the hole being played, and what the map knows of the place of the ball.

    Args:
        course: the map.
        hole_number: the hole being played; ``None``: the one whose line of play is nearest to the ball.
        places: the places shown; the ball's is looked at, with its accuracy (else that of a tap).

    Raises:
        BadPlace: the course has no such hole, or the place is nowhere near it.
    """
    hole = hole_played(course, hole_number, places.at.get("ball"))
    if hole is None or "ball" not in places.at:
        return Lie(hole, None)
    ball, accuracy = to_plane(course, places.at["ball"]), places.accuracy.get("ball", TAP_ACCURACY)
    return Lie(hole, place_facts(course, hole, ball, accuracy=accuracy))


def hole_played(course: Course, number: int | None, ball: Degrees | None) -> Hole | None:
    """Return the hole being played: the one given, else that whose line of play is nearest to the ball, if the map has any.

    Raises:
        BadPlace: the course has no such hole.
    """
    if number is not None:
        return course.hole(number)
    if ball is None:
        return None
    place = Point(to_plane(course, ball))
    return min(course.holes.values(), key=lambda hole: hole.line.distance(place), default=None)


def to_plane(course: Course, at: Degrees) -> XY:
    """Return a place given as latitude and longitude in the local metres of the course."""
    return course.plane.to_metres(at[1], at[0])


def in_condition(course: Course, hole: Hole, ball: XY) -> bool:
    """Whether a ball lies in an abnormal course condition or no play zone of the map."""
    return bool(conditions_at(course, hole.number, ball, TOUCHABLE))
