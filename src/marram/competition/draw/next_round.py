"""The second round after the first: early ones late, from the other tee, so that the day is fair to all."""

from collections.abc import Sequence

from marram.competition.draw.wishes import Start


def turned(groups: Sequence[Sequence[str]], starts: Sequence[Start]) -> tuple[str, ...]:
    """Return the order of players for a second round on the same starts: each group in the other half, from the other tee.

    The later half of the groups of each tee goes first, in its order, and its players to the other tee (where there are two).
    """
    tees = sorted({one.tee for one in starts})
    columns = {
        tee: [tuple(group) for group, start in zip(groups, starts, strict=True) if start.tee == tee and group]
        for tee in tees
    }
    halves = {tee: column[len(column) // 2 :] + column[: len(column) // 2] for tee, column in columns.items()}
    other = {tee: tees[(place + 1) % len(tees)] for place, tee in enumerate(tees)}
    waiting = {other[tee]: list(column) for tee, column in halves.items()}
    order: list[str] = []
    for start in starts:
        if waiting[start.tee]:
            order.extend(waiting[start.tee].pop(0))
    for column in waiting.values():
        order.extend(key for group in column for key in group)
    return tuple(order)
