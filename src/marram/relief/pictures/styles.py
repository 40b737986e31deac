"""How things look: a pattern or a line style for each, so that nothing rests on colour alone.

Colours are our own, chosen to differ in lightness; text is near black on near white (contrast above 15 : 1).
"""

from dataclasses import dataclass

from marram.course.model import Kind
from marram.relief.areas.construction import Role
from marram.relief.pictures.markup import Attributes, Ids, Node, add

INK = "#14181f"
PAPER = "#fdfcf7"
GROUND = "#eef0e2"
AREA = "#0b4a6f"
RED, YELLOW, WATER = "#a3162b", "#7a5c00", "#2a5f86"


def stroke(colour: str, width: float, dashes: str = "") -> Attributes:
    """Return the attributes of a line."""
    attributes = {"stroke": colour, "stroke-width": f"{width:g}"}
    return {**attributes, "stroke-dasharray": dashes} if dashes else attributes


@dataclass(frozen=True, slots=True)
class Pattern:
    """A fill that repeats.

    Attributes:
        width: of a tile, in picture units.
        height: of a tile.
        ground: the attributes of what lies under the lines.
        lines: the data of the path drawn on it.
        line: the attributes of that path.
        turn: degrees.
        dots: middles of dots.
    """

    width: float
    height: float
    ground: Attributes
    lines: str = ""
    line: Attributes | None = None
    turn: float = 0.0
    dots: tuple[tuple[float, float], ...] = ()


PATTERNS: dict[str, Pattern] = {
    "area": Pattern(10, 10, {"fill": AREA, "fill-opacity": ".22"}, "M0 0V10", stroke(AREA, 2.6), 45),
    "red": Pattern(9, 9, {"fill": "#f3d3d0"}, "M0 0V9", stroke(RED, 1.4), -45),
    "yellow": Pattern(9, 9, {"fill": "#f7e7a6"}, "M0 4.5H9", stroke(YELLOW, 1.4)),
    "bunker": Pattern(8, 8, {"fill": "#f1e4c2"}, line={"fill": "#6d5a2c"}, dots=((2, 2), (6, 6))),
    "green": Pattern(6, 6, {"fill": "#c3dba3"}, "M3 0V6", stroke("#5b8238", 0.9)),
    "path": Pattern(7, 7, {"fill": "#d5d3cf"}, "M0 0L7 7M7 0L0 7", stroke("#6f6c66", 1)),
    "repair": Pattern(8, 8, {"fill": "#e6e3f2"}, "M4 1V7M1 4H7", stroke("#4d4670", 1.2)),
    "water": Pattern(12, 8, {"fill": "#d5e6f0"}, "M0 4q3 -4 6 0t6 0", stroke(WATER, 1.2)),
    "wet": Pattern(12, 8, {"fill": "#e3e8da"}, "M1 5h4M7 2h4", stroke(WATER, 1.2)),
    "noplay": Pattern(10, 10, {"fill": "#ecdcea"}, "M2 2L8 8M8 2L2 8", stroke(INK, 1)),
    "not": Pattern(
        18, 12, {"fill": PAPER, "fill-opacity": ".6"}, "M4.5 0V8M13.5 6V12M13.5 0V2", stroke(INK, 1.6), -45
    ),
    "out": Pattern(12, 12, {"fill": "#ffffff"}, "M0 0V12", stroke(INK, 1), 45),
}

FILLS: dict[Kind, str] = {
    Kind.FAIRWAY: "#dfe8c4",
    Kind.PUTTING_GREEN: "green",
    Kind.TEEING_AREA: "#d3dfb2",
    Kind.BUNKER: "bunker",
    Kind.PATH: "path",
    Kind.OBSTRUCTION: "path",
    Kind.BARRIER: "path",
    Kind.INTEGRAL_OBJECT: "path",
    Kind.GROUND_UNDER_REPAIR: "repair",
    Kind.TEMPORARY_WATER: "water",
    Kind.NO_PLAY_ZONE: "noplay",
    Kind.WATER: "water",
    Kind.WETLAND: "wet",
    Kind.RED_PENALTY_AREA: "red",
    Kind.YELLOW_PENALTY_AREA: "yellow",
    Kind.DROPPING_ZONE: "none",
    Kind.OUT_OF_BOUNDS: "out",
}
"""The colour or pattern of each mapped area, in the order they are drawn."""

