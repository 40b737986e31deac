"""Which part of the map the drawing of a situation shows: the ball with the player, and what it is about."""

from shapely import Point
from shapely.ops import nearest_points

from marram.relief.geometry.outline import XY
from marram.relief.pictures.view import View
from marram.teach.drawings.placing import Placed

_ROOM = 0.16
"""The part of the frame left free on each side, for labels."""
_REACH = 2.0
"""Metres about the ball that are always shown: the player stands there."""
_LEAST = 7.0
"""Metres: no frame shows less."""
_MOST = 45.0
"""Metres: no frame shows more; what lies farther off is pointed at by an arrow."""
_EDGE_NEAR = 20.0
"""Metres: an edge farther from the ball than this tells nothing about it."""


def frame_of(one: Placed, pixels: float) -> View:
    """Return the frame of a situation's drawing."""
    held = [(one.ball[0] + x, one.ball[1] + y) for x in (-_REACH, _REACH) for y in (-_REACH, _REACH)]
    for place in (*_edges(one), *one.places.values()):
        if _extent([*held, place]) <= _MOST:
            held.append(place)
    (left, right), (bottom, top) = ((min(some), max(some)) for some in zip(*held, strict=True))
    size = max(_extent(held), _LEAST) / (1 - 2 * _ROOM)
    return View((left + right - size) / 2, (bottom + top - size) / 2, size, pixels)


def whole_hole(one: Placed, pixels: float) -> View:
    """Return the frame of the overview: the hole from tee to green, and the ball."""
    left, bottom, right, top = one.hole.line.union(Point(one.ball)).union(one.hole.location).bounds
    size = 1.2 * max(right - left, top - bottom)
    return View((left + right - size) / 2, (bottom + top - size) / 2, size, pixels)


def _edges(one: Placed) -> list[XY]:
    """Return the places of the edges that tell of the ball: of the condition, and of the area it lies in."""
    at = Point(one.ball)
    shapes = [] if one.condition is None else [one.condition.geometry]
    shapes += [region.shape for region in one.ground.lies.specific if region.shape.distance(at) == 0]
    if (
        one.ruled.lie.place is not None
        and one.ruled.lie.place.area is None
        and one.ground.lies.in_bounds is not None
    ):
        shapes.append(one.ground.lies.in_bounds.shape)
    found = []
    for shape in shapes:
        edge = nearest_points(shape.boundary, at)[0]
        if edge.distance(at) <= _EDGE_NEAR:
            found.append((edge.x, edge.y))
    return found


def _extent(places: list[XY]) -> float:
    across, up = zip(*places, strict=True)
    return float(max(max(across) - min(across), max(up) - min(up)))
