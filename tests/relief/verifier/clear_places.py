"""Where lie, stance and swing are clear of a condition, found without marram's construction.

Twice, and apart: as a region, by sums of triangles (a place is not clear when the ground taken up there meets the
condition: the condition and the mirrored footprint added point by point); and by trying places, squares that
are wholly taken being passed over, down to a fine grid (``first_clear``).
"""

import numpy as np
import shapely

from tests.relief.verifier.regions import Region
from tests.relief.verifier.rule_limits import least_and_most

FINEST = 0.0025
"""Metres: the grid on which places nearer than the reference point are looked for."""
COARSEST = 256
"""Finest steps: the side of the squares that the search begins with."""
TOUCHING = 1e-5
"""Square metres of overlap that are but rounding and the fourth digit of a drawn corner (5 mm by 2 mm)."""


def sum_of(one, other):
    """Return the Minkowski sum of two polygonal geometries, from their triangles."""
    hulls = []
    for first in _triangles(one):
        hulls += [(first[:, None, :] + second[None]).reshape(-1, 2) for second in _triangles(other)]
    if not hulls:
        return shapely.Polygon()
    return shapely.union_all(shapely.convex_hull([shapely.MultiPoint(points) for points in hulls]))


def _triangles(geometry):
    found = []
    for part in shapely.get_parts(geometry):
        if part.is_empty or part.geom_type != "Polygon":
            continue
        if not part.interiors and part.convex_hull.area - part.area < 1e-9:
            found.append(shapely.get_coordinates(part.exterior)[:-1])
            continue
        triangles = shapely.get_parts(shapely.constrained_delaunay_triangles(part))
        found += [shapely.get_coordinates(triangle)[:3] for triangle in triangles]
    return found


def taken_region(conditions, footprint, window):
    """Return the places, as far as they matter in a window, where a footprint meets one of some conditions.

    Args:
        conditions: the region of the conditions.
        footprint: what lie, stance and swing take up about a ball at (0, 0).
        window: the ground of interest (its bounds are used).
    """
    low_x, low_y, high_x, high_y = window
    reach = np.hypot(*shapely.get_coordinates(footprint).T).max() + 0.1
    box = shapely.box(low_x - reach, low_y - reach, high_x + reach, high_y + reach)
    mirrored = shapely.transform(footprint, lambda points: -points)
    sums = []
    for shape in (conditions.least, conditions.most):
        near = shapely.intersection(shape.geometry, box)
        sums.append(sum_of(near, mirrored))
        if conditions.most is conditions.least:
            break
    return Region.of(*sums) if len(sums) == 2 else Region.of(sums[0])


def placed(footprint, places):
    """Return the footprint's parts at each of some places: an array of (parts, places)."""
    parts = shapely.get_parts(footprint)
    rows = []
    for part in parts:
        points = shapely.get_coordinates(part.exterior)
        rows.append(shapely.polygons(places[:, None, :] + points[None]))
    return np.asarray(rows, dtype=object)


def meets(condition, footprint, places, slack=0.0):
    """Return for each place whether a footprint there overlaps a condition by more than touching."""
    if condition.is_empty or not len(places):
        return np.zeros(len(places), dtype=bool)
    shrunk = condition.buffer(-slack) if slack else condition
    shapely.prepare(shrunk)
    return shapely.intersects(shrunk, placed(footprint, places)).any(axis=0)


def first_clear(ball, footprint, condition, admits, within, *, slack=0.0005):
    """Return a place within a distance of a ball that is clear and admitted, tried on ever finer grids.

    Args:
        ball: the ball, metres.
        footprint: lie, stance and swing about a ball at (0, 0).
        condition: geometry that the footprint must not meet.
        admits: a function of places (rows) to the strict margin of all other limits.
        within: metres from the ball that are searched.
        slack: metres by which a place found must be clear of everything.

    Returns:
        The place and its distance, or ``None``.
    """
    size = COARSEST * FINEST
    count = int(np.ceil(within / size)) + 1
    along = (np.arange(-count, count + 1)) * size
    x, y = np.meshgrid(ball[0] + along, ball[1] + along)
    middles = np.column_stack([x.ravel(), y.ravel()])
    grown = condition.buffer(slack)
    while len(middles):
        half = size / np.sqrt(2)
        away = np.hypot(*(middles - ball).T)
        near = away - half < within
        middles, away = middles[near], away[near]
        admitted = admits(middles) if len(middles) else np.empty(0)
        good = np.flatnonzero((away <= within) & (admitted >= slack))
        free = good[~meets(grown, footprint, middles[good])]
        if len(free):
            first = free[np.argmin(away[free])]
            return middles[first], float(away[first])
        if size <= FINEST * 1.01:
            return None
        # Everything within the square is refused when its middle is refused by more than half its diagonal.
        middles = middles[admitted > -half]
        deep = condition.buffer(-half)
        if not deep.is_empty and len(middles):
            middles = middles[~meets(deep, footprint, middles)]
        size /= 2
        quarters = np.array([(-1, -1), (-1, 1), (1, -1), (1, 1)]) * size / 2
        middles = (middles[:, None, :] + quarters[None]).reshape(-1, 2)
    return None


def nearer_place(conditions, footprint, limits, ball, within):
    """Return an allowed and clear place no farther than a distance from the ball, and how far it is, or ``None``."""
    low = shapely.box(*(ball - within - 6), *(ball + within + 6))
    near = shapely.intersection(conditions.most.geometry, low)

    def admits(places):
        return least_and_most(limits, places, 0.6)[0]

    return first_clear(ball, footprint, near, admits, within)
