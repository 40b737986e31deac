"""The state of a match, from what happened on its holes (Rule 3.2).

A match is played over holes in the order of the round; tied after the last one it goes on from the hole where it began, with
strokes on the same holes (Rules 3.2a(4) and 3.2c(2)), unless it may end in a tie.
"""

from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations

from marram.competition.matches.acts import (
    HoleAgreedTied,
    HoleBy,
    HoleGiven,
    HoleLostByBoth,
    HolePlayed,
    HolesDeducted,
    HoleTied,
    MatchAct,
    MatchConceded,
    MatchDisqualified,
    ResultAgreed,
)
from marram.competition.matches.state import HoleResult, Match, MatchState, MatchStatus
from marram.competition.results.card import NO_SCORE, HoleScore
from marram.errors import InputError, shown
from marram.said import Said, said


def match_state(match: Match, acts: Iterable[MatchAct]) -> MatchState:
    """Return how a match stands after what happened, in its order.

    Raises:
        InputError: something does not fit: a hole after the match was over, a side that does not play in it.
    """
    holes: list[HoleResult] = []
    up = 0
    ended: tuple[str, Said] | None = None
    final = False
    for act in acts:
        _check(match, act)
        over = ended is not None or _decided(match, up, len(holes))
        _check_order(act, over, final, len(holes))
        if isinstance(act, ResultAgreed):
            final = True
        elif isinstance(act, HolesDeducted):
            up += act.holes if act.side == match.second else -act.holes
        elif isinstance(act, MatchConceded | MatchDisqualified):
            loser = act.by if isinstance(act, MatchConceded) else act.side
            words = (
                said("conceded")
                if isinstance(act, MatchConceded)
                else said("disqualified (Rule {citation})", citation=act.citation)
            )
            ended = match.other(loser), words
        else:
            hole = match.hole_at(len(holes))
            winner = _winner(match, act, hole)
            up += 0 if winner is None else 1 if winner == match.first else -1
            holes.append(HoleResult(hole, winner, up))
    return _state(match, up, holes, ended, final)


def _check_order(act: MatchAct, over: bool, final: bool, holes: int) -> None:
    """Refuse what cannot happen at this point of a match.

    A result is final only of a match that is over, and then only disqualification may still change it (Rule 20.2e(1); what
    Rule 20.1b(3) changes is entered in its place on the hole). A decided match can neither be conceded nor played on
    (Rules 3.2a(3) and 3.2b(1), Clarification 3.2b(1)/2).
    """
    if final and not isinstance(act, MatchDisqualified):
        raise InputError(
            said(
                "The result is final; only disqualification can follow it (Rule 20.2e(1)). "
                "What a ruling under Rule 20.1b(3) changes, change on its hole."
            )
        )
    if isinstance(act, ResultAgreed) and not over:
        raise InputError(
            said(
                "The match is not over after {holes} holes, and its result cannot be final (Rule 3.2a). "
                "Enter the holes that are missing, or who conceded.",
                holes=holes,
            )
        )
    if over and not isinstance(act, ResultAgreed | MatchDisqualified | HolesDeducted):
        raise InputError(
            said(
                "The match was over after {holes} holes; nothing that happened on a hole, nor a concession, can follow.",
                holes=holes,
            )
        )


def _check(match: Match, act: MatchAct) -> None:
    named = {
        HoleGiven: "winner",
        MatchConceded: "by",
        MatchDisqualified: "side",
        HolesDeducted: "side",
    }.get(type(act))
    side = getattr(act, named) if named else match.first
    if side not in (match.first, match.second):
        raise InputError(
            said(
                "{side} does not play in this match; give {first} or {second}.",
                side=shown(side),
                first=shown(match.first),
                second=shown(match.second),
            )
        )


