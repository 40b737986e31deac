"""A list of entries read: the header found, columns understood, every bad line told, all or nothing taken."""

import re
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from marram.competition.entries.columns import Columns, names_players, plain, proposed
from marram.competition.entries.entry import Column, EntryList
from marram.competition.entries.table import Table, read_table
from marram.competition.entries.taking import Taking
from marram.errors import InputError
from marram.said import Said, said

_NAMES = frozenset({Column.NAME, Column.FAMILY_NAME, Column.GIVEN_NAME})
HEADER_WITHIN = 30
"""The header is looked for in so many rows; titles may stand above it."""


def read_entries(path: Path, kept: Columns | None = None) -> EntryList:
    """Read a list of entries from a CSV or XLSX file.

    Args:
        path: the file.
        kept: which headings tell what, as agreed on earlier.

    Raises:
        InputError: the file cannot be read at all, or has no header that names players.
        OSError: there is no such file.
    """
    return entries_in(read_table(path), kept)


def entries_in(table: Table, kept: Columns | None = None) -> EntryList:
    """Read a list of entries from rows of cells; see :func:`read_entries`."""
    at, columns = _header(table, kept)
    headings = table.rows[at][1]
    notes = list(table.notes)
    if any(any(row) for _line, row in table.rows[:at]):
        notes.append(said("Left out what stands above the header in line {line}.", line=table.rows[at][0]))
    for place, heading in enumerate(headings):
        if heading and place not in columns:
            notes.append(said("The column {heading} is not read.", heading=repr(heading)))
    taking = Taking(columns, _width(headings, table.rows[at + 1 :]))
    for place in _nameless(headings, table.rows[at + 1 :]):
        if place - 1 in columns and columns[place - 1] in _NAMES:
            taking.fault(
                table.rows[at][0],
                said(
                    "The column beside {heading} has cells and no heading. Give it one, such as Given name, or empty it.",
                    heading=repr(headings[place - 1]),
                ),
            )
        else:
            notes.append(said("Column {number} has no heading, and is not read.", number=place + 1))
    for fault in (
        _torn_apart(headings, columns, table.rows[at + 1 :]),
        *_twice(headings, columns, table.rows[at + 1 :]),
    ):
        if fault is not None:
            taking.fault(table.rows[at][0], fault)
    below = next((line for line, row in table.rows[at + 1 :] if any(row)), 0)
    for line, row in table.rows[at + 1 :]:
        if any(row):
            again = [one.casefold() for one in row] == [one.casefold() for one in headings]
            taking.take(line, row, again=again or (line == below and _second_header(row, columns)))
    told = {plain(headings[place]): column for place, column in columns.items()}
    if not taking.entries and not taking.faults:
        taking.fault(table.rows[at][0], said("No line below the header names a player."))
    taking.look_over()
    faults = tuple(sorted(taking.faults, key=lambda one: one.line))
    return EntryList(() if faults else tuple(taking.entries), faults, (*notes, *taking.notes()), told)


def _torn_apart(
    headings: Sequence[str], columns: Mapping[int, Column], rows: Sequence[tuple[int, Sequence[str]]]
) -> Said | None:
    """Return what is wrong where the lines are too long, and each of those has a whole handicap, and its one decimal in the next cell."""
    place = next((place for place, column in columns.items() if column is Column.HANDICAP_INDEX), None)
    width = max(place for place, heading in enumerate(headings) if heading) + 1
    long = [row for _line, row in rows if any(row[width:])]
    if place is None or not long or 2 * len(long) < sum(any(row) for _line, row in rows):
        return None  # a line of its own width is told by itself
    pairs = [(row[place], row[place + 1]) for row in long]
    if not all(re.fullmatch(r"\+?\d{1,2}", whole) and re.fullmatch(r"\d", tenth) for whole, tenth in pairs):
        return None
    return said(
        "The comma of the handicaps tears them apart: {whole} and {tenth} stand in two cells. Save the list with semicolons or tabs between the cells.",
        whole=repr(pairs[0][0]),
        tenth=repr(pairs[0][1]),
    )


def _twice(
    headings: Sequence[str], columns: Mapping[int, Column], rows: Sequence[tuple[int, Sequence[str]]]
) -> Iterator[Said]:
    """Yield what is wrong with headings that stand twice over different cells, where one of them is read."""
    for place in columns:
        alike = [other for other, one in enumerate(headings) if one and plain(one) == plain(headings[place])]
        if any(len({row[one] for one in alike if one < len(row)}) > 1 for _line, row in rows):
            yield said(
                "The heading {heading} stands {count} times over different cells. Name them apart, or strike what is not meant.",
                heading=repr(headings[place]),
                count=len(alike),
            )


def _second_header(row: Sequence[str], columns: Mapping[int, Column]) -> bool:
    """Tell whether the row below the header goes on with it: it names nobody, and holds nothing but headings."""
    told = [cell for cell in row if cell]
    named = any(row[place] for place, column in columns.items() if column in _NAMES and place < len(row))
    return not named and all(proposed([cell]) for cell in told)


def _width(headings: Sequence[str], rows: Sequence[tuple[int, Sequence[str]]]) -> int:
    """Return how many columns a line has: those with a heading, and those beside them that are filled in most lines."""
    last = max(place for place, heading in enumerate(headings) if heading) + 1
    return max([last, *(place + 1 for place in _nameless(headings, rows))])


def _nameless(headings: Sequence[str], rows: Sequence[tuple[int, Sequence[str]]]) -> list[int]:
    """Return the places of columns without a heading that are filled in at least half of the lines."""
    filled = [row for _line, row in rows if any(row)]
    widest = max(map(len, filled), default=0)
    return [
        place
        for place in range(widest)
        if not (place < len(headings) and headings[place])
        and 2 * sum(place < len(row) and bool(row[place]) for row in filled) >= len(filled) > 1
    ]


def header_of(table: Table, kept: Columns | None) -> tuple[int, dict[int, Column]]:
    """Return which row of a list is its header, and what each of its columns tells; no columns where none is like one."""
    best: tuple[int, int, dict[int, Column]] = (0, 0, {})
    for at, (_line, row) in enumerate(table.rows[:HEADER_WITHIN]):
        columns = proposed(row, kept)
        if len(columns) > best[0]:
            best = (len(columns), at, columns)
    return best[1], best[2]


def _header(table: Table, kept: Columns | None) -> tuple[int, dict[int, Column]]:
    at, columns = header_of(table, kept)
    if not names_players(columns.values()):
        first = next((row for _line, row in table.rows if any(row)), ())
        raise InputError(
            said(
                "No line names the columns of the players. Give one a heading such as Name, or say which column tells the name; the first line has {cells}.",
                cells=", ".join(repr(cell) for cell in first if cell) or said("nothing"),
            )
        )
    return at, columns
