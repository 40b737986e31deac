"""Files that a command writes: all of them, or none."""

import os
from collections.abc import Iterable, Mapping
from contextlib import suppress
from pathlib import Path
from secrets import token_hex

from marram.errors import InputError
from marram.said import Said, said


def different(*paths: Path | None, read: Iterable[Path | None] = ()) -> None:
    """Check that no two things are to be written into one file, and none over what the command reads.

    Args:
        paths: the files to write, as far as they are asked for.
        read: the files and folders that are read.

    Raises:
        InputError: two are, or one takes the place of what is read; each such file is named.
    """
    named = [path for path in paths if path is not None]
    places = [path.resolve() for path in named]
    twice = dict.fromkeys(
        str(path) for path, place in zip(named, places, strict=True) if places.count(place) > 1
    )
    sources = {path.resolve() for path in read if path is not None}
    over = dict.fromkeys(str(path) for path, place in zip(named, places, strict=True) if place in sources)
    faults = [
        said("{path} is named for two files; give each a name of its own.", path=path) for path in twice
    ]
    faults += [
        said("{path} is read by this command and would be written over; give another name.", path=path)
        for path in over
    ]
    if faults:
        raise InputError(*faults)


def write_files(files: Mapping[Path, bytes]) -> None:
    """Write finished contents, each whole beside its place before any takes it; where one cannot, none is written.

    Raises:
        InputError: two are one file, a folder is missing or cannot be written, or a file would take the place
            of a folder; every fault is listed.
    """
    different(*files)
    faults = [
        said("{path} cannot be written: {parent} is a file. Name a folder.", path=path, parent=path.parent)
        if path.parent.is_file()
        else said(
            "{path} cannot be written: there is no folder {parent}. Make it, or name another.",
            path=path,
            parent=path.parent,
        )
        for path in files
        if not path.parent.is_dir()
    ]
    faults += [
        said("{path} cannot be written: it is a folder. Name a file.", path=path)
        for path in files
        if path.is_dir()
    ]
    streams = {path for path in files if path.exists() and not path.is_file()}
    drafts: dict[Path, Path] = {}
    try:
        for path, content in files.items() if not faults else ():
            if path not in streams:
                drafts[path] = path.resolve().parent / f".writing-{token_hex(8)}"
                try:
                    _write_draft(drafts[path], content)
                except OSError as error:
                    faults.append(_cannot(path, error))
        if faults:
            raise InputError(*faults)
        _take_their_places(drafts)
    finally:
        for draft in drafts.values():
            with suppress(OSError):
                draft.unlink(missing_ok=True)
    for path in streams:
        _send(path, files[path])


def _cannot(path: Path, error: OSError) -> Said:
    return said(
        "{path} cannot be written: {why}. Name another place.", path=path, why=error.strerror or error
    )


def _take_their_places(drafts: Mapping[Path, Path]) -> None:
    """Put every draft in its place; where one cannot go, those that went before it go back.

    Raises:
        InputError: one cannot take its place; every place is as it was.
    """
    before: dict[Path, Path | None] = {}
    try:
        for path, draft in drafts.items():
            place = path.resolve()  # a link stays one
            try:
                before[place] = _kept(place)
                draft.replace(place)
            except OSError as error:
                for known, kept in before.items():
                    if kept is not None:
                        kept.replace(known)
                    elif known is not place:
                        known.unlink(missing_ok=True)
                raise InputError(_cannot(path, error)) from None
    finally:
        for kept in before.values():
            if kept is not None:
                with suppress(OSError):
                    kept.unlink(missing_ok=True)


def _kept(place: Path) -> Path | None:
    """Return a second name for the file now at a place; ``None`` where there is none."""
    if not place.exists():
        return None
    kept = place.parent / f".before-{token_hex(8)}"
    os.link(place, kept)
    return kept


def _send(path: Path, content: bytes) -> None:
    """Write to what is no file, such as a device or a pipe: nothing takes its place.

    Raises:
        InputError: it cannot be written to.
    """
    try:
        with path.open("wb") as stream:
            stream.write(content)
    except BrokenPipeError:
        raise  # nobody reads it any more, which is no fault
    except OSError as error:
        raise InputError(_cannot(path, error)) from None


def _write_draft(draft: Path, content: bytes) -> None:
    """Write a finished file, on the disk, beside the place where it is to be."""
    with os.fdopen(os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o666), "wb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())
