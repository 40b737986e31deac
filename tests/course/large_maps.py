"""Invented maps of any size: eighteen holes in a square, and as many features of one kind as are asked for.

Nothing here is a real place. Features stand in rows, a few metres apart, so that a map of twice as many is a
map of the same density and twice the ground: what takes more than twice the work on it is not linear.
"""

import json
import math
from collections.abc import Iterator

HOLES = 18
APART = 10.0
"""Between the middles of neighbouring features, metres."""

AT = (51.0, 3.0)
"""The south-west corner of the course: latitude and longitude."""

NORTH = 111_250.0
"""Metres in a degree of latitude there, roughly: these maps are only about right in size."""

Tags = dict[str, str]

AREAS: dict[str, Tags] = {
    "bunkers": {"golf": "bunker"},
    "tees": {"golf": "tee"},
    "greens": {"golf": "green"},
    "ground under repair": {"marram": "ground_under_repair"},
    "temporary water": {"marram": "temporary_water"},
    "out of bounds": {"marram": "out_of_bounds"},
    "red penalty areas": {"golf": "lateral_water_hazard"},
    "yellow penalty areas": {"golf": "water_hazard"},
    "no play zones": {"marram": "no_play_zone"},
    "dropping zones": {"marram": "dropping_zone", "serves": "area 1", "holes": "1"},
    "water": {"natural": "water"},
    "buildings": {"building": "yes"},
    "woods": {"natural": "wood"},
    "fairways": {"golf": "fairway"},
}
"""Kinds that are drawn as areas, as they are tagged."""

LINES: dict[str, Tags] = {
    "paths": {"golf": "path", "width": "2"},
    "streams": {"waterway": "stream"},
    "walls": {"barrier": "wall"},
}
"""Kinds that are drawn as lines where they are crowded."""

OTHERS = ("paths", "streams", "trees", "boundary lines", "stakes", "markings", "lines of play")
"""Kinds that are drawn in other ways."""

KINDS = (*AREAS, *OTHERS, "mixed")


def large_map(kind: str, count: int) -> dict:
    """Return a map with so many features of a kind, as a GeoJSON FeatureCollection."""
    side = max(600.0, APART * (math.isqrt(max(count - 1, 0)) + 3))
    return _collection([*_course(side, with_boundary=kind != "boundary lines"), *_many(kind, count, side)])


def crowded_map(kind: str, count: int) -> dict:
    """Return a map with so many features of a kind in one place, each over the next ones: all within a few metres."""
    turn = math.pi * (3 - math.sqrt(5))
    places = [
        (
            300 + 6 * math.sqrt(i / count) * math.cos(i * turn),
            200 + 6 * math.sqrt(i / count) * math.sin(i * turn),
        )
        for i in range(count)
    ]
    areas = (
        _line(f"line {i}", LINES[kind], ((x, y), (x + 5 * math.cos(i), y + 5 * math.sin(i))))
        if kind in LINES
        else _feature(f"area {i}", AREAS[kind], _blob(x, y, 5.0))
        for i, (x, y) in enumerate(places)
    )
    return _collection([*_course(600.0), *areas])


def patches_map(features: int = 1900, patches: int = 120) -> dict:
    """Return a map of so many features, among them patches of ground under repair and of temporary water."""
    return _collection([*_course(1200.0), *_patches(features, patches)])


def with_text(document: dict) -> bytes:
    """Return a map as the bytes of its file."""
    return json.dumps(document).encode()


def _patches(features: int, patches: int) -> Iterator[dict]:
    places = _grid(features, 1200.0)
    for number, (x, y) in enumerate(places):
        if number < patches:
            tags = AREAS["ground under repair" if number % 2 else "temporary water"]
        else:
            tags = list(AREAS.values())[number % 3] if number % 9 else AREAS["red penalty areas"]
        yield _feature(f"area {number}", tags, _blob(x, y, 3.0))


