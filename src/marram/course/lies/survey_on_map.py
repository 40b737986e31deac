"""Measured points put on the map: one, and very many at once.

A point that lies clear of every edge is read as every other point that the same areas hold: one of them is read for
all. The points near an edge, where a distance is told, are read one by one.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from marram.course.lies.areas import FURTHEST, Area, AreaReading, PenaltyColour, area_at, area_at_degrees
from marram.course.lies.doubts import NEAR_OUTLINE, NEAR_PATH, UNMAPPED_EDGE, Doubt, drawn_to
from marram.course.lies.extents import assumed_width
from marram.course.lies.regions import HoleGround, ground_of
from marram.course.lies.tolerance import EDGE_TOLERANCE, TOUCH
from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Kind
from marram.course.progress import Progress, no_progress
from marram.course.reading.assembly import boundary_is_outline
from marram.course.reading.survey import SurveyPoint
from marram.errors import BadPlace
from marram.said import said

Floats = NDArray[np.float64]

STEP = 2000
"""After so many points read one by one, progress is told (own choice)."""


@dataclass(frozen=True, slots=True)
class PointReading:
    """Where a measured point lies, as far as the map can tell.

    Attributes:
        area: the area of the course; ``None`` when a ball there is out of bounds.
        colour: of the penalty area; ``None`` elsewhere, and where it would be in either colour.
        doubts: why to look on the ground, if at all.
    """

    area: Area | None
    colour: PenaltyColour | None
    doubts: tuple[Doubt, ...]


def read_on_map(course: Course, point: SurveyPoint, hole: int) -> AreaReading:
    """Return where a ball lies whose centre was measured; what its accuracy leaves open is among the doubts.

    Raises:
        BadPlace: the map has no such hole, the point is not near the course, or its accuracy is unknown.
    """
    if point.accuracy is None:
        name = point.name or said("the point")
        raise BadPlace(said("Nobody said how accurate {name} is; give its accuracy in metres.", name=name))
    return area_at_degrees(course, point.longitude, point.latitude, hole, accuracy=point.accuracy)


def read_all_on_map(
    course: Course, points: Sequence[SurveyPoint], hole: int, *, progress: Progress = no_progress
) -> list[PointReading]:
    """Return where balls lie whose centres were measured, as :func:`read_on_map` says.

    Args:
        course: the map.
        points: what was measured.
        hole: the hole being played.
        progress: told how far the work is.

    Raises:
        BadPlace: the map has no such hole, or points are not near the course or of unknown accuracy; every such
            point is named.
    """
    ground = ground_of(course, hole)
    degrees = np.array([(point.longitude, point.latitude) for point in points]).reshape(-1, 2)
    places = course.plane.to_metres_all(degrees)
    _refuse(points, places)
    if not points:
        return []
    accuracy = np.array([point.accuracy for point in points], dtype=np.float64)
    clear, held = _clear(course, ground, places, accuracy)
    of_set: dict[bytes, PointReading] = {}
    found: list[PointReading] = []
    for number, (x, y) in enumerate(places.tolist()):
        if number % STEP == 0:
            progress("points", number / len(points))
        key = held[number] if clear[number] else None
        reading = of_set.get(key) if key is not None else None
        if reading is None:
            reading = _short(area_at(course, x, y, hole, accuracy=float(accuracy[number])))
            if key is not None:
                of_set[key] = reading
        found.append(reading)
    progress("points", 1.0)
    return found


def _short(reading: AreaReading) -> PointReading:
    return PointReading(reading.area, reading.colour, reading.doubts)


def _refuse(points: Sequence[SurveyPoint], places: Floats) -> None:
    faults = []
    for number, (point, (x, y)) in enumerate(zip(points, places.tolist(), strict=True), 1):
        name = repr(point.name) if point.name else said("point {number}", number=number)
        if not np.hypot(x, y) <= FURTHEST:
            faults.append(
                said(
                    "{name} at {latitude:g}, {longitude:g} is not within {furthest:.0f} km of the middle "
                    "of the course. Check that the points are of this course, longitude first.",
                    name=name,
                    latitude=point.latitude,
                    longitude=point.longitude,
                    furthest=FURTHEST / 1000,
                )
            )
        elif point.accuracy is None:
            faults.append(said("Nobody said how accurate {name} is; give its accuracy in metres.", name=name))
    if faults:
        raise BadPlace(*faults)


def _clear(
    course: Course, ground: HoleGround, places: Floats, accuracy: Floats
) -> tuple[NDArray[np.bool_], list[bytes]]:
    """Return which places lie clear of every edge, and for each place which shapes hold it."""
    points = np.asarray(shapely.points(places), dtype=object)
    reach = np.maximum(accuracy, EDGE_TOLERANCE) + TOUCH + EDGE_TOLERANCE
    shapes = _Shapes(course, ground)
    clear = np.ones(len(places), dtype=bool)
    for doubtful, tree in shapes.edges():
        near = tree.query(points, predicate="dwithin", distance=np.maximum(reach, doubtful + TOUCH))
        clear[near[0]] = False
    point, shape = shapes.tree.query(points)
    holds = shapely.intersects(shapes.shapes[shape], points[point])
    point, shape = point[holds], shape[holds]
    # Where two pieces of one area overlap, or a line has only an assumed width, distances decide what is told.
    order = np.lexsort((shapes.area[shape], point))
    same = (np.diff(point[order]) == 0) & (np.diff(shapes.area[shape][order]) == 0)
    clear[point[order][1:][same]] = False
    clear[point[shapes.rough[shape]]] = False
    held = np.split(shape, np.searchsorted(point, np.arange(1, len(places)))) if len(point) else []
    keys = [np.sort(one).tobytes() for one in held] or [b""] * len(places)
    return clear, keys


_DOUBTFUL = {
    Kind.PATH: NEAR_PATH,
    Kind.OBSTRUCTION: NEAR_PATH,
    Kind.BARRIER: NEAR_PATH,
    Kind.WATER: UNMAPPED_EDGE,
    Kind.WETLAND: UNMAPPED_EDGE,
}
"""How far from things of a kind more is told of a point than what it lies in, metres."""


class _Shapes:
    """Everything on a hole that can change what is told of a point.

    Attributes:
        shapes: the pieces of its areas, prepared.
        area: for each piece the number of the area it belongs to.
        rough: whether each piece is a line of which only an assumed width is known.
        tree: of the pieces.
    """

    def __init__(self, course: Course, ground: HoleGround) -> None:
        self._doubtful: dict[float, list[BaseGeometry]] = {}
        shapes: list[BaseGeometry] = []
        area: list[int] = []
        rough: list[bool] = []

        def add(one: BaseGeometry, number: int, doubtful: float = 0.0, *, is_rough: bool = False) -> None:
            shapes.append(one)
            area.append(number)
            rough.append(is_rough)
            self._doubtful.setdefault(doubtful, []).append(one)

        outline = NEAR_OUTLINE if boundary_is_outline(course) else 0.0
        for number, bounds in enumerate(one for one in (ground.in_bounds, ground.fences) if one is not None):
            add(bounds.shape, -1 - number, outline)
            for fence in bounds.areas:
                self._doubtful.setdefault(outline, []).append(fence.geometry)
        if course.covered is not None:
            add(course.covered, -9)
        waters = set(map(id, ground.water))
        for number, united in enumerate(_areas(ground)):
            doubtful = _DOUBTFUL.get(united.kind, 0.0)
            if id(united) in waters:
                doubtful = UNMAPPED_EDGE
            self._doubtful.setdefault(doubtful, []).append(united.geometry)
            for piece in united.pieces:
                add(piece.shape, number, doubtful, is_rough=assumed_width(piece.feature) is not None)
                self._doubtful.setdefault(doubtful, []).append(piece.feature.geometry)
        for feature in course.features:
            if drawn := drawn_to(feature):
                self._doubtful.setdefault(drawn, []).append(feature.geometry)
        self.shapes = np.array(shapes, dtype=object)
        shapely.prepare(self.shapes)
        self.area, self.rough = np.array(area, dtype=np.intp), np.array(rough, dtype=bool)
        self.tree = STRtree(self.shapes)

    def edges(self) -> list[tuple[float, STRtree]]:
        """Return the edges as segments in trees, with the distance from them within which more is told."""
        return [(doubtful, STRtree(_segments(shapes))) for doubtful, shapes in self._doubtful.items()]


def _areas(ground: HoleGround) -> list[UnitedArea]:
    specific = (area for region in ground.specific for area in region.areas)
    return list(
        dict.fromkeys(
            (
                *specific,
                *ground.wrong_greens,
                *ground.conditions,
                *ground.water,
                *ground.unsettled,
                *ground.idle_tees,
            )
        )
    )


def _segments(shapes: Sequence[BaseGeometry]) -> NDArray[np.object_]:
    """Return the edges of areas, and lines and points themselves, as segments."""
    parts = shapely.get_parts(np.array(shapes, dtype=object))
    flat = shapely.get_dimensions(parts) == 2
    lines = np.concatenate([shapely.get_parts(shapely.boundary(parts[flat])), parts[~flat]])
    places, of = shapely.get_coordinates(lines, return_index=True)
    same = of[1:] == of[:-1]
    segments = np.empty(0, dtype=object)
    if same.any():
        ends = np.stack([places[:-1][same], places[1:][same]], axis=1)
        segments = np.asarray(shapely.linestrings(ends), dtype=object)
    return np.concatenate([segments, lines[shapely.get_dimensions(lines) == 0]])
