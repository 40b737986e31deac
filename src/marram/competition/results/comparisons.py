"""How two tied cards are compared: the last round, its last nine, six, three holes and hole, then those of its first nine.

By Committee Procedures 5A(6). Holes are those of the numbers on the card: for starts from several tees "the last nine
holes" are those that end the card, not those a group played last. For rounds that are not of 18 holes the text only says to
adjust the numbers: here each of nine, six, three and one is compared that is less than the round, as junior competitions of
nine holes in Scotland have it: six, three, the last hole (checked against what they print in
tests/competition/test_published_ties.py).
"""

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from functools import lru_cache

from marram.competition.conditions.choices import CountbackStrokes
from marram.competition.results.scoring import Scoring, part_of_handicap, rounded_half_up
from marram.competition.results.side_score import RoundScore, SideScore

LAST = (9, 6, 3, 1)


class Compared(Enum):
    """What two sides are compared by."""

    TOTAL = "total"
    AGAINST_LEVEL = "against_level"
    LAST_TWO_ROUNDS = "last_two_rounds"
    LAST_ROUND = "last_round"
    LAST_HOLES = "last_holes"
    FIRST_NINE = "first_nine"
    HANDICAP = "handicap"
    PLAY_OFF = "play_off"
    LOT = "lot"


@dataclass(frozen=True, slots=True)
class Comparison:
    """One comparison of tied cards.

    Attributes:
        by: what is compared.
        first: the place on the card of the first hole compared, from 0.
        end: the place after the last one.
    """

    by: Compared
    first: int = 0
    end: int = 0

    @property
    def holes(self) -> int:
        """How many holes are compared."""
        return self.end - self.first


@lru_cache(maxsize=64)
def countback(holes: int, rounds: int, first_nine: bool = True) -> tuple[Comparison, ...]:
    """Return the comparisons of countback in their order.

    Args:
        holes: how many holes the last round has.
        rounds: how many rounds were played: of several the last one is compared first.
        first_nine: whether the holes before the last nine are compared after those.
    """
    found = [Comparison(Compared.LAST_ROUND, 0, holes)] if rounds > 1 else []
    found += [Comparison(Compared.LAST_HOLES, holes - count, holes) for count in LAST if count < holes]
    before = holes - LAST[0]
    if first_nine and before > 0:
        found += [Comparison(Compared.FIRST_NINE, before - count, before) for count in LAST if count < before]
    return tuple(found)


@lru_cache(maxsize=64)
def hole_by_hole(holes: int) -> tuple[Comparison, ...]:
    """Return the comparisons of single holes of the last round, which has so many, from the last one back."""
    return tuple(Comparison(Compared.LAST_HOLES, at, at + 1) for at in reversed(range(holes)))


def compared(
    scoring: Scoring, strokes: CountbackStrokes, score: SideScore, comparison: Comparison
) -> Fraction | None:
    """Return what a side has in a comparison of its last round; ``None`` where a hole of it is not known.

    Args:
        scoring: how scores become a result.
        strokes: which handicap strokes are taken off part of a round in net stroke play.
        score: the side's.
        comparison: the comparison.
    """
    if not score.rounds:
        return None
    last = score.rounds[-1]
    if comparison.by is Compared.LAST_TWO_ROUNDS:
        two = score.rounds[-2:]
        return Fraction(sum(one.total for one in two)) if all(one.complete for one in two) else None
    if comparison.by is Compared.LAST_ROUND:
        return Fraction(last.total) if last.complete else None
    part = last.values[comparison.first : comparison.end]
    if None in part:
        return None
    value = sum(one for one in part if one is not None)
    if not scoring.net or scoring.strokes_on_holes or (not last.strokes and not last.handicap):
        return Fraction(value)
    on_holes = sum(last.strokes[comparison.first : comparison.end])
    if strokes is CountbackStrokes.BY_STROKE_INDEX:
        return Fraction(value) if last.strokes else None
    return value + on_holes - _off(strokes, last, comparison)


def taken_off(
    scoring: Scoring, strokes: CountbackStrokes, score: SideScore, comparison: Comparison
) -> Fraction | None:
    """Return the part of a handicap that a comparison takes off the strokes of its holes; ``None`` where it takes none."""
    if not scoring.net or scoring.strokes_on_holes or strokes is CountbackStrokes.BY_STROKE_INDEX:
        return None
    if comparison.by not in (Compared.LAST_HOLES, Compared.FIRST_NINE) or not score.rounds[-1].handicap:
        return None
    return _off(strokes, score.rounds[-1], comparison)


def _off(strokes: CountbackStrokes, last: RoundScore, comparison: Comparison) -> Fraction:
    exact = part_of_handicap(last.handicap, comparison.holes, len(last.holes))
    return Fraction(rounded_half_up(exact)) if strokes is CountbackStrokes.ROUNDED_FRACTION else exact
