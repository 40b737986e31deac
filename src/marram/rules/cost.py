"""What a ruling costs: its penalties, and the strokes of the relief it offers, which a player may or must take."""

from dataclasses import dataclass

from marram.rules.penalty import Penalty, PenaltyKind
from marram.rules.ruling import Action, Ruling

MUST_TAKE_RELIEF = (
    Action.TAKE_RELIEF,
    Action.PLAY_PROVISIONAL,
    Action.DROP,
    Action.PLACE,
    Action.PLAY_FROM_TEEING_AREA,
)
"""After these a relief option is taken, whatever the player would rather do."""

_LEVELS = {
    PenaltyKind.LOSS_OF_HOLE: 100,
    PenaltyKind.DISQUALIFICATION_FOR_HOLE: 200,
    PenaltyKind.DISQUALIFICATION: 1000,
}
"""What stands for penalties without strokes where costs are told least first (own choice: no score is made of it)."""


@dataclass(frozen=True, slots=True)
class Cost:
    """What a ruling comes to.

    Attributes:
        penalties: the penalties.
        relief: penalty strokes of the ways of relief, each number once, least first; empty where none costs anything,
            where the ball may be played as it lies or relief taken for nothing, or may be once a penalty stands.
        must: whether one of these ways is taken in any case.
    """

    penalties: tuple[Penalty, ...]
    relief: tuple[int, ...] = ()
    must: bool = False

    @property
    def weight(self) -> int:
        """Return a number by which costs are told least first: 0 for none at all."""
        levels = sum(max(1, _LEVELS.get(one.kind, one.strokes)) for one in self.penalties)
        return 2 * (levels + (min(self.relief) if self.must else 0)) + bool(self.relief)


def cost_of(ruling: Ruling) -> Cost:
    """Return what a ruling comes to."""
    strokes = tuple(sorted({option.penalty for option in ruling.relief}))
    if ruling.action in MUST_TAKE_RELIEF and any(strokes):
        return Cost(ruling.penalties, strokes, must=True)
    if ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF and not ruling.penalties and 0 not in strokes:
        return Cost((), strokes)
    return Cost(ruling.penalties)


__all__ = ["MUST_TAKE_RELIEF", "Cost", "cost_of"]
