"""How ties of a result were decided, in as few words as can be checked: who comes after whom, and by which figures."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby, pairwise

from marram.competition.results.board import LeaderBoard, Place, Standing
from marram.competition.results.comparisons import Compared
from marram.competition.results.teams import TeamPlace
from marram.competition.results.why import Step, compared_words, in_figures, why
from marram.paper.sheet import Words
from marram.words.spoken import spoken
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class Listed:
    """A result that is printed.

    Attributes:
        name: what it is called, such as "Net, Seniors".
        board: its leader board.
        teams: the teams in order.
    """

    name: str
    board: LeaderBoard
    teams: tuple[TeamPlace, ...] = ()


def ties_decided(listed: Listed, *, named: bool) -> Words | None:
    """Return how the ties of a final result were decided; ``None`` where none was.

    Each total with a tie that was decided is one sentence: its sides in order, behind each what put it after the one
    before it, its own figure first. For the first place the holes that made the difference follow; of every other place
    the whole comparison, down to the hole, is asked for side by side (``why``).

    Args:
        listed: the result.
        named: whether the heading says which result it is.
    """
    found = dict(_groups(listed.board))
    if not found:
        return None
    heading = text("paper.results.ties")
    return Words(
        text("paper.results.ties_of", heading=heading, result=listed.name) if named else heading,
        (text("paper.results.ties_read"), *found.values()),
        lead=("", *found),
    )


def _groups(board: LeaderBoard) -> Iterator[tuple[str, str]]:
    if not board.final:
        return
    finished = [one for one in board.places if one.place is not None and one.standing is Standing.FINISHED]
    for total, group in groupby(finished, key=lambda one: one.score.total):
        tied = list(group)
        if len({one.place for one in tied}) > 1:
            yield str(total), _in_order(board, tied)


def _in_order(board: LeaderBoard, tied: list[Place]) -> str:
    words = tied[0].side
    holes: list[str] = []
    for before, mine in pairwise(tied):
        decided = why(board, mine.side).decided if before.place != mine.place else None
        words = text("paper.results.after", before=words, side=mine.side, by=_by(before, mine, decided))
        if decided is not None and tied[0].place == 1:
            holes += _holes(decided)
    return " ".join((text("paper.results.ties_end", words=words), *holes))


def _by(before: Place, mine: Place, decided: Step | None) -> str:
    if before.place == mine.place:
        return text("paper.results.shares")
    if decided is None:
        return text("paper.results.undecided")
    what = spoken(compared_words(decided.comparison, mine.score))
    return text(
        "paper.results.by", what=what, mine=in_figures(decided.mine), theirs=in_figures(decided.theirs)
    )


def _holes(decided: Step) -> Iterator[str]:
    if decided.comparison.by not in {Compared.LAST_HOLES, Compared.FIRST_NINE}:
        return
    for one in decided.holes:
        yield text(
            "paper.results.hole",
            round=one.round,
            hole=one.number,
            mine="?" if one.mine is None else one.mine,
            theirs="?" if one.theirs is None else one.theirs,
        )
