"""The plan of the demonstration course: where each hole runs and what lies beside it, in metres.

Everything here is invented. The origin is the south-west corner of the property, x runs east, y north.
The course is placed in the open sea, far from any land, so that it can be mistaken for no real course.
"""

from dataclasses import dataclass

Place = tuple[float, float]

COURSE_NAME = "Quillsand Links"
LONGITUDE, LATITUDE = 3.9900, 55.0000
"""The south-west corner of the property, in the middle of the North Sea."""


@dataclass(frozen=True, slots=True)
class HolePlan:
    """One hole as planned.

    Attributes:
        number: its number.
        name: its name.
        par: its par.
        stroke_index: its stroke index.
        line: the line of play: tee, turning points, middle of the green.
        bunkers: bunkers as (metres from the tee along the line, metres to the right of it, area in m²).
        path_side: where the buggy path runs: +1 right of the hole, -1 left, 0 nowhere.
    """

    number: int
    name: str
    par: int
    stroke_index: int
    line: tuple[Place, ...]
    bunkers: tuple[tuple[float, float, float], ...] = ()
    path_side: int = 0


HOLES: tuple[HolePlan, ...] = (
    HolePlan(1, "Burnfoot", 4, 9, ((545, 118), (536, 330), (498, 505)), ((225, -21, 95), (238, 23, 70)), -1),
    HolePlan(2, "Short Haul", 3, 17, ((512, 566), (548, 704)), (), 0),
    HolePlan(
        3, "Long Sound", 5, 5, ((522, 792), (300, 846), (58, 800)), ((215, 22, 120), (330, -23, 85)), -1
    ),
    HolePlan(4, "West Brae", 4, 3, ((46, 732), (58, 560), (88, 372)), ((190, -20, 110), (205, 24, 60)), -1),
    HolePlan(5, "Cockle", 3, 15, ((52, 318), (98, 152)), (), 0),
    HolePlan(6, "Southing", 4, 11, ((54, 82), (230, 58), (404, 94)), ((195, -22, 100), (250, 21, 80)), 1),
    HolePlan(7, "The Bend", 4, 1, ((352, 160), (212, 330), (172, 512)), ((205, -24, 130), (300, 20, 60)), 1),
    HolePlan(8, "Lee Shore", 3, 13, ((158, 574), (252, 722)), (), 0),
    HolePlan(9, "Homeward", 5, 7, ((332, 712), (362, 482), (458, 186)), ((215, 23, 110), (400, -22, 90)), -1),
    HolePlan(10, "Outbound", 4, 6, ((648, 128), (668, 330), (642, 524)), ((205, 23, 105), (260, -20, 70)), 1),
    HolePlan(
        11, "Hook Point", 4, 14, ((640, 594), (658, 762), (764, 850)), ((150, 24, 140), (215, -20, 60)), 1
    ),
    HolePlan(12, "Mere", 4, 8, ((828, 848), (1010, 838), (1142, 752)), ((170, -22, 90), (225, 20, 70)), -1),
    HolePlan(13, "Lantern", 3, 18, ((1148, 696), (1134, 560)), (), 0),
    HolePlan(14, "Strand", 5, 2, ((1160, 518), (1146, 280), (1082, 58)), ((215, 22, 125), (345, 22, 85)), 1),
    HolePlan(
        15, "Heather", 4, 10, ((1014, 72), (1040, 270), (1000, 430)), ((195, -23, 110), (280, 20, 60)), -1
    ),
    HolePlan(
        16, "Corner", 4, 12, ((1012, 498), (974, 640), (832, 742)), ((150, 22, 120), (205, -22, 80)), -1
    ),
    HolePlan(17, "Cauldron", 3, 16, ((790, 700), (768, 522)), (), 1),
    HolePlan(
        18, "Lighthouse", 5, 4, ((776, 454), (876, 270), (742, 84)), ((200, -23, 120), (340, 22, 95)), -1
    ),
)

