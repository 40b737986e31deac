"""Which area of the course 100,000 balls lie in, beside general-purpose point-in-polygon in the same process.

The course is 500 areas of 40 to 80 corners over 1,200 m x 800 m, seeded, of five kinds. The peer answers less
(which points lie in which polygon) by the fastest way known with shapely: points sorted by x, a box filter,
then prepared contains_xy for each polygon; the sorting counts. marram answers the area of the course of a ball
of 42.67 mm by distance, in the order of Rule 2.2c. Its grid is laid once for a hole and timed apart.

    python bench/areas.py
"""

import statistics
import sys
import time

import numpy as np
import shapely

from marram.course import area_at, areas_of
from marram.course.lies.regions import Ground
from marram.course.model import Course, Feature, Hole, Kind
from marram.course.plane import LocalPlane

POINTS, AREAS, RUNS = 100_000, 500, 9


def polygons(seed=9):
    rng = np.random.default_rng(seed)
    found = []
    for _ in range(AREAS):
        corners = int(rng.integers(40, 81))
        turn = np.linspace(0, 2 * np.pi, corners, endpoint=False)
        size = float(rng.choice([4, 8, 15, 40], p=[0.4, 0.3, 0.2, 0.1]))
        r = size * (
            1 + 0.2 * np.sin(3 * turn + rng.uniform(0, 6)) + 0.1 * np.sin(7 * turn + rng.uniform(0, 6))
        )
        x, y = rng.uniform(-600, 600), rng.uniform(-400, 400)
        found.append(
            shapely.Polygon(np.column_stack([x + r * np.cos(turn) * rng.uniform(1, 3), y + r * np.sin(turn)]))
        )
    return found


def course(found):
    # Every area decides: kinds that do not would be left out of the grid and flatter it.
    deciding = (Kind.BUNKER, Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)
    areas = [Feature(deciding[i % 3], f"area/{i}", polygon) for i, polygon in enumerate(found)]
    boundary = Feature(
        Kind.BOUNDARY, "boundary", shapely.box(-650, -450, 650, 450), tags={"marram": "boundary"}
    )
    hole = Hole(1, shapely.LineString([(0, 0), (100, 0)]), shapely.Point(100, 0))
    return Course("bench", LocalPlane(0.0, 50.0), {1: hole}, (boundary, *areas))


def peer(prepared, bounds, places):
    order = np.argsort(places[:, 0])
    x, y = places[order, 0], places[order, 1]
    hits = 0
    for polygon, (west, south, east, north) in zip(prepared, bounds, strict=True):
        first, last = np.searchsorted(x, (west, east + 1e-12))
        within = y[first:last]
        near = (within >= south) & (within <= north)
        hits += int(shapely.contains_xy(polygon, x[first:last][near], within[near]).sum())
    return hits


def timed(call):
    taken = []
    for _ in range(RUNS):
        start = time.perf_counter()
        call()
        taken.append(time.perf_counter() - start)
    return statistics.median(taken), (max(taken) - min(taken)) / 2 / statistics.median(taken)


def main():
    found = polygons()
    places = np.random.default_rng(10).uniform([-600, -400], [600, 400], (POINTS, 2))
    prepared = np.array(found, dtype=object)
    shapely.prepare(prepared)
    bounds = shapely.bounds(prepared)
    links = course(found)
    start = time.perf_counter()
    areas_of(links, places[:1], 1)
    laid = time.perf_counter() - start
    answers = areas_of(links, places, 1)
    wrong = sum(
        (area_at(links, x, y, 1).area is None) != (answer == Ground.OUT_OF_BOUNDS)
        or (area_at(links, x, y, 1).area.value == "general_area") != (answer == Ground.GENERAL_AREA)
        for (x, y), answer in zip(places[:500].tolist(), answers[:500], strict=True)
    )
    ours, our_noise = timed(lambda: areas_of(links, places, 1))
    theirs, their_noise = timed(lambda: peer(prepared, bounds, places))
    one = timed(lambda: [area_at(links, x, y, 1) for x, y in places[:500].tolist()])[0] / 500
    print(f"{POINTS:,} balls, {AREAS} areas; median of {RUNS}")
    print(
        f"  points in polygons, sorted, prepared contains_xy  {POINTS / theirs / 1e6:6.2f} M/s  ±{their_noise:.0%}"
    )
    print(
        f"  marram areas_of                                   {POINTS / ours / 1e6:6.2f} M/s  ±{our_noise:.0%}"
    )
    print(
        f"  ratio {theirs / ours:.1f} (goal: at least 1); grid laid in {laid:.2f} s; area_at {one * 1e6:.0f} µs a ball"
    )
    print(f"  of 500 balls answered both ways, {wrong} differ")
    return 0 if theirs >= ours and not wrong else 1


if __name__ == "__main__":
    sys.exit(main())
