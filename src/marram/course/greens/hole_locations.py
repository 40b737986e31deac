"""Proposing where to cut the holes for a round: balanced, clear of the edges and of recent holes.

Published guidance (The R&A, *Guidance on Running a Competition*, hole positions): generally at least four
paces from any edge, more where a bunker is close; not within three paces of a recently used hole; a balanced
selection over the course of left, right, front and back, and of difficulty: six holes quite difficult, six
moderate, six relatively easy; over nine holes about four left, four right and one in the middle.

The guidance also asks for two to three feet of level ground around the hole and three paces from a severe slope.
A map knows nothing of slope: where elevations of the greens are given (:mod:`marram.course.greens.slope`), places that are
too steep are refused and steep ones taken only where a green has no other; else it is looked at on the green.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from random import Random

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import Point

from marram.course.feature_index import FeatureIndex, index_of
from marram.course.greens.green_frame import PACE, GreenFrame, SheetNumbers, Side
from marram.course.greens.slope import GreenSlopes, Slope, in_percent, slopes_told
from marram.course.model import Course, Hole, Kind
from marram.said import said

FROM_EDGE = 4 * PACE
"""Least distance from any edge of the green, metres: four paces (The R&A's guidance)."""

FROM_RECENT = 3 * PACE
"""Least distance from a recently used hole, metres: three paces (The R&A's guidance)."""

FROM_SEVERE_SLOPE = 3 * PACE
"""Least distance from a slope that is no place for a hole, metres: three paces (The R&A's guidance)."""

SPACING = PACE
"""Distance between the places tried, metres (own choice)."""

TROUBLE = (Kind.BUNKER, Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)
"""What makes a hole near it more difficult."""

SWEEPS = 50
"""Most rounds of exchange before the balance is taken as it is; a few are enough (own choice)."""


class Depth(Enum):
    """How deep in the green a hole is cut."""

    FRONT = "front"
    MIDDLE = "middle"
    BACK = "back"


class Difficulty(Enum):
    """How difficult a hole location is for its green."""

    HARD = "hard"
    MODERATE = "moderate"
    EASY = "easy"


@dataclass(frozen=True, slots=True)
class HoleLocation:
    """One proposed hole location.

    Attributes:
        hole: the number of the hole.
        place: where to cut it, in local metres.
        side: in which third of the usable green it lies, across the line of play.
        depth: in which third it lies, along the line of play.
        difficulty: by how little room there is to the edge and to bunkers and penalty areas, among the places
            that this green offers: the tightest third is hard.
        numbers: for the hole location sheet.
        slope: of the ground around it, or ``None`` where that is not known.
    """

    hole: int
    place: Point
    side: Side
    depth: Depth
    difficulty: Difficulty
    numbers: SheetNumbers
    slope: Slope | None = None


@dataclass(frozen=True, slots=True)
class Proposal:
    """Hole locations for a round.

    Attributes:
        locations: one for each green that offers a place, by hole.
        without: why the other holes have none, by hole.
        slope_unknown: the holes on whose location slope was not considered, because it is not known there.
    """

    locations: Mapping[int, HoleLocation]
    without: Mapping[int, str]
    slope_unknown: tuple[int, ...] = ()


def propose(
    course: Course,
    *,
    recent: Mapping[int, Sequence[Point]] | None = None,
    from_edge: float = FROM_EDGE,
    from_recent: float = FROM_RECENT,
    seed: int = 0,
    slopes: GreenSlopes | None = None,
) -> Proposal:
    """Return balanced hole locations for a round; the same seed gives the same ones.

    Args:
        course: the map.
        recent: recently used hole locations by hole, in local metres.
        from_edge: least distance from the edge of the green, metres.
        from_recent: least distance from a recently used hole, metres.
        seed: another seed gives other locations, as balanced.
        slopes: the ground of the greens, or ``None`` where nothing is known of it.
    """
    trouble = index_of(course, *TROUBLE)
    random = Random(seed)  # noqa: S311 - variety from day to day, no secret
    offers: dict[int, list[HoleLocation]] = {}
    without: dict[int, str] = {}
    for hole in course.holes.values():
        offered = (
            _offers(
                hole,
                trouble,
                (recent or {}).get(hole.number, ()),
                from_edge=from_edge,
                from_recent=from_recent,
                random=random,
                slopes=slopes if slopes and hole.number in slopes.surfaces else None,
            )
            if hole.green
            else said("its green is not mapped")
        )
        if isinstance(offered, str):
            without[hole.number] = offered
        else:
            offers[hole.number] = offered
    chosen = _balanced(offers, random)
    return Proposal(chosen, without, tuple(number for number, one in chosen.items() if one.slope is None))


def _offers(
    hole: Hole,
    trouble: FeatureIndex,
    recent: Sequence[Point],
    *,
    from_edge: float,
    from_recent: float,
    random: Random,
    slopes: GreenSlopes | None,
) -> list[HoleLocation] | str:
    """Return one place for each third across, third along and third of difficulty that the green has."""
    frame = GreenFrame.of(hole)
    places = _places(frame)
    room = frame.from_edge(places)
    places, room = places[room >= from_edge], room[room >= from_edge]
    if not len(places):
        return said("no place on its green is {metres:.1f} m from every edge", metres=from_edge)
    clear = np.ones(len(places), dtype=bool)
    for used in recent:
        clear &= np.hypot(*(places - [used.x, used.y]).T) >= from_recent
    if not clear.any():
        return said("no place on its green is {metres:.1f} m from every recent hole", metres=from_recent)
    falls: list[Slope | None] = [None] * len(places)
    if slopes is not None:
        percent, fall = slopes.surfaces[hole.number].slopes(places)
        falls = slopes_told(percent, fall)
        clear &= (fit := level_enough(slopes, hole.number, places, percent)) > 0
        if not clear.any():
            return said(
                "no place on its green is level enough ({limit} % at most)",
                limit=in_percent(slopes.limits.critical),
            )
        if (clear & (fit > 1)).any():
            clear &= fit > 1
    # Thirds are those of all the places the green offers, so that recent holes do not shift them.
    across, along = _thirds(places @ -frame.left), _thirds(places @ frame.along)
    tightness = _thirds_by_rank(_room(room, trouble, places))
    cells: dict[tuple[int, int, int], list[int]] = {}
    for i in np.flatnonzero(clear):
        cells.setdefault((int(across[i]), int(along[i]), int(tightness[i])), []).append(int(i))
    return [
        HoleLocation(
            hole.number,
            place := Point(places[index := random.choice(members)]),
            list(Side)[side],
            list(Depth)[depth],
            list(Difficulty)[difficulty],
            frame.numbers(place),
            falls[index],
        )
        for (side, depth, difficulty), members in sorted(cells.items())
    ]


def level_enough(
    slopes: GreenSlopes, hole: int, places: NDArray[np.float64], percent: NDArray[np.float64]
) -> NDArray[np.intp]:
    """Return for each place 2 where the slope is as recommended or not known, 1 where it is marginal, 0 where too steep.

    Too steep is more than the critical slope around the hole, or within three paces of such a slope on the green.

    Args:
        slopes: the ground of the greens.
        hole: the hole.
        places: in local metres, shape (n, 2).
        percent: the slope around each, not-a-number where it is not known.
    """
    too_near = slopes.from_severe(hole, places) < FROM_SEVERE_SLOPE
    fit = np.where(percent > slopes.limits.recommended, 1, 2)
    return np.where((percent > slopes.limits.critical) | too_near, 0, fit)


def _places(frame: GreenFrame) -> NDArray[np.float64]:
    west, south, east, north = frame.green.bounds
    x, y = np.meshgrid(np.arange(west, east, SPACING), np.arange(south, north, SPACING))
    return np.column_stack([x.ravel(), y.ravel()])


def _thirds(values: NDArray[np.float64]) -> NDArray[np.intp]:
    """Return 0, 1 or 2 for the lowest, middle and highest third of the range of the values."""
    low, high = values.min(), values.max()
    thirds: NDArray[np.intp] = np.minimum(3 * (values - low) / max(high - low, 1e-9), 2).astype(np.intp)
    return thirds


def _thirds_by_rank(values: NDArray[np.float64]) -> NDArray[np.intp]:
    """Return 0, 1 or 2 for the third of the values with the lowest, middle and highest rank."""
    rank = np.empty(len(values), dtype=np.intp)
    rank[np.argsort(values, kind="stable")] = np.arange(len(values))
    return np.asarray(3 * rank // len(values), dtype=np.intp)


def _room(
    room: NDArray[np.float64], trouble: FeatureIndex, places: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Return the distance of places to the edge of the green or to trouble, whichever is less."""
    points = shapely.points(places)
    # Trouble further from a place than the edge of the green is never the nearer of the two.
    for feature in trouble.near(shapely.box(*places.min(0), *places.max(0)), float(room.max())):
        room = np.minimum(room, shapely.distance(feature.geometry, points))
    return room


def _balanced(offers: Mapping[int, Sequence[HoleLocation]], random: Random) -> dict[int, HoleLocation]:
    """Choose one offer for each hole; exchange single choices for as long as that improves the balance."""
    chosen = {hole: random.choice(places) for hole, places in offers.items()}
    for _ in range(SWEEPS):
        before = unevenness(chosen)
        for hole, places in offers.items():
            others = {number: place for number, place in chosen.items() if number != hole}
            scores = [unevenness({**others, hole: place}) for place in places]
            best = min(scores)
            # Drawing among equals keeps the proposals varied from day to day.
            equals = [place for place, score in zip(places, scores, strict=True) if score == best]
            chosen[hole] = chosen[hole] if chosen[hole] in equals else random.choice(equals)
        if unevenness(chosen) == before:
            break
    return dict(sorted(chosen.items()))


def unevenness(locations: Mapping[int, HoleLocation]) -> float:
    """Return how far hole locations are from balance: the squared departures from the guidance's counts.

    For the course: a third of the holes in each class of difficulty and of depth. For each nine: four left,
    four right, one in the middle (as parts of nine).
    """
    total = 0.0
    everywhere = list(locations.values())
    for names, attribute in ((Depth, "depth"), (Difficulty, "difficulty")):
        for name in names:
            count = sum(getattr(place, attribute) is name for place in everywhere)
            total += (count - len(everywhere) / 3) ** 2
    for nine in {(hole - 1) // 9 for hole in locations}:
        places = [place for hole, place in locations.items() if (hole - 1) // 9 == nine]
        for side, part in ((Side.LEFT, 4 / 9), (Side.RIGHT, 4 / 9), (Side.CENTRE, 1 / 9)):
            total += (sum(place.side is side for place in places) - part * len(places)) ** 2
    return total
