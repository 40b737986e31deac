"""The score of a side over all its rounds, hole by hole, with what is left to play."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

from marram.competition.results.card import Hole, RoundCard
from marram.competition.results.scoring import Scoring, side_values


@dataclass(frozen=True)
class RoundScore:
    """What a side made of a round.

    Attributes:
        round: 1 for the first.
        holes: its holes in the order of their numbers.
        values: what each counts; ``None`` where it is not known.
        handicap: the Playing Handicap for these holes where it is taken off as a whole; else 0.
        strokes: handicap strokes on each hole, where one ball is played.
        total: the total so far.
        level: what the holes known would count in par, or in the target.
        played: how many holes are known.
    """

    round: int
    holes: tuple[Hole, ...]
    values: tuple[int | None, ...]
    handicap: int
    strokes: tuple[int, ...]
    total: int
    level: int
    played: int

    @property
    def complete(self) -> bool:
        """Whether every hole is known."""
        return self.played == len(self.holes)

    def of_hole(self, number: int) -> int | None:
        """Return what a hole counts."""
        return next(
            (v for hole, v in zip(self.holes, self.values, strict=True) if hole.number == number), None
        )


def round_score(scoring: Scoring, card: RoundCard) -> RoundScore:
    """Return what a card makes of its round.

    In net stroke play the handicap is taken off hole by hole where the strokes of holes are known, and as a whole on a
    complete card where they are not; the total is the same.
    """
    values = side_values(scoring, card)
    known = [one for one in values if one is not None]
    level = sum(scoring.level(hole) for hole, one in zip(card.holes, values, strict=True) if one is not None)
    whole = scoring.net and len(card.rows) == 1 and not card.rows[0].strokes
    off = card.handicap if whole and len(known) == len(values) else 0
    sign = -1 if scoring.lower_wins else 1
    return RoundScore(
        card.round,
        card.holes,
        values,
        card.handicap if scoring.net and len(card.rows) == 1 else 0,
        card.rows[0].strokes if len(card.rows) == 1 else (),
        sum(known) - off + (-card.deducted if sign > 0 else 0),
        level,
        len(known),
    )


@dataclass(frozen=True)
class SideScore:
    """The score of a side.

    Attributes:
        side: who.
        rounds: what it made of each round, in order.
        lower_wins: whether the lowest total wins.
    """

    side: str
    rounds: tuple[RoundScore, ...]
    lower_wins: bool

    @cached_property
    def total(self) -> int:
        """The total of all rounds so far."""
        return sum(one.total for one in self.rounds)

    @cached_property
    def played(self) -> int:
        """How many holes are known."""
        return sum(one.played for one in self.rounds)

    @cached_property
    def against_level(self) -> int:
        """Strokes over par (under: negative), or points or holes over the target, on the holes known."""
        return self.total - sum(one.level for one in self.rounds)

    @cached_property
    def complete_rounds(self) -> int:
        """How many rounds are complete, from the first on."""
        count = 0
        for one in self.rounds:
            if one.round != count + 1 or not one.complete:
                break
            count += 1
        return count

    def rank(self, final: bool) -> int:
        """Return the number by which sides are put in order, the lowest first.

        Args:
            final: whether totals decide; otherwise what stands against par or target on the holes known.
        """
        value = self.total if final else self.against_level
        return value if self.lower_wins else -value

    def after(self, round_: int) -> "SideScore":
        """Return the score over the rounds up to one."""
        return SideScore(self.side, tuple(one for one in self.rounds if one.round <= round_), self.lower_wins)


def side_score(scoring: Scoring, side: str, cards: Iterable[RoundCard]) -> SideScore:
    """Return the score of a side from its cards, in whatever order they come."""
    rounds = sorted((round_score(scoring, card) for card in cards), key=lambda one: one.round)
    return SideScore(side, tuple(rounds), scoring.lower_wins)


def holes_left(score: SideScore, holes: Sequence[int]) -> int:
    """Return how many holes are left to play, of the numbers of holes of each round that the side plays."""
    known = {one.round: one.played for one in score.rounds}
    return sum(max(0, count - known.get(number, 0)) for number, count in enumerate(holes, start=1))
