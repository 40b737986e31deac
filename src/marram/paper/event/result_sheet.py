"""The result sheet: every result with its places, and how ties were decided, down to the hole."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from marram.competition.results.board import LeaderBoard, Place, Standing
from marram.competition.results.comparisons import Compared
from marram.competition.results.teams import TeamPlace
from marram.competition.results.why import Why, why
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Part, Sheet, Side, Table, Words
from marram.words.spoken import spoken
from marram.words.texts import count_text, text


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


def result_sheet(event: OnPaper, results: Sequence[Listed], *, closed: bool = False) -> Sheet:
    """Return the sheet of results.

    Args:
        event: the event, for its name and the clubs of its players.
        results: in the order in which they are printed.
        closed: whether the result is closed (Rule 20.2).
    """
    parts: list[Part] = []
    for one in results:
        parts.append(_table(event, one))
        if not one.board.final and any(place.score.played for place in one.board.places):
            parts.append(Words("", (text("competition.not_final"),)))
        if ties := tuple(_ties(one.board)):
            parts.append(Words(text("paper.results.ties"), ties, listed=True))
        if one.teams:
            parts.append(_teams(one.teams))
    if closed:
        parts.append(Words("", (text("paper.results.closed"),)))
    return Sheet(
        text("paper.title.results"),
        event.name,
        event.about,
        event.day_words,
        tuple(parts),
        text("paper.foot.results"),
    )


def _table(event: OnPaper, one: Listed) -> Table:
    places = one.board.places
    rounds = max((len(place.score.rounds) for place in places), default=0)
    columns = (
        Column(text("paper.column.place"), 0, Side.RIGHT),
        Column(text("paper.column.player"), 1, names_row=True),
        *(
            Column(text("paper.column.round", number=number), 0, Side.RIGHT)
            for number in range(1, rounds + 1)
            if rounds > 1
        ),
        Column(text("paper.column.total"), 0, Side.RIGHT),
        Column(text("paper.column.against"), 0, Side.RIGHT),
        Column(text("paper.column.state"), 0),
    )
    rows = tuple(_row(event, place, rounds if rounds > 1 else 0) for place in places)
    return Table(one.name, columns, rows, text("paper.results.none"))


def _row(event: OnPaper, place: Place, rounds: int) -> tuple[Cell, ...]:
    entrant = event.by_name.get(place.side)
    score, gone = place.score, place.out is not None
    number = "" if place.place is None else f"{place.place}{'=' if place.shared else ''}"
    by_round = {one.round: str(one.total) for one in score.rounds}
    played = bool(score.played) and not gone
    return (
        Cell(number, strong=True),
        Cell(place.side, entrant.club if entrant else ""),
        *(Cell("" if gone else by_round.get(one, "")) for one in range(1, rounds + 1)),
        Cell(str(score.total) if played else "", strong=True),
        Cell(_signed(score.against_level) if played else ""),
        Cell(_state(place)),
    )


def _signed(figure: int) -> str:
    return f"{figure:+d}" if figure else "0"


def _state(place: Place) -> str:
    if place.out is not None:
        kind = text(f"competition.out.{place.out.kind.value}")
        return f"{kind} ({place.out.citation})" if place.out.citation else kind
    if place.standing in {Standing.MISSED_CUT, Standing.NOT_STARTED}:
        return text(f"competition.standing.{place.standing.value}")
    if place.to_decide:
        return text(f"competition.to_decide.{place.to_decide.value}")
    return count_text("competition.left", place.left) if place.left else ""


def _ties(board: LeaderBoard) -> Iterator[str]:
    """Yield how each tie was decided: what was compared, and the holes that made the difference."""
    places = board.places
    for before, mine in pairwise(places):
        tied = (
            board.final
            and mine.place is not None
            and before.place not in {None, mine.place}
            and mine.standing is before.standing is Standing.FINISHED
            and mine.score.total == before.score.total
        )
        if tied:
            yield _told(why(board, mine.side))


def _told(answer: Why) -> str:
    words = spoken(answer.words)
    last = answer.steps[-1]
    if last.comparison.by not in {Compared.LAST_HOLES, Compared.FIRST_NINE}:
        return words
    holes = [
        text(
            "paper.results.hole",
            round=one.round,
            hole=one.number,
            mine="?" if one.mine is None else one.mine,
            theirs="?" if one.theirs is None else one.theirs,
        )
        for one in last.holes
        if one.mine != one.theirs
    ]
    return text("paper.results.why", words=words, holes=" ".join(holes)).strip()


def _teams(teams: Sequence[TeamPlace]) -> Table:
    columns = (
        Column(text("paper.column.place"), 0, Side.RIGHT),
        Column(text("paper.column.team"), 1, names_row=True),
        Column(text("paper.column.total"), 0, Side.RIGHT),
    )
    rows = tuple(
        (
            Cell(f"{one.place or ''}{'=' if one.shared else ''}", strong=True),
            Cell(one.team),
            Cell("" if one.total is None else str(one.total), strong=True),
        )
        for one in teams
    )
    return Table(text("paper.results.teams"), columns, rows)
