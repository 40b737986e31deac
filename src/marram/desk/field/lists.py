"""A list of entries on its way through the page: its rows, which heading tells what, and what it is read as."""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

from marram.competition.entries.columns import Columns, plain
from marram.competition.entries.entry import Column, EntryList
from marram.competition.entries.reading import entries_in, header_of
from marram.competition.entries.table import Table
from marram.competition.entries.writing import index_as_written
from marram.errors import InputError
from marram.said import said

NOT_READ = "-"
"""How the page says that a column is not read."""

MOST_ROWS = 6000
"""How many rows a list has at most (own choice: more than enter the largest events)."""


@dataclass(frozen=True)
class ListShown:
    """A list as the page shows it.

    Attributes:
        table: its rows.
        headings: the heading of each column with what it tells; ``None``: it is not read.
        read: what it was read as; ``None`` where no column tells the name.
        faults: what is wrong with the whole of it.
    """

    table: Table
    headings: tuple[tuple[str, Column | None], ...]
    read: EntryList | None
    faults: tuple[str, ...] = ()

    @property
    def rows(self) -> str:
        """The rows, as the form carries them to the next step."""
        return json.dumps([[line, list(cells)] for line, cells in self.table.rows], ensure_ascii=False)

    @property
    def columns(self) -> dict[str, Column | None]:
        """What each heading tells, to be remembered."""
        return {plain(heading): tells for heading, tells in self.headings if plain(heading)}


def list_shown(table: Table, kept: Columns) -> ListShown:
    """Return a list as it is read by what was chosen or remembered of its headings, and by likeness for the others.

    Raises:
        InputError: it has too many rows, or nothing in it.
    """
    filled = [row for row in table.rows if any(row[1])]
    if len(table.rows) > MOST_ROWS or not filled:
        raise InputError(
            said("A list has 1 to {most} rows; this has {rows}.", most=MOST_ROWS, rows=len(filled))
        )
    at, columns = header_of(table, kept)
    headings = table.rows[at][1] if columns else filled[0][1]
    shown = tuple((heading, columns.get(place)) for place, heading in enumerate(headings))
    try:
        return ListShown(table, shown, entries_in(table, kept))
    except InputError as error:
        return ListShown(table, shown, None, tuple(error.faults))


def written_index(index: Decimal | str | None) -> str:
    """Return a Handicap Index as golfers write it; empty for none."""
    return index_as_written(None if index is None else Decimal(index))


def carried(rows: str) -> Table:
    """Return the rows that a form carries.

    Raises:
        InputError: they are none.
    """
    try:
        given = json.loads(rows)
        return Table(tuple((int(line), tuple(str(cell) for cell in cells)) for line, cells in given), ())
    except (ValueError, TypeError):
        raise InputError(said("The list was lost on the way. Choose the file again.")) from None


def chosen(given: Mapping[str, str], headings: Mapping[str, str]) -> dict[str, Column | None]:
    """Return what was chosen for each heading of a form: its fields ``heading-N`` and ``column-N``.

    Raises:
        InputError: a column tells what none can, or two tell the same.
    """
    found: dict[str, Column | None] = {}
    for place, heading in headings.items():
        tells = given.get(f"column-{place}", NOT_READ)
        if tells != NOT_READ and tells not in {one.value for one in Column}:
            raise InputError(said("The column {heading} tells what none can.", heading=repr(heading)))
        if plain(heading):  # of a heading that stands twice, the column that is read counts
            found[plain(heading)] = found.get(plain(heading)) if tells == NOT_READ else Column(tells)
    told = [one for one in found.values() if one is not None]
    if twice := sorted({one.value for one in told if told.count(one) > 1}):
        raise InputError(
            *(
                said("Two columns are to tell the same: {what}. Leave one of them out.", what=one)
                for one in twice
            )
        )
    return found
