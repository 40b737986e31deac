"""A match, and how it stands: the words of match play (Rule 3.2)."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum

from marram.said import Said


class MatchStatus(Enum):
    """How a match stands."""

    ALL_SQUARE = "all_square"
    UP = "up"
    DORMIE = "dormie"
    """The leader is as many holes up as are left; a word of the trade, not a term of the Rules."""
    EXTENDED = "extended"
    """Tied after its last hole, and going on hole by hole."""
    TO_BE_SAID = "to_be_said"
    """Tied after its last hole, and nobody has said whether it may end so."""
    WON = "won"
    TIED = "tied"


@dataclass(frozen=True)
class Match:
    """A match.

    Attributes:
        first: a side.
        second: the other.
        holes: the numbers of its holes, in the order in which they are played; for two rounds each twice.
        strokes: for each side the handicap strokes on each hole, by its number; as if each round were one of 18.
        may_end_tied: whether it may; ``None``: the Terms of the Competition are not known.
    """

    first: str
    second: str
    holes: tuple[int, ...] = tuple(range(1, 19))
    strokes: Mapping[str, Mapping[int, int]] = field(default_factory=dict)
    may_end_tied: bool | None = None

    def hole_at(self, place: int) -> int:
        """Return the number of the hole at a place, from 0: after the last it goes on from where the match began."""
        return self.holes[place % len(self.holes)]

    def received(self, side: str, hole: int) -> int:
        """Return the handicap strokes of a side on a hole."""
        return self.strokes.get(side, {}).get(hole, 0)

    def other(self, side: str) -> str:
        """Return the opponent."""
        return self.second if side == self.first else self.first


@dataclass(frozen=True)
class HoleResult:
    """A hole of a match: its number, who won it (``None``: tied), and how the match stood after it (first side's lead)."""

    hole: int
    winner: str | None
    up: int


@dataclass(frozen=True)
class MatchState:
    """How a match stands.

    Attributes:
        status: how.
        leader: who leads or has won; ``None``: nobody.
        up: by how many holes.
        left: how many holes are left of those laid down; 0 from the first extra hole on.
        holes: the holes so far.
        final: whether the result is final.
        words: the state in words: ``2 up``, ``all square``, ``3 and 2``, ``1 up after 19 holes``.
        next_hole: the number of the hole to be played next, or in play; ``None`` once the match is over.
    """

    status: MatchStatus
    leader: str | None
    up: int
    left: int
    holes: tuple[HoleResult, ...]
    final: bool
    words: Said
    next_hole: int | None = None

    @property
    def over(self) -> bool:
        """Whether the match is over."""
        return self.status in (MatchStatus.WON, MatchStatus.TIED)

    @property
    def winner(self) -> str | None:
        """Who has won; ``None`` while it is open, or tied."""
        return self.leader if self.status is MatchStatus.WON else None
