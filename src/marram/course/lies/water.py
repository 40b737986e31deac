"""Water that the map does not mark is a penalty area all the same, red where no colour is given.

The Definition of penalty area names any body of water on the course, whether or not the Committee marked it: sea,
lakes, ponds, rivers, ditches, open watercourses, also when dry. The Committee can say on the map that a water is none
(``penalty_area=no``: a basin that is an obstruction, a covered drain).
"""

from collections.abc import Iterable

import shapely
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from marram.course.lies.coast import is_coastline, seas
from marram.course.lies.extents import Extent, extents
from marram.course.model import Course, Feature, Kind
from marram.course.scheme import meaning

LOOSELY_DRAWN = 1.0
"""Metres: a strip of water along a marked edge that is narrower than this is loose drawing, not another water; where
the edge is marked, the marking decides (own choice)."""

MARKED = (Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)


def unmarked_water(course: Course) -> tuple[Extent, ...]:
    """Return the ground of all water that lies in no mapped penalty area; it is worked out once for a map."""
    if unmarked_water not in course.kept:
        course.kept[unmarked_water] = _unmarked_water(course)
    found: tuple[Extent, ...] = course.kept[unmarked_water]
    return found


def counts_as_penalty_area(feature: Feature) -> bool:
    """Whether a mapped water is a penalty area where none is marked: unless the map says that it is none."""
    return feature.kind is Kind.WATER and feature.tags.get("penalty_area") != "no"


def colour_of(feature: Feature) -> Kind:
    """Return the kind of penalty area that unmarked water is: yellow only where its own tags say so."""
    return meaning(feature.tags) if meaning(feature.tags) in MARKED else Kind.RED_PENALTY_AREA  # type: ignore[return-value]


def beyond_penalty_areas(course: Course, grounds: Iterable[Extent]) -> tuple[Extent, ...]:
    """Return the parts of some grounds that lie in no penalty area, marked or not."""
    areas = [piece.shape for piece in (*extents(course.of(*MARKED)), *unmarked_water(course))]
    return _rests(grounds, areas)


def _rests(grounds: Iterable[Extent], areas: list[BaseGeometry]) -> tuple[Extent, ...]:
    tree = STRtree(areas)
    rests = (_beyond(one, [areas[i] for i in tree.query(one.shape, "intersects")]) for one in grounds)
    return tuple(rest for rest in rests if rest is not None)


def _unmarked_water(course: Course) -> tuple[Extent, ...]:
    waters = [feature for feature in course.of(Kind.WATER) if counts_as_penalty_area(feature)]
    inland = extents(feature for feature in waters if not is_coastline(feature))
    every = (*inland, *seas(course, [feature for feature in waters if is_coastline(feature)]))
    return _rests(every, [piece.shape for piece in extents(course.of(*MARKED))])


def _beyond(water: Extent, marked: list[BaseGeometry]) -> Extent | None:
    """Return the part of a water that lies in none of some marked penalty areas, or ``None`` where it all does."""
    if not marked:
        return water
    rest = shapely.difference(water.shape, shapely.union_all(marked))
    parts = [
        part
        for part in shapely.get_parts(rest)
        if part.geom_type == "Polygon" and not shapely.buffer(part, -LOOSELY_DRAWN / 2).is_empty
    ]
    if not parts:
        return None
    return Extent(water.feature, parts[0] if len(parts) == 1 else shapely.multipolygons(parts))
