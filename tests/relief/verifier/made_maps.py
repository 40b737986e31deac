"""Made courses that hold what real maps trip over, each drawn from a seed: what it is about is added beside the first hole."""

import json
from itertools import pairwise
from pathlib import Path

import shapely
from shapely import affinity
from shapely.geometry import LineString, Point, Polygon, box

from tests.relief.verifier.drawn_course import APART, Drawing
from tests.relief.verifier.laid_over import LAID_OVER


def seams(seed):
    """A burn in five polygons, joined bunkers, a path in several lines, a green in two pieces."""
    d = Drawing(seed, "seams")
    d.holes(greens=False)
    ends = [d.hole_at(n) for n in (1, 2)]
    whole = d.blob(*ends[0], 13, 14)
    low, high = (
        shapely.intersection(whole, one)
        for one in (box(-99, 0, 99, ends[0][1] - 2.0), box(-99, ends[0][1] - 2.0, 99, 999))
    )
    d.add(low, golf="green", ref=1)
    d.add(high, golf="green", ref=1)
    d.add(d.blob(*ends[1], 12, 12), golf="green", ref=2)
    banks = [[(x, y + d.random.uniform(-2, 2)) for x in range(-40, 61, 20)] for y in (118, 126)]
    for index in range(5):
        south, north = banks[0][index : index + 2], banks[1][index : index + 2]
        overlap = (0.0, 0.4, 0.0, 0.0)[index % 4]
        d.add(
            Polygon(
                [
                    south[0],
                    (south[1][0] + overlap, south[1][1]),
                    (north[1][0] + overlap, north[1][1]),
                    north[0],
                ]
            ),
            golf="lateral_water_hazard",
        )
    d.add(box(16, 255, 22, 262), golf="bunker")
    d.add(box(22, 254, 28, 261), golf="bunker")
    d.add(box(20, 260, 25, 268), golf="bunker")
    bends = [(-25, 20), (-22, 70), (-30, 110), (-24, 160), (-27, 230)]
    for start, end in pairwise(bends):
        d.add(LineString([start, end]), golf="cartpath", width=2.4, surface="asphalt")
    d.add(LineString([(-30, 110), (-44, 112)]), golf="cartpath", width=2.4, surface="asphalt")
    d.add(box(30, 60, 38, 66), marram="ground_under_repair")
    d.add(box(36, 64, 44, 72), marram="ground_under_repair")
    return d.document()


def islands(seed):
    """Penalty areas with ground inside: an island with a bunker, a ring round the second green."""
    d = Drawing(seed, "islands")
    d.holes()
    pond = d.blob(-4, 90, 20, 16)
    d.add(pond.difference(d.blob(-4, 90, 7)), golf="lateral_water_hazard")
    d.add(d.blob(-4, 91, 2.5), golf="bunker")
    end = d.hole_at(2)
    d.add(
        Point(end).buffer(27, quad_segs=6).difference(Point(end).buffer(18, quad_segs=6)), golf="water_hazard"
    )
    d.add(box(24, 40, 34, 60).difference(box(27, 45, 30, 50)), marram="red_penalty_area")
    return d.document()


def several_ways(seed):
    """Conditions with as near a place on either side, conditions that interfere together, one with a hole in it."""
    d = Drawing(seed, "several ways")
    d.holes()
    d.add(LineString([(-20, 30), (-20, 280)]), golf="cartpath", width=2.0, surface="asphalt")
    d.add(LineString([(-17.2, 60), (-17.2, 130)]), highway="service", width=2.0, surface="asphalt")
    d.add(d.blob(18, 120, 3), marram="ground_under_repair")
    d.add(d.blob(22, 122, 2), marram="ground_under_repair")
    d.add(d.blob(20, 200, 6).difference(Point(20, 200).buffer(1.2)), marram="ground_under_repair")
    bunker = d.blob(24, 250, 6)
    d.add(bunker, golf="bunker")
    d.add(d.blob(25, 251, 2), marram="temporary_water")
    second = d.blob(-15, 205, 3.5)
    d.add(second, golf="bunker")
    d.add(second.buffer(0.3), marram="temporary_water")
    end = d.hole_at(1)
    d.add(d.blob(end[0] + 6, end[1] - 3, 2), marram="temporary_water")
    d.add(d.blob(end[0] - 12, end[1] - 4, 2), marram="temporary_water")
    second = d.hole_at(2)
    d.add(
        Point(second).buffer(4, quad_segs=4), marram="temporary_water"
    )  # about the hole: no line of play is clear
    return d.document()


