"""Where versions stand: a place for named contents, each kept whole, exclusively and for ever, whatever it is made of.

The law of versions is written against this. A folder of files is one such place
(:mod:`marram.course.versions.numbered_files`); a club's records may offer another.
"""

from pathlib import Path
from typing import Protocol


class Shelf(Protocol):
    """A place that contents are kept in by name."""

    def names(self, pattern: str) -> list[str]:
        """Return the names that fit a shell pattern, sorted; none where nothing was kept yet."""

    def marks(self, pattern: str) -> list[tuple[str, object]]:
        """Return the names that fit a shell pattern, sorted, each with its mark: asked for at once, whatever their number."""

    def mark(self, name: str) -> object:
        """Return what is equal as long as the contents of a name are the same; ``None`` where there is none."""

    def read(self, name: str) -> bytes:
        """Return the contents of a name.

        Raises:
            OSError: they cannot be read.
            InputError: the same, with what to do.
        """

    def keep(self, name: str, content: bytes) -> bool:
        """Keep contents, on the disk when this returns; tell whether nobody had taken the name.

        Raises:
            InputError: they cannot be kept; nothing was saved.
        """

    def called(self, name: str) -> str | Path:
        """Return what a name is called in a message."""
