"""Lengths on paper and in drawings as the place of the reader measures them; a yard is 0.9144 m by definition, of 36 inches."""

import pytest

from marram.words.lengths import bar_words, length_words, near_words, square_feet
from marram.words.place import writing_in, written_as


@pytest.mark.parametrize(
    ("metres", "there"),
    [(2.30, "7 ft 7 in (2.30 m)"), (1.1684, "3 ft 10 in (1.17 m)"), (0.30, "1 ft 0 in (0.30 m)"), (165.7, "181.2 yd (165.7 m)")],
)  # fmt: skip
@pytest.mark.parametrize("region", ["US", "GB", "CA"])
def test_yards_and_feet_come_first_where_courses_are_measured_in_yards(
    region: str, metres: float, there: str
) -> None:
    """46 inches are 1.1684 m: three feet and ten inches."""
    with written_as(writing_in(region)):
        assert length_words(metres) == there


@pytest.mark.parametrize("region", ["", "DE", "AU"])
def test_metres_come_first_elsewhere(region: str) -> None:
    with written_as(writing_in(region)):
        assert length_words(2.30) == "2.30 m (2.52 yd)"
        assert bar_words(50.0) == "50 m"


def test_inches_are_carried_to_feet() -> None:
    """Eleven inches and more than a half are a foot."""
    assert near_words(0.3048 * 1.99) == "2 ft 0 in"


def test_a_bar_is_round_in_yards() -> None:
    with written_as(writing_in("US")):
        assert bar_words(50 * 0.9144) == "50 yd"
    assert square_feet(0.9144**2) == pytest.approx(9)
