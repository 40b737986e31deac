"""Scoring records made up for tests: a score a week."""

from collections.abc import Sequence
from datetime import date, timedelta
from fractions import Fraction

from marram.handicap.scoring_record import Posted


def day(number: int) -> date:
    return date(2024, 4, 1) + timedelta(days=number * 7)


def record(differentials: Sequence[int | Fraction]) -> list[Posted]:
    return [Posted(day(number), Fraction(one)) for number, one in enumerate(differentials)]
