"""Propose hole locations, and say what a hole cut at a place would be: its numbers, the slope, what speaks against it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any
from weakref import WeakKeyDictionary

from shapely.geometry import Point

from marram.course.greens.elevation import Elevations, read_elevations
from marram.course.greens.green_frame import GreenFrame, SheetNumbers
from marram.course.greens.hole_locations import Proposal, propose
from marram.course.greens.hole_warnings import HoleWarning, RecentHole, hole_warnings
from marram.course.greens.slope import GreenSlopes, Slope, slope_limits
from marram.course.model import Course
from marram.errors import BadPlace

Recent = Mapping[int, Sequence[RecentHole]]
"""Where each hole was cut before, by its number."""

MOST_PROPOSALS = 50
"""How many proposals are held ready for one map (own choice)."""

MOST_SPEEDS = 8
"""For how many green speeds the slopes of one map are held ready (own choice)."""

_ELEVATIONS: WeakKeyDictionary[Course, tuple[Any, Elevations]] = WeakKeyDictionary()
_SLOPES: WeakKeyDictionary[Course, dict[float | None, GreenSlopes]] = WeakKeyDictionary()
_PROPOSALS: WeakKeyDictionary[Course, dict[Any, Proposal]] = WeakKeyDictionary()


@dataclass(frozen=True)
class HoleLook:
    """What a hole cut at a place is.

    Attributes:
        hole: its number.
        place: where, in local metres.
        longitude: the same in degrees east.
        latitude: the same in degrees north.
        numbers: what the sheet says of it; ``None`` where the place is not on the green.
        slope: how the ground falls around it; ``None`` where that is not known.
        warnings: what speaks against it.
    """

    hole: int
    place: Point
    longitude: float
    latitude: float
    numbers: SheetNumbers | None
    slope: Slope | None
    warnings: tuple[HoleWarning, ...]


def green_slopes(
    course: Course, files: Sequence[Path], crs: str | None = None, green_speed: float | None = None
) -> GreenSlopes | None:
    """Return the ground of the greens, read once for each map; ``None`` where no elevations are given.

    Args:
        course: the map.
        files: files with elevations; see ``docs/course-map.md``.
        crs: their coordinate system, where they are not in degrees.
        green_speed: feet on the Stimpmeter; ``None``: the fastest greens, and said.

    Raises:
        InputError: a file, the coordinate system or the green speed cannot be used.
    """
    if not files:
        return None
    limits = slope_limits(green_speed)
    source = (tuple(files), crs)
    known = _ELEVATIONS.get(course)
    if known is None or known[0] != source:
        known = _ELEVATIONS[course] = source, read_elevations(course, files, crs)
        _SLOPES.pop(course, None)
    kept = _SLOPES.setdefault(course, {})
    slopes = kept.get(green_speed)
    if slopes is None:
        if len(kept) >= MOST_SPEEDS:
            kept.pop(next(iter(kept)), None)
        slopes = kept[green_speed] = GreenSlopes(course, known[1], limits)
    return slopes


def propose_holes(course: Course, recent: Recent, seed: int, slopes: GreenSlopes | None) -> Proposal:
    """Return balanced locations that keep away from recent ones and from steep ground; the same seed, the same answer."""
    places = {hole: [one.place for one in used] for hole, used in recent.items()}
    used = tuple((hole, place.x, place.y) for hole, some in places.items() for place in some)
    key = (seed, slopes.limits if slopes else None, used)
    kept = _PROPOSALS.setdefault(course, {})
    if key not in kept:
        if len(kept) >= MOST_PROPOSALS:
            kept.pop(next(iter(kept)))
        kept[key] = propose(course, recent=places, seed=seed, slopes=slopes)
    return kept[key]


def look_at_hole(
    course: Course, hole: int, place: Point, *, recent: Sequence[RecentHole] = (), slopes: GreenSlopes | None
) -> HoleLook:
    """Return what a hole cut at a place is, in numbers, slope and warnings.

    Args:
        course: the map.
        hole: the number of the hole.
        place: where it would be cut, in local metres.
        recent: where it was cut before.
        slopes: the ground of the greens, or ``None`` where nothing is known of it.

    Raises:
        BadPlace: the course has no such hole, or its green is not mapped.
    """
    found = course.hole(hole)
    longitude, latitude = course.plane.to_degrees(place.x, place.y)
    warnings = hole_warnings(found, place, recent=recent, slopes=slopes)
    try:
        numbers = GreenFrame.of(found).numbers(place)
    except BadPlace:
        numbers = None
    ground = slopes.surfaces.get(hole) if slopes else None
    slope = ground.at(place) if ground else None
    return HoleLook(hole, place, round(longitude, 8), round(latitude, 8), numbers, slope, tuple(warnings))
