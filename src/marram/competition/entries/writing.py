"""Entries written out again, as CSV or XLSX, so that :mod:`marram.competition.entries.reading` reads the same back."""

import csv
import io
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
    path.write_bytes(written_entries(entries, spreadsheet=path.suffix.lower() == ".xlsx"))


def written_entries(entries: Sequence[Entry], *, spreadsheet: bool) -> bytes:
    """Return the bytes of a list of entries: XLSX for a spreadsheet, else CSV in UTF-8."""
    rows = [_row(one) for one in entries]
    if spreadsheet:
        from xlsxwriter import Workbook  # noqa: PLC0415 - only for spreadsheets

        book_made = io.BytesIO()
        options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
        with Workbook(book_made, options) as book:
            sheet = book.add_worksheet("Entries")
            for number, row in enumerate((HEADINGS, *rows)):
                for place, cell in enumerate(row):
                    sheet.write_string(number, place, cell)
        return book_made.getvalue()
    made = io.StringIO(newline="")
    writer = csv.writer(made, delimiter=";")
    writer.writerow(HEADINGS)
    writer.writerows([_harmless(cell) for cell in row] for row in rows)
    return made.getvalue().encode("utf-8-sig")


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
