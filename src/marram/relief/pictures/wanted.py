"""What a drawing says at which place: the points of the construction, the size, and the limit about the hole."""

from collections.abc import Sequence
from math import cos, sin

from marram.relief.areas.construction import ArcMark, PointMark, Role, bearing, distance
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import YARD
from marram.relief.pictures.picture_words import label_words, mark_words, size_words
from marram.relief.pictures.where_not import not_nearer_arcs
from marram.words.place import writing
from marram.words.texts import text

_SAME_SIDE = 12.0
"""Degrees: a point that lies this little off the line to the hole is said to be behind or ahead, not left or right."""


def area_names(areas: Sequence[ReliefArea]) -> list[str | None]:
    """Return what tells several areas of one option apart: the side of the line to the hole, else a compass bearing.

    One area needs no name. Sides are those of a player who looks from the ball (else from the middle) to the hole.
    """
    if len(areas) < 2:
        return [None] * len(areas)
    start = _start(areas)
    to_hole = bearing(start, areas[0].hole)
    turns = [((bearing(start, area.reference) - to_hole + 180) % 360) - 180 for area in areas]
    sides = [_side(turn) for turn in turns]
    if len(set(sides)) == len(sides):
        return [text(f"relief.side.{one}") for one in sides]
    if writing().yards:
        return [
            text(
                "relief.side.bearing.yards",
                yards=distance(start, area.reference) / YARD,
                bearing=bearing(start, area.reference),
            )
            for area in areas
        ]
    return [
        text(
            "relief.side.bearing",
            metres=distance(start, area.reference),
            bearing=bearing(start, area.reference),
        )
        for area in areas
    ]


def _start(areas: Sequence[ReliefArea]) -> XY:
    balls = (
        mark.at
        for area in areas
        for mark in area.construction
        if isinstance(mark, PointMark) and mark.role is Role.BALL
    )
    middle = (
        sum(area.reference[0] for area in areas) / len(areas),
        sum(area.reference[1] for area in areas) / len(areas),
    )
    return next(balls, middle)


def _side(turn: float) -> str:
    if abs(turn) <= _SAME_SIDE:
        return "ahead"
    if abs(turn) >= 180 - _SAME_SIDE:
        return "behind"
    return "right" if turn > 0 else "left"


def point_labels(areas: Sequence[ReliefArea]) -> list[tuple[str, XY]]:
    """Return the label of every point of the construction but the hole, with its place in metres."""
    return [
        (label_words(mark.role, area, number if len(areas) > 1 else None, name), mark.at)
        for number, (area, name) in enumerate(zip(areas, area_names(areas), strict=True), 1)
        for mark in reversed(area.construction)
        if isinstance(mark, PointMark) and mark.role is not Role.HOLE
    ]


def size_labels(areas: Sequence[ReliefArea]) -> list[tuple[str, XY]]:
    """Return how big the area is, at the foot of its circle; areas of one option are of one size."""
    first = areas[0]
    if not first.radius:
        return []
    words = size_words(first.option.club_lengths or 0, first.club_length)
    return [(words, (first.reference[0], first.reference[1] - first.radius))]


def limit_labels(areas: Sequence[ReliefArea]) -> list[tuple[str, XY]]:
    """Return the words of the limit about the hole, at either end of the arc drawn: one of the two is enough."""
    arcs: list[ArcMark] = [arc for area in areas[:1] for arc in not_nearer_arcs(area)]
    return [
        (
            mark_words(Role.NOT_NEARER),
            (arc.centre[0] + arc.radius * cos(angle), arc.centre[1] + arc.radius * sin(angle)),
        )
        for arc in arcs
        for angle in (arc.start, arc.end)
    ]


def to_hole_words(area: ReliefArea) -> str:
    """Return how far the hole is from the reference point, as it stands at the arrow that points there."""
    metres = distance(area.reference, area.hole)
    if writing().yards:
        return text("relief.to_hole.yards", hole=mark_words(Role.HOLE), yards=metres / YARD)
    return text("relief.to_hole", hole=mark_words(Role.HOLE), metres=metres)
