"""The starter's sheet: every player by time, with boxes to tick, and what a starter reminds players of."""

from marram.paper.event.handicap_words import handicap_words
from marram.paper.event.notice import local_rules_part
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Sheet, Side, Table
from marram.paper.sheet import Words as Sentences
from marram.words.texts import clock_words, text

REMINDERS = ("ready", "late", "clubs", "ball", "card")


def starters_sheet(event: OnPaper) -> Sheet:
    """Return the starter's sheet of a round; a line for each player."""
    columns = (
        Column(text("paper.column.time"), 0),
        Column(text("paper.column.tee"), 0, Side.RIGHT),
        Column(text("paper.column.player"), 3, names_row=True),
        Column(text("paper.column.handicap"), 0, Side.RIGHT),
        Column(text("paper.column.here"), 0, Side.CENTER),
        Column(text("paper.column.card"), 0, Side.CENTER),
        Column(text("paper.column.started"), 1),
        Column(text("paper.column.note"), 2),
    )
    rows = []
    for group in event.groups:
        for at, name in enumerate(group.players):
            entrant = event.by_name.get(name)
            rows.append(
                (
                    Cell(clock_words(group.time), strong=at == 0),
                    Cell(str(group.tee)),
                    Cell(name, entrant.club if entrant else ""),
                    Cell(handicap_words(event, name)),
                    Cell(box=True),
                    Cell(box=True),
                    Cell(),
                    Cell(),
                )
            )
    reminders = tuple(text(f"paper.starter.{one}") for one in REMINDERS)
    return Sheet(
        text("paper.title.starters_sheet"),
        event.name,
        event.about,
        event.day_words,
        (
            Table("", columns, tuple(rows), text("paper.groups.none")),
            Sentences(text("paper.starter"), reminders, listed=True),
            local_rules_part(event.found, text("paper.local"), titles_only=True),
        ),
        text("paper.foot.committee"),
    )
