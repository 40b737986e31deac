"""What candidates' answers say of items and of the paper: difficulty, discrimination, distractors, reliability.

Classical test theory. The discrimination is the point-biserial correlation of an item with the score on all the others (the
corrected item-total correlation); the reliability is Kuder and Richardson's formula 20 (Psychometrika 2, 1937), which for items
that are right or wrong is Cronbach's alpha.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt


@dataclass(frozen=True, slots=True)
class ItemStatistics:
    """What the answers say of one item.

    Attributes:
        difficulty: the share of candidates who were right, 0 to 1: the higher the easier.
        discrimination: the point-biserial correlation with the score on all other items; ``None`` where either
            does not vary.
        chosen: how many chose each answer, by its place; -1 for none.
        distractors: for each wrong answer, by its place, the point-biserial correlation of choosing it with the score
            on all other items; ``None`` where it does not vary.
    """

    difficulty: float
    discrimination: float | None
    chosen: Counter[int]
    distractors: dict[int, float | None]


def marked(answers: Sequence[Sequence[int | None]], right: Sequence[int]) -> list[list[int]]:
    """Return 1 for right and 0 for wrong or none, shaped candidates × items like the answers."""
    return [[int(one == key) for one, key in zip(row, right, strict=True)] for row in answers]


def items(
    answers: Sequence[Sequence[int | None]], right: Sequence[int], choices: Sequence[int]
) -> list[ItemStatistics]:
    """Return what the answers say of each item.

    Args:
        answers: the place chosen, candidates × items; ``None`` for no answer.
        right: the place of the right answer of each item.
        choices: how many answers each item has.
    """
    scores = marked(answers, right)
    totals = [sum(row) for row in scores]
    found = []
    for at, key in enumerate(right):
        rest = [total - row[at] for total, row in zip(totals, scores, strict=True)]
        own = [row[at] for row in scores]
        chosen = [-1 if row[at] is None else int(row[at] or 0) for row in answers]
        wrong = {
            place: correlation([int(one == place) for one in chosen], rest)
            for place in range(choices[at])
            if place != key
        }
        found.append(ItemStatistics(sum(own) / len(own), correlation(own, rest), Counter(chosen), wrong))
    return found


def correlation(one: Sequence[float], other: Sequence[float]) -> float | None:
    """Return Pearson's correlation, which is the point-biserial one where one is 0 or 1; ``None`` where one does not vary."""
    count = len(one)
    mean_one, mean_other = sum(one) / count, sum(other) / count
    spread_one = sum((each - mean_one) ** 2 for each in one)
    spread_other = sum((each - mean_other) ** 2 for each in other)
    if not spread_one or not spread_other:
        return None
    both = sum((a - mean_one) * (b - mean_other) for a, b in zip(one, other, strict=True))
    return both / sqrt(spread_one * spread_other)


def kr20(scores: Sequence[Sequence[int]]) -> float | None:
    """Return the reliability by formula 20 with the variance of the population; ``None`` with one item or equal scores.

    Args:
        scores: 1 or 0, candidates × items.
    """
    count, many = len(scores), len(scores[0])
    totals = [sum(row) for row in scores]
    mean = sum(totals) / count
    variance = sum((one - mean) ** 2 for one in totals) / count
    if many < 2 or not variance:
        return None
    shares = [sum(row[at] for row in scores) / count for at in range(many)]
    return many / (many - 1) * (1 - sum(one * (1 - one) for one in shares) / variance)
