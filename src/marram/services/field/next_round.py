"""A further round drawn out of the results so far: who plays on, in which order, and who is not to meet again."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import time

from marram.competition.conditions.event_file import EventFile, Group
from marram.competition.draw.next_round import turned
from marram.competition.draw.order import by_score
from marram.competition.draw.solving import Draw, draw, no_repeats
from marram.competition.draw.wishes import ClubsApart, Drawn, Start, Wish
from marram.competition.results.board import LeaderBoard
from marram.errors import InputError
from marram.said import said


@dataclass(frozen=True, slots=True)
class FurtherRound:
    """What a further round is drawn by.

    Attributes:
        seed: the published seed, for who has the same score.
        leaders_first: whether the leaders start first; else last.
        before: the groups of the round before; empty where they do not matter.
        turn: whether early ones start late and from the other tee, instead of by score.
        not_again: whether nobody plays again with whom they played before.
        clubs_apart: whether no two of one club are in a group.
        earlier: the groups of rounds before that one, where nobody is to play again with anybody of them either.
    """

    seed: str
    leaders_first: bool = False
    before: Sequence[Group] = field(default=())
    turn: bool = False
    not_again: bool = False
    clubs_apart: bool = False
    earlier: Sequence[Group] = field(default=())


def playing_on(board: LeaderBoard) -> dict[str, int]:
    """Return who plays on after the cut, each with the score so far, a lower one always the better.

    Raises:
        InputError: the cut cannot be made yet, as some are still to play the rounds before it, or nobody plays on.
    """
    if board.terms.cut is not None and board.through is None:
        raise InputError(
            said("The cut cannot be made yet: not everybody has a complete card of the rounds before it.")
        )
    sign = 1 if board.terms.scoring.lower_wins else -1
    found = {one.side: sign * one.total for one in board.still_in if one.played}
    if not found:
        raise InputError(said("Nobody plays on: there is no card of a player who is still in."))
    return found


def draw_further(found: EventFile, board: LeaderBoard, starts: Sequence[Start], by: FurtherRound) -> Draw:
    """Return the draw of a further round.

    Args:
        found: the conditions, with the players.
        board: the result that decides the order.
        starts: in the order in which they are filled; with room for all who play on.
        by: what it is drawn by.

    Raises:
        InputError: the cut cannot be made yet, nobody plays on, or the starts have no room for them.
    """
    scores = playing_on(board)
    if (by.turn or by.not_again) and not by.before:
        raise InputError(said("The groups of the round before are not given. Give the draw of that round."))
    groups = [[name for name in one.players if name in scores] for one in by.before]
    order = by_score(scores, by.seed, leaders_last=not by.leaders_first)
    if by.turn:
        first = turned(groups, [_start(one) for one in by.before])
        order = (*first, *(one for one in order if one not in set(first)))
    clubs = {one.name: one.club for one in found.players}
    wishes: list[Wish] = [ClubsApart()] if by.clubs_apart else []
    if by.not_again:
        wishes += no_repeats(
            [*groups, *([name for name in one.players if name in scores] for one in by.earlier)]
        )
    return draw([Drawn(key, clubs.get(key, "")) for key in order], starts, wishes)


def _start(group: Group) -> Start:
    return Start(time.fromisoformat(group.time), group.tee, max(1, len(group.players)))
