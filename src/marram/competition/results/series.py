"""An order of merit: points for places over a series of competitions, of which the best so many count."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from itertools import groupby

from marram.competition.results.board import Place
from marram.errors import BadAnswer
from marram.said import said


class SharedPlace(Enum):
    """What those get who share a place: no published text says; both are common practice."""

    MEAN = "mean"
    """The mean of the points of the places they take up together."""
    FULL = "full"
    """The points of the place each."""


@dataclass(frozen=True, slots=True)
class Merit:
    """A place in an order of merit.

    Attributes:
        side: who.
        place: 1 for the first.
        shared: whether another has the same place.
        points: the sum of those that count.
        each: the points of every competition of the series, 0 where there are none.
        counted: the numbers of the competitions that count, from 1.
    """

    side: str
    place: int
    shared: bool
    points: Fraction
    each: tuple[Fraction, ...]
    counted: tuple[int, ...]


def points_of(
    places: Sequence[Place], scale: Sequence[int], shared: SharedPlace = SharedPlace.MEAN
) -> Mapping[str, Fraction]:
    """Return the points that a competition gives each side that has a place.

    Args:
        places: its places.
        scale: the points of the first, the second place …; beyond its end there are none.
        shared: what those get who share a place.
    """

    def of(place: int) -> int:
        return scale[place - 1] if place <= len(scale) else 0

    found: dict[str, Fraction] = {}
    placed = [one for one in places if one.place is not None]
    for place, same in groupby(placed, key=lambda one: one.place or 0):
        group = list(same)
        taken = range(place, place + len(group))
        each = (
            Fraction(of(place)) if shared is SharedPlace.FULL else Fraction(sum(map(of, taken)), len(group))
        )
        found.update({one.side: each for one in group})
    return found


def order_of_merit(
    series: Sequence[Sequence[Place]],
    scale: Sequence[int],
    *,
    best: int | None = None,
    shared: SharedPlace = SharedPlace.MEAN,
) -> tuple[Merit, ...]:
    """Return the order of merit over a series.

    Args:
        series: the places of each competition, in the order of the series.
        scale: the points of the first, the second place ….
        best: how many competitions of each side count, its best; ``None``: all.
        shared: what those get who share a place.

    Raises:
        BadAnswer: ``best`` is below 1, or points grow with the place.
    """
    if best is not None and best < 1:
        raise BadAnswer(said("best is {best}; give a number from 1, or nothing for all.", best=best))
    if list(scale) != sorted(scale, reverse=True):
        raise BadAnswer(said("scale: a later place has more points than an earlier one; correct it."))
    won = [points_of(places, scale, shared) for places in series]
    sides = {one.side for places in series for one in places}
    sums: dict[str, tuple[Fraction, tuple[Fraction, ...], tuple[int, ...]]] = {}
    for side in sides:
        each = tuple(one.get(side, Fraction()) for one in won)
        order = sorted(range(len(each)), key=lambda at: (-each[at], at))[:best]
        sums[side] = sum((each[at] for at in order), Fraction()), each, tuple(sorted(at + 1 for at in order))
    found: list[Merit] = []
    ranked = sorted(sides, key=lambda side: (-sums[side][0], side))
    for _, same in groupby(ranked, key=lambda side: sums[side][0]):
        group = list(same)
        place = len(found) + 1
        found += [Merit(side, place, len(group) > 1, *sums[side]) for side in group]
    return tuple(found)
