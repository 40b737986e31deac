"""Files that others made: opened only where they are files, of a size that can be read, and text."""

import os
import stat
from collections.abc import Iterator
from pathlib import Path

from marram.errors import InputError
from marram.said import said
from marram.visible import short

MOST_MEGABYTES = 100
"""A larger map or survey is not read (own choice: a whole course in every detail is below 10; 50,000 features take 20)."""

NO_UTF_8 = said("no text in UTF-8")

PACKED = {
    b"PK\x03\x04": "zip",
    b"\x1f\x8b": "gzip",
    b"BZh": "bzip2",
    b"\xfd7zXZ\x00": "xz",
    b"7z\xbc\xaf'\x1c": "7z",
    b"(\xb5/\xfd": "zstd",
}
"""What a packed file begins with, and the name of its form."""

UTF_16 = (b"\xff\xfe", b"\xfe\xff")


class CannotOpen(InputError):
    """A file that cannot be opened at all: what is wrong, and what to do about it."""

    def __init__(self, path: Path | str, why: str, remedy: str) -> None:
        self.what = said("{path} cannot be read: {why}", path=str(path), why=why)
        self.remedy = remedy
        super().__init__(said("{what}. {remedy}", what=self.what, remedy=remedy))


def bytes_of(path: Path, most: int = MOST_MEGABYTES) -> bytes:
    """Return what a file holds.

    Args:
        path: the file.
        most: how many megabytes it may have.

    Raises:
        CannotOpen: it is not there, no plain file (a folder, a pipe, a device), may not be read, or is too large.
    """
    try:
        found = path.stat()
        if stat.S_ISDIR(found.st_mode):
            raise CannotOpen(path, said("it is a folder"), said("Name a file in it."))
        if not stat.S_ISREG(found.st_mode):
            raise CannotOpen(
                path, said("it is no plain file (a pipe or a device)"), said("Save it as a file.")
            )
        if found.st_size > most * 1_000_000:
            size = said(
                "it has {size:.0f} MB, and at most {most} are read", size=found.st_size / 1e6, most=most
            )
            raise CannotOpen(path, size, said("Export the ground of one course alone."))
        if not os.access(path, os.R_OK):
            raise CannotOpen(path, said("permission denied"), said("Change who may read it."))
        return _unpacked(path, path.read_bytes())
    except OSError as error:
        raise CannotOpen(path, str(error.strerror), said("Check the path.")) from None
    except ValueError as error:
        if isinstance(error, InputError):
            raise
        raise CannotOpen(
            short(str(path)), said("it is no path ({error})", error=error), said("Check the path.")
        ) from None


def _unpacked(path: Path, data: bytes) -> bytes:
    """Return the bytes of a file that is not packed.

    Raises:
        CannotOpen: it is.
    """
    for mark, form in PACKED.items():
        if data.startswith(mark):
            raise CannotOpen(path, said("it is packed ({form})", form=form), said("Unpack it first."))
    return data


def is_xml(data: bytes) -> bool:
    """Whether bytes are XML: only that starts with an angle bracket; some tools put a byte order mark before it."""
    return data[:64].lstrip(b"\xef\xbb\xbf\xff\xfe\x00 \t\r\n").startswith(b"<")


def text_of(name: str, data: bytes, otherwise: str = NO_UTF_8) -> str:
    """Return the text in UTF-8, or in UTF-16 with its mark, that bytes hold.

    Raises:
        InputError: they hold none; the line and what to do are named.
    """
    try:
        text = data.decode("utf-16") if data.startswith(UTF_16) else data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data[: error.start].count(b"\n") + 1
        raise InputError(
            said(
                "{name}, line {line}: this is {otherwise}. Save the file as UTF-8 (Latin-1 is not guessed).",
                name=name,
                line=line,
                otherwise=otherwise,
            )
        ) from None
    if "\0" in text:
        line = text[: text.index("\0")].count("\n") + 1
        raise InputError(
            said(
                "{name}, line {line}: it holds a null character, which no text has. Export it again.",
                name=name,
                line=line,
            )
        )
    return text


def csv_rows(name: str, text: str) -> Iterator[tuple[int, list[str]]]:
    """Yield the rows of a CSV text that hold anything, each with the number of its first line.

    Where semicolons or tabs separate the cells, as spreadsheets write them in countries with decimal commas, a number
    with a comma is yielded with a point.

    Raises:
        InputError: a quotation mark is opened and never closed, or a cell is beyond all measure.
    """
    import csv  # noqa: PLC0415 - most files are maps
    import io  # noqa: PLC0415

    mark = _separator(text)
    reader = csv.reader(io.StringIO(text, newline=""), strict=True, delimiter=mark)
    line = 1
    while True:
        try:
            row = next(reader)
        except StopIteration:
            return
        except csv.Error as error:
            what = (
                said("a quotation mark is opened here and never closed. Close it, or leave it out.")
                if "end of data" in str(error)
                else said("this is no CSV ({error}). Export it again.", error=error)
            )
            raise InputError(said("{name}, line {line}: {what}", name=name, line=line, what=what)) from None
        if any(cell.strip() for cell in row):
            yield line, row if mark == "," else [_with_point(cell) for cell in row]
        line = reader.line_num + 1


def _separator(text: str) -> str:
    """Return what separates the cells of a CSV text: a comma, unless its first line can only be read otherwise."""
    first = next((line for line in text.splitlines() if line.strip()), "")
    for mark in (";", "\t"):
        cells = first.split(mark)
        if len(cells) > 1 and ("," not in first or all(_with_point(cell) != cell for cell in cells)):
            return mark
    return ","


def _with_point(cell: str) -> str:
    """Return a number that is written with a decimal comma with a point; anything else as it is."""
    whole, comma, rest = cell.strip().partition(",")
    return f"{whole}.{rest}" if comma and whole.lstrip("+-").isdecimal() and rest.isdecimal() else cell
