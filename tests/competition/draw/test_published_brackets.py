"""The numbers of a bracket against what others have published.

The order: The On-Line Encyclopedia of Integer Sequences, A208569 (ranks in the brackets of a knockout so that nobody of the
first 2^p meets another of them before the p-th round from the last, and the highest meet the lowest that this allows). It
speaks of knockouts in general; that golf's general numerical draw is the same is shown by what is read of Committee
Procedures 5F and of the Italian guide, and else from memory (see :mod:`marram.competition.matches.seeding`).

How many byes: the German Golf Association's handbook of play and competitions of 2012, section 4.1.12.1, page 89 (byes go
into the first round alone, and fill the field up to the next power of two). It lays them at the top and the bottom of a
list drawn by lot; that of a seeded list the highest have them is common practice.
"""

import pytest

from marram.competition.matches.bracket import moved_on
from marram.competition.matches.seeding import numerical_draw

A208569 = {
    2: "1 2",
    4: "1 4 2 3",
    8: "1 8 4 5 2 7 3 6",
    16: "1 16 8 9 4 13 5 12 2 15 7 10 3 14 6 11",
    32: "1 32 16 17 8 25 9 24 4 29 13 20 5 28 12 21 2 31 15 18 7 26 10 23 3 30 14 19 6 27 11 22",
    64: "1 64 32 33 16 49 17 48 8 57 25 40 9 56 24 41 4 61 29 36 13 52 20 45 5 60 28 37 12 53 21 44 2 63 31 34 15",
}
"""Its rows; of the last as many terms as the entry lists."""


@pytest.mark.parametrize("count", A208569)
def test_the_order_is_the_published_one(count: int) -> None:
    """A208569, rows of 2 to 64: the sides from the top of the bracket down."""
    order = [side for pair in numerical_draw([str(one) for one in range(1, count + 1)]) for side in pair]
    published = A208569[count].split()
    assert order[: len(published)] == published


@pytest.mark.parametrize(("count", "byes", "out"), [(17, 15, 1), (21, 11, 5)])
def test_the_byes_are_as_many_as_published(count: int, byes: int, out: int) -> None:
    """The handbook's examples: of 17 fifteen have a bye and one is out, of 21 eleven and five; then sixteen play on."""
    sides = [f"{one:02}" for one in range(1, count + 1)]
    pairs = numerical_draw(sides)
    assert sum(second is None for _, second in pairs) == byes
    assert sum(second is not None for _, second in pairs) == out
    first, second = moved_on(pairs, {})[:2]
    assert (len(first), len(second)) == (16, 8)
    waiting = {side for one in second for side in (one.first, one.second) if side}
    assert waiting == set(sides[:byes])  # the highest: common practice