def unmarked_water(seed):
    """Water without marking: a pond, streams with and without a width, one in a tunnel, one partly marked or off the course."""
    d = Drawing(seed, "unmarked water")
    d.holes()
    d.add(d.blob(10, 100, 14, 14), natural="water")
    d.add(LineString([(-60, 150), (-10, 148), (30, 153), (140, 150)]), waterway="stream", width=3)
    d.add(LineString([(-60, 60), (20, 62), (50, 66)]), waterway="ditch")
    d.add(LineString([(-60, 215), (150, 215)]), waterway="drain", tunnel="culvert")
    d.add(LineString([(50, 66), (52, 140)]), waterway="ditch", width=2)
    pond = d.blob(30, 290, 9, 12)
    d.add(pond, natural="water")
    d.add(pond.intersection(box(0, 288, 99, 400)), golf="water_hazard")
    d.add(d.blob(-45, 250, 12), natural="water")
    d.add(d.blob(70, 250, 7), landuse="basin")
    d.add(d.blob(30, 30, 7), water="pond")
    d.add(LineString([(60, -60), (64, 110), (58, 190)]), waterway="wadi", width=4)
    return d.document()


def coast(seed):
    """A coast runs along the first hole; the boundary lies out in the sea."""
    d = Drawing(seed, "coast")
    d.holes(boundary=False)
    d.add(d.around(120), marram="boundary")
    return _with_shore(d)


def coast_alone(seed):
    """The same coast with nothing that says where the course ends: the sea goes on beyond the map."""
    d = Drawing(seed, "coast alone")
    d.holes(boundary=False)
    return _with_shore(d)


def _with_shore(d):
    shore = [(-30 + d.random.uniform(-6, 6), y) for y in range(-200, 600, 25)]
    # The land lies to the left of a coastline as it is drawn: played north, the sea to the west, so it runs south.
    d.add(LineString(shore[::-1]), natural="coastline")
    d.add(d.blob(-24, 200, 4), golf="bunker")
    return d.document()


def double_greens(seed):
    """A green shared by both holes, two greens side by side, and a practice green; wrong greens all."""
    d = Drawing(seed, "double greens")
    d.holes(numbers=(1, 2), greens=False)
    d.holes_ends = [g.coords[-1] for g, t in d.things if t.get("golf") == "hole"]
    d.add(LineString([(45, 0), (40, 180), (44, 318)]), golf="hole", ref=3, par=4)
    (x1, y1), (x2, y2) = d.holes_ends
    d.add(
        shapely.union_all([d.blob(x1, y1, 13, 12), d.blob(44, 318, 13, 12), box(x1, 316, 44, 326)]),
        golf="green",
        holes="1;3",
    )
    d.add(d.blob(x2, y2, 11, 12), golf="green", ref=2)
    for place, ref in (((x1, y1), 1), ((44, 318), 3), ((x2, y2), 2)):
        d.add(Point(place), golf="pin", ref=ref)
    d.add(d.blob(20, 285, 7), golf="green")
    d.add(d.blob(25, 180, 9), golf="green")
    d.add(d.blob(33, 182, 3), golf="bunker")
    return d.document()


