"""From metres to the picture: which part of the map is shown, and where a place lies on it.

The frame has the scale of the decision: the point measured from with its club-lengths, the ball and the nearest edge of
what relief is taken from. How long a path, or how far back a line goes, does not matter for it: that is for the
overview. Drawing, sheet and screen take the frame from here.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, inf, log10

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import GeometryType, Point
from shapely.geometry.base import BaseGeometry

from marram.relief.areas.construction import ArcMark, PointMark, Role, ShapeMark
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import YARD
from marram.words.place import writing

_CORE = frozenset({Role.REFERENCE, Role.SPOT, Role.EXAMPLE_SPOT, Role.FIRST_TOUCHED, Role.FAIRWAY_POINT})
"""Points that the frame always holds: something is measured from there, or placed there."""
LESSER = (Role.CROSSING_POINT, Role.BOUNDARY_POINT, Role.PREVIOUS_SPOT, Role.BALL)
"""Points that the frame holds where they are not too far off, the most telling first; else an arrow points at them."""
_CORNERS = 4
"""Places of the least ring that holds an area, the first told again."""
_ROOM = 0.2
"""The part of the frame left free on each side, for labels."""
_AT_MOST = 5.0
"""Times the extent of what the frame always holds: how large it may grow for a lesser point (a choice of ours: a
club-length then still spans a thirtieth of the picture)."""
_GROWN, _BEYOND = 12.0, 0.5
"""Metres, and times the extent of the points: how far beyond the points an area that is not measured in club-lengths
is shown. An alternative to stroke and distance may go on for a kilometre; its two points would then be one blot."""
_WHOLE = 40.0
"""Metres: an area no larger than this is shown whole, such as a teeing area."""
_LEAST = 4.0
"""Metres: no frame shows less."""
_OVERVIEW_ROOM = 0.12
_Bounds = tuple[float, float, float, float]
Shapely = NDArray[np.object_]
Shapes = Sequence[BaseGeometry] | Shapely


@dataclass(frozen=True, slots=True)
class View:
    """A square frame on the map and the picture it fills.

    Attributes:
        left: x of the frame's west side in metres.
        bottom: y of its south side in metres.
        size: its side in metres.
        pixels: its side in the picture.
    """

    left: float
    bottom: float
    size: float
    pixels: float

    @property
    def scale(self) -> float:
        """Picture units per metre."""
        return self.pixels / self.size

    @property
    def frame(self) -> BaseGeometry:
        """The square of ground that is shown, in metres."""
        return shapely.box(self.left, self.bottom, self.left + self.size, self.bottom + self.size)

    def at(self, place: XY) -> XY:
        """Return where a place lies in the picture (y downwards)."""
        return (place[0] - self.left) * self.scale, self.pixels - (place[1] - self.bottom) * self.scale

    def clip(self, geometry: BaseGeometry) -> BaseGeometry:
        """Return the part of a shape in the frame and a little around it."""
        clipped: BaseGeometry = self.clip_all([geometry])[0]
        return clipped

    def clip_all(self, geometries: Shapes) -> Shapely:
        """Return of each shape the part in the frame and a little around it."""
        edge = 0.05 * self.size
        left, bottom = self.left - edge, self.bottom - edge
        right, top = left + self.size + 2 * edge, bottom + self.size + 2 * edge
        return shapely.clip_by_rect(np.array(geometries, dtype=object), left, bottom, right, top)

    def shows(self, place: XY) -> bool:
        """Return whether a place lies in the frame."""
        return 0 <= place[0] - self.left <= self.size and 0 <= place[1] - self.bottom <= self.size

    def drawn(self, geometry: BaseGeometry) -> BaseGeometry:
        """Return a shape, as far as it is in the frame, in picture units."""
        turn = np.array((self.scale, -self.scale))
        shift = np.array((-self.left * self.scale, self.pixels + self.bottom * self.scale))
        return shapely.transform(self.clip(geometry), lambda points: points * turn + shift)

    def holds(self, geometry: BaseGeometry) -> bool:
        """Return whether a shape lies wholly in the frame."""
        left, bottom, right, top = geometry.bounds
        return self.shows((left, bottom)) and self.shows((right, top))

    def path(self, geometry: BaseGeometry) -> str:
        """Return polygon(s) as the data of an SVG path."""
        return self.paths([geometry])[0]

    def paths(self, geometries: Shapes) -> list[str]:
        """Return the polygons of each shape as the data of an SVG path; a shape without any gives none."""
        parts, of = _parts(geometries, GeometryType.POLYGON)
        rings, of_part = shapely.get_rings(parts, return_index=True)
        return self._data(rings, of[of_part], len(geometries))

    def lines(self, geometries: Shapes) -> list[str]:
        """Return the lines of each shape as the data of an SVG path; areas give none."""
        return self._data(*_parts(geometries, GeometryType.LINESTRING), len(geometries))

    def _data(self, lines: Shapely, of: NDArray[np.int64], count: int) -> list[str]:
        """Return lines or rings as the data of paths: those of one shape in one, ``of`` says of which.

        Only places that can be told apart in the picture are written (Douglas and Peucker 1973). A ring of which
        nothing would be left but a line is written whole: an area is drawn, however small.
        """
        plain = shapely.simplify(lines, 0.15 / self.scale, preserve_topology=False)
        rings = shapely.get_type_id(lines) == GeometryType.LINEARRING
        plain = np.where(rings & (shapely.get_num_coordinates(plain) < _CORNERS), lines, plain)
        places, at = shapely.get_coordinates(plain, return_index=True)
        across = ((places[:, 0] - self.left) * self.scale).tolist()
        down = (self.pixels - (places[:, 1] - self.bottom) * self.scale).tolist()
        pairs = [f"{x:.1f} {y:.1f}" for x, y in zip(across, down, strict=True)]
        ends = np.searchsorted(at, np.arange(len(lines) + 1)).tolist()
        data = [""] * count
        for number, (shape, closed) in enumerate(zip(of.tolist(), rings.tolist(), strict=True)):
            first, end = ends[number], ends[number + 1]
            if first < end:
                data[shape] += f"M{'L'.join(pairs[first : end - closed])}{'Z' if closed else ''}"
        return data

    def scale_bar(self) -> float:
        """Return the length in metres of a scale bar, round in the reader's unit, a tenth to a quarter of the frame."""
        unit = YARD if writing().yards else 1.0
        wanted = self.size / 4 / unit
        power = 10.0 ** int(np.floor(log10(wanted)))
        return unit * next(step * power for step in (5.0, 2.0, 1.0) if step * power <= wanted)


