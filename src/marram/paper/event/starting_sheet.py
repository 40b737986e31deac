"""The starting sheet: who starts when, from which tee."""

from marram.paper.event.handicap_words import handicap_words
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Sheet, Side, Table, Words
from marram.words.texts import clock_words, text


def starting_sheet(event: OnPaper) -> Sheet:
    """Return the starting sheet of a round: every player exactly once, in a group or among those who wait for one."""
    widest = max((len(group.players) for group in event.groups), default=0)
    columns = (
        Column(text("paper.column.group"), 0, Side.RIGHT),
        Column(text("paper.column.time"), 0, names_row=True),
        Column(text("paper.column.tee"), 0, Side.RIGHT),
        *(Column(text("paper.column.player_number", number=number), 1) for number in range(1, widest + 1)),
    )
    rows = []
    for number, group in enumerate(event.groups, start=1):
        players = [player_cell(event, name) for name in group.players]
        players += [Cell()] * (widest - len(players))
        rows.append(
            (Cell(str(number)), Cell(clock_words(group.time), strong=True), Cell(str(group.tee)), *players)
        )
    parts: list[Table | Words] = [
        Table("" if rows else text("paper.groups"), columns, tuple(rows), text("paper.groups.none"))
    ]
    if event.waiting:
        names = tuple(player_cell(event, one.name).said for one in event.waiting)
        parts.append(Words(text("paper.groups.waiting"), names, listed=True))
    return Sheet(
        text("paper.title.starting_sheet"),
        event.name,
        event.about,
        event.day_words,
        tuple(parts),
        text("paper.foot.starting_sheet"),
    )


def player_cell(event: OnPaper, name: str) -> Cell:
    """Return a player with club and handicap."""
    entrant = event.by_name.get(name)
    handicap = handicap_words(event, name)
    small = [entrant.club if entrant else "", handicap]
    return Cell(name, " · ".join(filter(None, small)))
