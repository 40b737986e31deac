"""The nearest point and relief areas beside other constructions: how fast, and how right.

Run:  python bench/relief.py [--queries 10000] [--beside 100]

1. Nearest point of complete relief beside, in the same run,
   - the union of convex hulls per edge near the ball (shapely), then the nearest boundary point;
   - sampling a 1 cm grid by distance from the ball, first permitted place.
   Obstruction: a curved path 3 m wide and 200 m long, 200 vertices; footprint: 40 vertices, turned each time.
2. Seeded random queries (convex and dented footprints, one and several obstructions): every answer is checked
   with shapely on the original shapes, and for one in twenty the distance against the cleaned union.
3. Lateral relief areas at random ponds: places and sizes beside a 1 cm grid judged by plain distances.
Times are medians of the best of three; "error" compares distances with the cleaned union of the whole sum.
"""

import argparse
import math
import random
import statistics
import sys
import time
from datetime import date
from pathlib import Path

import numpy as np
import shapely

sys.path.insert(0, str(Path(__file__).parents[1]))

from marram.course.model import Feature, Kind
from marram.relief import Drawn, Player, Situation, relief_areas
from marram.relief.geometry.outline import Outline
from marram.relief.interference.interference import FootprintOn
from marram.relief.interference.nearest_point import nearest_point
from marram.relief.interference.shape import Footprint, Shape
from tests.relief import ground_for_tests as invented

REACH = 10.0


def centre_line(count):
    along = np.linspace(0.0, 200.0, 4001)
    heading = 0.9 * np.sin(2 * math.pi * along / 90.0) + 0.25 * np.sin(2 * math.pi * along / 41.0 + 1.0)
    step = along[1] - along[0]
    x = np.concatenate([[0.0], np.cumsum(np.cos(heading[:-1]) * step)])
    y = np.concatenate([[0.0], np.cumsum(np.sin(heading[:-1]) * step)])
    kept = np.linspace(0, len(along) - 1, count).round().astype(int)
    return np.stack([x[kept], y[kept]], 1), heading[kept]


