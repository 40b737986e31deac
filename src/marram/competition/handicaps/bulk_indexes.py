"""Handicap Indexes of very many players, each with a full record of 20 scores (Rules 5.1a, 5.2b, 5.3, 5.8).

Everything is counted in tenths of a stroke, in whole numbers. One quotient is taken in single precision, and rounding it half
upwards is still exact: numerator and denominator are whole and below 2**24, so both are held exactly, and the quotient q is
the nearest single-precision number to the true one. By the bounds below it lies between -2,034 and 5,137, so that q + 4096.5
lies above 0 and below 16,384, where neighbouring single-precision numbers lie 1/1,024 apart at most. A true sum that is not
whole lies at least 1/310 from any whole number (twice a Slope Rating in the denominator); the two roundings move it by less
than 1/1,024 together, and a whole one not at all: what is cut off the sum is always its true fraction.

The lowest eight of twenty are selected by a network of minima and maxima over columns of players, with no branch and no
sort: Batcher's odd-even merge sorts eight, eight and four (K. E. Batcher, 1968); the lower half of two sorted runs is
their minima taken crosswise.
"""

from collections.abc import Callable
from typing import Any, NamedTuple, NoReturn

import numpy as np
import numpy.typing as npt

from marram.errors import BadHandicap
from marram.handicap.index import FULL_RECORD
from marram.handicap.rated_tee import LEAST_SLOPE, MOST_SLOPE
from marram.said import said

Whole = npt.NDArray[np.integer[Any]]
Tenths = npt.NDArray[np.int16]

CHUNK = 8192
"""Players at a time: their columns stay in the cache of a core."""
MOST_SCORE, MOST_RATING = 250, 1000
"""Bounds of the proof above: scores up to 250, Course Ratings up to 100.0."""

ABOVE_ZERO = 4096
"""Tenths that are added to differentials while they are counted, so that none is below 0."""


class Bounds(NamedTuple):
    """Between which figures what is given lies, both included; what it is called."""

    what: Callable[[], str]
    least: int
    most: int


BOUNDS = (
    Bounds(lambda: said("Adjusted gross scores"), 1, MOST_SCORE),
    Bounds(lambda: said("Slope Ratings"), LEAST_SLOPE, MOST_SLOPE),
    Bounds(lambda: said("Course Ratings in tenths"), 0, MOST_RATING),
)
"""Of scores, Slope Ratings and Course Ratings, in this order."""

_EIGHT = (
    *((0, 1), (2, 3), (4, 5), (6, 7), (0, 2), (1, 3), (4, 6), (5, 7), (1, 2), (5, 6)),
    *((0, 4), (1, 5), (2, 6), (3, 7), (2, 4), (3, 5), (1, 2), (3, 4), (5, 6)),
)
_HIGHER_HALF = ((0, 4), (1, 5), (2, 6), (3, 7), (4, 6), (5, 7), (4, 5), (6, 7))
"""Of eight that rise and then fall: the higher four to the end, and sorted there."""
_FOUR = ((0, 1), (2, 3), (0, 2), (1, 3), (1, 2))


def indexes_in_tenths(
    scores: Whole, slopes: Whole, ratings: Whole, *, low_indexes: Whole | None = None
) -> Tenths:
    """Return the Handicap Index of each player, in tenths; a plus index is negative.

    Args:
        scores: adjusted gross scores with playing conditions taken off, shape (players, 20).
        slopes: Slope Ratings, the same shape.
        ratings: Course Ratings in tenths, the same shape.
        low_indexes: Low Handicap Indexes in tenths, shape (players,), where caps are to be applied (Rule 5.8).

    Raises:
        BadHandicap: shapes that do not fit, or figures beyond what a score or a rating can be.
    """
    _check_shapes(scores, slopes, ratings, low_indexes)
    players = len(scores)
    found = np.empty(players, np.int16)
    for start in range(0, players, CHUNK):
        part = scores[start : start + CHUNK], slopes[start : start + CHUNK], ratings[start : start + CHUNK]
        if any(_out_of_bounds(of, given) for of, given in zip(BOUNDS, part, strict=True)):
            _refuse(scores, slopes, ratings)
        found[start : start + CHUNK] = _averages(_differentials(*part))
    if low_indexes is not None:
        found = _capped(found, low_indexes)
    return np.minimum(found, np.int16(540))


