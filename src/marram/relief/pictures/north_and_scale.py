"""North and the scale bar of a drawing, each in the corner where it covers least."""

from collections.abc import Iterable, Sequence

import shapely
from shapely.geometry import box
from shapely.geometry.base import BaseGeometry

from marram.relief.geometry.outline import XY
from marram.relief.pictures.labels import SIZE, Box
from marram.relief.pictures.lettering import SMALL, WIDTH, write
from marram.relief.pictures.markup import Node, add
from marram.relief.pictures.styles import INK, PAPER, stroke
from marram.relief.pictures.view import View
from marram.words.lengths import bar_words
from marram.words.texts import text

NORTH = Box(WIDTH - 44, 0, WIDTH, 62)
"""Where the arrow to north stands as a rule: upper right."""
_POINT_COSTS = 3
"""What covering a mark costs, in lines covered (own choice)."""


def north_place(points: Iterable[XY] = (), lines: Iterable[BaseGeometry] = ()) -> Box:
    """Return where the arrow to north stands: upper right, or upper left where it covers less there.

    Args:
        points: marks in the picture that it should leave free.
        lines: lines and outlines in the picture.
    """
    return freest((NORTH, Box(0, 0, WIDTH - NORTH.left, NORTH.bottom)), list(points), list(lines))


def scale_place(view: View, points: Iterable[XY] = (), lines: Iterable[BaseGeometry] = ()) -> Box:
    """Return where the scale bar stands: lower left, or lower right where it covers less there."""
    wide = view.scale_bar() * view.scale + 24
    places = (Box(0, WIDTH - 34, wide, WIDTH), Box(WIDTH - wide, WIDTH - 34, WIDTH, WIDTH))
    return freest(places, list(points), list(lines))


def freest(places: Sequence[Box], points: Sequence[XY], lines: Sequence[BaseGeometry]) -> Box:
    """Return the place that covers the fewest marks and lines; of equals the first."""

    def covered(place: Box) -> int:
        marks = sum(place.away(at) == 0 for at in points)
        shape = box(place.left, place.top, place.right, place.bottom)
        return _POINT_COSTS * marks + int(sum(shapely.intersects(shape, line) for line in lines))

    return min(places, key=covered)


def add_north(parent: Node, place: Box = NORTH) -> None:
    """Draw the arrow to north."""
    x = (place.left + place.right) / 2
    arrow = f"M{x:g} 8L{x + 9:g} 34L{x:g} 28L{x - 9:g} 34Z"
    add(parent, "path", stroke(PAPER, 1.5), d=arrow, fill=INK)
    write(parent, text("relief.north"), (x, 52), SIZE, anchor="middle", bold=True)


def add_scale(parent: Node, view: View, place: Box | None = None) -> None:
    """Draw the scale bar on a plate, lower left where no place is given: no stripe of a boundary runs through it."""
    place = place or scale_place(view)
    wide, high = place.right - place.left - 8, place.bottom - place.top - 2
    add(
        parent,
        "rect",
        x=place.left + 4,
        y=place.top - 2,
        width=wide,
        height=high,
        rx=3,
        fill=PAPER,
        fill_opacity=0.8,
    )
    length, y = view.scale_bar(), WIDTH - 10
    left, right = place.left + 12, place.right - 12
    bar = f"M{round(left, 1):g} {y - 6:g}V{y:g}H{right:.1f}V{y - 6:g}"
    add(parent, "path", stroke(PAPER, 6), d=bar)
    add(parent, "path", stroke(INK, 2.2), d=bar)
    write(parent, bar_words(length), ((left + right) / 2, y - 7), SMALL, anchor="middle", bold=True)
