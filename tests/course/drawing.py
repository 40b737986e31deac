"""Drawing small courses for the tests: in metres, as Course objects or as GeoJSON files."""

import json
from pathlib import Path

from shapely.geometry import LineString, Point, Polygon, box

from marram.course.model import Course, Feature, Hole, Kind
from marram.course.plane import LocalPlane

PLANE = LocalPlane(3.0, 51.0)
RADIUS = 0.04267 / 2
"""Half of 42.67 mm: the Equipment Rules' least diameter of a ball (1.680 inches)."""


def square(x, y, half):
    return box(x - half, y - half, x + half, y + half)


def feature(kind, geometry, ident="", **more):
    return Feature(kind, ident or f"test/{kind.value}", geometry, **more)


def hole(number=1, *, tee=(0.0, 0.0), cup=(150.0, 0.0), green=None, tees=(), par=3, stroke_index=1):
    return Hole(number, LineString([tee, cup]), Point(cup), par, stroke_index, green, tuple(tees))


def course(*features, holes=None):
    found = holes or [hole(green=next((f for f in features if f.kind is Kind.PUTTING_GREEN), None))]
    return Course("Test Links", PLANE, {h.number: h for h in found}, tuple(features))


BOUNDARY = feature(Kind.BOUNDARY, box(-100, -100, 300, 100), tags={"marram": "boundary"})


def to_degrees(geometry):
    """Return a GeoJSON geometry of a shape in metres."""
    shape = PLANE.outward(geometry)
    match shape:
        case Point():
            return {"type": "Point", "coordinates": [shape.x, shape.y]}
        case LineString():
            return {"type": "LineString", "coordinates": [list(p) for p in shape.coords]}
        case Polygon():
            rings = [shape.exterior, *shape.interiors]
            return {"type": "Polygon", "coordinates": [[list(p) for p in ring.coords] for ring in rings]}
        case _:
            raise AssertionError(shape)


def drawn(geometry, ident="", **tags):
    """Return a GeoJSON feature of a shape in metres; ``leisure_``, ``ref`` … are its tags."""
    made = {"type": "Feature", "properties": tags, "geometry": to_degrees(geometry)}
    return {**made, "id": ident} if ident else made


def one_hole(number=1, *, y=0.0, par="3"):
    """Return the drawn features of one faultless hole, 150 m long."""
    return [
        drawn(
            LineString([(0, y), (150, y)]),
            f"line {number}",
            golf="hole",
            ref=str(number),
            par=par,
            handicap=str(number),
        ),
        drawn(square(0, y, 5), f"tee {number}", golf="tee"),
        drawn(square(150, y, 10), f"green {number}", golf="green"),
        drawn(Point(152, y + 1), f"pin {number}", golf="pin"),
    ]


def nine_holes():
    """Return the drawn features of a faultless course of nine holes."""
    holes = [part for number in range(1, 10) for part in one_hole(number, y=60.0 * number)]
    return [drawn(box(-60, -60, 260, 660), "boundary", marram="boundary"), *holes]


def write(path: Path, features, **more) -> Path:
    path.write_text(json.dumps({"type": "FeatureCollection", "features": list(features), **more}))
    return path
