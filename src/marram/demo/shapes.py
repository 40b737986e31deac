"""Smooth shapes for the demonstration course: swept bands, blobs, closed curves."""

from collections.abc import Sequence
from math import cos, pi, radians, sin, sqrt

import numpy as np
from numpy.typing import NDArray
from shapely import LineString, Point, Polygon, unary_union
from shapely.affinity import rotate, scale, translate

Place = tuple[float, float]


def curve(places: Sequence[Place], *, closed: bool = False, steps: int = 10) -> NDArray[np.float64]:
    """Return a smooth curve through ``places`` (centripetal Catmull-Rom spline), ``steps`` points a span."""
    points = np.asarray(places, float)
    if closed:
        points = np.vstack([points[-1], points, points[0], points[1]])
    else:
        points = np.vstack([2 * points[0] - points[1], points, 2 * points[-1] - points[-2]])
    spans = [_span(points[k : k + 4], steps) for k in range(len(points) - 3)]
    whole: NDArray[np.float64] = np.vstack(spans if closed else [*spans, points[-2]])
    return whole


def _span(four: NDArray[np.float64], steps: int) -> NDArray[np.float64]:
    knots = np.concatenate([[0.0], np.cumsum(np.sqrt(np.linalg.norm(np.diff(four, axis=0), axis=1)))])
    t = np.linspace(knots[1], knots[2], steps, endpoint=False)[:, None]

    def between(low: int, high: int, a: NDArray[np.float64], b: NDArray[np.float64]) -> NDArray[np.float64]:
        share: NDArray[np.float64] = (t - knots[low]) / (knots[high] - knots[low])
        mixed: NDArray[np.float64] = (1 - share) * a + share * b
        return mixed

    first = [between(k, k + 1, four[k], four[k + 1]) for k in range(3)]
    second = [between(k, k + 2, first[k], first[k + 1]) for k in range(2)]
    return between(1, 2, second[0], second[1])


def closed_curve(places: Sequence[Place], steps: int = 8) -> Polygon:
    """Return the smooth closed shape through ``places``."""
    return Polygon(curve(places, closed=True, steps=steps))


def line_of_play(places: Sequence[Place]) -> LineString:
    """Return the line from tee to green, its bends rounded as a hole is played."""
    if len(places) == 2:
        return LineString(places)
    rough = LineString(places)
    kept = [rough.interpolate(d) for d in np.arange(0, rough.length, 5)]
    points = np.array([(p.x, p.y) for p in kept] + [places[-1]])
    for _ in range(14):
        points[1:-1] = (points[:-2] + 2 * points[1:-1] + points[2:]) / 4
    return LineString(points)


def heading(line: LineString, metres: float) -> float:
    """Return the direction of ``line`` at a distance along it, in degrees counter-clockwise from east."""
    a, b = line.interpolate(max(metres - 3, 0)), line.interpolate(min(metres + 3, line.length))
    return float(np.degrees(np.arctan2(b.y - a.y, b.x - a.x)))


def beside(line: LineString, metres: float, right: float) -> Place:
    """Return the place ``metres`` along ``line`` and ``right`` metres to the right of it."""
    at, angle = line.interpolate(metres), radians(heading(line, metres))
    return at.x + right * sin(angle), at.y - right * cos(angle)


def blob(
    middle: Place,
    area: float,
    random: np.random.Generator,
    *,
    stretch: float = 1.3,
    angle: float = 0.0,
    wobble: float = 0.10,
) -> Polygon:
    """Return a rounded, slightly irregular shape of the given area in square metres."""
    theta = np.linspace(0, 2 * pi, 40, endpoint=False)
    radius = np.ones_like(theta)
    for k in (2, 3, 4):
        radius += wobble / (k - 1) * random.uniform(0.4, 1) * np.cos(k * theta + random.uniform(0, 2 * pi))
    shape = Polygon(np.column_stack([radius * np.cos(theta), radius * np.sin(theta)]))
    shape = scale(shape, stretch, 1, origin=(0, 0))
    factor = sqrt(area / shape.area)
    shape = rotate(scale(shape, factor, factor, origin=(0, 0)), angle, origin=(0, 0))
    return translate(shape, *middle)


def kidney(middle: Place, area: float, random: np.random.Generator, angle: float) -> Polygon:
    """Return a bean-shaped hollow of the given area, bent to one side."""
    spine = curve([(-1.0, 0.28), (0.0, -0.1), (1.0, 0.28)], steps=8)
    widths = [0.72, 0.86, 0.8] if random.random() < 0.5 else [0.82, 0.74, 0.66]
    along = np.interp(np.linspace(0, 1, len(spine)), [0, 0.5, 1], widths)
    shape = unary_union([Point(x, y).buffer(r) for (x, y), r in zip(spine, along, strict=True)])
    assert isinstance(shape, Polygon)
    factor = sqrt(area / shape.area)
    turned = rotate(scale(shape, factor, factor, origin=(0, 0)), angle, origin=(0, 0)).simplify(0.05)
    assert isinstance(turned, Polygon)
    return translate(turned, *middle)


def swept(line: LineString, start: float, end: float, half_widths: Sequence[float]) -> Polygon:
    """Return a band along ``line`` between two distances, its half width varying smoothly."""
    stations = np.arange(start, end, 4.0)
    nodes = np.linspace(start, end, len(half_widths))
    smooth = curve([(float(d), w) for d, w in zip(nodes, half_widths, strict=True)], steps=12)
    radii = np.interp(stations, smooth[:, 0], smooth[:, 1])
    discs = [line.interpolate(d).buffer(r) for d, r in zip(stations, radii, strict=True)]
    band = unary_union(discs)
    assert isinstance(band, Polygon)
    return rounded(band, 4.0)


def rounded(shape: Polygon, radius: float) -> Polygon:
    """Return ``shape`` with its dents and corners rounded."""
    soft = shape.buffer(radius).buffer(-2 * radius).buffer(radius).simplify(0.06)
    assert isinstance(soft, Polygon)
    return soft
