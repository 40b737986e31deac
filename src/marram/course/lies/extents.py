"""How much ground a mapped feature covers: its area; or the line it is drawn as, with a width."""

from collections.abc import Iterable
from dataclasses import dataclass

import shapely
from shapely.geometry import LineString
from shapely.geometry.base import BaseGeometry

from marram.course.model import THINGS, Feature, Kind
from marram.course.reading.shapes import strip, width_of

ASSUMED_WIDTHS: dict[str, float] = {
    "river": 10.0,
    "canal": 8.0,
    "derelict_canal": 8.0,
    "rapids": 10.0,
    "tidal_channel": 3.0,
    "spillway": 3.0,
    "wadi": 3.0,
    "stream": 2.0,
    "brook": 2.0,
    "ditch": 1.5,
    "drain": 1.5,
    "cartpath": 2.5,
    "track": 2.5,
    "path": 1.5,
    "footway": 1.5,
    "cycleway": 2.0,
    "steps": 1.5,
    "service": 3.0,
    "residential": 5.0,
    "living_street": 5.0,
    "unclassified": 5.0,
    "tertiary": 6.0,
    "secondary": 7.0,
    "primary": 7.0,
}
"""Metres: how wide a line is taken to be whose ``width`` the map does not know, by its ``waterway``, ``golf`` or
``highway`` (own choice, about what such things measure; every answer that rests on one says so)."""

ASSUMED_WIDTH: dict[Kind, float] = {Kind.WATER: 2.0, Kind.PATH: 2.5, **dict.fromkeys(THINGS, 0.3)}
"""Metres: the same for lines whose tags say no more than that they are water, a path or an obstruction such as a wall
(own choice)."""

ASSUMED_ACROSS = 0.5
"""Metres: how far across an obstruction is taken to be that is mapped as a point, such as a post or a manhole (own choice,
said with every answer that rests on it)."""

ROUND = 16
"""Corners in a quarter of the circle that such an obstruction is taken as."""


@dataclass(frozen=True, eq=False, slots=True)
class Extent:
    """The ground that one feature covers.

    Attributes:
        feature: the feature, as it is mapped.
        shape: the ground, polygon(s) in metres.
        middles: the lines it is drawn as; none where it is drawn as an area.
        half: half the width of those lines, metres.
    """

    feature: Feature
    shape: BaseGeometry
    middles: tuple[LineString, ...] = ()
    half: float = 0.0


def assumed_width(feature: Feature) -> float | None:
    """Return the width that is assumed for a feature drawn as a line or point without one, metres; ``None`` for any other.

    A coastline has no width: it is the edge of the sea.
    """
    if _is_spot(feature):
        return ASSUMED_ACROSS if width_of(feature) is None else None
    if (
        not _is_line(feature.geometry)
        or feature.kind not in ASSUMED_WIDTH
        or feature.tags.get("natural") == "coastline"
    ):
        return None
    said = (feature.tags.get(key, "") for key in ("waterway", "golf", "highway"))
    known = (ASSUMED_WIDTHS[value] for value in said if value in ASSUMED_WIDTHS)
    return next(known, ASSUMED_WIDTH[feature.kind])


def extents(features: Iterable[Feature]) -> tuple[Extent, ...]:
    """Return the ground that features cover; what has no width covers none and is left out, such as a tree."""
    found = []
    for feature in features:
        width = assumed_width(feature)
        if _is_spot(feature):
            half = (width or width_of(feature) or 0.0) / 2
            found.append(Extent(feature, shapely.buffer(feature.geometry, half, quad_segs=ROUND)))
        elif width is not None:
            middles, half = _lines(feature.geometry), width / 2
            found.append(Extent(feature, strip(feature.geometry, half), middles, half))
        elif feature.geometry.area > 0:
            middles = () if feature.middle is None else _lines(feature.middle)
            half = (width_of(feature) or 0.0) / 2
            found.append(Extent(feature, feature.geometry, middles, half))
    return tuple(found)


def _is_spot(feature: Feature) -> bool:
    """Whether a feature is a small obstruction mapped as a point; how large a building is nobody can tell from one."""
    tags = feature.tags
    small = feature.kind in THINGS and "building" not in tags and tags.get("golf") != "clubhouse"
    return small and feature.geometry.geom_type in {"Point", "MultiPoint"}


def _is_line(geometry: BaseGeometry) -> bool:
    return geometry.geom_type in {"LineString", "MultiLineString", "LinearRing"}


def _lines(geometry: BaseGeometry) -> tuple[LineString, ...]:
    return tuple(part for part in shapely.get_parts(geometry) if isinstance(part, LineString))
