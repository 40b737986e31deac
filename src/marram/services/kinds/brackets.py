"""Who meets whom over several rounds of matches: a bracket or a round robin drawn, and a result entered without its holes."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import Enum
from typing import ClassVar

from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import WORDS, Kind, is_ident
from marram.services.kinds.matches import Side


class Plan(Enum):
    """How it goes on: the winner of a match moves on, or everybody meets everybody once."""

    BRACKET = "bracket"
    ROUND_ROBIN = "round_robin"


class ResultHow(Enum):
    """How a match ended whose holes are not entered."""

    PLAYED = "played"
    WALKOVER = "walkover"
    CONCEDED = "conceded"
    DISQUALIFIED = "disqualified"


_COUNT = said("a whole number")
_SIDES = said("a list of sides, each a list of identifiers of people")


@dataclass(frozen=True)
class BracketDrawn:
    """What the entry of a bracket or a round robin holds.

    Attributes:
        plan: which it is.
        seed: of the lots, as it is published.
        seeded: how many of the first sides were seeded.
        sides: the players of each side, in the order of the numbers in the draw.
    """

    __pydantic_config__: ClassVar = STRICT

    plan: Plan = field(metadata=give(said("one of {known}", known=", ".join(one.value for one in Plan))))
    seed: str = field(metadata=give(WORDS))
    seeded: int = field(metadata=give(_COUNT))
    sides: tuple[tuple[str, ...], ...] = field(metadata=give(_SIDES))


@dataclass(frozen=True)
class BracketResult:
    """The result of a match whose holes are not entered, or that was not played.

    Attributes:
        stage: the round of the bracket or round robin, from 1.
        meeting: the match of it, from 1.
        sides: the first-named player of each side.
        how: how it ended.
        winner: who won; ``None``: tied.
        up: where it was played, by how many holes.
        left: how many holes were left then.
        holes: after how many holes, where extra ones were played.
        citation: the Rule a disqualification rests on.
    """

    __pydantic_config__: ClassVar = STRICT

    stage: int = field(metadata=give(said("a number from 1")))
    meeting: int = field(metadata=give(said("a number from 1")))
    sides: tuple[str, str] = field(metadata=give(said("two identifiers of people")))
    how: ResultHow = field(
        metadata=give(said("one of {known}", known=", ".join(one.value for one in ResultHow)))
    )
    winner: Side | None = field(default=None, metadata=give(said("first or second")))
    up: int = field(default=0, metadata=give(_COUNT))
    left: int = field(default=0, metadata=give(_COUNT))
    holes: int = field(default=0, metadata=give(_COUNT))
    citation: str = field(default="", metadata=give(WORDS))


def _drawn(found: BracketDrawn) -> Iterator[str]:
    people = [who for side in found.sides for who in side]
    if wrong := [one for one in people if not is_ident(one)]:
        yield said("bracket_drawn: {who} is no UUID.", who=repr(wrong[0]))
    if len(set(people)) != len(people):
        yield said("bracket_drawn: somebody stands in it twice; give each once.")
    if len(found.sides) < 2 or not all(found.sides):
        yield said("bracket_drawn: give two sides at least, each with its players.")
    if not 0 <= found.seeded <= len(found.sides):
        yield said("bracket_drawn: seeded is {number}; give how many of the sides are.", number=found.seeded)


def _result(found: BracketResult) -> Iterator[str]:
    if not all(map(is_ident, found.sides)):
        yield said("bracket_result: a side is no UUID.")
    if min(found.stage, found.meeting) < 1:
        yield said("bracket_result: stage and meeting count from 1.")
    played = found.how is ResultHow.PLAYED
    if found.winner is None and not played:
        yield said("bracket_result: say who won; only a match that was played can be tied.")
    if (found.up or found.left or found.holes) and not played:
        yield said("bracket_result: give holes only of a match that was played.")
    if played and (found.winner is not None) != (found.up > 0):
        yield said("bracket_result: give by how many holes it was won, and none of a tie.")
    if min(found.up, found.left, found.holes) < 0 or (found.left and found.left >= found.up):
        yield said(
            "bracket_result: {up} up with {left} left does not end a match; more up than left does.",
            up=found.up,
            left=found.left,
        )
    if found.left and found.holes:
        yield said("bracket_result: a match with holes left had no extra holes; give one of them.")
    if (found.how is ResultHow.DISQUALIFIED) != bool(found.citation.strip()):
        yield said("bracket_result: give the Rule of a disqualification, such as 1.2b, and only there.")


KINDS = (
    Kind("bracket_drawn", BracketDrawn, parts=(), faults=_drawn),
    Kind("bracket_result", BracketResult, parts=("note",), faults=_result),
)
