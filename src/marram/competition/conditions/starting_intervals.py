"""Starting intervals shorter than the published guidance: a recommendation to Committees, no Rule, and nothing is refused."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from datetime import time
from itertools import pairwise
from typing import NamedTuple

from marram.competition.conditions.event_file import EventFile, Group
from marram.competition.conditions.handicaps import shares_ball

RECOMMENDED: Mapping[int, int] = {2: 8, 3: 10, 4: 11}
"""Minutes to the next start at least, by how many balls a group plays (Committee Procedures 4A(1)); for four balls it says 11
or 12, and other guidance of the governing bodies 12. Of a single ball it says nothing."""


class Short(NamedTuple):
    """Groups that are followed too soon.

    Attributes:
        balls: how many balls each of them plays.
        least: the shortest interval after one of them, in minutes.
        groups: how many are followed sooner than recommended.
    """

    balls: int
    least: int
    groups: int

    @property
    def recommended(self) -> int:
        """What is recommended, in minutes."""
        return RECOMMENDED[self.balls]


def short_intervals(found: EventFile) -> Iterator[Short]:
    """Yield, by how many balls a group plays, what is shorter than recommended.

    The interval is from a group's start to the next one at the same tee. Groups that start together at a tee, as in a shotgun
    start, have none.
    """
    tees: dict[int, list[tuple[int, int]]] = defaultdict(list)
    for group in found.starting_times:
        at = time.fromisoformat(group.time.zfill(5))
        tees[group.tee].append((at.hour * 60 + at.minute, _balls(found, group)))
    short: dict[int, list[int]] = defaultdict(list)
    for starts in tees.values():
        for (first, balls), (after, _) in pairwise(sorted(starts)):
            if 0 < after - first < RECOMMENDED.get(balls, 0):
                short[balls].append(after - first)
    for balls, minutes in sorted(short.items()):
        yield Short(balls, min(minutes), len(minutes))


def _balls(found: EventFile, group: Group) -> int:
    """Return how many balls a group plays: of partners who share one, one for each side."""
    if not shares_ball(found):
        return len(group.players)
    sides = {one.name: one.side for one in found.players}
    return len({sides.get(name) or name for name in group.players})
