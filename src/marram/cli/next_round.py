"""``marram next-round``: groups and starting times by the scores so far."""

from dataclasses import dataclass
from pathlib import Path

from marram.cli.drawing import show_draw, time_of
from marram.competition.draw.wishes import starts
from marram.errors import InputError
from marram.said import said
from marram.services.field.next_round import FurtherRound, draw_further, playing_on
from marram.services.results.competition_results import Result, read_results
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class Slots:
    """The starts, as typed."""

    first: str
    minutes: int
    places: int
    tees: tuple[int, ...]
    second: str = ""


def tell_next_round(cards: Path, slots: Slots, by: FurtherRound, score: str | None, as_json: bool) -> None:
    """Print the groups of a further round with their starts, or the wishes that clash."""
    found, results = read_results(cards)
    if slots.places < 1:
        raise InputError(text("draw.places"))
    wanted = score or (found.cut.score.value if found.cut and found.cut.score else None)
    board = _chosen(results, wanted).board
    groups = -(-len(playing_on(board)) // slots.places)
    at = starts(
        time_of(slots.first),
        groups,
        minutes=slots.minutes,
        places=slots.places,
        tees=slots.tees,
        second=time_of(slots.second) if slots.second else None,
    )
    drawn = draw_further(found, board, at, by)
    show_draw(by.seed, at, drawn, {name: name for name in board.scores}, as_json)


def _chosen(results: tuple[Result, ...], score: str | None) -> Result:
    known = [one for one in results if one.division is None and (score is None or one.score.value == score)]
    if not known:
        names = ", ".join(one.score.value for one in results if one.division is None)
        raise InputError(
            said("There is no result {score}. There are: {known}.", score=repr(score), known=names)
        )
    return known[0]
