"""A map written latitude first: nothing in the file is out of range, but lengths and shapes are not those of a course.

With longitude and latitude swapped a map is turned over and stretched: holes have not the lengths of their pars, and
greens and bunkers are longer from north to south than from east to west, all by as much. Either is taken as a sign, until somebody has looked (``positions=longitude_latitude``).
"""

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry import LineString

from marram.course.checks.par_by_length import recommended_pars
from marram.course.fault import FaultList
from marram.course.model import Course, Kind
from marram.said import said

Line = tuple[Sequence[tuple[float, float]], int]
"""The positions of a line of play, in degrees as written, and its par."""

FEWEST_LINES, FEWEST_SHAPES = 3, 10
"""From fewer holes, or greens and bunkers, nothing is concluded (own choice)."""

FITS_BETTER = 0.15
"""The part of the holes that must have the length of their par only when swapped (own choice)."""

STRETCH = 0.35
"""Swapped, a map is stretched by so much at least (as a logarithm: by four tenths), or shapes tell nothing (own choice)."""


def check_latitude_first(course: Course, faults: FaultList) -> None:
    """Refuse a map whose longitude and latitude look swapped throughout, unless it says that they are right.

    Every distance on such a map is wrong, and nothing else about it shows: it is not for the program to let that pass.
    """
    if course.as_written:
        return
    lines = list(_lines(course))
    by_par, by_shape = _by_par(lines), _by_shape(course)
    if not (by_par or by_shape):
        return
    plane = course.plane
    why = (
        said("its holes do not have the lengths of their pars; with longitude and latitude swapped they have")
        if by_par
        else said(
            "its greens and bunkers are all longer from north to south; with longitude and latitude swapped they are not"
        )
    )
    faults.error(
        "perhaps_swapped",
        said(
            "the course would lie at latitude {latitude:.4f}, longitude {longitude:.4f}, where {why}",
            latitude=plane.latitude,
            longitude=plane.longitude,
            why=why,
        ),
        said(
            "Look where the course is. Swap longitude and latitude (GeoJSON wants longitude first, RFC 7946); or, if the "
            "course does lie there, write positions=longitude_latitude at a feature."
        ),
        at=shapely.Point(0.0, 0.0),
    )


def _lines(course: Course) -> Iterator[Line]:
    for hole in course.holes.values():
        if hole.par is not None:
            line = course.plane.outward(LineString(hole.line.coords))
            yield [(x, y) for x, y in line.coords], hole.par


def _by_par(lines: Sequence[Line]) -> bool:
    if len(lines) < FEWEST_LINES or any(abs(x) > 90 for places, _ in lines for x, _ in places):
        return False
    here = sum(par in recommended_pars(_length(places)) for places, par in lines)
    there = sum(par in recommended_pars(_length([(y, x) for x, y in places])) for places, par in lines)
    return there - here >= max(2.0, FITS_BETTER * len(lines)) and there >= 0.9 * len(lines)


def _by_shape(course: Course) -> bool:
    """Whether greens and bunkers are longer from north to south by about what swapping stretches."""
    areas = [one.geometry for one in course.of(Kind.PUTTING_GREEN, Kind.BUNKER) if one.geometry.area > 0]
    shrunk = math.cos(math.radians(course.plane.latitude)) * math.cos(math.radians(course.plane.longitude))
    if len(areas) < FEWEST_SHAPES or shrunk <= 0 or abs(course.plane.longitude) > 90:
        return False
    stretch = -math.log(shrunk)
    west, south, east, north = shapely.bounds(areas).T
    ratios = np.log((north - south) / (east - west))
    surely = float(ratios.mean() - 2 * ratios.std() / math.sqrt(len(ratios)))
    return stretch >= STRETCH and surely > stretch / 2


def _length(places: Sequence[tuple[float, float]]) -> float:
    """Return the length of a line on a sphere of the mean radius 6,371,008.8 m (Moritz, GRS 80), enough to compare."""
    total = 0.0
    for (x, y), (to_x, to_y) in pairwise(places):
        east = math.radians(to_x - x) * math.cos(math.radians((y + to_y) / 2))
        total += 6_371_008.8 * math.hypot(east, math.radians(to_y - y))
    return total