def path(width=3.0, vertices=200):
    middle, heading = centre_line(vertices // 2)
    across = np.stack([-np.sin(heading), np.cos(heading)], 1) * width / 2
    return np.concatenate([middle + across, (middle - across)[::-1]])


def oval(*, dented, vertices=40):
    turn = np.linspace(0, 2 * math.pi, vertices, endpoint=False)
    radius = np.ones_like(turn)
    if dented:
        radius -= 0.35 * np.exp(-(((turn - 1.8) / 0.5) ** 2)) + 0.25 * np.exp(-(((turn - 4.4) / 0.4) ** 2))
    return np.stack([1.3 * radius * np.cos(turn) - 0.9, 0.95 * radius * np.sin(turn) - 0.35], 1)


def turned(points, angle):
    c, s = math.cos(angle), math.sin(angle)
    return points @ np.array([[c, s], [-s, c]])


def queries(count, seed=5):
    rng = random.Random(seed)
    middle, heading = centre_line(1001)
    for _ in range(count):
        k, off = rng.randrange(80, 920), rng.uniform(-1.4, 1.4)
        ball = middle[k] + off * np.array([-math.sin(heading[k]), math.cos(heading[k])])
        away, angle = rng.uniform(60, 180), rng.uniform(-math.pi, math.pi)
        yield ball, ball + away * np.array([math.cos(angle), math.sin(angle)]), angle


def swept(edges, corners):
    ends = (edges[:, :, None, :] - corners[None, None, :, :]).reshape(len(edges), -1, 2)
    return shapely.convex_hull(shapely.multipoints(ends))


def union_of_hulls(points, corners, ball=None):
    """Minkowski sum by the union of hulls of all edges, or of those within reach of a ball."""
    edges = np.stack([points, np.roll(points, -1, axis=0)], 1)
    whole = shapely.polygons(points)
    if ball is not None:
        within = REACH + np.hypot(*corners.T).max()
        near = shapely.distance(shapely.linestrings(edges), shapely.points(ball)) <= within
        box = shapely.box(*(ball - within), *(ball + within))
        edges, whole = edges[near], shapely.intersection(whole, box)
    moved = shapely.transform(whole, lambda at: at - corners[0])
    return shapely.union_all([moved, *swept(edges, corners)])


def nearest_boundary(total, ball, hole):
    """Distance to the nearest boundary point of sum and circle together (a circle of 4096 corners)."""
    angles = np.linspace(0, 2 * math.pi, 4096, endpoint=False)
    radius = np.hypot(*(ball - hole))
    disc = shapely.polygons(hole + radius * np.stack([np.cos(angles), np.sin(angles)], 1))
    window = shapely.box(*(ball - REACH), *(ball + REACH))
    free = shapely.difference(window, shapely.union(total, disc))
    return float(shapely.distance(free, shapely.points(ball)))


def cleaned(shape, least=1e-6):
    parts = [
        shapely.Polygon(
            part.exterior, [ring for ring in part.interiors if shapely.Polygon(ring).area > least]
        )
        for part in shapely.get_parts(shape)
    ]
    return shapely.MultiPolygon(parts)


def exact_distance(total, ball, hole):
    """Distance to the boundary of a cleaned sum outside the circle, in closed form per segment."""
    rings = shapely.get_rings(shapely.get_parts(total))
    best, least = math.inf, np.hypot(*(ball - hole))
    for ring in rings:
        points = shapely.get_coordinates(ring) - ball
        moves = (np.diff(points, axis=0) != 0).any(axis=1)
        start, along = points[:-1][moves], np.diff(points, axis=0)[moves]
        length = (along**2).sum(1)
        to = start - (hole - ball)
        half = (to * along).sum(1) / length
        rest = ((start**2).sum(1) - 2 * (start * (hole - ball)).sum(1)) / length
        root = np.sqrt(np.maximum(half**2 - rest, 0))
        foot = np.clip(-(start * along).sum(1) / length, 0, 1)
        for part in (foot, -half - root, -half + root):
            at = start + part[:, None] * along
            ok = (part >= 0) & (part <= 1) & (np.hypot(*(at - (hole - ball)).T) >= least - 1e-9)
            if ok.any():
                best = min(best, float(np.hypot(*at[ok].T).min()))
    return best


def sampled(points, corners, ball, hole):
    """First permitted place of a 1 cm grid, by distance."""
    steps = np.arange(-400, 401) * 0.01
    x, y = (one.ravel() for one in np.meshgrid(steps, steps))
    order = np.argsort(x * x + y * y)
    obstruction = shapely.polygons(points)
    shapely.prepare(obstruction)
    least = np.hypot(*(ball - hole))
    for start in range(0, len(order), 2000):
        some = np.stack([x[order[start : start + 2000]], y[order[start : start + 2000]]], 1)
        some = some[np.hypot(*(some + ball - hole).T) >= least]
        placed = shapely.polygons(corners[None] + (some + ball)[:, None, :])
        free = ~shapely.intersects(obstruction, placed)
        if free.any():
            return float(np.hypot(*some[np.argmax(free)]))
    return math.inf


def timed(work, items, runs=3):
    best = [math.inf] * len(items)
    for _ in range(runs):
        for i, item in enumerate(items):
            start = time.perf_counter()
            work(item)
            best[i] = min(best[i], time.perf_counter() - start)
    return sorted(best)


def microseconds(times):
    p95 = times[min(len(times) - 1, int(0.95 * len(times)))]
    return f"p50 {statistics.median(times) * 1e6:8.0f} µs   p95 {p95 * 1e6:8.0f} µs"


def beside_others(count):
    print("1. nearest point of complete relief, one path, convex footprint")
    points, corners = path(), oval(dented=False)
    outline, shape = Outline(shapely.polygons(points)), Shape(shapely.polygons(corners))
    items = list(queries(count))
    found = []

    def ours(query):
        ball, hole, angle = query
        return nearest_point(tuple(ball), [FootprintOn((outline,), Footprint(shape, (), angle))], tuple(hole))

    def ours_from_polygon(query):
        ball, hole, angle = query
        made = Footprint.of(shapely.polygons(turned(corners, angle)))
        return nearest_point(tuple(ball), [FootprintOn((outline,), made)], tuple(hole))

    def hulls(query):
        ball, hole, angle = query
        return nearest_boundary(union_of_hulls(points, turned(corners, angle), ball), ball, hole)

    ours(items[0])
    mine = timed(ours, items)
    mine_polygon = timed(ours_from_polygon, items)
    theirs = timed(hulls, items)
    grid = timed(lambda query: sampled(points, turned(corners, query[2]), *query[:2]), items[:5], 1)
    for query in items:
        ball, hole, angle = query
        truth = exact_distance(cleaned(union_of_hulls(points, turned(corners, angle))), ball, hole)
        found.append((ours(query).metres - truth, hulls(query) - truth))
    print(
        f"   marram, shape known, turned   {microseconds(mine)}   worst error {max(abs(e) for e, _ in found):.1e} m"
    )
    print(f"   marram, from a polygon        {microseconds(mine_polygon)}")
    wrong = sum(abs(e) > 0.02 for _, e in found)
    print(
        f"   union of hulls near the ball  {microseconds(theirs)}   off by more than 2 cm: {wrong} of {count}"
    )
    print(f"   1 cm grid, first permitted    {microseconds(grid)}")
    ratio = statistics.median(theirs) / statistics.median(mine)
    print(
        f"   union of hulls / marram: {ratio:.1f}   grid / marram: {statistics.median(grid) / statistics.median(mine):.0f}"
    )


def checked_queries(count, seed=11):
    print(f"\n2. {count} seeded queries, each answer checked on the original shapes")
    rng = np.random.default_rng(seed)
    shapes = [Shape(shapely.polygons(oval(dented=dented))) for dented in (False, True)]
    middle, heading = centre_line(1001)
    trail = Outline(shapely.polygons(path()))
    invalid = unanswered = 0
    compared, worst, start = 0, 0.0, time.perf_counter()
    for number in range(count):
        k = int(rng.integers(80, 920))
        ball = middle[k] + rng.uniform(-1.4, 1.4) * np.array([-math.sin(heading[k]), math.cos(heading[k])])
        angle = rng.uniform(-math.pi, math.pi)
        hole = ball + rng.uniform(20, 180) * np.array([math.cos(angle), math.sin(angle)])
        shape = shapes[number % 2]
        facing = angle if number % 3 else rng.uniform(-math.pi, math.pi)
        conditions = [trail]
        for _ in range(number % 4):
            corners = int(rng.integers(3, 12))
            turn = np.sort(rng.uniform(0, 2 * math.pi, corners))
            radius = rng.uniform(0.4, 2.5, corners)
            at = ball + rng.uniform(-5, 5, 2)
            star = shapely.polygons(at + np.stack([radius * np.cos(turn), radius * np.sin(turn)], 1))
            if star.is_valid:
                conditions.append(Outline(star))
        footprint = Footprint(shape, (), facing)
        found = nearest_point(tuple(ball), [FootprintOn(tuple(conditions), footprint)], tuple(hole))
        if found is None:
            unanswered += 1
            continue
        everything = shapely.union_all([one.geometry for one in conditions])
        for place in found.points:
            overlap = shapely.intersection(footprint.at(place), everything).area
            nearer = math.dist(place, hole) < math.dist(ball, hole) - 1e-3
            if overlap > 1e-7 or nearer:
                invalid += 1
        if number % 20 == 0:  # the optimum too, against an independent construction
            total = []
            for one in conditions:
                for part in one.parts:
                    ring = shapely.get_coordinates(part.exterior)[:-1]
                    total.extend(union_of_hulls(ring, piece.corners) for piece in footprint.pieces)
            truth = exact_distance(cleaned(shapely.union_all(total)), ball, hole)
            if found.metres:
                compared += 1
                worst = max(worst, abs(found.metres - truth))
    seconds = time.perf_counter() - start
    print(f"   invalid answers: {invalid}   unanswered: {unanswered}   in {seconds:.0f} s")
    print(f"   compared with the cleaned union: {compared}, largest difference {worst:.1e} m")


def areas_by_sampling(count, seed=17):
    print(f"\n3. {count} lateral relief areas at random ponds beside every place of a 1 cm grid")
    rng = np.random.default_rng(seed)
    worst = beyond = 0.0
    differ = asked = 0
    for _ in range(count):
        corners = int(rng.integers(3, 10))
        turn = np.arange(corners) * 2 * math.pi / corners
        radius = rng.uniform(0.5, 4.0, corners)
        pond = shapely.polygons(np.stack([radius * np.cos(turn), radius * np.sin(turn)], 1))
        away, angle, club = rng.uniform(1, 150), rng.uniform(0, 2 * math.pi), rng.uniform(0.9, 1.2)
        hole = (away * math.cos(angle), away * math.sin(angle))
        spot = shapely.get_coordinates(
            shapely.line_interpolate_point(pond.exterior, rng.uniform(), normalized=True)
        )[0]
        course = invented.course_at(hole, Feature(Kind.RED_PENALTY_AREA, "pond", pond))
        (answer,) = relief_areas(
            Situation(
                course,
                1,
                played_on=date(2023, 6, 1),
                player=Player(club),
                entry=(float(spot[0]), float(spot[1])),
            ),
            [invented.LATERAL_PENALTY_AREA],
        )
        steps = np.arange(-250, 251) * 0.01
        x, y = (one.ravel() for one in np.meshgrid(spot[0] + steps, spot[1] + steps))
        margin = np.minimum(
            2 * club - np.hypot(x - spot[0], y - spot[1]),
            np.hypot(x - hole[0], y - hole[1]) - math.dist(spot, hole),
        )
        inside = (margin >= 0) & ~shapely.contains_xy(pond, x, y)
        areas = answer.areas if isinstance(answer, Drawn) else ()
        size = sum(area.area_m2 for area in areas)
        outline = sum(area.polygon.length for area in areas)
        worst = max(worst, abs(size - inside.sum() * 1e-4) / max(outline * 0.01, 1e-4))
        for i in rng.integers(0, len(x), 500):
            for area in areas:
                asked += 1
                verdict = area.contains(float(x[i]), float(y[i]))
                if verdict.inside != inside[i] and abs(verdict.margin) > 0.002:
                    differ += 1
                if verdict.inside:
                    beyond = max(beyond, math.dist(spot, hole) - math.dist((x[i], y[i]), hole))
    print(
        f"   places judged otherwise: {differ} of {asked}; nearest to the hole beyond the limit: {beyond * 1000:.2f} mm"
    )
    print(f"   largest difference of the size: {worst:.2f} of outline times 1 cm")


def main():
    arguments = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    arguments.add_argument("--queries", type=int, default=10_000, help="how many seeded queries to check")
    arguments.add_argument("--beside", type=int, default=100, help="how many queries to time beside others")
    arguments.add_argument("--areas", type=int, default=1000, help="how many areas to compare with a grid")
    given = arguments.parse_args()
    beside_others(given.beside)
    checked_queries(given.queries)
    areas_by_sampling(given.areas)


if __name__ == "__main__":
    main()