def _winner(
    match: Match, act: HolePlayed | HoleGiven | HoleTied | HoleAgreedTied | HoleLostByBoth, hole: int
) -> str | None:
    if isinstance(act, HoleGiven):
        return act.winner
    if isinstance(act, HoleTied | HoleAgreedTied | HoleLostByBoth):
        return None
    net = []
    for side, score in ((match.first, act.first), (match.second, act.second)):
        if score is None or (score != NO_SCORE and score < 1):
            raise InputError(
                said(
                    "Hole {hole}: {side} has no score. Give strokes, '-' for picked up, or say who has the hole.",
                    hole=hole,
                    side=shown(side),
                )
            )
        net.append(None if score == NO_SCORE else score - match.received(side, hole))
    first, second = net
    if first is None and second is None:
        raise InputError(
            said("Hole {hole}: both picked up. Say who conceded, or that they agreed to a tie.", hole=hole)
        )
    if first == second:
        return None
    return match.first if second is None or (first is not None and first < second) else match.second


def _decided(match: Match, up: int, played: int) -> bool:
    left = len(match.holes) - played
    if left > 0:
        return abs(up) > left
    return up != 0 or match.may_end_tied is True


def _state(
    match: Match, up: int, holes: Sequence[HoleResult], ended: tuple[str, Said] | None, final: bool
) -> MatchState:
    left = max(0, len(match.holes) - len(holes))
    leader = match.first if up > 0 else match.second if up < 0 else None

    def state(status: MatchStatus, words: Said, who: str | None = leader) -> MatchState:
        over = status in (MatchStatus.WON, MatchStatus.TIED)
        next_hole = None if over else match.hole_at(len(holes))
        return MatchState(status, who, abs(up), left, tuple(holes), final, words, next_hole)

    if ended is not None:
        return state(MatchStatus.WON, ended[1], ended[0])
    if up and _decided(match, up, len(holes)):
        return state(MatchStatus.WON, _won(match, abs(up), left, len(holes)))
    if up:
        dormie = abs(up) == left
        words = said("dormie {up}", up=abs(up)) if dormie else said("{up} up", up=abs(up))
        return state(MatchStatus.DORMIE if dormie else MatchStatus.UP, words)
    if left:
        return state(MatchStatus.ALL_SQUARE, said("all square"))
    if match.may_end_tied is None:
        return state(
            MatchStatus.TO_BE_SAID, said("all square after the last hole; may the match end in a tie?")
        )
    if match.may_end_tied:
        return state(MatchStatus.TIED, said("tied"))
    return state(MatchStatus.EXTENDED, said("all square after {holes} holes", holes=len(holes)))


def _won(match: Match, up: int, left: int, played: int) -> Said:
    if left:
        return said("{up} and {left}", up=up, left=left)
    if played > len(match.holes):
        return said("{up} up after {holes} holes", up=up, holes=played)
    return said("{up} up", up=up)


def three_ball(
    players: tuple[str, str, str], holes: tuple[int, ...] = tuple(range(1, 19))
) -> tuple[Match, ...]:
    """Return the three matches of Three-Ball: each player against each of the others (Rule 21.4a)."""
    return tuple(Match(one, other, holes) for one, other in combinations(players, 2))


def best_of(scores: Iterable[tuple[HoleScore, int]]) -> tuple[HoleScore, int]:
    """Return the partners' score that counts for a side on a hole: the lowest net, with its strokes (Rule 23.2a).

    Args:
        scores: for each partner the gross score and the handicap strokes of the hole.
    """
    some = list(scores)
    played: Iterator[tuple[int, int]] = (
        (gross, received) for gross, received in some if isinstance(gross, int)
    )
    return min(played, key=lambda one: one[0] - one[1], default=(NO_SCORE, 0))


__all__ = [
    "HoleAgreedTied",
    "HoleBy",
    "HoleGiven",
    "HoleLostByBoth",
    "HolePlayed",
    "HoleResult",
    "HolesDeducted",
    "Match",
    "MatchAct",
    "MatchConceded",
    "MatchDisqualified",
    "MatchState",
    "MatchStatus",
    "ResultAgreed",
    "best_of",
    "match_state",
    "three_ball",
]
