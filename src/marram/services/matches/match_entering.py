"""What is entered of a match, for desk, shell and Python alike: how a hole ended, how the match did, and what was a mistake."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from marram.competition.results.card import HoleScore
from marram.errors import InputError
from marram.said import said
from marram.services.kinds.matches import WITH_WINNER, EndHow, HoleHow, Side
from marram.services.log.tap import About, Tap, entered, taken_back
from marram.services.matches.matches_kept import ENDED, HOLE, MatchNow
from marram.services.results.scored import Scored


@dataclass(frozen=True)
class HoleEnded:
    """How a hole ended.

    Attributes:
        place: its place in the order of play, from 1.
        how: how.
        winner: who won it, where somebody did.
        scores: the score of every ball, those of the first side first, where it was told by scores.
        corrects: the entry seen that it puts right; empty for none.
    """

    place: int
    how: HoleHow
    winner: Side | None = None
    scores: Sequence[HoleScore] = ()
    corrects: str = ""


def enter_hole(here: Scored, now: MatchNow, ended: HoleEnded, tap: Tap) -> None:
    """Enter how a hole ended; where it was entered before, the entry seen is corrected.

    Raises:
        InputError: the competition is closed, or a score is missing, or nobody has one.
    """
    here.refuse_closed()
    content: dict[str, Any] = {"against": now.meeting.key[1], "place": ended.place, "how": ended.how.value}
    if ended.how in WITH_WINNER:
        content["winner"] = "" if ended.winner is None else ended.winner.value
    if ended.how is HoleHow.SCORES:
        content["scores"] = _scores(now, ended.scores)
    seen = {one.id for one in now.holes.get(ended.place, ())}
    corrects = ended.corrects if ended.corrects in seen else None
    number = now.meeting.match.hole_at(ended.place - 1)
    here.add(entered(HOLE, tap, _about(now, number), content, corrects=corrects))


def _scores(now: MatchNow, given: Sequence[HoleScore]) -> list[int | str]:
    """Return the scores of a hole.

    Raises:
        InputError: one is missing, or nobody has a score.
    """
    found: list[int | str] = [one for one in given if one is not None]
    if len(found) != len(now.meeting.strokes):
        raise InputError(said("Give the score of every ball, '-' where it was picked up."))
    if all(one == "-" for one in found):
        raise InputError(
            said("Nobody has a score. Say who conceded the hole, or that it was tied by agreement.")
        )
    return found


def end_match(
    here: Scored, now: MatchNow, how: EndHow, tap: Tap, *, side: str = "", citation: str = ""
) -> None:
    """Enter that a side concedes the match or is disqualified, or that the result is final.

    Raises:
        InputError: the competition is closed, or the match cannot end so now.
    """
    here.refuse_closed()
    if how is EndHow.FINAL and not now.state.over:
        raise InputError(said("The match is not over, and its result cannot be final (Rule 3.2a)."))
    if how is EndHow.CONCEDED and now.state.over:
        raise InputError(said("The match is over; it cannot be conceded any more (Rule 3.2b(1))."))
    content = {
        "against": now.meeting.key[1],
        "how": how.value,
        **({"side": side} if side else {}),
        **({"citation": citation.strip()} if citation.strip() else {}),
    }
    here.add(entered(ENDED, tap, _about(now), content))


def take_back_of_match(here: Scored, now: MatchNow, entry: str, why: str, tap: Tap) -> None:
    """Withdraw an entry of a hole, or of the end, that was made by mistake; the entry itself stays in the log.

    Raises:
        InputError: the competition is closed, it is no entry of this match, or nobody said why.
    """
    here.refuse_closed()
    if entry not in entries_of(now):
        raise InputError(said("That is no entry of this match which stands. Look at the match."))
    here.add(taken_back(entry, why, tap, _about(now)))


def entries_of(now: MatchNow) -> frozenset[str]:
    """Return the entries of holes and of the end that stand."""
    return frozenset({one.id for some in now.holes.values() for one in some} | {one.id for one in now.ended})


def _about(now: MatchNow, hole: int | None = None) -> About:
    return About(now.meeting.key[0], now.meeting.round, hole)
