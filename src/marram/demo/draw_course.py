"""Draw the demonstration course from its plan and write it as GeoJSON: ``python -m marram.demo.draw_course``.

The result is committed as ``course.geojson``; running this again gives the same file. The course is invented
and lies in the open sea.
"""

import json
from collections.abc import Iterator
from dataclasses import dataclass, field
from math import cos, radians, sin
from pathlib import Path
from typing import Any

import numpy as np
from shapely import LineString, MultiPolygon, Point, Polygon, box, prepare, to_geojson, unary_union
from shapely.affinity import rotate, translate
from shapely.geometry.base import BaseGeometry

from marram.course.plane import LocalPlane
from marram.demo import plan
from marram.demo.shapes import (
    beside,
    blob,
    closed_curve,
    curve,
    heading,
    kidney,
    line_of_play,
    rounded,
    swept,
)

SEED = 20230101
ABOUT = (
    "Quillsand Links is invented: no such club or course exists. It is drawn in the open North Sea so that it "
    "can be mistaken for no real place. Made by marram.demo.draw_course."
)


@dataclass
class Sheet:
    """The drawing under way: features in metres of the plan, in drawing order."""

    features: list[tuple[BaseGeometry, dict[str, str]]] = field(default_factory=list)

    def add(self, geometry: BaseGeometry, **tags: str) -> None:
        """Add a feature; an underscore at the end of a tag's name is dropped."""
        self.features.append((geometry, {name.rstrip("_"): value for name, value in tags.items()}))


def draw() -> dict[str, Any]:
    """Return the demonstration course as a GeoJSON feature collection."""
    random = np.random.default_rng(SEED)
    sheet = Sheet()
    outline = closed_curve(plan.BOUNDARY)
    sheet.add(outline, leisure="golf_course", name=plan.COURSE_NAME, note=ABOUT)
    sheet.add(outline, marram="boundary", name="Boundary of the course")
    water = list(_penalty_areas(sheet, outline))
    kept_off = unary_union([*water, closed_curve(plan.PRACTICE_GROUND)])
    lines = {hole.number: line_of_play(hole.line) for hole in plan.HOLES}
    for hole in plan.HOLES:
        _hole(sheet, hole, lines[hole.number], random, kept_off)
    _paths(sheet, lines)
    _marked_ground(sheet)
    _thickets(sheet, random, _no_trees(sheet, lines))
    _evacuation_points(sheet)
    return _geojson(sheet)


def _penalty_areas(sheet: Sheet, outline: Polygon) -> Iterator[Polygon]:
    west = LineString(curve(plan.BURN_WEST)).buffer(3.4, cap_style="flat")
    pool = blob((556, 470), 620, np.random.default_rng(5), stretch=1.4, angle=30)
    east = LineString(curve(plan.BURN_EAST)).buffer(3.4, cap_style="flat").union(pool)
    dry_west = west.difference(east)
    for shape, kind, name in (
        (dry_west, "lateral_water_hazard", "The Burn"),
        (east, "water_hazard", "The Burn at the first"),
        (closed_curve(plan.SALTMARSH), "lateral_water_hazard", "The Saltmarsh"),
        (
            blob((1004, 766), 2900, np.random.default_rng(8), stretch=1.9, angle=-8),
            "lateral_water_hazard",
            "The Mere",
        ),
        (
            blob((776, 583), 1900, np.random.default_rng(11), stretch=1.5, angle=8),
            "water_hazard",
            "The Cauldron",
        ),
    ):
        inside = shape.intersection(outline)
        assert isinstance(inside, Polygon), name
        tags = {} if name == "The Saltmarsh" else {"natural": "water"}
        sheet.add(inside, golf=kind, name=name, ref=name.removeprefix("The ").lower(), **tags)
        yield inside


def _thickets(sheet: Sheet, random: np.random.Generator, taken: BaseGeometry) -> None:
    """Plant the thickets of the plan, cut back from what is taken, and small clumps where there is room."""
    planted: list[BaseGeometry] = []
    for middle, long, short, angle in plan.THICKETS:
        whole = blob(middle, 3.1 * long * short, random, stretch=long / short, angle=angle, wobble=0.2)
        shape = whole.difference(taken)
        if not shape.is_empty:
            planted.append(rounded(largest_part(shape), 1.5))
    prepare(taken)
    for _ in range(260):
        place = (random.uniform(20, 1215), random.uniform(25, 890))
        size, stretch, angle = random.uniform(60, 420), random.uniform(1, 2.2), random.uniform(0, 180)
        clump = blob(place, size, random, stretch=stretch, angle=angle, wobble=0.22)
        if clump.disjoint(taken) and all(clump.distance(other) > 5 for other in planted):
            planted.append(clump)
    for thicket in planted:
        sheet.add(thicket, natural="wood", name="Pine thicket")


def largest_part(shape: BaseGeometry) -> Polygon:
    """Return the largest polygon of ``shape``."""
    largest = max(getattr(shape, "geoms", [shape]), key=lambda part: part.area)
    assert isinstance(largest, Polygon)
    return largest