def _differentials(scores: Whole, slopes: Whole, ratings: Whole) -> Tenths:
    """Return Score Differentials in tenths, half a tenth upwards, each :data:`ABOVE_ZERO` too high, shape (20, players)."""
    over = scores * np.int16(10) - ratings  # within 16 bits by the bounds
    value = over.astype(np.float32)
    value *= np.float32(113)
    value /= slopes.astype(np.float32)
    value += np.float32(ABOVE_ZERO + 0.5)  # above 0, so that cutting the fraction off is the floor
    return np.ascontiguousarray(value.astype(np.int16).T)


def _averages(differentials: Tenths) -> Tenths:
    """Return the average of the lowest eight of each column in tenths, half a tenth upwards, and no longer too high."""
    total = _lowest_eight(differentials).sum(axis=0, dtype=np.int32)
    return np.asarray(((total + 4) >> 3) - ABOVE_ZERO, np.int16)  # (2 × total + 8) ÷ 16, the floor of it


def _lowest_eight(rows: Tenths) -> Tenths:
    """Return the lowest eight of each column of twenty, in no order; the rows are used up."""
    row, spare = list(rows), np.empty_like(rows[0])

    def exchange(low: int, high: int) -> None:
        nonlocal spare
        np.minimum(row[low], row[high], out=spare)
        np.maximum(row[low], row[high], out=row[high])
        row[low], spare = spare, row[low]

    for start, network in ((0, _EIGHT), (8, _EIGHT), (16, _FOUR)):
        for low, high in network:
            exchange(start + low, start + high)
    for low in range(8):  # the lowest eight of sixteen: they rise, then fall
        np.minimum(row[low], row[15 - low], out=row[low])
    for low, high in _HIGHER_HALF:
        exchange(low, high)
    for place in range(4):
        np.minimum(row[4 + place], row[19 - place], out=row[4 + place])
    return np.stack(row[:8])


def _capped(averages: Tenths, low_indexes: Whole) -> Tenths:
    low = low_indexes.astype(np.int32)
    above = averages.astype(np.int32) - low
    soft = low + 30 + ((above - 30 + 1) >> 1)  # half of what is beyond 3.0, half a tenth upwards
    capped = np.where(above > 30, np.minimum(soft, low + 50), averages)
    return np.asarray(capped, np.int16)


def _check_shapes(scores: Whole, slopes: Whole, ratings: Whole, low_indexes: Whole | None) -> None:
    faults = []
    shapes = {scores.shape, slopes.shape, ratings.shape}
    if len(shapes) > 1 or scores.ndim != 2 or scores.shape[1] != FULL_RECORD:
        faults.append(
            said(
                "Scores, Slope Ratings and Course Ratings have the shape (players, 20); these have {shapes}.",
                shapes=str(sorted(shapes)),
            )
        )
    if low_indexes is not None and low_indexes.shape != scores.shape[:1]:
        faults.append(said("There is one Low Handicap Index for each player."))
    whole = all(np.issubdtype(one.dtype, np.integer) for one in (scores, slopes, ratings))
    if faults or not whole:
        _refuse(scores, slopes, ratings, *faults)


def _out_of_bounds(of: Bounds, given: Whole) -> bool:
    return bool(given.size) and not (of.least <= given.min() and given.max() <= of.most)


def _refuse(scores: Whole, slopes: Whole, ratings: Whole, *more: str) -> NoReturn:
    """Refuse what is given, every fault at once.

    Raises:
        BadHandicap: always.
    """
    faults = list(more)
    for of, given in zip(BOUNDS, (scores, slopes, ratings), strict=True):
        if not np.issubdtype(given.dtype, np.integer):
            faults.append(
                said("{what} are whole numbers, not {type}.", what=of.what(), type=str(given.dtype))
            )
        elif _out_of_bounds(of, given):
            faults.append(
                said(
                    "{what} lie between {least} and {most}; some do not.",
                    what=of.what(),
                    least=of.least,
                    most=of.most,
                )
            )
    raise BadHandicap(*faults)
