"""A file as rows of cells: CSV in any usual encoding and with any usual separator, or XLSX."""

import csv
import io
import re
import unicodedata
import zipfile
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

from marram.competition.entries.columns import names_players, proposed
from marram.competition.entries.encodings import decoded
from marram.competition.entries.partners import one_player_a_line
from marram.errors import InputError
from marram.said import Said, said

SEPARATORS = (";", ",", "\t", "|")


@dataclass(frozen=True, slots=True)
class Table:
    """Rows with the line or row number they stand at in the file; notes of how the file was read."""

    rows: tuple[tuple[int, tuple[str, ...]], ...]
    notes: tuple[Said, ...]


def read_table(path: Path) -> Table:
    """Read a CSV or XLSX file, by what is in it and not by its name.

    Raises:
        InputError: it is neither, or cannot be read.
        OSError: there is no such file.
    """
    return table_of(path.read_bytes(), path.name)


def table_of(data: bytes, name: str) -> Table:
    """Read what a CSV or XLSX file holds; where a line names partners, each of them has a row.

    Args:
        data: what it holds.
        name: of the file, to speak of it.

    Raises:
        InputError: it is neither, or cannot be read, or names players in two columns of one heading.
    """
    table = _as_written(data, name)
    rows, note = one_player_a_line(table.rows)
    return table if note is None else Table(tuple(rows), (*table.notes, note))


def _as_written(data: bytes, name: str) -> Table:
    if not data.strip():
        raise InputError(said("{file} is empty.", file=name))
    if data.startswith(b"PK"):
        return _spreadsheet(data, name)
    if data.startswith(b"\xd0\xcf\x11\xe0"):
        raise InputError(said("{file} is an old Excel file. Save it as .xlsx or as CSV.", file=name))
    text, encoding = decoded(data, name)
    if re.match(r"\s*<(?:!doctype|html|table|\?xml)", text, re.IGNORECASE):
        raise InputError(
            said(
                "{file} is a web page under the name of a list. Open it in a spreadsheet and save it as .xlsx or CSV.",
                file=name,
            )
        )
    rows, separator = _split(text)
    named = {"\t": said("tab")}.get(separator, separator)
    note = said("Read as {encoding}, cells separated by {separator}.", encoding=encoding, separator=named)
    return Table(rows, (note,))


def _split(text: str) -> tuple[tuple[tuple[int, tuple[str, ...]], ...], str]:
    best: tuple[int, str, list[tuple[int, tuple[str, ...]]]] = (-1, ";", [])
    for separator in SEPARATORS:
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator)
        rows: list[tuple[int, tuple[str, ...]]] = []
        start = 1
        for row in reader:
            rows.append((start, tuple(map(_clean, row))))
            start = reader.line_num + 1
        widths = Counter(len(row) for _line, row in rows if any(row))
        width, often = max(
            widths.items(), key=lambda one: (one[1] if one[0] > 1 else 0, one[0]), default=(0, 0)
        )
        weight = often * width if width > 1 else 0
        if weight > best[0]:
            best = (weight, separator, rows)
    return tuple(best[2]), best[1]


def _spreadsheet(data: bytes, name: str) -> Table:
    from python_calamine import CalamineError, CalamineWorkbook, SheetVisibleEnum  # noqa: PLC0415 - only for spreadsheets

    try:
        book = CalamineWorkbook.from_filelike(io.BytesIO(data))
        seen = [one.name for one in book.sheets_metadata if one.visible == SheetVisibleEnum.Visible]
        rows = {
            one: [
                list(map(_cell, row)) for row in book.get_sheet_by_name(one).to_python(skip_empty_area=False)
            ]
            for one in seen
        }
        filled = [one for one in seen if any(map(any, rows[one]))]
        lists = [
            one for one in filled if any(names_players(proposed(row).values()) for row in rows[one][:30])
        ]
        chosen = (lists or filled or seen or book.sheet_names)[0]
        values = rows.get(chosen, [])
        merged = book.get_sheet_by_name(chosen).merged_cell_ranges or []
    except (CalamineError, IndexError, OSError):
        raise InputError(
            said("{file} is no spreadsheet that can be read. Save it as .xlsx anew.", file=name)
        ) from None
    if len(lists) > 1:
        raise InputError(
            said(
                "{file} has several lists of players, on the sheets {sheets}. Put them on one sheet, or save each as a file of its own.",
                file=name,
                sheets=", ".join(lists),
            )
        )
    notes = [said("Read the sheet {sheet}.", sheet=chosen)]
    if others := [one for one in filled if one != chosen]:
        notes.append(said("Other sheets are not read: {sheets}.", sheets=", ".join(others)))
    if _filled_down(values, merged):
        notes.append(said("Merged cells count for each of their rows."))
    if hidden := _hidden_rows(data, book.sheet_names.index(chosen)):
        notes.append(
            said(
                "Hidden rows are read too: {rows}. Strike them in the list if they are not meant.",
                rows=", ".join(map(str, hidden)),
            )
        )
    return Table(tuple((number, tuple(row)) for number, row in enumerate(values, start=1)), tuple(notes))


def _filled_down(values: list[list[str]], merged: Sequence[tuple[tuple[int, int], tuple[int, int]]]) -> int:
    """Write what a cell merged over rows holds into each of them, and return how many were filled."""
    filled = 0
    for (top, left), (bottom, _right) in merged:
        for row in range(top + 1, min(bottom + 1, len(values))):
            values[row][left] = values[top][left]
            filled += 1
    return filled


def _hidden_rows(data: bytes, sheet: int) -> list[int]:
    """Return the numbers of rows that are hidden, with something in them; none where the file does not say so plainly."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as parts:
            text = parts.read(f"xl/worksheets/sheet{sheet + 1}.xml").decode("utf-8", "replace")
    except (KeyError, OSError, zipfile.BadZipFile):
        return []
    rows = re.findall(r"<row ([^>]*?)>(?=<c )", text)
    numbers = [re.search(r'\br="(\d+)"', one) for one in rows if re.search(r'\bhidden="(?:1|true)"', one)]
    return [int(one[1]) for one in numbers if one]


def _cell(value: object) -> str:
    if isinstance(value, datetime):
        return value.date().isoformat()
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, float):
        return str(int(value)) if value.is_integer() else repr(value)
    return "" if value is None else _clean(str(value))


def _clean(cell: str) -> str:
    """Return a cell with one blank between words, letters and their accents as one, and nothing that cannot be seen."""
    seen = "".join(one for one in unicodedata.normalize("NFC", cell) if unicodedata.category(one) != "Cf")
    return " ".join(seen.split())
