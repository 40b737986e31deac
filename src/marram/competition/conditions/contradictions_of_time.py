"""What cannot hold together in the time that groups are given for a round (a Pace of Play Policy, Rule 5.6b(3))."""

from collections.abc import Iterator
from itertools import permutations
from typing import NamedTuple

from marram.competition.conditions.event_file import EventFile
from marram.errors import shown
from marram.rules.facts.conditions import Sides
from marram.said import said

MOST_MINUTES = 24 * 60
"""A day: more is no time for a round (own choice)."""


class _Timed(NamedTuple):
    """A round with its time: its name, its holes (none: not said), who plays together."""

    name: str
    holes: frozenset[int]
    sides: Sides | None
    minutes: int | None

    def is_part_of(self, other: "_Timed") -> bool:
        """Whether it is over some of the holes of another, played alike."""
        return self.sides is other.sides and bool(self.holes) and self.holes < other.holes


def contradictions_of_time(found: EventFile) -> Iterator[str]:
    """Yield what cannot hold together in the minutes of play."""
    yield from _impossible(found)
    yield from _twice(found)
    for part, whole in permutations(_timed(found), 2):
        if part.minutes and whole.minutes and part.minutes > whole.minutes and part.is_part_of(whole):
            yield said(
                "minutes_of_play: {part} is given {longer} minutes for some of the holes that {whole} is given "
                "{shorter} for. Correct one of them.",
                part=shown(part.name),
                whole=shown(whole.name),
                longer=part.minutes,
                shorter=whole.minutes,
            )


def _impossible(found: EventFile) -> Iterator[str]:
    places = [
        (said("minutes_of_play"), found.minutes_of_play),
        *(
            (said("rounds {number}, minutes_of_play", number=number), one.minutes_of_play)
            for number, one in enumerate(found.rounds, start=1)
        ),
    ]
    for place, minutes in places:
        if minutes is not None and not 1 <= minutes <= MOST_MINUTES:
            yield said(
                "{place} is {minutes}; give minutes from 1 to {most}.",
                place=place,
                minutes=minutes,
                most=MOST_MINUTES,
            )


def _twice(found: EventFile) -> Iterator[str]:
    """Yield a round that is listed twice with different minutes; two rounds of one day may have each its own."""
    for day, name in sorted({(one.played_on, one.name) for one in found.rounds}):
        mine = [one for one in found.rounds if (one.played_on, one.name) == (day, name)]
        given = {one.minutes_of_play for one in mine} - {None}
        if len(given) > 1:
            yield said(
                "minutes_of_play: the round of {day} is given {times} minutes; keep one of them.",
                day=day.isoformat(),
                times=" / ".join(map(str, sorted(filter(None, given)))),
            )


def _timed(found: EventFile) -> Iterator[_Timed]:
    """Yield every round once, with what is said of all where nothing else is said of it."""
    own = {(one.played_on, one.name): one for one in reversed(found.rounds)}
    for day, name in found.every_round():
        one = own.get((day, name))
        holes = frozenset((one.holes if one else ()) or found.holes)
        sides = (one.sides if one else None) or found.sides
        yield _Timed(name or day.isoformat(), holes, sides, found.minutes_of(day, name))
