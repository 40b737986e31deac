"""From the tee: the previous stroke of many a ball that is lost or out of bounds, offered as one tap."""

from marram.course.model import Course, Hole, Kind
from marram.services.cases.places import Degrees

AT_THE_LINE = 60.0
"""Metres between the start of a line of play and a teeing area of its hole (own choice: the tees of one hole lie in a row)."""


def tee_of(course: Course, hole: Hole) -> Degrees | None:
    """Return a place on the teeing area that a hole is played from: the one nearest to the start of its line of play.

    Which of its teeing areas is in use a map does not know; the official moves the place where it is another.

    Returns:
        Latitude and longitude; ``None`` where the map has no teeing area near the start.
    """
    start = hole.line.interpolate(0)
    tees = [one for one in course.of(Kind.TEEING_AREA) if not one.holes or hole.number in one.holes]
    near = min(tees, key=lambda one: one.geometry.distance(start), default=None)
    if near is None or near.geometry.distance(start) > AT_THE_LINE:
        return None
    inside = start if near.geometry.covers(start) else near.geometry.representative_point()
    longitude, latitude = course.plane.to_degrees(inside.x, inside.y)
    return round(latitude, 7), round(longitude, 7)


__all__ = ["tee_of"]
