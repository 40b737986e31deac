"""Rules 5.2, 5.7 to 5.9: a scoring record posted score by score, with Low Handicap Index and exceptional scores."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from fractions import Fraction
from itertools import pairwise

from marram.errors import BadHandicap
from marram.handicap.arithmetic import to_tenth
from marram.handicap.index import FULL_RECORD, LEAST_RECORD, index_from
from marram.handicap.worked import Step, Worked, step
from marram.said import said

EXCEPTIONAL = ((Fraction(10), -2), (Fraction(7), -1))
"""How far below the index an unrounded differential lies at least, and what that takes off (Rule 5.9)."""
A_YEAR = timedelta(days=365)
"""The time that a Low Handicap Index is looked for in (Rule 5.7)."""


@dataclass(frozen=True, slots=True)
class Posted:
    """A score of a record.

    Attributes:
        day: on which it was played.
        unrounded: its 18-hole Score Differential before rounding; an exceptional score is measured with it.
        committee: what a Committee takes off or adds (Rule 7.1), in tenths of a stroke at finest.
    """

    day: date
    unrounded: Fraction
    committee: Fraction = Fraction(0)

    @property
    def differential(self) -> Fraction:
        """The Score Differential, to a tenth."""
        return to_tenth(self.unrounded)


@dataclass(frozen=True, slots=True)
class Revision:
    """The record after one score.

    Attributes:
        day: of that score.
        index: the Handicap Index from then on; ``None`` while the record is too short.
        low: the Low Handicap Index it was capped by; ``None`` where there was none.
        reduction: what the score took off the latest 20 differentials as an exceptional one (0, -1 or -2).
        reductions: what all exceptional scores together have taken off each differential of the record, in its order.
        steps: how the reduction came about; the index has steps of its own.
    """

    day: date
    index: Worked | None
    low: Fraction | None
    reduction: int
    reductions: tuple[int, ...]
    steps: tuple[Step, ...] = ()


def revise(record: Sequence[Posted]) -> tuple[Revision, ...]:
    """Return the record after each of its scores, in the order they were posted.

    The index in force when a round was played is the one after the score before. The Low Handicap Index that caps a new
    index is the lowest of the 365 days up to the day of the score before the new one (5.7/1). Only an index worked out
    of 20 differentials counts as low (from memory: the text read says that a Low Handicap Index needs 20 scores, not
    whether an earlier index may be it).

    Raises:
        BadHandicap: the scores are not in the order of their days.
    """
    wrong = [number for number, (one, two) in enumerate(pairwise(record), start=2) if two.day < one.day]
    if wrong:
        raise BadHandicap(
            *(
                said(
                    "Score {number} was played before the one in front of it. Give the scores in order of play.",
                    number=one,
                )
                for one in wrong
            )
        )
    found: list[Revision] = []
    lows: list[tuple[date, Fraction]] = []
    taken: list[int] = []
    for count, score in enumerate(record, start=1):
        before = found[-1].index if found else None
        taken.append(0)
        reduction, steps = _exceptional(score, before)
        if reduction:
            for place in range(max(0, count - FULL_RECORD), count):
                taken[place] += reduction
        low = _low(lows, record[count - 2].day) if count > 1 else None
        index = None
        if count >= LEAST_RECORD:
            values = [
                one.differential + one.committee + less
                for one, less in zip(record[:count], taken, strict=True)
            ]
            index = index_from(values, low)
            if count >= FULL_RECORD:
                lows.append((score.day, index.value))
        found.append(Revision(score.day, index, low, reduction, tuple(taken), steps))
    return tuple(found)


def with_committee(record: Sequence[Posted], change: Fraction) -> tuple[Posted, ...]:
    """Return a record whose latest 20 differentials a Committee has changed by the same amount (Rule 7.1a)."""
    kept = max(0, len(record) - FULL_RECORD)
    return (*record[:kept], *(replace(one, committee=one.committee + change) for one in record[kept:]))


def low_index(revisions: Sequence[Revision]) -> Fraction | None:
    """Return the Low Handicap Index after some revisions: the lowest of the 365 days up to the last score (Rule 5.7)."""
    lows = [
        (one.day, one.index.value)
        for count, one in enumerate(revisions, start=1)
        if one.index is not None and count >= FULL_RECORD
    ]
    return _low(lows, revisions[-1].day) if revisions else None


def _low(lows: Sequence[tuple[date, Fraction]], day: date) -> Fraction | None:
    return min((value for since, value in lows if day - A_YEAR <= since <= day), default=None)


def _exceptional(score: Posted, before: Worked | None) -> tuple[int, tuple[Step, ...]]:
    if before is None:
        return 0, ()
    below = before.value - score.unrounded
    for least, reduction in EXCEPTIONAL:
        if below >= least:
            told = step(
                "exceptional", "5.9", reduction, index=before.value, differential=score.unrounded, below=below
            )
            return reduction, (told,)
    return 0, ()
