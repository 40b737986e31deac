"""A copy of a file of records while it is in use, and putting one back; never over anything that is there."""

import os
import sqlite3
from contextlib import closing, suppress
from pathlib import Path
from secrets import token_hex

from marram.errors import InputError
from marram.records.database import Records, opened
from marram.records.verifying import Verified, unsound, verified
from marram.said import said


def backed_up(records: Records, to: Path) -> list[Verified]:
    """Copy a file of records as it is at one moment, while others go on writing; return the logs of the copy.

    The copy is looked at before it takes its place: it is whole, or it is not there.

    Args:
        records: what to copy.
        to: the file to make.

    Raises:
        InputError: the records are no file, something is there already, or the copy cannot be written or is not
            whole.
    """
    if not records.is_file:
        raise InputError(
            said(
                "{name} is a database of PostgreSQL. Keep it with 'marram records export', or with the server's own tools.",
                name=records.name,
            )
        )
    return _copied(records.file, to)


def restored(backup: Path, to: Path) -> list[Verified]:
    """Put a backup in the place of records that are gone; return its logs.

    Args:
        backup: the copy; it is only read.
        to: where the records are to be.

    Raises:
        InputError: the backup cannot be read or is not whole, or something is there already.
    """
    with opened(backup) as found:
        return _copied(found.file, to)


def _copied(source: Path, to: Path) -> list[Verified]:
    if os.path.lexists(to):
        raise InputError(said("{path} is there already. Move it away, or give another name.", path=to))
    draft = to.parent / f".writing-{token_hex(8)}"
    try:
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
        logs = _looked_at(draft, source)
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
    return logs


def _looked_at(draft: Path, source: Path) -> list[Verified]:
    """Return the logs of a copy.

    Raises:
        InputError: something in it is not as it was; no copy is left.
    """
    with opened(draft) as copy:
        wrong = unsound(copy)
        logs = verified(copy)
    broken = [one.broken for one in logs if one.broken]
    if wrong or broken:
        raise InputError(
            said(
                "{path} is not whole, so no copy was made. 'marram records verify' says what is wrong.",
                path=source,
            )
        )
    return logs


def _to_the_disk(path: Path) -> None:
    handle = os.open(path, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
