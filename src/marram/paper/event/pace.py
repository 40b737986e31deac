"""The pace of play as the report tells it: how long each group took, by its start and its last card; it names no player."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime

from marram.paper.sheet import Cell, Column, Part, Side, Table, Words
from marram.words.texts import clock_words, count_text, text


@dataclass(frozen=True, slots=True)
class GroupPace:
    """How long a group took.

    Attributes:
        number: of the group on the starting sheet, from 1.
        tee: the hole it started at.
        start: when, by the clock of the place.
        last: when its last card was returned.
        minutes: of play, without those that play was stopped.
    """

    number: int
    tee: int
    start: datetime
    last: datetime
    minutes: int


@dataclass(frozen=True, slots=True)
class RoundPace:
    """How long the groups of a round took.

    Attributes:
        name: of the round.
        groups: those whose cards are all in, in the order of the starting sheet.
        of: how many groups started.
        given: minutes that the conditions give a group; ``None``: they do not say.
    """

    name: str
    groups: tuple[GroupPace, ...]
    of: int
    given: int | None


def pace_parts(rounds: Sequence[RoundPace]) -> Iterator[Part]:
    """Yield what the report tells of the pace: of each round a summary, and its groups."""
    known = [one for one in rounds if one.groups]
    if not known:
        yield Words(text("paper.report.pace"), (text("paper.report.pace.none"),))
        return
    for one in known:
        heading = (
            text("paper.report.pace.of", round=one.name) if len(rounds) > 1 else text("paper.report.pace")
        )
        yield Words(heading, tuple(_summary(one)))
        yield _groups(one)


def _summary(one: RoundPace) -> Iterator[str]:
    took = [each.minutes for each in one.groups]
    mean = (2 * sum(took) + len(took)) // (2 * len(took))
    yield count_text(
        "paper.report.pace.in",
        one.of,
        done=len(took),
        mean=_took(mean),
        least=_took(min(took)),
        most=_took(max(took)),
    )
    if one.given is not None:
        over = sum(minutes > one.given for minutes in took)
        yield count_text("paper.report.pace.over", over, given=_took(one.given))
    yield text("paper.report.pace.how")


def _groups(one: RoundPace) -> Table:
    columns = [
        Column(text("paper.column.group"), 0, Side.RIGHT, names_row=True),
        Column(text("paper.column.tee"), 0, Side.RIGHT),
        Column(text("paper.column.start"), 1, Side.RIGHT),
        Column(text("paper.column.last_card"), 1, Side.RIGHT),
        Column(text("paper.column.took"), 0, Side.RIGHT),
    ]
    if one.given is not None:
        columns.append(Column(text("paper.column.over"), 0, Side.RIGHT))
    return Table("", tuple(columns), tuple(_row(each, one.given) for each in one.groups), across=2)


def _row(one: GroupPace, given: int | None) -> tuple[Cell, ...]:
    row = (
        Cell(str(one.number)),
        Cell(str(one.tee)),
        Cell(clock_words(one.start)),
        Cell(clock_words(one.last)),
        Cell(_took(one.minutes)),
    )
    if given is None:
        return row
    over = one.minutes - given
    return (*row, Cell(text("paper.report.pace.longer", minutes=over) if over > 0 else "", strong=True))


def _took(minutes: int) -> str:
    return text("paper.report.pace.took", hours=minutes // 60, minutes=f"{minutes % 60:02d}")
