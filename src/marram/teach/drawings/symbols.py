"""The symbols of a situation: ball, ball not seen, player, a thing it is about; told apart by shape, not by colour."""

from math import cos, sin

import shapely
from shapely.geometry.base import BaseGeometry

from marram.relief.geometry.outline import XY
from marram.relief.interference.usual_footprint import FOOT_LENGTH, STANCE_WIDTH, facing, footprint
from marram.relief.pictures.markup import Node, add
from marram.relief.pictures.styles import INK, PAPER, stroke
from marram.relief.pictures.view import View

_SHOE_WIDTH = 0.11
"""Metres: a shoe across its ball (common practice)."""


def add_ball(parent: Node, at: XY, *, seen: bool) -> None:
    """Draw a ball at a place of the picture; one that nobody has seen is dashed, with a question mark."""
    x, y = at
    if seen:
        add(parent, "circle", stroke(PAPER, 3), cx=x, cy=y, r=7, fill=INK)
        add(parent, "circle", cx=x, cy=y, r=4, fill="#ffffff")
        return
    add(parent, "circle", stroke(PAPER, 5), cx=x, cy=y, r=8, fill=PAPER)
    add(parent, "circle", {**stroke(INK, 2, "3 2.5"), "fill": PAPER}, cx=x, cy=y, r=8)
    mark = add(
        parent,
        "text",
        {"text-anchor": "middle", "font-weight": "700"},
        x=x,
        y=y + 4.5,
        font_size=13,
        fill=INK,
    )
    mark.text = "?"


def stance(ball: XY, hole: XY, *, right_handed: bool) -> BaseGeometry:
    """Return the ground that the player's feet take up for a stroke at the hole, in metres."""
    made = footprint(right_handed=right_handed, direction=facing(ball, hole), swing=False)
    part = next(shape for name, shape in made.parts if name == "stance")
    moved: BaseGeometry = shapely.transform(made.turned(part), lambda points: points + ball)
    return moved


def shoes(ball: XY, hole: XY, *, right_handed: bool) -> list[shapely.Polygon]:
    """Return the two shoes of the player, in metres, inside :func:`stance`."""
    direction = facing(ball, hole)
    middle = stance(ball, hole, right_handed=right_handed).centroid
    along, across = (cos(direction), sin(direction)), (-sin(direction), cos(direction))
    apart = (STANCE_WIDTH - _SHOE_WIDTH) / 2
    long = FOOT_LENGTH / 2 - _SHOE_WIDTH / 2
    found = []
    for side in (-apart, apart):
        x, y = middle.x + side * along[0], middle.y + side * along[1]
        sole = shapely.LineString(
            [(x - long * across[0], y - long * across[1]), (x + long * across[0], y + long * across[1])]
        )
        found.append(sole.buffer(_SHOE_WIDTH / 2))
    return found


def add_player(parent: Node, ball: XY, hole: XY, view: View, *, right_handed: bool) -> None:
    """Draw where the player stands: two shoes, and a dashed line from them to the ball."""
    middle = stance(ball, hole, right_handed=right_handed).centroid
    (x1, y1), (x2, y2) = view.at((middle.x, middle.y)), view.at(ball)
    add(parent, "path", stroke(PAPER, 4), d=f"M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}")
    add(parent, "path", stroke(INK, 1.6, "4 3"), d=f"M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}")
    for shoe in shoes(ball, hole, right_handed=right_handed):
        add(parent, "path", {**stroke(PAPER, 2), "fill": INK}, d=view.path(shoe))


def add_about(parent: Node, shape: BaseGeometry, view: View) -> None:
    """Outline what the situation is about: a broad light line with a dark dashed one on it."""
    path = view.path(view.clip(shape))
    if path:
        add(parent, "path", {**stroke(PAPER, 6), "fill": "none"}, d=path)
        add(parent, "path", {**stroke(INK, 3, "2 4"), "stroke-linecap": "round", "fill": "none"}, d=path)


def add_cross(parent: Node, at: XY) -> None:
    """Draw a slanting cross: a place where something happened before."""
    cross = f"M{at[0] - 6:.1f} {at[1] - 6:.1f}l12 12M{at[0] + 6:.1f} {at[1] - 6:.1f}l-12 12"
    add(parent, "path", stroke("#ffffff", 6), d=cross)
    add(parent, "path", stroke(INK, 2.6), d=cross)
