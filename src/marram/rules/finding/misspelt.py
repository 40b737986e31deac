"""What a word that nobody taught was meant for: a slip of the thumb, a fault of dictation.

Everything here is done alike in ``desk/rulings/static/misspelt.js``; both must take the same word.
"""

from collections.abc import Mapping, Sequence

SHORTEST = 5
"""Letters: a shorter stem is taken as it stands."""
LONG = 8
"""Letters from which a stem may have two slips."""


def meant(stem: str, known: Mapping[str, Sequence[tuple[str, int]]]) -> str | None:
    """Return the known stem that an unknown one was meant for, or ``None``.

    Args:
        stem: the stem of a word that is not known.
        known: the known stems by their first letter, each with how rare it is: of equally near ones the commonest is taken.
    """
    if len(stem) < SHORTEST or not stem.isalpha():
        return None
    most = 2 if len(stem) >= LONG else 1
    found: tuple[int, int, str] | None = None
    for other, rarity in known.get(stem[0], ()):
        if abs(len(other) - len(stem)) <= most and len(other) >= SHORTEST - 1:
            slips = distance(stem, other, most)
            if slips <= most and (found is None or (slips, rarity, other) < found):
                found = (slips, rarity, other)
    return found[2] if found else None


def distance(one: str, other: str, most: int) -> int:
    """Return how many letters are missing, added, changed or exchanged with the next; ``most + 1`` where they are more."""
    before: list[int] = []
    last = list(range(len(other) + 1))
    for row, letter in enumerate(one, start=1):
        now = [row]
        for column, beside in enumerate(other, start=1):
            least = min(last[column] + 1, now[-1] + 1, last[column - 1] + (letter != beside))
            if row > 1 and column > 1 and letter == other[column - 2] and beside == one[row - 2]:
                least = min(least, before[column - 2] + 1)
            now.append(least)
        if min(now) > most:
            return most + 1
        before, last = last, now
    return last[-1]
