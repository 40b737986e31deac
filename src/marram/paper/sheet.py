"""A sheet of the event as one value: its title, and its parts in order. Paper, page and terminal show the same one."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import Enum


class Side(Enum):
    """To which side the words of a column stand."""

    LEFT = "left"
    RIGHT = "right"
    CENTER = "center"


@dataclass(frozen=True, slots=True)
class Cell:
    """What stands in one place of a table.

    Attributes:
        words: what is read first.
        small: what stands below it, in smaller type.
        strong: whether it stands out.
        box: whether it is an empty box to tick or to write in.
    """

    words: str = ""
    small: str = ""
    strong: bool = False
    box: bool = False

    @property
    def said(self) -> str:
        """All of it in one line."""
        return ", ".join(filter(None, (self.words, self.small)))


@dataclass(frozen=True, slots=True)
class Column:
    """A column of a table.

    Attributes:
        heading: what it holds.
        wide: its share of the room that is left over; 0: as wide as its words.
        side: where its words stand.
        names_row: whether its cells say what the row is about.
    """

    heading: str
    wide: int = 0
    side: Side = Side.LEFT
    names_row: bool = False


@dataclass(frozen=True, slots=True)
class Table:
    """Rows under headings, which come again on every page.

    Attributes:
        heading: what the table is about; empty where the sheet says it.
        columns: from left to right.
        rows: a cell for each column.
        none: what is said where there is no row.
        across: beside how many of its kind a column of rows stands on paper: a long list of few columns runs on there.
        new_page: whether it begins a page on paper, as what is for somebody else.
        together: how many rows each stay on one page, as those of a group, from the first on; none: every row by itself.
    """

    heading: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[Cell, ...], ...]
    none: str = ""
    across: int = 1
    together: tuple[int, ...] = ()
    new_page: bool = False


@dataclass(frozen=True, slots=True)
class Words:
    """Sentences under a heading.

    Attributes:
        heading: what they are about; empty for none.
        sentences: one each.
        listed: whether each stands at a mark of its own.
        lead: words before each of them, such as the code of a Local Rule; empty for none.
    """

    heading: str
    sentences: tuple[str, ...]
    listed: bool = False
    lead: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing.

    Attributes:
        heading: what it is about.
        svg: the drawing.
        alt: what it shows, in words.
    """

    heading: str
    svg: str
    alt: str


@dataclass(frozen=True, slots=True)
class CardLine:
    """A line of a card.

    Attributes:
        heading: what it holds.
        cells: one for each column of the card.
        blank: whether it is written in by hand.
    """

    heading: str
    cells: tuple[str, ...]
    blank: bool = False


@dataclass(frozen=True, slots=True)
class Card:
    """A scorecard.

    Attributes:
        player: whose.
        facts: what stands beside the name: what it is, and its value.
        head: the name of each column: the holes, and the totals.
        totals: which columns are totals, from 0.
        lines: its lines.
        sign: who certifies it.
        note: what is said below it.
    """

    player: str
    facts: tuple[tuple[str, str], ...]
    head: tuple[str, ...]
    totals: tuple[int, ...]
    lines: tuple[CardLine, ...]
    sign: tuple[str, ...]
    note: str = ""


@dataclass(frozen=True, slots=True)
class Cards:
    """Scorecards, several on a page."""

    cards: tuple[Card, ...]
    none: str = ""


Part = Table | Words | Picture | Cards


@dataclass(frozen=True, slots=True)
class Sheet:
    """A sheet of the event.

    Attributes:
        title: what it is, such as "Starting sheet".
        event: the competition.
        about: the round, the course.
        day: the day in words; empty where it is not known.
        parts: what stands on it, in order.
        foot: what stands at the foot of each page.
    """

    title: str
    event: str
    about: str
    day: str
    parts: tuple[Part, ...]
    foot: str = field(default="")

    @property
    def called(self) -> str:
        """What the document is called."""
        return ": ".join(filter(None, (self.title, self.event)))

    def lines(self) -> Iterator[tuple[str, str]]:
        """Yield the sheet as lines for a terminal, each with its style: ``title``, ``head``, ``item``, ``text``, ``quiet``."""
        yield "title", self.title
        yield "quiet", " · ".join(filter(None, (self.event, self.about, self.day)))
        for part in self.parts:
            yield from _lines(part)
        if self.foot:
            yield "quiet", self.foot


def _lines(part: Part) -> Iterator[tuple[str, str]]:
    if not isinstance(part, Cards) and part.heading:
        yield "head", part.heading
    if isinstance(part, Words):
        for number, sentence in enumerate(part.sentences):
            lead = f"{part.lead[number]}  " if part.lead else ""
            yield "item" if part.listed else "text", f"{lead}{sentence}"
    elif isinstance(part, Table):
        for row in part.rows:
            yield "text", "  ".join(one.said for one in row if one.said)
        if not part.rows and part.none:
            yield "text", part.none
    elif isinstance(part, Picture):
        yield "text", part.alt
    else:
        for card in part.cards:
            yield "head", card.player
            yield "quiet", "  ".join(f"{what} {value}" for what, value in card.facts)
            for line in card.lines:
                if not line.blank:
                    yield "text", f"{line.heading}  {' '.join(one or '·' for one in line.cells)}"
        if not part.cards and part.none:
            yield "text", part.none
