"""A green as a player coming in sees it: front at the bottom, the hole, and where it is measured from."""

import numpy as np
import shapely
from shapely.geometry import LineString, Point, Polygon

from marram.course.green_frame import GreenFrame, Side

SIZE = 240.0
"""Picture units, across and up."""

MARGIN = 22.0
INK = "#16211d"


def green_svg(frame: GreenFrame, place: Point) -> str:
    """Return the drawing of a green with its hole.

    Two dotted lines carry the numbers of the sheet: from the front of the green, and from its nearest side.

    Args:
        frame: the green and its axes.
        place: where the hole is cut, in local metres.
    """
    turned = _Turned(frame)
    numbers = frame.numbers(place)
    x, y = turned.at(place.x, place.y)
    outline = " ".join(
        turned.path(part) for part in shapely.get_parts(frame.green) if isinstance(part, Polygon)
    )
    front = turned.at(*(np.array([place.x, place.y]) - numbers.from_front * frame.along))
    towards = -frame.left if numbers.side is Side.RIGHT else frame.left
    side = turned.at(*(np.array([place.x, place.y]) + numbers.from_side * towards))
    depth, across = numbers.in_paces()
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {SIZE:g} {SIZE:g}" width="{SIZE:g}" height="{SIZE:g}">'
        f'<path d="{outline}" fill="#e3ead2" stroke="{INK}" stroke-width="2"/>'
        f'<path d="M{front[0]:.1f} {front[1]:.1f}L{x:.1f} {y:.1f}L{side[0]:.1f} {side[1]:.1f}" fill="none" '
        f'stroke="{INK}" stroke-width="1.4" stroke-dasharray="2 4"/>'
        f'<circle cx="{x:.1f}" cy="{y:.1f}" r="5" fill="{INK}"/>'
        + _label(str(depth), (front[0] + x) / 2 + 6, (front[1] + y) / 2 + 5, "start")
        + _label(str(across), (side[0] + x) / 2, y - 8, "middle")
        + f'<path d="M{SIZE / 2:g} {SIZE - 4:g}v-14m-4 5l4 -5l4 5" fill="none" stroke="{INK}" stroke-width="1.6"/>'
        "</svg>"
    )


def _label(text: str, x: float, y: float, anchor: str) -> str:
    return (
        f'<text x="{x:.1f}" y="{y:.1f}" font-size="21" font-family="Libertinus Serif" '
        f'text-anchor="{anchor}" fill="{INK}">{text}</text>'
    )


class _Turned:
    """Local metres to picture units, the line of play pointing up."""

    def __init__(self, frame: GreenFrame) -> None:
        corners = shapely.get_coordinates(frame.green)
        self._right, self._up = -frame.left, frame.along
        across, along = corners @ self._right, corners @ self._up
        reach = max(np.ptp(across), np.ptp(along))
        self._scale = (SIZE - 2 * MARGIN) / float(reach)
        self._middle = (float(across.max() + across.min()) / 2, float(along.max() + along.min()) / 2)

    def at(self, x: float, y: float) -> tuple[float, float]:
        here = np.array([x, y])
        across = float(here @ self._right) - self._middle[0]
        along = float(here @ self._up) - self._middle[1]
        return SIZE / 2 + across * self._scale, SIZE / 2 - along * self._scale

    def path(self, polygon: Polygon) -> str:
        rings = (polygon.exterior, *polygon.interiors)
        return "".join(self._ring(LineString(ring.coords)) for ring in rings)

    def _ring(self, ring: LineString) -> str:
        points = [self.at(x, y) for x, y in shapely.get_coordinates(ring)]
        return "M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in points) + "Z"
