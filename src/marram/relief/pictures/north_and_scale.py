"""North and the scale bar of a drawing."""

from marram.relief.pictures.labels import SIZE
from marram.relief.pictures.lettering import SMALL, WIDTH, write
from marram.relief.pictures.markup import Node, add
from marram.relief.pictures.styles import INK, PAPER, stroke
from marram.relief.pictures.view import View
from marram.words.texts import text


def add_north(parent: Node) -> None:
    """Draw the arrow to north in the upper right corner."""
    x = WIDTH - 22
    arrow = f"M{x:g} 8L{x + 9:g} 34L{x:g} 28L{x - 9:g} 34Z"
    add(parent, "path", stroke(PAPER, 1.5), d=arrow, fill=INK)
    write(parent, text("relief.north"), (x, 52), SIZE, anchor="middle", bold=True)


def add_scale(parent: Node, view: View) -> None:
    """Draw the scale bar in the lower left corner."""
    length, y = view.scale_bar(), WIDTH - 10
    right = 12 + length * view.scale
    bar = f"M12 {y - 6:g}V{y:g}H{right:.1f}V{y - 6:g}"
    add(parent, "path", stroke(PAPER, 6), d=bar)
    add(parent, "path", stroke(INK, 2.2), d=bar)
    write(parent, f"{length:g} m", ((12 + right) / 2, y - 7), SMALL, anchor="middle", bold=True)
