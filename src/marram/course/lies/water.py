"""Water that the map does not mark is a penalty area all the same, red where no colour is given.

The Definition of penalty area names any body of water on the course, whether or not the Committee marked it: sea,
lakes, ponds, rivers, ditches, open watercourses, also when dry. The Committee can say on the map that a water is none
(``penalty_area=no``: a basin that is an obstruction, a covered drain).
"""

import math
from collections import defaultdict
from collections.abc import Iterable, Sequence

import shapely
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from marram.course.feature_index import as_array
from marram.course.lies.coast import is_coastline, seas
from marram.course.lies.extents import Extent, extents
from marram.course.model import Course, Feature, Kind
from marram.course.near_pairs import near_pairs
from marram.course.near_parts import parts_near
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
    found = meaning(feature.tags)
    if found is Kind.RED_PENALTY_AREA or found is Kind.YELLOW_PENALTY_AREA:
        return found
    return Kind.YELLOW_PENALTY_AREA if feature.tags.get("colour") == "yellow" else Kind.RED_PENALTY_AREA


def beyond_penalty_areas(course: Course, grounds: Iterable[Extent]) -> tuple[Extent, ...]:
    """Return the parts of some grounds that lie in no penalty area, marked or not."""
    areas = [piece.shape for piece in (*extents(course.of(*MARKED)), *unmarked_water(course))]
    return _rests(grounds, areas)


def _rests(grounds: Iterable[Extent], areas: Sequence[BaseGeometry]) -> tuple[Extent, ...]:
    every = tuple(grounds)
    shapes, marked = as_array(one.shape for one in every), as_array(areas)
    which, found = near_pairs(STRtree(marked), shapes)
    parts = parts_near(marked[found], shapes[which], LOOSELY_DRAWN)
    near: dict[int, list[BaseGeometry]] = defaultdict(list)
    for one, part in zip(which.tolist(), parts, strict=True):
        near[one].append(part)
    rests = (_beyond(one, near.get(number, [])) for number, one in enumerate(every))
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
    parts = [part for part in shapely.get_parts(rest) if part.geom_type == "Polygon" and _wide(part)]
    if not parts:
        return None
    return Extent(water.feature, parts[0] if len(parts) == 1 else shapely.multipolygons(parts))


def _wide(part: BaseGeometry) -> bool:
    """Whether a polygon is anywhere as wide as what is not loosely drawn."""
    near = LOOSELY_DRAWN / 2
    # All places so near an edge fill a strip along each edge and, at each corner, no more than half a disc.
    strips = part.length * near + shapely.get_num_coordinates(part) * math.pi * near**2 / 2
    return bool(part.area > strips) or not shapely.buffer(part, -near).is_empty
