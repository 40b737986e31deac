"""Relief areas on whole courses: how long each procedure takes at places of the map, map already loaded.

Run:  python bench/relief_on_maps.py [course.geojson ...] [--places 100]

Without a file the demo course is measured, and the open map of ``../shared`` where it is at hand. Places are
drawn at random where the procedure is met: balls on paths (2.4 m wide where the map knows no width), in
bunkers and on greens with a puddle of 1.5 m under them, at edges of penalty areas, and beside the line of play.

Beside every procedure the union of hulls of ``bench/relief.py`` (one path of 200 corners, a footprint of 40) is timed in the
same run, turn about, so that a busy machine slows both; "of the hulls" is the ratio of the medians.
"""

import argparse
import math
import random
import statistics
import sys
import time
from collections import Counter
from datetime import date
from pathlib import Path

import shapely

sys.path.insert(0, str(Path(__file__).parents[1]))

from bench import relief as hulls
from bench.relief import microseconds
from marram.course.loading import load
from marram.course.model import Kind
from marram.demo import COURSE
from marram.relief import Situation, relief_areas
from marram.relief.geometry.outline import Outline
from tests.relief import ground_for_tests as options

OPEN_MAP = Path(__file__).parents[2] / "shared/open-data/courses/links-18.geojson"
PATH_WIDTH = 2.4
BESIDE = 15.0
"""Metres to either side of a line of play where a ball is put."""
PENALTY_AREAS = (Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)


class Places:
    """Random places on a course, each with the hole whose line of play is nearest."""

    def __init__(self, course, seed=7):
        self.course = course
        self.rng = random.Random(seed)
        self.lines = {number: hole.line for number, hole in course.holes.items()}

    def hole_at(self, place):
        point = shapely.Point(place)
        return min(self.lines, key=lambda number: self.lines[number].distance(point))

    def beside_play(self):
        number = self.rng.choice(list(self.lines))
        line = self.lines[number]
        along = self.rng.uniform(0.2, 0.85) * line.length
        x, y = line.interpolate(along).coords[0]
        angle, away = self.rng.uniform(0, 2 * math.pi), self.rng.uniform(0, BESIDE)
        return number, (x + away * math.cos(angle), y + away * math.sin(angle))

    def inside(self, *kinds):
        shape = self.rng.choice(
            [one.geometry for kind in kinds for one in self.course.of(kind) if one.geometry.area]
        )
        least_x, least_y, greatest_x, greatest_y = shape.bounds
        while True:
            place = self.rng.uniform(least_x, greatest_x), self.rng.uniform(least_y, greatest_y)
            if shape.contains(shapely.Point(place)):
                return self.hole_at(place), place

    def edge(self, *kinds):
        shape = self.rng.choice(
            [one.geometry for kind in kinds for one in self.course.of(kind) if one.geometry.area]
        )
        place = shape.boundary.interpolate(self.rng.random(), normalized=True).coords[0]
        return self.hole_at(place), place

    def on_path(self):
        feature = self.rng.choice(self.course.of(Kind.PATH))
        shape = feature.geometry
        if not shape.area:
            shape = shape.buffer(PATH_WIDTH / 2, cap_style="flat", join_style="mitre")
        place = (
            shapely.point_on_surface(shape).coords[0] if feature.geometry.area else _along(feature, self.rng)
        )
        return self.hole_at(place), place, Outline(shape)


def _along(feature, rng):
    return feature.geometry.interpolate(rng.random(), normalized=True).coords[0]


def puddle(place):
    x, y = place
    return Outline(shapely.Point(x, y + 0.3).buffer(0.75, quad_segs=6))


def procedures(places):
    """Return for each procedure a function that makes one case: (option, hole, ball, places)."""

    def at_edge(option):
        hole, place = places.edge(*PENALTY_AREAS)
        return option, hole, None, {"entry": place}

    def beside(option, **more):
        hole, place = places.beside_play()
        return option, hole, place, more

    def stroke_and_distance():
        hole, place = places.beside_play()
        return options.STROKE_AND_DISTANCE, hole, None, {"previous": place}

    def at_path():
        hole, place, path = places.on_path()
        return options.FREE_GENERAL, hole, place, {"condition": path}

    def with_puddle(option, *kinds):
        hole, place = places.inside(*kinds)
        return option, hole, place, {"condition": puddle(place)}

    return {
        "lateral, penalty area": lambda: at_edge(options.LATERAL_PENALTY_AREA),
        "lateral, unplayable": lambda: beside(options.LATERAL_UNPLAYABLE),
        "back on the line, 2019": lambda: at_edge(options.LINE_2019),
        "back on the line, 2023": lambda: at_edge(options.LINE_2023),
        "stroke and distance": stroke_and_distance,
        "two points (E-5)": lambda: beside(options.TWO_POINTS),
        "embedded ball": lambda: beside(options.EMBEDDED),
        "free relief at a path": at_path,
        "free relief in a bunker": lambda: with_puddle(options.FREE_BUNKER, Kind.BUNKER),
        "free relief on a green": lambda: with_puddle(options.FREE_GREEN, Kind.PUTTING_GREEN),
    }


def peer():
    """Return what finds the nearest place clear of one path by the union of hulls, and queries of it."""
    points, corners = hulls.path(), hulls.oval(dented=False)

    def near(query):
        ball, hole, angle = query
        total = hulls.union_of_hulls(points, hulls.turned(corners, angle), ball)
        return hulls.nearest_boundary(total, ball, hole)

    return near, list(hulls.queries(40))


def turn_about(work, items, other, others, runs=3):
    """Return the best times of either work on its items, one after the other in turn."""
    mine, theirs = [math.inf] * len(items), [math.inf] * len(others)
    for _ in range(runs):
        for i in range(max(len(items), len(others))):
            for one, given, best in ((work, items, mine), (other, others, theirs)):
                start = time.perf_counter()
                one(given[i % len(given)])
                best[i % len(given)] = min(best[i % len(given)], time.perf_counter() - start)
    return sorted(mine), sorted(theirs)


def measure(path, count):
    start = time.perf_counter()
    course = load(path)
    print(
        f"\n{path.name}: {len(course.holes)} holes, {len(course.features)} features, loaded in {time.perf_counter() - start:.2f} s"
    )

    def draw(case):
        option, hole, ball, given = case
        (answer,) = relief_areas(
            Situation(course, hole, ball=ball, played_on=date(2023, 6, 1), player=options.PLAYER, **given),
            [option],
        )
        return answer

    beside = peer()
    for name, make in procedures(Places(course)).items():
        cases = [make() for _ in range(count)]
        answers = Counter(type(draw(case)).__name__ for case in cases)
        told = ", ".join(f"{number} {what}" for what, number in answers.most_common())
        mine, theirs = turn_about(draw, cases, *beside)
        ratio = statistics.median(mine) / statistics.median(theirs)
        print(f"   {name:26} {microseconds(mine)}   {ratio:5.2f} of the hulls   {told}", flush=True)


def main():
    arguments = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    arguments.add_argument(
        "maps", nargs="*", type=Path, help="course maps; default: demo course and open map"
    )
    arguments.add_argument("--places", type=int, default=100, help="how many places for each procedure")
    given = arguments.parse_args()
    for path in given.maps or [COURSE, *([OPEN_MAP] if OPEN_MAP.exists() else [])]:
        measure(path, given.places)


if __name__ == "__main__":
    main()
