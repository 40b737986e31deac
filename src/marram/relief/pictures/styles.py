"""How things look: a pattern or a line style for each, so that nothing rests on colour alone.

Colours are our own, chosen to differ in lightness; text is near black on near white (contrast above 15 : 1).
"""

from marram.course.model import Kind
from marram.relief.constructions.construction import Role

INK = "#14181f"
PAPER = "#fdfcf7"
GROUND = "#eef0e2"
AREA = "#0b4a6f"

FILLS: dict[Kind, str] = {
    Kind.FAIRWAY: "#dfe8c4",
    Kind.PUTTING_GREEN: "url(#green)",
    Kind.TEEING_AREA: "#d3dfb2",
    Kind.BUNKER: "url(#bunker)",
    Kind.PATH: "url(#path)",
    Kind.OBSTRUCTION: "url(#path)",
    Kind.GROUND_UNDER_REPAIR: "url(#repair)",
    Kind.TEMPORARY_WATER: "url(#water)",
    Kind.NO_PLAY_ZONE: "url(#noplay)",
    Kind.RED_PENALTY_AREA: "url(#red)",
    Kind.YELLOW_PENALTY_AREA: "url(#yellow)",
    Kind.DROPPING_ZONE: "none",
    Kind.OUT_OF_BOUNDS: "url(#out)",
}
"""The fill of each mapped area, in the order they are drawn."""

EDGES: dict[Kind, str] = {
    Kind.RED_PENALTY_AREA: 'stroke="#a3162b" stroke-width="3" stroke-dasharray="9 4"',
    Kind.YELLOW_PENALTY_AREA: 'stroke="#7a5c00" stroke-width="3" stroke-dasharray="2 4"',
    Kind.DROPPING_ZONE: f'stroke="{INK}" stroke-width="2"',
    Kind.PUTTING_GREEN: 'stroke="#33561f" stroke-width="1.5"',
    Kind.BUNKER: 'stroke="#6d5a2c" stroke-width="1.5"',
    Kind.BOUNDARY: f'stroke="{INK}" stroke-width="3" stroke-dasharray="5 3"',
    Kind.NO_PLAY_ZONE: f'stroke="{INK}" stroke-width="1.5" stroke-dasharray="1 3"',
}
"""The outline of mapped areas that have one."""

LINES: dict[Role, str] = {
    Role.LINE_TO_HOLE: f'stroke="{INK}" stroke-width="1.6" stroke-dasharray="2 5"',
    Role.DROP_LINE: f'stroke="{AREA}" stroke-width="4"',
    Role.REFERENCE_LINE: f'stroke="{AREA}" stroke-width="4" stroke-dasharray="14 4"',
    Role.CLUB_LENGTHS: f'stroke="{INK}" stroke-width="1.6"',
    Role.NOT_NEARER: f'stroke="{INK}" stroke-width="2.6" stroke-dasharray="12 4 2 4"',
    Role.CORRIDOR_EDGE: f'stroke="{INK}" stroke-width="1.6"',
    Role.SHIFT: f'stroke="{INK}" stroke-width="2.2" stroke-dasharray="6 3"',
    Role.STANCE: f'stroke="{INK}" stroke-width="1.4" stroke-dasharray="3 2"',
    Role.TEE_LINE: f'stroke="{INK}" stroke-width="3"',
}
"""The line style of each mark."""

PATTERNS = f"""
<pattern id="area" width="10" height="10" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">\
<rect width="10" height="10" fill="{AREA}" fill-opacity=".22"/><path d="M0 0V10" stroke="{AREA}" stroke-width="2.6"/></pattern>
<pattern id="red" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">\
<rect width="9" height="9" fill="#f3d3d0"/><path d="M0 0V9" stroke="#a3162b" stroke-width="1.4"/></pattern>
<pattern id="yellow" width="9" height="9" patternUnits="userSpaceOnUse">\
<rect width="9" height="9" fill="#f7e7a6"/><path d="M0 4.5H9" stroke="#7a5c00" stroke-width="1.4"/></pattern>
<pattern id="bunker" width="8" height="8" patternUnits="userSpaceOnUse">\
<rect width="8" height="8" fill="#f1e4c2"/><circle cx="2" cy="2" r="1" fill="#6d5a2c"/><circle cx="6" cy="6" r="1" fill="#6d5a2c"/></pattern>
<pattern id="green" width="6" height="6" patternUnits="userSpaceOnUse">\
<rect width="6" height="6" fill="#c3dba3"/><path d="M3 0V6" stroke="#a9c787" stroke-width="2"/></pattern>
<pattern id="path" width="7" height="7" patternUnits="userSpaceOnUse">\
<rect width="7" height="7" fill="#d5d3cf"/><path d="M0 0L7 7M7 0L0 7" stroke="#8d8a84" stroke-width="1"/></pattern>
<pattern id="repair" width="8" height="8" patternUnits="userSpaceOnUse">\
<rect width="8" height="8" fill="#e6e3f2"/><path d="M4 1V7M1 4H7" stroke="#4d4670" stroke-width="1.2"/></pattern>
<pattern id="water" width="12" height="8" patternUnits="userSpaceOnUse">\
<rect width="12" height="8" fill="#d5e6f0"/><path d="M0 4q3 -4 6 0t6 0" fill="none" stroke="#2a5f86" stroke-width="1.2"/></pattern>
<pattern id="noplay" width="10" height="10" patternUnits="userSpaceOnUse">\
<rect width="10" height="10" fill="#ecdcea"/><path d="M2 2L8 8M8 2L2 8" stroke="{INK}" stroke-width="1"/></pattern>
<pattern id="out" width="12" height="12" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">\
<rect width="12" height="12" fill="#ffffff"/><path d="M0 0V12" stroke="{INK}" stroke-width="1"/></pattern>
"""