def _no_trees(sheet: Sheet, lines: dict[int, LineString]) -> BaseGeometry:
    """Return where nothing may grow: along the holes, at tees, water, paths and marked ground, off the course."""
    outline = closed_curve(plan.BOUNDARY)
    marked = [shape.buffer(7) for shape, tags in sheet.features if not tags.keys() & {"leisure"} and tags.get("marram") != "boundary"]  # fmt: skip
    corridors = [line.buffer(41) for line in lines.values()]
    walk = box(520, 0, 690, 175)
    return unary_union(
        [*marked, *corridors, walk, box(-500, -500, 1800, 1500).difference(outline.buffer(-12))]
    )


def _hole(
    sheet: Sheet, hole: plan.HolePlan, line: LineString, random: np.random.Generator, water: BaseGeometry
) -> None:
    ref = str(hole.number)
    green_at = (line.coords[-1][0], line.coords[-1][1])
    angle = heading(line, line.length)
    green = blob(
        green_at, random.uniform(430, 590), random, stretch=random.uniform(1.1, 1.4), angle=angle + random.uniform(-50, 50)
    )  # fmt: skip
    sheet.add(line, golf="hole", ref=ref, name=hole.name, par=str(hole.par), handicap=str(hole.stroke_index))
    first_cut = swept(line, 60 if hole.par > 3 else line.length - 40, line.length + 0.1, _wavy(random))
    sheet.add(_dry(first_cut, water), golf="rough", ref=ref)
    for fairway in _fairway(line, random, water, green) if hole.par > 3 else [green.buffer(6.5)]:
        sheet.add(fairway, golf="fairway", ref=ref, holes=ref)
    sheet.add(green, golf="green", ref=ref)
    _tees(sheet, hole, line)
    taken: list[BaseGeometry] = [green.buffer(2.0), water.buffer(4)]
    for bunker in _bunkers(hole, line, green, angle, random):
        if all(bunker.disjoint(other) for other in taken):
            sheet.add(bunker, golf="bunker", ref=ref)
            taken.append(bunker.buffer(3))
    x, y = green_at
    pin = Point(x + random.uniform(-5, 5), y + random.uniform(-5, 5))
    sheet.add(pin, golf="pin", ref=ref)


def _wavy(random: np.random.Generator) -> list[float]:
    return [24.0, *random.uniform(29, 38, 6), 31.0]


def _dry(shape: Polygon, water: BaseGeometry) -> BaseGeometry:
    rest = shape.difference(water.buffer(2))
    parts = [part for part in getattr(rest, "geoms", [rest]) if part.area > 300]
    return rounded(parts[0], 3) if len(parts) == 1 else MultiPolygon([rounded(part, 2) for part in parts])


def _fairway(
    line: LineString, random: np.random.Generator, water: BaseGeometry, green: Polygon
) -> Iterator[Polygon]:
    start = 125 if line.length > 330 else 100
    widths = [9.0, *random.uniform(13, 17, 6), 12.5]
    whole = swept(line, start, line.length - 4, widths).union(green.buffer(4))
    rest = whole.difference(water.buffer(4))
    for part in rest.geoms if isinstance(rest, MultiPolygon) else [rest]:
        if isinstance(part, Polygon) and part.area > 250:
            yield rounded(part, 3)


def _tees(sheet: Sheet, hole: plan.HolePlan, line: LineString) -> None:
    forward = {3: (0, 20, 39), 4: (0, 24, 55), 5: (0, 26, 60)}[hole.par]
    for name, ahead, aside in zip(("white", "yellow", "red"), forward, (0, 3, -3), strict=True):
        x, y = beside(line, ahead + 1, aside)
        pad = rounded_box(9, 15 if ahead else 18, 2)
        pad = rotate(pad, heading(line, ahead) - 90, origin=(0, 0))
        sheet.add(translate(pad, x, y), golf="tee", ref=str(hole.number), tee=name)


def rounded_box(width: float, depth: float, radius: float) -> Polygon:
    """Return a rectangle with rounded corners around the origin, ``depth`` along y."""
    return box(-width / 2 + radius, -depth / 2 + radius, width / 2 - radius, depth / 2 - radius).buffer(
        radius, quad_segs=4
    )


def _bunkers(
    hole: plan.HolePlan, line: LineString, green: Polygon, angle: float, random: np.random.Generator
) -> Iterator[Polygon]:
    for bearing, area in plan.GREENSIDE_BUNKERS[hole.number]:
        outward = radians(angle - bearing)
        direction = (cos(outward), sin(outward))
        seed = np.random.default_rng(int(bearing) + hole.number)
        shape = kidney((0.0, 0.0), area, seed, angle - bearing + 90)
        away = 6.0
        while True:
            x, y = green.centroid.x + away * direction[0], green.centroid.y + away * direction[1]
            bunker = translate(shape, x, y)
            if bunker.distance(green) > 2.2:
                break
            away += 0.5
        yield bunker
    for along, right, area in hole.bunkers:
        turn = heading(line, along) + random.uniform(-25, 25)
        yield kidney(beside(line, along, right), area, random, turn)


