"""A folder of numbered files, each written whole before it gets its number, and never written again.

A number is taken exclusively, so that two people who save at once cannot overwrite each other; what was said to be
saved is on the disk, file and folder, also when the power fails.
"""

import json
import os
from collections.abc import Mapping
from hashlib import sha256
from pathlib import Path
from typing import Any
from uuid import uuid4

from marram.errors import InputError
from marram.said import said


class NumberedFiles:
    """A folder that such files are kept in.

    Args:
        folder: the folder; it is made when the first file is written.
        remedy: what to do when it cannot be written, a clause that follows "Make room or give write access".
    """

    def __init__(self, folder: Path, remedy: str = "") -> None:
        self.folder = folder
        self.remedy = remedy

    def names(self, pattern: str) -> list[str]:
        """Return the names that fit a shell pattern, sorted; none where there is no folder."""
        return sorted(path.name for path in self.folder.glob(pattern)) if self.folder.is_dir() else []

    def marks(self, pattern: str) -> list[tuple[str, object]]:
        """Return the names that fit a shell pattern, sorted, each with its mark."""
        return [(name, self.mark(name)) for name in self.names(pattern)]

    def mark(self, name: str) -> tuple[int, int] | None:
        """Return time and size of a file, by which it is known again; ``None`` where there is none."""
        try:
            state = self.called(name).stat()
        except OSError:  # reading it says what is wrong
            return None
        return state.st_mtime_ns, state.st_size

    def read(self, name: str) -> bytes:
        """Return what a file holds.

        Raises:
            OSError: it cannot be read.
        """
        return self.called(name).read_bytes()

    def keep(self, name: str, content: bytes) -> bool:
        """Write a file of the folder; tell whether nobody had taken its name.

        Raises:
            InputError: the folder cannot be written; nothing was saved.
        """
        try:
            return self._written(self.called(name), content)
        except OSError as error:
            raise InputError(
                said(
                    "Nothing was saved: {folder} cannot be written ({why}). "
                    "Make room or give write access{remedy}; then save again.",
                    folder=self.folder,
                    why=error.strerror or error,
                    remedy=self.remedy,
                )
            ) from None

    def called(self, name: str) -> Path:
        """Return the file of a name."""
        return self.folder / name

    def _written(self, path: Path, content: bytes) -> bool:
        self.folder.mkdir(parents=True, exist_ok=True)
        draft = self.folder / f".writing-{uuid4().hex}"
        try:
            # Opened so, the file gets the modes of any file of the user's: one made by tempfile would be private.
            with os.fdopen(os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o666), "wb") as file:
                file.write(content)
                file.flush()
                os.fsync(file.fileno())
            try:
                os.link(draft, path)  # fails when the name is taken
            except FileExistsError:
                return False
        finally:
            draft.unlink(missing_ok=True)
        synchronise(self.folder)
        return True


def synchronise(folder: Path) -> None:
    """Bring the names of a folder to the disk."""
    opened = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(opened)
    finally:
        os.close(opened)


def sealed(contents: Mapping[str, Any]) -> bytes:
    """Return contents as JSON, with their digest."""
    return json.dumps({**contents, "digest": digest(contents)}, ensure_ascii=False).encode()


def unsealed(contents: dict[str, Any]) -> dict[str, Any]:
    """Return contents without their digest.

    Raises:
        ValueError: they do not fit it.
        KeyError: they have none.
    """
    kept_digest = contents.pop("digest")
    if kept_digest != digest(contents):
        raise ValueError(said("its contents do not fit its digest"))
    return contents


def digest(contents: Any) -> str:
    """Return a digest of anything that JSON can hold."""
    return sha256(json.dumps(contents, sort_keys=True, ensure_ascii=False).encode()).hexdigest()
