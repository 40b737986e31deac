"""A course with its holes where they are cut on a day: "nearer the hole" and every distance follow from there."""

from collections.abc import Mapping
from dataclasses import replace

from shapely.geometry import Point

from marram.course.model import Course


def with_holes_cut(course: Course, places: Mapping[int, tuple[float, float]]) -> Course:
    """Return a course whose holes are cut at other places; the map is otherwise the same.

    Args:
        course: the course as mapped.
        places: longitude and latitude in degrees where holes are cut, by hole; others stay as mapped. Holes that
            the map does not have are left out: a map of another day may have had them.
    """
    cut = {
        number: Point(course.plane.to_metres(*at)) for number, at in places.items() if number in course.holes
    }
    if not cut:
        return course
    holes = {
        number: replace(hole, location=cut[number]) if number in cut else hole
        for number, hole in course.holes.items()
    }
    return replace(course, holes=holes)
