"""Where the flagstick stands, as an official shows it for a hole that the map has no line of play for.

What the map cannot know is asked once: a case says it beside the number of its hole, and all of its incidents are ruled
on with the hole cut there.
"""

from marram.course.greens.cut_holes import with_hole_at
from marram.course.model import Course
from marram.errors import BadPlace
from marram.said import said
from marram.services.cases.address import Address
from marram.services.cases.case import Case

ROUND = 18
"""Holes of a round (Rule 5.1)."""


def course_of(course: Course, case: Case | Address) -> Course:
    """Return the course with the hole of a case cut where its flagstick stands, if the case says so.

    Raises:
        BadPlace: no hole has such a number.
    """
    flag, hole = case.flag, case.hole
    if flag is None or hole is None:
        return course
    if hole < 1:
        raise BadPlace(said("hole: {number} is no hole; holes are numbered from 1.", number=hole))
    latitude, longitude = flag if isinstance(flag, tuple) else (flag.latitude, flag.longitude)
    return with_hole_at(course, hole, (longitude, latitude))


def flag_missing(course: Course, case: Address) -> bool:
    """Whether the case is on a hole that the map lacks, and nobody has shown where its flagstick stands.

    A round is of 18 holes or fewer (Rule 5.1): of a map that has holes, a hole beyond those and its own is no lack of it.
    """
    hole = case.hole
    if hole is None or hole < 1 or hole in course.holes:
        return False
    return not course.holes or hole <= max(ROUND, *course.holes)
