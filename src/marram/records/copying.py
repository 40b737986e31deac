"""A copy of a file of SQLite while it is in use: one whole state of it, on the disk, never over anything that is there."""

import os
import sqlite3
from collections.abc import Callable
from contextlib import closing, suppress
from pathlib import Path
from secrets import token_hex

from marram.errors import InputError
from marram.said import said


def copied(source: Path, to: Path, look: Callable[[Path], object] = lambda _: None) -> None:
    """Copy a file of SQLite.

    Args:
        source: the file; it is only read, and others may go on writing to it.
        to: the copy.
        look: looks at the copy before it takes its place; where it raises, there is no copy.

    Raises:
        InputError: something is there already, or the copy cannot be written.
    """
    if os.path.lexists(to):
        raise InputError(said("{path} is there already. Move it away, or give another name.", path=to))
    draft = to.parent / f".writing-{token_hex(8)}"
    try:
        _copy(source, draft, to)
        look(draft)
        _to_the_disk(draft)
        try:
            os.link(draft, to)  # fails when somebody else took the name meanwhile
        except OSError as error:
            raise InputError(
                said("{path} cannot be written: {why}. Name another place.", path=to, why=error.strerror)
            ) from None
    finally:
        for left in to.parent.glob(f"{draft.name}*"):
            with suppress(OSError):
                left.unlink()
    _to_the_disk(to.parent)


def _copy(source: Path, draft: Path, to: Path) -> None:
    try:
        with (
            closing(sqlite3.connect(f"{source.absolute().as_uri()}?mode=ro", uri=True)) as old,
            closing(sqlite3.connect(draft)) as new,
        ):
            old.backup(new)
            new.execute("PRAGMA journal_mode = DELETE")  # one file, with nothing beside it
    except sqlite3.Error as error:
        raise InputError(
            said(
                "{path} could not be copied to {to} ({why}); no copy was made. "
                "Make room there, or name another place.",
                path=source,
                to=to,
                why=error,
            )
        ) from None


def _to_the_disk(path: Path) -> None:
    handle = os.open(path, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
