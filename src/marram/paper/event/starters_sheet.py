"""The starter's sheet: every player by time, with boxes to tick, and what a starter reminds players of.

Where groups start one after another from two tees, each tee has a starter: a list of its own, on a page of its own.
"""

from collections.abc import Sequence

from marram.competition.conditions.event_file import Group
from marram.paper.event.handicap_words import handicap_words
from marram.paper.event.notice import local_rules_part
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Sheet, Side, Table
from marram.paper.sheet import Words as Sentences
from marram.words.texts import clock_words, text

REMINDERS = ("ready", "late", "clubs", "ball", "card")


def starters_sheet(event: OnPaper) -> Sheet:
    """Return the starter's sheet of a round; a line for each player."""
    reminders = tuple(text(f"paper.starter.{one}") for one in REMINDERS)
    return Sheet(
        text("paper.title.starters_sheet"),
        event.name,
        event.about,
        event.day_words,
        (
            *(
                _list(event, heading, groups, new_page=at > 0)
                for at, (heading, groups) in enumerate(_by_tee(event))
            ),
            Sentences(text("paper.starter"), reminders, listed=True),
            local_rules_part(event.found, text("paper.local"), titles_only=True),
        ),
        text("paper.foot.committee"),
    )


def _by_tee(event: OnPaper) -> list[tuple[str, Sequence[Group]]]:
    """Return the groups of each tee under its heading; all in one list where no tee has a second start, as in a shotgun."""
    tees = sorted({one.tee for one in event.groups})
    each = [[one for one in event.groups if one.tee == tee] for tee in tees]
    if len(tees) < 2 or any(len({one.time for one in groups}) < 2 for groups in each):
        return [("", event.groups)]
    return [(text("paper.starter.tee", tee=tee), groups) for tee, groups in zip(tees, each, strict=True)]


def _list(event: OnPaper, heading: str, groups: Sequence[Group], *, new_page: bool) -> Table:
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
    for group in groups:
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
    return Table(
        heading,
        columns,
        tuple(rows),
        text("paper.groups.none"),
        together=tuple(len(group.players) for group in groups if group.players),
        new_page=new_page,
    )
