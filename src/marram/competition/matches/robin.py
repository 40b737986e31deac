"""The table of a round robin: a point for a win, a half for a tie (as team matches count them).

Sides with equal points share their place: what parts them is for the Committee's Terms to say (Committee Procedures 5A).
"""

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class RobinLine:
    """A line of the table.

    Attributes:
        side: who.
        place: 1 for the first; equal points share it.
        played: matches that are over.
        won: of them won.
        tied: tied.
        lost: lost.
    """

    side: str
    place: int
    played: int
    won: int
    tied: int
    lost: int

    @property
    def points(self) -> Fraction:
        """A point for a win and a half for a tie."""
        return self.won + Fraction(self.tied, 2)


def robin_table(
    sides: Iterable[str], decided: Iterable[tuple[str, str, str | None]]
) -> tuple[RobinLine, ...]:
    """Return the table, the leaders first; equal ones in the order given.

    Args:
        sides: everybody who plays.
        decided: the sides of each match that is over, and its winner; ``None``: tied.
    """
    won: dict[str, int] = dict.fromkeys(sides, 0)
    tied, lost = dict(won), dict(won)
    for first, second, winner in decided:
        for side in (first, second):
            which = tied if winner is None else won if winner == side else lost
            which[side] += 1
    points = {one: won[one] + Fraction(tied[one], 2) for one in won}
    ordered = sorted(won, key=lambda one: -points[one])
    return tuple(
        RobinLine(
            one,
            1 + sum(points[each] > points[one] for each in won),
            won[one] + tied[one] + lost[one],
            won[one],
            tied[one],
            lost[one],
        )
        for one in ordered
    )
