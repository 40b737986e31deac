"""A copy of a file of records while it is in use, and putting one back; never over anything that is there."""

from pathlib import Path

from marram.errors import InputError
from marram.records.copying import copied
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
    logs: list[Verified] = []
    copied(source, to, lambda draft: logs.extend(_looked_at(draft, source)))
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
