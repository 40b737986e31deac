"""A bracket that moves on: who meets whom in each round, as far as matches are decided."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from marram.errors import InputError, shown
from marram.said import said


@dataclass(frozen=True, slots=True)
class Meeting:
    """A match of a bracket.

    Attributes:
        round: 1 for the first.
        number: 1 for the uppermost of its round.
        first: a side; ``None``: not known yet.
        second: the other; ``None``: not known yet, and in the first round a bye.
        winner: who moves on; ``None``: not known yet.
    """

    round: int
    number: int
    first: str | None
    second: str | None
    winner: str | None = None


def moved_on(
    draw: Sequence[tuple[str | None, str | None]], winners: Mapping[tuple[int, int], str]
) -> tuple[tuple[Meeting, ...], ...]:
    """Return every round of a bracket.

    Args:
        draw: the meetings of the first round, from the top; ``None`` for a bye. Their number is a power of two.
        winners: who won a meeting, by its round and number, both from 1.

    Raises:
        InputError: the draw is no bracket, or a winner does not play in that meeting; every fault is listed.
    """
    count = len(draw)
    if count < 1 or count & (count - 1):
        raise InputError(
            said("A bracket begins with 1, 2, 4, 8 … meetings, and here there are {count}.", count=count)
        )
    faults: list[str] = []
    rounds: list[tuple[Meeting, ...]] = []
    pairs: Sequence[tuple[str | None, str | None]] = draw
    while pairs:
        number_of_round = len(rounds) + 1
        rounds.append(
            tuple(
                _meeting(number_of_round, number, pair, winners, faults)
                for number, pair in enumerate(pairs, start=1)
            )
        )
        on = [one.winner for one in rounds[-1]]
        pairs = list(zip(on[::2], on[1::2], strict=False))
    known = {(one.round, one.number) for meetings in rounds for one in meetings}
    faults += [
        said("Round {round} has no meeting {number}.", round=at[0], number=at[1])
        for at in sorted(winners)
        if at not in known
    ]
    if faults:
        raise InputError(*faults)
    return tuple(rounds)


def _meeting(
    round_: int,
    number: int,
    pair: tuple[str | None, str | None],
    winners: Mapping[tuple[int, int], str],
    faults: list[str],
) -> Meeting:
    first, second = pair
    won = winners.get((round_, number))
    if won is not None and won not in pair:
        faults.append(
            said(
                "Round {round}, meeting {number}: {winner} does not play in it; correct the winner.",
                round=round_,
                number=number,
                winner=shown(won),
            )
        )
    if won is None and round_ == 1 and (first is None) != (second is None):
        won = first if second is None else second
    return Meeting(round_, number, first, second, won)
