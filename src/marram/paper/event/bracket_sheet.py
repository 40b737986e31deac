"""A bracket on paper, filled in as far as it is played, with room for the rest; a round robin with its matches by round."""

from collections.abc import Sequence
from dataclasses import dataclass

from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Part, Sheet, Side, Table, Words
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class MatchLine:
    """A match: what its sides are called, and its winner; empty where they are not known.

    Attributes:
        first: a side.
        second: the other.
        bye: whether a side moves on without a match.
        winner: who won.
        result: how.
    """

    first: str
    second: str
    bye: bool = False
    winner: str = ""
    result: str = ""


@dataclass(frozen=True, slots=True)
class BracketOnPaper:
    """A bracket or a round robin.

    Attributes:
        bracket: whether winners move on.
        stages: what each round is called, with its matches.
        seed: of the draw.
        table: of a round robin: place, side and points.
    """

    bracket: bool
    stages: tuple[tuple[str, tuple[MatchLine, ...]], ...]
    seed: str
    table: tuple[tuple[int, str, str], ...] = ()


def bracket_sheet(event: OnPaper, found: BracketOnPaper) -> Sheet:
    """Return the sheet of a bracket or a round robin."""
    parts: list[Part] = [_tree(found.stages)] if found.bracket else [*_robin(found)]
    return Sheet(
        text("matches.bracket.bracket" if found.bracket else "matches.bracket.round_robin"),
        event.name,
        event.about,
        event.day_words,
        (*parts, Words("", (text("paper.bracket.seed", seed=found.seed),))),
        text("paper.foot.starting_sheet"),
    )


def _tree(stages: Sequence[tuple[str, tuple[MatchLine, ...]]]) -> Table:
    """Return the sides from the top in the first column; who moves on stands beside the upper of the two it came from.

    Two matches whose winners meet stay on one page.
    """
    columns = (
        *(Column(name, 1, names_row=not number) for number, (name, _) in enumerate(stages)),
        Column(text("matches.bracket.winner"), 1),
    )
    first = stages[0][1]
    rows: list[list[Cell]] = [[Cell() for _ in columns] for _ in range(2 * len(first))]
    for at, one in enumerate(first):
        bye = text("draw.bye")
        rows[2 * at][0] = Cell(one.first or bye)
        rows[2 * at + 1][0] = Cell(one.second or bye)
    for column, (_, matches) in enumerate(stages, start=1):
        for at, one in enumerate(matches):
            row = rows[at * 2**column]
            row[column] = Cell(one.winner, one.result, strong=True) if one.winner else Cell("……………")
    together = (4,) * (len(rows) // 4) if len(rows) > 2 else ()
    return Table("", columns, tuple(map(tuple, rows)), together=together)


def _robin(found: BracketOnPaper) -> list[Part]:
    place = Column(text("results.place"), 0, Side.RIGHT)
    side = Column(text("matches.bracket.side"), 1, names_row=True)
    points = Column(text("matches.points"), 0, Side.RIGHT)
    parts: list[Part] = [
        Table(
            text("matches.bracket.table"),
            (place, side, points),
            tuple((Cell(str(at)), Cell(name, strong=True), Cell(words)) for at, name, words in found.table),
        )
    ]
    columns = (
        Column(text("publishing.column.first_side"), 1, names_row=True),
        Column(text("publishing.column.second_side"), 1),
        Column(text("publishing.column.result"), 1),
    )
    for name, matches in found.stages:
        rows = tuple(
            (
                Cell(one.first, strong=one.winner == one.first),
                Cell(one.second, strong=one.winner == one.second),
                Cell(one.result or "……………"),
            )
            for one in matches
        )
        parts.append(Table(name, columns, rows))
    return parts
