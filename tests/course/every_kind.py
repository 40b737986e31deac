"""A made course that holds every kind of ground: seams, islands, ground out of bounds on one hole, water, coast.

Three holes run east, 60 m apart. Distances are in metres; what is joined is drawn as maps draw it: polygons that share
corners, corners on another's edge, edges a few millimetres apart, lines that meet end to end.
"""

from dataclasses import replace

import shapely
from shapely.geometry import LineString, Point, Polygon, box

from marram.course.model import Kind
from marram.course.reading.shapes import strip
from tests.course.drawing import course, feature, hole, square


def line(kind, places, ident, width=None, **tags):
    drawn = LineString(places)
    made = feature(kind, drawn, ident, tags={**tags, **({"width": str(width)} if width else {})})
    return replace(made, geometry=strip(drawn, width / 2), middle=drawn) if width else made


def beside(x, y, half, gap=0.0):
    """Two squares side by side, so far apart."""
    return square(x, y, half), shapely.box(x + half + gap, y - half, x + 3 * half + gap, y + half)


BURN = tuple(
    feature(
        Kind.RED_PENALTY_AREA, box(60 + 8 * i, -20, 68 + 8 * i, -14), f"burn {i}", name="Burn", ref=f"B{i}"
    )
    for i in range(5)
)
"""A burn along hole 1 in five polygons."""
OVERLAPPING = tuple(
    feature(Kind.BUNKER, shape, f"sand {i}") for i, shape in enumerate((square(100, 8, 4), square(105, 9, 4)))
)
NEARLY_JOINED = tuple(
    feature(Kind.BUNKER, shape, f"pot {i}") for i, shape in enumerate(beside(80, 10, 2, gap=0.008))
)
"""Two bunkers 8 mm apart: the rounding of a map kept to seven decimals."""
PATH = (
    line(Kind.PATH, [(20, 20), (60, 22)], "path 1", 2.4, surface="asphalt"),
    line(Kind.PATH, [(60, 22), (90, 34)], "path 2", 2.4, surface="asphalt"),
    line(Kind.PATH, [(90, 34), (95, 60)], "path 3", 2.4, surface="asphalt"),
    line(Kind.PATH, [(60, 22), (62, 45)], "path 4", 1.6, surface="asphalt"),
)
DOUBLE_GREEN = (
    feature(Kind.PUTTING_GREEN, box(140, -10, 160, 10), "green 1", holes=(1,)),
    feature(Kind.PUTTING_GREEN, box(140, 10, 160, 30), "green 2 of the same", holes=(4,)),
)
GREEN_2 = feature(Kind.PUTTING_GREEN, square(150, 60, 10), "green 2", holes=(2,))
GREEN_3 = feature(Kind.PUTTING_GREEN, square(150, 120, 10), "green 3", holes=(3,))
TEE_1 = feature(Kind.TEEING_AREA, square(0, 0, 6), "tee 1", holes=(1,))
TODAY_1 = feature(Kind.TEEING_AREA, box(-2, -3, 0, 3), "today 1", holes=(1,), tags={"marram": "teeing_area"})
TEE_2 = feature(Kind.TEEING_AREA, square(0, 60, 5), "tee 2", holes=(2,))
TEE_3 = feature(Kind.TEEING_AREA, square(0, 120, 5), "tee 3", holes=(3,))
ISLAND = Polygon(square(40, 90, 14).exterior, [square(40, 90, 5).exterior])
"""A pond with an island."""

FEATURES = (
    feature(Kind.BOUNDARY, box(-60, -60, 260, 160), "boundary", tags={"marram": "boundary"}),
    feature(Kind.OUT_OF_BOUNDS, box(90, 70, 110, 90), "fence of hole 1", holes=(1,)),
    feature(Kind.OUT_OF_BOUNDS, box(-40, 130, -20, 150), "fence"),
    *BURN,
    *OVERLAPPING,
    *NEARLY_JOINED,
    *PATH,
    feature(Kind.FAIRWAY, box(20, -12, 80, 12), "fairway 1a", holes=(1,)),
    feature(Kind.FAIRWAY, box(80, -12, 130, 12), "fairway 1b"),
    feature(Kind.FAIRWAY, box(20, 50, 130, 70), "fairway 2"),
    feature(Kind.YELLOW_PENALTY_AREA, box(60, 50, 70, 66), "ditch west"),
    feature(Kind.YELLOW_PENALTY_AREA, box(70, 52, 80, 64), "ditch east"),
    feature(Kind.RED_PENALTY_AREA, box(76, 64, 90, 74), "red beside yellow"),
    feature(Kind.RED_PENALTY_AREA, ISLAND, "pond with an island"),
    feature(Kind.WATER, square(110, 40, 6), "unmarked pond", tags={"natural": "water"}),
    line(Kind.WATER, [(116, 40), (130, 44), (138, 52)], "stream out of it", waterway="stream"),
    line(Kind.WATER, [(-50, 20), (-30, 40)], "wide ditch", 4, waterway="ditch"),
    feature(
        Kind.WATER,
        square(20, 40, 3),
        "basin",
        tags={"natural": "water", "penalty_area": "no", "note": "tiled"},
    ),
    line(Kind.WATER, [(-60, -50), (100, -45)], "coast west", natural="coastline"),
    line(Kind.WATER, [(100, -45), (260, -52)], "coast east", natural="coastline"),
    TEE_1,
    TODAY_1,
    TEE_2,
    TEE_3,
    feature(Kind.TEEING_AREA, square(-30, 90, 5), "idle tee"),
    *DOUBLE_GREEN,
    GREEN_2,
    GREEN_3,
    feature(Kind.GROUND_UNDER_REPAIR, box(30, 60, 36, 66), "repair 1"),
    feature(Kind.GROUND_UNDER_REPAIR, box(36, 61, 42, 65), "repair 2"),
    feature(Kind.TEMPORARY_WATER, square(145, 5, 1), "puddle"),
    feature(Kind.NO_PLAY_ZONE, square(120, 90, 3), "no play zone"),
    feature(Kind.DROPPING_ZONE, square(50, -5, 2), "zone", serves=("B3",)),
    feature(Kind.OBSTRUCTION, square(70, 40, 4), "hut"),
    line(Kind.OBSTRUCTION, [(74, 40), (84, 40)], "wall of the hut"),
    feature(Kind.INTEGRAL_OBJECT, square(170, -30, 2), "sleepers"),
    line(Kind.BARRIER, [(180, 10), (200, 10)], "fence west", barrier="fence"),
    line(Kind.BARRIER, [(200, 10), (200, 30)], "fence north", barrier="fence"),
    feature(Kind.BARRIER, Point(210, 10), "gate", tags={"barrier": "gate"}),
    feature(Kind.WETLAND, box(180, 50, 200, 70), "marsh", tags={"natural": "wetland"}),
    line(Kind.PATH, [(10, 100), (40, 110)], "track", highway="track"),
    feature(Kind.TREES, square(10, 30, 4), "trees"),
    feature(Kind.ROUGH, box(20, 12, 130, 16), "rough"),
)

COURSE = course(
    *FEATURES,
    holes=[
        hole(1, green=DOUBLE_GREEN[0], tees=[TEE_1, TODAY_1]),
        hole(2, tee=(0, 60), cup=(150, 60), green=GREEN_2, tees=[TEE_2]),
        hole(3, tee=(0, 120), cup=(150, 120), green=GREEN_3, tees=[TEE_3]),
        hole(4, tee=(0, 20), cup=(150, 20), green=DOUBLE_GREEN[1]),
    ],
)
"""The sea lies to the south, on the right of its coast, inside the boundary."""
