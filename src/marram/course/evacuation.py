"""Where people go when play is stopped for danger: the evacuation points of a map, and the nearest one to a hole or a place.

Distances are straight lines to what is mapped. Which point is meant for which holes is the Committee's plan, read from the
map; without a plan the nearest counts. Read against the R&A's Guidance on Running a Competition, Appendix H: from lightning a
large enclosed building gives shelter, and failing that a car or van; small rain and sun shelters are to be avoided.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from shapely import shortest_line
from shapely.geometry import Point

from marram.course.feature_index import index_of
from marram.course.model import Course, Feature, Kind

NO_WAY = (
    Kind.RED_PENALTY_AREA,
    Kind.YELLOW_PENALTY_AREA,
    Kind.WATER,
    Kind.WETLAND,
    Kind.OUT_OF_BOUNDS,
    Kind.NO_PLAY_ZONE,
)
"""Ground that nobody can be expected to walk straight across."""


class Offers(Enum):
    """What waits at an evacuation point: the values of the tag ``evacuation``."""

    BUILDING = "building"
    """A large enclosed building."""
    VEHICLE = "vehicle"
    """Vehicles fetch people there."""
    SHELTER = "shelter"
    """A small or open shelter: from rain and sun, not from lightning."""


@dataclass(frozen=True, slots=True)
class WayOut:
    """An evacuation point as it is reached from a place.

    Attributes:
        point: the evacuation point.
        offers: what waits there; ``None``: the map does not say.
        metres: how far it is, in a straight line.
        planned: whether the map says that it is meant for this hole.
        crosses: the ground the straight line crosses that nobody can be expected to walk across.
    """

    point: Feature
    offers: Offers | None
    metres: float
    planned: bool
    crosses: tuple[Kind, ...]


def offered(point: Feature) -> Offers | None:
    """Return what waits at an evacuation point; ``None`` where the map says nothing, or nothing that is known."""
    said = point.tags.get("evacuation", "")
    return next((one for one in Offers if one.value == said), None)


def way_out(course: Course, place: Point, hole: int | None, *, lightning: bool) -> WayOut | None:
    """Return the evacuation point for somebody at a place: the nearest of those planned for the hole, else of all.

    Args:
        course: the map.
        place: where, in local metres.
        hole: the hole being played; ``None``: not known.
        lightning: whether there may be lightning, so that no small or open shelter is named.

    Returns:
        It, or ``None`` where the map holds none that may be named.
    """
    points = [
        one for one in course.of(Kind.EVACUATION_POINT) if not (lightning and offered(one) is Offers.SHELTER)
    ]
    planned = [one for one in points if hole is not None and hole in one.holes]
    found = min(planned or points, key=lambda one: one.geometry.distance(place), default=None)
    if found is None:
        return None
    line = shortest_line(place, found.geometry)
    crossed = {one.kind for one in index_of(course, *NO_WAY).near(line) if not one.geometry.covers(line)}
    return WayOut(
        found,
        offered(found),
        float(line.length),
        bool(planned),
        tuple(kind for kind in NO_WAY if kind in crossed),
    )


def ways_out_of_hole(course: Course, hole: int, *, lightning: bool) -> Sequence[tuple[str, WayOut]]:
    """Return the evacuation point from the tee and from the green of a hole, each with ``tee`` or ``green``.

    Raises:
        BadPlace: the map has no such hole.
    """
    line = course.hole(hole)
    ends = (("tee", Point(line.line.coords[0])), ("green", line.location))
    found = ((end, way_out(course, place, hole, lightning=lightning)) for end, place in ends)
    return [(end, one) for end, one in found if one is not None]
