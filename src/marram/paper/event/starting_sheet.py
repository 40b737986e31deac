"""The starting sheet: who starts when, from which tee; in match play who plays against whom."""

from collections.abc import Sequence

from marram.competition.conditions.event_file import Entrant, Group
from marram.competition.matches.meeting import pairs
from marram.paper.event.handicap_words import handicap_words
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Sheet, Side, Table, Words
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.words.texts import clock_words, text


def starting_sheet(event: OnPaper) -> Sheet:
    """Return the starting sheet of a round: every player exactly once, in a group or among those who wait for one."""
    parts: list[Table | Words] = [_matches(event) or _groups(event)]
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


def _groups(event: OnPaper) -> Table:
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
    return Table("" if rows else text("paper.groups"), columns, tuple(rows), text("paper.groups.none"))


def _matches(event: OnPaper) -> Table | None:
    """Return the matches of each group, a line for each; nothing where not every player of a group has one match."""
    if event.found.form_of_play is not FormOfPlay.MATCH_PLAY:
        return None
    columns = (
        Column(text("paper.column.group"), 0, Side.RIGHT),
        Column(text("paper.column.time"), 0, names_row=True),
        Column(text("paper.column.tee"), 0, Side.RIGHT),
        Column(text("paper.column.side"), 1),
        Column(text("paper.column.opponents"), 1),
    )
    rows, together = [], []
    for number, group in enumerate(event.groups, start=1):
        met = _met(event, group)
        if not met:
            return None
        together.append(len(met))
        rows += [
            (
                Cell(str(number)),
                Cell(clock_words(group.time), strong=True),
                Cell(str(group.tee)),
                *(_side_cell(event, side) for side in pair),
            )
            for pair in met
        ]
    return Table("", columns, tuple(rows), together=tuple(together)) if rows else None


def _met(event: OnPaper, group: Group) -> list[tuple[tuple[Entrant, ...], tuple[Entrant, ...]]]:
    """Return the matches of a group; none where a player is in no match, or in several."""
    players = [event.by_name.get(name, Entrant(name)) for name in group.players]
    found = pairs(players, event.found.sides or Sides.INDIVIDUAL)
    names = [one.name for pair in found for side in pair for one in side]
    return found if sorted(names) == sorted(group.players) else []


def _side_cell(event: OnPaper, side: Sequence[Entrant]) -> Cell:
    """Return the players of a side, with the club and handicap of each."""
    each = [player_cell(event, one.name) for one in side]
    return Cell(" / ".join(one.words for one in each), " / ".join(one.small for one in each if one.small))


def player_cell(event: OnPaper, name: str) -> Cell:
    """Return a player with club and handicap."""
    entrant = event.by_name.get(name)
    handicap = handicap_words(event, name)
    small = [entrant.club if entrant else "", handicap]
    return Cell(name, " · ".join(filter(None, small)))
