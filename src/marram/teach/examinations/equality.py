"""How equal two forms are: candidates simulated by the one-parameter logistic model (Rasch 1960) with guessing.

The difficulty of an item is that of its level (own values); what is compared is the score of the same candidate on both forms.
Until candidates have answered, it shows that forms are equal as far as the graph's grade tells, and no more.
"""

from dataclasses import dataclass
from math import exp, sqrt
from random import Random
from statistics import fmean

from marram.teach.examinations.paper import Form
from marram.teach.examinations.statistics import correlation, kr20

HARDNESS = {1: -1.0, 2: 0.0, 3: 1.0}
"""The difficulty of each level in logits (own choice: a medium item is even odds for a candidate of ability 0)."""
SPREAD = 0.5
"""How far an item may be from the difficulty of its level, as a standard deviation in logits (own choice)."""
DRAWS = 25
"""How often the difficulties of the items are drawn: one draw alone makes one form harder by chance (own choice)."""


@dataclass(frozen=True, slots=True)
class Equality:
    """What a simulation of two forms says.

    Attributes:
        means: the mean score of each form, in items.
        deviations: the standard deviation of each form, in items.
        difference: the mean of the differences between the two scores of a candidate, in items, over all draws.
        error: its standard error, by how far the draws differ.
        correlation: of the two scores (parallel-forms reliability).
        reliability: KR-20 of each form.
    """

    means: tuple[float, float]
    deviations: tuple[float, float]
    difference: float
    error: float
    correlation: float
    reliability: tuple[float, float]


def equality(one: Form, other: Form, candidates: int = 2000, seed: int = 1) -> Equality:
    """Return how equal two forms are over simulated candidates, abilities standard normal; the same for the same seed.

    Args:
        one: a form.
        other: the other.
        candidates: how many there are over all draws, :data:`DRAWS` at least.
        seed: the seed.
    """
    lot = Random(seed)  # noqa: S311 - a seed, no secret
    found = [_drawn(one, other, max(2, candidates // DRAWS), lot) for _ in range(DRAWS)]
    differences = [each.difference for each in found]
    return Equality(
        (fmean(each.means[0] for each in found), fmean(each.means[1] for each in found)),
        (fmean(each.deviations[0] for each in found), fmean(each.deviations[1] for each in found)),
        fmean(differences),
        _deviation(differences) / sqrt(DRAWS),
        fmean(each.correlation for each in found),
        (fmean(each.reliability[0] for each in found), fmean(each.reliability[1] for each in found)),
    )


def _drawn(one: Form, other: Form, candidates: int, lot: Random) -> Equality:
    """Return what one draw of the items' difficulties says; its error is that of its candidates."""
    abilities = [lot.gauss(0, 1) for _ in range(candidates)]
    scores = [_scores(form, abilities, lot) for form in (one, other)]
    first, second = ([float(sum(row)) for row in each] for each in scores)
    differences = [a - b for a, b in zip(first, second, strict=True)]
    difference = sum(differences) / candidates
    return Equality(
        (sum(first) / candidates, sum(second) / candidates),
        (_deviation(first), _deviation(second)),
        difference,
        _deviation(differences) / sqrt(candidates),
        correlation(first, second) or 0.0,
        (kr20(scores[0]) or 0.0, kr20(scores[1]) or 0.0),
    )


def _scores(form: Form, abilities: list[float], lot: Random) -> list[list[int]]:
    hardness = [HARDNESS[item.level] + lot.gauss(0, SPREAD) for item in form.items]
    guesses = [1 / len(item.question.answers) for item in form.items]
    return [
        [
            int(lot.random() < guess + (1 - guess) / (1 + exp(hard - able)))
            for hard, guess in zip(hardness, guesses, strict=True)
        ]
        for able in abilities
    ]


def _deviation(values: list[float]) -> float:
    mean = sum(values) / len(values)
    return sqrt(sum((one - mean) ** 2 for one in values) / (len(values) - 1))
