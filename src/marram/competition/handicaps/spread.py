"""The indexes of very many players, spread over all cores or over a cluster: with the same digits as on one core.

Players stand alone, so any executor of Python's own kind will do: threads (the arithmetic of NumPy runs outside the
interpreter's lock), processes, or those of a cluster, for example ``distributed.Client(address).get_executor()`` of Dask.
"""

from concurrent.futures import Executor

import numpy as np

from marram.competition.handicaps.bulk_indexes import Tenths, Whole, indexes_in_tenths
from marram.errors import BadHandicap

PART = 65_536
"""Players of one piece of work: enough that handing it over costs little beside working it out."""


def indexes_spread(
    executor: Executor,
    scores: Whole,
    slopes: Whole,
    ratings: Whole,
    *,
    low_indexes: Whole | None = None,
    part: int = PART,
) -> Tenths:
    """Return the Handicap Index of each player in tenths, as :func:`indexes_in_tenths` does, worked out by an executor.

    Args:
        executor: who does the work.
        scores: adjusted gross scores with playing conditions taken off, shape (players, 20).
        slopes: Slope Ratings, the same shape.
        ratings: Course Ratings in tenths, the same shape.
        low_indexes: Low Handicap Indexes in tenths, shape (players,), where caps are to be applied (Rule 5.8).
        part: players of one piece of work.

    Raises:
        BadHandicap: shapes that do not fit, or figures beyond what a score or a rating can be.
    """
    alike = {len(scores), len(slopes), len(ratings), len(scores) if low_indexes is None else len(low_indexes)}
    if len(scores) <= part or len(alike) > 1:
        return indexes_in_tenths(scores, slopes, ratings, low_indexes=low_indexes)
    lows = low_indexes
    waiting = [
        executor.submit(_of_part, scores[at], slopes[at], ratings[at], None if lows is None else lows[at])
        for at in (slice(start, start + part) for start in range(0, len(scores), part))
    ]
    try:
        return np.concatenate([one.result() for one in waiting])
    except BadHandicap:
        for one in waiting:
            one.cancel()
        raise


def _of_part(scores: Whole, slopes: Whole, ratings: Whole, low_indexes: Whole | None) -> Tenths:
    return indexes_in_tenths(scores, slopes, ratings, low_indexes=low_indexes)
