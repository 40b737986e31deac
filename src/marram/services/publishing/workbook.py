"""A published list as a workbook for spreadsheets: numbers as numbers, words as words, a sheet for each result."""

import io
from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import Any

from marram.services.publishing.documents import RESULTS, Document
from marram.services.publishing.result_tables import ResultTable, result_tables
from marram.words.texts import text

Cell = str | int | None
MOST_LETTERS = 31
"""How long the name of a sheet is at most (as spreadsheets have it)."""


def workbook(document: Document, rows: Sequence[Sequence[Cell]], published_at: datetime) -> bytes:
    """Return a published list as XLSX; the same list gives the same bytes.

    Args:
        document: the list.
        rows: its rows as CSV has them, the headings first; results have tables of their own.
        published_at: when it was published.
    """
    from xlsxwriter import Workbook  # noqa: PLC0415 - only for spreadsheets

    tables = (
        [(one.title, _rows(one)) for one in result_tables(document)]
        if document["kind"] == RESULTS
        else [(text(f"publishing.{document['kind']}"), _headed(rows))]
    )
    made = io.BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    with Workbook(made, options) as book:
        book.set_properties(
            {"title": str(document.get("event") or ""), "created": published_at.replace(tzinfo=None)}
        )
        strong = book.add_format({"bold": True})
        for name, (_title, some) in zip(sheet_names([one for one, _ in tables]), tables, strict=True):
            sheet = book.add_worksheet(name)
            sheet.freeze_panes(1, 0)
            for number, row in enumerate(some):
                _write(sheet, number, row, strong if number == 0 else None)
            sheet.autofit()
    return made.getvalue()


def _rows(table: ResultTable) -> list[list[Cell]]:
    place, name, *others = table.headings
    return [
        [place, text("publishing.column.shared"), name, text("publishing.column.club"), *others],
        *(
            [one.place, "=" if one.shared else None, one.name, one.club, *table.figures(one), one.words]
            for one in table.rows
        ),
    ]


def _headed(rows: Sequence[Sequence[Cell]]) -> Iterable[Sequence[Cell]]:
    return [[text(f"publishing.column.{one}") for one in rows[0]], *rows[1:]]


def _write(sheet: Any, number: int, row: Sequence[Cell], style: object) -> None:
    for place, cell in enumerate(row):
        if isinstance(cell, int):
            sheet.write_number(number, place, cell, style)
        elif cell:
            sheet.write_string(number, place, cell, style)


def sheet_names(titles: Sequence[str]) -> list[str]:
    """Return a name for the sheet of each title in a workbook: without the signs it may not have, as long as it may be, no two alike."""
    found: list[str] = []
    for title in titles:
        plain = "".join(" " if one in "[]:*?/\\" else one for one in title).strip("' ") or "–"
        name, number = plain[:MOST_LETTERS], 2
        while name.casefold() in (one.casefold() for one in found):
            behind = f" {number}"
            name, number = plain[: MOST_LETTERS - len(behind)] + behind, number + 1
        found.append(name)
    return found
