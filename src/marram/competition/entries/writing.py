"""Entries written out again, as CSV or XLSX, so that :mod:`marram.competition.entries.reading` reads the same back."""

import csv
from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path

from marram.competition.entries.entry import Entry

HEADINGS = ("name", "handicap index", "club", "sex", "born", "number", "side", "team", "tees")
_STARTS_A_FORMULA = ("=", "@", "\t", "\r")


def write_entries(entries: Sequence[Entry], path: Path) -> None:
    """Write entries as XLSX where the name of the file ends so, as CSV in UTF-8 otherwise.

    Raises:
        OSError: the file cannot be written.
    """
    rows = [_row(one) for one in entries]
    if path.suffix.lower() == ".xlsx":
        from xlsxwriter import Workbook  # noqa: PLC0415 - only for spreadsheets

        with Workbook(str(path), {"strings_to_formulas": False, "strings_to_urls": False}) as book:
            sheet = book.add_worksheet("Entries")
            for number, row in enumerate((HEADINGS, *rows)):
                for place, cell in enumerate(row):
                    sheet.write_string(number, place, cell)
        return
    with path.open("w", encoding="utf-8-sig", newline="") as file:
        writer = csv.writer(file, delimiter=";")
        writer.writerow(HEADINGS)
        writer.writerows([_harmless(cell) for cell in row] for row in rows)


def _row(entry: Entry) -> tuple[str, ...]:
    return (
        entry.name,
        index_as_written(entry.handicap_index),
        entry.club,
        entry.sex,
        "" if entry.born is None else str(entry.born),
        entry.number,
        entry.side,
        entry.team,
        entry.tees,
    )


def index_as_written(index: Decimal | None) -> str:
    """Return a Handicap Index as golfers write it: ``+1.4`` for a plus one, empty for none."""
    if index is None:
        return ""
    return f"+{-index:.1f}" if index < 0 else f"{index:.1f}"


def _harmless(cell: str) -> str:
    """Return a cell that no spreadsheet takes for a formula."""
    return f" {cell}" if cell.startswith(_STARTS_A_FORMULA) else cell
