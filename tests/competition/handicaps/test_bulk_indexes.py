"""Very many indexes at once have the digits that exact fractions give."""

from concurrent.futures import Executor, ProcessPoolExecutor, ThreadPoolExecutor
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.competition.handicaps.bulk_indexes import ABOVE_ZERO, _differentials, indexes_in_tenths
from marram.competition.handicaps.spread import indexes_spread
from marram.errors import BadHandicap
from marram.handicap.differential import score_differential
from marram.handicap.index import handicap_index
from marram.handicap.rated_tee import RatedTee

scores = st.tuples(st.integers(60, 160), st.integers(55, 155), st.integers(600, 790))


def exact(record, low=None):
    values = [
        score_differential(score, RatedTee.read(Fraction(rating, 10), slope, 72)).value
        for score, slope, rating in record
    ]
    return handicap_index(values, low_index=low).value * 10


@settings(deadline=None, max_examples=40)
@given(
    st.lists(
        st.tuples(st.lists(scores, min_size=20, max_size=20), st.integers(0, 540)), min_size=1, max_size=4
    )
)
def test_bulk_indexes_are_exact(players) -> None:
    """Each player's index is the one worked out by fractions, with and without caps."""
    record = np.array([one for one, _low in players])
    columns = record[:, :, 0], record[:, :, 1], record[:, :, 2]
    lows = np.array([low for _one, low in players])

    assert list(indexes_in_tenths(*columns)) == [exact(one) for one, _low in players]
    assert list(indexes_in_tenths(*columns, low_indexes=lows)) == [
        exact(one, Fraction(low, 10)) for one, low in players
    ]


def test_every_differential_within_the_bounds_is_exact() -> None:
    """For every Slope Rating and every difference of score and rating that can be: the floor of whole numbers."""
    over = np.arange(-1000, 2501)
    for slope in range(55, 156):
        scores, ratings = (over + 1009) // 10, ((over + 1009) // 10) * 10 - over
        found = _differentials(scores[None], np.full((1, len(over)), slope), ratings[None])[:, 0]
        expected = (226 * over + slope) // (2 * slope)
        assert np.array_equal(found - ABOVE_ZERO, expected), slope


def test_every_fault_is_told() -> None:
    """Floating-point scores, slopes out of bounds, one low index too few: all in one answer."""
    with pytest.raises(BadHandicap) as refused:
        indexes_in_tenths(
            np.full((2, 20), 80.0),  # type: ignore[arg-type]
            np.full((2, 20), 200),
            np.full((2, 20), 720),
            low_indexes=np.array([100]),
        )

    assert len(refused.value.faults) == 3


@pytest.mark.parametrize("kind", [ThreadPoolExecutor, ProcessPoolExecutor])
@pytest.mark.parametrize("players", [0, 1, 7, 50])
def test_indexes_on_all_cores_have_the_digits_of_one(kind: type[Executor], players: int) -> None:
    """Spread over threads and over processes in pieces of seven, with and without caps: every index is the same."""
    draw = np.random.default_rng(players)
    given = tuple(draw.integers(low, high, (players, 20)) for low, high in ((60, 160), (55, 156), (600, 790)))
    lows = draw.integers(0, 400, players)
    with kind(2) as executor:  # type: ignore[call-arg]
        spread = indexes_spread(executor, *given, part=7)
        capped = indexes_spread(executor, *given, low_indexes=lows, part=7)

    assert np.array_equal(spread, indexes_in_tenths(*given))
    assert np.array_equal(capped, indexes_in_tenths(*given, low_indexes=lows))


def test_a_fault_in_one_piece_is_told() -> None:
    """One Slope Rating out of bounds among the last players is refused as it is on one core."""
    given = [np.full((30, 20), value) for value in (80, 120, 720)]
    given[1][29, 19] = 500
    with ThreadPoolExecutor(2) as executor, pytest.raises(BadHandicap, match="Slope Ratings"):
        indexes_spread(executor, *given, part=7)
    with ThreadPoolExecutor(2) as executor, pytest.raises(BadHandicap, match="shape"):
        indexes_spread(executor, given[0], given[1][:7], given[2], part=7)
