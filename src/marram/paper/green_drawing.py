"""A green as a player coming in sees it: front at the bottom, the hole, and where it is measured from."""

import math

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import LineString, Point, Polygon

from marram.course.greens.green_frame import GreenFrame, Side
from marram.course.greens.slope import SlopeLimits, Surface

SIZE = 240.0
"""Picture units, across and up."""

MARGIN = 22.0
FONT = "Atkinson Hyperlegible Next, sans-serif"
"""The type of figures: that of the page they stand on, on paper (``paper/fonts``) and on the desk."""
INK = "#16211d"
SLOPE_INK = "#5d6f52"
STEEP_INK = "#a3271a"

ARROWS_APART = 27.0
"""Picture units between the arrows of slope."""

ARROW_LEAST = 7.0
ARROW_PER_PERCENT = 3.2
ARROW_MOST = 24.0
LEVEL = 0.3
"""Ground that falls less than this many percent is drawn as a dot."""


def green_svg(
    frame: GreenFrame, place: Point, ground: Surface | None = None, limits: SlopeLimits | None = None
) -> str:
    """Return the drawing of a green with its hole.

    Two dotted lines carry the numbers of the sheet: from the front of the green, and from its nearest side. Where
    the ground is known, arrows point down the slope: longer is steeper, and heavy where it is too steep for a hole.

    Args:
        frame: the green and its axes.
        place: where the hole is cut, in local metres.
        ground: the ground of the green, or ``None`` where it is not known.
        limits: how steep is too steep; needed with ``ground``.
    """
    turned = Turned(frame)
    numbers = frame.numbers(place)
    x, y = turned.at(place.x, place.y)
    front = turned.at(*(np.array([place.x, place.y]) - numbers.from_front * frame.along))
    towards = -frame.left if numbers.side is Side.RIGHT else frame.left
    side = turned.at(*(np.array([place.x, place.y]) + numbers.from_side * towards))
    depth, across = numbers.in_paces()
    arrows = slope_arrows(turned, ground, limits) if ground is not None and limits is not None else ""
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {SIZE:g} {SIZE:g}" width="{SIZE:g}" height="{SIZE:g}">'
        f'<path d="{turned.outline}" fill="#e3ead2" stroke="{INK}" stroke-width="2"/>'
        f"{arrows}"
        f'<path d="M{front[0]:.1f} {front[1]:.1f}L{x:.1f} {y:.1f}L{side[0]:.1f} {side[1]:.1f}" fill="none" '
        f'stroke="{INK}" stroke-width="1.4" stroke-dasharray="2 4"/>'
        f'<circle cx="{x:.1f}" cy="{y:.1f}" r="5" fill="{INK}"/>'
        + _label(str(depth), (front[0] + x) / 2 + 6, (front[1] + y) / 2 + 5, "start")
        + _label(str(across), (side[0] + x) / 2, y - 8, "middle")
        + f'<path d="M{SIZE / 2:g} {SIZE - 4:g}v-14m-4 5l4 -5l4 5" fill="none" stroke="{INK}" stroke-width="1.6"/>'
        "</svg>"
    )


def slope_arrows(turned: "Turned", ground: Surface, limits: SlopeLimits) -> str:
    """Return arrows down the slope, evenly over a green."""
    steps = np.arange(MARGIN, SIZE - MARGIN + 1, ARROWS_APART)
    seen = np.array([(x, y) for y in steps for x in steps])
    places = turned.back(seen)
    on_green = turned.frame.from_edge(places) >= 0
    seen, places = seen[on_green], places[on_green]
    percent, fall = ground.slopes(places)
    parts = [
        _arrow(here, turned.towards(way), steep, limits)
        for here, way, steep in zip(seen, fall, percent, strict=True)
        if math.isfinite(steep)
    ]
    return f'<g class="slope">{"".join(parts)}</g>'


def _arrow(here: NDArray[np.float64], way: NDArray[np.float64], percent: float, limits: SlopeLimits) -> str:
    if percent < LEVEL:
        return f'<circle cx="{here[0]:.1f}" cy="{here[1]:.1f}" r="1.2" fill="{SLOPE_INK}" stroke="none"/>'
    too_steep = percent > limits.critical
    ink, weight = (STEEP_INK, 2.6) if too_steep else (SLOPE_INK, 1.3)
    length = min(ARROW_LEAST + ARROW_PER_PERCENT * percent, ARROW_MOST)
    tail, head = here - way * length / 2, here + way * length / 2
    side = np.array([-way[1], way[0]])
    left, right = head - 4.2 * way + 2.6 * side, head - 4.2 * way - 2.6 * side
    return (
        f'<path d="M{tail[0]:.1f} {tail[1]:.1f}L{head[0]:.1f} {head[1]:.1f}M{left[0]:.1f} {left[1]:.1f}'
        f'L{head[0]:.1f} {head[1]:.1f}L{right[0]:.1f} {right[1]:.1f}" fill="none" stroke="{ink}" stroke-width="{weight}"/>'
    )


def _label(text: str, x: float, y: float, anchor: str) -> str:
    # A pale rim keeps the number legible over arrows.
    return (
        f'<text x="{x:.1f}" y="{y:.1f}" font-size="21" font-family="{FONT}" font-weight="bold" text-anchor="{anchor}" '
        f'fill="{INK}" stroke="#e3ead2" stroke-width="4" paint-order="stroke">{text}</text>'
    )


class Turned:
    """Local metres to picture units, the line of play pointing up."""

    def __init__(self, frame: GreenFrame) -> None:
        self.frame = frame
        corners = shapely.get_coordinates(frame.green)
        self._right, self._up = -frame.left, frame.along
        across, along = corners @ self._right, corners @ self._up
        reach = max(np.ptp(across), np.ptp(along))
        self.scale = (SIZE - 2 * MARGIN) / float(reach)
        self._middle = (float(across.max() + across.min()) / 2, float(along.max() + along.min()) / 2)

    def at(self, x: float, y: float) -> tuple[float, float]:
        """Return where a place in metres is in the picture."""
        here = np.array([x, y])
        across = float(here @ self._right) - self._middle[0]
        along = float(here @ self._up) - self._middle[1]
        return SIZE / 2 + across * self.scale, SIZE / 2 - along * self.scale

    def back(self, seen: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return the places in metres of points of the picture, shape (n, 2)."""
        across = (seen[:, 0] - SIZE / 2) / self.scale + self._middle[0]
        along = (SIZE / 2 - seen[:, 1]) / self.scale + self._middle[1]
        return np.outer(across, self._right) + np.outer(along, self._up)

    def towards(self, direction: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return a direction on the ground as one in the picture."""
        return np.array([direction @ self._right, -(direction @ self._up)])

    @property
    def outline(self) -> str:
        """The edge of the green as the path of an SVG drawing."""
        return " ".join(
            self.path_of(part) for part in shapely.get_parts(self.frame.green) if isinstance(part, Polygon)
        )

    def path_of(self, polygon: Polygon) -> str:
        """Return the edge of an area as the path of an SVG drawing."""
        rings = (polygon.exterior, *polygon.interiors)
        return "".join(self._ring(LineString(ring.coords)) for ring in rings)

    def _ring(self, ring: LineString) -> str:
        points = [self.at(x, y) for x, y in shapely.get_coordinates(ring)]
        return "M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in points) + "Z"