def two_courses(seed):
    """Two courses in one file, their holes numbered alike, their boundaries side by side."""
    features = []
    for name, shift in (("North Links", (0.0, 0.0)), ("South Links", (700.0, 40.0))):
        d = Drawing(seed, name, shift)
        d.holes(boundary=False)
        d.add(d.around(), leisure="golf_course", name=name)
        d.add(d.blob(16, 110, 9), golf="lateral_water_hazard")
        d.add(LineString([(-20, 30), (-20, 280)]), golf="cartpath", width=2.0, surface="asphalt")
        features += d.document()
    return [{**one, "id": f"made/{number}"} for number, one in enumerate(features)]


def no_boundary(seed):
    """Nothing says where the course ends; the second hole is long."""
    d = Drawing(seed, "no boundary")
    d.holes(boundary=False)
    d.add(LineString([(150, -420), (150, 0), (152, 260)]), golf="hole", ref=3, par=5)
    d.add(d.blob(152, 260, 12), golf="green", ref=3)
    d.add(box(138, -400, 160, 190), golf="fairway", holes=3)
    d.add(d.blob(16, 110, 9), golf="lateral_water_hazard")
    return d.document()


def buildings(seed):
    """Buildings and walls near play, a path along one, repair beside another."""
    d = Drawing(seed, "buildings")
    d.holes()
    d.add(box(-24, 120, -14, 132), building="yes")
    d.add(affinity.rotate(box(16, 200, 22, 209), d.random.uniform(0, 90)), building="yes")
    d.add(box(-20, 220, -19.6, 250), marram="obstruction", barrier="wall")
    d.add(LineString([(-12.5, 60), (-12.5, 220)]), golf="cartpath", width=1.8, surface="asphalt")
    d.add(d.blob(24, 206, 2.5), marram="ground_under_repair")
    d.add(box(-44.5, 20, -30, 40), building="yes")
    d.add(d.blob(-28, 126, 6), golf="bunker")
    return d.document()


def out_for_one_hole(seed):
    """Ground out of bounds inside the course for one hole only, and a boundary drawn as lines that meet."""
    d = Drawing(seed, "out for one hole")
    d.holes(boundary=False)
    corners = list(d.around(30).exterior.coords)
    for start, end in pairwise(corners):
        d.add(LineString([start, end]), marram="boundary")
    d.add(box(14, 60, 40, 210), marram="out_of_bounds", holes=1)
    d.add(box(60, 220, 76, 300), marram="out_of_bounds")
    d.add(d.blob(18, 215, 8), golf="lateral_water_hazard")
    d.add(LineString([(-20, 30), (-20, 280)]), golf="cartpath", width=2.0, surface="asphalt")
    return d.document()


def tee_of_the_day(seed):
    """The teeing area of the day is drawn on part of the mown tee; balls lie about it."""
    d = Drawing(seed, "tee of the day")
    d.holes()
    d.add(box(-3, -1, 3, 1.3), marram="teeing_area", holes=1)
    d.add(box(APART - 2, 0, APART + 3, 2.2), marram="teeing_area", holes=2)
    d.add(d.blob(6, 12, 4), golf="lateral_water_hazard")
    d.add(d.blob(-9, 6, 2), golf="bunker")
    return d.document()


MAPS = {
    "seams": seams,
    "islands": islands,
    "several ways": several_ways,
    "unmarked water": unmarked_water,
    "coast": coast,
    "coast alone": coast_alone,
    "double greens": double_greens,
    "two courses": two_courses,
    "no boundary": no_boundary,
    "buildings": buildings,
    "out for one hole": out_for_one_hole,
    "tee of the day": tee_of_the_day,
    **LAID_OVER,
}
"""Every made map by name."""

COURSES = {"two courses": "South Links"}
"""The course to choose, where a map holds several."""


def made(name, folder, seed=1):
    """Write a made map to a folder and return its path."""
    features = MAPS[name](seed)
    file = Path(folder) / f"{name.replace(' ', '_')}_{seed}.geojson"
    file.write_text(json.dumps({"type": "FeatureCollection", "features": features}), encoding="utf-8")
    return file
