"""From metres to the picture: which part of the map is shown, and where a place lies on it."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, log10

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from marram.relief.areas.construction import ArcMark, LineMark, PointMark, Role
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.outline import XY

_SHOWN_POINTS = {
    Role.BALL,
    Role.CROSSING_POINT,
    Role.REFERENCE,
    Role.SPOT,
    Role.BOUNDARY_POINT,
    Role.FAIRWAY_POINT,
    Role.PREVIOUS_SPOT,
    Role.FIRST_TOUCHED,
    Role.EXAMPLE_SPOT,
}
"""Points that the frame must hold. The hole is far away as a rule: an arrow points at it."""
_SHOWN_LINES = {Role.SHIFT}
_ROOM = 0.22
"""The part of the frame left free on each side, for labels."""
_OVERVIEW, _OVERVIEW_TIMES = 60.0, 3.0
"""Metres, and times the extent of the points: how far beyond the points an area is built from it is shown. An
alternative to stroke and distance may go on for a kilometre; its two points would then be one blot."""
_Bounds = tuple[float, float, float, float]
_LEAST = 4.0
"""Metres: no frame shows less."""


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

    def at(self, place: XY) -> XY:
        """Return where a place lies in the picture (y downwards)."""
        return (place[0] - self.left) * self.scale, self.pixels - (place[1] - self.bottom) * self.scale

    def clip(self, geometry: BaseGeometry) -> BaseGeometry:
        """Return the part of a shape in the frame and a little around it."""
        edge = 0.05 * self.size
        box = shapely.box(
            self.left - edge, self.bottom - edge, self.left + self.size + edge, self.bottom + self.size + edge
        )
        return shapely.intersection(geometry, box)

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
        pieces = []
        for part in shapely.get_parts(geometry):
            if part.geom_type == "Polygon" and not part.is_empty:
                for ring in shapely.get_rings(part):
                    points = shapely.get_coordinates(shapely.simplify(ring, 0.15 / self.scale))[:-1]
                    pieces.append("M" + "L".join(self._pair(x, y) for x, y in points) + "Z")
        return "".join(pieces)

    def line(self, geometry: BaseGeometry) -> str:
        """Return the lines of a shape as the data of an SVG path; areas give none."""
        pieces = []
        for part in shapely.get_parts(geometry):
            if part.geom_type == "LineString" and not part.is_empty:
                points = shapely.get_coordinates(shapely.simplify(part, 0.15 / self.scale))
                pieces.append("M" + "L".join(self._pair(x, y) for x, y in points))
        return "".join(pieces)

    def _pair(self, x: float, y: float) -> str:
        px, py = self.at((x, y))
        return f"{px:.1f} {py:.1f}"

    def scale_bar(self) -> float:
        """Return the length in metres of a round scale bar, a fifth to a half of the frame."""
        wanted = self.size / 4
        power = 10.0 ** int(np.floor(log10(wanted)))
        return next(step * power for step in (5.0, 2.0, 1.0) if step * power <= wanted)


def view_of(areas: Sequence[ReliefArea], pixels: float) -> View:
    """Return the frame that shows relief areas and the points they are built from."""
    boxes = []
    for area in areas:
        for mark in area.construction:
            if isinstance(mark, PointMark) and mark.role in _SHOWN_POINTS:
                boxes.append((*mark.at, *mark.at))
            elif isinstance(mark, LineMark) and mark.role in _SHOWN_LINES:
                boxes.append((*mark.start, *mark.start))
            elif isinstance(mark, ArcMark) and mark.role is Role.CLUB_LENGTHS:
                (x, y), r = mark.centre, mark.radius
                boxes.append((x - r, y - r, x + r, y + r))
    shapes = [area.picture.bounds for area in areas]
    boxes += _near(shapes, boxes) if boxes else shapes
    columns = np.array(boxes)
    left, bottom = columns[:, 0].min(), columns[:, 1].min()
    right, top = columns[:, 2].max(), columns[:, 3].max()
    size = max(right - left, top - bottom, _LEAST) / (1 - 2 * _ROOM)
    return View(float((left + right - size) / 2), float((bottom + top - size) / 2), float(size), pixels)


def _near(shapes: Sequence[_Bounds], points: Sequence[_Bounds]) -> list[_Bounds]:
    """Return the bounds of areas, cut where they go on far beyond the points they are built from."""
    columns = np.array(points)
    left, bottom = columns[:, 0].min(), columns[:, 1].min()
    right, top = columns[:, 2].max(), columns[:, 3].max()
    far = max(_OVERVIEW, _OVERVIEW_TIMES * max(right - left, top - bottom))
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
