"""A card as results need it: what each player scored on each hole, with the handicap strokes of the hole."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from typing import Final, Literal

from marram.competition.conditions.choices import Score
from marram.errors import InputError, shown
from marram.said import joined, said

NO_SCORE: Final = "-"
"""What stands where a hole was played without a score: not holed out, picked up, or no score returned."""

HoleScore = int | Literal["-"] | None
"""Strokes on a hole with penalty strokes; :data:`NO_SCORE`; ``None``: not known, as while it is still to be played."""


@dataclass(frozen=True, slots=True)
class Hole:
    """A hole as a card shows it, from the tees that are played.

    Attributes:
        number: its number on the course.
        par: its par.
        stroke_index: its place in the allocation of handicap strokes; ``None``: not known.
    """

    number: int
    par: int
    stroke_index: int | None = None


@dataclass(frozen=True, slots=True)
class Row:
    """The scores of one ball on a card.

    Attributes:
        player: whose; the side's own name where partners share a ball.
        gross: for each hole of the card, in the order of their numbers.
        strokes: handicap strokes received on each hole, negative where they are given back; empty for none.
        pars: the par of each hole from the tees of this ball, where partners play from tees of another par; empty: as the card has it.
    """

    player: str
    gross: tuple[HoleScore, ...]
    strokes: tuple[int, ...] = ()
    pars: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class RoundCard:
    """A side's card of a round.

    Attributes:
        side: who competes: a player, or partners as one.
        round: 1 for the first.
        holes: its holes in the order of their numbers, whatever tee the round began from.
        rows: one for each ball.
        handicap: the Playing Handicap for these holes, in individual play and where partners share a ball.
        deducted: taken off the points or holes of the round, as Rule 21.1c and 21.3c had it until 2022.
    """

    side: str
    round: int
    holes: tuple[Hole, ...]
    rows: tuple[Row, ...]
    handicap: int = 0
    deducted: int = 0

    def checked(self) -> "RoundCard":
        """Return it where results can be made of it.

        Raises:
            InputError: it contradicts itself; every fault is listed.
        """
        faults = [
            joined(
                ": ", said("the card of {side}, round {round}", side=shown(self.side), round=self.round), one
            )
            for one in self._faults()
        ]
        if faults:
            raise InputError(*faults)
        return self

    def _faults(self) -> Iterator[str]:
        numbers = [one.number for one in self.holes]
        if self.round < 1:
            yield said("the round is {round}; give a number from 1.", round=self.round)
        if not self.holes or numbers != sorted(set(numbers)):
            yield said("its holes are not each once in the order of their numbers.")
        if not self.rows:
            yield said("it holds no scores; give a row for each ball.")
        for row in self.rows:
            if row.pars and len(row.pars) != len(self.holes):
                yield said(
                    "{player} has {pars} pars for {holes} holes; give one for each.",
                    player=shown(row.player),
                    pars=len(row.pars),
                    holes=len(self.holes),
                )
            if len(row.gross) != len(self.holes) or (row.strokes and len(row.strokes) != len(self.holes)):
                yield said(
                    "{player} has {scores} scores and {strokes} handicap strokes for {holes} holes; give one for each.",
                    player=shown(row.player),
                    scores=len(row.gross),
                    strokes=len(row.strokes),
                    holes=len(self.holes),
                )
            for number, gross in zip(numbers, row.gross, strict=False):
                if gross is not None and gross != NO_SCORE and gross < 1:
                    yield said(
                        "{player}, hole {hole} is {score}; give strokes from 1, '-' for no score, or nothing.",
                        player=shown(row.player),
                        hole=number,
                        score=shown(gross),
                    )
        if len(self.rows) == 1 and self.rows[0].strokes and sum(self.rows[0].strokes) != self.handicap:
            yield said(
                "the handicap is {handicap}, and the strokes on its holes are {strokes} in all; correct one of them.",
                handicap=self.handicap,
                strokes=sum(self.rows[0].strokes),
            )


class OutKind(Enum):
    """Why a side is without a place."""

    DISQUALIFIED = "disqualified"
    WITHDRAWN = "withdrawn"
    NO_RETURN = "no_return"
    CONCEDED = "conceded"


@dataclass(frozen=True, slots=True)
class Out:
    """A side that is out of the competition.

    Attributes:
        side: who.
        kind: why.
        citation: the provision, where the Rules say so; else empty.
        score: the result it is out of, e.g. only the net one (Rule 3.3b(4)); ``None``: of every one.
        round: in which round; ``None``: not said.
    """

    side: str
    kind: OutKind
    citation: str = ""
    score: Score | None = None
    round: int | None = None
