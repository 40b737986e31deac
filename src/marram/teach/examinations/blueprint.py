"""How many items of each Rule a paper has. No published weights were found: these are our own judgement, and say so.

What was found published, second-hand: an examination of 50 questions without and 50 with the book (the seminars of the PGA of
America and the USGA, told at https://colo.golf/2009/04/02/testing-1-2-3-fore), and pass, merit and distinction at 60, 80 and 90
per cent (the R&A's Level 2, told by a candidate at https://forums.golfmonthly.com/threads/level-2-rules-seminar.114470).
"""

from collections.abc import Mapping

from marram.errors import InputError
from marram.said import said

WEIGHTS: Mapping[int, float] = {
    1: 2,
    2: 1,
    3: 3,
    4: 3,
    5: 3,
    6: 4,
    7: 3,
    8: 3,
    9: 5,
    10: 3,
    11: 3,
    12: 3,
    13: 5,
    14: 6,
    15: 3,
    16: 6,
    17: 5,
    18: 5,
    19: 3,
    20: 1,
    21: 2,
    22: 1,
    23: 2,
    24: 1,
    25: 1,
    0: 3,
}
"""The weight of each Rule (0: Model Local Rules): our own judgement, more where referees are called more often."""
LEVELS: Mapping[int, Mapping[int, float]] = {
    1: {1: 0.7, 2: 0.25, 3: 0.05},
    2: {1: 0.3, 2: 0.5, 3: 0.2},
    3: {1: 0.1, 2: 0.4, 3: 0.5},
}
"""For each level of a paper the share of easy, medium and hard items: our own judgement."""
PASS, MERIT, DISTINCTION = 60, 80, 90
"""Marks in per cent, as told of the R&A's Level 2 by a candidate (see above)."""


def shares(weights: Mapping[int, float], count: int) -> dict[int, int]:
    """Return whole numbers of items by weight that add up to a count (largest remainders, Hamilton's method).

    Args:
        weights: a weight for each kind.
        count: how many items in all.

    Raises:
        InputError: the weights are all nothing.
    """
    total = sum(weights.values())
    if total <= 0:
        raise InputError(said("The weights add up to nothing: give one at least that is more."))
    exact = {kind: count * weight / total for kind, weight in weights.items()}
    found = {kind: int(share) for kind, share in exact.items()}
    left = count - sum(found.values())
    for kind in sorted(exact, key=lambda each: (found[each] - exact[each], each))[:left]:
        found[kind] += 1
    return found
