"""Files that others made: opened only where they are files, of a size that can be read, and text."""

import os
import stat
from collections.abc import Iterator
from pathlib import Path

from marram.errors import InputError
from marram.visible import short

MOST_MEGABYTES = 100
"""A larger map or survey is not read (own choice: a whole course in every detail is below 10; 50,000 features take 20)."""

UTF_16 = (b"\xff\xfe", b"\xfe\xff")


def bytes_of(path: Path, most: int = MOST_MEGABYTES) -> bytes:
    """Return what a file holds.

    Args:
        path: the file.
        most: how many megabytes it may have.

    Raises:
        InputError: it is not there, no plain file (a folder, a pipe, a device), may not be read, or is too large.
    """
    try:
        found = path.stat()
        if stat.S_ISDIR(found.st_mode):
            raise InputError(f"{path} cannot be read: it is a folder. Name a file in it.")
        if not stat.S_ISREG(found.st_mode):
            raise InputError(
                f"{path} cannot be read: it is no plain file (a pipe or a device). Save it as a file."
            )
        if found.st_size > most * 1_000_000:
            raise InputError(
                f"{path} cannot be read: it has {found.st_size / 1e6:.0f} MB, and at most {most} are read. Export the "
                "ground of one course alone."
            )
        if not os.access(path, os.R_OK):
            raise InputError(f"{path} cannot be read: permission denied. Change who may read it.")
        return path.read_bytes()
    except OSError as error:
        raise InputError(f"{path} cannot be read: {error.strerror}. Check the path.") from None
    except ValueError as error:
        if isinstance(error, InputError):
            raise
        raise InputError(f"{short(str(path))!r} is no path ({error}). Check the path.") from None


def is_xml(data: bytes) -> bool:
    """Whether bytes are XML: only that starts with an angle bracket; some tools put a byte order mark before it."""
    return data[:64].lstrip(b"\xef\xbb\xbf\xff\xfe\x00 \t\r\n").startswith(b"<")


def text_of(name: str, data: bytes, otherwise: str = "no text in UTF-8") -> str:
    """Return the text in UTF-8, or in UTF-16 with its mark, that bytes hold.

    Raises:
        InputError: they hold none; the line and what to do are named.
    """
    try:
        text = data.decode("utf-16") if data.startswith(UTF_16) else data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data[: error.start].count(b"\n") + 1
        raise InputError(
            f"{name}, line {line}: this is {otherwise}. Save the file as UTF-8 (Latin-1 is not guessed)."
        ) from None
    if "\0" in text:
        line = text[: text.index("\0")].count("\n") + 1
        raise InputError(
            f"{name}, line {line}: it holds a null character, which no text has. Export it again."
        )
    return text


def csv_rows(name: str, text: str) -> Iterator[tuple[int, list[str]]]:
    """Yield the rows of a CSV text that hold anything, each with the number of its first line.

    Raises:
        InputError: a quotation mark is opened and never closed, or a cell is beyond all measure.
    """
    import csv  # noqa: PLC0415 - most files are maps
    import io  # noqa: PLC0415

    reader = csv.reader(io.StringIO(text, newline=""), strict=True)
    line = 1
    while True:
        try:
            row = next(reader)
        except StopIteration:
            return
        except csv.Error as error:
            why = (
                "a quotation mark is opened here and never closed"
                if "end of data" in str(error)
                else f"this is no CSV ({error})"
            )
            raise InputError(f"{name}, line {line}: {why}. Close it, or leave it out.") from None
        if any(cell.strip() for cell in row):
            yield line, row
        line = reader.line_num + 1
