"""What happens in a match as it is entered: a hole at a time, and how the match ends (Rule 3.2)."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import Enum
from typing import ClassVar, Literal

from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.cards import LONGEST, is_score
from marram.services.kinds.kind import Kind, is_ident


class Side(Enum):
    """A side of a match: the one named first on the starting sheet, or the other."""

    FIRST = "first"
    SECOND = "second"


class HoleHow(Enum):
    """How a hole ended."""

    SCORES = "scores"
    WON = "won"
    CONCEDED = "conceded"
    PENALTY = "penalty"
    TIED = "tied"
    AGREED_TIED = "agreed_tied"
    LOST_BY_BOTH = "lost_by_both"


class EndHow(Enum):
    """How a match ended, beside what its holes come to."""

    CONCEDED = "conceded"
    DISQUALIFIED = "disqualified"
    FINAL = "final"
    """The result was reported as the Committee has laid down (Rule 3.2a(5))."""


_SIDE = give(said("first or second"))
_AGAINST = give(said("the identifier of a player of the other side"))
WITH_WINNER = frozenset({HoleHow.WON, HoleHow.CONCEDED, HoleHow.PENALTY})


@dataclass(frozen=True)
class MatchHole:
    """A hole of a match; the entry names a player of the first side, and the round.

    Attributes:
        against: a player of the second side.
        place: which hole of the match it is, from 1 in the order of play.
        how: how it ended.
        winner: who won it, where it was won, conceded by the other side or lost by its penalty.
        scores: where it was played out, the gross score of each ball, those of the first side first.
    """

    __pydantic_config__: ClassVar = STRICT

    against: str = field(metadata=_AGAINST)
    place: int = field(metadata=give(said("a number from 1")))
    how: HoleHow = field(metadata=give(said("one of {known}", known=", ".join(one.value for one in HoleHow))))
    winner: Side | None = field(default=None, metadata=_SIDE)
    scores: tuple[int | Literal["-"], ...] = field(
        default=(), metadata=give(said('a list with a number of strokes or "-" for each ball'))
    )


@dataclass(frozen=True)
class MatchEnded:
    """How a match ended, or that its result is final; the entry names a player of the first side, and the round.

    Attributes:
        against: a player of the second side.
        how: how.
        side: who conceded, or is disqualified.
        citation: the Rule a disqualification rests on.
    """

    __pydantic_config__: ClassVar = STRICT

    against: str = field(metadata=_AGAINST)
    how: EndHow = field(metadata=give(said("one of {known}", known=", ".join(one.value for one in EndHow))))
    side: Side | None = field(default=None, metadata=_SIDE)
    citation: str = field(default="", metadata=give(said("words in quotation marks")))


def _hole(found: MatchHole) -> Iterator[str]:
    if not is_ident(found.against):
        yield said("match_hole: against is no UUID.")
    if found.place < 1:
        yield said("match_hole: place is {place}; give a number from 1.", place=found.place)
    if (found.winner is None) == (found.how in WITH_WINNER):
        yield said(
            "match_hole: give a winner where a hole was won, conceded or lost by a penalty, and only there."
        )
    if bool(found.scores) != (found.how is HoleHow.SCORES) or len(found.scores) % 2:
        yield said(
            "match_hole: give as many scores for each side where the hole was played out, and only there."
        )
    if not all(map(is_score, found.scores)):
        yield said("match_hole: a score is none; give 1 to {most} strokes, or '-' for none.", most=LONGEST)


def _ended(found: MatchEnded) -> Iterator[str]:
    if not is_ident(found.against):
        yield said("match_ended: against is no UUID.")
    if (found.side is None) != (found.how is EndHow.FINAL):
        yield said("match_ended: say which side conceded or is disqualified, and only then.")
    if found.how is EndHow.DISQUALIFIED and not found.citation.strip():
        yield said("match_ended: say under which Rule the side is disqualified, such as 1.2b.")


NEEDS = ("player", "round")
KINDS = (
    Kind("match_hole", MatchHole, needs=NEEDS, parts=("note",), faults=_hole),
    Kind("match_ended", MatchEnded, needs=NEEDS, parts=("note", "reason"), faults=_ended),
)
