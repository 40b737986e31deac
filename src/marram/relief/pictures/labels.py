"""Labels that do not overlap each other nor leave the picture."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, pi, sin

from marram.relief.geometry.outline import XY

SIZE = 15.0
"""Picture units: the height of the letters; legible on a phone in sunlight."""
_WIDTH = 0.68
"""The mean width of a letter, in heights (bold DejaVu Sans, among the widest in use; rounded up)."""
PLAIN = 0.9
"""The width of plain letters, in widths of bold ones."""
_PAD = 3.0
_DISTANCES = (12.0, 24.0, 40.0, 60.0, 85.0, 115.0, 150.0)
_DIRECTIONS = 16


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle in the picture."""

    left: float
    top: float
    right: float
    bottom: float

    def holds(self, other: "Box") -> bool:
        """Return whether another rectangle lies inside this one."""
        return (
            self.left <= other.left
            and self.top <= other.top
            and other.right <= self.right
            and other.bottom <= self.bottom
        )

    def overlaps(self, other: "Box") -> bool:
        """Return whether two rectangles share any place."""
        return (
            self.left < other.right
            and other.left < self.right
            and self.top < other.bottom
            and other.top < self.bottom
        )


@dataclass(frozen=True, slots=True)
class Label:
    """A label placed in the picture.

    Attributes:
        text: what it says.
        anchor: what it belongs to.
        box: where it stands.
        leader: whether a thin line joins it to its anchor.
    """

    text: str
    anchor: XY
    box: Box
    leader: bool


def place_labels(
    wanted: Sequence[tuple[str, XY]], pixels: float, taken: Sequence[Box], avoid: Sequence[Box] = ()
) -> list[Label]:
    """Place labels near their anchors, most important first.

    Args:
        wanted: the text and anchor of each label.
        pixels: the side of the picture.
        taken: places that labels must leave free.
        avoid: places that labels leave free where there is room elsewhere.

    Returns:
        The labels placed; one that finds no free place is left out (its distance stands below the map).
    """
    placed: list[Label] = []
    occupied = [*taken, *(_around(anchor) for _, anchor in wanted)]
    for text, anchor in wanted:
        width, height = text_width(text) + 2 * _PAD, SIZE + 2 * _PAD
        frame = Box(0, 0, pixels, pixels)
        free = [
            (box, leader)
            for box, leader in _candidates(anchor, width, height)
            if frame.holds(box) and not any(box.overlaps(other) for other in occupied)
        ]
        near = [one for one in free if not one[1] and not any(one[0].overlaps(other) for other in avoid)]
        for box, leader in (near or free)[:1]:
            placed.append(Label(text, anchor, box, leader))
            occupied.append(box)
    return placed


def text_width(text: str) -> float:
    """Return about how wide a text is in the picture."""
    return len(text) * SIZE * _WIDTH


def _around(anchor: XY, half: float = 9.0) -> Box:
    return Box(anchor[0] - half, anchor[1] - half, anchor[0] + half, anchor[1] + half)


def _candidates(anchor: XY, width: float, height: float) -> list[tuple[Box, bool]]:
    found = []
    for distance in _DISTANCES:
        for step in range(_DIRECTIONS):
            # To the right first, then alternately up and down: a reader looks there first.
            turn = (step + 1) // 2 * (1 if step % 2 else -1) * 2 * pi / _DIRECTIONS
            x = anchor[0] + cos(turn) * (distance + width / 2)
            y = anchor[1] - sin(turn) * (distance + height / 2)
            box = Box(x - width / 2, y - height / 2, x + width / 2, y + height / 2)
            found.append((box, distance > _DISTANCES[2]))
    return found