def _paths(sheet: Sheet, lines: dict[int, LineString]) -> None:
    for hole in plan.HOLES:
        if not hole.path_side:
            continue
        line = lines[hole.number]
        stations = np.arange(6, line.length - 45, 24)
        places = [beside(line, d, hole.path_side * (33 + 4 * sin(d / 37))) for d in stations]
        if hole.number == 17:
            places = [beside(line, d, 38) for d in (4, 60, 118, 176)]
        sheet.add(LineString(curve(places, steps=12)), golf="cartpath", surface="asphalt", width="2.4")
    drive = curve([(604, 15), (606, 60), (590, 92), (606, 132), (600, 168)])
    sheet.add(LineString(drive), golf="path", highway="service", surface="gravel", width="3.5")
    bridge = rotate(box(-1.5, -6, 1.5, 6), 4, origin=(0, 0))
    sheet.add(translate(bridge, 500, 447), marram="obstruction", name="Bridge over the Burn")
    club_house = unary_union([box(596, 48, 630, 62), box(618, 48, 632, 84)])
    sheet.add(club_house, marram="obstruction", building="clubhouse", name="Club house")
    sheet.add(
        translate(rounded_box(5, 4, 0.5), 1018, 452), marram="obstruction", building="yes", name="Shelter"
    )
    sheet.add(
        translate(rounded_box(4, 4, 0.5), 205, 760), marram="obstruction", building="yes", name="Pump house"
    )


def _marked_ground(sheet: Sheet) -> None:
    random = np.random.default_rng(77)
    sheet.add(closed_curve(plan.PRACTICE_GROUND), marram="out_of_bounds", name="Practice ground")
    sheet.add(
        blob((268, 64), 190, random, stretch=1.6, angle=10), marram="ground_under_repair", name="New drain"
    )
    sheet.add(blob((664, 408), 130, random), marram="ground_under_repair", name="Reseeded fairway")
    sheet.add(
        blob((856, 224), 150, random, stretch=1.5), marram="ground_under_repair", name="Old pipe trench"
    )
    sheet.add(
        blob((182, 832), 160, random, stretch=1.5, angle=15), marram="temporary_water", name="Standing water"
    )
    sheet.add(
        blob((1092, 330), 420, random, stretch=1.5, angle=80), marram="no_play_zone", name="Orchid ground"
    )
    sheet.add(
        blob((1026, 762), 420, random, stretch=1.3), marram="no_play_zone", name="Nesting reeds in the Mere"
    )
    sheet.add(rotate(translate(rounded_box(5, 5, 1.2), 806, 622), 8), marram="dropping_zone", name="Dropping zone of the Cauldron", serves="cauldron", holes="17")  # fmt: skip
    sheet.add(translate(rounded_box(5, 5, 1.2), 1168, 330), marram="dropping_zone", name="Dropping zone of the Saltmarsh", serves="saltmarsh", holes="14")  # fmt: skip


def _evacuation_points(sheet: Sheet) -> None:
    """Where people go when play is stopped for danger; drawn last, so that what was drawn before keeps its numbers."""
    for name, place, what in plan.EVACUATION_POINTS:
        sheet.add(Point(place).buffer(4, 4), marram="evacuation_point", name=name, evacuation=what)


def _geojson(sheet: Sheet) -> dict[str, Any]:
    middle = (620.0, 455.0)
    corner = LocalPlane(plan.LONGITUDE, plan.LATITUDE)
    plane = LocalPlane(*corner.to_degrees(*middle))
    features = []
    for number, (shape, tags) in enumerate(sheet.features, start=1):
        placed = json.loads(to_geojson(plane.outward(translate(shape, -middle[0], -middle[1]))))
        placed["coordinates"] = _short(placed["coordinates"])
        features.append(
            {"type": "Feature", "id": f"quillsand/{number}", "properties": tags, "geometry": placed}
        )
    return {"type": "FeatureCollection", "name": plan.COURSE_NAME, "description": ABOUT, "features": features}


def _short(numbers: Any) -> Any:
    """Round degrees to 7 places: about a centimetre on the ground."""
    return round(numbers, 7) if isinstance(numbers, float) else [_short(one) for one in numbers]


def main() -> None:
    """Write ``course.geojson`` beside this file, one feature a line."""
    drawing = draw()
    features = drawing.pop("features")
    head = json.dumps(drawing, ensure_ascii=False)[:-1]
    body = ",\n".join(json.dumps(one, ensure_ascii=False) for one in features)
    target = Path(__file__).with_name("course.geojson")
    target.write_text(f'{head}, "features": [\n{body}\n]}}\n', encoding="utf-8")


if __name__ == "__main__":
    main()
