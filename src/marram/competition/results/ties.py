"""What puts tied sides in order, by the methods of the conditions."""

from collections.abc import Sequence
from fractions import Fraction

from marram.competition.conditions.choices import TieMethod
from marram.competition.results.comparisons import Compared, Comparison, compared, countback, hole_by_hole
from marram.competition.results.side_score import SideScore
from marram.competition.results.terms import Terms

TWO = 2
"""Rounds: of no more the last two are all there are."""

TieKey = tuple[int, ...]
"""Lower comes first; equal keys share the place. In parts of a stroke of which a round has as many as holes."""


def comparisons(score: SideScore, methods: Sequence[TieMethod]) -> tuple[Comparison, ...]:
    """Return the comparisons that the methods ask for, in their order, up to one that ends the tie."""
    found: list[Comparison] = []
    holes = len(score.rounds[-1].holes) if score.rounds else 0
    for method in methods:
        if method in (TieMethod.COUNTBACK, TieMethod.LAST_HOLES):
            found += countback(holes, len(score.rounds), method is TieMethod.COUNTBACK)
        elif method is TieMethod.LAST_TWO_ROUNDS:
            found += [Comparison(Compared.LAST_TWO_ROUNDS)] if len(score.rounds) > TWO else []
        elif method is TieMethod.HOLE_BY_HOLE:
            found += hole_by_hole(holes)
        elif method is TieMethod.LOWER_HANDICAP:
            found.append(Comparison(Compared.HANDICAP))
        elif method is TieMethod.PLAY_OFF:
            found.append(Comparison(Compared.PLAY_OFF))
        elif method is TieMethod.LOT:
            found.append(Comparison(Compared.LOT))
        else:
            break
    return tuple(found)


def figure(terms: Terms, score: SideScore, comparison: Comparison) -> Fraction | int | None:
    """Return what a side has in a comparison, as it is spoken: strokes, points, a handicap, an order in a play-off."""
    if comparison.by is Compared.HANDICAP:
        return score.rounds[-1].handicap if score.rounds else None
    if comparison.by in (Compared.PLAY_OFF, Compared.LOT):
        method = TieMethod.PLAY_OFF if comparison.by is Compared.PLAY_OFF else TieMethod.LOT
        order = terms.decided.get(method)
        if order is None:
            return None
        return order.index(score.side) + 1 if score.side in order else len(order) + 1
    return compared(terms.scoring, terms.countback_strokes, score, comparison)


def lower_is_better(terms: Terms, comparison: Comparison) -> bool:
    """Return whether the lower figure of a comparison is the better one."""
    return terms.scoring.lower_wins or comparison.by in (Compared.HANDICAP, Compared.PLAY_OFF, Compared.LOT)


def tie_key(terms: Terms, score: SideScore, methods: Sequence[TieMethod]) -> TieKey:
    """Return what puts a side in order among those tied with it; what is not known counts as equal."""
    holes = len(score.rounds[-1].holes) if score.rounds else 1
    key: list[int] = []
    for one in comparisons(score, methods):
        value = figure(terms, score, one)
        parts = (
            0 if value is None else int(value * holes)
        )  # exact: a part of a handicap is so many holes of all
        key.append(parts if lower_is_better(terms, one) else -parts)
    return tuple(key)
