"""On which holes strokes are received, or given back (Appendix E; Appendix C for plus handicaps)."""

from collections.abc import Sequence
from enum import Enum

from marram.handicap.checking import Checking
from marram.said import said


class GivenBack(Enum):
    """Where a player with a plus Playing Handicap gives strokes back."""

    FROM_HIGHEST = "from_highest"
    """From the highest stroke index down, as Appendix C has it unless the Committee says otherwise."""
    FROM_LOWEST = "from_lowest"
    """From stroke index 1 up, where the Committee says so."""


def strokes_by_hole(
    playing_handicap: int,
    stroke_indexes: Sequence[int],
    *,
    given_back: GivenBack = GivenBack.FROM_HIGHEST,
) -> tuple[int, ...]:
    """Return the strokes on each hole, in the order of the indexes; negative where strokes are given back.

    Above one stroke a hole the same order is used again: index 1 serves as 19, 37 and 55 too (Appendix E). Nine holes
    take their strokes in the ascending order of their own indexes of the 18 (or of 1 to 9 given anew).

    Args:
        playing_handicap: whole, a plus one negative; in a match the difference.
        stroke_indexes: of the holes played, 18 or 9 of them.
        given_back: where a plus handicap gives strokes back.

    Raises:
        BadHandicap: the indexes are not one for each hole, or the handicap is not whole.
    """
    checking = Checking()
    holes = len(tuple(stroke_indexes))
    if holes not in {9, 18}:
        checking.fault(said("Give the stroke indexes of 9 or 18 holes, not of {holes}.", holes=holes))
    indexes = checking.indexes(said("Stroke indexes"), stroke_indexes, holes)
    strokes = checking.whole_number(said("Playing Handicap"), playing_handicap, least=-60, most=180)
    checking.done()
    each, rest = divmod(abs(strokes), holes)
    backwards = strokes < 0 and given_back is GivenBack.FROM_HIGHEST
    order = sorted(range(holes), key=lambda hole: indexes[hole], reverse=backwards)
    sign = -1 if strokes < 0 else 1
    found = [each * sign] * holes
    for hole in order[:rest]:
        found[hole] += sign
    return tuple(found)
