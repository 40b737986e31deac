"""Which items are not to be used again, and why; the bounds are rules of thumb of classical test theory."""

from math import sqrt

from marram.said import said
from marram.teach.examinations.statistics import ItemStatistics

FEWEST_CANDIDATES = 20
"""With fewer candidates chance alone moves the figures too far (own choice)."""
TOO_EASY, TOO_HARD = 0.95, 0.20
"""Shares of right answers beyond which an item tells hardly anybody from another: common practice; 0.20 is below guessing."""
LEAST_DISCRIMINATION = 0.0
"""Those who know more must not be wrong more often: the mildest bound there is."""
BEYOND_CHANCE = 1.645
"""Standard errors that a correlation must lie beyond its bound in: by chance alone 5 in 100 do (common practice)."""
BEST_DISTRACTOR = 0.2
"""A wrong answer that those who know more choose: from this correlation on (own choice) the key or the words are in doubt."""


def why_retired(one: ItemStatistics) -> list[str]:
    """Return the reasons to retire an item, none where it is good or where chance alone can have moved the figures so far."""
    found: list[str] = []
    chance = BEYOND_CHANCE / sqrt(max(2, one.chosen.total()) - 1)
    if one.difficulty > TOO_EASY:
        found.append(said("too easy: {share} per cent were right", share=round(100 * one.difficulty)))
    if one.difficulty < TOO_HARD:
        found.append(
            said("harder than guessing: {share} per cent were right", share=round(100 * one.difficulty))
        )
    if one.discrimination is not None and one.discrimination < LEAST_DISCRIMINATION - chance:
        found.append(
            said(
                "those who did better on the rest were wrong more often (discrimination {value})",
                value=f"{one.discrimination:.2f}",
            )
        )
    for place, value in one.distractors.items():
        if value is not None and value > max(BEST_DISTRACTOR, chance):
            found.append(
                said(
                    "answer {letter}, which is wrong, draws those who know more (correlation {value})",
                    letter="ABCDEFGH"[place],
                    value=f"{value:.2f}",
                )
            )
    return found
