"""A play-off in stroke play: a new round (Rule 5.1), hole by hole until one is ahead, or over some holes."""

from collections.abc import Mapping, Sequence

from marram.competition.results.scoring import part_of_handicap, rounded_half_up
from marram.errors import InputError, shown
from marram.said import said


def play_off_strokes(handicap: int, holes: int, of: int = 18) -> int:
    """Return the handicap of a play-off over some holes: that part of it, half a stroke and more counted as one.

    Advice of the Royal Canadian Golf Association on ties (a percentage of the holes, half up); the governing text leaves it
    to the Committee.
    """
    return rounded_half_up(part_of_handicap(handicap, holes, of))


def play_off_order(scores: Mapping[str, Sequence[int | None]], *, over: int | None = None) -> tuple[str, ...]:
    """Return who won a play-off; the others share what the conditions give them.

    Args:
        scores: for each side its score on each hole of the play-off, in the order played; ``None`` where a side did not
            complete the hole: disqualified, conceded or withdrawn, it is out of the play-off. Where only one is left,
            that one has won and need not complete it (Rule 3.3a).
        over: over how many holes the total decides first; ``None``: hole by hole from the start. Where that total is
            tied for the lead, the holes after it decide one by one.

    Returns:
        The winner alone.

    Raises:
        InputError: it is not over: a side has no score yet where others are still level with it, or all left it at once.
    """
    left = dict(scores)
    at = 0
    while len(left) > 1:
        end = over if over is not None and at == 0 else at + 1
        parts = {side: list(values[at:end]) for side, values in left.items()}
        staying = {side: values for side, values in parts.items() if None not in values}
        if len(staying) == 1:
            return tuple(staying)
        if staying:
            parts = staying
        missing = [side for side, values in parts.items() if len(values) < end - at or None in values]
        if missing:
            raise InputError(
                said(
                    "The play-off is not over: {sides} have no score on its hole {hole}.",
                    sides=", ".join(map(shown, sorted(missing))),
                    hole=end,
                )
            )
        totals = {side: sum(one for one in values if one is not None) for side, values in parts.items()}
        best = min(totals.values())
        left = {side: left[side] for side, total in totals.items() if total == best}
        at = end
    return tuple(left)
