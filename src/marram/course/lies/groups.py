"""Which things belong together where pairs of them do: all pairs at once, as arrays."""

from typing import Any

import numpy as np
from numpy.typing import NDArray

Numbers = NDArray[Any]


def groups(count: int, pairs: Numbers) -> list[tuple[Numbers, Numbers]]:
    """Return the connected groups of indices in the order of their least, each with its pairs as places within the group.

    Args:
        count: how many things there are.
        pairs: indices of two that belong together, shape (n, 2).
    """
    least = _least(count, pairs)
    order = np.argsort(least, kind="stable")
    firsts = np.flatnonzero(np.diff(least[order], prepend=-1))
    members = np.split(order, firsts[1:])
    place = np.empty(count, dtype=np.intp)
    place[order] = np.arange(count) - np.repeat(firsts, [len(one) for one in members])
    group = least[pairs[:, 0]]
    by_group = np.argsort(group, kind="stable")
    ends = np.searchsorted(group[by_group], least[order[firsts]], side="right")
    within = np.split(place[pairs[by_group]], ends[:-1])
    return list(zip(members, within, strict=True))


def _least(count: int, pairs: Numbers) -> Numbers:
    """Return for each index the least index that it is connected with."""
    least = np.arange(count)
    if not len(pairs):
        return least
    while True:
        ends = least[pairs]
        lower = ends.min(axis=1)
        if (ends == lower[:, None]).all():
            return least
        # Each group found so far is hooked to the least it meets, and then everything points to the top again.
        np.minimum.at(least, ends.ravel(), np.repeat(lower, 2))
        while (least[least] != least).any():
            least = least[least]
