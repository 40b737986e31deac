"""A list of entries read: the header found, columns understood, every bad line told, all or nothing taken."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from pathlib import Path
from typing import TypeVar

from marram.competition.entries.cells import born_in, handicap_in, sex_in, wrong_encoding
from marram.competition.entries.columns import Columns, plain, proposed
from marram.competition.entries.entry import Column, Entry, EntryList, LineFault
from marram.competition.entries.table import Table, read_table
from marram.errors import InputError
from marram.said import said

T = TypeVar("T")
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
    taking = _Taking(columns, max(place for place, heading in enumerate(headings) if heading) + 1)
    for line, row in table.rows[at + 1 :]:
        if any(row):
            taking.take(line, row)
    told = {plain(headings[place]): column for place, column in columns.items()}
    if not taking.entries and not taking.faults:
        taking.faults.append(LineFault(table.rows[at][0], said("No line below the header names a player.")))
    faults = tuple(sorted(taking.faults, key=lambda one: one.line))
    return EntryList(() if faults else tuple(taking.entries), faults, tuple(notes), told)


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
    named = set(columns.values())
    if Column.NAME not in named and not {Column.FAMILY_NAME, Column.GIVEN_NAME} <= named:
        first = next((row for _line, row in table.rows if any(row)), ())
        raise InputError(
            said(
                "No line names the columns of the players. Give one a heading such as Name, or say which column tells the name; the first line has {cells}.",
                cells=", ".join(repr(cell) for cell in first if cell) or said("nothing"),
            )
        )
    return at, columns


@dataclass
class _Taking:
    """Takes lines one after the other, and keeps what is wrong with them."""

    columns: Mapping[int, Column]
    width: int
    entries: list[Entry] = field(default_factory=list)
    faults: list[LineFault] = field(default_factory=list)
    seen: dict[str, int] = field(default_factory=dict)

    def take(self, line: int, row: Sequence[str]) -> None:
        """Take one line."""
        cells = {column: row[place] if place < len(row) else "" for place, column in self.columns.items()}
        if any(row[self.width :]):
            self._fault(
                line, said("The line has more cells than the header. Look for a separator inside a cell.")
            )
        for cell in cells.values():
            wrong = wrong_encoding(cell)
            if wrong is not None:
                self._fault(line, wrong)
        name = cells.get(Column.NAME, "") or self._joined(cells)
        if not name:
            self._fault(line, said("The line has no name. Write it, or strike the line."))
        index: Decimal | None = self._read(line, cells.get(Column.HANDICAP_INDEX, ""), handicap_in, None)
        born: int | None = self._read(line, cells.get(Column.BORN, ""), born_in, None)
        sex: str = self._read(line, cells.get(Column.SEX, ""), sex_in, "")
        entry = Entry(name, index, cells.get(Column.CLUB, ""), sex, born, cells.get(Column.NUMBER, ""), line)
        self._twice(entry)
        self.entries.append(entry)

    @staticmethod
    def _joined(cells: Mapping[Column, str]) -> str:
        return " ".join(filter(None, (cells.get(Column.GIVEN_NAME, ""), cells.get(Column.FAMILY_NAME, ""))))

    def _read(self, line: int, cell: str, read: Callable[[str], T], otherwise: T) -> T:
        try:
            return read(cell)
        except InputError as error:
            for fault in error.faults:
                self._fault(line, fault)
            return otherwise

    def _twice(self, entry: Entry) -> None:
        for key in {entry.key, f"{entry.name}|{entry.club}".casefold()} if entry.name else ():
            if key in self.seen:
                self._fault(
                    entry.line,
                    said(
                        "{name} stands in line {first} already. Strike one of the two, or tell them apart by number or club.",
                        name=entry.name,
                        first=self.seen[key],
                    ),
                )
                return
            self.seen[key] = entry.line

    def _fault(self, line: int, fault: str) -> None:
        self.faults.append(LineFault(line, fault))