EDGES: dict[Kind, Attributes] = {
    Kind.RED_PENALTY_AREA: stroke(RED, 3, "9 4"),
    Kind.WATER: stroke(RED, 2, "9 4"),
    Kind.YELLOW_PENALTY_AREA: stroke(YELLOW, 3, "2 4"),
    Kind.DROPPING_ZONE: stroke(INK, 2),
    Kind.FAIRWAY: stroke("#5b7a35", 1.2),
    Kind.TEEING_AREA: stroke("#33561f", 1.2),
    Kind.PATH: stroke("#55524d", 1.2),
    Kind.OBSTRUCTION: stroke(INK, 2),
    Kind.BARRIER: stroke(INK, 2, "4 2"),
    Kind.INTEGRAL_OBJECT: stroke(INK, 2),
    Kind.WETLAND: stroke(WATER, 1.2, "2 3"),
    Kind.GROUND_UNDER_REPAIR: stroke("#4d4670", 2),
    Kind.TEMPORARY_WATER: stroke(WATER, 2),
    Kind.OUT_OF_BOUNDS: stroke(INK, 2.5, "1 5"),
    Kind.PUTTING_GREEN: stroke("#33561f", 1.5),
    Kind.BUNKER: stroke("#6d5a2c", 1.5),
    Kind.BOUNDARY: stroke(INK, 3, "5 3"),
    Kind.NO_PLAY_ZONE: stroke(INK, 1.5, "1 3"),
}
"""The outline of mapped areas that have one."""

OWN_EDGE = stroke(INK, 1)
"""The outline, in the key alone, of an area that has none on the map."""

ON_LINES: dict[Kind, Attributes] = {
    Kind.PATH: stroke("#55524d", 3),
    Kind.OBSTRUCTION: stroke(INK, 3),
    Kind.WATER: stroke(WATER, 3),
    Kind.BARRIER: stroke(INK, 3, "4 2"),
    Kind.INTEGRAL_OBJECT: stroke(INK, 3),
}
"""How a feature that is mapped as a line looks."""

LINES: dict[Role, Attributes] = {
    Role.LINE_TO_HOLE: stroke(INK, 1.6, "2 5"),
    Role.DROP_LINE: stroke(AREA, 4),
    Role.REFERENCE_LINE: stroke(AREA, 4, "14 4"),
    Role.CLUB_LENGTHS: stroke(INK, 1.6),
    Role.NOT_NEARER: stroke(INK, 2.6, "12 4 2 4"),
    Role.CORRIDOR_EDGE: stroke(INK, 1.6),
    Role.SHIFT: stroke(INK, 2.2, "6 3"),
    Role.STANCE: stroke(INK, 1.4, "3 2"),
    Role.TEE_LINE: stroke(INK, 3),
}
"""The line style of each mark."""


def fill(name: str, ids: Ids) -> str:
    """Return a colour, or what points to the pattern of that name."""
    return ids.url(name) if name in PATTERNS else name


def fill_of(kind: Kind, ids: Ids) -> Attributes:
    """Return how a mapped area of a kind is filled and outlined."""
    return {"fill": fill(FILLS.get(kind, "none"), ids), **EDGES.get(kind, {})}


def add_patterns(defs: Node, ids: Ids) -> None:
    """Add every pattern to the definitions of a drawing."""
    for name, one in PATTERNS.items():
        tile = add(defs, "pattern", id=ids(name), width=one.width, height=one.height)
        tile.set("patternUnits", "userSpaceOnUse")
        if one.turn:
            tile.set("patternTransform", f"rotate({one.turn:g})")
        add(tile, "rect", one.ground, width=one.width, height=one.height)
        if one.lines:
            add(tile, "path", {"fill": "none", **(one.line or {})}, d=one.lines)
        for x, y in one.dots:
            add(tile, "circle", one.line, cx=x, cy=y, r=1)