def _many(kind: str, count: int, side: float) -> Iterator[dict]:
    if kind == "boundary lines":
        ring = _square(side, count)
        for number, pair in enumerate(zip(ring, [*ring[1:], ring[0]], strict=True)):
            yield _line(f"line {number}", {"marram": "boundary"}, pair)
    elif kind == "stakes":
        # Ten stakes to each red penalty area, and as many to each stretch of the boundary.
        for number, (x, y) in enumerate(_grid(-(-count // 20), side)):
            edge = _blob(x, y, 3.0, 10)
            yield _feature(f"red {number}", {"golf": "lateral_water_hazard", "marked_by": "stakes"}, edge)
            for one, place in enumerate(edge[:-1]):
                yield _point(f"stake {number} {one}", {"marram": "stake", "colour": "red"}, place)
        for number, place in enumerate(_square(side, -(-count // 2))):
            yield _point(f"white {number}", {"marram": "stake", "colour": "white"}, place)
    elif kind == "mixed":
        tags = list(AREAS.values())
        for number, (x, y) in enumerate(_grid(count, side)):
            if number % 5 == 4:
                yield _point(f"tree {number}", {"natural": "tree"}, (x, y))
            elif number % 7 == 6:
                yield _line(f"path {number}", {"golf": "path", "width": "2"}, ((x, y), (x + 8, y + 3)))
            else:
                yield _feature(f"area {number}", tags[number % len(tags)], _blob(x, y, 3.0))
    elif kind == "lines of play":
        for number, (x, y) in enumerate(_grid(count, side)):
            yield _line(f"play {number}", {"golf": "hole", "ref": "1"}, ((x, y), (x + 8, y + 3)))
    elif kind in AREAS:
        for number, (x, y) in enumerate(_grid(count, side)):
            yield _feature(f"area {number}", AREAS[kind], _blob(x, y, 3.0))
    else:
        for number, (x, y) in enumerate(_grid(count, side)):
            if kind == "trees":
                yield _point(f"tree {number}", {"natural": "tree"}, (x, y))
            elif kind == "markings":
                yield _line(f"marking {number}", {"marram": "marking"}, ((x, y), (x + 8, y + 3)))
            else:
                tags = {"golf": "path"} if kind == "paths" else {"waterway": "stream"}
                yield _line(f"{kind} {number}", tags, ((x, y), (x + 8, y + 3)))


def _course(side: float, *, with_boundary: bool = True) -> Iterator[dict]:
    """Eighteen holes beside each other from south to north, each with a tee and a green."""
    outline = [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side), (0.0, 0.0)]
    yield _feature("outline", {"leisure": "golf_course", "name": "Invented Links"}, outline)
    if with_boundary:
        yield _feature("boundary", {"marram": "boundary"}, outline)
    for number in range(1, HOLES + 1):
        x = side * number / (HOLES + 1)
        length = min(340.0, side - 100)
        tags = {"golf": "hole", "ref": str(number), "par": "4", "handicap": str(number)}
        yield _line(f"hole {number}", tags, ((x, 40.0), (x, 40.0 + length)))
        yield _feature(f"tee {number}", {"golf": "tee", "ref": str(number)}, _blob(x, 40.0, 4.0))
        yield _feature(f"green {number}", {"golf": "green"}, _blob(x, 40.0 + length, 12.0, 24))


def _grid(count: int, side: float) -> Iterator[tuple[float, float]]:
    columns = int(side / APART) - 1
    for number in range(count):
        row, column = divmod(number, columns)
        yield APART * (column + 1), APART * (row + 1)


def _blob(x: float, y: float, radius: float, corners: int = 12) -> list[tuple[float, float]]:
    turn = [2 * math.pi * i / corners for i in range(corners)]
    ring = [(x + radius * math.cos(t), y + radius * math.sin(t) * (1 + 0.2 * math.sin(3 * t))) for t in turn]
    return [*ring, ring[0]]


def _square(side: float, count: int) -> list[tuple[float, float]]:
    found = []
    for i in range(count):
        edge, along = divmod(4 * i / count, 1)
        found.append(
            [(along, 0.0), (1.0, along), (1 - along, 1.0), (0.0, 1 - along)][int(edge)],
        )
    return [(x * side, y * side) for x, y in found]


def _degrees(place: tuple[float, float]) -> list[float]:
    x, y = place
    return [
        round(AT[1] + x / (NORTH * math.cos(math.radians(AT[0]))), 9),
        round(AT[0] + y / NORTH, 9),
    ]


def _collection(features: list[dict]) -> dict:
    return {"type": "FeatureCollection", "features": features}


def _feature(ident: str, tags: Tags, ring: list[tuple[float, float]]) -> dict:
    geometry = {"type": "Polygon", "coordinates": [[_degrees(place) for place in ring]]}
    return {"type": "Feature", "id": ident, "properties": dict(tags), "geometry": geometry}


def _line(ident: str, tags: Tags, places) -> dict:
    geometry = {"type": "LineString", "coordinates": [_degrees(place) for place in places]}
    return {"type": "Feature", "id": ident, "properties": dict(tags), "geometry": geometry}


def _point(ident: str, tags: Tags, place: tuple[float, float]) -> dict:
    geometry = {"type": "Point", "coordinates": _degrees(place)}
    return {"type": "Feature", "id": ident, "properties": dict(tags), "geometry": geometry}
