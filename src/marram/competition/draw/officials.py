"""Where officials are proposed to be in a round, by their roles, the groups and the time a round takes; the seed decides who is where.

Own choices throughout, after what Committee Procedures 6C advises of referees (with groups, or in areas of the course):
enough referees go with a group each; fewer have areas of holes in order, and the chief referee roves. A starter is at each tee
that groups start from, several of a tee one after the other. One scorer is in the scoring area, the others walk with the last
groups.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import time
from itertools import pairwise

from marram.competition.draw.order import by_seed


@dataclass(frozen=True, slots=True)
class GroupStarts:
    """A group: its number, when and where it starts."""

    number: int
    at: time
    tee: int


def proposed_places(
    officials: Sequence[tuple[str, str]],
    groups: Sequence[GroupStarts],
    holes: Sequence[int],
    *,
    minutes: int,
    seed: str,
) -> dict[tuple[str, str], str]:
    """Return where each official is, in the words that a duty is read from (:mod:`marram.competition.conditions.duties`).

    Args:
        officials: each by key and role; the order in which they are given decides nothing.
        groups: of the round.
        holes: of the course, in their order.
        minutes: that a group takes for the round.
        seed: as it is kept with the places.
    """
    if not groups or not holes:
        return {}

    def of(*roles: str) -> list[tuple[str, str]]:
        some = {f"{role}\n{key}": (key, role) for key, role in officials if role in roles}
        return [some[one] for one in by_seed(tuple(some), seed)]

    day = _Day(groups, holes, minutes)
    found = dict.fromkeys(of("chief_referee"), f"roving, {day.from_to(holes)}")
    referees = of("referee")
    walking = len(referees) >= len(groups)
    if walking:
        for one, group in zip(referees, groups, strict=False):
            found[one] = f"group {group.number}, {day.with_group(group)}"
        found |= dict.fromkeys(referees[len(groups) :], f"roving, {day.from_to(holes)}")
    else:
        for one, area in zip(referees, _areas(holes, len(referees)), strict=True):
            found[one] = f"{_range('hole', area)}, {day.from_to(area)}"
    found |= _starters(of("starter"), groups)
    scorers = of("scorer")
    for number, one in enumerate(scorers):
        if number == 0:
            found[one] = f"scoring area, {day.cards()}"
        elif number <= len(groups):
            group = groups[-number]
            found[one] = f"group {group.number}, {day.with_group(group)}"
        else:
            found[one] = f"scoring area, {day.cards()}"
    return found


def _starters(
    starters: Sequence[tuple[str, str]], groups: Sequence[GroupStarts]
) -> dict[tuple[str, str], str]:
    """Return the places of starters: at each tee in turn, several of one tee for even parts of its groups."""
    tees = sorted({one.tee for one in groups})
    at_tee: dict[int, list[tuple[str, str]]] = {tee: [] for tee in tees}
    for number, one in enumerate(starters):
        at_tee[tees[number % len(tees)]].append(one)
    found = {}
    for tee, some in at_tee.items():
        starting = [one for one in groups if one.tee == tee]
        for number, one in enumerate(some):
            part = starting[len(starting) * number // len(some) : len(starting) * (number + 1) // len(some)]
            if part:
                found[one] = f"tee {tee}, {_span(_minute(part[0].at), _minute(part[-1].at))}"
    return found


@dataclass(frozen=True, slots=True)
class _Day:
    """When groups are where: each takes as long for every hole (own simplification: a proposal needs no more)."""

    groups: Sequence[GroupStarts]
    holes: Sequence[int]
    minutes: int

    def _reaches(self, group: GroupStarts, hole: int) -> int:
        start = self.holes.index(group.tee) if group.tee in self.holes else 0
        played = (self.holes.index(hole) - start) % len(self.holes)
        return _minute(group.at) + self.minutes * played // len(self.holes)

    def from_to(self, area: Sequence[int]) -> str:
        each = self.minutes // len(self.holes)
        times = [self._reaches(group, hole) for group in self.groups for hole in area]
        return _span(min(times), max(times) + each)

    def with_group(self, group: GroupStarts) -> str:
        return _span(_minute(group.at), _minute(group.at) + self.minutes)

    def cards(self) -> str:
        ends = [_minute(one.at) + self.minutes for one in self.groups]
        return _span(min(ends), max(ends))


def _areas(holes: Sequence[int], count: int) -> list[Sequence[int]]:
    """Return the holes in so many parts, in order, even but for one hole; the same ones again where there are more than holes."""
    parts = min(count, len(holes))
    cut = [len(holes) * number // parts for number in range(parts + 1)] if parts else [0]
    areas = [holes[start:end] for start, end in pairwise(cut)]
    return [areas[number % len(areas)] for number in range(count)] if areas else []


def _range(what: str, numbers: Sequence[int]) -> str:
    return f"{what} {numbers[0]}" if len(numbers) == 1 else f"{what}s {numbers[0]} to {numbers[-1]}"


def _minute(at: time) -> int:
    return at.hour * 60 + at.minute


def _span(start: int, end: int) -> str:
    return f"{start // 60 % 24:02d}:{start % 60:02d}–{end // 60 % 24:02d}:{end % 60:02d}"