def _parts(geometries: Shapes, kind: GeometryType) -> tuple[Shapely, NDArray[np.int64]]:
    """Return the parts of shapes that are of a kind, and of which shape each is."""
    parts, of = shapely.get_parts(np.array(geometries, dtype=object), return_index=True)
    wanted = shapely.get_type_id(parts) == kind
    return parts[wanted], of[wanted]


def view_of(areas: Sequence[ReliefArea], pixels: float) -> View:
    """Return the frame at the scale of the decision: what is measured from, how big, and the edge that matters."""
    held = [box for area in areas for box in _core(area)]
    widest = max(_AT_MOST * _extent(_around(held)), _GROWN) if held else inf
    for box in _lesser(areas):
        grown = _around([*held, box])
        if _extent(grown) <= widest:
            held.append(box)
    shapes = [area.picture.bounds for area in areas if area.radius is None]
    held += _near(shapes, held) if held else shapes
    return _square(_around(held or [area.picture.bounds for area in areas]), _ROOM, _LEAST, pixels)


def overview_of(areas: Sequence[ReliefArea], pixels: float, within: View | None = None) -> View:
    """Return the frame that shows every point and the hole, the whole of the drawing's own frame, and of the area as much again."""
    held = [
        (*mark.at, *mark.at) for area in areas for mark in area.construction if isinstance(mark, PointMark)
    ] + [(*at, *at) for area in areas for at in (area.hole, area.reference)]
    far = _extent(_around(held)) / 2
    held += _cut([area.picture.bounds for area in areas], held, far)
    if within is not None:
        held.append(within.frame.bounds)
    return _square(_around(held), _OVERVIEW_ROOM, _LEAST, pixels)


