"""A simple polygon cut into convex pieces: ears are clipped, then joined again where that stays convex."""

import numpy as np

from marram.relief.geometry.corners import Floats

_FLAT = 1e-12


def convex_pieces(points: Floats) -> list[Floats]:
    """Return convex polygons that together make up a simple polygon given anticlockwise, without holes.

    (Ear clipping after Meisters, 1975; joining after Hertel and Mehlhorn, 1983.)
    """
    if _all_convex(points):
        return [points]
    pieces = _triangles(points)
    joined = True
    while joined:
        joined = False
        for i, one in enumerate(pieces):
            for j in range(i + 1, len(pieces)):
                merged = _merged(one, pieces[j])
                if merged is not None and _is_convex(points, merged):
                    pieces[i] = merged
                    del pieces[j]
                    joined = True
                    break
            if joined:
                break
    return [points[piece] for piece in pieces]


def _all_convex(points: Floats) -> bool:
    closed = np.concatenate((points[-1:], points, points[:1]))
    steps = closed[1:] - closed[:-1]
    turns = steps[:-1, 0] * steps[1:, 1] - steps[:-1, 1] * steps[1:, 0]
    return bool((turns >= -_FLAT).all())


def _turn(points: Floats, a: int, b: int, c: int) -> float:
    (ax, ay), (bx, by), (cx, cy) = points[a], points[b], points[c]
    return float((bx - ax) * (cy - by) - (by - ay) * (cx - bx))


def _is_convex(points: Floats, ring: list[int]) -> bool:
    count = len(ring)
    return all(_turn(points, ring[i - 1], ring[i], ring[(i + 1) % count]) >= -_FLAT for i in range(count))


def _triangles(points: Floats) -> list[list[int]]:
    ring = list(range(len(points)))
    triangles = []
    while len(ring) > 3:
        ear = next((i for i in range(len(ring)) if _is_ear(points, ring, i)), 0)
        triangles.append([ring[ear - 1], ring[ear], ring[(ear + 1) % len(ring)]])
        del ring[ear]
    return [*triangles, ring]


def _is_ear(points: Floats, ring: list[int], i: int) -> bool:
    a, b, c = ring[i - 1], ring[i], ring[(i + 1) % len(ring)]
    if _turn(points, a, b, c) <= _FLAT:
        return False
    rest = points[[one for one in ring if one not in (a, b, c)]]
    inside = np.ones(len(rest), dtype=bool)
    for start, end in ((a, b), (b, c), (c, a)):
        along = points[end] - points[start]
        inside &= along[0] * (rest[:, 1] - points[start][1]) - along[1] * (rest[:, 0] - points[start][0]) >= 0
    return not inside.any()


def _merged(one: list[int], other: list[int]) -> list[int] | None:
    """Return two rings joined along the edge they share in opposite directions."""
    for i, start in enumerate(one):
        end = one[(i + 1) % len(one)]
        for j, back in enumerate(other):
            if back == end and other[(j + 1) % len(other)] == start:
                around = [other[(j + 2 + k) % len(other)] for k in range(len(other) - 2)]
                return [*one[: i + 1], *around, *one[i + 1 :]]
    return None
