"""The known names nearest to one that is not known: what a slip of the pen most likely meant.

One search for incidents, facts, answers, codes of Local Rules, keys of files and tags of maps. The library it
uses is loaded with the first slip, never before.
"""

from collections.abc import Iterable
from functools import lru_cache

ALIKE = 0.6
"""How like a name must be: the part of the letters of both that stand in both in the same order (own choice)."""

LONGEST = 80
"""Letters: a longer word is no misspelt name, and is not looked for; the longest name known has half as many."""


def nearest(word: str, names: Iterable[str], most: int = 3, alike: float = ALIKE) -> list[str]:
    """Return the names that come near a word, the likest first; equally like ones in the order of the alphabet.

    Args:
        word: what was given.
        names: the names known.
        most: how many at most.
        alike: how like, from 0 (nothing in common) to 1 (the same).
    """
    if not 0 < len(word) <= LONGEST:
        return []
    from rapidfuzz import fuzz, process  # noqa: PLC0415 - only needed once something is wrong

    known = tuple(names)
    found = process.extract(
        _bare(word), _bare_forms(known), scorer=fuzz.ratio, score_cutoff=100 * alike, limit=None
    )
    near = sorted((-score, known[place]) for _, score, place in found)
    return [name for _, name in near[:most]]


@lru_cache(maxsize=64)
def _bare_forms(names: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(map(_bare, names))


def _bare(name: str) -> str:
    """Return a name without what hands write differently: capitals, hyphens, spaces."""
    return name.lower().replace("-", "_").replace(" ", "_")
