"""From metres to the picture: which part of the map is shown, and where a place lies on it.

The frame has the scale of the decision: the point measured from with its club-lengths, the ball and the nearest edge of
what relief is taken from. How long a path, or how far back a line goes, does not matter for it: that is for the
overview. Drawing, sheet and screen take the frame from here.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import hypot, inf, log10

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Point
from shapely.geometry.base import BaseGeometry

from marram.relief.areas.construction import ArcMark, PointMark, Role, ShapeMark
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.outline import XY

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
        edge = 0.05 * self.size
        left, bottom = self.left - edge, self.bottom - edge
        return shapely.clip_by_rect(
            geometry, left, bottom, left + self.size + 2 * edge, bottom + self.size + 2 * edge
        )

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
        parts = [one for one in shapely.get_parts(geometry) if one.geom_type == "Polygon"]
        return "".join(f"M{self._pairs(one[:-1])}Z" for one in self._plainer(shapely.get_rings(parts)))

    def line(self, geometry: BaseGeometry) -> str:
        """Return the lines of a shape as the data of an SVG path; areas give none."""
        parts = [one for one in shapely.get_parts(geometry) if one.geom_type == "LineString"]
        return "".join(f"M{self._pairs(one)}" for one in self._plainer(parts))

    def _plainer(self, lines: Sequence[BaseGeometry] | NDArray[np.object_]) -> Iterator[NDArray[np.float64]]:
        """Yield the places of lines or rings that can be told apart in the picture (Douglas and Peucker 1973).

        A ring of which nothing would be left but a line is yielded whole: an area is drawn, however small.
        """
        plain = shapely.simplify(lines, 0.15 / self.scale, preserve_topology=False)
        for one, plainer in zip(lines, plain, strict=True):
            whole = one.geom_type == "LinearRing" and shapely.get_num_coordinates(plainer) < _CORNERS
            if not one.is_empty:
                yield shapely.get_coordinates(one if whole else plainer)

    def _pairs(self, points: NDArray[np.float64]) -> str:
        """Return places, shape (n, 2), as the data of a path; each is where :meth:`at` puts it."""
        across = ((points[:, 0] - self.left) * self.scale).tolist()
        down = (self.pixels - (points[:, 1] - self.bottom) * self.scale).tolist()
        return "L".join(f"{x:.1f} {y:.1f}" for x, y in zip(across, down, strict=True))

    def scale_bar(self) -> float:
        """Return the length in metres of a round scale bar, a fifth to a half of the frame."""
        wanted = self.size / 4
        power = 10.0 ** int(np.floor(log10(wanted)))
        return next(step * power for step in (5.0, 2.0, 1.0) if step * power <= wanted)


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
