"""The place of a case on the map: which hole, and where in local metres."""

from shapely import Point

from marram.course.model import Course, Hole
from marram.desk.rulings.address_places import Degrees
from marram.desk.rulings.case_address import CaseAddress
from marram.relief.place.place_facts import XY


def to_plane(course: Course, at: Degrees) -> XY:
    """Return a place of an address in the local metres of the course."""
    return course.plane.to_metres(at[1], at[0])


def nearest_hole(course: Course, xy: XY) -> Hole:
    """Return the hole whose line of play is nearest."""
    return min(course.holes.values(), key=lambda hole: hole.line.distance(Point(xy)))


def chosen_hole(course: Course, case: CaseAddress) -> Hole | None:
    """Return the hole of a case: the one chosen, else the nearest to the ball.

    Raises:
        BadPlace: the course has no such hole.
    """
    if case.hole is not None:
        return course.hole(case.hole)
    if "ball" in case.places:
        return nearest_hole(course, to_plane(course, case.places["ball"]))
    return None
