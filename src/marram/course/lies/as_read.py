"""What the ground of each kind looks like: water and lines as they are read, everything else as it is mapped."""

from collections.abc import Iterator
from dataclasses import replace

from shapely.geometry.base import BaseGeometry

from marram.course.lies.coast import around, is_coastline
from marram.course.lies.extents import Extent, extents
from marram.course.lies.water import counts_as_penalty_area, unmarked_water
from marram.course.model import THINGS, Course, Feature, Kind

SEA_SHOWN = 300.0
"""Metres: how far beyond the rest of the map the sea is shown (own choice)."""

LINES = (Kind.PATH, *THINGS)
"""Kinds that a map may draw as lines without a width."""


def as_read(course: Course, *kinds: Kind) -> Iterator[tuple[Feature, BaseGeometry]]:
    """Yield each feature of some kinds with the ground it is read to cover, in metres, kind by kind.

    Water that is not marked comes with its width, and the sea as an area near the rest of the map; what a marked penalty area covers of a water is
    that area's, so it does not come again.
    """
    yield from ((piece.feature, piece.shape) for piece in pieces_as_read(course, *kinds))


def pieces_as_read(course: Course, *kinds: Kind) -> Iterator[Extent]:
    """Yield the same as pieces of ground, which know the line that a feature is drawn as."""
    for kind in kinds:
        if kind is Kind.WATER:
            for piece in unmarked_water(course):
                sea = is_coastline(piece.feature)
                shown = piece.shape & around(course, SEA_SHOWN) if sea else piece.shape
                yield replace(piece, shape=shown)
            yield from (_as_mapped(one) for one in course.of(kind) if not counts_as_penalty_area(one))
        elif kind in LINES:
            wide = {id(piece.feature): piece for piece in extents(course.of(kind))}
            yield from (wide.get(id(one)) or _as_mapped(one) for one in course.of(kind))
        else:
            yield from map(_as_mapped, course.of(kind))


def _as_mapped(feature: Feature) -> Extent:
    return Extent(feature, feature.geometry)
