"""Files that a command writes: all of them, or none."""

import os
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path
from secrets import token_hex

from marram.errors import InputError


def different(*paths: Path | None) -> None:
    """Check that no two things are to be written into one file.

    Raises:
        InputError: two are; each such file is named.
    """
    named = [path for path in paths if path is not None]
    places = [path.resolve() for path in named]
    twice = dict.fromkeys(
        str(path) for path, place in zip(named, places, strict=True) if places.count(place) > 1
    )
    if twice:
        raise InputError(*(f"{path} is named for two files; give each a name of its own." for path in twice))


def write_files(files: Mapping[Path, bytes]) -> None:
    """Write finished contents, each whole beside its place before any takes it; where one cannot, none is written.

    Raises:
        InputError: two are one file, a folder is missing or cannot be written, or a file would take the place
            of a folder; every fault is listed.
    """
    different(*files)
    faults = [
        f"{path} cannot be written: there is no folder {path.parent}. Make it, or name another."
        for path in files
        if not path.parent.is_dir()
    ]
    faults += [f"{path} cannot be written: it is a folder. Name a file." for path in files if path.is_dir()]
    drafts: dict[Path, Path] = {}
    try:
        for path, content in files.items() if not faults else ():
            try:
                drafts[path] = _draft(path, content)
            except OSError as error:
                faults.append(f"{path} cannot be written: {error.strerror or error}. Name another place.")
        if faults:
            raise InputError(*faults)
        for path, draft in drafts.items():
            draft.replace(path.resolve())  # a link stays one
    finally:
        for draft in drafts.values():
            with suppress(OSError):
                draft.unlink(missing_ok=True)


def _draft(path: Path, content: bytes) -> Path:
    """Return a finished file beside the place where it is to be; it is on the disk, or there is none."""
    place = path.resolve()
    draft = place.parent / f".writing-{token_hex(8)}"
    try:
        with os.fdopen(os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o666), "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
    except OSError:
        with suppress(OSError):
            draft.unlink(missing_ok=True)
        raise
    return draft
