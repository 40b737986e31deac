"""Rules 5.2, 5.3 and 5.8: a Handicap Index from Score Differentials, with its caps."""

from collections.abc import Sequence
from fractions import Fraction

from marram.handicap.arithmetic import HALF, to_tenth
from marram.handicap.checking import MOST_INDEX, Checking, decimal
from marram.handicap.worked import Step, Worked, step, worked
from marram.said import said

LEAST_DIFFERENTIAL, MOST_DIFFERENTIAL = -100, 340
"""Bounds against slips of the pen, ours: at Slope Rating 55 par and five on each of 18 holes of par 6 can give 332.8."""

FULL_RECORD = 20
LEAST_RECORD = 3

USED = {
    3: (1, -2),
    4: (1, -1),
    5: (1, 0),
    6: (2, -1),
    7: (2, 0),
    8: (2, 0),
    9: (3, 0),
    10: (3, 0),
    11: (3, 0),
    12: (4, 0),
    13: (4, 0),
    14: (4, 0),
    15: (5, 0),
    16: (5, 0),
    17: (6, 0),
    18: (6, 0),
    19: (7, 0),
    20: (8, 0),
}
"""By the number of differentials in the record: how many of the lowest are averaged, and what is added (Rule 5.2a)."""

SOFT_CAP = Fraction(3)
"""A rise above the Low Handicap Index of more than this is halved beyond it (Rule 5.8)."""
HARD_CAP = Fraction(5)
"""No index lies higher above the Low Handicap Index (Rule 5.8)."""


def handicap_index(differentials: Sequence[object], *, low_index: object = None) -> Worked:
    """Return the Handicap Index from the most recent Score Differentials.

    The average is rounded to a tenth, then the caps are applied, then the maximum of 54.0. Reductions for exceptional
    scores and by the Committee are already in the differentials (Rule 5.2b).

    Args:
        differentials: to a tenth each, the latest last; of more than 20 the latest 20 count.
        low_index: the Low Handicap Index; ``None`` where there is none. It counts only with 20 differentials (Rule 5.7).

    Raises:
        BadHandicap: fewer than three differentials, or figures that cannot be used.
    """
    checking = Checking()
    if len(differentials) < LEAST_RECORD:
        checking.fault(
            said(
                "A Handicap Index needs {least} Score Differentials (54 holes, Rule 4.5); there are {count}.",
                least=LEAST_RECORD,
                count=len(differentials),
            )
        )
    values = [
        checking.number(
            said("Score Differential {number}", number=number),
            one,
            least=LEAST_DIFFERENTIAL,
            most=MOST_DIFFERENTIAL,
            tenths=True,
        )
        for number, one in enumerate(differentials, start=1)
    ]
    low = None if low_index is None else checking.index(low_index, said("Low Handicap Index"))
    checking.done()
    return index_from(values, low)


def index_from(values: Sequence[Fraction], low: Fraction | None) -> Worked:
    """Return the Handicap Index from differentials already read; see :func:`handicap_index`."""
    recent = values[-FULL_RECORD:]
    used, adjustment = USED[len(recent)]
    citation = "5.2b" if len(recent) == FULL_RECORD else "5.2a"
    lowest = sorted(recent)[:used]
    total = sum(lowest, Fraction(0))
    average = total * Fraction(1, used)
    steps = [
        step(
            "average", citation, average, used=used, count=len(recent), total=total, lowest=_sum_words(lowest)
        ),
    ]
    value = average
    if adjustment:
        value += adjustment
        steps.append(step("short_record", citation, value, value=average, adjustment=adjustment))
    rounded = to_tenth(value)
    steps.append(step("index_rounded", citation, rounded, value=value))
    if low is not None and len(recent) == FULL_RECORD:
        steps.extend(_capped(rounded, low))
    elif low is not None:
        steps.append(step("cap_not_yet", "5.7", rounded, count=len(recent), of=FULL_RECORD))
    if steps[-1].result > MOST_INDEX:
        steps.append(step("most_index", "5.3", MOST_INDEX, value=steps[-1].result))
    return worked(*steps)


def _sum_words(values: Sequence[Fraction]) -> str:
    """Return numbers as the sum that they are: ``(9.8 + 10.7)``."""
    written = [f"({decimal(one)})" if one < 0 else decimal(one) for one in values]
    return f"({' + '.join(written)})" if len(written) > 1 else written[0]


def _capped(average: Fraction, low: Fraction) -> list[Step]:
    above = average - low
    if above <= SOFT_CAP:
        return [step("within_caps", "5.8", average, low=low, above=above)]
    soft = average - (above - SOFT_CAP) * HALF
    steps = [step("soft_cap", "5.8", soft, value=average, low=low, above=above)]
    if soft - low > HARD_CAP:
        return [*steps, step("hard_cap", "5.8", low + HARD_CAP, value=soft, low=low)]
    return [*steps, step("cap_rounded", "5.8", to_tenth(soft), value=soft)]
