"""Wrong numbers of strokes, each by a mistake made in counting, so that adding up alone leads to none of them."""

from dataclasses import dataclass
from enum import Enum
from random import Random

from marram.rules.story.strokes import StrokeCount

ANSWERS = 4
PENALTIES, OFTEN = (0, 1, 2, 3), (25, 35, 28, 12)
"""How many penalty strokes a story comes to (the last: so many or more), and how often of a hundred."""


class Mistake(Enum):
    """A mistake made in counting; the values stand in the names of its texts."""

    PENALTY_LEFT_OUT = "penalty_left_out"
    TWO_TOO_FEW = "two_too_few"
    TAKEN_FOR_ONE = "taken_for_one"
    TAKEN_FOR_TWO = "taken_for_two"
    PENALTY_MADE_UP = "penalty_made_up"
    ONE_TOO_MANY = "one_too_many"
    TWO_MADE_UP = "two_made_up"
    THREE_MADE_UP = "three_made_up"


_BESIDE = {
    -2: Mistake.TWO_TOO_FEW,
    -1: Mistake.TAKEN_FOR_ONE,
    1: Mistake.ONE_TOO_MANY,
    2: Mistake.TWO_MADE_UP,
    3: Mistake.THREE_MADE_UP,
}


@dataclass(frozen=True, slots=True)
class Counted:
    """One answer: a number, and the mistake that leads to it; ``None`` for the right one."""

    stroke: int
    mistake: Mistake | None


def answers_to(count: StrokeCount, lot: Random) -> tuple[Counted, ...]:
    """Return the right number among wrong ones, in rising order.

    The first is what the story comes to without any penalty: no number below it could be right, and whoever only adds up
    cannot tell which of those from there on is.
    """
    right, penalties = count.next_stroke or 0, count.total or 0
    if penalties < ANSWERS:
        beside = [at - penalties for at in range(ANSWERS)]
    else:
        beside = [-penalties, *lot.choice(((-2, -1, 0), (-1, 0, 1), (0, 1, 2)))]
    return tuple(Counted(right + at, _mistake(at, penalties)) for at in beside)


def _mistake(beside: int, penalties: int) -> Mistake | None:
    """Return the mistake that leads so far from the right number."""
    if not beside:
        return None
    if beside == -penalties:
        return Mistake.PENALTY_LEFT_OUT
    if beside == 1 and penalties < 2:
        return Mistake.TAKEN_FOR_TWO if penalties else Mistake.PENALTY_MADE_UP
    return _BESIDE[beside]
