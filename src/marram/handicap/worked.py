"""A number that tells how it came about, step by step.

The steps carry keys and exact values; :mod:`marram.words.handicap` puts them into sentences.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

Value = Fraction | int | str


@dataclass(frozen=True, slots=True)
class Step:
    """One step of a calculation.

    Attributes:
        key: what was done; the text ``handicap.step.KEY`` of the catalogue says it.
        values: what went into it, by the names of the places of that text.
        result: what came of it.
        citation: the Rule of Handicapping it follows.
    """

    key: str
    values: Mapping[str, Value]
    result: Fraction
    citation: str


def step(key: str, citation: str, result: Fraction | int, **values: Value) -> Step:
    """Return a step with its values."""
    return Step(key, MappingProxyType(values), Fraction(result), citation)


@dataclass(frozen=True, slots=True)
class Worked:
    """A number and the steps that led to it, in their order; the last step's result is the number."""

    value: Fraction
    steps: tuple[Step, ...]

    @property
    def whole(self) -> int:
        """The number as a whole one; only of one that was rounded to a whole number."""
        assert self.value.denominator == 1, self.value
        return self.value.numerator


def worked(*steps: Step) -> Worked:
    """Return the number that the last of some steps ends in."""
    return Worked(steps[-1].result, steps)
