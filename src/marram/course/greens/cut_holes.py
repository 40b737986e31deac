"""A course with its holes where they are cut on a day: "nearer the hole" and every distance follow from there."""

from collections.abc import Mapping
from dataclasses import replace

from shapely.geometry import LineString, Point

from marram.course.feature_index import index_of
from marram.course.model import Course, Feature, Hole, Kind
from marram.course.reading.shapes import hole_numbers


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


def with_hole_at(course: Course, number: int, at: tuple[float, float]) -> Course:
    """Return a course with one hole cut at a place, also where the map has no line of play for it.

    Relief needs to know where the hole is, not how it is played. A hole that the map lacks has the green that it is cut
    in and the tees that name it; its line of play has no length, so that no fairway is its own but one that names it.

    Args:
        course: the course as mapped.
        number: the number of the hole.
        at: longitude and latitude in degrees.
    """
    place = Point(course.plane.to_metres(*at))
    known = course.holes.get(number)
    under = index_of(course, Kind.PUTTING_GREEN).near(place)
    own = [green for green in under if known is not None and green is known.green]
    green = next(iter((*own, *under)), None if known is None else known.green)
    if known is not None:
        hole = replace(known, location=place, green=green)
    else:
        line = LineString([place, place])
        hole = Hole(number, line, place, green=green, tees=_tees_named(course, number))
    return replace(course, holes=dict(sorted({**course.holes, number: hole}.items())))


def _tees_named(course: Course, number: int) -> tuple[Feature, ...]:
    tees = course.of(Kind.TEEING_AREA)
    return tuple(tee for tee in tees if number in (tee.holes or hole_numbers(tee.ref)))
