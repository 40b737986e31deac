"""A phone without a network reads a lie on the course map as the desk does, and offers the same, all over real maps and the demo's."""

import json
import subprocess
from datetime import date
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import shapely
from shapely import Point

from marram.course import area_at
from marram.course.loading import load
from marram.course.model import Course
from marram.demo import COURSE
from marram.desk.shell.assets import DESK
from marram.relief.place.place_facts import FAR_AWAY, place_facts
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.services.cases.conditions import Conditions
from marram.services.cases.likely import likely_here
from marram.services.ground.lies import hole_played
from marram.services.offline.course_map import map_bytes
from marram.services.offline.likely_written import likely_tables
from tests.course.real_maps import real_map
from tests.desk.offline.test_every_way import NODE
from tests.relief.verifier.real_maps import as_geojson

READ = Path(__file__).with_name("every_place.mjs")
DAY = date(2026, 6, 20)
MAPS = {
    "demo": Conditions(on=DAY, form=FormOfPlay.STROKE_PLAY, local=("E-3", "E-5")),
    "links-18.geojson": Conditions(
        on=DAY, form=FormOfPlay.MATCH_PLAY, sides=Sides.FOUR_BALL, local=("E-2", "E-4")
    ),
    "clipped-13.osm": Conditions(on=DAY, sides=Sides.FOURSOMES),
    "bare-19-lines.osm": Conditions(on=DAY, local=()),
}
"""Maps, and the conditions that what is likely rests on there."""
PLACES = 800
ROUNDED = 0.003
"""Metres: the corners of the map on the phone are rounded to a millimetre, those of a reach around them likewise."""


def opened(name: str, folder: Path) -> Course:
    """Return a map; that of lines without numbers gets them."""
    if name == "demo":
        return load(COURSE)
    path = real_map(name)
    return load(as_geojson(path, folder, number=True)) if name.startswith("bare") else load(path)


def places(course: Course, seed: int) -> list[tuple[int, float, float, float]]:
    """Return places (hole, x, y, accuracy): a third on the holes, a third anywhere, a third close to the edges of what is mapped."""
    random = np.random.default_rng(seed)
    holes = random.choice(list(course.holes), PLACES)
    shapes = [one.geometry for one in course.features]
    corners = shapely.get_coordinates(shapes)
    low, high = corners.min(axis=0), corners.max(axis=0)
    low, high = np.maximum(low, -2500), np.minimum(high, 2500)
    found = []
    for place, hole in enumerate(holes.tolist()):
        line = course.holes[hole].line
        if place % 3 == 0:
            at = shapely.get_coordinates(line.interpolate(random.uniform(0, line.length)))[0]
            at = at + random.normal(0, 25, 2)
        elif place % 3 == 1:
            at = random.uniform(low - 50, high + 50)
        else:
            at = corners[random.integers(len(corners))] + random.normal(0, 1, 2)
        found.append((hole, float(at[0]), float(at[1]), float(random.choice([0.0, 0.3, 0.3, 6.0]))))
    return found


def read(name: str, course: Course, spot: tuple[int, float, float], accuracy: float) -> dict[str, Any]:
    """Return what the desk reads of a place, in the words that ``every_place.mjs`` prints."""
    hole, x, y = spot
    found = place_facts(course, course.hole(hole), (x, y), accuracy=accuracy)
    doubts = {one.kind.value for one in area_at(course, x, y, hole, accuracy=accuracy).doubts}
    if found.metres > FAR_AWAY:
        doubts.add("far_away")
    return {
        "area": found.area.value if found.area else "out",
        "facts": dict(sorted(found.facts.items())),
        "things": list(found.things),
        "doubts": sorted(doubts),
        "words": found.sentence,
        "likely": [one.name for one in likely_here(course, (x, y), found.area, MAPS[name])],
    }


@pytest.mark.parametrize("name", MAPS)
def test_the_phone_reads_every_place_as_the_desk_does(name: str, tmp_path: Path) -> None:
    """Area, facts for the ruling, what the ball touches, every doubt and what is likely there; but for places within a rounding of an edge."""
    course = opened(name, tmp_path)
    tried = places(course, seed=12)
    degrees = [(hole, *course.plane.to_degrees(x, y), off) for hole, x, y, off in tried]
    (tmp_path / "map.json").write_bytes(map_bytes(course, {}))
    told = {"likely": likely_tables(MAPS[name]), "places": degrees}
    (tmp_path / "places.json").write_text(json.dumps(told))

    printed = subprocess.run(
        [
            NODE,
            str(READ),
            str(DESK / "offline" / "static"),
            str(tmp_path / "map.json"),
            str(tmp_path / "places.json"),
        ],
        capture_output=True,
        text=True,
        check=True,
    ).stdout.splitlines()
    lies = [json.loads(line) for line in printed]

    at = np.array([[x, y] for _, x, y, _ in tried])
    assert np.abs(np.array([one["at"] for one in lies]) - at).max() < 0.001
    back = course.plane.to_metres_all(np.array([one["back"] for one in lies]))
    assert np.abs(back - at).max() < 0.001
    different = []
    for (hole, x, y, off), (_, longitude, latitude, _), lie in zip(tried, degrees, lies, strict=True):
        nearest = hole_played(course, None, (latitude, longitude))
        assert nearest is not None
        assert nearest.line.distance(Point(x, y)) == pytest.approx(
            course.hole(lie["near"]).line.distance(Point(x, y)), abs=0.01
        )
        here = [(x, y), *((x + dx, y + dy) for dx in (-ROUNDED, 0, ROUNDED) for dy in (-ROUNDED, 0, ROUNDED))]
        if not any(lie["told"] == read(name, course, (hole, *one), off) for one in here):
            different.append((hole, x, y, off, lie["told"], read(name, course, (hole, x, y), off)))
    assert not different, f"{len(different)} of {len(tried)} differ: {different[:3]}"
    assert len({one["told"]["area"] for one in lies}) > 3
    assert len({tuple(one["told"]["likely"]) for one in lies}) > 5
