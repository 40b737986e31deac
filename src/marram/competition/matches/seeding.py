"""Who meets whom in the first round of a bracket: by numbers, so that the highest stay apart for as long as can be.

Committee Procedures 5F (2023, read in the text of The R&A): the two highest seeded are on opposite sides of the draw, and so on
down the line. That the list from the top begins 1, 64, 32 in a draw of 64 is read in the Italian guide to running a
competition of 2016 (regolegolf.com, "Come Gestire Una Gara", page 99), which orders the players' cards by the general
numerical draw. The whole order is that of knockouts in general, as the On-Line Encyclopedia of Integer Sequences publishes
it (A208569); that the table which 5F refers to is the same beyond what is read of it, is from memory. That byes go to the
highest is common practice; how many there are is read in the German Golf Association's handbook of 2012 (4.1.12.1).
"""

from collections.abc import Sequence

from marram.errors import InputError, shown
from marram.said import said


def numerical_draw(sides: Sequence[str]) -> tuple[tuple[str, str | None], ...]:
    """Return the meetings of the first round, from the top; ``None`` is a bye, which the highest numbers get.

    Args:
        sides: by their number in the draw, the highest seeded first; two at least.

    Raises:
        InputError: fewer than two, or one twice; every fault is listed.
    """
    faults = [
        said("{side} is in the draw twice. Keep one.", side=shown(side))
        for side in sorted({side for side in sides if sides.count(side) > 1})
    ]
    if len(sides) < 2:
        faults.append(said("A bracket has two sides at least."))
    if faults:
        raise InputError(*faults)
    numbers = [1, 2]
    while len(numbers) < len(sides):
        meets = 2 * len(numbers) + 1
        numbers = [one for number in numbers for one in (number, meets - number)]
    placed = [sides[number - 1] if number <= len(sides) else None for number in numbers]
    pairs = []
    for first, second in zip(placed[::2], placed[1::2], strict=True):
        assert first is not None  # the higher number of each meeting is in the upper half of the numbers
        pairs.append((first, second))
    return tuple(pairs)
