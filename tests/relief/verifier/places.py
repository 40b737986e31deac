"""The places that are tried for one drawn area: a grid over and around it, and both sides of its drawn edge."""

import numpy as np
import shapely

GRID = 0.02
"""Metres: how fine the grid is; an area over some 40 m² has a coarser one, of ``MOST`` places at most."""
MOST = 100_000
SQUARE = 8
"""Grid steps: the side of the squares that are looked at first."""
BESIDE = 0.003
"""Metres to either side of the drawn edge."""
ALONG = 0.1
MOST_EDGE = 600


def grid(low, high, most=60_000):
    """Return places of a grid over a rectangle, and how fine it is."""
    extent = np.maximum(np.asarray(high) - np.asarray(low), GRID)
    step = max(GRID, float(np.sqrt(extent[0] * extent[1] / most)))
    x, y = np.meshgrid(np.arange(low[0], high[0] + step, step), np.arange(low[1], high[1] + step, step))
    return np.column_stack([x.ravel(), y.ravel()]), step


def graded(low, high, step, judge):
    """Return the places of a grid that are not settled by the square they lie in, and how many places are.

    Args:
        low, high: corners of the ground looked at.
        step: how fine the grid is, metres.
        judge: takes places and a reach to how deep each is inside what is allowed (strictly, leniently) and drawn. A
            square is settled when all three agree by more than half its diagonal.
    """
    size = SQUARE * step
    x, y = np.meshgrid(np.arange(low[0], high[0] + size, size), np.arange(low[1], high[1] + size, size))
    middles = np.column_stack([x.ravel(), y.ravel()])
    settled, first = 0, middles
    while size > step * 1.01:
        half = size / np.sqrt(2) * 1.01
        strict, lenient, drawn = judge(middles, 1.1 * half)
        alike = ((strict > half) & (drawn > half)) | ((lenient < -half) & (drawn < -half))
        settled += int(alike.sum()) * round(size / step) ** 2
        size /= 2
        quarters = np.array([(-1, -1), (-1, 1), (1, -1), (1, 1)]) * size / 2
        middles = (middles[~alike][:, None, :] + quarters[None]).reshape(-1, 2)
    return middles, settled, first


def fineness(low, high):
    """Return how fine a grid over a rectangle is, metres."""
    extent = np.maximum(np.asarray(high) - np.asarray(low), GRID)
    return max(GRID, float(np.sqrt(extent[0] * extent[1] / MOST)))


def beside_edge(polygon):
    """Return places just inside and just outside the drawn edge."""
    inside, outside = [], []
    for part in shapely.get_parts(polygon):
        if part.geom_type != "Polygon":
            continue
        for ring in (part.exterior, *part.interiors):
            count = int(np.clip(ring.length / ALONG, 12, MOST_EDGE))
            along = (np.arange(count) + 0.5) / count * ring.length
            step = 1e-5
            points = shapely.get_coordinates(shapely.line_interpolate_point(ring, along))
            ahead = shapely.get_coordinates(
                shapely.line_interpolate_point(ring, np.minimum(along + step, ring.length))
            )
            direction = ahead - points
            length = np.hypot(*direction.T)
            sound = length > step / 4
            points, direction = points[sound], direction[sound] / length[sound][:, None]
            left = np.column_stack([-direction[:, 1], direction[:, 0]]) * BESIDE
            for side in (points + left, points - left):
                held = shapely.contains_xy(polygon, side[:, 0], side[:, 1])
                inside.append(side[held])
                outside.append(side[~held])
    none = np.empty((0, 2))
    return (np.vstack(inside) if inside else none), (np.vstack(outside) if outside else none)
