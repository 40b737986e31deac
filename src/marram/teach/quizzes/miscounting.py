"""Wrong numbers of strokes, each by a mistake made in counting, so that the place of the right one tells nothing."""

from dataclasses import dataclass
from enum import Enum
from random import Random

from marram.rules.story.strokes import StrokeCount

MOST_ANSWERS, FEWEST_ANSWERS = 4, 3


class Mistake(Enum):
    """A mistake made in counting; the values stand in the names of its texts."""

    PENALTY_LEFT_OUT = "penalty_left_out"
    STROKE_LEFT_OUT = "stroke_left_out"
    BOTH_LEFT_OUT = "both_left_out"
    TAKEN_FOR_TWO = "taken_for_two"
    TAKEN_FOR_ONE = "taken_for_one"
    PENALTY_MADE_UP = "penalty_made_up"
    TWO_MADE_UP = "two_made_up"
    PENALTY_TWICE = "penalty_twice"
    STROKE_TWICE = "stroke_twice"
    BOTH_TWICE = "both_twice"
    TAKEN_SO_FAR = "taken_so_far"
    ONE_TOO_MANY = "one_too_many"


@dataclass(frozen=True, slots=True)
class Counted:
    """One answer: a number, and the mistake that leads to it; ``None`` for the right one."""

    stroke: int
    mistake: Mistake | None


def answers_to(count: StrokeCount, lot: Random) -> tuple[Counted, ...]:
    """Return the right number among wrong ones, in rising order; none where too few mistakes can be made.

    The place of the right one is drawn before the wrong ones, so that it is as often the first as the last; only small
    numbers leave no choice, as nothing comes before the first stroke.
    """
    right = Counted(count.next_stroke or 0, None)
    below, above = _below(count, lot), _above(count, lot)
    for many in (MOST_ANSWERS, FEWEST_ANSWERS):
        place = lot.randrange(many)
        lower, higher = below[:place], above[: many - 1 - place]
        if len(lower) + len(higher) == many - 1:
            return tuple(sorted([*lower, right, *higher], key=lambda one: one.stroke))
    return ()


def _below(count: StrokeCount, lot: Random) -> list[Counted]:
    """Numbers below the right one, by the most telling mistakes first."""
    right, penalties, made = count.next_stroke or 0, count.total or 0, count.made or 0
    led = [(penalties, Mistake.PENALTY_LEFT_OUT)] if penalties else []
    more = [(1, Mistake.TAKEN_FOR_ONE if penalties > 1 else Mistake.TAKEN_SO_FAR)]
    if made:
        more.append((made, Mistake.STROKE_LEFT_OUT))
    if made and penalties:
        more.append((made + penalties, Mistake.BOTH_LEFT_OUT))
    lot.shuffle(more)
    return _once([Counted(right - less, mistake) for less, mistake in led + more if right > less])


def _above(count: StrokeCount, lot: Random) -> list[Counted]:
    """Numbers above the right one, by the most telling mistakes first."""
    right, penalties, made = count.next_stroke or 0, count.total or 0, count.made or 0
    led = [(1, Mistake.TAKEN_FOR_TWO)] if penalties == 1 else []
    more = [(2, Mistake.TWO_MADE_UP)]
    if penalties > 1:
        more.append((penalties, Mistake.PENALTY_TWICE))
    if not penalties:
        more.append((1, Mistake.PENALTY_MADE_UP))
    if made:
        more.append((made, Mistake.STROKE_TWICE))
    if made and penalties:
        more.append((made + penalties, Mistake.BOTH_TWICE))
    lot.shuffle(more)
    more.append((1, Mistake.ONE_TOO_MANY))
    return _once([Counted(right + plus, mistake) for plus, mistake in led + more])


def _once(found: list[Counted]) -> list[Counted]:
    """Each number once, by the first mistake that leads to it."""
    kept: dict[int, Counted] = {}
    for one in found:
        kept.setdefault(one.stroke, one)
    return list(kept.values())
