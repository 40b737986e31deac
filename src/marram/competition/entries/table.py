"""A file as rows of cells: CSV in any usual encoding and with any usual separator, or XLSX."""

import codecs
import csv
import io
from collections import Counter
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

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
    """Read what a CSV or XLSX file holds.

    Args:
        data: what it holds.
        name: of the file, to speak of it.

    Raises:
        InputError: it is neither, or cannot be read.
    """
    if not data.strip():
        raise InputError(said("{file} is empty.", file=name))
    if data.startswith(b"PK"):
        return _spreadsheet(data, name)
    if data.startswith(b"\xd0\xcf\x11\xe0"):
        raise InputError(said("{file} is an old Excel file. Save it as .xlsx or as CSV.", file=name))
    text, encoding = _decoded(data, name)
    rows, separator = _split(text)
    named = {"\t": said("tab")}.get(separator, separator)
    note = said("Read as {encoding}, cells separated by {separator}.", encoding=encoding, separator=named)
    return Table(rows, (note,))


def _decoded(data: bytes, name: str) -> tuple[str, str]:
    for mark, encoding, said_as in (
        (codecs.BOM_UTF8, "utf-8-sig", "UTF-8"),
        (codecs.BOM_UTF16_LE, "utf-16", "UTF-16"),
        (codecs.BOM_UTF16_BE, "utf-16", "UTF-16"),
    ):
        if data.startswith(mark):
            return _strictly(data, encoding, name), said_as
    if data[1:400:2].count(0) > len(data[1:400:2]) // 2:
        return _strictly(data, "utf-16-le", name), "UTF-16"
    if data[0:400:2].count(0) > len(data[0:400:2]) // 2:
        return _strictly(data, "utf-16-be", name), "UTF-16"
    try:
        return data.decode("utf-8"), "UTF-8"
    except UnicodeDecodeError:
        return _strictly(data, "cp1252", name), "Windows-1252"


def _strictly(data: bytes, encoding: str, name: str) -> str:
    try:
        return data.decode(encoding)
    except UnicodeDecodeError:
        raise InputError(
            said("{file} is text in no encoding that is known here. Save it as CSV in UTF-8.", file=name)
        ) from None


def _split(text: str) -> tuple[tuple[tuple[int, tuple[str, ...]], ...], str]:
    best: tuple[int, str, list[tuple[int, tuple[str, ...]]]] = (-1, ";", [])
    for separator in SEPARATORS:
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator)
        rows: list[tuple[int, tuple[str, ...]]] = []
        start = 1
        for row in reader:
            rows.append((start, tuple(cell.strip() for cell in row)))
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
    from python_calamine import CalamineError, CalamineWorkbook  # noqa: PLC0415 - only for spreadsheets

    try:
        book = CalamineWorkbook.from_filelike(io.BytesIO(data))
        sheet = book.get_sheet_by_index(0)
        values = [[_cell(one) for one in row] for row in sheet.to_python(skip_empty_area=False)]
        merged = sheet.merged_cell_ranges or []
    except (CalamineError, IndexError, OSError):
        raise InputError(
            said("{file} is no spreadsheet that can be read. Save it as .xlsx anew.", file=name)
        ) from None
    filled = 0
    for (top, left), (bottom, _right) in merged:
        for row in range(top + 1, min(bottom + 1, len(values))):
            values[row][left] = values[top][left]
            filled += 1
    notes = [said("Read the first sheet, {sheet}.", sheet=sheet.name)]
    if filled:
        notes.append(said("Merged cells count for each of their rows."))
    return Table(tuple((number, tuple(row)) for number, row in enumerate(values, start=1)), tuple(notes))


def _cell(value: object) -> str:
    if isinstance(value, datetime):
        return value.date().isoformat()
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, float):
        return str(int(value)) if value.is_integer() else repr(value)
    return "" if value is None else str(value).strip()
