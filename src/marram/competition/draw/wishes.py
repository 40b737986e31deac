"""What is wished of a draw, and the starts it fills."""

from abc import ABC, abstractmethod
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import time
from enum import Enum

from marram.errors import InputError
from marram.said import Said, said


@dataclass(frozen=True, slots=True)
class Start:
    """A start: a group leaves a tee at a time.

    Attributes:
        time: of day.
        tee: the number of the hole it starts at.
        places: how many players it has room for.
    """

    time: time
    tee: int = 1
    places: int = 3


@dataclass(frozen=True, slots=True)
class Drawn:
    """A player to be drawn: a key of their own, and what the draw looks at; partners have the same side."""

    key: str
    club: str = ""
    side: str = ""


class Wish(ABC):
    """A wish of a draw; each kind says itself."""

    @abstractmethod
    def said(self) -> Said:
        """Return the wish as a sentence."""


@dataclass(frozen=True, slots=True)
class Together(Wish):
    """These players are in one group."""

    players: tuple[str, ...]

    def said(self) -> Said:
        """Return the wish as a sentence."""
        return said("together: {players}", players=", ".join(self.players))


@dataclass(frozen=True, slots=True)
class Apart(Wish):
    """No two of these players are in one group."""

    players: tuple[str, ...]

    def said(self) -> Said:
        """Return the wish as a sentence."""
        return said("apart: {players}", players=", ".join(self.players))


class Part(Enum):
    """A part of the day, or of the course."""

    EARLY = "early"
    LATE = "late"
    FIRST_TEE = "first_tee"
    OTHER_TEE = "other_tee"


@dataclass(frozen=True, slots=True)
class Within(Wish):
    """This player starts in the earlier or later half of the starts, or from the first or the other tee."""

    player: str
    part: Part

    def said(self) -> Said:
        """Return the wish as a sentence."""
        return said("{player}: {part}", player=self.player, part=self.part)


@dataclass(frozen=True, slots=True)
class NotBefore(Wish):
    """This player cannot start before a time."""

    player: str
    time: time

    def said(self) -> Said:
        """Return the wish as a sentence."""
        return said("{player}: not before {time}", player=self.player, time=self.time.isoformat("minutes"))


@dataclass(frozen=True, slots=True)
class ClubsApart(Wish):
    """No two players of one club are in one group."""

    def said(self) -> Said:
        """Return the wish as a sentence."""
        return said("no two of one club in a group")


def partners_together(players: Sequence[Drawn]) -> list[Together]:
    """Return the wish of every side with partners: that they are in one group."""
    sides: dict[str, list[str]] = {}
    for one in players:
        if one.side:
            sides.setdefault(one.side, []).append(one.key)
    return [Together(tuple(some)) for some in sides.values() if len(some) > 1]


def starts(
    first: time,
    groups: int,
    *,
    minutes: int,
    places: int = 3,
    tees: Sequence[int] = (1,),
    second: time | None = None,
) -> tuple[Start, ...]:
    """Return starts at even intervals; with several tees a group leaves each of them at every time.

    A shotgun start has 0 minutes between groups and a tee for each of them. With a second start, in the afternoon, the first
    half of the groups starts from the first time on and the others from the second.

    Raises:
        InputError: no groups, tees or places, or starts that go beyond the day; every fault at once.
    """
    if second is not None and tees:
        times = -(-groups // len(tees))
        before = min(groups, -(-times // 2) * len(tees))
        morning = starts(first, before, minutes=minutes, places=places, tees=tees)
        if second <= morning[-1].time:
            raise InputError(
                said(
                    "The second start, {second}, lies before the last group of the first, {last}. Give a later one.",
                    second=second.isoformat("minutes"),
                    last=morning[-1].time.isoformat("minutes"),
                )
            )
        rest = groups - before
        return (
            *morning,
            *(starts(second, rest, minutes=minutes, places=places, tees=tees) if rest else ()),
        )
    faults = []
    if groups < 1 or not tees or len(set(tees)) != len(tees) or not all(1 <= tee <= 18 for tee in tees):
        faults.append(said("Starts need one group and one tee at least, each tee from 1 to 18 once."))
    if not 1 <= places <= 4:
        faults.append(said("A group has 1 to 4 players, not {places}.", places=places))
    rounds = -(-groups // max(1, len(tees)))
    if minutes < 0 or (minutes == 0 and rounds > 1):
        faults.append(said("Between two groups of a tee lies a minute at least."))
    last = first.hour * 60 + first.minute + (rounds - 1) * minutes
    if last >= 24 * 60:
        faults.append(said("The last group would start after midnight."))
    if faults:
        raise InputError(*faults)
    found = []
    for number in range(groups):
        at = first.hour * 60 + first.minute + number // len(tees) * minutes
        found.append(Start(time(at // 60, at % 60), tees[number % len(tees)], places))
    return tuple(found)


def in_part(all_starts: Sequence[Start], start: int, part: Part) -> bool:
    """Return whether a start lies in a part: the earlier half by order of time, or the first of the tees."""
    if part in {Part.FIRST_TEE, Part.OTHER_TEE}:
        return (all_starts[start].tee == min(one.tee for one in all_starts)) is (part is Part.FIRST_TEE)
    times = sorted({one.time for one in all_starts})
    early = times[: -(-len(times) // 2)]
    return (all_starts[start].time in early) is (part is Part.EARLY)
