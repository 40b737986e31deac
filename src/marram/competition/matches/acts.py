"""What can happen in a match (Rule 3.2)."""

from dataclasses import dataclass
from enum import Enum

from marram.competition.results.card import HoleScore


class HoleBy(Enum):
    """How a hole was won without being holed out in fewer strokes."""

    CONCEDED = "conceded"
    PENALTY = "penalty"
    """The other side lost it by the general penalty."""
    STROKES = "strokes"
    """In fewer strokes, which nobody wrote down."""


@dataclass(frozen=True, slots=True)
class HolePlayed:
    """A hole played out: gross strokes of each side, conceded strokes included; ``"-"`` where a side picked up."""

    first: HoleScore
    second: HoleScore


@dataclass(frozen=True, slots=True)
class HoleGiven:
    """A hole that a side has without playing it out."""

    winner: str
    by: HoleBy


@dataclass(frozen=True, slots=True)
class HoleTied:
    """A hole tied in the same number of strokes, which nobody wrote down."""


@dataclass(frozen=True, slots=True)
class HoleAgreedTied:
    """A hole that the players agreed to call tied, after one of them had begun it (Rule 3.2a(2))."""


@dataclass(frozen=True, slots=True)
class HoleLostByBoth:
    """A hole that both sides lost by the general penalty, as where both start late: it is tied (Rules 3.2a(2) and 5.3a)."""


@dataclass(frozen=True, slots=True)
class MatchConceded:
    """A side concedes the match (Rule 3.2b(1))."""

    by: str


@dataclass(frozen=True, slots=True)
class MatchDisqualified:
    """A side is disqualified; the other one wins (Rule 3.2a(3))."""

    side: str
    citation: str


@dataclass(frozen=True, slots=True)
class HolesDeducted:
    """The score is adjusted against a side: its holes are taken off, as for clubs (Rule 4.1b)."""

    side: str
    holes: int
    citation: str = "4.1b"


@dataclass(frozen=True, slots=True)
class ResultAgreed:
    """The result is reported as the Committee has laid down, and final (Rule 3.2a(5))."""


MatchAct = (
    HolePlayed
    | HoleGiven
    | HoleTied
    | HoleAgreedTied
    | HoleLostByBoth
    | MatchConceded
    | MatchDisqualified
    | HolesDeducted
    | ResultAgreed
)
"""What can happen in a match; each of the first five is the next hole."""
