"""Strokes on holes and differences of a Four-Ball match as clubs and associations print them."""

import pytest

from marram.handicap.strokes import strokes_by_hole

INDEXES = [5, 11, 13, 17, 1, 9, 7, 15, 3, 10, 16, 4, 14, 18, 2, 8, 6, 12]
PRINTED = {
    7: "100010101001001010",
    14: "111011101101101111",
    18: "111111111111111111",
    28: "211122212212112221",
    38: "222232222222223222",
    46: "322233323323223332",
}
"""By Playing Handicap (Delta Senior Men's Golf Club, "2 or 4 Person Best Ball", deltaseniormensgolf.com). For 28 the table
has the second stroke on hole 2 in place of hole 6; the sentence below it names holes 1, 5, 6, 7, 9, 10, 12, 15, 16 and 17, as here."""


@pytest.mark.parametrize("handicap", PRINTED)
def test_strokes_of_each_hole_are_as_a_club_prints_them(handicap: int) -> None:
    """One round of 18, twice and three times round for more than 18 and 36 strokes."""
    assert "".join(map(str, strokes_by_hole(handicap, INDEXES))) == PRINTED[handicap]


@pytest.mark.parametrize(
    ("four", "strokes"),
    [
        ((5, 10, 15, 20), (0, 5, 10, 15)),  # Golf Canada, handicap manual, section 9-4, Four-Ball match play
        (
            (4, 5, 10, 15),
            (0, 1, 6, 11),
        ),  # D. Knuth in a magazine of October 2011 (popeofslope.com), four-ball match
    ],
)
def test_the_lowest_of_four_receives_none_and_the_others_the_difference(
    four: tuple[int, ...], strokes: tuple[int, ...]
) -> None:
    """At full handicap, as both examples have it; the holes are those of stroke index up to the difference."""
    received = [strokes_by_hole(one - min(four), INDEXES) for one in four]
    assert tuple(map(sum, received)) == strokes
    assert all(
        (strokes_there > 0) == (index <= count)
        for some, count in zip(received, strokes, strict=True)
        for strokes_there, index in zip(some, INDEXES, strict=True)
    )