def _core(area: ReliefArea) -> list[_Bounds]:
    """Return the bounds of what the frame of an area always holds."""
    held: list[_Bounds] = [(*area.reference, *area.reference)] if area.radius is not None else []
    for mark in area.construction:
        if isinstance(mark, PointMark) and mark.role in _CORE:
            held.append((*mark.at, *mark.at))
        elif isinstance(mark, ArcMark) and mark.role is Role.CLUB_LENGTHS:
            (x, y), r = mark.centre, mark.radius
            held.append((x - r, y - r, x + r, y + r))
    if any(isinstance(mark, PointMark) and mark.role is Role.FAIRWAY_POINT for mark in area.construction):
        held.append((*area.reference, *area.reference))
    return held


def _lesser(areas: Sequence[ReliefArea]) -> list[_Bounds]:
    """Return the bounds of what the frames hold if it is not too far: the nearest edge first, then points."""
    found: list[_Bounds] = []
    for area in areas:
        edges = [
            shapely.shortest_line(shapely.Polygon(mark.points, mark.holes).boundary, Point(area.reference))
            for mark in area.construction
            if isinstance(mark, ShapeMark) and mark.role is Role.CONDITION
        ]
        near = min((one for one in edges if one is not None), key=shapely.length, default=None)
        if near is not None:
            found.append(near.bounds)
    for role in LESSER:
        found += [
            (*mark.at, *mark.at)
            for area in areas
            for mark in area.construction
            if isinstance(mark, PointMark) and mark.role is role
        ]
    return found


def _around(boxes: Sequence[_Bounds]) -> _Bounds:
    left, bottom, right, top = np.array(boxes).T
    return float(left.min()), float(bottom.min()), float(right.max()), float(top.max())


def _extent(box: _Bounds) -> float:
    return max(box[2] - box[0], box[3] - box[1])


def _square(box: _Bounds, room: float, least: float, pixels: float) -> View:
    left, bottom, right, top = box
    size = max(_extent(box), least) / (1 - 2 * room)
    return View((left + right - size) / 2, (bottom + top - size) / 2, size, pixels)


def _near(shapes: Sequence[_Bounds], points: Sequence[_Bounds]) -> list[_Bounds]:
    """Return the bounds of areas, cut where they go on far beyond the points they are built from."""
    far = max(_GROWN, _BEYOND * _extent(_around(points)))
    small = [one for one in shapes if _extent(one) <= _WHOLE]
    return small + _cut([one for one in shapes if _extent(one) > _WHOLE], points, far)


def _cut(shapes: Sequence[_Bounds], points: Sequence[_Bounds], far: float) -> list[_Bounds]:
    left, bottom, right, top = _around(points)
    return [
        (max(x0, left - far), max(y0, bottom - far), min(x1, right + far), min(y1, top + far))
        for x0, y0, x1, y1 in shapes
    ]


def edge_towards(view: View, start: XY, end: XY, inset: float) -> XY | None:
    """Return where a line from a place in the frame leaves it, ``inset`` picture units before the edge."""
    if view.shows(end):
        return None
    (x, y), (to_x, to_y) = view.at(start), view.at(end)
    way_x, way_y = to_x - x, to_y - y
    parts = [
        (limit - from_at) / way
        for from_at, way in ((x, way_x), (y, way_y))
        if abs(way) > 1e-9
        for limit in (inset, view.pixels - inset)
    ]
    part = min((one for one in parts if one > 0), default=0.0)
    return (x + part * way_x, y + part * way_y) if hypot(way_x, way_y) > 0 else None