GREENSIDE_BUNKERS: dict[int, tuple[tuple[float, float], ...]] = {
    1: ((60, 90), (300, 70)), 2: ((200, 80), (330, 60), (95, 75)), 3: ((230, 110), (140, 65)),
    4: ((215, 75), (20, 60)), 5: ((170, 120), (265, 70), (50, 60)), 6: ((140, 85), (235, 70)),
    7: ((150, 95), (320, 55)), 8: ((205, 110), (100, 70)), 9: ((220, 90), (140, 75), (330, 55)),
    10: ((235, 85), (130, 90)), 11: ((215, 100), (80, 60)), 12: ((150, 80), (280, 75)),
    13: ((190, 60), (260, 85), (115, 100)), 14: ((160, 90), (235, 80)), 15: ((215, 95), (60, 55)),
    16: ((140, 70), (240, 105)), 17: ((35, 60), (300, 75), (75, 70)), 18: ((150, 120), (225, 80), (320, 60)),
}  # fmt: skip
"""Bunkers at the greens: (bearing in degrees clockwise from the line of play, area in m²)."""

BURN_WEST: tuple[Place, ...] = (
    (-24, 478), (40, 452), (92, 456), (140, 432), (196, 424), (250, 402), (306, 396), (362, 416), (410, 446), (452, 448),
)  # fmt: skip
BURN_EAST: tuple[Place, ...] = ((452, 448), (486, 446), (520, 452), (548, 466))
"""The burn: red to the west; yellow where hole 1 crosses it, with the pool it ends in."""

BOUNDARY: tuple[Place, ...] = (
    (14, 30), (120, 8), (330, 6), (540, 22), (640, 14), (820, 24), (1010, 6), (1140, 2), (1216, 60), (1234, 220),
    (1240, 420), (1236, 600), (1222, 740), (1150, 838), (1030, 900), (820, 912), (660, 898), (540, 880), (300, 908),
    (90, 886), (8, 842), (-4, 640), (-6, 420), (2, 200),
)  # fmt: skip

PRACTICE_GROUND: tuple[Place, ...] = ((580, 196), (606, 190), (618, 236), (620, 330), (616, 420), (596, 442), (580, 420), (576, 310))  # fmt: skip
"""The internal out of bounds, between the first and the tenth."""

SALTMARSH: tuple[Place, ...] = (
    (1196, 96), (1216, 92), (1228, 160), (1236, 300), (1240, 430), (1236, 600), (1226, 700), (1206, 728), (1188, 690),
    (1196, 640), (1184, 590), (1198, 530), (1202, 470), (1184, 420), (1178, 370), (1192, 320), (1198, 262), (1180, 214),
    (1186, 160), (1198, 132),
)  # fmt: skip
"""The red penalty area left of the thirteenth and fourteenth."""

THICKETS: tuple[tuple[Place, float, float, float], ...] = (
    ((440, 330), 34, 13, 80), ((300, 250), 42, 15, 130), ((120, 600), 30, 12, 95), ((430, 620), 38, 18, 60),
    ((250, 790), 44, 9, 172), ((700, 690), 26, 11, 85), ((720, 420), 40, 12, 95), ((905, 560), 44, 20, 120),
    ((930, 180), 38, 14, 70), ((1092, 420), 40, 10, 96), ((760, 250), 34, 14, 65), ((270, 118), 40, 9, 5),
    ((130, 240), 30, 11, 100), ((880, 790), 30, 9, 175), ((590, 800), 26, 14, 70), ((420, 740), 30, 14, 20),
    ((840, 420), 26, 12, 150), ((260, 600), 34, 15, 70),
)  # fmt: skip
"""Thickets of pine: (middle, half length, half width, direction in degrees)."""

EVACUATION_POINTS: tuple[tuple[str, Place, str], ...] = (
    ("Club house", (606, 55), "building"),
    ("Shelter in the dunes", (1018, 460), "shelter"),
    ("Pump house gate", (212, 752), "vehicle"),
    ("Mere gate", (960, 690), "vehicle"),
)
"""Where people go when play is stopped for danger: name, place, and what waits there."""
