"""What a hole counts in each form of play (Rules 3.3, 21.1 to 21.3, 23.2)."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction

from marram.competition.conditions.choices import MaximumBy, Score, Target
from marram.competition.conditions.event_file import Maximum
from marram.competition.results.card import NO_SCORE, Hole, HoleScore, RoundCard, Row
from marram.errors import BadAnswer
from marram.rules.facts.conditions import FormOfPlay
from marram.said import said

LOWER_WINS = frozenset({FormOfPlay.STROKE_PLAY, FormOfPlay.MAXIMUM_SCORE})
"""Forms in which the lowest total wins; in the others the highest does."""


@dataclass(frozen=True, slots=True)
class Scoring:
    """How scores become a result.

    Attributes:
        form: the form of play; match play has none of these results.
        score: gross or net.
        target: the fixed target score in Stableford and Par/Bogey.
        maximum: the maximum for a hole in Maximum Score.
        counting: how many scores of a side count on a hole, where partners play a ball each.

    Raises:
        BadAnswer: the form is match play, or Maximum Score without a maximum.
    """

    form: FormOfPlay = FormOfPlay.STROKE_PLAY
    score: Score = Score.GROSS
    target: Target = Target.PAR
    maximum: Maximum | None = None
    counting: int = 1

    def __post_init__(self) -> None:
        if self.form is FormOfPlay.MATCH_PLAY:
            raise BadAnswer(
                said("form: a match has a state, not a total. Ask for the match, or give another form.")
            )
        if self.form is FormOfPlay.MAXIMUM_SCORE and self.maximum is None:
            raise BadAnswer(said("maximum: Maximum Score has a maximum for each hole (Rule 21.2a). Give it."))

    @property
    def lower_wins(self) -> bool:
        """Whether the lowest total wins."""
        return self.form in LOWER_WINS

    @property
    def net(self) -> bool:
        """Whether handicap strokes count."""
        return self.score is Score.NET

    @property
    def counts_against_target(self) -> bool:
        """Whether the total itself is what stands against the target, so that it is told once (Rule 21.3)."""
        return self.form is FormOfPlay.PAR_BOGEY

    @property
    def strokes_on_holes(self) -> bool:
        """Whether handicap strokes fall on holes, so that part of a round is compared as its holes stand.

        Otherwise a fraction of the handicap is taken off it (Committee Procedures 5A(6)).
        """
        on_hole = self.maximum is not None and self.maximum.by is MaximumBy.NET_OVER_PAR
        return not self.lower_wins or on_hole

    def level(self, hole: Hole) -> int:
        """Return what a hole counts where it is played in par, or in the target."""
        if self.lower_wins:
            return hole.par * self.counting
        return 2 * self.counting if self.form is FormOfPlay.STABLEFORD else 0


def maximum_for(maximum: Maximum, par: int, strokes: int) -> int:
    """Return the maximum for a hole (Rule 21.2a): two times par, a number of strokes, net double bogey."""
    if maximum.by is MaximumBy.STROKES:
        return maximum.number
    if maximum.by is MaximumBy.TIMES_PAR:
        return maximum.number * par
    return par + maximum.number + strokes


def points(target: int, net: int) -> int:
    """Return the points of a hole in Stableford: two in the target, one more for each stroke less (Rule 21.1b)."""
    return max(0, 2 + target - net)


def won_or_lost(target: int, net: int) -> int:
    """Return 1 for a hole won against the target, 0 for one tied, -1 for one lost (Rule 21.3b)."""
    return (net < target) - (net > target)


def hole_value(scoring: Scoring, hole: Hole, gross: HoleScore, strokes: int) -> int | None:
    """Return what one ball's score on a hole counts; ``None`` where it is not known, or there is none in stroke play.

    Args:
        scoring: how scores become a result.
        hole: the hole.
        gross: the score.
        strokes: handicap strokes received there.
    """
    if gross is None:
        return None
    taken = strokes if scoring.net else 0
    without = gross == NO_SCORE
    if scoring.form is FormOfPlay.STROKE_PLAY:
        return None if without else _number(gross) - taken
    if scoring.maximum is not None and scoring.form is FormOfPlay.MAXIMUM_SCORE:
        most = maximum_for(scoring.maximum, hole.par, strokes)
        return (most if without else min(_number(gross), most)) - taken
    target = hole.par + (scoring.target is Target.BOGEY)
    if scoring.form is FormOfPlay.STABLEFORD:
        return 0 if without else points(target, _number(gross) - taken)
    return -1 if without else won_or_lost(target, _number(gross) - taken)


def _number(gross: HoleScore) -> int:
    assert isinstance(gross, int)
    return gross


def side_values(scoring: Scoring, card: RoundCard) -> tuple[int | None, ...]:
    """Return what each hole counts for the side: its one score, or the sum of the best that count (Rule 23.2a).

    ``None`` where a score that counts is still to come, or where in stroke play the side has too few.
    """
    return tuple(_of_side(scoring, card))


def _of_side(scoring: Scoring, card: RoundCard) -> Iterator[int | None]:
    if len(card.rows) == 1 and scoring.counting == 1:
        (row,) = card.rows
        strokes = row.strokes or (0,) * len(card.holes)
        for hole, gross, received in zip(card.holes, row.gross, strokes, strict=True):
            yield hole_value(scoring, hole, gross, received)
        return
    for place in range(len(card.holes)):
        best = _best(scoring, card, place)
        yield sum(value for value, _ in best) if len(best) >= scoring.counting else None


def _best(scoring: Scoring, card: RoundCard, place: int) -> list[tuple[int, int]]:
    """Return the best values of a hole, as many as count, each with the number of its row; of equal ones the first rows."""
    values = [
        (
            hole_value(
                scoring, _hole(card, row, place), row.gross[place], row.strokes[place] if row.strokes else 0
            ),
            number,
        )
        for number, row in enumerate(card.rows)
    ]
    known = [(value, number) for value, number in values if value is not None]
    sign = 1 if scoring.lower_wins else -1
    return sorted(known, key=lambda one: (sign * one[0], one[1]))[: scoring.counting]


def _hole(card: RoundCard, row: Row, place: int) -> Hole:
    """Return a hole as the ball of a row plays it: with the par of its tees."""
    hole = card.holes[place]
    return replace(hole, par=row.pars[place]) if row.pars else hole


def rows_counting(scoring: Scoring, card: RoundCard) -> tuple[frozenset[int], ...]:
    """Return for each hole the numbers of the rows, from 0, whose scores count for the side (Rule 23.2a)."""
    return tuple(
        frozenset(number for _, number in _best(scoring, card, place)) for place in range(len(card.holes))
    )


def part_of_handicap(handicap: int, holes: int, of: int) -> Fraction:
    """Return the part of a handicap that belongs to some holes of a round: one half for nine of 18, and so on."""
    return Fraction(handicap * holes, of)


def rounded_half_up(value: Fraction) -> int:
    """Return a whole number: half a stroke and more is one, towards plus infinity (Rules of Handicapping 6.1)."""
    return (2 * value.numerator + value.denominator) // (2 * value.denominator)


__all__ = [
    "LOWER_WINS",
    "Scoring",
    "hole_value",
    "maximum_for",
    "part_of_handicap",
    "points",
    "rounded_half_up",
    "rows_counting",
    "side_values",
    "won_or_lost",
]
