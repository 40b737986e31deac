"""Rules 3.1 and 3.3: the maximum score of a hole for handicap purposes, and the most likely score of one not finished."""

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction

from marram.handicap.checking import Checking
from marram.handicap.worked import Worked, step, worked
from marram.said import said

WITHOUT_INDEX = 5
"""Strokes over par that count at most before a first Handicap Index (Rule 3.1a), or with four strokes on a hole (3.1b)."""


def maximum_hole_score(par: object, strokes: object, *, has_index: bool = True) -> Worked:
    """Return the highest score of a hole that counts for handicap purposes.

    With an index it is net double bogey: par, two, and the strokes received on the hole from the full, rounded Course
    Handicap; strokes given back are taken off. Where a player receives four strokes or more it is par and five
    (Rule 3.1b). Before a first index it is par and five (Rule 3.1a).

    Raises:
        BadHandicap: par or strokes cannot be used.
    """
    checking = Checking()
    of_hole = checking.whole_number(said("Par of a hole"), par, least=2, most=7)
    received = checking.whole_number(said("Strokes received on a hole"), strokes, least=-4, most=10)
    checking.done()
    if not has_index:
        return worked(step("par_and_five", "3.1a", of_hole + WITHOUT_INDEX, par=of_hole))
    net = of_hole + 2 + received
    first = step("net_double_bogey", "3.1b", net, par=of_hole, strokes=received)
    if net <= of_hole + WITHOUT_INDEX:
        return worked(first)
    return worked(first, step("no_more_than_five", "3.1b", of_hole + WITHOUT_INDEX, par=of_hole))


def net_par(par: int, strokes: int) -> int:
    """Return net par: par and the strokes received (Rule 3.2, Definitions)."""
    return par + strokes


class LengthUnit(Enum):
    """The unit that a distance to the hole is measured in; the published bounds differ a little between them."""

    METRES = "metres"
    YARDS = "yards"


_ON_GREEN = {LengthUnit.METRES: Fraction(3, 2), LengthUnit.YARDS: Fraction(5, 3)}
"""1.5 metres, or 5 feet (Rule 3.3)."""
_NEAR = 20
"""20 metres, or 20 yards (Rule 3.3)."""


@dataclass(frozen=True, slots=True)
class MostLikely:
    """The most likely score: one of these, by where the ball lay, the green, and the player's ability (Rule 3.3)."""

    least: int
    most: int
    citation: str = "3.3"


def most_likely_score(
    strokes_taken: object, distance: object, unit: LengthUnit, *, on_green: bool
) -> MostLikely:
    """Return between what the most likely score of an unfinished hole lies.

    Args:
        strokes_taken: on the hole so far, penalty strokes included.
        distance: from the ball to the hole, in ``unit``; an exact number.
        unit: metres or yards.
        on_green: whether the ball lies on the putting green.

    Raises:
        BadHandicap: the figures cannot be used.
    """
    checking = Checking()
    taken = checking.whole_number(said("Strokes taken"), strokes_taken, least=0, most=40)
    away = checking.number(said("Distance to the hole"), distance, least=0, most=1000)
    checking.done()
    if on_green and away <= _ON_GREEN[unit]:
        return MostLikely(taken + 1, taken + 1)
    more = 2 if away <= _NEAR else 3
    return MostLikely(taken + more, taken + more + 1)
